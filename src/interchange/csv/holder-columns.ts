/** What a column of a list of holders holds. */
export type HolderColumn = 'holder' | 'area' | 'mark' | 'section';

/** Which cell of a row holds what; -1 for those that the table lacks. */
export type HolderColumns = Readonly<Record<HolderColumn, number>>;

/** Headings by what they mean, in small letters. */
const HEADINGS: Readonly<Record<HolderColumn, readonly string[]>> = {
  holder: ['holder', 'holders', 'person', 'people', 'role', 'roles', 'who', 'key holder', 'name of holder'],
  area: ['area', 'areas', 'room', 'rooms', 'building', 'buildings', 'place', 'door', 'doors', 'where'],
  mark: ['enters', 'must enter', 'access', 'tick', 'mark', 'may enter', 'says'],
  section: ['section', 'sections', 'key section'],
};

/** A longer cell is no heading. */
const LONGEST_HEADING = 40;

/** What a heading means; null where it means nothing here. */
export function holderHeading(cell: string): HolderColumn | null {
  if (cell.length > LONGEST_HEADING) return null;
  const plain = cell
    .replace(/[?:*]+$/, '')
    .trim()
    .replace(/\s+/g, ' ')
    .toLowerCase();
  const found = Object.entries(HEADINGS).find(([, headings]) => headings.includes(plain));
  return found ? (found[0] as HolderColumn) : null;
}

/** The columns that a first row names, or what is wrong with them; null where it is no header of a list. */
export function holderColumns(
  cells: readonly string[],
):
  | { readonly ok: true; readonly columns: HolderColumns }
  | { readonly ok: false; readonly what: string; readonly cure: string }
  | null {
  const meanings = cells.map(holderHeading);
  const known = meanings.filter((meaning) => meaning !== null);
  // A matrix may have "holder" or "area" in its corner; a list names two columns at least.
  if (known.length < 2) return null;
  const twice = known.find((meaning, i) => known.indexOf(meaning) !== i);
  if (twice) return { ok: false, what: `has two columns for “${twice}”`, cure: 'Leave one of them out.' };
  if (!known.includes('area'))
    return {
      ok: false,
      what: 'has no column “area”',
      cure: 'Name the columns holder and area; enters and section may follow.',
    };
  const at = (column: HolderColumn) => meanings.indexOf(column);
  return { ok: true, columns: { holder: at('holder'), area: at('area'), mark: at('mark'), section: at('section') } };
}
