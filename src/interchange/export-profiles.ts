import type { FileUnits } from '../family/family.ts';
import { millVertices } from '../profile/mill-outline.ts';
import type { Profile } from '../profile/profile.ts';
import { writePoints } from './csv/write.ts';
import { writeDxf } from './dxf/write.ts';
import { writeSvg } from './svg/write.ts';

/** The forms in which profiles are handed on. */
export const EXPORT_FORMATS = ['svg', 'dxf', 'csv'] as const;

export type ExportFormat = (typeof EXPORT_FORMATS)[number];

/** A file to be handed on. */
export interface ExportedFile {
  readonly text: string;
  /** Its media type. */
  readonly mime: string;
  /** What its name ends with, without the dot. */
  readonly extension: ExportFormat;
}

/** @source IANA media types: image/svg+xml, image/vnd.dxf, text/csv (RFC 4180). */
const MIMES: Readonly<Record<ExportFormat, string>> = {
  svg: 'image/svg+xml',
  dxf: 'image/vnd.dxf',
  csv: 'text/csv;charset=utf-8',
};

const WRITERS: Readonly<Record<ExportFormat, (profiles: readonly Profile[], units: FileUnits) => string>> = {
  svg: (profiles, units) => writeSvg(profiles, { units }),
  dxf: (profiles, units) => writeDxf(profiles, { units }),
  csv: (profiles, units) => writePoints(profiles, { units }),
};

/** A milled profile with the roundings of its description as arcs, where its ring has chords. */
function withArcs(profile: Profile): Profile {
  return profile.milled && !profile.drawn ? { ...profile, drawn: millVertices(profile.milled) } : profile;
}

/**
 * Profiles as a file for other programs, at true size, arcs as arcs: also the roundings of a milled one, whose ring lies
 * within 1 um of them.
 *
 * @param units of the numbers in the file, which says them.
 * @check tests/unit/interchange/export-profiles.test.ts
 */
export function exportProfiles(profiles: readonly Profile[], format: ExportFormat, units: FileUnits): ExportedFile {
  return { text: WRITERS[format](profiles.map(withArcs), units), mime: MIMES[format], extension: format };
}
