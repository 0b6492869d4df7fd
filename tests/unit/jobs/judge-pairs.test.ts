import { describe, expect, test } from 'vitest';
import { plainConditions } from '../../../src/fit/conditions.ts';
import { judgeFit } from '../../../src/fit/judge-fit.ts';
import { prepareBlank } from '../../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../../src/fit/prepare-opening.ts';
import { JobCancelled, type JobContext } from '../../../src/jobs/job.ts';
import { judgePairs, type PairsPart } from '../../../src/jobs/judge-pairs.ts';
import { packOutline, unpackOutline } from '../../../src/jobs/packed-outline.ts';
import { boxOfMm, wardedKeyway } from '../../kit/shapes.ts';

const keyways = [boxOfMm(2.1, 8.5), wardedKeyway(0.6)];
const blades = [boxOfMm(2, 8.4), boxOfMm(1.4, 6)];

function contextOf(parts: PairsPart[], cancelled = false): JobContext {
  let time = 0;
  return {
    progress: () => {},
    part: (part) => void parts.push(part as PairsPart),
    cancelled: () => cancelled,
    pause: () => Promise.resolve(),
    now: () => (time += 100),
  };
}

const input = {
  openings: keyways.map((ring, i) => packOutline(`k${i}`, ring)),
  entrants: blades.map((ring, i) => packOutline(`b${i}`, ring)),
  pairs: Uint32Array.from([1, 1, 0, 1, 0, 0]),
  conditions: plainConditions(40_000),
  measured: true,
};

describe('judging chosen pairs', () => {
  test('gives the fits in the order asked for, in parts that join without gaps', async () => {
    const parts: PairsPart[] = [];
    expect(await judgePairs(input, contextOf(parts))).toBe(3);
    const fits = parts.flatMap((part) => part.fits);
    expect(parts.map((part) => part.first)).toEqual([...new Set(parts.map((part) => part.first))].sort());
    const alone = (b: number, k: number) => judgeFit(prepareOpening(keyways[k]), prepareBlank(blades[b]), 40_000);
    expect(fits).toEqual([alone(1, 1), alone(0, 1), alone(0, 0)]);
  });

  test('unmeasured, a blocked pair has a verdict and no margin yet', async () => {
    const parts: PairsPart[] = [];
    await judgePairs({ ...input, measured: false }, contextOf(parts));
    const [, blocked, enters] = parts.flatMap((part) => part.fits);
    expect(blocked).toMatchObject({ verdict: 'blocked', clearance: Number.NEGATIVE_INFINITY });
    expect(enters).toMatchObject({ verdict: 'enters', clearance: 50_000 });
  });

  test('a cancelled job gives up', async () => {
    await expect(judgePairs(input, contextOf([], true))).rejects.toBeInstanceOf(JobCancelled);
  });

  test('an outline comes back from its packed form as it went in', () => {
    expect(unpackOutline(packOutline('x', keyways[1]))).toEqual(keyways[1]);
  });
});
