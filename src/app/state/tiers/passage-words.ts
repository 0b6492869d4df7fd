import type { Family } from '../../../family/family.ts';
import { bandText, heightText, readingText, sizeText, type Units } from '../../../family/length-text.ts';
import { NM_PER_INCH, NM_PER_MM } from '../../../geom/point.ts';
import type { Sureness } from '../../../passage/align-regions.ts';
import type { Loss, LossSide, NoBlank, Passage, PassageBlank } from '../../../passage/passage.ts';

/** An area: "13.51 mm²" or "0.0209 in²". */
export function areaText(area: number, units: Units): string {
  return units === 'in' ? `${(area / NM_PER_INCH ** 2).toFixed(4)} in²` : `${(area / NM_PER_MM ** 2).toFixed(2)} mm²`;
}

/** A share as a percentage; what is there never reads as nothing. */
export function shareText(share: number): string {
  if (share > 0 && share < 0.001) return 'under 0.1 %';
  return `${(share * 100).toFixed(share < 0.0995 ? 1 : 0)} %`;
}

/** Names in a row: "Heron keyway, Smew keyway and Ruff keyway"; the rest of a long row as a number. */
export function namesText(names: readonly string[], most = 6): string {
  const shown = names.length > most ? [...names.slice(0, most - 1), `${names.length - most + 1} more`] : [...names];
  const last = shown.pop() ?? '';
  return shown.length > 0 ? `${shown.join(', ')} and ${last}` : last;
}

/** "the 3 keyways", "both keyways", "the one keyway". */
export function chosenText(count: number, all: boolean): string {
  if (count === 1) return 'this one keyway';
  if (count === 2) return 'both keyways';
  return all ? `all ${count} keyways` : `the ${count} chosen keyways`;
}

/** The line over the picture. */
export function passageHeadline(passage: Passage, all: boolean, units: Units): string {
  const { blank, members } = passage;
  const of = chosenText(members.length, all);
  if (!blank) return `No blank passes ${of}`;
  return `A blank of ${sizeText(blank.width, blank.height, units)} passes ${of}`;
}

/** Why there is no blank. */
export function noBlankText(none: NoBlank, nameOf: (id: string) => string, clearance: number, units: Units): string {
  if (none.why === 'none-chosen') return 'No keyway is chosen.';
  if (none.why === 'nothing-shared')
    return `With ${readingText(clearance, units)} of running clearance all round nothing is left that all of them share. Choose fewer keyways.`;
  const names = namesText(none.ids.map(nameOf));
  const verb = none.ids.length === 1 ? 'leaves' : 'leave';
  return `With ${readingText(clearance, units)} of running clearance all round ${names} ${verb} no room for any blank. Leave ${none.ids.length === 1 ? 'it' : 'them'} out, or set a smaller running clearance for the family.`;
}

/** A stretch along the blade, or one height where both ends read the same. */
function placeText(from: number, to: number, units: Units): string {
  const [low, high] = [heightText(from, units), heightText(to, units)];
  return low === high ? low : bandText(from, to, units);
}

/** A web thinner than this is cautioned of where the family sets none, nanometres. Common practice, no source. */
const THIN_WEB = 500_000;

/** The web of the blank, and whether it is enough. */
export function webText({ web }: PassageBlank, { leastWeb }: Family, units: Units): { words: string; weak: boolean } {
  const told = `Its thinnest web is ${readingText(web.thickness, units)}, at ${placeText(web.from, web.to, units)}.`;
  if (leastWeb !== undefined && web.thickness < leastWeb)
    return {
      words: `${told} That is less than the family's least web of ${readingText(leastWeb, units)}: a blank this thin may be weak.`,
      weak: true,
    };
  if (leastWeb === undefined && web.thickness < THIN_WEB)
    return { words: `${told} A blank this thin may be weak: it can bend or break in the hand.`, weak: true };
  return { words: told, weak: false };
}

/** What a straight cutter costs; empty where the blank may have any form. */
export function milledText({ milled, area }: PassageBlank, units: Units): string {
  return milled
    ? `Milled by a straight cutter it has ${lessText(milled.free, area, units)} less than in any form.`
    : '';
}

/** What an area falls short of another one: "0.32 mm² (2.1 %)". */
export function lessText(most: number, area: number, units: Units): string {
  return `${areaText(most - area, units)} (${shareText((most - area) / most)})`;
}

/** The parts that do not hang together with the blade. */
export function apartText({ apart }: PassageBlank, units: Units): string {
  if (apart.length === 0) return '';
  const areas = apart.reduce((sum, { area }) => sum + area, 0);
  const rest = apart.length === 1 ? 'the other one' : `the ${apart.length} others`;
  return `What they share falls into ${apart.length + 1} parts. The blank is the largest; ${rest} of ${areaText(areas, units)} would not hang together with it.`;
}

/** How sure it is that there is no larger blank. */
export function sureText({ kind, starts, same, atMost }: Sureness, units: Units): string {
  const bound = `None can have more than ${areaText(atMost, units)}: the room of the tightest keyway.`;
  if (kind === 'best') return 'There is no larger one: it takes up all the room that the tightest keyway leaves.';
  if (kind === 'agreed')
    return `Searched from ${starts} alignments (as drawn, backs or walls level, boxes centred, all over), which all led to the same one. A larger one is unlikely, but it is no proof. ${bound}`;
  return `The best of ${starts} alignments (as drawn, backs or walls level, boxes centred, all over); ${same} of them led to it, so there may be a better one. ${bound}`;
}

const SIDES: Readonly<Record<LossSide, string>> = {
  left: 'on the left',
  right: 'on the right',
  above: 'above it',
  below: 'below it',
  around: 'all round',
};

/** Most places that are told of a loss. */
const MOST_PLACES = 3;

/** What the blank gives up in one keyway, and where. */
export function lossText(name: string, loss: Loss, units: Units): string {
  if (loss.area <= 0 || loss.share < 1e-4) return `${name} alone would take no larger blank.`;
  const given = `${areaText(loss.area, units)} of the ${areaText(loss.own, units)} that would pass there`;
  const head = `In ${name} it gives up ${given} (${shareText(loss.share)})`;
  const places = loss.places
    .slice(0, MOST_PLACES)
    .map(({ side, from, to }) => `${SIDES[side]} at ${placeText(from, to, units)}`);
  return places.length > 0 ? `${head}: most ${places.join(', then ')}.` : `${head}, in a thin rim all round.`;
}

/** Which keyways that were not chosen the blank goes into too. */
export function othersText(passage: Passage, nameOf: (id: string) => string): string {
  const others = passage.entries.filter(({ chosen }) => !chosen);
  if (others.length === 0) return '';
  const also = others.filter(({ fit }) => fit.verdict !== 'blocked').map(({ id }) => nameOf(id));
  if (also.length === 0) return 'It enters no other keyway of the family.';
  const tight = others.filter(({ fit }) => fit.verdict === 'tight').length;
  const tightly = tight === 0 ? '' : ` (${tight === also.length ? 'tightly' : `${tight} of them tightly`})`;
  return `It also enters ${namesText(also)}${tightly}, which ${also.length === 1 ? 'was' : 'were'} not chosen.`;
}
