import type { FileFault } from '../json/file-fault.ts';

/** What was left out of a drawing or is doubtful; the same thing at several places becomes one note. */
export interface Notes {
  /** @param line number of the line that the note is about, from 1; null for the whole file. */
  add(line: number | null, what: string, cure: string): void;
  list(): FileFault[];
}

/** Most lines that a note names. */
const MOST_NAMED = 4;

/** Most notes that are told; a drawing with more is looked at in its own program. */
const MOST_NOTES = 40;

/** Starts an empty list of notes. */
export function gatherNotes(): Notes {
  const found = new Map<string, { what: string; cure: string; lines: Set<number> }>();
  return {
    add(line, what, cure) {
      const key = `${what}\0${cure}`;
      const note = found.get(key) ?? { what, cure, lines: new Set() };
      if (line !== null) note.lines.add(line);
      found.set(key, note);
    },
    list() {
      const notes = [...found.values()].map(({ what, cure, lines }) => ({
        path: sayLines([...lines]),
        what: lines.size > 1 ? `${what} (${lines.size} times)` : what,
        cure,
      }));
      if (notes.length <= MOST_NOTES) return notes;
      const more = `${notes.length - MOST_NOTES} more things were left out or are doubtful`;
      return [
        ...notes.slice(0, MOST_NOTES),
        { path: 'file', what: more, cure: 'Mend the first ones and read it again.' },
      ];
    },
  };
}

function sayLines(lines: readonly number[]): string {
  if (lines.length === 0) return 'file';
  if (lines.length === 1) return `line ${lines[0]}`;
  const named = lines.slice(0, MOST_NAMED).join(', ');
  const more = lines.length - MOST_NAMED;
  return more > 0 ? `lines ${named} and ${more} more` : `lines ${named}`;
}
