import type { PlugFace } from '../family/plug-face.ts';
import type { Fit } from '../fit/fit.ts';
import { placeBlank } from '../fit/place-blank.ts';
import { difference } from '../geom/clip.ts';
import { boxOf, NM_PER_MM, type Point } from '../geom/point.ts';
import { boundariesOf, regionOf } from '../geom/region.ts';
import { asTrustedRing, type Ring } from '../geom/ring.ts';
import type { Profile } from '../profile/profile.ts';
import type { Block } from './block.ts';
import type { GroupMark, Mark, Spot, Stroke } from './page.ts';
import { plugFaceStroke } from './plug-face.ts';
import { middleOfRing, outlineStroke, type PartView, partInk } from './section-picture.ts';
import { drawn, filled, polyline, rectangle } from './strokes.ts';

/** A blank or tool tried in a keyway. */
export interface TriedBlank {
  readonly profile: Profile;
  readonly fit: Fit;
}

/** How a plug stands on paper. */
export interface PlugStyle {
  readonly face: PlugFace;
  readonly scale: number;
  /** Width of the lines, millimetres. */
  readonly line?: number;
}

/**
 * The front of a plug with its keyway, and the blank in it at its best placement; what would share space with the plug is
 * hatched.
 *
 * @returns a block as large as the plug face at its scale.
 * @check tests/unit/publish/page-parts.test.ts
 */
export function plugPicture(
  opening: Profile,
  tried: TriedBlank | null,
  { face, scale, line = 0.18 }: PlugStyle,
): Block {
  const width = 2 * face.half * scale;
  const height = 2 * face.radius * scale;
  const view: PartView = { middle: middleOfRing(opening.ring), at: [width / 2, height / 2], scale };
  const keyway = outlineStroke(opening.ring, view);
  const plug = plugFaceStroke(face, view.at, scale);
  const marks: Mark[] = [filled([plug, keyway], 'plug'), drawn([plug], 'rule', line), drawn([keyway], 'ink', line)];
  if (tried) marks.push(...triedMarks(opening, tried, view, line));
  const label = tried
    ? `${tried.profile.name} in ${opening.name}: ${tried.fit.verdict}`
    : `${opening.name}, picture of the plug`;
  return { width, height, marks: [{ kind: 'group', label, marks }] };
}

/**
 * A blank in a keyway at its best placement with metal all round, as large as both together need.
 *
 * @param style `metal`: what is left round the larger of the two, millimetres of paper.
 */
export function pairInMetal(
  opening: Profile,
  tried: TriedBlank,
  { scale, line, metal }: { readonly scale: number; readonly line: number; readonly metal: number },
): Block {
  const { minX, maxX, minY, maxY } = boxOf([...opening.ring, ...placeBlank(tried.profile.ring, tried.fit.placement)]);
  const width = ((maxX - minX) / NM_PER_MM) * scale + 2 * metal;
  const height = ((maxY - minY) / NM_PER_MM) * scale + 2 * metal;
  const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
  const view: PartView = { middle, at: [width / 2, height / 2], scale };
  const keyway = outlineStroke(opening.ring, view);
  const marks: Mark[] = [
    filled([rectangle(0, 0, width, height), keyway], 'plug'),
    drawn([keyway], 'ink', line),
    ...triedMarks(opening, tried, view, line),
  ];
  const label = `${tried.profile.name} in ${opening.name}: ${tried.fit.verdict}`;
  return { width, height, marks: [{ kind: 'group', label, marks }] };
}

/** The blank where its fit puts it, over the keyway, and the hatched overlap. */
function triedMarks(opening: Profile, { profile, fit }: TriedBlank, view: PartView, line: number): Mark[] {
  const placed = placeBlank(profile.ring, fit.placement);
  const blade = filled([outlineStroke(placed, view)], partInk(profile), { ink: 'ink', width: line });
  if (fit.verdict !== 'blocked') return [blade];
  const overlap = overlapOf(opening, placed, fit);
  if (overlap.length === 0) return [blade];
  const strokes = overlap.map((loop) => outlineStroke(loop, view));
  return [blade, ...hatchedArea(strokes, line)];
}

/** What was found of a fit already: a sheet is laid out several times before its size is settled. */
const knownOverlaps = new WeakMap<Fit, (readonly Point[])[]>();

/** What of a placed blank lies outside the keyway, boundaries in nanometres. */
function overlapOf(opening: Profile, placed: Ring, fit: Fit): (readonly Point[])[] {
  const known = knownOverlaps.get(fit);
  if (known) return known;
  const found = findOverlap(opening, placed);
  knownOverlaps.set(fit, found);
  return found;
}

function findOverlap(opening: Profile, placed: Ring): (readonly Point[])[] {
  const whole = asTrustedRing(placed.map((p) => ({ x: Math.round(p.x), y: Math.round(p.y) })));
  return boundariesOf(difference(regionOf(whole), regionOf(opening.ring)));
}

/** From one line of a hatching to the next, millimetres at least; as many widths of the outline where that is broad. */
const HATCH = 0.55;
const HATCH_LINES = 3;

/**
 * An area hatched from lower left to upper right on white, with a firm line round it: seen in grey as in colour.
 *
 * @param strokes the boundary, filled by the even-odd rule.
 */
export function hatchedArea(strokes: readonly Stroke[], line: number): Mark[] {
  const spots = strokes.flatMap((stroke) => stroke.spots);
  const { minX, maxX, minY, maxY } = boxOf(spots.map(([x, y]) => ({ x, y })));
  const apart = Math.max(HATCH, HATCH_LINES * line);
  const step = apart * Math.SQRT2;
  const reach = maxY - minY;
  const count = Math.min(4000, Math.ceil((maxX - minX + reach) / step));
  const slants = Array.from({ length: count }, (_, i) => {
    const x = minX - reach + (i + 0.5) * step;
    const from: Spot = [x, maxY];
    return polyline(from, [x + reach, minY]);
  });
  const hatching: GroupMark = {
    kind: 'group',
    clip: strokes,
    marks: [filled(strokes, 'paper'), drawn(slants, 'overlap', Math.min(apart * 0.4, line * 1.2))],
  };
  return [hatching, drawn(strokes, 'blocked', line * 1.4)];
}
