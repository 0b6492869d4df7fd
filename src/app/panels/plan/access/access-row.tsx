// biome-ignore-all lint/a11y/useFocusableInteractive: cells have the focus, rows have not
// biome-ignore-all lint/a11y/useSemanticElements: rows and cells are placed one by one, out of a table's flow, and most are not there
import { memo } from 'react';
import type { Holder } from '../../../../family/plan.ts';
import { type AreaTree, areaPath, type TreeArea } from '../../../../plan/area-tree.ts';
import { tickShown, tickWords } from '../../../state/plan/access/access-rows.ts';
import { fold } from '../../../state/plan/access/access-state.ts';
import type { ShownRow } from '../../rows/use-window-of-rows.ts';
import { useSession } from '../../use-store.ts';
import styles from './access-grid.module.css';
import { AccessNameField } from './access-name-field.tsx';
import { TickMark } from './tick-mark.tsx';

/** What all rows share; the same value until it changes. */
export interface AccessSetting {
  readonly tree: AreaTree;
  readonly holders: readonly Holder[];
  /** Columns in sight. */
  readonly shown: readonly ShownRow[];
  /** Areas that a fault speaks of. */
  readonly atFault: ReadonlySet<string>;
}

interface AccessRowProps {
  readonly setting: AccessSetting;
  readonly at: number;
  readonly top: number;
  readonly row: TreeArea;
  readonly isFolded: boolean;
  readonly isTyped: boolean;
  readonly picked: boolean;
  /** The column that has the focus; null where another row has it. */
  readonly active: number | null;
}

/** One area: its name in the tree, and its cell for each holder in sight. */
export const AccessRow = memo(function AccessRow(props: AccessRowProps) {
  const { setting, at, top, row, isFolded, isTyped, picked, active } = props;
  const { tree, holders, shown, atFault } = setting;
  const { area, depth, isGroup } = row;
  return (
    <div
      role="row"
      aria-rowindex={at + 2}
      aria-level={depth + 1}
      aria-expanded={isGroup ? !isFolded : undefined}
      data-row={at}
      data-picked={picked}
      data-group={isGroup}
      className={styles.row}
      style={{ top }}
    >
      <div
        role="rowheader"
        aria-colindex={1}
        data-column={-1}
        data-active={active === -1 || undefined}
        tabIndex={active === -1 ? 0 : -1}
        title={area.section === undefined ? areaPath(tree, area.id) : `${areaPath(tree, area.id)}: ${area.section}`}
        className={styles.rowHead}
        style={{ paddingLeft: `${0.3 + 0.95 * depth}rem` }}
      >
        <FoldKey id={area.id} name={area.name} isGroup={isGroup} isFolded={isFolded} />
        {isTyped ? (
          <AccessNameField typing={{ what: 'area', id: area.id }} start={area.name} />
        ) : (
          <span className={styles.rowName}>{area.name}</span>
        )}
        {!isTyped && area.section !== undefined && <span className={styles.section}>{area.section}</span>}
        {atFault.has(area.id) && <FaultSign />}
      </div>
      {shown.map(({ index, start }) => {
        const holder = holders[index];
        if (!holder) return null;
        const tick = tickShown(tree, holder, row);
        return (
          <div
            key={holder.id}
            role="gridcell"
            aria-colindex={index + 2}
            aria-label={`${holder.name}, ${area.name}: ${tickWords(tick)}`}
            data-column={index}
            data-active={active === index || undefined}
            tabIndex={active === index ? 0 : -1}
            className={styles.cell}
            style={{ left: start }}
          >
            <TickMark tick={tick} />
          </div>
        );
      })}
    </div>
  );
});

/** The place where the name of a new area is typed. */
export function NewAreaRow({
  top,
  depth,
  inside,
  after,
}: {
  top: number;
  depth: number;
  inside?: string;
  after?: string;
}) {
  const place = { ...(inside !== undefined && { inside }), ...(after !== undefined && { after }) };
  return (
    <div role="row" tabIndex={-1} className={styles.row} style={{ top }}>
      <div
        role="rowheader"
        tabIndex={-1}
        className={styles.rowHead}
        style={{ paddingLeft: `${0.3 + 0.95 * depth}rem` }}
      >
        <span className={styles.foldKey} />
        <AccessNameField key={`${after} ${inside}`} typing={{ what: 'new area', place }} start="" />
      </div>
    </div>
  );
}

interface FoldKeyProps {
  readonly id: string;
  readonly name: string;
  readonly isGroup: boolean;
  readonly isFolded: boolean;
}

function FoldKey({ id, name, isGroup, isFolded }: FoldKeyProps) {
  const session = useSession();
  if (!isGroup) return <span className={styles.foldKey} />;
  return (
    <button
      type="button"
      tabIndex={-1}
      className={styles.foldKey}
      aria-label={isFolded ? `Unfold ${name}` : `Fold ${name}`}
      title={isFolded ? 'Unfold (Space)' : 'Fold (Space)'}
      onClick={(event) => {
        event.stopPropagation();
        fold(session, id, !isFolded);
      }}
    >
      <svg viewBox="-6 -6 12 12" width="12" height="12" aria-hidden="true" focusable="false">
        <path d={isFolded ? 'M-2.5-4.5L3.5 0L-2.5 4.5z' : 'M-4.5-2.5L4.5-2.5L0 3.5z'} />
      </svg>
    </button>
  );
}

/** That a contradiction speaks of what it stands beside. */
export function FaultSign() {
  return (
    <svg className={styles.faultSign} viewBox="0 0 16 16" role="img" aria-label="in a contradiction">
      <path d="M8 1.5L15 14H1z" />
      <path d="M8 6v4M8 11.4v1.4" />
    </svg>
  );
}
