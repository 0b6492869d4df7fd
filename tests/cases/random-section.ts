import type { RandomNumbers } from './random-numbers.ts';
import { bandOf, type Notch, type Section } from './section-outline.ts';

const MM = 1e6;
/** Material left between a notch and one opposite to it. */
const LEAST_WEB = 0.45 * MM;
/** Two notches whose bands come this near count as opposite. */
const BAND_MARGIN = 0.25 * MM;

/** What the flanks of the notches may be. */
export type Flanks = 'square' | 'any';

/**
 * A blade as one would find it in a drawer: 1.6-2.4 mm thick, 7.5-9 mm high, `count` grooves 0.45 mm wide
 * and more, 0.3-0.8 mm deep (sometimes past the middle where nothing stands opposite). With `flanks` 'any',
 * some flanks lean outwards and some are undercut.
 */
export function randomSection(random: RandomNumbers, count: number, flanks: Flanks): Section {
  const thickness = random.whole(160, 240) * 10_000;
  const height = random.whole(750, 900) * 10_000;
  const leftCount = Math.max(1, Math.min(count - 1, Math.round(count / 2 + random.between(-1, 1))));
  const places = [
    ...placesOn('left', leftCount, height, random),
    ...placesOn('right', count - leftCount, height, random),
  ];
  const notches: Notch[] = [];
  for (const place of random.shuffled(places)) {
    const notch = { ...place, depth: depthFor(place, notches, thickness, random), lean: 0 };
    notches.push(flanks === 'any' ? { ...notch, lean: randomLean(notch, random) } : notch);
  }
  return { thickness, height, notches };
}

type Place = Pick<Notch, 'side' | 'bottom' | 'width'>;

/** Room for `count` notches one above the other, each in its own share of the height. */
function placesOn(side: Notch['side'], count: number, height: number, random: RandomNumbers): Place[] {
  const share = (height - 1.0 * MM) / count;
  return Array.from({ length: count }, (_, i) => {
    const width = Math.round(random.between(0.45 * MM, Math.min(1.2 * MM, share - 0.5 * MM)));
    const room = share - width - 0.5 * MM;
    const bottom = Math.round(0.5 * MM + share * i + 0.25 * MM + random.next() * room);
    return { side, bottom, width };
  });
}

function depthFor(place: Place, others: readonly Notch[], thickness: number, random: RandomNumbers): number {
  const opposite = others.filter((n) => n.side !== place.side && overlap(place, n));
  const taken = Math.max(0, ...opposite.map((n) => n.depth));
  const most =
    opposite.length === 0 && random.chance(0.2) ? 0.6 * thickness : Math.min(0.8 * MM, thickness - LEAST_WEB - taken);
  return Math.round(random.between(0.3 * MM, Math.max(0.3 * MM, most)));
}

function overlap(place: Place, notch: Notch): boolean {
  const band = bandOf(notch);
  return place.bottom - BAND_MARGIN < band.high && band.low < place.bottom + place.width + BAND_MARGIN;
}

/** Six in ten square, the rest leaning up to 35 degrees outwards or undercut by up to 0.1 mm. */
function randomLean(notch: Notch, random: RandomNumbers): number {
  const kind = random.next();
  if (kind < 0.6) return 0;
  if (kind < 0.85) return Math.round(Math.min(0.2 * MM, notch.depth * Math.tan(random.between(0.1, 0.6))));
  return -Math.round(random.between(0.03 * MM, 0.1 * MM));
}
