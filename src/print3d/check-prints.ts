import { offset, unionOfLoops } from '../geom/clip.ts';
import type { Region } from '../geom/region.ts';
import { regionArea } from '../geom/region-area.ts';
import type { PrintCheck, SolidPart } from './display-set.ts';
import type { DisplaySetup } from './display-setup.ts';
import type { MadePart } from './make-parts.ts';
import type { LetterSource } from './raise-letters.ts';

/** A coupon at less than this scale can be taken for a key. */
const KEY_LIKE = 1.5;

/** A wall stands well on two lines of the nozzle; common practice, no source. */
const LINES_OF_WALL = 2;

/**
 * What is to be known of a setup as a whole: a scale at which coupons look like keys, walls that are too thin.
 *
 * @check tests/unit/print3d/check-prints.test.ts
 */
export function checkSetup({ scale, wall, nozzle }: DisplaySetup): PrintCheck[] {
  const checks: PrintCheck[] = [];
  if (scale < KEY_LIKE)
    checks.push({
      ...{ kind: 'true-size', weight: 'caution', subjects: [], where: null, size: null, limit: null },
      what: `at ${scale}:1 a printed coupon could be mistaken for a key, and copying keys is under key control at many sites`,
      cure: 'print at 4:1 for showing; print true size only where you have the right to, and keep the coupons with the keys',
    });
  if (wall < LINES_OF_WALL * nozzle)
    checks.push({
      ...{ kind: 'wall', weight: 'fault', subjects: [], where: null, size: wall, limit: LINES_OF_WALL * nozzle },
      what: 'the walls between openings and round the slots of the board are thinner than two lines of the nozzle',
      cure: 'set a thicker wall, or a finer nozzle',
    });
  return checks;
}

/**
 * What is to be known of parts and the bed: a part that is larger than it, a block that is cut.
 *
 * @check tests/unit/print3d/check-prints.test.ts
 */
export function checkBed(parts: readonly SolidPart[], { bed }: DisplaySetup): PrintCheck[] {
  const over = parts.filter(({ size }) => isOverBed(size, bed));
  const tiles = parts.filter(({ kind }) => kind === 'block');
  return [
    ...over.map(({ name, size }): PrintCheck => {
      const side = size[0] - bed[0] > size[1] - bed[1] ? 0 : 1;
      return {
        ...{ kind: 'bed', weight: 'fault', subjects: [], where: null, size: size[side], limit: bed[side] },
        what: `"${name}" is larger than the bed`,
        cure: 'print at a smaller scale, with thinner walls, or on a larger bed',
      };
    }),
    ...(tiles.length > 1 ? [cutBlock(tiles, bed)] : []),
  ];
}

/** Single precision may leave a part that just goes on the bed so much larger, millimetres. */
const SLACK = 1e-3;

/** Whether something is wider or deeper than a bed. */
export function isOverBed(size: readonly number[], bed: readonly [number, number]): boolean {
  return bed.some((length, axis) => size[axis] > length + SLACK);
}

function cutBlock(tiles: readonly SolidPart[], bed: readonly [number, number]): PrintCheck {
  return {
    ...{ kind: 'cut', weight: 'note', subjects: [], where: null },
    ...{ size: null, limit: Math.min(...bed) },
    what: `the bed is too small for the block, so it is made in ${tiles.length} parts, cut between openings`,
    cure: 'glue the parts, or print at a smaller scale or on a larger bed',
  };
}

/** Of the area of thick enough letters at least so much stays when their corners are rounded by the nozzle. */
const LEGIBLE = 0.85;

/** Most letters of a name that are told. */
const MOST_QUOTED = 40;

/** Tenths of a micrometre in a millimetre: letters of any length stay within what is clipped exactly. */
const CLIP_UNITS = 1e4;

/**
 * Letters that are too thin for the nozzle, and those that the typeface has not.
 *
 * @check tests/unit/print3d/check-prints.test.ts
 */
export function checkLetters(
  { lines }: Pick<MadePart, 'lines'>,
  source: LetterSource,
  { nozzle }: DisplaySetup,
): PrintCheck[] {
  return lines.flatMap(({ text, size, outlines, subject }) => {
    const subjects = subject === null ? [] : [subject];
    const missing = source.missing(text);
    const quoted = `"${text.length > MOST_QUOTED ? `${[...text].slice(0, MOST_QUOTED).join('')}...` : text}"`;
    const checks: PrintCheck[] = [];
    const shown = outlines.length > 0 || text.trim() === '';
    if (!shown || sharePrinted(outlines, nozzle) < LEGIBLE)
      checks.push({
        ...{ kind: 'letters', weight: 'caution', subjects, where: null, size, limit: null },
        // Of a section the subject names it, so that many of them are told as one.
        what: `the letters of ${subject === null ? quoted : 'the name'} ${shown ? 'come out too small for the nozzle to make them legible' : 'come out so small that they are left out'}`,
        cure: 'set larger letters or thicker walls, give a shorter name, or print at a larger scale',
      });
    if (missing.length > 0)
      checks.push({
        ...{ kind: 'missing-letters', weight: 'caution', subjects, where: null, size: null, limit: null },
        what: `the typeface has no ${missing.join(' ')}, so ${quoted} shows a box there`,
        cure: 'give the section a name in Latin letters',
      });
    return checks;
  });
}

/** How much of the area of letters stays when they are drawn by the nozzle. */
function sharePrinted(outlines: MadePart['lines'][number]['outlines'], nozzle: number): number {
  const [left, low] = outlines[0]?.[0] ?? [0, 0];
  const loops = outlines.map((loop) =>
    loop.map(([x, y]) => ({ x: (x - left) * CLIP_UNITS, y: (y - low) * CLIP_UNITS })),
  );
  // Outer outlines of letters run clockwise: turned, they count as filled.
  const letters: Region = unionOfLoops(loops.map((loop) => loop.reverse()));
  const radius = (nozzle / 2) * CLIP_UNITS;
  const opened = offset(offset(letters, -radius, 'round', 10), radius, 'round', 10);
  const whole = regionArea(letters);
  return whole > 0 ? regionArea(opened) / whole : 1;
}
