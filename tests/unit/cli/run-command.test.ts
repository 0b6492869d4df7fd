import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { EXIT, runCommand, type Shell } from '../../../src/cli/run-command.ts';
import { familyJsonSchema } from '../../../src/interchange/json/schema.ts';
import { catalogue } from '../../../src/jobs/catalogue.ts';

const LESSON = readFileSync('profiles-demo/first-lesson.json', 'utf8');

/** A shell whose only file is `family.json`, and everything that was said in it. */
function shellWith(text: string, jobs: Partial<Shell['jobs']> = {}) {
  const said = { out: '', err: '' };
  const shell: Shell = {
    readText: (file) => {
      if (file !== 'family.json') throw new Error('there is no such file');
      return text;
    },
    print: (words) => {
      said.out += words;
    },
    warn: (words) => {
      said.err += words;
    },
    width: 120,
    jobs: {
      progress: () => {},
      cancelled: () => false,
      pause: () => Promise.resolve(),
      now: () => performance.now(),
      ...jobs,
    },
  };
  return { shell, said };
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
      expect(Object.keys(pair)).toEqual(['profile', 'opening', 'verdict', 'clearanceUm', 'placement', 'playUm']);
      expect(Object.keys(pair.placement)).toEqual(['dxMm', 'dyMm', 'tiltDeg']);
      expect(Object.keys(pair.playUm)).toEqual(['lateral', 'vertical']);
    }
    expect(json.pairs[0]).toMatchObject({ verdict: 'enters', clearanceUm: 50, placement: { dxMm: 0.05, dyMm: 0.05 } });
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
    for (const word of ['fit FAMILY.json', 'check FAMILY.json', 'schema', '--json', '--verify'])
      expect(out).toContain(word);
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
