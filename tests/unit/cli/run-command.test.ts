import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { runCommand } from '../../../src/cli/run-command.ts';
import { EXIT, type Shell } from '../../../src/cli/shell.ts';
import { familyJsonSchema } from '../../../src/interchange/json/schema.ts';
import { catalogue } from '../../../src/jobs/catalogue.ts';
import { hearingShell } from '../../kit/hearing-shell.ts';

const LESSON = readFileSync('profiles-demo/first-lesson.json', 'utf8');

const PAIR_FIELDS = [
  ...['profile', 'opening', 'verdict', 'clearanceUm', 'placement', 'playUm'],
  ...['threeWay', 'limits', 'blockedBy', 'interferenceUm', 'seatUm'],
];

/** The lesson, with a slot 1 mm wide and a blade 0.9 x 8 that was drawn leaning to the left by 2 degrees. */
const LESSON_WITH_COCKED_STRIP = (() => {
  const family = JSON.parse(LESSON);
  const [c, s] = [Math.cos(Math.PI / 90), Math.sin(Math.PI / 90)];
  const turned = [
    [0, 0],
    [0.9, 0],
    [0.9, 8],
    [0, 8],
  ].map(([x, y]) => [c * x - s * y, s * x + c * y]);
  const slot = [
    [0, 0],
    [1, 0],
    [1, 9],
    [0, 9],
  ];
  family.profiles = [
    { id: 'slot', kind: 'opening', name: 'Slot', outline: slot },
    { id: 'cocked', kind: 'tool', name: 'Cocked', outline: turned },
  ];
  return JSON.stringify(family);
})();

/** A shell whose only file is `family.json`, and everything that was said in it. */
function shellWith(text: string, jobs: Partial<Shell['jobs']> = {}) {
  return hearingShell(text, {
    readText: (file) => {
      if (file !== 'family.json') throw new Error('there is no such file');
      return text;
    },
    jobs: { now: () => performance.now(), ...jobs },
  });
}

async function run(line: string, text = LESSON, jobs: Partial<Shell['jobs']> = {}) {
  const { shell, said } = shellWith(text, jobs);
  const code = await runCommand(line.split(' '), shell);
  return { code, ...said };
}

