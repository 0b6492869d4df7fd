// biome-ignore-all lint/a11y/useFocusableInteractive: cells have the focus, rows have not
// biome-ignore-all lint/a11y/useSemanticElements: columns are placed one by one, out of a table's flow, and most are not there
import type { Holder } from '../../../../family/plan.ts';
import type { AccessTyping } from '../../../state/plan/access/access-state.ts';
import type { ShownRow } from '../../rows/use-window-of-rows.ts';
import styles from './access-grid.module.css';
import { AccessNameField } from './access-name-field.tsx';
import { FaultSign } from './access-row.tsx';
import { TickMark } from './tick-mark.tsx';

interface AccessHeadProps {
  readonly holders: readonly Holder[];
  readonly shown: readonly ShownRow[];
  readonly typing: AccessTyping | null;
  readonly pickedId: string | null;
  readonly atFault: ReadonlySet<string>;
  /** The column that has the focus; null where an area has it. */
  readonly active: number | null;
}

/** The names of the holders along the top, and in the corner what the marks mean, or a name that is typed. */
export function AccessHead({ holders, shown, typing, pickedId, atFault, active }: AccessHeadProps) {
  return (
    <div role="row" aria-rowindex={1} data-row={-1} className={styles.head}>
      <div
        role="columnheader"
        aria-colindex={1}
        aria-label="Areas, and their marks by holder"
        data-column={-1}
        data-active={active === -1 || undefined}
        tabIndex={active === -1 ? 0 : -1}
        className={styles.corner}
      >
        {typing?.what === 'holder' || typing?.what === 'new holder' ? (
          <TypedHolder typing={typing} holders={holders} />
        ) : (
          <Legend />
        )}
      </div>
      {shown.map(({ index, start }) => {
        const holder = holders[index];
        if (!holder) return null;
        return (
          <div
            key={holder.id}
            role="columnheader"
            aria-colindex={index + 2}
            aria-label={holder.name}
            title={holder.name}
            data-column={index}
            data-active={active === index || undefined}
            data-picked={holder.id === pickedId}
            tabIndex={active === index ? 0 : -1}
            className={styles.columnHead}
            style={{ left: start }}
          >
            <span className={styles.columnName}>{shortName(holder.name)}</span>
            {atFault.has(holder.id) && <FaultSign />}
          </div>
        );
      })}
    </div>
  );
}

/** As much of a name as two upright lines hold, with dots where it is cut. */
function shortName(name: string): string {
  return name.length > MOST_LETTERS ? `${name.slice(0, MOST_LETTERS - 1).trimEnd()}…` : name;
}

const MOST_LETTERS = 30;

function TypedHolder({ typing, holders }: { typing: AccessTyping; holders: readonly Holder[] }) {
  const isNew = typing.what === 'new holder';
  const start = typing.what === 'holder' ? (holders.find(({ id }) => id === typing.id)?.name ?? '') : '';
  return (
    <div className={styles.typedHolder}>
      <span>{isNew ? 'A new holder: a person or a role' : 'Another name'}</span>
      <AccessNameField key={JSON.stringify(typing)} typing={typing} start={start} />
      <small>{isNew ? 'Enter adds, Escape ends.' : 'Enter takes it, Escape leaves it.'}</small>
    </div>
  );
}

const MEANINGS = [
  [1, 'must enter'],
  [2, 'free: may or may not'],
  [0, 'must not enter'],
  ['some', 'part of the group'],
] as const;

function Legend() {
  return (
    <ul className={styles.legend} aria-label="What the marks mean">
      {MEANINGS.map(([tick, words]) => (
        <li key={tick}>
          <TickMark tick={tick} />
          {words}
        </li>
      ))}
    </ul>
  );
}
