import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Point } from '../../../src/geom/point.ts';
import { demoProfile } from '../../kit/demo-family.ts';
import { hearCommand } from '../../kit/hearing-shell.ts';
import { noisyTrace } from '../../kit/noisy-trace.ts';

const FAMILY = 'profiles-demo/polderwick.json';

function path(ring: readonly Point[], dx = 0): string {
  return `<path d="M${ring.map(({ x, y }) => `${x / 1e6 + 20 + dx},${20 - y / 1e6}`).join('L')}Z"/>`;
}

function svg(...paths: string[]): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="80mm" height="40mm" viewBox="0 0 80 40">${paths.join('')}</svg>`;
}

function run(files: Record<string, string>, ...words: string[]) {
  return hearCommand(['identify', FAMILY, ...words], '', {
    readText: (file) => files[file] ?? readFileSync(file, 'utf8'),
    writeText: () => {},
  });
}

const traced = noisyTrace(demoProfile('plover-blank').ring, { seed: 3, error: 50_000, step: 200_000 });

test('a noisy, mirrored and turned outline is told, and the sections are listed, the closest first', async () => {
  const { code, out, err } = await run({ 'found.svg': svg(path(traced.ring)) }, 'found.svg');
  expect([code, err]).toEqual([0, '']);
  expect(out).toContain('drawing error 0.050 mm either way');
  expect(out).toContain('This almost certainly looks like the tip view of Plover blank: nowhere');
  const rows = out.split('\n').filter((line) => /^ +\d/.test(line));
  expect(rows[0]).toMatch(/^ +0\.0\d\d +0\.0\d\d +0\.\d{3} {2}tip {3}Plover blank: almost certainly$/);
  expect(rows).toHaveLength(19);
});

test('as JSON, with all figures', async () => {
  const { out } = await run({ 'found.svg': svg(path(traced.ring)) }, 'found.svg', '--json');
  const { likeness, count, ranked } = JSON.parse(out);
  expect([likeness, count]).toEqual(['certain', 1]);
  expect(ranked[0]).toMatchObject({ profiles: ['plover-blank'], mirrored: true, careful: true });
  expect(ranked[0].hausdorffUm).toBeLessThan(100);
  expect(ranked[0].areaMm2).toBeLessThan(1);
});

test('a table of points, among the keyways', async () => {
  const { ring } = demoProfile('rail-keyway');
  const csv = `x_mm,y_mm\n${ring.map(({ x, y }) => `${x / 1e6},${y / 1e6}`).join('\n')}\n`;
  const { code, out } = await run({ 'points.csv': csv }, 'points.csv', '--among', 'keyways', '--error-um', '5');
  expect(code).toBe(0);
  expect(out).toContain('This is almost certainly Rail keyway');
});

test('of several outlines one must be named', async () => {
  const drawing = svg(path(demoProfile('knot-blank').ring), path(demoProfile('rail-blank').ring, 10));
  const { code, err } = await run({ 'two.svg': drawing }, 'two.svg');
  expect(code).toBe(2);
  expect(err).toMatch(/^two\.svg: has 2 outlines: say --loop N\.\n {2}1 {2}2\.000 mm x 8\.400 mm/);
  const chosen = await run({ 'two.svg': drawing }, 'two.svg', '--loop', '2', '--error-um', '10');
  expect(chosen.out).toContain('almost certainly Rail blank');
  expect((await run({ 'two.svg': drawing }, 'two.svg', '--loop', '7')).err).toContain('has no sound outline 7');
});

test.each([
  [{ 'a.svg': svg('<path d="M2 2l8 8h-8l8-8z"/>') }, ['a.svg'], 'has no sound outline'],
  [{ 'a.svg': '<svg' }, ['a.svg'], 'a.svg: '],
  [{ 'a.json': readFileSync(FAMILY, 'utf8') }, ['a.json'], 'holds no outline'],
  [{}, ['nowhere.svg'], 'nowhere.svg: '],
  [{}, [], '"identify" needs the name of a drawing'],
  [{}, ['a.svg', '--among', 'doors'], '--among is "doors", must be blanks, keyways or all'],
  [{}, ['a.svg', '--error-um', '0'], '--error-um is "0", must be a number from 1 to 1000 (um)'],
  [{}, ['a.svg', '--error-um', 'x'], '--error-um is "x"'],
] as const)('what is wrong is told, %#', async (files, words, told) => {
  const { code, out, err } = await run(files, ...words);
  expect([code, out]).toEqual([2, '']);
  expect(err).toContain(told);
});
