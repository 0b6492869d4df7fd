/** What a column of a list of claims holds. */
export type ClaimColumn = 'blank' | 'opening' | 'enters' | 'by' | 'note';

/** Which cell of a row holds what; those that a table may lack are null. */
export interface ClaimColumns {
  readonly blank: number;
  readonly opening: number;
  readonly enters: number;
  readonly by: number | null;
  readonly note: number | null;
}

/** Headings by what they mean, in small letters. */
const HEADINGS: Readonly<Record<ClaimColumn, readonly string[]>> = {
  blank: ['blank', 'blank or tool', 'blanks', 'tool', 'key', 'key blank', 'blade', 'rohling'],
  opening: ['keyway', 'opening', 'keyway opening', 'keyways', 'lock', 'cylinder', 'schlüsselkanal'],
  enters: ['enters', 'goes in', 'fits', 'says', 'claim', 'answer', 'verdict', 'enters or not', 'passt', 'yes/no'],
  by: ['by', 'source', 'who', 'who says so', 'who says it', 'said by', 'from', 'according to', 'quelle', 'wer'],
  note: ['note', 'notes', 'remark', 'remarks', 'comment', 'bemerkung', 'notiz'],
};

/** A longer cell is no heading. */
const LONGEST_HEADING = 40;

/** What a heading means; null where it means nothing here. */
export function claimHeading(cell: string): ClaimColumn | null {
  if (cell.length > LONGEST_HEADING) return null;
  const plain = cell
    .trim()
    .replace(/\s+/g, ' ')
    .replace(/[?:*]+$/, '')
    .trim()
    .toLowerCase();
  const found = Object.entries(HEADINGS).find(([, headings]) => headings.includes(plain));
  return found ? (found[0] as ClaimColumn) : null;
}

/** The columns that a first row names, or those that it lacks or has twice; null where it is no header of a list at all. */
export function claimColumns(
  cells: readonly string[],
):
  | { readonly ok: true; readonly columns: ClaimColumns }
  | { readonly ok: false; readonly what: string; readonly cure: string }
  | null {
  const meanings = cells.map(claimHeading);
  const at = (column: ClaimColumn) => meanings.indexOf(column);
  const needed = (['blank', 'opening', 'enters'] as const).filter((column) => at(column) < 0);
  // A matrix may have "blank" in its corner; a list names two of the three at least.
  if (needed.length > 1) return null;
  const names = { blank: 'blank', opening: 'keyway', enters: 'enters', by: 'source', note: 'note' };
  if (needed.length === 1) {
    const cure = 'Name the columns blank, keyway and enters; source and note may follow.';
    return { ok: false, what: `has no column “${names[needed[0]]}”`, cure };
  }
  const twice = meanings.find((meaning, i) => meaning !== null && meanings.indexOf(meaning) !== i);
  if (twice) return { ok: false, what: `has two columns for “${names[twice]}”`, cure: 'Leave one of them out.' };
  const place = (column: ClaimColumn) => (at(column) < 0 ? null : at(column));
  const columns = { blank: at('blank'), opening: at('opening'), enters: at('enters') };
  return { ok: true, columns: { ...columns, by: place('by'), note: place('note') } };
}
