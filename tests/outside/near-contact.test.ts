// Pairs within 2 um of contact, exact contact and +-1, +-2, +-50 nm among them, whose margin is known by construction
// (tests/cases/keyway-pairs.ts): against that margin; against JSTS and clipper2-wasm where there is area; contact
// against exact containment at the one placement that can fit. Lengths in nanometres.
// "Perfect fits" as a trap for inner-fit methods: Rocha, "Robust NFP generation for nesting problems", arXiv
// 1903.11139, 2019 (from memory).

import { beforeAll, describe, expect, test, vi } from 'vitest';
import { nearContactPair, type VertexCount } from '../cases/keyway-pairs.ts';
import { clipper2InnerFit, loadClipper2 } from '../kit/engines/clipper2-inner-fit.ts';
import { coreAnswer } from '../kit/engines/core-answer.ts';
import { disagreements, knownFaults, witnessFaults } from '../kit/engines/disagreements.ts';
import { liesInside } from '../kit/engines/exact-containment.ts';
import { jstsInnerFit } from '../kit/engines/jsts-inner-fit.ts';

// Two slow cores shared with other work must not fail a correct answer.
vi.setConfig({ testTimeout: 120_000 });

const classes: readonly { vertices: VertexCount; count: number }[] = [
  { vertices: 20, count: 750 },
  { vertices: 60, count: 150 },
  { vertices: 120, count: 20 },
];

beforeAll(async () => {
  await loadClipper2();
});

describe.each(classes)('$count pairs at $vertices vertices', ({ vertices, count }) => {
  const pairs = Array.from({ length: count }, (_, seed) => nearContactPair(seed, vertices));
  const answers = pairs.map((pair) => coreAnswer(pair));
  const all = (faultsOf: (index: number) => string[]): string[] => pairs.flatMap((_, i) => faultsOf(i));

  test('the margin that was built in', () => {
    expect(all((i) => knownFaults(pairs[i], answers[i]))).toEqual([]);
  });

  test('a clearance is true within 50 nm', () => {
    const off = pairs.flatMap(({ known, name }, i) => {
      if (known.clearance === undefined || known.outcome === 'blocked') return [];
      const error = Math.abs(Math.max(0, answers[i].fit.clearance) - known.clearance);
      return error > 50 + (known.within ?? 0) ? [`${name}: off by ${error}`] : [];
    });
    expect(off).toEqual([]);
  });

  test('against JSTS', () => {
    expect(all((i) => disagreements(pairs[i], answers[i], 'JSTS', jstsInnerFit))).toEqual([]);
  });

  test('against clipper2-wasm', () => {
    expect(all((i) => disagreements(pairs[i], answers[i], 'clipper2-wasm', clipper2InnerFit))).toEqual([]);
  });

  test('witnesses, by JSTS', () => {
    expect(all((i) => witnessFaults(pairs[i], answers[i]))).toEqual([]);
  });

  test('contact: the witness fits exactly, and no placement next to it has room', () => {
    const contacts = answers
      .map(({ fit }, i) => ({ fit, pair: pairs[i] }))
      .filter(({ fit }) => fit.verdict !== 'blocked' && fit.clearance === 0);
    const whole = contacts.filter(({ fit }) => Number.isInteger(fit.placement.x) && Number.isInteger(fit.placement.y));
    if (vertices === 20) expect(whole.length).toBeGreaterThan(count / 30);
    for (const { fit, pair } of whole)
      expect(liesInside(pair.opening, pair.blank, fit.placement), pair.name).toBe(true);
  });
});
