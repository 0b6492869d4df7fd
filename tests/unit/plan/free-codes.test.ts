import { expect, test } from 'vitest';
import { areApart, type CodeRules, isFree, mostFreeCodes } from '../../../src/plan/free-codes.ts';
import { codeAt, codeCount } from '../../../src/plan/widest-antichain.ts';
import { type RandomNumbers, randomNumbers } from '../../cases/random-numbers.ts';

/** Rules as planned families have them: each part has a groove or a ward at some sites. */
function rulesOf(random: RandomNumbers, stops: number): CodeRules {
  const levels = [1, 1, 1, 1];
  const some = () => levels.map(() => random.whole(0, 1));
  return {
    space: { levels },
    // A groove lets a ward by (2 is above every level), else the first ward stops; a ward stops up to no groove.
    stoppedFrom: [some(), some()].map((grooves) => grooves.map((groove) => (groove === 1 ? 2 : 1))),
    stopsUpTo: [some(), some()].map((wards) => wards.map((ward) => (ward === 1 ? 0 : -1))),
    stops,
  };
}

function allFree(rules: CodeRules): number[][] {
  return Array.from({ length: codeCount(rules.space) }, (_, n) => codeAt(rules.space, n)).filter((code) =>
    isFree(rules, code),
  );
}

/** The most codes that keep apart pair by pair, by trying every set. */
function mostByTrying(codes: readonly (readonly number[])[], stops: number): number {
  const [first, ...rest] = codes;
  if (!first) return 0;
  const beside = rest.filter((code) => areApart(first, code, stops));
  return Math.max(1 + mostByTrying(beside, stops), mostByTrying(rest, stops));
}

test.each([1, 2])('with %i wards to stop a part as many codes are found as by trying all sets', (stops) => {
  const random = randomNumbers(40 + stops);
  for (let round = 0; round < 30; round++) {
    const rules = rulesOf(random, stops);
    const { codes, atMost, single } = mostFreeCodes(rules);
    const free = allFree(rules);
    expect(single).toBe(free.length);
    expect(codes.every((code) => isFree(rules, code))).toBe(true);
    expect(codes.every((a, i) => codes.every((b, k) => i === k || areApart(a, b, stops)))).toBe(true);
    expect(codes.length).toBe(mostByTrying(free, stops));
    expect(atMost).toBe(codes.length);
  }
});

test('beside a code that is taken those are counted that go together with it', () => {
  const random = randomNumbers(7);
  for (let round = 0; round < 20; round++) {
    const rules = rulesOf(random, 1);
    const [taken] = allFree(rules);
    if (!taken) continue;
    const beside = allFree(rules).filter((code) => areApart(code, taken, 1));
    expect(mostFreeCodes(rules, [taken]).atMost).toBe(mostByTrying(beside, 1));
  }
});

test('with too many sites to look at every code, what is found is free and the bound is that of all sites', () => {
  const levels = new Array(20).fill(1);
  const rules: CodeRules = { space: { levels }, stoppedFrom: [levels.map(() => 1)], stopsUpTo: [], stops: 1 };
  const { codes, atMost } = mostFreeCodes(rules);
  expect(codes.length).toBe(12_870);
  expect(atMost).toBe(184_756);
  expect(codes.slice(0, 50).every((code) => code.length === 20 && isFree(rules, code))).toBe(true);
});
