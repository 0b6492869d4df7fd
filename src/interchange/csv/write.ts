import type { FileUnits } from '../../family/family.ts';
import { NM_PER_UNIT } from '../../family/file-length.ts';
import type { Vertex } from '../../geom/vertex.ts';
import type { Profile } from '../../profile/profile.ts';
import { uniqueNames } from '../unique-names.ts';
import { formatTable } from './table-text.ts';

/** How points are written. */
export interface PointsWriting {
  readonly units: FileUnits;
  /** What parts the cells: a comma where not given. */
  readonly separator?: ',' | ';' | '\t';
}

/** Digits behind the point that tell every whole nanometre, with some to spare in inches. */
const DIGITS: Readonly<Record<FileUnits, number>> = { mm: 6, in: 11 };

/**
 * A table with a row for each vertex of each profile: name, x, y, bulge. Each profile stands as it is drawn.
 *
 * @param profiles with one name twice get their ids behind it, so that their rows stay apart.
 * @accuracy whole nanometres and bulges come back as they were.
 * @check tests/laws/csv-round-trip.test.ts
 */
export function writePoints(profiles: readonly Profile[], { units, separator = ',' }: PointsWriting): string {
  const names = uniqueNames(profiles, (name) => name.replace(/\s+/g, ' ').trim());
  const say = (nm: number) => Number((nm / NM_PER_UNIT[units]).toFixed(DIGITS[units]));
  const rows = profiles.flatMap((profile, i) =>
    outlineOf(profile).map(({ x, y, bulge = 0 }) => [names[i], say(x), say(y), bulge]),
  );
  return formatTable([['name', `x (${units})`, `y (${units})`, 'bulge'], ...rows], separator);
}

function outlineOf({ drawn, ring }: Profile): readonly Vertex[] {
  return drawn ?? ring;
}
