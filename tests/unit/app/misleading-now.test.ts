import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { misleadingNow } from '../../../src/app/state/names/misleading-now.ts';
import type { KnownFits } from '../../../src/family/known-fits.ts';
import type { Fit } from '../../../src/fit/fit.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { registerOf } from '../../../src/names/register.ts';

const DEMO = JSON.parse(readFileSync(new URL('../../../profiles-demo/polderwick.json', import.meta.url), 'utf8'));

const judgedAs = (verdict: Fit['verdict'], clearance: number): Fit => ({
  ...{ verdict, clearance, accuracy: 1, placement: { x: 0, y: 0, tilt: 0 }, play: { lateral: 0, vertical: 0 } },
  seated: { x: 0, y: 0, tilt: 0 },
});

function known(names: readonly object[]) {
  const read = readFamily(JSON.stringify({ ...DEMO, names: [...DEMO.names, ...names] }));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const { family } = read.document;
  const knowing = (value: Fit | undefined) => {
    const fits: KnownFits = { openings: ['a'], profiles: ['b'], fits: [[value]] };
    const knowledge = { family, register: registerOf(family), fitOf: () => value, reason: () => '', length: String };
    return { knowledge, fits };
  };
  return knowing;
}

test('names are looked through anew when a verdict comes, not when its figure does', () => {
  const knowing = known([]);
  const now = (value: Fit | undefined, judging: boolean) => {
    const { knowledge, fits } = knowing(value);
    return misleadingNow(knowledge, fits, judging);
  };
  const first = now(undefined, true);
  const second = now(judgedAs('blocked', -1), true);
  expect(second).not.toBe(first);
  // HB joins Heron and Bittern, and nothing goes into either.
  expect(second.some(({ kind, texts }) => kind === 'joined' && texts.includes('HB'))).toBe(true);
  expect(now(judgedAs('blocked', -2), false)).toBe(second);
  expect(now(judgedAs('enters', 1), false)).not.toBe(second);
});

test('with very many names they are looked through when the verdicts are all there', () => {
  const many = Array.from({ length: 1200 }, (_, i) => ({
    text: `T ${i}`,
    kind: 'blank',
    section: 'Smew',
    chambers: 6,
  }));
  const knowing = known(many);
  const now = (value: Fit | undefined, judging: boolean) => {
    const { knowledge, fits } = knowing(value);
    return misleadingNow(knowledge, fits, judging);
  };
  const first = now(undefined, true);
  expect(now(judgedAs('blocked', -1), true)).toBe(first);
  expect(now(judgedAs('blocked', -1), false)).not.toBe(first);
});
