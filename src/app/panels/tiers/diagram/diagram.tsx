import {
  type CSSProperties,
  type KeyboardEvent,
  type MouseEvent,
  type RefObject,
  useLayoutEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import type { Family } from '../../../../family/family.ts';
import { nodeOf } from '../../../../family/tier-reach.ts';
import type { DiagramView } from '../../../state/tiers/diagram-view.ts';
import { nodeAfter } from '../../../state/tiers/diagram-walk.ts';
import type { LaidOut } from '../../../state/tiers/laying-out.ts';
import { pointAt } from '../../../state/tiers/tiers-state.ts';
import { trayReach } from '../../../state/tray-reach.ts';
import { usePickedPair } from '../../use-family.ts';
import { useSize } from '../../use-size.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './diagram.module.css';
import { DiagramBar } from './diagram-bar.tsx';
import { DiagramLegend } from './diagram-legend.tsx';
import { DiagramNotice } from './diagram-notice.tsx';
import { DiagramPlane } from './diagram-plane.tsx';
import { useDiagram } from './use-diagram.ts';
import { type DiagramSheet, useDiagramView } from './use-diagram-view.ts';

const ZOOMS: Readonly<Record<string, number>> = { '+': 1.25, '=': 1.25, '-': 0.8, '−': 0.8 };

/**
 * The order of blanks by what they enter, from base to all-section, drawn bottom to top. Wheel and drag move the sheet,
 * the arrow keys walk along the lines, and what they come to is picked.
 */
export function Diagram({ family }: { family: Family }) {
  const { results, layingOut } = useSession();
  const [frame, size] = useSize<HTMLDivElement>();
  const shown = useDiagram(family, size);
  const { drawn } = shown;
  const { entrant, opening } = usePickedPair();
  const entrantId = entrant?.id ?? null;
  const fits = useStore(results, (s) => s.fits);
  const reach = useMemo(() => trayReach(family), [family]);
  const laying = useStore(layingOut.store, (s) => s.phase);
  const sheet = useDiagramView(frame, size, drawn, entrantId);
  const [sought, setSought] = useState('');
  const found = useMemo(() => foundIn(drawn?.nodes ?? [], sought), [drawn, sought]);
  const { pick, hands } = useDiagramHands(frame, drawn, sheet);
  const takeFirst = () => {
    if (!found?.size) return;
    pick([...found][0], false);
    setSought('');
  };
  return (
    <>
      <DiagramBar
        family={family}
        shown={shown}
        sought={sought}
        onSeek={setSought}
        foundCount={found?.size ?? null}
        sheet={sheet}
        onTakeFirst={takeFirst}
      />
      <div className={styles.body}>
        {/* biome-ignore lint/a11y/useSemanticElements: a group of nodes, no set of fields */}
        <div
          ref={frame}
          role="group"
          aria-label="Tier diagram: arrow keys walk it, plus and minus zoom, 0 fits it"
          className={styles.frame}
          data-laying={laying}
          {...hands}
          {...sheet.hold}
        >
          {drawn && sheet.view && (
            <div className={styles.plane} data-nodes={drawn.nodes.length} style={planeStyle(drawn, sheet.view)}>
              <DiagramPlane
                drawn={drawn}
                entrantId={entrantId}
                reach={reach}
                opening={opening}
                fits={fits}
                found={found}
              />
            </div>
          )}
        </div>
        <DiagramNotice hasPicture={drawn !== null} />
        <DiagramLegend opening={opening} picked={drawn !== null && nodeOf(drawn.tiers, entrantId) >= 0} />
      </div>
    </>
  );
}

function planeStyle({ layout: { width, height } }: LaidOut, { x, y, scale }: DiagramView): CSSProperties {
  return { width, height, transform: `translate(${x}px, ${y}px) scale(${scale})` };
}

/** What the diagram does with keys and pointer. */
function useDiagramHands(frame: RefObject<HTMLElement | null>, drawn: LaidOut | null, sheet: DiagramSheet) {
  const { selection, tiers: store } = useSession();
  const wantsFocus = useRef(false);
  // In the same commit as the new pick: a later effect of the commit before would take the wish for its own.
  useLayoutEffect(() => {
    if (!wantsFocus.current) return;
    wantsFocus.current = false;
    frame.current?.querySelector<HTMLElement>('[data-relation="picked"]')?.focus({ preventScroll: true });
  });
  const pick = (at: number, focus: boolean) => {
    const node = drawn?.nodes[at];
    if (!drawn || !node) return;
    wantsFocus.current = focus;
    // One of several that enter the same stays picked.
    const { entrantId } = selection.getState();
    const kept = entrantId !== null && drawn.tiers.nodes[at].entrants.includes(entrantId);
    selection.setState({ entrantId: kept ? entrantId : node.lead.id, part: 'entrant' });
    sheet.reveal(at);
  };
  const numberOf = (target: EventTarget): number => {
    const id = target instanceof Element ? target.closest<HTMLElement>('[data-node]')?.dataset.node : undefined;
    return id === undefined || !drawn ? -1 : drawn.nodes.findIndex((node) => node.id === id);
  };
  const compare = (event: { target: EventTarget }) => {
    const { openingId } = selection.getState();
    if (openingId !== null && numberOf(event.target) >= 0) selection.setState({ view: 'compare' });
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.altKey || event.metaKey || !drawn) return;
    const from = numberOf(event.target);
    const next = from < 0 ? null : nodeAfter(drawn, from, event.key);
    if (event.key in ZOOMS) sheet.zoom(ZOOMS[event.key]);
    else if (event.key === '0') sheet.fit();
    else if (event.key === 'Enter') compare(event);
    else if (next !== null) pick(next, true);
    else return;
    event.preventDefault();
  };
  const point = (event: { target: EventTarget }) => {
    const at = numberOf(event.target);
    pointAt(store, at < 0 || !drawn ? null : { entrantId: drawn.nodes[at].lead.id, openingId: null });
  };
  const hands = {
    onKeyDown,
    onClick: (event: MouseEvent) => pick(numberOf(event.target), false),
    onDoubleClick: compare,
    onPointerOver: point,
    onPointerLeave: () => pointAt(store, null),
    onFocus: point,
    onBlur: () => pointAt(store, null),
  };
  return { pick, hands };
}

/** The nodes whose names have all that is typed in them; null where nothing is. */
function foundIn(nodes: readonly { readonly names: readonly string[] }[], sought: string): Set<number> | null {
  const words = sought.trim().toLowerCase();
  if (words === '') return null;
  return new Set(nodes.flatMap(({ names }, at) => (names.join(' ').toLowerCase().includes(words) ? [at] : [])));
}
