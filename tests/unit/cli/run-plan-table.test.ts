import { expect, test } from 'vitest';
import { checkWardPlan } from '../../../src/plan/ward-plan.ts';
import { hearCommand } from '../../kit/hearing-shell.ts';

function run(line: string, text: string) {
  return hearCommand(line.split(' '), text, {
    readText: (file) => {
      if (file === 'missing.csv') throw new Error('there is no such file');
      return text;
    },
    jobs: { pause: () => new Promise((resolve) => setImmediate(resolve)), now: () => performance.now() },
  });
}

/** Six openings in two triples, a base blank each, two group blanks and one for all: 5 sites (references: own value). */
const TRIPLES = [
  ['', 'heron', 'rail', 'snipe', 'teal', 'crake', 'stilt', 'east', 'west', 'all'].join(';'),
  'Heron;1;0;0;0;0;0;1;0;1',
  'Rail;0;1;0;0;0;0;1;0;1',
  'Snipe;0;0;1;0;0;0;1;0;1',
  'Teal;0;0;0;1;0;0;0;1;1',
  'Crake;0;0;0;0;1;0;0;1;1',
  'Stilt;0;0;0;0;0;1;0;1;1',
].join('\n');

test('a table comes out as JSON with sites from 1, proved, and kept when read back', async () => {
  const { code, out, err } = await run('plan --table t.csv --json', TRIPLES);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const told = JSON.parse(out);
  expect([told.sites, told.lowerBound, told.proved, told.bound]).toEqual([5, 5, true, 'search']);
  expect(Object.keys(told.wards)).toEqual(['Heron', 'Rail', 'Snipe', 'Teal', 'Crake', 'Stilt']);
  const depths = (sites: number[]) => Array.from({ length: told.sites }, (_, s) => Number(sites.includes(s + 1)));
  const [wards, grooves] = [told.wards, told.grooves].map((byName) => Object.values<number[]>(byName).map(depths));
  const table = TRIPLES.split('\n')
    .slice(1)
    .map((line) =>
      line
        .split(';')
        .slice(1)
        .map((cell) => (cell === '1' ? 1 : 0)),
    );
  expect(checkWardPlan(table, { sites: told.sites, wards, grooves }, 1)).toBeNull();
});

test('a chain in three depths needs one site for three steps; depths are told by site', async () => {
  const { out } = await run('plan --table t.csv --json --depths 3', '1,1,1,1\n0,1,1,1\n0,0,1,1\n0,0,0,1\n');
  const told = JSON.parse(out);
  expect([told.sites, told.proved]).toEqual([1, true]);
  expect(Object.values<{ 1?: number }>(told.wards).map((sites) => sites[1] ?? 0)).toEqual([0, 1, 2, 3]);
});

test('text says how sure the number is and ends with the caution', async () => {
  const { code, out } = await run('plan --table t.csv --stops 2 --seconds 0', '1\t0\n0\t1\n');
  expect(code).toBe(0);
  expect(out).toContain('2 sections, 2 blanks: 4 sites\n  proved fewest');
  expect(out).toMatch(/ {2}section 1 {2}\d \d\n/);
  expect(out.trimEnd()).toMatch(/before metal is cut\.$/);
});

test.each([
  ['plan', '1,0', 'needs the name of a family file, or --table'],
  ['plan --table a.csv --table b.csv', '1,0', '--table is given 2 times'],
  ['plan --table t.csv --stops 4', '1,0', '--stops is "4", must be a whole number from 1 to 3'],
  ['plan --table t.csv --depths 1.5', '1,0', '--depths is "1.5", must be a whole number from 1 to 4'],
  ['plan --table t.csv --margins', '1,0', '"plan" takes no --margins'],
  ['plan --table missing.csv', '', 'missing.csv: there is no such file'],
  ['plan --table t.csv', '', 't.csv: table: is empty. Give one row'],
  ['plan --table t.csv', '1,0\n0,x', 't.csv: row 2, column 2: is "x", which is no mark. Write 1 (must enter)'],
])('%s is refused: %s', async (line, text, words) => {
  const { code, out, err } = await run(line, text);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain(words);
});
