import { difference, intersection, offset, union } from '../geom/clip.ts';
import { boxOf, type Point, translatePoints } from '../geom/point.ts';
import { type Region, regionOf } from '../geom/region.ts';
import { asTrustedRing, makeRing, type Ring } from '../geom/ring.ts';
import { signedArea } from '../geom/signed-area.ts';
import { isBeside } from '../passage/groove-causes.ts';
import { type Indent, type IndentSide, indentsOf } from '../passage/indents.ts';
import { largestArea } from '../passage/overlap-regions.ts';

/** A ward that new keyways may have. Heights and places in the frame of the all-section blank, nanometres. */
export interface GrowWard {
  readonly from: number;
  readonly to: number;
  /** How far it stands in: from the left as x, from the right as minus x. */
  readonly reach: number;
  /** The plug's material, out to beyond the wall. */
  readonly region: Region;
  /** Ids of the keyways that have it. */
  readonly keyways: readonly string[];
}

/** A place for wards, in a groove of the all-section blank; the shallowest ward first. */
export interface GrowSite {
  readonly side: IndentSide;
  readonly wards: readonly GrowWard[];
}

/** A keyway where it lies round the all-section blank. */
export interface PlacedKeyway {
  readonly id: string;
  readonly ring: Ring;
}

/** Where new sections may differ. */
export interface GrowGround {
  /** A keyway without wards at any of the sites. */
  readonly plain: Ring;
  readonly sites: readonly GrowSite[];
}

/** Wards whose tips differ by less than this are of one depth, nanometres. */
const SAME_REACH = 100_000;

/** Wards are at one site where they share at least this share of the lower one's height. */
const SAME_SITE = 0.5;

/** A groove in which no keyway has a ward is a site where a ward of at least this depth has room, nanometres. */
const LEAST_WARD = 150_000;

/** Wards reach out to this far beyond the wall, so that they hang together with the plug, nanometres. */
const BEYOND = 1_500_000;

/**
 * The places at which new keyways may have wards, and what a keyway is without any of them.
 *
 * What the all-section blank enters contains it: a ward may only stand where it has a groove. Wards of the keyways that lie
 * in one groove and at one height are a site, with a level for each depth that differs; of several alike the smallest is
 * taken. A groove without any ward gives the groove less the gap: one ward, or as many as it has height for, one over the
 * other. The plain keyway is that of middle size, its
 * wards at these sites filled.
 *
 * @param top the all-section blank.
 * @param keyways each where it lies round that blank.
 * @param gap what a new ward leaves in a groove, nanometres.
 * @returns sites from below, left before right; what the fit core thinks of them is not asked here.
 * @check tests/unit/plan/grow-family.test.ts
 */
export function growSites(top: Ring, keyways: readonly PlacedKeyway[], gap: number): GrowGround {
  const grooves = indentsOf(top);
  const wards = keyways.flatMap(({ id, ring }) => indentsOf(ring).map((ward) => ({ id, ward })));
  const sites = grooves.flatMap((groove) => {
    const inside = wards.filter(({ ward }) => isBeside(ward, groove));
    if (inside.length > 0) return clustersOf(inside).map((some) => ({ side: groove.side, wards: levelsOf(some) }));
    return wardsOfGroove(groove, gap).map((ward) => ({ side: groove.side, wards: [ward] }));
  });
  sites.sort((a, b) => a.wards[0].from - b.wards[0].from || (a.side < b.side ? -1 : 1));
  return { plain: plainKeyway(keyways, grooves), sites };
}

interface FoundWard {
  readonly id: string;
  readonly ward: Indent;
}

/** Wards in one groove, parted by height. */
function clustersOf(wards: readonly FoundWard[]): FoundWard[][] {
  const clusters: FoundWard[][] = [];
  for (const found of [...wards].sort((a, b) => a.ward.from - b.ward.from)) {
    const home = clusters.find((some) => some.every(({ ward }) => shared(ward, found.ward) >= SAME_SITE));
    if (home) home.push(found);
    else clusters.push([found]);
  }
  return clusters;
}

