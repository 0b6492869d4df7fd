import type { Family } from '../../src/family/family.ts';
import type { NameEntry } from '../../src/family/name-entry.ts';
import type { Fit } from '../../src/fit/fit.ts';
import { asTrustedRing } from '../../src/geom/ring.ts';
import type { Knowledge } from '../../src/names/knowledge.ts';
import { registerOf } from '../../src/names/register.ts';
import type { Profile, ProfileKind } from '../../src/profile/profile.ts';

/** A profile of which only the names matter; `shape` tells outlines apart. */
export function named(
  kind: ProfileKind,
  name: string,
  section?: string,
  { chambers, shape = 1 }: { chambers?: number; shape?: number } = {},
): Profile {
  const id = `${kind}-${name}-${chambers ?? ''}-${shape}`.toLowerCase().replace(/[^a-z0-9]+/g, '-');
  const size = 1_000_000 + shape;
  const ring = asTrustedRing([
    { x: 0, y: 0 },
    { x: size, y: 0 },
    { x: size, y: size },
    { x: 0, y: size },
  ]);
  return {
    id,
    kind,
    name,
    ring,
    ...(section !== undefined && { section }),
    ...(chambers !== undefined && { chambers }),
  };
}

/** A section with a keyway and a blank. */
export function sectionOf(section: string, shape: number, chambers?: number): Profile[] {
  return [
    named('opening', `${section} keyway`, section, { shape: shape + 500 }),
    named('blank', `${section} blank`, section, { shape, chambers }),
  ];
}

/** A family of which only the names matter. */
export function familyOf(profiles: readonly Profile[], names: readonly NameEntry[] = []): Family {
  return { name: 'Marsh', units: 'mm', runningClearance: 40_000, tolerance: 0, tiltLimit: 0, profiles, names };
}

const UPRIGHT = { x: 0, y: 0, tilt: 0 };

/** A fit of which only the verdict matters. */
function fitAs(enters: boolean): Fit {
  const clearance = enters ? 50_000 : -200_000;
  const play = { lateral: 0, vertical: 0 };
  return { verdict: enters ? 'enters' : 'blocked', clearance, accuracy: 0, placement: UPRIGHT, play, seated: UPRIGHT };
}

/** What is known of a family where `enters` says what goes in; a blank goes into its own section's keyways if not told. */
export function knownAs(
  family: Family,
  enters?: (entrant: Profile, opening: Profile) => boolean | undefined,
): Knowledge {
  const byId = new Map(family.profiles.map((profile) => [profile.id, profile]));
  return {
    family,
    register: registerOf(family),
    reason: () => '',
    length: (nm) => `${nm} nm`,
    fitOf: (entrantId, openingId) => {
      const [entrant, opening] = [byId.get(entrantId), byId.get(openingId)];
      if (!entrant || !opening) return undefined;
      const answer = enters ? enters(entrant, opening) : entrant.section === opening.section;
      return answer === undefined ? undefined : fitAs(answer);
    },
  };
}
