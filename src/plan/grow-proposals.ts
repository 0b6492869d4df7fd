import { makeRing, type Ring } from '../geom/ring.ts';
import { millOutline } from '../profile/mill-outline.ts';
import { blankFromOpening } from '../profile/opening-from-blank.ts';
import type { Groove, Milled } from '../profile/profile.ts';
import { readGrooves } from '../profile/read-grooves.ts';
import type { CodeRules } from './free-codes.ts';
import type { GrownSection, GrowPair, GrowProposal } from './grow.ts';
import type { Part } from './grow-judge.ts';
import type { FamilyParts } from './grow-kinds.ts';
import type { DrawnSection, GrowMaking } from './grow-rules.ts';
import { type GrowGround, keywayOf } from './grow-sites.ts';

/** So many blanks are told that come closest. */
const MOST_CLOSEST = 3;

/** A reading explains an outline where it stands off it by no more than this, nanometres. */
const READ_WITHIN = 2_000;

/** A confirmed section, as it is added. */
export interface FinishedSection extends DrawnSection {
  readonly made: { readonly keyway: GrownSection; readonly blank: GrownSection };
}

/** The section as it was drawn. */
export function asDrawn(drawn: DrawnSection): FinishedSection {
  return { ...drawn, made: { keyway: { ring: drawn.keyway.ring }, blank: { ring: drawn.blank.ring } } };
}

/**
 * Reads the plain keyway and each ward once as milled ones, so that a section is told by its grooves and the same ward has the
 * same figures in each.
 */
export class MilledWards {
  private plain: Milled | null | undefined;
  private readonly grooves = new Map<string, Groove | null>();

  constructor(
    private readonly ground: GrowGround,
    private readonly making: GrowMaking,
  ) {}

  /** The section milled; null where the plain keyway or one of its wards does not read as milled. */
  finish({ code }: DrawnSection): FinishedSection | null {
    const { gap, band } = this.making;
    this.plain ??= read(this.ground.plain);
    const grooves = code.flatMap((level, site) => (level > 0 ? [this.groove(site, level)] : []));
    if (!this.plain || grooves.some((groove) => groove === null)) return null;
    const sound = [...this.plain.grooves, ...grooves.filter((groove) => groove !== null)];
    const keyway = milledSection({ ...this.plain, grooves: inOrder(sound) });
    const made = keyway && blankFromOpening({ name: '', ring: keyway.ring, milled: keyway.milled }, gap);
    if (!keyway || !made?.ok || made.made.told.length > 0) return null;
    const blank = { ring: made.made.ring, milled: made.made.milled };
    return {
      code,
      keyway: { id: '', ring: keyway.ring, band },
      blank: { id: '', ring: blank.ring, band },
      made: { keyway, blank },
    };
  }

  private groove(site: number, level: number): Groove | null {
    const key = `${site} ${level}`;
    const known = this.grooves.get(key);
    if (known !== undefined) return known;
    const ring = keywayOf(
      this.ground,
      this.ground.sites.map((_, i) => (i === site ? level : 0)),
    );
    const alone = ring && read(ring);
    const { side } = this.ground.sites[site];
    const more = alone ? alone.grooves.filter((groove) => groove.side === side && !this.isPlain(groove)) : [];
    const groove = more.length === 1 ? more[0] : null;
    this.grooves.set(key, groove);
    return groove;
  }

  /** Whether a groove is one of the plain keyway's own. */
  private isPlain(groove: Groove): boolean {
    return (this.plain?.grooves ?? []).some(
      ({ side, bottom, width }) =>
        side === groove.side && bottom < groove.bottom + groove.width && groove.bottom < bottom + width,
    );
  }
}

/** An outline as a milled one, in whole micrometres; null where it does not read so. */
function read(ring: Ring): Milled | null {
  const reading = readGrooves(ring);
  if (!reading.ok || reading.unexplained.length > 0 || reading.off > READ_WITHIN) return null;
  return inWholeMicrometres(reading.milled);
}

/** Left before right, from below, as in the files. */
function inOrder(grooves: readonly Groove[]): Groove[] {
  const fromBelow = (side: Groove['side']) =>
    grooves.filter((groove) => groove.side === side).sort((a, b) => a.bottom - b.bottom);
  return [...fromBelow('left'), ...fromBelow('right')];
}