describe('running a command', () => {
  afterEach(() => vi.restoreAllMocks());

  test('fit prints the matrix and ends with 0', async () => {
    const { code, out, err } = await run('fit family.json');
    expect(code).toBe(0);
    expect(err).toBe('');
    expect(out).toMatch(/^Heron blank +\+ +50\.0 +x +-\d+\.\d +x +-\d+\.\d$/m);
    expect(out).toMatch(/^Reed group blank +\+ +50\.0 +\+ +50\.0 +x /m);
  });

  test('fit --json prints exactly the documented fields, every pair once', async () => {
    const { code, out } = await run('fit family.json --json');
    expect(code).toBe(0);
    const json = JSON.parse(out);
    expect(Object.keys(json)).toEqual(['openings', 'profiles', 'pairs']);
    expect(json.openings).toEqual(['heron-keyway', 'bittern-keyway', 'plover-keyway']);
    expect(json.pairs).toHaveLength(json.openings.length * json.profiles.length);
    for (const pair of json.pairs) {
      expect(Object.keys(pair)).toEqual(PAIR_FIELDS);
      expect(Object.keys(pair.placement)).toEqual(['dxMm', 'dyMm', 'tiltDeg']);
      expect(Object.keys(pair.playUm)).toEqual(['lateral', 'vertical']);
    }
    expect(json.pairs[0]).toMatchObject({ verdict: 'enters', clearanceUm: 50, placement: { dxMm: 0.05, dyMm: 0.05 } });
  });

  test('fit --json tells limits and obstacles of each pair, as the lesson was drawn', async () => {
    const { pairs } = JSON.parse((await run('fit family.json --json')).out);
    const pairOf = (profile: string, opening: string) =>
      pairs.find((p: { profile: string; opening: string }) => p.profile === profile && p.opening === opening);
    const own = pairOf('heron-blank', 'heron-keyway');
    expect(own).toMatchObject({ threeWay: 'always', blockedBy: [], interferenceUm: 0, seatUm: 0 });
    // The ward is 0.9 high, from 1.1 on above the keyway's floor, its groove 1.0: the gap is 0.05 below and above it.
    expect(own.limits).toContainEqual({
      side: 'left',
      ward: true,
      atMm: 1.1,
      gapUm: 50,
      blank: { corner: 7 },
      opening: { edge: 6 },
    });
    const other = pairOf('heron-blank', 'bittern-keyway');
    expect(other).toMatchObject({ threeWay: 'never', limits: [], seatUm: null });
    expect(other.interferenceUm).toBe(-other.clearanceUm);
    // A ward 0.7 deep, a keyway 0.1 wider than the blade, no groove for it: 0.6 too much, half of it on each side.
    expect(other.interferenceUm).toBeCloseTo(300, 0);
    expect(other.blockedBy[0]).toMatchObject({ side: 'right', ward: true });
    expect(other.blockedBy[0].toMm - other.blockedBy[0].fromMm).toBeCloseTo(0.9, 2);
  });

  test('fit --tilt 2 frees a blank that is only cocked, and says at what angle', async () => {
    const text = LESSON_WITH_COCKED_STRIP;
    const verdictOf = async (options: string) => {
      const { out } = await run(`fit family.json --json${options}`, text);
      return JSON.parse(out).pairs.at(-1);
    };
    expect(await verdictOf('')).toMatchObject({ profile: 'cocked', opening: 'slot', verdict: 'blocked' });
    expect(await verdictOf(' --tilt 1')).toMatchObject({ verdict: 'blocked' });
    const freed = await verdictOf(' --tilt 2');
    expect(freed.verdict).not.toBe('blocked');
    expect(freed.placement.tiltDeg).toBeGreaterThan(-2.001);
    expect(freed.placement.tiltDeg).toBeLessThan(-1);
  });

  test('fit --tolerance-um puts one tolerance in place of those of the file', async () => {
    const wordOf = async (options: string) =>
      JSON.parse((await run(`fit family.json --json${options}`)).out).pairs[0].threeWay;
    expect(await wordOf('')).toBe('always');
    expect(await wordOf(' --tolerance-um 25')).toBe('always');
    expect(await wordOf(' --tolerance-um 25.1')).toBe('depends');
    expect(await wordOf(' --tolerance-um 0')).toBe('always');
    const coarse = LESSON.replace('"tolerance": 0.02', '"tolerance": 0.03');
    expect(JSON.parse((await run('fit family.json --json', coarse)).out).pairs[0].threeWay).toBe('depends');
    expect(JSON.parse((await run('fit family.json --json --tolerance-um 0', coarse)).out).pairs[0].threeWay).toBe(
      'always',
    );
  });

  test('fit --wear-um gives every fit twice that much more room, and every blocked pair less to overcome', async () => {
    const before = JSON.parse((await run('fit family.json --json')).out).pairs;
    const { out, err } = await run('fit family.json --json --wear-um 10 --verify');
    expect(err).toBe('15 of 15 fits confirmed by the second method\n');
    const after = JSON.parse(out).pairs;
    for (const [i, pair] of after.entries()) {
      expect(pair.verdict).toBe(before[i].verdict);
      const gained = pair.clearanceUm - before[i].clearanceUm;
      if (pair.verdict === 'enters' && pair.profile !== 'strip-06') expect(gained).toBeCloseTo(20, 0);
      else expect(gained).toBeGreaterThan(10);
      for (const limit of pair.limits) expect([limit.blank, limit.opening]).toEqual([null, null]);
    }
  });

  test('fit with so much wear that nothing is left of a tool names it and ends with 2', async () => {
    expect(await run('fit family.json --wear-um 300.5')).toEqual({
      code: EXIT.badInput,
      out: '',
      err: 'family.json: strip-06 in heron-keyway: nothing is left of it, worn by 300.5 um. Give less wear, or leave it out.\n',
    });
  });

  test('the table has a second mark under a tilt or tolerance, and not else', async () => {
    const plain = (await run('fit family.json')).out;
    expect(plain).not.toMatch(/always/);
    const marked = (await run('fit family.json --tolerance-um 26')).out;
    expect(marked).toMatch(/^Polderwick.*, running clearance 40 um, tolerance 26 um a part$/m);
    expect(marked).toMatch(/^Heron blank +\+ +50\.0 D +x +-\d+\.\d N +x +-\d+\.\d N$/m);
    const tilted = (await run('fit family.json --tilt 0.5')).out;
    expect(tilted).toMatch(/running clearance 40 um, tilt up to 0\.5 degrees, tolerances as in the file$/m);
    expect(tilted).toMatch(/^Heron blank +\+ +50\.0 A/m);
    expect((await run('fit family.json --wear-um 5')).out).toMatch(/running clearance 40 um, worn by 5 um a part$/m);
  });

  test('fit --margins tells the same margins under any conditions, those of the new family', async () => {
    const { out } = await run('fit family.json --margins');
    // Wear has to take 0.6 mm less two gaps of 0.05: 0.15 off each of four faces; corners make it no more.
    const guard = /guard margin +(\d+\.\d) um: worn by as much, and the keyway too, (.*) goes into (.*)/.exec(out);
    expect(Number(guard?.[1])).toBeGreaterThan(149);
    expect(Number(guard?.[1])).toBeLessThan(151);
    expect(out).toMatch(/smallest clearance {2}50\.0 um: Heron blank in Heron keyway, the same for 4 other pairs\n$/);
    const worn = JSON.parse((await run('fit family.json --margins --json --wear-um 20 --tilt 0.2')).out).margins;
    expect(worn).toEqual(JSON.parse((await run('fit family.json --margins --json')).out).margins);
    expect(worn.clearance).toEqual({ profile: 'heron-blank', opening: 'heron-keyway', clearanceUm: 50 });
    expect(Math.abs(worn.guard.wearUm - Number(guard?.[1]))).toBeLessThan(0.01);
  });

  test('fit --verify finds a wrong fit under tilt and wear too', async () => {
    const { fitFamily } = catalogue;
    vi.spyOn(catalogue, 'fitFamily').mockImplementation(async (input, context) => {
      const matrix = await fitFamily(input, context);
      const fits = matrix.fits.map((row, i) =>
        row.map((fit, k) => (i === 4 && k === 2 ? { ...fit, clearance: fit.clearance - 5_000 } : fit)),
      );
      return { ...matrix, fits };
    });
    const { code, err } = await run('fit family.json --verify --tilt 0.5 --wear-um 5');
    expect(code).toBe(EXIT.notConfirmed);
    expect(err).toMatch(/^not confirmed: strip-06 in plover-keyway: .*more than/);
    expect(err).toContain('14 of 15 fits confirmed');
  });

  test('fit --verify confirms a sound matrix and says so on stderr only', async () => {
    const { code, out, err } = await run('fit family.json --json --verify');
    expect(code).toBe(EXIT.done);
    expect(err).toBe('15 of 15 fits confirmed by the second method\n');
    expect(JSON.parse(out).pairs).toHaveLength(15);
  });

  test('fit --verify ends with 1 and names the pair when a fit is wrong', async () => {
    const { fitFamily } = catalogue;
    // A matrix with one clearance overstated by 20 um: the second method must find it.
    vi.spyOn(catalogue, 'fitFamily').mockImplementation(async (input, context) => {
      const matrix = await fitFamily(input, context);
      const fits = matrix.fits.map((row, i) =>
        row.map((fit, k) => (i === 0 && k === 0 ? { ...fit, clearance: fit.clearance + 20_000 } : fit)),
      );
      return { ...matrix, fits };
    });
    const { code, err } = await run('fit family.json --verify');
    expect(code).toBe(EXIT.notConfirmed);
    expect(err).toMatch(/^not confirmed: heron-blank in heron-keyway: .*gap/);
    expect(err).toContain('14 of 15 fits confirmed');
  });

  test('check says what a sound file holds', async () => {
    expect(await run('check family.json')).toEqual({
      code: 0,
      out: 'family.json: sound, 3 openings, 4 blanks, 1 tool, in mm\n',
      err: '',
    });
  });

  test.each(['check family.json', 'fit family.json', 'fit family.json --json --verify'])(
    '%s tells every fault on stderr and ends with 2',
    async (line) => {
      const broken = LESSON.replace('"mm"', '"cm"').replace('"kind": "tool"', '"kind": "pick"');
      const { code, out, err } = await run(line, broken);
      expect(code).toBe(EXIT.badInput);
      expect(out).toBe('');
      expect(err).toMatch(/^family\.json: units: is the text "cm", must be "mm" or "in"\. Write/m);
      expect(err).toMatch(/^family\.json: profiles\[7\]\.kind: strip-06: is the text "pick"/m);
    },
  );

  test('a missing file is told by name and ends with 2', async () => {
    expect(await run('fit elsewhere.json')).toEqual({
      code: 2,
      out: '',
      err: 'elsewhere.json: there is no such file\n',
    });
  });

  test('wrong words end with 2 and point to the help', async () => {
    const { code, out, err } = await run('judge family.json');
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/no command "judge".*--help/);
  });

  test('--help names every command and ends with 0', async () => {
    const { code, out } = await run('--help');
    expect(code).toBe(0);
    for (const word of ['fit FAMILY.json', 'check FAMILY.json', 'schema', '--json', '--verify', '--margins'])
      expect(out).toContain(word);
    for (const word of ['--tilt DEG', '--tolerance-um N', '--wear-um N', ...PAIR_FIELDS]) expect(out).toContain(word);
  });

  test('schema prints the schema of the file', async () => {
    expect(JSON.parse((await run('schema')).out)).toEqual(familyJsonSchema());
  });

  test.each(['fit family.json', 'fit family.json --verify'])(
    '%s: a stop leaves nothing printed and ends with 130',
    async (line) => {
      let clock = 0;
      const { code, out, err } = await run(line, LESSON, { cancelled: () => true, now: () => (clock += 1000) });
      expect([code, out]).toEqual([EXIT.stopped, '']);
      expect(err).toMatch(/Stopped/);
    },
  );

  test('progress is told on the way, and never exceeds the whole', async () => {
    let clock = 0;
    const told: [number, number][] = [];
    await run('fit family.json', LESSON, {
      progress: (done, total) => void told.push([done, total]),
      now: () => (clock += 1000),
    });
    expect(told.length).toBeGreaterThan(5);
    expect(told.every(([done, total]) => done > 0 && done <= total && total === 15)).toBe(true);
  });

  test('a mistake of the program is not hidden as bad input', async () => {
    vi.spyOn(catalogue, 'fitFamily').mockRejectedValue(new TypeError('a bug'));
    await expect(run('fit family.json')).rejects.toThrow('a bug');
  });
});
