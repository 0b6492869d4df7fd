import { type Family, openingsOf } from '../family/family.ts';
import { boxOf } from '../geom/point.ts';
import type { Ring } from '../geom/ring.ts';
import { commonPassage } from '../passage/find-passage.ts';
import { spreadProgress } from '../passage/spread-progress.ts';
import { orderBetween, wardsIn } from './between-codes.ts';
import { type CodeRules, type FreeCodes, mostFreeCodes } from './free-codes.ts';
import type { GrowCount, GrowPlace, GrowProposal, GrowReport, NoRoom } from './grow.ts';
import { GrowJudge, type Part } from './grow-judge.ts';
import { type FamilyParts, gapOf, newGapOf, partsOfFamily, ROUNDING } from './grow-kinds.ts';
import { asDrawn, isConfirmed, MilledWards, measured, type ProposalGround } from './grow-proposals.ts';
import { type DrawnSection, drawSection, type GrowMaking, growRules, soundGround } from './grow-rules.ts';
import { type GrowGround, type GrowSite, growSites, levelAt, placed } from './grow-sites.ts';
import { codeAt } from './widest-antichain.ts';

/** What is asked about room to grow. */
export interface GrowInput {
  readonly family: Family;
  /** Ids of group blanks that may enter new keyways. */
  readonly allowed: readonly string[];
  /** Ids of two keyways that the next sections are to lie between. */
  readonly between: readonly [string, string] | null;
  /** What enters all new keyways: the all-section blanks of the family, or the widest blank that passes all keyways. */
  readonly top: 'blank' | 'passage';
  /** By how many wards, each enough by itself, a part is kept out. */
  readonly stops: number;
}

type Progress = { done: number; total: number };
type Steps<Value> = Generator<Progress, Value, void>;

/** Most sections that are drawn and judged together. */
const MOST_CONFIRMED = 300;

/** Most proposals that are told, and that are tried for them. */
const MOST_PROPOSED = 12;
const MOST_TRIED = 60;

/** Room after a proposal is counted where there are no more codes than this. */
const MOST_RECOUNTED = 5_000;

/**
 * How many further sections a family has room for, and the next ones.
 *
 * A further section is entered by every all-section blank, so its wards stand in grooves of theirs. No other blank enters
 * its keyway, but for group blanks that are allowed; its own widest blank enters no other keyway; further sections exclude
 * each other. Each part is kept out by a ward of its own, whatever parts within their tolerance are taken: asked of the fit
 * core ward by ward, which makes the question one of codes. The most codes are found exactly where one ward stops a part
 * (see widestAntichain), and all are then drawn and judged together: only what is confirmed is counted.
 *
 * @returns values for every family: {@link GrowReport.none} says why there is no room.
 * @throws RangeError of the fit core where a pair cannot be judged.
 * @check tests/unit/plan/grow-family.test.ts, tests/laws/grow-family.test.ts
 */
export function* growFamily(input: GrowInput): Steps<GrowReport> {
  const { family } = input;
  const judge = new GrowJudge(family.runningClearance);
  const parts = yield* spreadProgress(partsOfFamily(family, judge), 0, 0.1);
  const making: GrowMaking = { judge, gap: newGapOf(family, parts), band: family.tolerance };
  const newTop = input.top === 'passage' ? yield* spreadProgress(passageBlank(family), 0.1, 0.2) : null;
  const tops = newTop ? [{ id: '', ring: newTop, band: family.tolerance }] : parts.tops;
  const start = { ...EMPTY, tops: newTop ? [] : idsOf(tops), newTop, groups: groupsOf(parts), gap: making.gap };
  const none = yield* spreadProgress(noTop(input, parts, tops), 0.1, 0.2);
  if (none) return { ...start, none };
  const drawn = growSites(tops[0].ring, placedKeyways(parts, tops[0], making), gapOf(family) + 2 * ROUNDING);
  const ground = yield* spreadProgress(soundGround(drawn, tops, making), 0.2, 0.3);
  const codes = parts.keyways.map(({ id }) => ({ id, code: ground.sites.map((site) => levelAt(site, id)) }));
  const told = { ...start, places: ground.sites.map((site) => placeOf(site, boxOf(tops[0].ring).minY)), codes };
  if (ground.sites.length === 0) return { ...told, none: { why: 'no-sites' } };
  const kept = keptOut(input, parts, newTop !== null);
  const rules = yield* spreadProgress(growRules(ground, parts, kept, input.stops, making), 0.3, 0.5);
  const beside: ProposalGround = { parts, kept, tops, making, rules };
  const free = mostFreeCodes(rules);
  const count = yield* spreadProgress(confirmTogether(ground, free, beside), 0.5, 0.8);
  const wanted = candidates(rules, free, input.between, codes);
  const proposals = yield* spreadProgress(propose(ground, wanted, free, beside), 0.8, 1);
  return { ...told, none: null, count, proposals };
}

const EMPTY = {
  places: [],
  codes: [],
  count: { confirmed: 0, atMost: 0, single: 0 },
  proposals: [],
} as const;

function idsOf(parts: readonly Part[]): string[] {
  return parts.map(({ id }) => id);
}

function groupsOf({ groups }: FamilyParts): GrowReport['groups'] {
  return groups.map(({ id, enters }) => ({ id, enters }));
}

