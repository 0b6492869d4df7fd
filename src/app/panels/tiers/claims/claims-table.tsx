import { type KeyboardEvent, type MouseEvent, useLayoutEffect, useMemo, useRef } from 'react';
import type { CheckedClaim } from '../../../../claims/check-claims.ts';
import type { Claim } from '../../../../family/claim.ts';
import type { Family } from '../../../../family/family.ts';
import type { Session } from '../../../state/session.ts';
import { changeClaim, deleteClaims } from '../../../state/tiers/claims-editing.ts';
import { claimsOf } from '../../../state/tiers/claims-state.ts';
import { rowAfter } from '../../rows/row-after.ts';
import { useWindowOfRows } from '../../rows/use-window-of-rows.ts';
import { useSession, useStore } from '../../use-store.ts';
import { ClaimRow } from './claim-row.tsx';
import styles from './claims-table.module.css';
import { useClaimWords } from './use-claims.ts';

/** Height of a row and of the head, pixels. */
const SIZES = { row: 66, head: 34 };

interface ClaimsTableProps {
  readonly family: Family;
  readonly rows: readonly CheckedClaim[];
}

/**
 * The claims, one a row, those that fail first. Only the rows in sight are on the page. Keys: arrows, Home and End walk;
 * Space ticks; Enter compares; F2 changes; Delete deletes.
 */
export function ClaimsTable({ family, rows }: ClaimsTableProps) {
  const session = useSession();
  const store = claimsOf(session);
  const picked = useStore(store, (s) => s.picked);
  const ticked = useStore(store, (s) => s.ticked);
  const words = useClaimWords(family);
  const claims = family.claims ?? NONE;
  const list = useList(session, rows);
  const { onKeyDown, onClick } = listHands(session, rows, list);
  return (
    <div ref={list.frame} className={styles.frame}>
      <table
        // biome-ignore lint/a11y/noNoninteractiveElementToInteractiveRole: the keys go along its rows, as the grid pattern asks
        role="grid"
        aria-label="Claims"
        aria-multiselectable="true"
        aria-rowcount={rows.length + 1}
        className={styles.grid}
        style={{ height: list.total }}
        onKeyDown={onKeyDown}
        onClick={onClick}
        onDoubleClick={() => comparePicked(session, rows[list.at])}
      >
        <Head />
        <tbody>
          {list.shown.map(({ index, start }) => {
            const row = rows[index];
            return (
              row && (
                <ClaimRow
                  key={row.index}
                  row={row}
                  at={index}
                  top={start}
                  claims={claims}
                  words={words}
                  active={index === list.at}
                  picked={row.claim === picked}
                  ticked={ticked.has(row.claim)}
                />
              )
            );
          })}
        </tbody>
      </table>
    </div>
  );
}

/** The rows on the page and the one that the tabulator key leads to. */
function useList(session: Session, rows: readonly CheckedClaim[]) {
  const picked = useStore(claimsOf(session), (s) => s.picked);
  const frame = useRef<HTMLDivElement>(null);
  const at = useMemo(
    () =>
      Math.max(
        0,
        rows.findIndex(({ claim }) => claim === picked),
      ),
    [rows, picked],
  );
  const { shown, total, reveal } = useWindowOfRows({
    ...{ count: rows.length, size: SIZES.row, frame, kept: at, before: SIZES.head, after: 4 },
  });
  const wantsFocus = useRef(false);
  useLayoutEffect(() => {
    if (!wantsFocus.current) return;
    const row = frame.current?.querySelector<HTMLElement>(`[data-row="${at}"]`);
    if (!row) return;
    wantsFocus.current = false;
    row.focus({ preventScroll: true });
  });
  return { frame, at, shown, total, reveal, wantsFocus };
}

