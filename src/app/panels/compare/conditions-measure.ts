import type { Units } from '../../../family/length-text.ts';
import { NM_OF_UNIT } from '../../tools/ruler-steps.ts';

/** How a small length is entered: in millimetres, or in thousandths of an inch. */
export interface Measure {
  readonly unit: string;
  /** Nanometres in one unit. */
  readonly per: number;
  readonly decimals: number;
  /** Most signs that a field shows where more decimals make the value exact; 0: it never shows more. */
  readonly room?: number;
  /** One press of an arrow key, in the unit. */
  readonly step: number;
}

/** How tolerances and wear are entered. */
export const SMALL_LENGTHS: Readonly<Record<Units, Measure>> = {
  mm: { unit: 'mm', per: NM_OF_UNIT.mm, decimals: 3, step: 0.001 },
  in: { unit: 'thou', per: NM_OF_UNIT.in / 1000, decimals: 1, room: 0, step: 0.1 },
};

/** How coordinates of corners are entered. */
export const COORDINATES: Readonly<Record<Units, Measure>> = {
  mm: { unit: 'mm', per: NM_OF_UNIT.mm, decimals: 3, step: 0.01 },
  in: { unit: 'in', per: NM_OF_UNIT.in, decimals: 4, step: 0.0005 },
};
