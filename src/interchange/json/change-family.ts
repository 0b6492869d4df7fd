import type { FileFault } from './file-fault.ts';
import { MAX_CHARACTERS } from './parse-text.ts';
import { type FamilyRead, readPresentVersion } from './read.ts';
import type { FamilyFile, ProfileFile } from './schema.ts';
import { writeFamily } from './write.ts';

/**
 * The document of a file that was made from the value of another one, or what is wrong with it. Profiles that the two
 * share are taken over as they are, so that an edit costs what it touches. A family that would be too long to be opened
 * again once it is written is refused: copies of sections with pictures come to that.
 *
 * @param next a value made without changing the old one in place.
 * @check tests/unit/interchange/change-family.test.ts
 */
export function changeFamily(next: FamilyFile): FamilyRead {
  const read = readPresentVersion(next);
  const fault = read.ok ? tooLongFault(next) : null;
  return fault ? { ok: false, faults: [fault] } : read;
}

/** Written with line breaks and indents, the fields of the format are at most this many times as long as without. */
const MOST_LAY_OUT = 5;

function tooLongFault(file: FamilyFile): FileFault | null {
  const { profiles, ...frame } = file;
  const rough = profiles.reduce((sum, profile) => sum + roughLength(profile), roughLength(frame));
  if (rough <= MAX_CHARACTERS) return null;
  const { length } = writeFamily(file);
  return length <= MAX_CHARACTERS ? null : sayTooLong(file, length);
}

/** Lengths found before, by the value in the file. */
const roughLengths = new WeakMap<object, number>();

/** A bound of the characters that a profile, or the frame of a file, takes in the written file; found quickly. */
function roughLength(value: Partial<ProfileFile>): number {
  const known = roughLengths.get(value);
  if (known !== undefined) return known;
  const image = value.picture?.image ?? '';
  const rest = value.picture ? { ...value, picture: { ...value.picture, image: '' } } : value;
  const length = image.length + MOST_LAY_OUT * (JSON.stringify(rest).length + 20);
  roughLengths.set(value, length);
  return length;
}

function sayTooLong({ profiles }: FamilyFile, length: number): FileFault {
  const pictures = profiles.flatMap(({ picture }) => picture?.image.length ?? []);
  const taken = pictures.reduce((sum, characters) => sum + characters, 0);
  const sizes = `of ${million(length)} characters, more than the ${million(MAX_CHARACTERS)} that can be opened again`;
  const most = taken > length / 2;
  return {
    path: 'file',
    what: `the file would be one ${sizes}${most ? `; its kept pictures take ${million(taken)} of them` : ''}`,
    cure: most ? 'First take a picture out of a section, or keep a smaller one.' : 'Split the family.',
  };
}

function million(characters: number): string {
  return `${(characters / 1e6).toFixed(1)} million`;
}