/** What keys and the pointer do to the list. */
function listHands(session: Session, rows: readonly CheckedClaim[], list: ReturnType<typeof useList>) {
  const { at, frame, reveal, wantsFocus } = list;
  const go = (to: number) => {
    const row = rows[to];
    if (!row) return;
    wantsFocus.current = true;
    reveal(to);
    pickClaim(session, row);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey) return;
    const command = event.ctrlKey || event.metaKey;
    const to = rowAfter(event.key, at, rows.length, SIZES, frame.current?.clientHeight ?? 0);
    if (to !== null && !command) go(to);
    else if (!pressOnRow(session, event.key, command, rows, at)) return;
    else wantsFocus.current = event.key !== 'F2' && event.key !== 'Enter';
    event.preventDefault();
    event.stopPropagation();
  };
  const onClick = (event: MouseEvent) => {
    const target = event.target as Element;
    const n = Number(target.closest('[data-row]')?.getAttribute('data-row') ?? Number.NaN);
    if (!rows[n]) return;
    if (target.closest('[data-tick]')) toggleTick(session, rows[n].claim);
    go(n);
  };
  return { onKeyDown, onClick };
}

const NONE: readonly Claim[] = [];

const COLUMNS = ['Ticked', 'Standing', 'Claim', 'Margin', 'Why'];

function Head() {
  return (
    <thead className={styles.head}>
      <tr aria-rowindex={1} className={styles.row}>
        {COLUMNS.map((name) => (
          <th key={name} scope="col" className={name === 'Why' ? styles.why : undefined}>
            {name === 'Ticked' ? <span className="unseen">{name}</span> : name}
          </th>
        ))}
      </tr>
    </thead>
  );
}

/** Does what a key does to the row in focus; false for keys that do nothing. */
function pressOnRow(
  session: Session,
  key: string,
  command: boolean,
  rows: readonly CheckedClaim[],
  at: number,
): boolean {
  const row = rows[at];
  if (!row) return false;
  if (command && key.toLowerCase() === 'a') return tickAll(session, rows);
  if (command) return false;
  if (key === ' ') toggleTick(session, row.claim);
  else if (key === 'Enter') comparePicked(session, row);
  else if (key === 'F2') changeClaim(session, row.claim);
  else if (key === 'Delete' || key === 'Backspace') deleteFrom(session, rows, at);
  else if (key === 'Escape') claimsOf(session).setState({ ticked: new Set() });
  else return false;
  return true;
}

/** Deletes what is ticked, else the row in focus; the focus goes to the row that comes in its place. */
function deleteFrom(session: Session, rows: readonly CheckedClaim[], at: number): void {
  const { ticked } = claimsOf(session).getState();
  const gone = ticked.size > 0 ? ticked : new Set([rows[at].claim]);
  const next = rows.slice(at).find(({ claim }) => !gone.has(claim)) ?? rows.findLast(({ claim }) => !gone.has(claim));
  deleteClaims(session, gone);
  if (next) pickClaim(session, next);
}

/** Picks a claim, and its pair in the whole window. */
function pickClaim(session: Session, { claim, pair }: CheckedClaim): void {
  claimsOf(session).setState({ picked: claim });
  if (pair) session.selection.setState({ entrantId: pair.entrantId, openingId: pair.openingId });
}

function comparePicked(session: Session, row: CheckedClaim | undefined): void {
  if (!row?.pair) return;
  pickClaim(session, row);
  session.selection.setState({ view: 'compare' });
}

function toggleTick(session: Session, claim: Claim): void {
  const ticked = new Set(claimsOf(session).getState().ticked);
  if (!ticked.delete(claim)) ticked.add(claim);
  claimsOf(session).setState({ ticked });
}

/** Ticks all that is listed, or nothing where all of it is ticked. */
export function tickAll(session: Session, rows: readonly CheckedClaim[]): true {
  const { ticked } = claimsOf(session).getState();
  const all = rows.every(({ claim }) => ticked.has(claim));
  claimsOf(session).setState({ ticked: new Set(all ? [] : rows.map(({ claim }) => claim)) });
  return true;
}