function milledSection(milled: Milled): (GrownSection & { readonly milled: Milled }) | null {
  const points = millOutline(milled);
  const made = makeRing(Array.isArray(points) ? points : []);
  return made.ok ? { ring: made.ring, milled } : null;
}

const whole = (nm: number) => Math.round(nm / 1_000) * 1_000;

/** Sizes as they are typed: whole micrometres, and hundredths of a degree. */
function inWholeMicrometres({ thickness, height, backRadius, grooves }: Milled): Milled {
  return {
    thickness: whole(thickness),
    height: whole(height),
    backRadius: whole(backRadius),
    grooves: grooves.map((groove) => ({
      side: groove.side,
      bottom: whole(groove.bottom),
      width: whole(groove.bottom + groove.width) - whole(groove.bottom),
      depth: whole(groove.depth),
      flank: (Math.round((groove.flank * 18_000) / Math.PI) * Math.PI) / 18_000,
      rootRadius: whole(groove.rootRadius),
    })),
  };
}

/** What a proposal is judged beside. */
export interface ProposalGround {
  readonly parts: FamilyParts;
  /** Blanks that must stay out of a new keyway. */
  readonly kept: readonly Part[];
  readonly tops: readonly Part[];
  readonly making: GrowMaking;
  readonly rules: CodeRules;
}

/** Whether the fit core confirms a section beside the family: entered by what must enter it, and by nothing else. */
export function isConfirmed({ keyway, blank }: DrawnSection, { parts, kept, tops, making }: ProposalGround): boolean {
  const { judge } = making;
  return (
    judge.enters(keyway, blank).ok &&
    tops.every((top) => judge.enters(keyway, top).ok) &&
    kept.every((other) => judge.stops(keyway, other)) &&
    parts.keyways.every((other) => judge.stops(other, blank))
  );
}

/** A confirmed section with its margins. */
export function measured(
  drawn: FinishedSection,
  ground: ProposalGround,
  rest: Pick<GrowProposal, 'between' | 'roomAfter'>,
): GrowProposal {
  const { tops, making } = ground;
  const entries: GrowPair[] = [
    { blank: null, keyway: null, length: making.judge.enters(drawn.keyway, drawn.blank).clearance },
    ...tops.map((top) => ({ blank: top.id, keyway: null, length: making.judge.enters(drawn.keyway, top).clearance })),
  ];
  const closest = closestBlanks(drawn, ground);
  return {
    code: drawn.code,
    ...drawn.made,
    ...rest,
    guard: guardOf(drawn, ground, closest[0] ?? null),
    clearance: entries.reduce((a, b) => (b.length < a.length ? b : a)),
    closest,
  };
}

/** The blanks that would go into the new keyway first as parts wear. */
function closestBlanks({ keyway, code }: DrawnSection, { kept, making, rules }: ProposalGround): GrowPair[] {
  const found: GrowPair[] = [];
  // Those that few wards stop are likely the closest: the others then cost one look each.
  const wards = rules.stoppedFrom.map((from) => code.filter((digit, site) => digit >= from[site]).length);
  const order = [...kept.keys()].sort((a, b) => wards[a] - wards[b]);
  for (const blank of order.map((i) => kept[i])) {
    const most = found.length < MOST_CLOSEST ? Number.POSITIVE_INFINITY : found[MOST_CLOSEST - 1].length;
    const length = making.judge.guard(keyway, blank, most);
    if (length === null || length === Number.POSITIVE_INFINITY) continue;
    found.push({ blank: blank.id, keyway: null, length });
    found.sort((a, b) => a.length - b.length);
    found.splice(MOST_CLOSEST);
  }
  return found;
}

/** The guard margin: the closest blank in the new keyway, or the new blank in an existing keyway; others alike are counted. */
function guardOf(
  { keyway: own, blank }: DrawnSection,
  { parts, kept, making }: ProposalGround,
  closest: GrowPair | null,
): GrowPair | null {
  let guard = closest;
  for (const keyway of parts.keyways) {
    const length = making.judge.guard(keyway, blank, guard?.length ?? Number.POSITIVE_INFINITY);
    if (length !== null && length < Number.POSITIVE_INFINITY) guard = { blank: null, keyway: keyway.id, length };
  }
  if (!guard) return null;
  const { length } = guard;
  const alike =
    kept.filter((other) => making.judge.comesAsClose(own, other, length)).length +
    parts.keyways.filter((other) => making.judge.comesAsClose(other, blank, length)).length -
    1;
  return alike > 0 ? { ...guard, alike } : guard;
}
