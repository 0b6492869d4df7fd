import type { Bands } from '../fit/judge-tolerance.ts';
import type { Profile } from '../profile/profile.ts';
import type { Claim } from './claim.ts';
import type { Lesson } from './lesson.ts';
import type { NameEntry } from './name-entry.ts';
import type { Plan } from './plan.ts';

/** Units that a family file may be written in. */
export type FileUnits = 'mm' | 'in';

/** A family of sections, in chart order. The core's view of a family file. */
export interface Family {
  readonly name: string;
  readonly units: FileUnits;
  /** Uniform gap below which a fit is tight, in nanometres. */
  readonly runningClearance: number;
  /** Greatest deviation of an outline as made, to either side, where its profile states none; in nanometres. */
  readonly tolerance: number;
  /** Greatest tilt of a blank in a keyway, either way, where tilt is looked at; in radians. */
  readonly tiltLimit: number;
  /** The thinnest web that a blade of the family should have, in nanometres, where one is set. */
  readonly leastWeb?: number;
  readonly profiles: readonly Profile[];
  /** The register of names, where the family has one. */
  readonly names?: readonly NameEntry[];
  /** What is said of the family and can be checked. */
  readonly claims?: readonly Claim[];
  readonly lesson?: Lesson;
  /** What the family is planned from, where it is. */
  readonly plan?: Plan;
}

/** The keyways of the family, in chart order. */
export function openingsOf(family: Family): Profile[] {
  return family.profiles.filter((p) => p.kind === 'opening');
}

/** Everything that may go into a keyway, blanks and tools, in chart order. */
export function entrantsOf(family: Family): Profile[] {
  return family.profiles.filter((p) => p.kind !== 'opening');
}

/** The tolerance bands of a pair, in nanometres: each part's own, or the family's where it has none. */
export function bandsOf(family: Family, blank: Profile, opening: Profile): Bands {
  return { blank: blank.tolerance ?? family.tolerance, opening: opening.tolerance ?? family.tolerance };
}
