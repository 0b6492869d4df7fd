import type { Family } from '../family/family.ts';
import type { NameEntry, NameKind } from '../family/name-entry.ts';
import type { Profile, ProfileKind } from '../profile/profile.ts';

/** One thing that a name stands for; a text may have several senses. */
export interface Sense {
  /** The name as it is written. */
  readonly text: string;
  readonly kind: NameKind;
  /** Id of the one profile that it stands for, or null where it stands for what a section has. */
  readonly profile: string | null;
  readonly section: string | null;
  /** The list or scheme that uses the name; null for the family's own names. */
  readonly scheme: string | null;
  readonly chambers: number | null;
  readonly supersededBy: string | null;
  readonly note: string | null;
  /** Where the name stands: as the name of a profile, as a section, or in the register of the file. */
  readonly source: 'profile' | 'section' | 'register';
  /** Its place in the register of the file; null for names of profiles and of sections. */
  readonly index: number | null;
}

/** Every name of a family with all its senses: profiles in chart order, then sections, then the register of the file. */
export interface Register {
  readonly senses: readonly Sense[];
}

const KINDS: Readonly<Record<ProfileKind, NameKind>> = { opening: 'keyway', blank: 'blank', tool: 'tool' };

/** Registers made before, by the family. */
const known = new WeakMap<Family, Register>();

/**
 * The names of a family: of its profiles, of its sections, and of its register. Entries that name a section or a
 * profile which the family has not are kept: a name may outlive what it named.
 *
 * @returns the same value for the same family.
 * @check tests/unit/names/register.test.ts
 */
export function registerOf(family: Family): Register {
  const before = known.get(family);
  if (before) return before;
  const byId = new Map(family.profiles.map((profile) => [profile.id, profile]));
  const register = {
    senses: [
      ...family.profiles.map(senseOfProfile),
      ...sectionsOf(family).map(senseOfSection),
      ...(family.names ?? []).map((entry, index) => senseOfEntry(entry, index, byId)),
    ],
  };
  known.set(family, register);
  return register;
}

/** The sections of a family, each once, in chart order. */
export function sectionsOf(family: Family): string[] {
  return [...new Set(family.profiles.flatMap(({ section }) => section ?? []))];
}

/** What the names of profiles and of sections do not say. */
const BARE = { scheme: null, supersededBy: null, note: null, index: null } as const;

function senseOfProfile({ id, kind, name, section, chambers }: Profile): Sense {
  const lies = { profile: id, section: section ?? null, chambers: chambers ?? null };
  return { ...BARE, ...lies, text: name, kind: KINDS[kind], source: 'profile' };
}

function senseOfSection(section: string): Sense {
  return { ...BARE, text: section, kind: 'section', profile: null, section, chambers: null, source: 'section' };
}

function senseOfEntry(entry: NameEntry, index: number, byId: ReadonlyMap<string, Profile>): Sense {
  const named = entry.profile === undefined ? undefined : byId.get(entry.profile);
  return {
    text: entry.text,
    kind: entry.kind,
    profile: entry.profile ?? null,
    section: entry.section ?? named?.section ?? null,
    scheme: entry.scheme ?? null,
    chambers: entry.chambers ?? named?.chambers ?? null,
    supersededBy: entry.supersededBy ?? null,
    note: entry.note ?? null,
    source: 'register',
    index,
  };
}
