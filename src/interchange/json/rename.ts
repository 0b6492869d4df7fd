import type { Rename } from '../../names/misleading-name.ts';
import type { FamilyFile, NameFile, ProfileFile } from './schema.ts';

/** New names by what they are for. */
interface Wanted {
  readonly profiles: ReadonlyMap<string, string>;
  readonly sections: ReadonlyMap<string, string>;
  readonly entries: ReadonlyMap<number, string>;
}

/**
 * The family with other names, all at once, so that two names may change places. Each old name stays in the register as
 * superseded by the new one: what was written under it can still be read, in claims, old lists and questions. A section
 * takes the names of its profiles with it where they contain its own as whole words, and the entries that stand for it.
 *
 * @param renames by the profiles, sections and places in the register of the file given; one whose target is not there, or
 *   whose new name is blank, is left out. Of two for one target the last counts.
 * @returns a new value; the same one where nothing changes.
 * @check tests/unit/interchange/rename.test.ts
 */
export function renameIn(file: FamilyFile, renames: readonly Rename[]): FamilyFile {
  const wanted = wantedOf(renames);
  const profiles = file.profiles.map((profile) => renamedProfile(profile, wanted));
  const names = (file.names ?? []).map((entry, i) => renamedEntry(entry, i, wanted));
  const isSame = profiles.every((p, i) => p === file.profiles[i]) && names.every((n, i) => n === file.names?.[i]);
  if (isSame) return file;
  const old = [
    ...oldSections(file, wanted),
    ...file.profiles.flatMap((profile, i) => oldProfileName(profile, profiles[i].name)),
    ...(file.names ?? []).flatMap((entry, i) => oldEntry(entry, names[i])),
  ];
  return { ...file, profiles, names: withOldNames(names, old) };
}

function wantedOf(renames: readonly Rename[]): Wanted {
  const wanted = {
    profiles: new Map<string, string>(),
    sections: new Map<string, string>(),
    entries: new Map<number, string>(),
  };
  for (const { target, to } of renames) {
    const name = to.trim();
    if (name === '') continue;
    if (target.of === 'profile') wanted.profiles.set(target.id, name);
    else if (target.of === 'section') wanted.sections.set(target.section, name);
    else wanted.entries.set(target.index, name);
  }
  return wanted;
}

/** A profile under its new name and section; the same value where neither changes. */
function renamedProfile(profile: ProfileFile, { profiles, sections }: Wanted): ProfileFile {
  const { section, name } = profile;
  const to = section === undefined ? undefined : sections.get(section);
  const carried = section !== undefined && to !== undefined ? replaceName(name, section, to) : name;
  const newName = profiles.get(profile.id) ?? carried;
  if (newName === name && (to === undefined || to === section)) return profile;
  return { ...profile, ...(to !== undefined && { section: to }), name: newName };
}

/** An entry of the register under its new text, for the section under its new name. */
function renamedEntry(entry: NameFile, index: number, { sections, entries }: Wanted): NameFile {
  const section = entry.section === undefined ? undefined : (sections.get(entry.section) ?? entry.section);
  const text = entries.get(index) ?? entry.text;
  if (section === entry.section && text === entry.text) return entry;
  return { ...entry, text, ...(section !== undefined && { section }) };
}

function oldSections(file: FamilyFile, { sections }: Wanted): NameFile[] {
  const had = new Set(file.profiles.map(({ section }) => section));
  return [...sections]
    .filter(([section, to]) => had.has(section) && section !== to)
    .map(([section, to]) => ({ text: section, kind: 'section', section: to, supersededBy: to }));
}

/** The register entry that a profile's former name becomes. */
function oldProfileName({ id, kind, name, chambers }: ProfileFile, to: string): NameFile[] {
  if (name === to) return [];
  const length = chambers === undefined || kind === 'opening' ? {} : { chambers };
  return [{ text: name, kind: kind === 'opening' ? 'keyway' : kind, profile: id, ...length, supersededBy: to }];
}

function oldEntry(entry: NameFile, now: NameFile): NameFile[] {
  return entry.text === now.text ? [] : [{ ...now, text: entry.text, supersededBy: now.text }];
}

/** The register with old names behind the others. An old name that comes back into use for its thing is not kept as old. */
function withOldNames(names: readonly NameFile[], old: readonly NameFile[]): NameFile[] {
  const kept = names.filter((one) => !old.some((gone) => one.supersededBy === gone.text && isRevived(one, gone)));
  const fresh = old.filter(
    (one) =>
      !kept.some(
        (other) => other.text === one.text && isSameThing(other, one) && other.supersededBy === one.supersededBy,
      ),
  );
  return [...kept, ...fresh];
}

/** Whether an old name is the very name that its thing gets again. */
function isRevived(entry: NameFile, gone: NameFile): boolean {
  return entry.text === gone.supersededBy && isSameThing(entry, gone);
}

function isSameThing(a: NameFile, b: NameFile): boolean {
  return a.kind === b.kind && a.profile === b.profile && a.scheme === b.scheme && a.section === b.section;
}

/** A text with a name in it replaced, where the name stands as whole words. */
function replaceName(text: string, name: string, to: string): string {
  const isPart = (sign: string) => /[\p{L}\p{N}]/u.test(sign);
  let result = '';
  let from = 0;
  for (let at = text.indexOf(name); at >= 0; at = text.indexOf(name, at + name.length)) {
    const whole = !isPart(text.charAt(at - 1)) && !isPart(text.charAt(at + name.length));
    result += text.slice(from, at) + (whole ? to : name);
    from = at + name.length;
  }
  return result + text.slice(from);
}
