import type { Place, PrintCheck, SolidPart } from './display-set.ts';
import type { DisplaySetup } from './display-setup.ts';
import type { MadePart } from './make-parts.ts';
import { isClosed, sizeOf, volumeOf } from './measure-surface.ts';
import { packShelves } from './pack-shelves.ts';

/** Parts on a bed stand so far apart, and the beds of a large set beside each other; millimetres. */
const PARTS_APART = 5;
export const BEDS_APART = 20;

/** Where a part begins on its own bed. */
export function placeOnBed(
  { place: [x, y, z], bed }: Pick<SolidPart, 'place' | 'bed'>,
  size: DisplaySetup['bed'],
): Place {
  return [x - bedOrigin(bed, size), y, z];
}

/** Where a bed begins: they lie side by side. */
function bedOrigin(bed: number, [width]: DisplaySetup['bed']): number {
  return bed * (width + BEDS_APART);
}

/** What the parts of each kind are printed in where the printer has colours. */
const COLOURS = { block: '#c9ced6', coupon: '#e69f00', board: '#4a5568' } as const;
const LETTER_COLOURS = { block: '#1f2937', coupon: '#1f2937', board: '#f3f4f6' } as const;

/** A part with its name. */
export interface NamedPart extends MadePart {
  readonly name: string;
}

/**
 * Parts laid on as many beds as they take, without overlap. A surface that is not closed is told.
 *
 * @check tests/unit/print3d/build-display-set.test.ts
 */
export function placeParts(
  parts: readonly NamedPart[],
  { bed }: DisplaySetup,
): { readonly parts: SolidPart[]; readonly beds: number; readonly checks: PrintCheck[] } {
  const sizes = parts.map(({ surface }) => sizeOf(surface));
  const spots = packShelves(
    sizes.map(([width, depth]) => ({ width, depth })),
    { width: bed[0], depth: bed[1] },
    PARTS_APART,
  );
  const placed = parts.map(({ name, kind, subjects, surface }, i): SolidPart => {
    const { sheet, x, y } = spots[i];
    return {
      ...{ name, kind, subjects, ...surface, size: sizes[i], volume: volumeOf(surface) },
      ...{ colour: COLOURS[kind], letterColour: LETTER_COLOURS[kind] },
      ...{ place: [x + bedOrigin(sheet, bed), y, 0], bed: sheet },
    };
  });
  return {
    parts: placed,
    beds: Math.max(0, ...placed.map((part) => part.bed + 1)),
    checks: placed.filter((part) => !isClosed(part)).map(notClosed),
  };
}

function notClosed({ name }: SolidPart): PrintCheck {
  return {
    ...{ kind: 'not-closed', weight: 'fault', subjects: [], where: null, size: null, limit: null },
    what: `the solid "${name}" is not closed, so a slicer may misread it`,
    cure: 'change the fitting gap a little, or leave it out',
  };
}
