import { NM_PER_INCH, NM_PER_MM, NM_PER_UM } from '../../geom/point.ts';

/** Nanometres in one of the units that a table may name, by its name in small letters. */
const NM_PER_NAME: Readonly<Record<string, number>> = {
  nm: 1,
  um: NM_PER_UM,
  µm: NM_PER_UM,
  μm: NM_PER_UM,
  micron: NM_PER_UM,
  microns: NM_PER_UM,
  mm: NM_PER_MM,
  millimetre: NM_PER_MM,
  millimetres: NM_PER_MM,
  millimeter: NM_PER_MM,
  millimeters: NM_PER_MM,
  cm: 10 * NM_PER_MM,
  m: 1000 * NM_PER_MM,
  in: NM_PER_INCH,
  inch: NM_PER_INCH,
  inches: NM_PER_INCH,
  '"': NM_PER_INCH,
  thou: NM_PER_INCH / 1000,
  mil: NM_PER_INCH / 1000,
  mils: NM_PER_INCH / 1000,
  ft: 12 * NM_PER_INCH,
};

/** Nanometres in a unit of length, or null where there is none of that name. */
export function unitOfName(name: string): number | null {
  const key = name.trim().toLowerCase();
  return Object.hasOwn(NM_PER_NAME, key) ? NM_PER_NAME[key] : null;
}
