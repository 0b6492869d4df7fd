import { firstFree } from '../family/first-free.ts';
import { fileNameText } from '../family/plain-name.ts';
import { zipFiles } from '../interchange/link/deflate.ts';
import { write3mf } from '../interchange/print3d/write-3mf.ts';
import { writeStl } from '../interchange/print3d/write-stl.ts';
import type { DisplaySet, SolidPart } from '../print3d/display-set.ts';
import { joinParts } from '../print3d/join-parts.ts';
import { placeOnBed } from '../print3d/place-parts.ts';
import { type Job, runInSlices } from './job.ts';

/** A display set and the form that it is written in. */
export interface DisplayWriting {
  readonly set: Pick<DisplaySet, 'parts' | 'bed' | 'beds'>;
  /** Of the whole, for people. */
  readonly title: string;
  readonly as: '3mf' | 'stl';
  /** What each file holds; of several files an archive (ZIP) is made. */
  readonly each: 'set' | 'bed' | 'part';
}

/**
 * The bytes of a display set in a form for printers: one file, or an archive of them. Cancelled between two files.
 *
 * @check tests/unit/jobs/write-display-set.test.ts
 */
export const writeDisplaySet: Job<DisplayWriting, Uint8Array> = (input, context) =>
  runInSlices(writeFiles(input), context);

function* writeFiles(input: DisplayWriting): Generator<{ done: number; total: number }, Uint8Array, void> {
  const { as, title } = input;
  const groups = groupsOf(input);
  const total = groups.length + 1;
  const files: Record<string, Uint8Array> = {};
  for (const [done, { name, parts }] of groups.entries()) {
    yield { done, total };
    const stem = fileNameText(name) || 'part';
    const free = firstFree(Object.keys(files), (n) => `${stem}${n === 1 ? '' : ` ${n}`}.${as}`);
    files[free] = as === '3mf' ? write3mf(parts, title) : writeStl(joinParts(parts));
  }
  yield { done: groups.length, total };
  return input.each === 'set' ? Object.values(files)[0] : zipFiles(files);
}

/** What is written into one file, under its name; a bed's or a part's own begins where its bed does. */
function groupsOf({ set, each }: DisplayWriting): { readonly name: string; readonly parts: readonly SolidPart[] }[] {
  const { parts, beds } = set;
  if (each === 'set') return [{ name: 'set', parts }];
  if (each === 'part') return parts.map((part) => ({ name: part.name, parts: [{ ...part, place: [0, 0, 0] }] }));
  return Array.from({ length: beds }, (_, bed) => ({
    name: `bed ${bed + 1} of ${beds}`,
    parts: parts.filter((part) => part.bed === bed).map((part) => ({ ...part, place: placeOnBed(part, set.bed) })),
  }));
}