function shared(a: Indent, b: Indent): number {
  return (Math.min(a.to, b.to) - Math.max(a.from, b.from)) / Math.min(a.to - a.from, b.to - b.from);
}

/** The wards of one site, one for each depth, the smallest of those alike. */
function levelsOf(wards: readonly FoundWard[]): GrowWard[] {
  const sorted = wards.map((found) => ({ ...found, reach: reachOf(found.ward) })).sort((a, b) => a.reach - b.reach);
  const levels: (typeof sorted)[] = [];
  for (const one of sorted) {
    const last = levels.at(-1);
    if (last && one.reach - last[0].reach < SAME_REACH) last.push(one);
    else levels.push([one]);
  }
  return levels.map((alike) => {
    const made = alike.map(({ ward, reach }) => ({ ward, reach, region: materialOf(ward) }));
    const { ward, reach, region } = made.reduce((a, b) => (largestArea(b.region) < largestArea(a.region) ? b : a));
    return { from: ward.from, to: ward.to, reach, region, keyways: [...new Set(alike.map(({ id }) => id))] };
  });
}

function reachOf({ side, line }: Indent): number {
  return Math.max(...line.map(({ x }) => (side === 'left' ? x : -x)));
}

/** The level of a ward of a keyway at a site, from 1; 0 where the keyway has none there. */
export function levelAt({ wards }: GrowSite, keyway: string): number {
  return wards.findLastIndex(({ keyways }) => keyways.includes(keyway)) + 1;
}

/** What of the plug a ward is: from its line out to beyond the wall, leaning flanks going on as they are. */
function materialOf({ side, line }: Indent): Region {
  const out = side === 'left' ? -1 : 1;
  const low = beyond(line[0], line[1], out);
  const high = beyond(line[line.length - 1], line[line.length - 2], out);
  return soundRegion([...low, ...line, ...high.reverse()]);
}

/** The line goes on outwards from its end: aslant where the flank is, by a tenth of a millimetre, then straight out. */
function beyond(end: Point, before: Point, out: number): Point[] {
  const [dx, dy] = [end.x - before.x, end.y - before.y];
  const leans = dx * out > 0 && Math.abs(dy) < Math.abs(dx);
  const on = { x: end.x + out * FLANK_GOES_ON, y: leans ? end.y + (dy / dx) * out * FLANK_GOES_ON : end.y };
  return [{ x: on.x + out * BEYOND, y: on.y }, on];
}

const FLANK_GOES_ON = 100_000;

function soundRegion(points: readonly Point[]): Region {
  const made = makeRing(points);
  return made.ok ? regionOf(made.ring) : [];
}

/** What a groove lets by, as wards one over the other where it is high enough for several; none where it is shallow. */
function wardsOfGroove(groove: Indent, gap: number): GrowWard[] {
  const region = offset(materialOf(groove), -gap, 'round');
  if (region.length === 0 || groove.depth - gap < LEAST_WARD) return [];
  const [from, to] = [groove.from + gap, groove.to - gap];
  const count = Math.max(1, Math.floor((to - from + LAND) / (LEAST_HEIGHT + LAND)));
  const height = Math.floor((to - from - (count - 1) * LAND) / count);
  return Array.from({ length: count }, (_, i) => from + i * (height + LAND)).flatMap((low): GrowWard[] => {
    const part = count === 1 ? region : intersection(region, slab(region, low, low + height));
    if (part.length === 0) return [];
    const box = boxOf(part[0].outer);
    const reach = groove.side === 'left' ? box.maxX : -box.minX;
    return [{ from: low, to: low + height, reach, region: part, keyways: [] }];
  });
}

/** Wards in one unused groove are at least this high, with at least that much of the blade between them, nanometres. */
const [LEAST_HEIGHT, LAND] = [600_000, 400_000];

