import type { Claim } from '../family/claim.ts';
import { entrantsOf, type Family, openingsOf } from '../family/family.ts';
import type { Register, Sense } from '../names/register.ts';
import { profilesOf, resolveName } from '../names/resolve.ts';
import { outlineKey } from '../profile/outline-key.ts';
import type { Profile } from '../profile/profile.ts';

/** What a name of a claim is looked for among: blanks and tools, or keyways. */
export type Side = 'blank' | 'opening';

/** What came of a name. `other kind`: it names something, but nothing of the kind that the claim speaks of. */
export type NameStanding = 'found' | 'not found' | 'other kind' | 'ambiguous';

/** A name of a claim looked up in the register. */
export interface NamedSide {
  readonly side: Side;
  /** As the claim has it. */
  readonly text: string;
  readonly standing: NameStanding;
  /** Ids of what it stands for, all of one outline; none unless found. */
  readonly ids: readonly string[];
  /** Names to write instead, each of which stands for one outline. */
  readonly candidates: readonly string[];
}

/** A claim with its names looked up. */
export interface ResolvedClaim {
  /** Its place among the claims of the family. */
  readonly index: number;
  readonly claim: Claim;
  readonly blank: NamedSide;
  readonly opening: NamedSide;
}

/** Most names that are offered in place of one. */
const MOST_CANDIDATES = 12;

/** Looks names up, each only once. */
export interface NameFinder {
  find(side: Side, text: string, by: string | undefined): NamedSide;
}

/**
 * Looks the names of claims up in a family: an id, else whatever the register has. Where the source is itself a naming
 * scheme of the register, the name has the sense that it has in that scheme.
 *
 * @param register of the same family.
 * @check tests/unit/claims/resolve-claims.test.ts
 */
export function makeNameFinder(family: Family, register: Register): NameFinder {
  const found = new Map<string, NamedSide>();
  const schemes = new Set(register.senses.flatMap(({ scheme }) => (scheme ? [plain(scheme)] : [])));
  return {
    find(side, text, by) {
      const scheme = by !== undefined && schemes.has(plain(by)) ? plain(by) : '';
      const key = `${side}\n${scheme}\n${text}`;
      const known = found.get(key);
      if (known) return known;
      const named = lookUp(family, register, { side, text, scheme });
      found.set(key, named);
      return named;
    },
  };
}

/** Every claim with its names looked up. */
export function resolveClaims(finder: NameFinder, claims: readonly Claim[]): ResolvedClaim[] {
  return claims.map((claim, index) => ({
    index,
    claim,
    blank: finder.find('blank', claim.blank, claim.by),
    opening: finder.find('opening', claim.opening, claim.by),
  }));
}

interface Wanted {
  readonly side: Side;
  readonly text: string;
  /** In small letters; empty where the source is no scheme. */
  readonly scheme: string;
}

function lookUp(family: Family, register: Register, wanted: Wanted): NamedSide {
  const { side, text, scheme } = wanted;
  const among = side === 'opening' ? openingsOf(family) : entrantsOf(family);
  const own = among.find(({ id }) => id === text.trim());
  if (own) return { side, text, standing: 'found', ids: [own.id], candidates: [] };
  const kind = side === 'opening' ? 'opening' : 'entrant';
  const resolution = resolveName(register, text, kind);
  if (resolution.kind !== 'found') {
    const near = resolution.candidates.filter((sense) => profilesOf(family, sense, kind).length > 0);
    return { side, text, standing: 'not found', ids: [], candidates: distinct(near.map((sense) => sense.text)) };
  }
  const inScheme = resolution.senses.filter((sense) => sense.scheme && plain(sense.scheme) === scheme);
  const senses = inScheme.length > 0 ? inScheme : resolution.senses;
  const profiles = [...new Set(senses.flatMap((sense) => profilesOf(family, sense, kind)))];
  if (profiles.length === 0) return { side, text, standing: 'other kind', ids: [], candidates: akin(among, senses) };
  const outlines = new Map(profiles.map((profile) => [outlineKey(profile.ring), profile]));
  if (outlines.size === 1) return { side, text, standing: 'found', ids: profiles.map(({ id }) => id), candidates: [] };
  return { side, text, standing: 'ambiguous', ids: [], candidates: writable(family, [...outlines.values()]) };
}

/** What belongs to the same sections and is of the kind that is looked for. */
function akin(among: readonly Profile[], senses: readonly Sense[]): string[] {
  const sections = new Set(senses.flatMap(({ section }) => (section ? [section] : [])));
  return distinct(among.filter(({ section }) => section && sections.has(section)).map(({ name }) => name));
}

/** Names that tell profiles apart: their own, or their ids where two are called the same. */
function writable(family: Family, profiles: readonly Profile[]): string[] {
  const alike = (name: string) => family.profiles.filter((other) => other.name === name).length > 1;
  return distinct(profiles.map(({ id, name }) => (alike(name) ? id : name)));
}

function distinct(names: readonly string[]): string[] {
  return [...new Set(names)].slice(0, MOST_CANDIDATES);
}

function plain(text: string): string {
  return text.trim().replace(/\s+/g, ' ').toLowerCase();
}
