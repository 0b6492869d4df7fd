import { type Box, boxOf, NM_PER_MM, type Point } from '../geom/point.ts';
import type { Profile } from '../profile/profile.ts';
import type { Block } from './block.ts';
import type { Ink } from './inks.ts';
import type { Spot, Stroke } from './page.ts';
import { drawn, filled, rectangle } from './strokes.ts';

/** Where a part lies on paper: which point of it stands at which spot, and how many times its size it is drawn. */
export interface PartView {
  /** Nanometres, in the part's own coordinates. */
  readonly middle: Point;
  /** Millimetres on the page. */
  readonly at: Spot;
  readonly scale: number;
}

/** The middle of the upright box of an outline, nanometres. */
export function middleOfRing(ring: readonly Point[]): Point {
  const { minX, maxX, minY, maxY } = boxOf(ring);
  return { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
}

/** Width and height of an outline, millimetres of the part. */
export function sizeOfRing(ring: readonly Point[]): { readonly width: number; readonly height: number } {
  const { minX, maxX, minY, maxY }: Box = boxOf(ring);
  return { width: (maxX - minX) / NM_PER_MM, height: (maxY - minY) / NM_PER_MM };
}

/** A point of the part on paper. */
export function onPaper({ x, y }: Point, { middle, at, scale }: PartView): Spot {
  return [at[0] + ((x - middle.x) / NM_PER_MM) * scale, at[1] - ((y - middle.y) / NM_PER_MM) * scale];
}

/** An outline on paper. */
export function outlineStroke(ring: readonly Point[], view: PartView): Stroke {
  return { closed: true, spots: ring.map((p) => onPaper(p, view)) };
}

/** How a section stands on paper. */
export interface SectionStyle {
  readonly scale: number;
  /** Width of the line round it, millimetres. */
  readonly line?: number;
  /** Metal round a keyway, millimetres of paper; none where not given. */
  readonly metal?: number;
}

/** What a blank or a tool is filled with. */
export function partInk({ kind }: Profile): Ink {
  return kind === 'tool' ? 'tool' : 'blade';
}

/**
 * The picture of one section: a blank or tool as an area, a keyway as an opening in metal.
 *
 * @returns a block as large as the section at its scale, and the metal round it.
 * @check tests/unit/publish/page-parts.test.ts
 */
export function sectionPicture(profile: Profile, { scale, line = 0.18, metal = 0 }: SectionStyle): Block {
  const size = sizeOfRing(profile.ring);
  const round = profile.kind === 'opening' ? metal : 0;
  const width = size.width * scale + 2 * round;
  const height = size.height * scale + 2 * round;
  const view = { middle: middleOfRing(profile.ring), at: [width / 2, height / 2] as const, scale };
  const outline = outlineStroke(profile.ring, view);
  const marks =
    profile.kind === 'opening'
      ? [
          ...(round > 0 ? [filled([rectangle(0, 0, width, height), outline], 'plug')] : []),
          drawn([outline], 'ink', line),
        ]
      : [filled([outline], partInk(profile), { ink: 'ink', width: line })];
  const what = profile.kind === 'opening' ? 'keyway' : profile.kind;
  return { width, height, marks: [{ kind: 'group', label: `${profile.name}, picture of the ${what}`, marks }] };
}
