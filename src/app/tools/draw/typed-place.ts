import type { Units } from '../../../family/length-text.ts';
import { MAX_COORDINATE, type Point } from '../../../geom/point.ts';
import { NM_OF_UNIT } from '../ruler-steps.ts';

/** A typed place, or what is wrong with it. */
export type TypedPlace = { readonly ok: true; readonly at: Point } | { readonly ok: false; readonly words: string };

const NUMBER = String.raw`([-+]?(?:\d+\.?\d*|\.\d+))`;
const COMMA_NUMBER = String.raw`([-+]?\d+(?:,\d+)?)`;
const PAIR = new RegExp(String.raw`^(@?)\s*${NUMBER}\s*[,;\s]\s*${NUMBER}$`);
/** Decimal commas; a semicolon or a space parts the two numbers then. */
const COMMA_PAIR = new RegExp(String.raw`^(@?)\s*${COMMA_NUMBER}(?:\s*;\s*|\s+)${COMMA_NUMBER}$`);
const POLAR = new RegExp(String.raw`^(@?)\s*${NUMBER}\s*<\s*${NUMBER}\s*°?$`);

/**
 * A place as it is typed: `x, y` from the origin; `@dx, dy` from the vertex before; `length<angle` from the vertex
 * before, the angle in degrees from the right, counter-clockwise.
 *
 * @param units of the lengths.
 * @param from the vertex before, nanometres; the origin where there is none.
 * @check tests/unit/app/draw-typed-place.test.ts
 */
export function readPlace(text: string, units: Units, from: Point | null): TypedPlace {
  const plain = text.trim().replaceAll('−', '-');
  const start = from ?? { x: 0, y: 0 };
  const polar = POLAR.exec(plain);
  if (polar) return polarPlace(Number(polar[2]) * NM_OF_UNIT[units], Number(polar[3]), start);
  const pair = PAIR.exec(plain) ?? COMMA_PAIR.exec(plain);
  if (!pair) return { ok: false, words: 'Not a place: type x, y or @dx, dy or length<angle.' };
  const [x, y] = [pair[2], pair[3]].map((n) => Number(n.replace(',', '.')) * NM_OF_UNIT[units]);
  return held(pair[1] === '@' ? { x: start.x + x, y: start.y + y } : { x, y });
}

function polarPlace(length: number, degrees: number, from: Point): TypedPlace {
  const angle = (degrees * Math.PI) / 180;
  return held({ x: from.x + length * Math.cos(angle), y: from.y + length * Math.sin(angle) });
}

function held({ x, y }: Point): TypedPlace {
  const at = { x: Math.round(x) + 0, y: Math.round(y) + 0 };
  if (Math.max(Math.abs(at.x), Math.abs(at.y)) > MAX_COORDINATE)
    return { ok: false, words: 'Too far out: a vertex lies within 47 mm (1.86 in) of the origin.' };
  return { ok: true, at };
}
