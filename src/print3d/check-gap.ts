import { plainConditions } from '../fit/conditions.ts';
import type { Fit } from '../fit/fit.ts';
import { judgePair, judgePairEntry, openingUnder } from '../fit/judge-pair.ts';
import { shrinkRing } from '../fit/offset-shapes.ts';
import type { Profile } from '../profile/profile.ts';
import type { PrintCheck } from './display-set.ts';
import type { DisplaySetup } from './display-setup.ts';
import { asPrinted, asReal } from './section-loops.ts';

/**
 * What the fitting gap does to the verdicts of a blank: blocked pairs that go in as printed, judged by the fit core on
 * the section with the gap taken off, and pairs that go in by less than the gap adds.
 *
 * @yields after each opening.
 * @check tests/unit/print3d/check-gap.test.ts
 */
export function* checkGap(
  blank: Profile,
  openings: readonly Profile[],
  setup: DisplaySetup,
): Generator<undefined, PrintCheck[], void> {
  const gap = asReal(setup.gap, setup.scale);
  const printed = shrinkRing(blank.ring, gap);
  if (gap === 0 || printed.length === 0) return [];
  const plain = plainConditions(0);
  const checks: PrintCheck[] = [];
  const close: { readonly opening: Profile; readonly clearance: number }[] = [];
  for (const opening of openings) {
    const shape = openingUnder(opening.ring, plain);
    const { verdict, clearance } = judgePairEntry(shape, [blank.ring], plain);
    if (verdict !== 'blocked' && clearance < gap) close.push({ opening, clearance });
    if (verdict === 'blocked' && judgePairEntry(shape, printed, plain).verdict !== 'blocked')
      checks.push(letsIn(blank, opening, judgePair(shape, [blank.ring], plain), setup));
    yield;
  }
  return close.length > 0 ? [...checks, hides(blank, close, setup)] : checks;
}

function letsIn({ id }: Profile, opening: Profile, { clearance }: Fit, { scale, gap }: DisplaySetup): PrintCheck {
  return {
    ...{ kind: 'gap-lets-in', weight: 'fault', subjects: [id, opening.id], where: null },
    ...{ size: asPrinted(-clearance, scale), limit: gap },
    what: 'it is blocked, but by so little that the fitting gap lets the printed coupon in',
    cure: 'print at a larger scale, or with a smaller fitting gap, or leave the coupon out',
  };
}

function hides(
  { id, kind }: Profile,
  close: readonly { readonly opening: Profile; readonly clearance: number }[],
  { scale, gap }: DisplaySetup,
): PrintCheck {
  const enters = close.length === 1 ? 'it enters' : `it enters ${close.length} openings`;
  return {
    ...{
      kind: 'gap-hides',
      weight: 'note',
      subjects: [id, ...(close.length === 1 ? [close[0].opening.id] : [])],
      where: null,
    },
    ...{ size: asPrinted(Math.min(...close.map(({ clearance }) => clearance)), scale), limit: gap },
    what: `${enters} with less room than the fitting gap adds, so the printed coupon goes in more easily than the ${kind === 'tool' ? 'tool' : 'blank'} itself`,
    cure: 'say so when it is shown, or print at a larger scale',
  };
}
