import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import {
  apartText,
  areaText,
  lossText,
  namesText,
  noBlankText,
  othersText,
  shareText,
  sureText,
  webText,
} from '../../../src/app/state/tiers/passage-words.ts';
import type { Fit } from '../../../src/fit/fit.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import type { PassageBlank } from '../../../src/passage/passage.ts';
import { boxOfMm } from '../../kit/shapes.ts';

const read = readFamily(readFileSync('profiles-demo/first-lesson.json', 'utf8'));
if (!read.ok) throw new Error('the first lesson is not sound');
const { leastWeb: _, ...family } = read.document.family;

const blankWith = (thickness: number): PassageBlank => ({
  ring: boxOfMm(2, 8),
  width: 2e6,
  height: 8e6,
  area: 16e12,
  web: { thickness, from: 3.1e6, to: 4e6 },
  grooves: [],
  apart: [],
  entersAll: true,
});

test('a thin web is cautioned of: against the least web of the family, or below half a millimetre where there is none', () => {
  expect(webText(blankWith(0.6e6), family, 'mm')).toEqual({
    words: 'Its thinnest web is 0.600 mm, at 3.1–4.0 mm.',
    weak: false,
  });
  expect(webText(blankWith(0.45e6), family, 'mm')).toMatchObject({ weak: true });
  const strict = webText(blankWith(0.6e6), { ...family, leastWeb: 0.7e6 }, 'mm');
  expect(strict.weak).toBe(true);
  expect(strict.words).toContain("less than the family's least web of 0.700 mm");
  expect(webText(blankWith(0.45e6), { ...family, leastWeb: 0.4e6 }, 'mm').weak).toBe(false);
});

test('parts that do not hang together are told with their area', () => {
  const apart = [{ region: [], area: 0.5e12 }];
  expect(apartText({ ...blankWith(1e6), apart }, 'mm')).toBe(
    'What they share falls into 2 parts. The blank is the largest; the other one of 0.50 mm² would not hang together with it.',
  );
  expect(apartText(blankWith(1e6), 'mm')).toBe('');
});

test('areas, shares and names read as they are spoken', () => {
  expect([areaText(13.505e12, 'mm'), areaText(645.16e12, 'in')]).toEqual(['13.51 mm²', '1.0000 in²']);
  expect([0, 0.0004, 0.033, 0.16].map(shareText)).toEqual(['0.0 %', 'under 0.1 %', '3.3 %', '16 %']);
  expect(namesText(['A'])).toBe('A');
  expect(namesText(['A', 'B', 'C'])).toBe('A, B and C');
  expect(namesText(['A', 'B', 'C', 'D'], 3)).toBe('A, B and 2 more');
});

test('a loss names its largest places, a rim as a rim, none as none', () => {
  const place = { side: 'left', from: 1.9e6, to: 2.7e6, area: 1e12 } as const;
  const loss = { own: 10e12, area: 1e12, share: 0.1, places: [place], region: [] };
  expect(lossText('Heron keyway', loss, 'mm')).toBe(
    'In Heron keyway it gives up 1.00 mm² of the 10.00 mm² that would pass there (10 %): most on the left at 1.9–2.7 mm.',
  );
  expect(lossText('Heron keyway', { ...loss, places: [] }, 'mm')).toMatch(/, in a thin rim all round\.$/);
  expect(lossText('Heron keyway', { ...loss, area: 0, share: 0 }, 'mm')).toBe(
    'Heron keyway alone would take no larger blank.',
  );
});

test('where there is no blank it is said why and what to do; what else it enters is told; an optimum is not overstated', () => {
  expect(noBlankText({ why: 'too-narrow', ids: ['a', 'b'] }, (id) => id.toUpperCase(), 50_000, 'mm')).toBe(
    'With 0.050 mm of running clearance all round A and B leave no room for any blank. Leave them out, or set a smaller running clearance for the family.',
  );
  const fit = { verdict: 'tight' } as Fit;
  const entries = [
    { id: 'a', chosen: true, fit },
    { id: 'b', chosen: false, fit },
  ];
  const rest = { members: [], common: [], area: 0, sure: null, blank: null, none: null, clearance: 0 };
  expect(othersText({ ...rest, entries }, (id) => id)).toBe('It also enters b (tightly), which was not chosen.');
  const sure = { starts: 3, same: 2, area: 1e12, atMost: 2e12 };
  expect(sureText({ ...sure, kind: 'one-of-several' }, 'mm')).toContain('there may be a better one');
  expect(sureText({ ...sure, kind: 'agreed' }, 'mm')).toContain('it is no proof');
});
