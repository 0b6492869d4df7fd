import { bandsOf } from '../family/family.ts';
import { isMeasured } from '../family/fit-cache.ts';
import type { Fit } from '../fit/fit.ts';
import type { Profile } from '../profile/profile.ts';
import type { Knowledge } from './knowledge.ts';

/** Whether a blank or tool goes into a keyway, or undefined where that is not judged yet. A tight fit goes in. */
export function goesIn(knowledge: Knowledge, entrant: Profile, opening: Profile): boolean | undefined {
  const fit = knowledge.fitOf(entrant.id, opening.id);
  return fit && fit.verdict !== 'blocked';
}

/**
 * One pair in a sentence or two: whether it goes in, with how much room, or what stops it.
 *
 * @param yesOrNo whether the sentence starts with yes or no.
 * @check tests/unit/names/ask.test.ts
 */
export function sayPair(entrant: Profile, opening: Profile, knowledge: Knowledge, yesOrNo: boolean): string {
  const fit = knowledge.fitOf(entrant.id, opening.id);
  const [what, where] = [entrant.name, opening.name];
  if (!fit) return `Whether ${what} goes into ${where} is not judged yet.`;
  const reason = knowledge.reason(entrant.id, opening.id);
  if (fit.verdict === 'blocked') {
    const why = reason || blockedPlainly(fit, knowledge);
    return `${yesOrNo ? 'No: ' : ''}${what} does not go into ${where}. It is ${why}.`;
  }
  return `${yesOrNo ? 'Yes: ' : ''}${what} goes into ${where} ${roomOf(fit, knowledge)}${reason && `, ${reason}`}.`;
}

function blockedPlainly(fit: Fit, { length }: Knowledge): string {
  return isMeasured(fit)
    ? `blocked, ${length(-fit.clearance)} too deep`
    : 'blocked; by how much is still being measured';
}

/** The room round a blank that goes in: "with 0.055 mm all round", "in contact on both sides, with no gap left". */
export function roomOf({ clearance, verdict }: Fit, { length }: Knowledge): string {
  if (clearance === 0) return 'in contact on both sides, with no gap left';
  return `${verdict === 'tight' ? 'tightly, ' : ''}with ${length(clearance)} all round`;
}

/**
 * What must be borne in mind about one pair: a tight fit, parts at the limits of their tolerance, what a ward is.
 *
 * @param turning whether it was asked about opening or turning the lock.
 */
export function caveatsOf(entrant: Profile, opening: Profile, knowledge: Knowledge, turning: boolean): string[] {
  const fit = knowledge.fitOf(entrant.id, opening.id);
  if (!fit) return [];
  const caveats = [...sayTight(fit, knowledge), ...sayTolerance(fit, entrant, opening, knowledge)];
  if (fit.verdict === 'blocked' && knowledge.reason(entrant.id, opening.id).includes(' ward'))
    caveats.push(
      'A ward is a rib of the lock that stands into the keyway; a blade passes it only with a groove there.',
    );
  if (fit.verdict !== 'blocked' && turning) caveats.push(sayTurning(entrant));
  return caveats;
}

function sayTight({ verdict }: Fit, { family, length }: Knowledge): string[] {
  if (verdict !== 'tight') return [];
  return [`That is less than the ${length(family.runningClearance)} that this family asks for, so it may rub.`];
}

/** That tolerance may decide: only where it can, by the sum of both bands. */
function sayTolerance(fit: Fit, entrant: Profile, opening: Profile, { family, length }: Knowledge): string[] {
  if (!isMeasured(fit)) return [];
  const { blank, opening: keyway } = bandsOf(family, entrant, opening);
  const sum = blank + keyway;
  if (sum === 0) return [];
  const made = `parts are made to ${length(blank)} (${entrant.kind}) and ${length(keyway)} (keyway)`;
  if (fit.verdict === 'blocked')
    return -fit.clearance <= sum ? [`It is a near thing: ${made}, so some parts may go in.`] : [];
  return fit.clearance < sum
    ? [`It depends on the parts: ${made}, so a large blade may be too much for a small keyway.`]
    : [];
}

/** That going in is not opening. Common practice, no source. */
function sayTurning({ kind }: Profile): string {
  if (kind === 'tool') return 'Going in is not opening: a tool that goes in does not turn the lock by that.';
  return 'Going in is not opening: the key must also be cut for that lock.';
}