/** All between two heights, as wide as a region. */
function slab([{ outer }]: Region, from: number, to: number): Region {
  const { minX, maxX } = boxOf(outer);
  return soundRegion([
    { x: minX, y: from },
    { x: maxX, y: from },
    { x: maxX, y: to },
    { x: minX, y: to },
  ]);
}

/** The keyway of middle size, without wards in any of the grooves. */
function plainKeyway(keyways: readonly PlacedKeyway[], grooves: readonly Indent[]): Ring {
  const { ring } = ofMiddleSize(keyways);
  const filled = indentsOf(ring)
    .filter((ward) => grooves.some((groove) => isBeside(ward, groove)))
    .reduce((region, ward) => union(region, fillingOf(ward)), regionOf(ring));
  return largestRing(filled) ?? ring;
}

/** The one of middle size over all; of those alike the first by id. The list is not empty. */
export function ofMiddleSize<One extends PlacedKeyway>(keyways: readonly One[]): One {
  const sized = keyways
    .map((keyway) => ({ keyway, box: boxOf(keyway.ring) }))
    .sort((a, b) => size(a.box) - size(b.box) || (a.keyway.id < b.keyway.id ? -1 : 1));
  return sized[Math.floor(sized.length / 2)].keyway;
}

function size({ minX, minY, maxX, maxY }: ReturnType<typeof boxOf>): number {
  return maxX - minX + maxY - minY;
}

/** The foot of a ward stands out by no more than this from the wall: see indentsOf. */
const FOOT = { share: 0.05, most: 2_000 } as const;

/** A ward as room: from the wall in to just beyond its line. */
function fillingOf({ side, line, depth }: Indent): Region {
  const out = side === 'left' ? -1 : 1;
  const foot = Math.min(FOOT.most, depth * FOOT.share);
  // A leaning flank meets the wall a little beyond its foot.
  const wall = (p: Point, up: number) => ({ x: Math.round(p.x + out * foot), y: p.y + up * INTO });
  const inner = line.map(({ x, y }) => ({ x: x - out * INTO, y }));
  return soundRegion([wall(line[0], -1), ...inner, wall(line[line.length - 1], 1)]);
}

/** How far the filling of a ward laps over into the keyway, nanometres. */
const INTO = 5_000;

/** Corners of a cut outline that stand off it by less than this are left out, nanometres. */
const SMOOTHED = 100;

/** The largest part of a region without holes, as a sound outline; null where there is none. */
function largestRing(region: Region): Ring | null {
  const [first] = region.map(({ outer }) => ({ outer, area: signedArea(outer) })).sort((a, b) => b.area - a.area);
  if (!first) return null;
  const made = makeRing(withoutStraight(first.outer));
  return made.ok ? made.ring : null;
}

/** Without corners at which the outline hardly turns, and without the crumbs that clipping leaves beside a corner. */
function withoutStraight(points: readonly Point[]): Point[] {
  const spread = points.filter((p, i) => {
    const q = points[(i + 1) % points.length];
    return Math.hypot(q.x - p.x, q.y - p.y) > SMOOTHED;
  });
  return spread.filter((p, i) => {
    const [a, b] = [spread.at(i - 1) ?? p, spread[(i + 1) % spread.length]];
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const off = Math.abs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x));
    return length === 0 || off / length > 2;
  });
}

/**
 * The keyway of a code: the plain one with a ward at each site that has a depth there.
 *
 * @returns null where the wards leave no keyway in one piece.
 */
export function keywayOf({ plain, sites }: GrowGround, code: readonly number[]): Ring | null {
  const region = code.reduce<Region>((rest, level, site) => {
    const ward = sites[site].wards[level - 1];
    return level > 0 && ward ? difference(rest, ward.region) : rest;
  }, regionOf(plain));
  return largestRing(region);
}

/** Moves an outline by whole nanometres. */
export function placed(id: string, ring: Ring, by: Point): PlacedKeyway {
  const move = { x: Math.round(by.x), y: Math.round(by.y) };
  return { id, ring: asTrustedRing(translatePoints(ring, move)) };
}
