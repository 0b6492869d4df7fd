import { bandText, heightText, type Units } from '../../../family/length-text.ts';
import { nameList } from '../../../family/name-list.ts';
import { heldHeights } from '../../../gauge/gauge-answer.ts';
import { capital } from '../../../gauge/gauge-sentence.ts';
import type { Pinch } from '../../../gauge/pinch.ts';
import type { Profile } from '../../../profile/profile.ts';
import { askedHeightText, askedThicknessText, exactHeightText, tallestText, thicknessText } from './gauge-lengths.ts';

/** What a keyway is called where room is short: its section, else its name without the word. */
export function shortName({ section, name }: Pick<Profile, 'section' | 'name'>): string {
  return section ?? (name.replace(/ keyway$/i, '') || name);
}

/** Most keyways that are told by name where room is short. */
const MOST_NAMED = 4;

/**
 * Keyways that do the same, by their short names: "Annexe, Theatre and Laboratory"; "30 keyways alike" where they are many.
 *
 * @param openings at least one.
 * @check tests/unit/app/gauge-words.test.ts
 */
export function alikeNames(openings: readonly Pick<Profile, 'section' | 'name'>[]): string {
  return openings.length <= MOST_NAMED ? nameList(openings.map(shortName)) : `${openings.length} keyways alike`;
}

/** A tilt: "1.4° to the left"; "upright" where there is none. The top leans that way. */
export function tiltWords(tilt: number): string {
  const degrees = (Math.abs(tilt) * 180) / Math.PI;
  if (degrees < 0.005) return 'upright';
  return `tilted ${degrees.toFixed(degrees < 1 ? 2 : 1)}° to the ${tilt > 0 ? 'left' : 'right'}`;
}

/**
 * How far a strip may be tilted: "up to 2°"; nothing where it is upright.
 *
 * @param tiltLimit radians.
 */
export function tiltLimitText(tiltLimit: number): string | undefined {
  return tiltLimit > 0 ? `up to ${Number(((tiltLimit * 180) / Math.PI).toFixed(3))}°` : undefined;
}

/** Heights that are nearer than this are told as one, nanometres. */
const ONE_HEIGHT = 50_000;

/**
 * What holds the thickest strip of a height in a keyway, as a sentence.
 *
 * @check tests/unit/app/gauge-words.test.ts
 */
export function pinchWords(opening: Profile, height: number, pinch: Pinch | null, units: Units): string {
  if (!pinch) return `No strip ${exactHeightText(height, units)} tall goes into ${opening.name}, however thin.`;
  const thick = capital(thicknessText(pinch.thickness, units));
  return `${thick} is the thickest strip ${askedHeightText(height, units)} tall that goes into ${opening.name}, ${tiltWords(pinch.tilt)}. ${whereHeld(opening, pinch, units)}`;
}

/** "It is held at 4.2 mm above the floor of the keyway." */
function whereHeld(opening: Profile, pinch: Pinch, units: Units): string {
  const [left, right] = heldHeights(pinch, opening.ring);
  if (Math.abs(left - right) < ONE_HEIGHT)
    return `It is held on both sides at ${heightText((left + right) / 2, units)} above the floor of the keyway.`;
  return `It is held on the left at ${heightText(left, units)} and on the right at ${heightText(right, units)} above the floor of the keyway.`;
}

/** What the family says to the height in hand before all curves are there. */
export function waitingWords(known: number, all: number): string {
  return known === 0 ? 'Looking how thick a strip may be …' : `${known} of ${all} keyways are known so far …`;
}

/** A keyway as it stands in a sentence: "Marsh keyway". */
export function keywayName({ section, name }: Pick<Profile, 'section' | 'name'>): string {
  return section === undefined ? name : `${section} keyway`;
}

/** How the answer writes its lengths. */
export function sentenceLengths(units: Units) {
  return {
    thickness: (nm: number) => thicknessText(nm, units),
    asked: (nm: number) => askedThicknessText(nm, units),
    height: (nm: number) => askedHeightText(nm, units),
    tooTall: (nm: number) => exactHeightText(nm, units),
    tallest: (nm: number) => tallestText(nm, units),
    at: (nm: number) => heightText(nm, units),
    band: (from: number, to: number) => bandText(from, to, units),
  };
}
