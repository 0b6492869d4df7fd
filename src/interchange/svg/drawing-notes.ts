import type { FileFault } from '../json/file-fault.ts';

/** Something that is told once, with the number of times that it came up. */
interface Told {
  readonly path: string;
  readonly what: (count: number) => string;
  readonly cure: string;
  count: number;
}

/** What is told about a drawing, one entry a kind, so that a thousand words of text make one note. */
export type DrawingNotes = Map<string, Told>;

/** Adds one case of a kind; place, words and cure are those of the first. */
export function addNote(
  notes: DrawingNotes,
  kind: string,
  path: string,
  what: (count: number) => string,
  cure: string,
): void {
  const told = notes.get(kind);
  if (told) told.count++;
  else notes.set(kind, { path, what, cure, count: 1 });
}

/** The notes in the order in which they first came up. */
export function listNotes(notes: DrawingNotes): FileFault[] {
  return [...notes.values()].map(({ path, what, cure, count }) => ({ path, what: what(count), cure }));
}

/** `1 picture is left out`, `3 pictures are left out`. */
export function leftOut(one: string, many: string): (count: number) => string {
  return (count) => (count === 1 ? `1 ${one} is left out` : `${count} ${many} are left out`);
}
