import { expect, test } from 'vitest';
import type { Shell } from '../../../src/cli/shell.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { catalogue } from '../../../src/jobs/catalogue.ts';
import { hearCommand } from '../../kit/hearing-shell.ts';

const jobs: Shell['jobs'] = {
  progress: () => {},
  cancelled: () => false,
  pause: () => new Promise((resolve) => setImmediate(resolve)),
  now: () => performance.now(),
};

async function run(line: string, value: object) {
  const written: Record<string, string> = {};
  const writeText: Shell['writeText'] = (file, text) => {
    if (file === 'locked.json') throw new Error('the file may not be written');
    written[file] = String(text);
  };
  return { written, ...(await hearCommand(line.split(' '), JSON.stringify(value), { writeText, jobs })) };
}

const BIRDS = ['Heron', 'Smew', 'Bittern', 'Ruff', 'Plover'];

const BLADE = {
  thickness: 2,
  height: 8.4,
  backRadius: 0.4,
  cutZone: 3,
  backZone: 0.5,
  grooveWidth: 0.6,
  heightStep: 0.9,
  grooveDepth: 0.6,
  depthStep: 0.3,
  flankDeg: 10,
  rootRadius: 0.1,
};

const PLAN = {
  format: 'sectionary-family',
  version: 1,
  name: 'Marsh',
  units: 'mm',
  runningClearance: 0.04,
  tolerance: 0.02,
  leastWeb: 0.5,
  plan: {
    areas: [
      { id: 'east', name: 'East' },
      ...BIRDS.map((name, i) => ({ id: name, name, ...(i < 3 && { parent: 'east' }) })),
    ],
    holders: [{ id: 'warden', name: 'Warden', enters: ['east'] }],
    blade: BLADE,
  },
  profiles: [{ id: 'old', kind: 'blank', name: 'Old blank', milled: { thickness: 2, height: 8, grooves: [] } }],
};

test('a plan becomes a family whose matrix is the plan, judged anew from the file that was written', async () => {
  const { code, out, err, written } = await run('plan p.json -o f.json --seconds 0', PLAN);
  expect({ code, err }).toEqual({ code: 0, err: 'f.json: 12 planned sections written\n' });
  expect(out).toMatch(
    /^5 keyways and 7 blanks on \d ward sites \(.*room for 10\)\nConfirmed: 13 pairs enter and 22 are blocked/,
  );
  expect(out).toMatch(/Guard margin, wear of both parts [\d.]+ um, .+ in .+, the same for \d+ other pairs\n/);
  expect(out).toMatch(/0 of 5 keyways are paracentric; widest line of sight/);
  const read = readFamily(written['f.json']);
  if (!read.ok) throw new Error('not sound');
  const { family } = read.document;
  expect(family.profiles[0].id).toBe('old');
  const planned = { ...family, profiles: family.profiles.slice(1) };
  const { fits } = await catalogue.fitFamily({ family: planned }, jobs);
  const entered = fits.map((row) => row.filter(({ verdict }) => verdict === 'enters').length).sort();
  expect(entered).toEqual([1, 1, 1, 1, 1, 3, 5]);
  expect(fits.flat().some(({ verdict }) => verdict === 'tight')).toBe(false);
});

test('the report as JSON, without the sections that were not planned', async () => {
  const { code, out, written } = await run('plan p.json -o f.json --json --replace --seconds 0', PLAN);
  expect(code).toBe(0);
  const told = JSON.parse(out);
  expect(told).toMatchObject({ sections: 5, blanks: 7, room: 10, pairs: { wanted: 13, forbidden: 22, free: 0 } });
  expect(told.sitesMm).toHaveLength(told.sites);
  expect(told.smallestClearance.um).toBeGreaterThan(79);
  expect(told.guard.um).toBeGreaterThan(20);
  expect(Object.keys(told.keyways)).toHaveLength(5);
  for (const web of Object.values(told.webMm)) expect(web).toBeGreaterThanOrEqual(0.5);
  expect(JSON.parse(written['f.json']).profiles.every(({ planned }: { planned?: boolean }) => planned)).toBe(true);
});

test('without -o the plan is only told', async () => {
  const { code, written, out } = await run('plan p.json --seconds 0', { ...PLAN, tolerance: 0 });
  expect([code, written]).toEqual([0, {}]);
  expect(out).toContain('The tolerance is 0');
  expect(out).toContain('Sites');
});

test('a blade without room says which limit binds, and writes nothing', async () => {
  const plan = { ...PLAN.plan, blade: { ...BLADE, cutZone: 6.8 } };
  const { code, err, written, out } = await run('plan p.json -o f.json --seconds 0', { ...PLAN, plan });
  expect([code, written, out]).toEqual([1, {}, '']);
  expect(err).toMatch(
    /cannot be drawn; nothing is written.\n {2}The plan takes 4 ward sites and the blade has room for 2/,
  );
  expect(err).toMatch(/in steps of 0.9 mm/);
});

test('a blade that cannot be made', async () => {
  const plan = { ...PLAN.plan, blade: { ...BLADE, grooveDepth: 0.2 } };
  const { code, err } = await run('plan p.json --seconds 0', { ...PLAN, plan });
  expect(code).toBe(1);
  expect(err).toMatch(/would not stop a blade for certain.*Give more than 0.245 mm/);
});

test.each([
  ['plan p.json -o p.json', PLAN, /p.json: this is the plan itself/],
  ['plan p.json -o locked.json --seconds 0', PLAN, /locked.json: the file may not be written/],
  ['plan p.json', { ...PLAN, plan: undefined }, /it has no plan/],
  ['plan p.json', { ...PLAN, plan: { ...PLAN.plan, areas: [], holders: [] } }, /no areas/],
  ['plan p.json --table t.csv', PLAN, /not both/],
  ['plan p.json --stops 2', PLAN, /--stops is for --table/],
  ['plan --table t.csv -o f.json', PLAN, /leave out --output/],
  ['plan p.json --seconds x', PLAN, /--seconds is "x"/],
  ['plan', PLAN, /needs the name of a family file, or --table/],
])('%s', async (line, value, words) => {
  const { code, err, written } = await run(line, value);
  expect([code, written]).toEqual([2, {}]);
  expect(err).toMatch(words);
});
