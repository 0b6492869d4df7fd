import { readingText, type Units } from '../../../family/length-text.ts';
import type { Conditions } from '../../../fit/conditions.ts';
import type { Contact, Feature, Fit } from '../../../fit/fit.ts';
import type { Bands, ThreeWay } from '../../../fit/judge-tolerance.ts';
import type { Share } from '../../../fit/monte-carlo.ts';

/** Names the plug's part at a contact. */
type PartName = (part: Pick<Contact, 'side' | 'ward'>) => string;

/** A whole-nanometre outline leaves less than this unsaid. */
const ROUNDING = 1;

/** Why the three-way answer is what it is, as a sentence that goes on from its words. */
export function threeWaySentence(answer: ThreeWay, fit: Fit, bands: Bands, units: Units): string {
  const sum = bands.blank + bands.opening;
  const told = (nm: number) => readingText(nm, units).replaceAll(' ', '\u00a0');
  if (answer === 'always') {
    const kept = fit.clearance - sum;
    if (kept <= ROUNDING) return 'Even the fullest blank in the narrowest keyway still goes in, touching.';
    return `Even the fullest blank in the narrowest keyway keeps ${told(kept)}.`;
  }
  if (answer === 'never') return 'Even the leanest blank stays out of the widest keyway.';
  if (fit.verdict === 'blocked')
    return `As drawn it is ${told(fit.clearance)} too deep, but a lean blank may enter a wide keyway.`;
  return `The tolerances add up to ${told(sum)}, more than the gap of ${told(fit.clearance)}.`;
}

/** "Worn by 0.020 mm and tilted up to 2.0°" where pairs are judged otherwise than new and upright; else nothing. */
export function alteredWords({ wear, tiltLimit }: Conditions, units: Units): string {
  const parts: string[] = [];
  if (wear > 0) parts.push(`worn by ${readingText(wear, units)}`);
  if (tiltLimit > 0) parts.push(`tilted up to ${degreesText(tiltLimit)}`);
  const words = parts.join(' and ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** An angle in degrees: "1.5°", with as many decimals as it needs up to two. */
export function degreesText(radians: number): string {
  return `${Number(((radians * 180) / Math.PI).toFixed(2))}°`;
}

/** What touches what at a contact: "a corner of the blank against the left wall". */
export function contactWords(contact: Contact, partName: PartName): string {
  const part = `the ${partName(contact)}`;
  const onPlug = isCorner(contact.openingFeature) ? `a corner of ${part}` : part;
  return isCorner(contact.blankFeature) ? `a corner of the blank against ${onPlug}` : `the blank against ${onPlug}`;
}

function isCorner({ kind }: Feature): boolean {
  return kind === 'corner';
}

/**
 * Why the best placement has no more room: the two parts that press from the most opposite directions, or all that
 * press where no two are opposite. Empty without contacts.
 */
export function bindingSentence(contacts: readonly Contact[], partName: PartName): string {
  if (contacts.length === 0) return '';
  const pair = mostOpposite(contacts);
  const names = [...new Set((pair ?? contacts).map((contact) => partName(contact)))];
  if (!pair) return `It cannot have more room: it is held by the ${listed(names)}.`;
  if (names.length === 1) return `It cannot have more room: it is held round the ${names[0]}.`;
  return `It cannot have more room: it is held between the ${names[0]} and the ${names[1]}.`;
}

/** Directions count as opposite from 143 degrees on. */
const OPPOSITE = -0.8;

function mostOpposite(contacts: readonly Contact[]): readonly [Contact, Contact] | null {
  let best: readonly [Contact, Contact] | null = null;
  let least = OPPOSITE;
  for (const [i, a] of contacts.entries())
    for (const b of contacts.slice(i + 1)) {
      const along = directionOf(a).x * directionOf(b).x + directionOf(a).y * directionOf(b).y;
      if (along < least - 1e-6) [best, least] = [[a, b], along];
    }
  return best;
}

const SIDES = { left: { x: -1, y: 0 }, right: { x: 1, y: 0 }, bottom: { x: 0, y: -1 }, top: { x: 0, y: 1 } } as const;

/** From the blank to the plug, of length one; by the plug's side where they touch. */
function directionOf({ onBlank, onOpening, gap, side }: Contact): { x: number; y: number } {
  if (gap < ROUNDING) return SIDES[side];
  return { x: (onOpening.x - onBlank.x) / gap, y: (onOpening.y - onBlank.y) / gap };
}

function listed(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', the ')} and the ${names.at(-1)}`;
}

/** An outline's fault with its corners and edges counted from 1, as the corner panel counts them. */
export function faultWords(message: string): string {
  return message
    .replace(/\bvertex (\d+)/g, (_, n) => `corner ${Number(n) + 1}`)
    .replace(/\bedge (\d+)/g, (_, n) => `edge ${Number(n) + 1}`)
    .replaceAll('vertices', 'corners');
}

/** "Of 10,000 drawn pairs 83.1 % go together (95 % confidence: 82.4 to 83.8 %)." */
export function drawnSentence({ share, from, to }: Share, draws: number): string {
  const percent = (part: number) => (100 * part).toFixed(1);
  const count = draws.toLocaleString('en');
  return `Of ${count} pairs drawn evenly from their bands ${percent(share)} % go together (95 % confidence: ${percent(from)} to ${percent(to)} %).`;
}

/** From where heights are told: a worn keyway has worn at its floor too. */
export function floorWords({ wear }: Pick<Conditions, 'wear'>): string {
  return `above the floor of the ${wear > 0 ? 'worn ' : ''}keyway`;
}
