import { expect, test } from 'vitest';
import { drawnSections } from '../../../src/app/state/plan/sections/drawn-sections.ts';
import { printedPlan, siteBandText } from '../../../src/app/state/plan/sections/printed-plan.ts';
import { printedStrength } from '../../../src/app/state/plan/sections/printed-report.ts';
import { entryMatrix } from '../../../src/family/entry-matrix.ts';
import { guardMargins } from '../../../src/family/guard-margin.ts';
import { takePlan } from '../../../src/interchange/json/take-plan.ts';
import { USUAL_MATERIAL } from '../../../src/strength/materials.ts';
import { CAMPUS, documentOf, drawn, questionOf, solved } from './planned-campus.ts';

const question = questionOf(CAMPUS);
const found = solved(question);
const answer = drawn(question, found);
if (!answer.ok) throw new Error('the plan is not confirmed');
const confirmed = answer;
const { family, file } = documentOf(CAMPUS);
const sheet = printedPlan(family, question, { from: 'drawn', confirmed, found }, 'mm');

test('areas stand in their tree, holders with what they enter and the blank that they carry', () => {
  expect(sheet.areas[0]).toEqual({ name: 'North yard', depth: 0, section: null });
  expect(sheet.areas[1]).toEqual({ name: 'Heron House', depth: 1, section: 'Heron' });
  expect(sheet.holders[0]).toMatchObject({ name: 'Warden', enters: 'Heron House, Smew House' });
  expect(sheet.holders[1].enters).toBe('Heron House, Knot House (also may: Smew House)');
  const names = drawnSections(confirmed).blanks.map(({ name }) => name);
  for (const { blanks } of sheet.holders) expect(names).toContain(blanks);
  expect(sheet.openings[0]).toMatchObject({ title: 'Heron keyway', aside: 'Heron House' });
});

test('the wards and grooves that are printed keep the plan: a blank enters where its grooves are as deep', () => {
  expect(sheet.sites).toHaveLength(found.sites);
  for (const [b, { depths: grooves }] of sheet.grooves.entries())
    for (const [s, { depths: wards }] of sheet.wards.entries()) {
      const enters = wards.every((ward, i) => ward <= grooves[i]);
      const wanted = question.access.table[s][b];
      if (wanted !== null) expect(enters, `${b} in ${s}`).toBe(wanted === 1);
      expect(sheet.entries[b][s]).toEqual({ verdict: enters ? 'enters' : 'blocked', isFree: wanted === null });
    }
  expect(siteBandText(sheet.sites[0], 600_000, 'mm')).toMatch(/^(left|right) \d\.\d{3}–\d\.\d{3} mm$/);
});

test('what blades and cutter are like stands on the sheet, with the number of sites and what shows that it is least', () => {
  const fact = (term: string) => sheet.facts.find((one) => one.term === term)?.value;
  expect(fact('Ward sites')).toMatch(/^\d+(, proved fewest|; at least \d+ (is|are) needed)$/);
  expect(fact('Width of a groove')).toBe('0.600 mm');
  expect(fact('Flank, from square')).toBe('10°');
  expect(fact('Radius at the root')).toBe('0.100 mm');
  expect(fact('Least web')).toBe('0.400 mm');
});

test('each blank is told with what it bears; the weakest once all are examined', () => {
  const [first, second] = sheet.blanks.map(({ profile }) => profile);
  const limit = (low: number) => ({ yieldNm: { low, high: low }, plasticNm: { low: 2 * low, high: 2 * low } });
  const some = { limits: [limit(2) as never, null], troubles: ['', ''], done: 1, weakest: -1 };
  const printed = printedStrength([first, second], some, USUAL_MATERIAL, 'mm');
  expect(printed.rows[0]).toEqual({ name: first.name, yields: '2.00 N m', twists: '4.00 N m' });
  expect(printed).toMatchObject({ weakest: '', wait: '1 of 2 blanks are examined so far.' });
  const failed = printedStrength([first, second], { ...some, troubles: ['', 'no mesh'] }, USUAL_MATERIAL, 'mm');
  expect(failed.wait).toBe('1 of 2 blanks are examined; the others could not be.');
  expect(failed.rows[1].yields).toBe('could not be examined');
  const all = { limits: [limit(2) as never, limit(1) as never], troubles: ['', ''], done: 2, weakest: 1 };
  expect(printedStrength([first, second], all, USUAL_MATERIAL, 'in')).toMatchObject({ weakest: second.name, wait: '' });
});

test('a taken family prints the same wards, and the verdicts of its own outlines', () => {
  const document = documentOf(takePlan(file, confirmed.profiles, false));
  const steps = entryMatrix(document.family);
  let step = steps.next();
  while (!step.done) step = steps.next();
  const measuring = guardMargins(document.family, step.value);
  let measured = measuring.next();
  while (!measured.done) measured = measuring.next();
  const guard = { phase: 'known', margins: measured.value, keepsOut: true } as const;
  const waiting = { phase: 'waiting', margins: null, keepsOut: true } as const;
  const guardOf = ({ report }: typeof sheet) => report.find(({ term }) => term.startsWith('Guard'))?.value ?? '';
  const taken = printedPlan(document.family, question, { from: 'family', document, fits: step.value, guard }, 'mm');
  expect(taken.wards).toEqual(sheet.wards);
  expect(taken.grooves).toEqual(sheet.grooves);
  expect(taken.holders).toEqual(sheet.holders);
  for (const [b, row] of sheet.entries.entries())
    for (const [s, entry] of row.entries()) expect(taken.entries[b][s]).toEqual(entry);
  // The guard margin of the family that holds nothing else is that of the plan as it was drawn, to their accuracy.
  const told = confirmed.report.guard?.length ?? 0;
  expect(Math.abs(Number.parseFloat(guardOf(taken)) - told / 1e6)).toBeLessThan(0.002);
  expect(taken.report[0].value).toMatch(/^0\.05\d mm, /);
  const unjudged = printedPlan(
    document.family,
    question,
    { from: 'family', document, fits: null, guard: waiting },
    'mm',
  );
  expect(unjudged.entries[0][0].verdict).toBe('unknown');
  expect(guardOf(unjudged)).toBe('not measured yet');
});
