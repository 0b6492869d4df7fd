/** What a cell of a table of claims says: it enters, it does not, nothing, or why it cannot be known. */
export type ClaimMark =
  | { readonly says: 'enters' | 'stays out' | 'nothing' }
  | { readonly says: 'unclear'; readonly what: string; readonly cure: string };

const YES: ReadonlySet<string> = new Set([
  ...['yes', 'y', 'ja', 'j', 'true', 'wahr', '1', 'x', '+', '✓', '✔', '☑', '●', '•'],
  ...['enters', 'goes in', 'fits', 'tight', 'enters, tight', 'in', 'passt', 'geht'],
]);

const NO: ReadonlySet<string> = new Set([
  ...['no', 'n', 'nein', 'false', 'falsch', '0', '-', '–', '—', '−', '✗', '✘', '☐', '○'],
  ...['blocked', 'does not enter', 'does not go in', 'does not fit', 'doesn’t enter', 'doesn’t fit', 'not'],
  ...['never', 'stays out', 'out', 'passt nicht', 'geht nicht'],
]);

const GIVE_MARK = 'Write yes or no, x or -, 1 or 0; leave the cell empty where nothing is said.';

/** A longer cell is no mark. */
const LONGEST_MARK = 40;

/**
 * What a cell says, by the marks and words that charts use, in any case. A formula is not worked out, and a cross that
 * may mean either is not guessed.
 *
 * @source the marks are common practice, no source.
 * @check tests/unit/interchange/claims-read.test.ts
 */
export function claimMark(cell: string): ClaimMark {
  const text = cell
    .trim()
    .replace(/^'(?=[+\-=])/, '')
    .replace(/\s+/g, ' ')
    .toLowerCase()
    .replace(/'/g, '’');
  if (text === '') return { says: 'nothing' };
  if (text.length <= LONGEST_MARK && YES.has(text)) return { says: 'enters' };
  if (text.length <= LONGEST_MARK && NO.has(text)) return { says: 'stays out' };
  if (/^[=@]/.test(text)) {
    const cure = 'Copy the values instead of the formulas.';
    return { says: 'unclear', what: 'is a formula, which is not worked out here', cure };
  }
  if (text === '×') return { says: 'unclear', what: 'may mean either', cure: GIVE_MARK };
  return { says: 'unclear', what: 'says neither that it enters nor that it does not', cure: GIVE_MARK };
}

/** Whether a cell is a mark and says something. */
export function isClaimMark(cell: string): boolean {
  const { says } = claimMark(cell);
  return says === 'enters' || says === 'stays out';
}
