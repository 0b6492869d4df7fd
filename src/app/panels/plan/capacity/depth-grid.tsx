import { type KeyboardEvent, useRef, useState } from 'react';
import { allowedDepths, type BittingRules } from '../../../../capacity/bitting-rules.ts';
import type { Family } from '../../../../family/family.ts';
import { setRules, settled, toggleDepth, toggleDepthEverywhere } from '../../../state/plan/capacity/capacity-state.ts';
import { useSession } from '../../use-store.ts';
import styles from './depth-grid.module.css';
import { useCapacitySettings } from './use-capacity.ts';

/** What stands in a cell of the grid. */
type CellKind = 'used' | 'excluded' | 'master' | 'parity';

const WORDS: Readonly<Record<CellKind, string>> = {
  used: 'used',
  excluded: 'excluded',
  master: "the top master's, not for change keys",
  parity: 'other parity',
};

/**
 * Which depths each chamber uses: chambers across, depths down. Arrows walk, Space and Enter take a depth out or in; at
 * the left of a row they do so for every chamber. Below, in a two-step progression, the parity of each chamber.
 */
export function DepthGrid({ family }: { family: Family }) {
  const session = useSession();
  const settings = useCapacitySettings(family);
  const rules = settled(settings.rules);
  const { firstDepth } = settings;
  const [at, setAt] = useState({ depth: 0, chamber: 0 });
  const grid = useRef<HTMLTableElement>(null);
  const allowed = allowedDepths(rules);
  const put = (next: BittingRules) => setRules(session, family.name, next);
  const go = (depth: number, chamber: number) => {
    setAt({ depth, chamber });
    grid.current?.querySelector<HTMLElement>(`[data-cell="${depth} ${chamber}"]`)?.focus();
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const step = STEPS[event.key];
    if (!step || event.ctrlKey || event.metaKey || event.altKey) return;
    event.preventDefault();
    event.stopPropagation();
    const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));
    go(clamp(at.depth + step[0], 0, rules.depths - 1), clamp(at.chamber + step[1], -1, rules.chambers - 1));
  };
  return (
    <section className={styles.section} aria-labelledby="depth-grid-title">
      <h2 id="depth-grid-title" className={styles.title}>
        Depths of each chamber
      </h2>
      <table ref={grid} className={styles.grid} onKeyDown={onKeyDown}>
        <thead>
          <tr>
            <td />
            {allowed.map((list, chamber) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a chamber is its place
              <th key={chamber} scope="col" data-empty={list.length === 0 || undefined}>
                {chamber + 1}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {Array.from({ length: rules.depths }, (_, depth) => (
            <DepthRow
              // biome-ignore lint/suspicious/noArrayIndexKey: a depth is its number
              key={depth}
              depth={depth}
              rules={rules}
              firstDepth={firstDepth}
              at={at}
              onAt={setAt}
              put={put}
            />
          ))}
        </tbody>
        {rules.progression === 'two-step' && !rules.master && (
          <ParityRow rules={rules} firstDepth={firstDepth} put={put} />
        )}
      </table>
      <GridLegend rules={rules} />
    </section>
  );
}

/** What the marks mean, as far as they can come up. */
function GridLegend({ rules }: { rules: BittingRules }) {
  return (
    <p className={styles.legend}>
      <span>
        <CellMark kind="used" /> used
      </span>
      <span>
        <CellMark kind="excluded" /> excluded
      </span>
      {rules.master && (
        <span>
          <CellMark kind="master" /> top master
        </span>
      )}
      {rules.progression === 'two-step' && (
        <span>
          <CellMark kind="parity" /> other parity
        </span>
      )}
    </p>
  );
}

interface Place {
  readonly depth: number;
  /** -1: the head of the row. */
  readonly chamber: number;
}

interface DepthRowProps {
  readonly depth: number;
  readonly rules: BittingRules;
  readonly firstDepth: number;
  /** The cell that the tabulator key leads to. */
  readonly at: Place;
  onAt(place: Place): void;
  put(rules: BittingRules): void;
}

/** One depth in every chamber. */
function DepthRow({ depth, rules, firstDepth, at, onAt, put }: DepthRowProps) {
  const row = Math.min(at.depth, rules.depths - 1);
  const column = Math.min(at.chamber, rules.chambers - 1);
  const common = (chamber: number) => ({
    type: 'button' as const,
    'data-cell': `${depth} ${chamber}`,
    tabIndex: depth === row && chamber === column ? 0 : -1,
    onFocus: () => onAt({ depth, chamber }),
  });
  return (
    <tr>
      <th scope="row">
        <button
          {...common(-1)}
          className={styles.depth}
          aria-label={`Depth ${depth + firstDepth}, every chamber`}
          title="Out of every chamber, or in again"
          onClick={() => put(toggleDepthEverywhere(rules, depth))}
        >
          {depth + firstDepth}
        </button>
      </th>
      {allowedDepths(rules).map((list, chamber) => {
        const kind = cellKind(rules, list, depth, chamber);
        return (
          // biome-ignore lint/suspicious/noArrayIndexKey: a chamber is its place
          <td key={chamber}>
            <button
              {...common(chamber)}
              className={styles.cell}
              data-kind={kind}
              aria-pressed={kind === 'used'}
              aria-label={`Depth ${depth + firstDepth} in chamber ${chamber + 1}: ${WORDS[kind]}`}
              onClick={() => put(toggleDepth(rules, chamber, depth))}
            >
              <CellMark kind={kind} />
            </button>
          </td>
        );
      })}
    </tr>
  );
}

const STEPS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowUp: [-1, 0],
  ArrowDown: [1, 0],
  ArrowLeft: [0, -1],
  ArrowRight: [0, 1],
};

