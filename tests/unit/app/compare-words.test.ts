import { expect, test } from 'vitest';
import { shapesUnder } from '../../../src/app/doors/pair-now.ts';
import {
  alteredWords,
  bindingSentence,
  contactWords,
  degreesText,
  faultWords,
  floorWords,
  threeWaySentence,
} from '../../../src/app/panels/compare/compare-words.ts';
import { explainPlacement } from '../../../src/fit/explain-placement.ts';
import type { Contact, Fit } from '../../../src/fit/fit.ts';
import { partName } from '../../../src/fit/fit-sentence.ts';
import { ringOfMm } from '../../kit/shapes.ts';

const fit: Fit = {
  verdict: 'enters',
  clearance: 52_000,
  accuracy: 50,
  placement: { x: 0, y: 0, tilt: 0 },
  play: { lateral: 0, vertical: 0 },
  seated: { x: 0, y: 0, tilt: 0 },
};

/** A contact 10 um wide whose gap runs from the blank in the direction (dx, dy). */
function contact(side: Contact['side'], ward: boolean, dx: number, dy: number): Contact {
  return {
    onBlank: { x: 0, y: 0 },
    onOpening: { x: dx * 10_000, y: dy * 10_000 },
    blankFeature: { kind: 'corner', index: 0 },
    openingFeature: { kind: 'edge', index: 0 },
    gap: 10_000,
    side,
    ward,
    height: 1e6,
  };
}

test('what is left for the fullest blank is the clearance less both bands', () => {
  const said = threeWaySentence('always', fit, { blank: 20_000, opening: 20_000 }, 'mm');
  expect(said).toBe('Even the fullest blank in the narrowest keyway keeps 0.012\u00a0mm.');
  const exactly = threeWaySentence('always', fit, { blank: 30_000, opening: 22_000 }, 'mm');
  expect(exactly).toMatch(/still goes in, touching\.$/);
});

test('what depends is told apart by whether the parts as drawn go in', () => {
  const bands = { blank: 30_000, opening: 30_000 };
  expect(threeWaySentence('depends', fit, bands, 'mm')).toBe(
    'The tolerances add up to 0.060\u00a0mm, more than the gap of 0.052\u00a0mm.',
  );
  const blocked: Fit = { ...fit, verdict: 'blocked', clearance: -10_000 };
  expect(threeWaySentence('depends', blocked, bands, 'mm')).toMatch(/^As drawn it is 0\.010\u00a0mm too deep/);
  expect(threeWaySentence('never', blocked, bands, 'mm')).toMatch(/leanest blank stays out of the widest keyway/);
});

test('the two parts that press from opposite directions hold a blank', () => {
  const contacts = [contact('left', true, -1, 0), contact('bottom', false, 0, -1), contact('right', false, 1, 0)];
  expect(bindingSentence(contacts, partName)).toBe(
    'It cannot have more room: it is held between the left ward and the right wall.',
  );
});

test('one ward gripped from above and below holds by itself', () => {
  const contacts = [contact('left', true, 0, 1), contact('left', true, 0, -1)];
  expect(bindingSentence(contacts, partName)).toBe('It cannot have more room: it is held round the left ward.');
});

test('three that lean on each other are all named; none says nothing', () => {
  const third = (degrees: number) => [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  const [a, b, c] = [third(90), third(210), third(330)];
  const contacts = [
    contact('top', false, a[0], a[1]),
    contact('left', true, b[0], b[1]),
    contact('right', true, c[0], c[1]),
  ];
  expect(bindingSentence(contacts, partName)).toBe(
    'It cannot have more room: it is held by the top of the keyway, the left ward and the right ward.',
  );
  expect(bindingSentence([], partName)).toBe('');
});

test('in contact the side of the plug stands for the direction of a gap that is nothing', () => {
  const touching = (side: Contact['side']) => ({ ...contact(side, false, 0, 0), gap: 0 });
  expect(bindingSentence([touching('left'), touching('right')], partName)).toMatch(/the left wall and the right wall/);
});

test('corners and edges that touch are told apart', () => {
  const corner = contact('left', false, -1, 0);
  expect(contactWords(corner, partName)).toBe('a corner of the blank against the left wall');
  const edge = { ...corner, ward: true, blankFeature: corner.openingFeature, openingFeature: corner.blankFeature };
  expect(contactWords(edge, partName)).toBe('the blank against a corner of the left ward');
});

test('altered conditions are said first, and nothing where there are none', () => {
  const plain = { runningClearance: 0, wear: 0, tiltLimit: 0 };
  expect(alteredWords(plain, 'mm')).toBe('');
  expect(alteredWords({ ...plain, wear: 20_000, tiltLimit: Math.PI / 90 }, 'mm')).toBe(
    'Worn by 0.020 mm and tilted up to 2°',
  );
  expect(degreesText((1.25 * Math.PI) / 180)).toBe('1.25°');
});

test('faults count corners and edges from one', () => {
  expect(faultWords('edge 3 crosses edge 10')).toBe('edge 4 crosses edge 11');
  expect(faultWords('vertex 0 lies on edge 2')).toBe('corner 1 lies on edge 3');
});

test('heights of worn parts are told from the floor of the worn keyway, and say so', () => {
  const keyway = [
    ringOfMm([
      [0, 0],
      [2, 0],
      [2, 8],
      [0, 8],
    ]),
    ringOfMm([
      [0, 0],
      [2.2, 0],
      [2.2, 3],
      [0, 3],
    ]),
  ] as const;
  const lowest = (wear: number) => {
    const { opening, entrant } = shapesUnder(keyway[0], keyway[1], { runningClearance: 0, tiltLimit: 0, wear });
    const { collisions } = explainPlacement(opening, entrant, { x: 0, y: 1_000_000, tilt: 0 });
    return collisions[0].from;
  };
  // The blank loses 50 um at its foot and the keyway's floor lies 50 um lower: told 100 um higher than as drawn.
  expect(lowest(0)).toBeCloseTo(1_000_000, -1);
  expect(lowest(50_000)).toBeCloseTo(1_100_000, -1);
  expect(floorWords({ wear: 0 })).toBe('above the floor of the keyway');
  expect(floorWords({ wear: 50_000 })).toBe('above the floor of the worn keyway');
});
