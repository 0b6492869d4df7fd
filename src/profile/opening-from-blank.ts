import { offset } from '../geom/clip.ts';
import { NM_PER_UM } from '../geom/point.ts';
import { regionOf } from '../geom/region.ts';
import { makeRing, type Ring } from '../geom/ring.ts';
import { signedArea } from '../geom/signed-area.ts';
import type { Vertex } from '../geom/vertex.ts';
import { checkMilled } from './check-milled.ts';
import { type GappedMilled, growMilled, shrinkMilled } from './gap-milled.ts';
import { millOutline } from './mill-outline.ts';
import type { Milled, Profile, ProfileKind } from './profile.ts';

/** A section made from another one by a gap all round. */
export interface GappedSection {
  readonly kind: ProfileKind;
  readonly name: string;
  readonly section?: string;
  /** Present where the section that it was made from is milled. */
  readonly milled?: Milled;
  /** Present where it is drawn. */
  readonly drawn?: readonly Vertex[];
  readonly ring: Ring;
  /** What became of single grooves or parts, in words; empty where all came over as they were. */
  readonly told: readonly string[];
}

/** The section, or why there is none. */
export type GapResult =
  | { readonly ok: true; readonly made: GappedSection }
  | { readonly ok: false; readonly what: string; readonly cure: string };

type Source = Pick<Profile, 'name' | 'section' | 'ring' | 'milled'>;

/**
 * The keyway of a blank: an opening that leaves the clearance all round it.
 *
 * A milled blank gives a milled opening (see growMilled). A drawn one is offset with round joins; the chords of clipper's
 * arcs lie inside them, so the offset is taken larger by what they may fall short, and contains the true one.
 *
 * @param clearance nanometres, more than 0.
 * @accuracy the clearance of the blank in the opening is the asked one or up to 1 um more.
 * @check tests/unit/profile/opening-from-blank.test.ts, tests/laws/opening-from-blank.test.ts (judged by fit)
 */
export function openingFromBlank(blank: Source, clearance: number): GapResult {
  const head = { kind: 'opening', name: openingName(blank.name), section: blank.section } as const;
  if (blank.milled) {
    const { milled } = blank;
    return milledResult(head, (gap) => growMilled(milled, gap), clearance);
  }
  return drawnResult(head, blank.ring, clearance + CHORDS_SHORT);
}

/**
 * The blank of a keyway: the largest blade that has the clearance all round. See {@link openingFromBlank}; where a
 * drawn opening falls into several parts, the largest one is taken and that is told.
 *
 * @param clearance nanometres, more than 0.
 * @check tests/unit/profile/opening-from-blank.test.ts, tests/laws/opening-from-blank.test.ts (judged by fit)
 */
export function blankFromOpening(opening: Source, clearance: number): GapResult {
  const head = { kind: 'blank', name: blankName(opening.name), section: opening.section } as const;
  if (opening.milled) {
    const { milled } = opening;
    return milledResult(head, (gap) => shrinkMilled(milled, gap), clearance);
  }
  return drawnResult(head, opening.ring, -clearance - CHORDS_SHORT);
}

/** Chords of an offset stand off their arcs by no more than this, nanometres. */
const ARC_TOLERANCE = 250;

/** What a round offset may fall short of the true one: its chords, and rounding. */
const CHORDS_SHORT = ARC_TOLERANCE + 2;

type Head = Pick<GappedSection, 'kind' | 'name' | 'section'>;

/** A clearance that is as good as none, nanometres: what fails with it fails with every one. */
const LEAST_CLEARANCE = NM_PER_UM;

function milledResult(head: Head, gapped: (gap: number) => GappedMilled, clearance: number): GapResult {
  const { milled, changes } = gapped(clearance);
  if (milled.thickness <= 0 || milled.height <= 0) return nothingLeft();
  const [fault] = checkMilled(milled);
  if (fault) {
    const always = clearance <= LEAST_CLEARANCE || checkMilled(gapped(LEAST_CLEARANCE).milled).length > 0;
    const source = head.kind === 'opening' ? 'blank' : 'keyway';
    const cure = always ? `No clearance helps; change the ${source}: ${fault.cure}` : 'Give a smaller clearance.';
    return { ok: false, what: `with this clearance ${fault.message}`, cure };
  }
  const points = millOutline(milled);
  const made = makeRing(Array.isArray(points) ? points : []);
  if (!made.ok) return { ok: false, what: `its outline ${made.fault.message}`, cure: 'Give another clearance.' };
  const from = head.kind === 'opening' ? 'Groove' : 'Ward';
  const told = changes.map(
    ({ groove, words }) => `${groove === null ? 'The back' : `${from} ${groove + 1}`} ${words}.`,
  );
  return { ok: true, made: { ...head, milled, ring: made.ring, told } };
}

function drawnResult(head: Head, ring: Ring, distance: number): GapResult {
  const patches = offset(regionOf(ring), distance, 'round', ARC_TOLERANCE)
    .map((patch) => ({ ...patch, area: signedArea(patch.outer) }))
    .filter(({ area }) => area > 0)
    .sort((a, b) => b.area - a.area);
  if (patches.length === 0) return nothingLeft();
  const made = makeRing(patches[0].outer);
  if (!made.ok) return { ok: false, what: `its outline ${made.fault.message}`, cure: 'Give another clearance.' };
  const told = [
    ...(patches.length > 1 ? [`It falls into ${patches.length} parts; the largest one is taken.`] : []),
    ...(patches[0].holes.length > 0 ? ['A slot too narrow for the clearance closes; what it encloses is filled.'] : []),
  ];
  return { ok: true, made: { ...head, drawn: made.ring, ring: made.ring, told } };
}

function nothingLeft(): GapResult {
  return { ok: false, what: 'nothing is left of it with this clearance', cure: 'Give a smaller clearance.' };
}

/** "Heron blank, six chambers" -> "Heron keyway". */
function openingName(name: string): string {
  const named = name.replace(/\b(?:group blank|all-section blank|blank)\b.*$/i, 'keyway');
  return named === name ? `${name} keyway` : named;
}

/** "Heron keyway" -> "Heron blank". */
function blankName(name: string): string {
  const named = name.replace(/\b(?:keyway|opening)\b/i, 'blank');
  return named === name ? `${name} blank` : named;
}