function cellKind(rules: BittingRules, allowed: readonly number[], depth: number, chamber: number): CellKind {
  if (allowed.includes(depth)) return 'used';
  if (rules.master?.[chamber] === depth) return 'master';
  return rules.excluded[chamber]?.includes(depth) ? 'excluded' : 'parity';
}

/** A filled dot, a cross, a ring with an M, a dash: told apart without colour. */
function CellMark({ kind }: { kind: CellKind }) {
  return (
    <svg className={styles.mark} data-kind={kind} viewBox="0 0 20 20" width="18" height="18" aria-hidden="true">
      {kind === 'used' && <circle cx="10" cy="10" r="6.5" />}
      {kind === 'excluded' && <path d="M5 5l10 10M15 5L5 15" />}
      {kind === 'master' && <path d="M3.5 16V4l6.5 8 6.5-8v12" />}
      {kind === 'parity' && <path d="M6 10h8" />}
    </svg>
  );
}

interface ParityRowProps {
  readonly rules: BittingRules;
  readonly firstDepth: number;
  put(rules: BittingRules): void;
}

/** Even or odd, by the numbers as they are written. */
function ParityRow({ rules, firstDepth, put }: ParityRowProps) {
  return (
    <tfoot>
      <tr>
        <th scope="row" className={styles.parityHead}>
          parity
        </th>
        {rules.parity.map((parity, chamber) => {
          const odd = (parity === 'odd') === (firstDepth === 0);
          const other = parity === 'odd' ? 'even' : 'odd';
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: a chamber is its place
            <td key={chamber}>
              <button
                type="button"
                className={styles.parity}
                aria-label={`Chamber ${chamber + 1} keeps the ${odd ? 'odd' : 'even'} depths: change`}
                onClick={() => put({ ...rules, parity: rules.parity.map((p, i) => (i === chamber ? other : p)) })}
              >
                {odd ? 'odd' : 'even'}
              </button>
            </td>
          );
        })}
      </tr>
    </tfoot>
  );
}
