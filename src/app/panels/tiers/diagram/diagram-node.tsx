import { memo } from 'react';
import { VERDICT_WORDS } from '../../../../family/margin-text.ts';
import type { Verdict } from '../../../../fit/fit.ts';
import { type DiagramNode, detailOf, PICTURE } from '../../../state/tiers/diagram-nodes.ts';
import { SectionThumb } from '../../section-thumb.tsx';
import { VerdictMark } from '../../verdict-mark.tsx';
import styles from './diagram.module.css';

/** How a node stands to the picked one. */
export type NodeRelation = 'picked' | 'above' | 'below' | 'apart';

interface DiagramNodeKeyProps {
  readonly node: DiagramNode;
  readonly x: number;
  readonly y: number;
  readonly relation: NodeRelation;
  /** Whether the search has found it; null where nothing is searched. */
  readonly found: boolean | null;
  readonly focusable: boolean;
  readonly reachX: number;
  readonly reachY: number;
  /** How it does in the picked keyway, and which that is. */
  readonly verdict: Verdict | null;
  readonly openingName: string;
  readonly tier: string;
}

/** One node: the picture of its section, its names, what it is and how many keyways it enters. */
export const DiagramNodeKey = memo(function DiagramNodeKey(props: DiagramNodeKeyProps) {
  const { node, x, y, relation, found, focusable, verdict, openingName, tier } = props;
  const { names, labels, kind, count, form, width, height } = node;
  const inOpening = verdict ? `; ${VERDICT_WORDS[verdict]} in ${openingName}` : '';
  const all = names.join('; ');
  return (
    <button
      type="button"
      className={styles.node}
      title={`${all}: ${kind}, ${count} keyways`}
      data-node={node.id}
      data-form={form}
      data-relation={relation}
      data-found={found ?? undefined}
      data-kind={kind}
      aria-pressed={relation === 'picked'}
      tabIndex={focusable ? 0 : -1}
      style={{ left: x - width / 2, top: y - height / 2, width, height }}
    >
      <span className={styles.picture}>
        <SectionThumb
          profile={node.lead}
          reachX={props.reachX}
          reachY={props.reachY}
          width={PICTURE.width}
          height={PICTURE.height}
        />
        {verdict && (
          <span className={styles.mark}>
            <VerdictMark verdict={verdict} size={16} />
          </span>
        )}
      </span>
      <span className={styles.words}>
        <span className={styles.names}>
          {labels.map((name) => (
            <b key={name}>{name}</b>
          ))}
        </span>
        <span className={styles.detail}>{detailOf(node, form)}</span>
      </span>
      <span className="unseen">{` keyways, ${tier}${inOpening}; ${kind}: ${all}`}</span>
    </button>
  );
});
