import { type FileFault, type FilePath, sayPath, sayText, sayValue, valueAt } from './file-fault.ts';
import { RECORD_NAMES, type ShapeFault } from './schema.ts';

/** What to write in each field. */
const CURES: ReadonlyMap<string | number | undefined, string> = new Map([
  ['name', 'Write a name of 1 to 200 characters.'],
  ['note', 'Write the remark as a text in quotes.'],
  ['units', 'Write "units": "mm" or "units": "in".'],
  ['runningClearance', "Write a gap of 0 or more in the file's units, such as 0.04 for mm."],
  ['tolerance', "Write a deviation of 0 or more in the file's units, such as 0.02 for mm, or leave the field out."],
  ['tiltLimitDeg', 'Write an angle from 0 to 15 degrees, or leave the field out.'],
  ['profiles', 'Write a list of profiles, "profiles": [ { … } ].'],
  ['id', 'Write an id of letters, digits and . _ : - (the first a letter or digit, 100 at most).'],
  ['kind', 'Write "opening" for a keyway, "blank" for an uncut key, "tool" for anything else that goes in.'],
  ['section', 'Write the name of the section in quotes, or leave the field out.'],
  ['chambers', 'Write a whole number from 1 to 12, or leave the field out.'],
  ['inBetween', 'Write true or false, or leave the field out.'],
  ['outline', 'Write 3 to 10,000 points, [[x, y], [x, y], [x, y]].'],
  ['milled', 'Write "milled": { "thickness": 2, "height": 8.4, "grooves": [] } with the sizes of the blade.'],
  ['thickness', "Write the thickness of the blade in the file's units, above 0."],
  ['height', "Write the height of the blade in the file's units, above 0."],
  ['backRadius', "Write a radius of 0 or more in the file's units, or leave the field out."],
  ['grooves', 'Write a list of at most 200 grooves; [] for a plain blade.'],
  ['side', 'Write "left" or "right", as seen from the bow.'],
  ['bottom', "Write the height of the groove's lower edge above the back, 0 or more."],
  ['width', 'Write the width of the groove on the face, above 0.'],
  ['depth', 'Write how far the groove goes into the blade, above 0.'],
  ['flankDeg', 'Write an angle from 0 to less than 90 degrees, or leave the field out.'],
  ['rootRadius', "Write a radius of 0 or more in the file's units, or leave the field out."],
]);

/** What to write in the limits of a planned blade. */
const BLADE_CURE = "Write a length in the file's units, such as 2 mm.";

/** What to write in the fields of the register, the claims and the lesson. */
const RECORD_CURES: ReadonlyMap<string | number | undefined, string> = new Map([
  ['names', 'Write a list of names, or leave the field out.'],
  ['claims', 'Write a list of claims, or leave the field out.'],
  ['lesson', 'Write "lesson": { "title": "…", "steps": [] }, or leave the field out.'],
  ['kind', 'Write "keyway", "section", "blank", "tool" or "series".'],
  ['enters', 'Write true where it is said to go in, false where not.'],
  ['blank', 'Write the blank in quotes: its name in a claim, its id in a lesson.'],
  ['opening', 'Write the keyway in quotes: its name in a claim, its id in a lesson.'],
  ['openings', 'Write a list of ids of keyways, or leave the field out.'],
  ['chambers', 'Write a whole number from 1 to 12, or leave the field out.'],
  ['show', 'Write "words", "pair", "wall", "tiers", "passage" or "question".'],
  ['steps', 'Write a list of steps, [{ "show": "words", "title": "…" }].'],
  ['push', 'Write true or false, or leave the field out.'],
  ['plan', 'Write "plan": { "areas": [], "holders": [], "blade": { … } }, or leave the field out.'],
  ['areas', 'Write a list of areas, [{ "id": "…", "name": "…" }].'],
  ['holders', 'Write a list of holders, [{ "id": "…", "name": "…", "enters": [] }].'],
  ['free', 'Write a list of ids of areas, or leave the field out.'],
  ['baseBlanks', 'Write true or false, or leave the field out.'],
  ['allSection', 'Write true or false, or leave the field out.'],
  ['reserve', 'Write a whole number of sections, 0 to 1,000, or leave the field out.'],
  ['stops', 'Write 1, 2 or 3, or leave the field out.'],
  ['depths', 'Write 1, 2, 3 or 4, or leave the field out.'],
  ['flankDeg', 'Write an angle from 0 to less than 90 degrees, or leave the field out.'],
  ['sides', 'Write "left", "right" or "both", or leave the field out.'],
]);

/**
 * A value without the shape of the format, in words.
 *
 * @param root the value that was looked at, which stands at `place` in the file.
 * @check tests/unit/interchange/bad-files.test.ts
 */
export function sayShapeFault(root: unknown, place: FilePath, { path, wanted }: ShapeFault): FileFault {
  const value = valueAt(root, path);
  return {
    path: sayPath([...place, ...path]),
    what: `${sayWhose(root, place, path)}is ${sayValue(value)}, ${wanted}`,
    cure: cureFor([...place, ...path], value === undefined),
  };
}

/** The id of the profile concerned, where it has one and is not itself at fault. */
function sayWhose(root: unknown, place: FilePath, path: FilePath): string {
  const id = place.length > 0 && path.length > 0 && path[0] !== 'id' ? valueAt(root, ['id']) : undefined;
  return typeof id === 'string' ? `${sayText(id).slice(1, -1)}: ` : '';
}

/** What to do about the value at a place. */
function cureFor(path: FilePath, missing: boolean): string {
  if (path.includes('picture')) return 'Correct the field, or remove "picture": the outline does not need it.';
  const isRecord = RECORD_NAMES.some((name) => name === path[0]);
  const named = path.findLastIndex((key) => typeof key === 'string');
  const field = path[named];
  const inside = path.length - 1 - named;
  if (field === 'outline' && inside > 0) return 'Write each point as two numbers, [x, y].';
  if ((field === 'profiles' || field === 'grooves') && inside > 0)
    return `Write each of the ${field} as an object { … }.`;
  const cures = isRecord ? RECORD_CURES : CURES;
  if (path.includes('blade') && field !== 'flankDeg' && field !== 'sides') return BLADE_CURE;
  if (path[0] === 'plan' && field === 'enters') return 'Write a list of ids of areas, "enters": [].';
  const cure =
    cures.get(field) ?? (isRecord ? 'Write a text of 1 to 200 characters.' : undefined) ?? 'Write what is asked for.';
  return missing ? `Add the field ${sayText(String(field))}. ${cure}` : cure;
}
