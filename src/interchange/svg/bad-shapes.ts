import type { FileFault } from '../json/file-fault.ts';
import { addNote, type DrawingNotes } from './drawing-notes.ts';

/** Most bad shapes of a drawing that are told one by one. */
const MOST_TOLD = 10;

/** What single shapes and groups of a drawing have wrong, while the rest of it may be good. */
export interface BadShapes {
  readonly faults: FileFault[];
  /** Further ones that are not told one by one: how many, and where the first is. */
  more: number;
  firstOfMore: string;
}

/** Notes what is wrong with one shape; what a `use` repeats is told once. */
export function addBadShape(bad: BadShapes, fault: FileFault): void {
  if (bad.faults.some(({ path, what }) => path === fault.path && what === fault.what)) return;
  if (bad.faults.length < MOST_TOLD) bad.faults.push(fault);
  else if (bad.more++ === 0) bad.firstOfMore = fault.path;
}

/** Tells of a drawing that has good shapes too that the bad ones are left out. */
export function noteBadShapes({ faults, more, firstOfMore }: BadShapes, notes: DrawingNotes): void {
  for (const { path, what, cure } of faults)
    addNote(notes, `bad ${path} ${what}`, path, () => `${what}; it is left out`, cure);
  const words = () => (more === 1 ? '1 more shape is left out' : `${more} more shapes are left out`);
  const cure = 'Save the drawing again from the program that made it.';
  if (more > 0) addNote(notes, 'more bad shapes', firstOfMore, () => `${words()} for such reasons`, cure);
}
