import type { Family } from '../../../family/family.ts';
import type { FileFault } from '../../../interchange/json/file-fault.ts';
import type { FamilyFile, NameFile } from '../../../interchange/json/schema.ts';
import type { Rename } from '../../../names/misleading-name.ts';
import { type Register, registerOf, type Sense, sectionsOf } from '../../../names/register.ts';
import { resolveName } from '../../../names/resolve.ts';
import type { EditAnswer } from '../draw/section-editing.ts';
import { commitFamily } from '../edit-document.ts';
import type { Session } from '../session.ts';
import { entryKey } from './name-rows.ts';

/** Puts a name into the register, as one step of undo, and chooses its row. */
export function addEntry(session: Session, entry: NameFile): EditAnswer {
  const known = fileOf(session)?.names ?? [];
  if (known.some((other) => isSameEntry(other, entry))) return [THERE_ALREADY];
  const faults = edit(session, `“${entry.text}” was added.`, (file) => session.doors.names.addNames(file, [entry]));
  if (!faults) choose(session, entryKey(known.length));
  return faults;
}

const THERE_ALREADY: FileFault = {
  path: 'names',
  what: 'The same name stands in the register already, for the same thing.',
  cure: 'Change something about it, or leave it.',
};

/** Changes one entry of the register; what the file says of it besides stays. */
export function changeEntry(session: Session, index: number, entry: NameFile): EditAnswer {
  return edit(session, `“${entry.text}” was changed.`, (file) => session.doors.names.replaceName(file, index, entry));
}

/** Takes an entry out of the register. */
export function removeEntry(session: Session, index: number): void {
  const text = fileOf(session)?.names?.[index]?.text;
  if (text === undefined) return;
  edit(session, `“${text}” was deleted.`, (file) => session.doors.names.removeNames(file, [index]));
  choose(session, null);
}

/** The names of a table that the family has not yet, as names of its own or in its register. */
export function newAmong(session: Session, names: readonly NameFile[]): NameFile[] {
  const { document } = session.documents.getState();
  if (!document) return [];
  const { senses } = registerOf(document.family);
  const known = new Set([...(document.file.names ?? []), ...senses.map(entryOf)].map(plainEntry));
  return names.filter((name) => !known.has(plainEntry(name)));
}

/** Names of a table that stand for a section or a profile that the family does not have, with the nearest that it has. */
export function strangersAmong(session: Session, names: readonly NameFile[]): FileFault[] {
  const family = session.documents.getState().document?.family;
  if (!family) return [];
  const register = registerOf(family);
  const sections = new Set(sectionsOf(family));
  const ids = new Set(family.profiles.map(({ id }) => id));
  return names.flatMap(({ text, section, profile }) => {
    if (profile !== undefined && !ids.has(profile))
      return [{ path: text, what: `There is no profile "${profile}" in this family`, cure: STRANGE }];
    if (section === undefined || sections.has(section)) return [];
    const near = nearSection(register, section);
    const what = `There is no section "${section}" in this family`;
    return [{ path: text, what, cure: near ? `Is it ${near}? Write that, or it is taken as it stands.` : STRANGE }];
  });
}

const STRANGE = 'The name is taken, but it stands for nothing here.';

function nearSection(register: Register, section: string): string | null {
  const resolved = resolveName(register, section);
  const senses = resolved.kind === 'found' ? resolved.senses : resolved.candidates;
  return senses.find((sense) => sense.section !== null)?.section ?? null;
}

/** Every name of a family as an entry, in the order of its register: what a table of all names holds. */
export function entriesOf(family: Family): NameFile[] {
  return registerOf(family).senses.map((sense) => {
    const entry = family.names?.[sense.index ?? -1];
    return entry ? { ...entry } : entryOf(sense);
  });
}

function entryOf({ text, kind, section, profile, scheme, chambers, supersededBy, note }: Sense): NameFile {
  return {
    text,
    kind,
    ...(section === null ? {} : { section }),
    ...(profile === null ? {} : { profile }),
    ...(scheme === null ? {} : { scheme }),
    ...(chambers === null ? {} : { chambers }),
    ...(supersededBy === null ? {} : { supersededBy }),
    ...(note === null ? {} : { note }),
  };
}

/** Puts the names of a table behind the register, as one step of undo. */
export function addEntries(session: Session, names: readonly NameFile[]): EditAnswer {
  const words = names.length === 1 ? 'One name was added.' : `${names.length} names were added.`;
  return edit(session, words, (file) => session.doors.names.addNames(file, names));
}

/** Gives things other names, all as one step of undo; the old names stay in the register as superseded. */
export function rename(session: Session, renames: readonly Rename[], words: string): EditAnswer {
  return edit(session, words, (file) => session.doors.names.renameIn(file, renames));
}

function edit(session: Session, words: string, change: (file: FamilyFile) => FamilyFile): EditAnswer {
  const { documents, doors, names } = session;
  const file = fileOf(session);
  if (!file) return null;
  const before = documents.getState().document;
  const faults = commitFamily(documents, doors, change(file));
  const after = documents.getState().document;
  if (!faults && after && after !== before) names.setState({ done: { words, document: after } });
  return faults;
}

function choose({ names }: Session, chosen: string | null): void {
  names.setState(({ look }) => ({ look: { ...look, chosen } }));
}

function fileOf({ documents }: Session): FamilyFile | null {
  return documents.getState().document?.file ?? null;
}

function isSameEntry(a: NameFile, b: NameFile): boolean {
  return plainEntry(a) === plainEntry(b);
}

/** What a name says, fields that we do not know left out. */
function plainEntry({ text, kind, section, profile, scheme, chambers, supersededBy, note }: NameFile): string {
  return JSON.stringify([text, kind, section, profile, scheme, chambers, supersededBy, note].map((one) => one ?? null));
}
