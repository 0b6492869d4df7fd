import type { Profile } from '../profile/profile.ts';

/** Units that a family file may be written in. */
export type FileUnits = 'mm' | 'in';

/** A family of sections, in chart order. The core's view of a family file. */
export interface Family {
  readonly name: string;
  readonly units: FileUnits;
  /** Uniform gap below which a fit is tight, in nanometres. */
  readonly runningClearance: number;
  readonly profiles: readonly Profile[];
}

/** The keyways of the family, in chart order. */
export function openingsOf(family: Family): Profile[] {
  return family.profiles.filter((p) => p.kind === 'opening');
}

/** Everything that may go into a keyway, blanks and tools, in chart order. */
export function entrantsOf(family: Family): Profile[] {
  return family.profiles.filter((p) => p.kind !== 'opening');
}
