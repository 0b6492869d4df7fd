import { shrinkRing } from '../fit/offset-shapes.ts';
import { boxOf } from '../geom/point.ts';
import { regionOf } from '../geom/region.ts';
import type { Ring } from '../geom/ring.ts';
import type { Profile } from '../profile/profile.ts';
import type { CheckKind, PrintCheck, SectionPlace } from './display-set.ts';
import type { DisplaySetup } from './display-setup.ts';
import { findThinParts, regionRound, type ThinPart } from './find-thin-parts.ts';
import { asPrinted, asReal } from './section-loops.ts';

type FeatureKind = Extract<CheckKind, 'ward' | 'slot' | 'web' | 'groove'>;

const WORDS: Readonly<Record<FeatureKind, string>> = {
  ward: 'a ward that is thinner than the nozzle makes, so it will not be printed',
  slot: 'a part of the opening that is narrower than the nozzle keeps free, so it may close',
  web: 'a part of the blade that is thinner than the nozzle makes once the fitting gap is off, so it will not be printed',
  groove: 'a groove that is narrower than the nozzle keeps free, so it may close',
};

/**
 * Wards and slots of an opening that would vanish in printing.
 *
 * @check tests/unit/print3d/check-features.test.ts
 */
export function checkOpening(opening: Profile, setup: DisplaySetup): PrintCheck[] {
  const width = asReal(setup.nozzle, setup.scale);
  const wall = regionRound([opening.ring], 4 * width);
  const sized = (part: ThinPart) => asPrinted(part.width, setup.scale);
  return [
    ...findThinParts(wall, width).map((part) => lost('ward', opening, part, sized(part), setup)),
    ...findThinParts(regionOf(opening.ring), width).map((part) => lost('slot', opening, part, sized(part), setup)),
  ];
}

/**
 * Webs and grooves of a coupon that would vanish in printing, the fitting gap taken off; or that nothing is left of it.
 *
 * @check tests/unit/print3d/check-features.test.ts
 */
export function checkCoupon(blank: Profile, setup: DisplaySetup): PrintCheck[] {
  const { scale, nozzle, gap } = setup;
  const shrunk = shrinkRing(blank.ring, asReal(gap, scale));
  if (shrunk.length === 0) return [nothingLeft(blank, setup)];
  const webs = findThinParts(regionOf(blank.ring), asReal(nozzle + 2 * gap, scale)).map((part) => {
    return lost('web', blank, part, Math.max(0, asPrinted(part.width, scale) - 2 * gap), setup);
  });
  const width = asReal(nozzle, scale);
  const grooves = findThinParts(regionRound(shrunk, 4 * width), width).map((part) => {
    return lost('groove', blank, part, asPrinted(part.width, scale), setup);
  });
  return [...webs, ...grooves];
}

function lost(kind: FeatureKind, profile: Profile, part: ThinPart, size: number, { nozzle }: DisplaySetup): PrintCheck {
  return {
    ...{ kind, weight: 'fault', subjects: [profile.id], what: WORDS[kind], where: placeOf(profile.ring, part) },
    ...{ size, limit: nozzle, cure: 'print at a larger scale, or with a finer nozzle' },
  };
}

function placeOf(ring: Ring, { box }: ThinPart): SectionPlace {
  const whole = boxOf(ring);
  const right = box.minX + box.maxX > whole.minX + whole.maxX;
  const from = Math.max(0, box.minY - whole.minY);
  const to = Math.min(whole.maxY, box.maxY) - whole.minY;
  return { side: right ? 'right' : 'left', from, to: Math.max(from, to) };
}

function nothingLeft({ id }: Profile, { gap }: DisplaySetup): PrintCheck {
  return {
    ...{ kind: 'nothing-left', weight: 'fault', subjects: [id], where: null, size: null, limit: 2 * gap },
    what: 'the fitting gap leaves nothing of the blade, so there is no coupon of it',
    cure: 'print at a larger scale, or with a smaller fitting gap',
  };
}
