import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { hearCommand } from '../../kit/hearing-shell.ts';

const DEMO = readFileSync('profiles-demo/polderwick.json', 'utf8');

function run(line: string, text = DEMO) {
  return hearCommand(line.split(' '), text);
}

test('the answer as a sentence, then every keyway, the tightest first', async () => {
  const { code, out } = await run('gauge f.json --height 6 --thickness 0.8');
  expect(code).toBe(0);
  expect(out).toMatch(
    /^0\.75 mm is the thickest strip 6 mm tall that enters all 10; the Avocet keyway sets it at 3\.9–4\.1 mm; at 0\.8 mm it still enters 8, one of them tight\.\n/,
  );
  const rows = out.split('\n').filter((row) => / keyway /.test(row) && !row.includes('thickest strip'));
  expect(rows.length).toBe(10);
  expect(rows[0]).toMatch(/^Avocet keyway +0\.75 mm +x 0\.050 mm too thick/);
  expect(rows[2]).toMatch(/^Rail keyway +0\.842 mm +~ 0\.042 mm, tight/);
  expect(rows[3]).toMatch(/^Smew keyway +0\.896 mm +\+ 0\.096 mm/);
});

/** The demo with its first keyway alone, a slot of some size in millimetres. */
function slotFamily(width: number, height: number, units = 'mm') {
  const demo = JSON.parse(DEMO);
  const { id } = demo.profiles.find(({ kind }: { kind: string }) => kind === 'opening');
  const outline = [[0, 0], [width, 0], [width, height], [0, height]]; // biome-ignore format: one outline
  const profile = { id, name: 'Slot keyway', kind: 'opening', outline };
  return JSON.stringify({
    ...demo,
    units,
    profiles: [profile],
    names: [],
    claims: [],
    lesson: undefined,
    plan: undefined,
  });
}

test('a height is told as it was asked, and the tallest is rounded down', async () => {
  const told = async (line: string, text: string) => (await run(`gauge f.json ${line}`, text)).out.split('\n')[0];
  expect(await told('--height 8.0004', slotFamily(1, 8))).toMatch(/^No strip 8\.0004 mm tall .* does is 8 mm\.$/);
  expect(await told('--height 8.201', slotFamily(1, 8.200_6))).toMatch(
    /^No strip 8\.201 mm tall .* does is 8\.2 mm\.$/,
  );
  expect(await told('--height 4.0001', slotFamily(1, 8))).toMatch(/^1 mm is the thickest strip 4\.0001 mm tall/);
});

test('nothing is told as 0 that is not: a hair of a strip, a hair too thick', async () => {
  const hair = await run('gauge f.json --height 4', slotFamily(0.0004, 8));
  expect(hair.out).toMatch(/^Less than 0\.001 mm is the thickest strip 4 mm tall/);
  const thick = await run('gauge f.json --height 4 --thickness 1.0002', slotFamily(1, 8));
  expect(thick.out).toContain('; at 1.0002 mm it does not.');
  expect(thick.out).toContain('x 0.001 mm too thick');
});

test('JSON has the same, with curves in millimetres', async () => {
  const asked = JSON.parse((await run('gauge f.json --height 6 --thickness 0.8 --json')).out);
  expect(asked.asked).toMatchObject({
    thicknessMm: 0.8,
    tight: ['rail-keyway'],
    blocked: ['curlew-keyway', 'avocet-keyway'],
  });
  expect(asked.openings.map(({ verdict }: { verdict: string }) => verdict).slice(1, 4)).toEqual([
    'blocked',
    'tight',
    'enters',
  ]);
  const { out } = await run('gauge f.json --height 6mm --json');
  const told = JSON.parse(out);
  expect(told).toMatchObject({ thickestMm: 0.75, setBy: ['avocet-keyway'], asked: null, heightMm: 6, tiltLimitDeg: 0 });
  expect(told.openings.length).toBe(10);
  const avocet = told.openings.find(({ opening }: { opening: string }) => opening === 'avocet-keyway');
  expect(avocet).toMatchObject({ rank: 1, thickestMm: 0.75, accuracyUm: 0, tiltDeg: 0, spareMm: null });
  expect(avocet.curveMm[0][0]).toBe(0);
});

test('lengths in inches and thousandths; tilt', async () => {
  const { out } = await run('gauge f.json --height 0.25in --thickness 22thou --tilt 0.5 --json');
  const told = JSON.parse(out);
  expect(told).toMatchObject({ heightMm: 6.35, tiltLimitDeg: 0.5, asked: { thicknessMm: 0.5588, blocked: [] } });
  expect(told.openings[0].accuracyUm).toBe(1);
  expect(told.sentence).toContain('at 0.5588 mm it enters all');
  expect(told.sentence).toContain(' mm tall, tilted up to 0.5°, that enters all ');
  for (const { tallestSoThickMm, tallestMm } of told.openings) {
    expect(tallestSoThickMm).toBeGreaterThanOrEqual(6.35);
    expect(tallestSoThickMm).toBeLessThanOrEqual(tallestMm);
  }
});

test('what is wrong is said, and what to do', async () => {
  expect((await run('gauge f.json')).err).toBe(
    '"gauge" needs --height, the height of the strip. Use --help to see the commands.\n',
  );
  for (const [words, what] of [
    ['--height 0', '--height is "0", must be a length above 0'],
    ['--height six', '--height is "six"'],
    ['--height 6 --thickness 2ft', '--thickness is "2ft"'],
    ['--height 6 --tilt 16', '--tilt is "16", must be a number from 0 to 15'],
    ['--height', '--height needs a length above 0'],
    ['--height 6 --margins', '"gauge" takes no --margins'],
  ]) {
    const { code, err } = await run(`gauge f.json ${words}`);
    expect(code).toBe(2);
    expect(err).toContain(what);
  }
});

test('a family without openings', async () => {
  const empty = JSON.stringify({ ...JSON.parse(DEMO), profiles: [], names: [], claims: [], lesson: undefined });
  const { code, err } = await run('gauge f.json --height 6', empty);
  expect(code).toBe(2);
  expect(err).toContain('has no openings');
});
