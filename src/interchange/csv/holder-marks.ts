import { claimMark } from './claim-marks.ts';

/** What a cell of a table of holders says of a blank and an area. */
export type HolderMark =
  | { readonly says: 'must' | 'free' | 'not' | 'nothing' }
  | { readonly says: 'unclear'; readonly what: string; readonly cure: string };

const MUST: ReadonlySet<string> = new Set(['must', 'must enter', 'may enter', 'access']);
const FREE: ReadonlySet<string> = new Set(['*', '?', '(x)', 'free', 'either', 'maybe', 'open', 'do not care']);
const NOT: ReadonlySet<string> = new Set(['must not', 'must not enter', 'no access']);

const GIVE_MARK =
  'Write x where the blank must enter, * where it may or may not; leave the cell empty where it must not.';

/**
 * What a cell says, in any case: the marks that charts use for yes and no, and a star or a question mark for either. A
 * formula is not worked out, and a cross that may mean either is not guessed.
 *
 * @source the marks are common practice, no source.
 * @check tests/unit/interchange/read-holders.test.ts
 */
export function holderMark(cell: string): HolderMark {
  const text = cell.trim().replace(/\s+/g, ' ').toLowerCase();
  if (FREE.has(text)) return { says: 'free' };
  if (MUST.has(text)) return { says: 'must' };
  if (NOT.has(text)) return { says: 'not' };
  const mark = claimMark(cell);
  if (mark.says === 'enters') return { says: 'must' };
  if (mark.says === 'stays out') return { says: 'not' };
  if (mark.says !== 'unclear') return { says: 'nothing' };
  return { ...mark, what: mark.what.startsWith('says') ? 'is no mark' : mark.what, cure: GIVE_MARK };
}

/** Whether a cell is a mark and says something. */
export function isHolderMark(cell: string): boolean {
  const { says } = holderMark(cell);
  return says !== 'nothing' && says !== 'unclear';
}
