import type { Vertex } from '../geom/vertex.ts';
import { flatOutline } from '../profile/measure-apart.ts';
import type { Profile } from '../profile/profile.ts';
import { type Comparison, compareOutlines, compareRoughly } from './compare-outlines.ts';
import { equalOutlines } from './equal-outlines.ts';
import { judgeLikeness, type LikenessAnswer, partingOf } from './judge-likeness.ts';
import {
  type Known,
  type LayOptions,
  prepareKnown,
  prepareUnknown,
  type RoughPose,
  roughPoses,
} from './rough-poses.ts';

/** Which profiles an unknown is compared with. */
export type Among = 'entrants' | 'openings' | 'all';

/** An unknown outline and what it is to be compared with. */
export interface Question extends LayOptions {
  /** Sound, counter-clockwise, its arcs as bulges, nanometres. */
  readonly outline: readonly Vertex[];
  /** By how much the outline may be wrong either way at each of its places, nanometres; above 0. */
  readonly error: number;
  /** The profiles that it is compared with, in chart order. */
  readonly profiles: readonly Profile[];
}

/** One section of the family, and how the unknown lies on it. */
export interface Candidate {
  /** The ids of all profiles of this outline, in chart order: at least one. */
  readonly ids: readonly string[];
  readonly comparison: Comparison;
  /** Whether it was laid with care; else it is far off, and its figures may be somewhat too large. */
  readonly careful: boolean;
}

/** What an unknown outline may be: every section, the closest first, and how sure it is. */
export interface Identification extends LikenessAnswer {
  readonly ranked: readonly Candidate[];
  /** How many sections more there are, further off in the rough than all of these, and not measured. */
  readonly beyond: number;
}

/** So many of the sections, at least, that lie closest in the rough are laid with care. */
const CAREFUL = 10;

/** And so many at most, where more are about as close as the closest. */
const MOST_CAREFUL = 30;

/** More than so many are not measured: each costs some milliseconds, and none of them is it. */
const MOST_RANKED = 60;

/** The profiles of a family that an unknown is compared with. */
export function profilesAmong(profiles: readonly Profile[], among: Among): Profile[] {
  return profiles.filter(({ kind }) => among === 'all' || (kind === 'opening') === (among === 'openings'));
}

/**
 * Ranks sections by how close an unknown outline lies to them: by root mean square distance, which a speck in a trace or
 * one wrong corner moves little. Profiles with one outline are one line. Of sections that are as close within a fifth of
 * the drawing error, one on which the unknown lies unmirrored comes first.
 *
 * All are laid on the unknown roughly, the closest then with care.
 *
 * @returns every section, of a large family the sixty closest; those beyond the closest thirty at most are measured as
 *   they lie in the rough.
 * @check tests/unit/identify/identify.test.ts, tests/unit/identify/noisy-traces.test.ts
 */
export function* identifying(question: Question): Generator<{ done: number; total: number }, Identification, void> {
  const lines = equalOutlines(question.profiles);
  const measured = Math.min(MOST_RANKED, lines.length);
  const total = lines.length + measured + 1;
  yield { done: 0, total };
  const unknown = prepareUnknown(flatOutline(question.outline), question);
  const rough: RoughLine[] = [];
  for (const line of lines) {
    const known = prepareKnown(line[0].ring);
    rough.push({ ids: line.map(({ id }) => id), known, poses: roughPoses(unknown, known) });
    yield { done: rough.length + 1, total };
  }
  rough.sort((a, b) => a.poses[0].rms - b.poses[0].rms);
  const careful = carefulCount(rough, question.error);
  const tie = question.error / 5;
  const ranked: Candidate[] = [];
  for (const [i, { ids, known, poses }] of rough.slice(0, measured).entries()) {
    const isCareful = i < careful;
    const compare = isCareful ? compareOutlines : compareRoughly;
    ranked.push({ ids, comparison: compare(unknown, known, tie, poses), careful: isCareful });
    yield { done: lines.length + ranked.length + 1, total };
  }
  const answer = judged(plainestFirst(ranked.sort(byCloseness), tie), question.error);
  return { ...answer, beyond: lines.length - measured };
}

/** {@link identifying} at once. */
export function identify(question: Question): Identification {
  const steps = identifying(question);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

interface RoughLine {
  readonly ids: readonly string[];
  readonly known: Known;
  readonly poses: readonly RoughPose[];
}

function carefulCount(rough: readonly RoughLine[], error: number): number {
  const limit = rough.length > 0 ? 2 * (rough[0].poses[0].rms + error) : 0;
  const near = rough.filter(({ poses }) => poses[0].rms <= limit).length;
  return Math.max(CAREFUL, Math.min(MOST_CAREFUL, near));
}

/** What was laid with care is before what was not. */
function byCloseness(a: Candidate, b: Candidate): number {
  return Number(b.careful) - Number(a.careful) || a.comparison.rms - b.comparison.rms;
}

function plainestFirst(ranked: Candidate[], tie: number): Candidate[] {
  if (!ranked[0]?.comparison.pose.mirrored) return ranked;
  const limit = ranked[0].comparison.rms + tie;
  const plain = ranked.find(({ comparison }) => !comparison.pose.mirrored && comparison.rms <= limit);
  return plain ? [plain, ...ranked.filter((other) => other !== plain)] : ranked;
}

/** Those that may be it come first, whatever their mean. */
function judged(ranked: readonly Candidate[], error: number): Omit<Identification, 'beyond'> {
  const figures = ranked.map(({ comparison }) => comparison);
  const answer = judgeLikeness(figures, error);
  if (answer.likeness !== 'either') return { ranked, ...answer };
  const [first, ...others] = ranked;
  const parting = (other: Candidate) => partingOf(first.comparison, other.comparison);
  const alike = new Set([...others].sort((a, b) => parting(a) - parting(b)).slice(0, answer.count - 1));
  return {
    ranked: [first, ...others.filter((other) => alike.has(other)), ...others.filter((other) => !alike.has(other))],
    ...answer,
  };
}
