import { bandText, gapText, sizeText, type Units } from '../family/length-text.ts';
import { NM_PER_MM } from '../geom/point.ts';
import type { Groove, Profile } from '../profile/profile.ts';
import { thinnestWeb } from '../profile/thinnest-web.ts';
import { sizeOfRing } from './section-picture.ts';
import { type LaidOutTable, layOutTable, type TableStyle } from './table.ts';

/**
 * The dimensions of sections as a table: size, thinnest web, and where wards or grooves are and how deep.
 *
 * @param width millimetres.
 * @check tests/unit/publish/scale.test.ts
 */
export function dimensionTable(
  profiles: readonly Profile[],
  units: Units,
  width: number,
  style: TableStyle,
): LaidOutTable {
  const columns = [
    { head: 'Section', width: width * 0.24, bold: true },
    { head: 'Width × height', width: width * 0.18 },
    { head: 'Thinnest web', width: width * 0.13 },
    { head: 'Wards above the floor, grooves above the back; depth', width: width * 0.45 },
  ];
  return layOutTable(
    columns,
    profiles.map((profile) => dimensionRow(profile, units)),
    style,
  );
}

function dimensionRow(profile: Profile, units: Units): string[] {
  const { width, height } = sizeOfRing(profile.ring);
  const size = sizeText(width * NM_PER_MM, height * NM_PER_MM, units);
  return [profile.name, size, webText(profile, units), groovesText(profile, units)];
}

/** Of blades only: a keyway has no web. */
function webText({ kind, milled }: Profile, units: Units): string {
  if (kind === 'opening' || !milled) return '–';
  const web = thinnestWeb(milled);
  return web ? gapText(web.thickness, units) : '–';
}

function groovesText({ kind, milled }: Profile, units: Units): string {
  if (!milled) return 'drawn by its outline';
  if (milled.grooves.length === 0) return kind === 'opening' ? 'no ward' : 'no groove';
  const sorted = [...milled.grooves].sort((a, b) => a.bottom - b.bottom);
  return sorted.map((groove) => grooveText(groove, units)).join('; ');
}

function grooveText({ side, bottom, width, depth }: Groove, units: Units): string {
  return `${side} ${bandText(bottom, bottom + width, units)}, ${gapText(depth, units)} deep`;
}
