import type { NameTarget, Rename } from '../../names/misleading-name.ts';
import type { FamilyFile, NameFile, ProfileFile } from './schema.ts';

/**
 * The family with other names. Each old name stays in the register as superseded by the new one, so that what was
 * written under it can still be read: claims, old lists, questions. A section that is renamed takes the names of its
 * profiles with it where they contain its own, and the entries of the register that stand for it.
 *
 * Renames are done in their order; a target names what the file has when its turn comes, places in the register being
 * those of the file given. One whose target is not there, or whose new name is blank, is left out.
 *
 * @returns a new value; the same one where nothing changes.
 * @check tests/unit/interchange/rename.test.ts
 */
export function renameIn(file: FamilyFile, renames: readonly Rename[]): FamilyFile {
  return renames.reduce((now, { target, to }) => (to.trim() === '' ? now : renameOne(now, target, to.trim())), file);
}

function renameOne(file: FamilyFile, target: NameTarget, to: string): FamilyFile {
  if (target.of === 'profile') return renameProfile(file, target.id, to);
  if (target.of === 'section') return renameSection(file, target.section, to);
  return renameEntry(file, target.index, to);
}

function renameProfile(file: FamilyFile, id: string, to: string): FamilyFile {
  const profile = file.profiles.find((one) => one.id === id);
  if (!profile || profile.name === to) return file;
  const profiles = file.profiles.map((one) => (one === profile ? { ...one, name: to } : one));
  return withNames({ ...file, profiles }, superseding(file.names ?? [], [oldProfileName(profile, to)]));
}

function renameSection(file: FamilyFile, section: string, to: string): FamilyFile {
  if (section === to || !file.profiles.some((one) => one.section === section)) return file;
  const renamed = (name: string) => replaceName(name, section, to);
  const old: NameFile[] = [{ text: section, kind: 'section', section: to, supersededBy: to }];
  const profiles = file.profiles.map((profile) => {
    if (profile.section !== section) return profile;
    const name = renamed(profile.name);
    if (name !== profile.name) old.push(oldProfileName(profile, name));
    return { ...profile, section: to, name };
  });
  const names = (file.names ?? []).map((entry) => (entry.section === section ? { ...entry, section: to } : entry));
  return withNames({ ...file, profiles }, superseding(names, old));
}

function renameEntry(file: FamilyFile, index: number, to: string): FamilyFile {
  const names = file.names ?? [];
  const entry = names[index];
  if (!entry || entry.text === to) return file;
  const followed = names.map((one) =>
    one !== entry && one.supersededBy === entry.text && one.scheme === entry.scheme
      ? { ...one, supersededBy: to }
      : one,
  );
  const old: NameFile = { ...entry, supersededBy: to };
  return withNames(file, superseding(followed.with(index, { ...entry, text: to }), [old]));
}

/** The register entry that a profile's former name becomes. */
function oldProfileName({ id, kind, name, chambers }: ProfileFile, to: string): NameFile {
  const length = chambers === undefined || kind === 'opening' ? {} : { chambers };
  return { text: name, kind: kind === 'opening' ? 'keyway' : kind, profile: id, ...length, supersededBy: to };
}

/** The register with old names behind the others; one that is there in the same sense already is not put in again. */
function superseding(names: readonly NameFile[], old: readonly NameFile[]): NameFile[] {
  // A name that comes back into use is no longer an old one.
  const revived = new Set(old.map(({ supersededBy }) => supersededBy));
  const kept = names.filter((one) => !(one.supersededBy !== undefined && revived.has(one.text) && isOfOurs(one, old)));
  const fresh = old.filter((one) => !kept.some((other) => isSameSense(one, other)));
  return [...kept, ...fresh];
}

/** Whether an old name stood for the very thing that one of the new old names stands for. */
function isOfOurs(entry: NameFile, old: readonly NameFile[]): boolean {
  return old.some(
    (one) =>
      one.text === entry.supersededBy &&
      one.kind === entry.kind &&
      one.profile === entry.profile &&
      one.scheme === entry.scheme,
  );
}

function isSameSense(a: NameFile, b: NameFile): boolean {
  const { text, kind, section, profile, scheme, supersededBy } = a;
  const same = text === b.text && kind === b.kind && section === b.section && profile === b.profile;
  return same && scheme === b.scheme && supersededBy === b.supersededBy;
}

function withNames(file: FamilyFile, names: NameFile[]): FamilyFile {
  return { ...file, names };
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
