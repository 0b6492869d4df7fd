import type { Units } from '../../../../family/length-text.ts';
import type { Material } from '../../../../strength/materials.ts';
import type { SectionStrength } from '../../../../strength/strength.ts';
import { roundLevels } from './shear-bands.ts';
import { stressText } from './strength-words.ts';

/** Bands of a picture of shear: where each begins, and its colour. */
export interface ShearScale {
  /** In the unit of the field, 1/mm^3, ascending from 0. */
  readonly levels: readonly number[];
  /** The same as stresses under the torque, in words. */
  readonly texts: readonly string[];
  readonly colours: readonly string[];
  /** Shear at which the metal yields by von Mises, in the unit of the field; null where the picture stays below it. */
  readonly yieldLevel: number | null;
}

/** About so many bands. */
const BANDS = 9;

/**
 * From light to dark, evenly, so that the order is the same in grey: straw, brass, rust, near black. The last band is the
 * darkest, however many there are.
 */
const STOPS: readonly (readonly [number, number, number])[] = [
  [252, 246, 224],
  [238, 205, 128],
  [214, 140, 58],
  [160, 72, 24],
  [92, 30, 16],
  [36, 12, 12],
];

/** The colour at a share of the scale, 0 to 1. */
export function scaleColour(share: number): string {
  const place = Math.min(1, Math.max(0, share)) * (STOPS.length - 1);
  const i = Math.min(STOPS.length - 2, Math.floor(place));
  const mixed = STOPS[i].map((from, c) => Math.round(from + (place - i) * (STOPS[i + 1][c] - from)));
  return `rgb(${mixed.join(' ')})`;
}

const NMM_PER_NM = 1000;
const MPA_PER_KSI = 6.894_757;

/**
 * The bands of a section under a torque, with round figures of stress.
 *
 * @check tests/unit/app/shear-bands.test.ts
 */
export function shearScale(section: SectionStrength, material: Material, torqueNm: number, units: Units): ShearScale {
  const perField = torqueNm * NMM_PER_NM;
  const unit = units === 'in' ? MPA_PER_KSI : 1;
  const levels = roundLevels((section.peakShear * perField) / unit, BANDS);
  const yielding = material.yield[0] / Math.sqrt(3) / perField;
  return {
    levels: levels.map((level) => (level * unit) / perField),
    texts: levels.map((level) => stressText(level * unit, units)),
    colours: levels.map((_, i) => scaleColour(levels.length === 1 ? 0 : i / (levels.length - 1))),
    yieldLevel: yielding > 0 && yielding < section.peakShear ? yielding : null,
  };
}
