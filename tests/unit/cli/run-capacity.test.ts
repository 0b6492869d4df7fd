import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { hearCommand } from '../../kit/hearing-shell.ts';

const COLLEGE = readFileSync('profiles-demo/polderwick.json', 'utf8');

function run(line: string, text = COLLEGE) {
  return hearCommand(line.split(' '), text);
}

test('without a family the bittings of a system are counted', async () => {
  const { code, out } = await run('capacity --chambers 6 --depths 10 --macs 7');
  expect(code).toBe(0);
  expect(out).toContain('6 chambers, 10 depths (0 to 9), MACS 7');
  // OEIS-like row of tests/outside/key-changes.test.ts.
  expect(out).toContain('753 754 bittings keep the rules, of 1 000 000');
  expect(out).toMatch(/ 7 chambers +7 131 596 {2}x 9\.46/);
  expect(out).toContain('no security boundary');
});

test('with a family they are times the sections that exclude each other', async () => {
  const { code, out } = await run('capacity family.json --json');
  const told = JSON.parse(out);
  expect(code).toBe(0);
  expect([told.sections, told.sectionsAtMost, told.bittings, told.keyChanges]).toEqual([10, 10, '753754', '7537540']);
  expect(told.exclusive).toContainEqual({ opening: 'heron-keyway', blank: 'heron-blank-6', tooShort: false });
  const { out: out6 } = await run('capacity family.json');
  const { out: five } = await run('capacity family.json --chambers 5');
  expect(five).toContain('Heron keyway: keys on Heron blank, five chambers\n');
  // 796660 / 7537540 = 0.1057.
  expect(out6).toMatch(/ 5 chambers +796 660 {2}x 0\.11/);
  const { out: seven } = await run('capacity family.json --chambers 7');
  expect(seven).toContain('keys on Heron blank, six chambers, which is too short for 7 chambers');
  expect(told.example).toHaveLength(6);
});

test('one section more or less is told in the singular', async () => {
  const { out } = await run('capacity --sections 2');
  expect(out).toMatch(/^ {6}1 section {4,}/m);
  expect(out).toMatch(/^ {6}3 sections {3,}/m);
  expect((await run('capacity --chambers 1')).out).toMatch(/^1 chamber, 10 depths/);
});

test('rules come by their options; depths are written from 1 where it is said so', async () => {
  const line =
    'capacity --two-step --macs none --first-depth 1 --master 6,3,8,5,2,9 --exclude 1 --exclude 2:5,7 --alike 2 --different 3 --sections 4 --json';
  const told = JSON.parse((await run(line)).out);
  expect(told.macs).toBeNull();
  expect(told.allowed).toEqual([[2, 4, 8, 10], [9], [2, 4, 6, 10], [3, 7, 9], [4, 6, 8, 10], [3, 5, 7]]);
  expect(told.sections).toBe(4);
  expect(BigInt(told.keyChanges)).toBe(4n * BigInt(told.bittings));
});

test('with no bitting that keeps the rules it says what empties which chamber', async () => {
  const { out } = await run('capacity --chambers 3 --depths 3 --macs 2 --exclude 2:0,1,2');
  expect(out).toContain('Chamber 2 has no depth left: excluded are 0 1 2.');
  expect(out).toContain('There would be some without the excluded depths.');
});

test.each([
  ['capacity --chambers 13', '--chambers is "13", must be a whole number from 1 to 12'],
  ['capacity --chambers 0', '--chambers is "0", must be a whole number from 1 to 12'],
  ['capacity --macs seven', '--macs is "seven", must be a whole number from 0 to 12'],
  ['capacity --exclude 10', '--exclude: every chamber excludes a depth that there is not; there are 10 depths'],
  [
    'capacity --exclude 5 --master 5,2,7,4,1,8',
    '--master: cut 1 of the top master has a depth that is excluded there; choose other depths for it, or loosen the rule',
  ],
  [
    'capacity --depths 8 --master 1,2,3,4,5,8',
    '--master: cut 6 of the top master is no depth of this system; there are 8 depths',
  ],
  ['capacity --parity eoeoeo', '--parity goes with --two-step: give both'],
  ['capacity --two-step --parity eo', '--parity is "eo", must be 6 letters e (even) or o (odd)'],
  ['capacity --exclude 9:1', '--exclude names chamber 9 of 6'],
  ['capacity --exclude x', '--exclude is "x", must be depths parted by commas'],
  ['capacity --macs 2 --macs 3', '--macs is given 2 times, give it once'],
  ['capacity family.json --sections 3', '--sections is for a count without a family: leave out one of the two'],
  ['capacity --tilt 3', '"capacity" takes no --tilt'],
  ['capacity a.json b.json', '"capacity" takes no "b.json"'],
])('%s is refused by its option', async (line, words) => {
  const { code, out, err } = await run(line);
  expect([code, out, err]).toEqual([2, '', `${words}. Use --help to see the commands.\n`]);
});

test('a family without keyways has nothing to count', async () => {
  const family = JSON.parse(COLLEGE);
  const tools = { ...family, profiles: family.profiles.filter(({ kind }: { kind: string }) => kind === 'tool') };
  const text = JSON.stringify({ ...tools, claims: undefined, names: undefined, lesson: undefined, plan: undefined });
  const { code, err } = await run('capacity family.json', text);
  expect(code).toBe(2);
  expect(err).toBe(
    'family.json: has no openings, so there is nothing to count unless the file is left out. Add a keyway to the file.\n',
  );
});
