import { expect, test } from 'vitest';
import { drawnSections } from '../../../src/app/state/plan/drawn-sections.ts';
import { printedPlan, siteBandText } from '../../../src/app/state/plan/printed-plan.ts';
import { entryMatrix } from '../../../src/family/entry-matrix.ts';
import { takePlan } from '../../../src/interchange/json/take-plan.ts';
import { CAMPUS, documentOf, drawn, questionOf, solved } from './planned-campus.ts';

const question = questionOf(CAMPUS);
const found = solved(question);
const answer = drawn(question, found);
if (!answer.ok) throw new Error('the plan is not confirmed');
const confirmed = answer;
const { family, file } = documentOf(CAMPUS);
const sheet = printedPlan(family, question, { from: 'drawn', confirmed }, 'mm');

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
      expect(sheet.entries[b][s]).toBe({ 1: 'enters', 0: 'blocked', null: 'free' }[`${wanted}`]);
    }
  expect(siteBandText(sheet.sites[0], 600_000, 'mm')).toMatch(/^(left|right) \d\.\d–\d\.\d mm$/);
});

test('a taken family prints the same wards, and the verdicts of its own outlines', () => {
  const document = documentOf(takePlan(file, confirmed.profiles, false));
  const steps = entryMatrix(document.family);
  let step = steps.next();
  while (!step.done) step = steps.next();
  const taken = printedPlan(document.family, question, { from: 'family', document, fits: step.value }, 'mm');
  expect(taken.wards).toEqual(sheet.wards);
  expect(taken.grooves).toEqual(sheet.grooves);
  expect(taken.holders).toEqual(sheet.holders);
  for (const [b, row] of sheet.entries.entries())
    for (const [s, entry] of row.entries()) if (entry !== 'free') expect(taken.entries[b][s]).toBe(entry);
  expect(taken.report[0].value).toMatch(/^0\.05\d mm, /);
  const unjudged = printedPlan(document.family, question, { from: 'family', document, fits: null }, 'mm');
  expect(unjudged.entries[0][0]).toBe('unknown');
});
