import type { Fit } from '../fit/fit.ts';
import type { Bands, ThreeWay } from '../fit/judge-tolerance.ts';

/**
 * What the fit of the nominal parts says already of all parts within their tolerance; undefined where the ends of the
 * bands have to be looked at.
 *
 * @accuracy says nothing where the clearance is nearer to the bands than it is known.
 * @check tests/laws/claims.test.ts: the same as judgeTolerance
 */
export function partsFromFit(fit: Fit, bands: Bands): ThreeWay | undefined {
  const sum = bands.blank + bands.opening;
  if (fit.verdict === 'blocked') return sum === 0 ? 'never' : undefined;
  if (sum === 0) return 'always';
  if (fit.clearance - fit.accuracy >= sum) return 'always';
  return fit.clearance + fit.accuracy + 1 < sum ? 'depends' : undefined;
}