/** Why nothing can be said, if so. */
function* noTop({ family }: GrowInput, { keyways }: FamilyParts, tops: readonly Part[]): Steps<NoRoom | null> {
  if (keyways.length === 0) return { why: 'no-keyways' };
  if (tops.length > 0) return null;
  if (keyways.length === 1) return { why: 'one-keyway' };
  return { why: 'no-all-section', passage: yield* passageBlank(family) };
}

/** The widest blank that passes all keyways for parts within their tolerance; null where there is none. */
function* passageBlank(family: Family): Steps<Ring | null> {
  const openings = openingsOf(family).map(({ id, ring }) => ({ id, ring }));
  const chosen = openings.map(({ id }) => id);
  const passage = yield* commonPassage({ openings, chosen, runningClearance: gapOf(family) + 2 * ROUNDING });
  return passage.blank?.ring ?? null;
}

/** Blanks that must stay out of new keyways. */
function keptOut({ allowed, family }: GrowInput, parts: FamilyParts, replaced: boolean): Part[] {
  const groups = parts.groups.filter(({ id }) => !allowed.includes(id));
  const own = family.profiles.filter(({ id }) => allowed.includes(id));
  // With another blank at the top the all-section blanks of the family are group blanks like others.
  const tops = replaced ? parts.tops.filter(({ id }) => !own.some((profile) => profile.id === id)) : [];
  return [...parts.bases, ...groups, ...tops, ...parts.implied];
}

/** The keyways where they lie round the all-section blank: sideways where it has most room, its back over theirs by the gap. */
function placedKeyways({ keyways }: FamilyParts, top: Part, { judge, gap }: GrowMaking) {
  return keyways.map((keyway) => {
    const { placement, seated } = judge.fit(keyway, top);
    return placed(keyway.id, keyway.ring, { x: -placement.x, y: -seated.y - gap });
  });
}

function placeOf({ side, wards }: GrowSite, back: number): GrowPlace {
  const used = new Set(wards.flatMap(({ keyways }) => keyways)).size;
  const [{ from, to }] = wards;
  return { side, from: from - back, to: to - back, levels: wards.length, used };
}

/** Draws the sections of a set of codes and takes out what the fit core does not confirm, each beside all others. */
function* confirmTogether(ground: GrowGround, free: FreeCodes, beside: ProposalGround): Steps<GrowCount> {
  const { making } = beside;
  const taken: DrawnSection[] = [];
  const codes = free.codes.slice(0, MOST_CONFIRMED);
  for (const [i, code] of codes.entries()) {
    const drawn = drawSection(ground, code, making);
    if (drawn && isConfirmed(drawn, beside) && taken.every((other) => excludeEachOther(drawn, other, making)))
      taken.push(drawn);
    yield { done: (i + 1) ** 2, total: codes.length ** 2 };
  }
  return { confirmed: taken.length, atMost: free.atMost, single: free.single };
}

function excludeEachOther(a: DrawnSection, b: DrawnSection, { judge }: GrowMaking): boolean {
  return judge.stops(a.keyway, b.blank) && judge.stops(b.keyway, a.blank);
}

type Candidate = Pick<GrowProposal, 'code' | 'between'>;

/** Codes to propose, those that suit best first. */
function candidates(
  rules: CodeRules,
  free: FreeCodes,
  between: GrowInput['between'],
  codes: GrowReport['codes'],
): Candidate[] {
  const { allowed } = free;
  const all = allowed
    ? Array.from(allowed.keys()).flatMap((number) => (allowed[number] ? [codeAt(rules.space, number)] : []))
    : free.codes;
  const [first, second] = (between ?? []).map((id) => codes.find((one) => one.id === id)?.code);
  if (first && second) return orderBetween(all, first, second);
  const usual = codes.reduce((sum, { code }) => sum + wardsIn(code), 0) / codes.length;
  const off = (code: readonly number[]) => Math.abs(wardsIn(code) - usual);
  const together = new Set(free.codes.map(String));
  const rest = all.filter((code) => !together.has(String(code)));
  // Those that have room beside each other first; the others are told too, where there is place for them.
  return [free.codes, rest].flatMap((some) => some.toSorted((a, b) => off(a) - off(b))).map(anywhere);
}

const anywhere = (code: readonly number[]): Candidate => ({ code, between: null });

/** Draws, confirms and measures the first candidates. */
function* propose(
  ground: GrowGround,
  wanted: readonly Candidate[],
  free: FreeCodes,
  beside: ProposalGround,
): Steps<GrowProposal[]> {
  const found: GrowProposal[] = [];
  const milled = new MilledWards(ground, beside.making);
  for (const { code, between } of wanted.slice(0, MOST_TRIED)) {
    const drawn = drawSection(ground, code, beside.making);
    const section = drawn && confirmed(drawn, milled, beside);
    if (section) {
      const roomAfter = free.single <= MOST_RECOUNTED ? mostFreeCodes(beside.rules, [code], free.allowed).atMost : null;
      found.push(measured(section, beside, { between, roomAfter }));
    }
    yield { done: found.length, total: MOST_PROPOSED };
    if (found.length >= MOST_PROPOSED) break;
  }
  return found.sort((a, b) => (b.guard?.length ?? Infinity) - (a.guard?.length ?? Infinity));
}

/** The section milled where the fit core confirms it so, else as drawn; null where it confirms neither. */
function confirmed(drawn: DrawnSection, milled: MilledWards, beside: ProposalGround) {
  const section = milled.finish(drawn);
  if (section && isConfirmed(section, beside)) return section;
  return isConfirmed(drawn, beside) ? asDrawn(drawn) : null;
}
