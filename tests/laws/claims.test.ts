// What is written of a family's own matrix is confirmed to the last cell; a changed cell is one claim that is not.
// Claims survive the way through a table, whatever their names.

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkClaims } from '../../src/claims/check-claims.ts';
import { partsFromFit } from '../../src/claims/parts-from-fit.ts';
import { makeNameFinder, resolveClaims } from '../../src/claims/resolve-claims.ts';
import { bandsOf, entrantsOf, openingsOf } from '../../src/family/family.ts';
import { judgeTolerance, keptParts, type ThreeWay } from '../../src/fit/judge-tolerance.ts';
import { prepareOpening } from '../../src/fit/prepare-opening.ts';
import { readClaims } from '../../src/interchange/csv/read-claims.ts';
import { writeClaims } from '../../src/interchange/csv/write-claims.ts';
import { registerOf } from '../../src/names/register.ts';
import { demoFamily } from '../kit/demo-family.ts';
import { judge } from '../kit/judge.ts';

const family = demoFamily();
const [entrants, openings] = [entrantsOf(family), openingsOf(family)];
const easiest = keptParts();
const answers = new Map(
  openings.flatMap((opening) => {
    const shape = prepareOpening(opening.ring);
    return entrants.map((entrant) => {
      const fit = judge(opening.ring, entrant.ring, family.runningClearance);
      const parts = judgeTolerance(shape, [entrant.ring], fit, bandsOf(family, entrant, opening), 0, easiest);
      return [`${entrant.id} ${opening.id}`, { fit, parts }] as const;
    });
  }),
);
const answerOf = (entrantId: string, openingId: string) => {
  const answer = answers.get(`${entrantId} ${openingId}`);
  if (!answer) throw new Error(`no pair ${entrantId} ${openingId}`);
  return answer;
};
const finder = makeNameFinder(family, registerOf(family));

/** What comes of a matrix as text, cell by cell. */
function standings(cells: readonly (readonly string[])[]) {
  const rows = cells.map((row, i) => [entrants[i].name, ...row].map((cell) => `"${cell}"`).join(','));
  const text = [['', ...openings.map(({ name }) => name)].join(','), ...rows].join('\n');
  const read = readClaims(text);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  expect(read).toMatchObject({ form: 'matrix', leftOut: 0 });
  return checkClaims(resolveClaims(finder, read.claims), answerOf).map(({ standing }) => standing);
}

const MARKS = { always: ['x', 'yes', '1'], never: ['-', 'no', '0'] } as const;
const said = (parts: ThreeWay, n: number): string => (parts === 'depends' ? '' : MARKS[parts][n % 3]);
const TRUTH = entrants.map((entrant, i) =>
  openings.map((opening, k) => said(answerOf(entrant.id, opening.id).parts, i + k)),
);

describe('the matrix of the demo family as a table', () => {
  test('is confirmed entirely', () => {
    const found = standings(TRUTH);
    expect(found).toHaveLength(TRUTH.flat().filter((cell) => cell !== '').length);
    expect(new Set(found)).toEqual(new Set(['confirmed']));
  });

  test('with one cell the other way round has exactly one contradiction, or one too close to call', () => {
    const place = fc.tuple(fc.nat(entrants.length - 1), fc.nat(openings.length - 1));
    fc.assert(
      fc.property(place, ([i, k]) => {
        const { parts } = answerOf(entrants[i].id, openings[k].id);
        const other = { always: '-', never: 'x', depends: 'x' }[parts];
        const cells = TRUTH.map((row, at) => (at === i ? row.with(k, other) : row));
        const odd = standings(cells).filter((standing) => standing !== 'confirmed');
        expect(odd).toEqual([parts === 'depends' ? 'too close to call' : 'contradicted']);
      }),
      { numRuns: 60 },
    );
  });
});

test('what the fit alone says of the tolerance is what the look at the ends of the bands says', () => {
  let settled = 0;
  for (const entrant of entrants)
    for (const opening of openings) {
      const { fit, parts } = answerOf(entrant.id, opening.id);
      const known = partsFromFit(fit, bandsOf(family, entrant, opening));
      if (known) expect([entrant.id, opening.id, known]).toEqual([entrant.id, opening.id, parts]);
      settled += known ? 1 : 0;
    }
  expect(settled).toBeGreaterThan(50);
});

const name = fc
  .string({ minLength: 1, maxLength: 30, unit: 'grapheme' })
  .map((text) => text.replace(/[\p{Cc}\s]+/gu, ' ').trim())
  // An apostrophe before a formula is what a table writes for the formula itself.
  .filter(
    (text) => text !== '' && text.length <= 200 && !/^'\s*[=+\-@＝＋－＠]/.test(text) && !text.includes('\uFEFF'),
  );

const claim = fc
  .record({ blank: name, opening: name, enters: fc.boolean(), by: fc.option(name), note: fc.option(name) })
  .map(({ by, note, ...rest }) => ({ ...rest, ...(by !== null && { by }), ...(note !== null && { note }) }));

test.each([',', ';', '\t'] as const)(
  'claims written as a list parted by "%s" are read back as they were',
  (separator) => {
    fc.assert(
      fc.property(fc.array(claim, { minLength: 1, maxLength: 12 }), (claims) => {
        const read = readClaims(writeClaims(claims, separator));
        if (!read.ok) throw new Error(JSON.stringify(read.faults));
        expect(read.claims).toEqual(claims);
        expect(read.leftOut).toBe(0);
      }),
      { numRuns: 100 },
    );
  },
);
