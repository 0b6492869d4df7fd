import type { Family } from '../../../family/family.ts';
import type { FamilyFile } from '../../../interchange/json/schema.ts';
import { foldName } from '../../../names/fold-name.ts';
import type { Knowledge } from '../../../names/knowledge.ts';
import { misleadingNames } from '../../../names/misleading.ts';
import type { MisleadingName, NameTarget, Rename } from '../../../names/misleading-name.ts';
import { registerOf, type Sense } from '../../../names/register.ts';
import type { Doors } from '../doors.ts';

/** What renames are checked against. */
export interface RenameGround {
  readonly doors: Pick<Doors, 'changeFamily'> & { readonly names: Pick<Doors['names'], 'renameIn'> };
  readonly file: FamilyFile;
  readonly knowledge: Knowledge;
  /** The names that mislead as things stand. */
  readonly found: readonly MisleadingName[];
}

/** What a thing is called now; empty where it is not there. */
export function nameOf(family: Family, target: NameTarget): string {
  if (target.of === 'section') return target.section;
  if (target.of === 'profile') return family.profiles.find(({ id }) => id === target.id)?.name ?? '';
  return family.names?.[target.index]?.text ?? '';
}

/** The list of a name of the register that stands for something else in another list; empty for all other names. */
export function schemeOf({ names = [] }: Family, target: NameTarget): string {
  const entry = target.of === 'register' ? names[target.index] : undefined;
  const twice = names.some((other) => other.text === entry?.text && other !== entry);
  return twice ? (entry?.scheme ?? '') : '';
}

/**
 * What speaks against some renames done together: a blank name, one that is taken, one that would mislead in its turn.
 *
 * @param suggested true for names that a finding suggests: the core sees to it that they make no other fault.
 * @returns a sentence, or the empty text where nothing does.
 * @check tests/unit/app/check-rename.test.ts
 */
export function troubleWith(ground: RenameGround, renames: readonly Rename[], suggested = false): string {
  const { family } = ground.knowledge;
  if (renames.some(({ to }) => to.trim() === '')) return 'Type a name.';
  const changed = renames.filter(({ target, to }) => nameOf(family, target) !== to.trim());
  if (changed.length === 0) return 'It is called so already.';
  for (const { target, to } of changed) {
    const taken = takenBy(family, target, to);
    if (taken) return `“${to.trim()}” is taken: it is the name of ${senseWords(taken)}.`;
  }
  const twice = changed.find(({ to }, i) => changed.findIndex((other) => foldName(other.to) === foldName(to)) !== i);
  if (twice) return `“${twice.to.trim()}” would be the name of two things.`;
  return suggested ? '' : misleadsAfter(ground, changed);
}

/** A name in use that is written the same but for capitals, spaces and punctuation, of anything but the target itself. */
function takenBy(family: Family, target: NameTarget, to: string): Sense | undefined {
  const folded = foldName(to);
  const { senses } = registerOf(family);
  const own = senses.find((sense) => isOf(sense, target));
  return senses.find(
    (sense) => foldName(sense.text) === folded && !isOf(sense, target) && !(own && isSameThing(sense, own)),
  );
}

/** Whether another name stands for the very same, or for the section of it: then one may be written like the other. */
function isSameThing(other: Sense, own: Sense): boolean {
  if (other.section !== own.section) return false;
  if (other.source === 'section') return true;
  return other.kind === own.kind && other.profile === own.profile && other.chambers === own.chambers;
}

function isOf(sense: Sense, target: NameTarget): boolean {
  if (target.of === 'profile') return sense.profile === target.id;
  if (target.of === 'section') return sense.source === 'section' && sense.section === target.section;
  return sense.index === target.index;
}

function senseWords({ kind, section, scheme, source }: Sense): string {
  const of = section !== null && kind !== 'section' ? ` of the ${section} section` : '';
  const where = source === 'register' ? ` in ${scheme ?? 'the register'}` : '';
  return `a ${kind}${of}${where}`;
}

/** The first fault that the new names would have and that is not there now. */
function misleadsAfter({ doors, file, knowledge, found }: RenameGround, renames: readonly Rename[]): string {
  const after = doors.changeFamily(doors.names.renameIn(file, renames));
  if (!after.ok) return after.faults[0]?.what ?? 'The file would not be sound.';
  const { family } = after.document;
  const known = new Set(found.map(({ words }) => words));
  const fresh = new Set(renames.map(({ to }) => to.trim()));
  const fault = misleadingNames({ ...knowledge, family, register: registerOf(family) }).find(
    ({ texts, words }) => !known.has(words) && texts.some((text) => isMadeOf(text, fresh)),
  );
  return fault ? `It would mislead too: ${fault.words}` : '';
}

function isMadeOf(text: string, fresh: ReadonlySet<string>): boolean {
  return [...fresh].some((name) => text === name || text.includes(name));
}

/** All suggestions together, and what speaks against doing them at once; empty where nothing does. */
export interface WholeRename {
  readonly renames: readonly Rename[];
  readonly trouble: string;
}

/**
 * Every suggested rename as one. A thing for which two findings suggest different names is not renamed unasked.
 *
 * @check tests/unit/app/check-rename.test.ts
 */
export function renameAll(ground: RenameGround): WholeRename {
  const byTarget = new Map<string, Rename>();
  let disagree = '';
  for (const one of ground.found.flatMap(({ renames }) => renames)) {
    const key = JSON.stringify(one.target);
    const before = byTarget.get(key);
    if (before && before.to !== one.to) disagree ||= nameOf(ground.knowledge.family, one.target);
    byTarget.set(key, before ?? one);
  }
  const renames = [...byTarget.values()];
  if (renames.length === 0) return { renames, trouble: 'No new names can be suggested.' };
  if (disagree !== '') return { renames, trouble: `Two different names are suggested for “${disagree}”.` };
  return { renames, trouble: troubleWith(ground, renames) };
}
