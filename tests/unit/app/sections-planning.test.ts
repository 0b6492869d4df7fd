import { expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { undo } from '../../../src/app/state/edit-document.ts';
import { changePlan } from '../../../src/app/state/plan/sections/sections-choices.ts';
import { SectionsPlanning, sectionsPlanningOf } from '../../../src/app/state/plan/sections/sections-planning.ts';
import { sectionsQuestion } from '../../../src/app/state/plan/sections/sections-question.ts';
import { blankRows, sectionRows } from '../../../src/app/state/plan/sections/sections-rows.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import type { DrawnPlan } from '../../../src/plan/drawn-plan.ts';
import type { WardPlan } from '../../../src/plan/ward-plan.ts';
import { fakeDoors, turn } from './fake-doors.ts';
import { CAMPUS, documentOf, questionOf, solved } from './planned-campus.ts';

const REFUSED: DrawnPlan = { ok: false, why: [], pairs: [] };

function planning() {
  const fake = fakeDoors();
  return { ...fake, planning: new SectionsPlanning(fake.doors.sections, fake.doors.pace) };
}

test('the question is the very same as long as plan and gap are, and names what hinders planning', () => {
  const { family } = documentOf(CAMPUS);
  const question = sectionsQuestion(family);
  expect(sectionsQuestion({ ...family, name: 'Another' })).toBe(question);
  expect(sectionsQuestion({ ...family, tolerance: 20_000 })).not.toBe(question);
  expect(sectionsQuestion({ ...family, plan: undefined })).toBeNull();
  const empty = questionOf({ ...CAMPUS, plan: { ...CAMPUS.plan, areas: [], holders: [] } });
  expect(empty.hindrance).toMatchObject({ what: 'The plan has no areas yet.', sheet: 'access' });
  const twice = { ...CAMPUS.plan, holders: [{ id: 'w', name: 'Warden', enters: ['heron'], free: ['heron'] }] };
  expect(questionOf({ ...CAMPUS, plan: twice }).hindrance?.what).toMatch(/both as must and as free/);
  const flat = { ...CAMPUS.plan, blade: { ...CAMPUS.plan.blade, thickness: 0.1 } };
  expect(questionOf({ ...CAMPUS, plan: flat }).hindrance?.sheet).toBe('blade');
});

test('the first answer comes at once and is drawn; an edit is waited out, and nothing of the plan before it stays', async () => {
  const { planning: plans, solvings, planDrawings, calm } = planning();
  const first = questionOf(CAMPUS);
  plans.ask(first);
  expect(solvings).toHaveLength(1);
  expect(solvings[0].input.options.seconds).toBe(0);
  const found = solved(first);
  solvings[0].finish(found);
  await turn();
  expect(plans.store.getState()).toMatchObject({ phase: 'found', found, drawing: { phase: 'drawing' } });
  planDrawings[0].finish(REFUSED);
  await turn();
  expect(plans.store.getState().drawing).toEqual({ phase: 'done', answer: REFUSED });
  const second = questionOf({ ...CAMPUS, plan: { ...CAMPUS.plan, stops: 2 } });
  plans.ask(second);
  expect(plans.store.getState()).toMatchObject({ phase: 'waiting', found: null, drawing: { phase: 'none' } });
  expect(solvings).toHaveLength(1);
  calm();
  expect(solvings).toHaveLength(2);
  // An undo before the answer has the first plan's answer again, without asking.
  plans.ask(first);
  expect(solvings[1].cancelled).toBe(true);
  expect(plans.store.getState()).toMatchObject({ phase: 'found', found, drawing: { phase: 'done' } });
  solvings[1].part(solved(second));
  await turn();
  expect(plans.store.getState().found).toBe(found);
});

/** A plan that is drawn and rests, not proved, and watched. */
async function resting() {
  const fake = planning();
  const { planning: plans, solvings, planDrawings } = fake;
  const question = questionOf(CAMPUS);
  plans.watch(true);
  plans.ask(question);
  const found: WardPlan = { ...solved(question), lowerBound: 2, proved: false };
  solvings[0].finish(found);
  await turn();
  planDrawings[0].finish(REFUSED);
  await turn();
  return { ...fake, question, found };
}

test('a plan that rests is searched by itself, once; what is shown stays until the search ends, and is then drawn', async () => {
  const { planning: plans, solvings, planDrawings, calm, found } = await resting();
  expect(solvings).toHaveLength(1);
  calm();
  expect(solvings[1].input.options.seconds).toBe(10);
  expect(plans.store.getState().phase).toBe('searching');
  const better = { ...found, grooved: found.grooved - 1 };
  solvings[1].part(better);
  expect(plans.store.getState()).toMatchObject({ found, better, drawing: { phase: 'done' } });
  const proved = { ...better, lowerBound: found.sites, bound: 'search' as const, proved: true };
  solvings[1].part(proved);
  // What is proved is said at once, of what is shown and of what waits.
  expect(plans.store.getState()).toMatchObject({ found: { proved: true }, better: { proved: true } });
  solvings[1].finish(proved);
  await turn();
  expect(plans.store.getState()).toMatchObject({ phase: 'found', found: proved, better: null });
  expect(planDrawings).toHaveLength(2);
  planDrawings[1].finish(REFUSED);
  await turn();
  expect(calm()).toBe(0);
});

test('the search by itself ends with an edit, a stop or when nobody looks; what it found is not lost', async () => {
  const { planning: plans, solvings, planDrawings, calm, question, found } = await resting();
  calm();
  const better = { ...found, grooved: found.grooved - 1 };
  solvings[1].part(better);
  plans.watch(false);
  expect(solvings[1].cancelled).toBe(true);
  expect(plans.store.getState()).toMatchObject({ phase: 'found', found, better });
  plans.watch(true);
  expect(plans.store.getState()).toMatchObject({ found: better, better: null, drawing: { phase: 'drawing' } });
  planDrawings[1].finish(REFUSED);
  await turn();
  calm();
  expect(solvings).toHaveLength(3);
  plans.ask(questionOf({ ...CAMPUS, plan: { ...CAMPUS.plan, stops: 2 } }));
  expect(solvings[2].cancelled).toBe(true);
  expect(plans.store.getState()).toMatchObject({ phase: 'waiting', found: null, better: null });
  plans.ask(question);
  expect(plans.store.getState()).toMatchObject({ phase: 'found', found: better, drawing: { phase: 'done' } });
  calm();
  expect(solvings).toHaveLength(4);
  plans.stop();
  expect(solvings[3].cancelled).toBe(true);
  expect(plans.store.getState()).toMatchObject({ phase: 'found', found: better });
  expect(calm()).toBe(0);
});

/** The campus with another name for an area, and with blades of another back. */
const renamed = (name: string) => ({
  ...CAMPUS,
  plan: {
    ...CAMPUS.plan,
    areas: CAMPUS.plan.areas.map((area) => (area.id === 'heron' ? { ...area, name } : area)),
    blade: { ...CAMPUS.plan.blade, backRadius: 0.3 },
  },
});

test('a rename lets a search go on, and what was found is drawn anew for it; undo has its own drawing again', async () => {
  const { planning: plans, solvings, planDrawings, calm, question, found } = await resting();
  const [second, third] = [questionOf(renamed('Heron Hall')), questionOf(renamed('Heron Lodge'))];
  expect(second).not.toBe(question);
  plans.improve(20);
  const better = { ...found, grooved: found.grooved - 1 };
  solvings[1].part(better);
  plans.ask(second);
  expect(solvings[1].cancelled).toBe(false);
  expect(plans.store.getState()).toMatchObject({ asked: second, phase: 'improving', total: 20, found: better });
  const proved = { ...better, lowerBound: found.sites, bound: 'search' as const, proved: true };
  solvings[1].finish(proved);
  await turn();
  expect(planDrawings).toHaveLength(2);
  expect(planDrawings[1].input).toMatchObject({ plan: second.plan, wardPlan: proved });
  planDrawings[1].finish(REFUSED);
  await turn();
  // At rest: the wards are there at once, nothing is asked of the solver, and a drawing on its way begins anew.
  plans.ask(third);
  expect(plans.store.getState()).toMatchObject({ phase: 'found', found: proved, drawing: { phase: 'drawing' } });
  plans.ask(second);
  expect(planDrawings[2].cancelled).toBe(true);
  expect(plans.store.getState()).toMatchObject({ phase: 'found', found: proved, drawing: { phase: 'done' } });
  // The first plan was drawn with the wards of then; those found since are better.
  plans.ask(question);
  expect(plans.store.getState()).toMatchObject({ phase: 'found', found: proved, drawing: { phase: 'drawing' } });
  expect(planDrawings[3].input.plan).toBe(question.plan);
  expect(solvings).toHaveLength(2);
  planDrawings[3].finish(REFUSED);
  await turn();
  expect(calm()).toBe(0);
  // Who enters what is another question.
  plans.ask(questionOf({ ...CAMPUS, plan: { ...CAMPUS.plan, allSection: false } }));
  expect(plans.store.getState()).toMatchObject({ phase: 'waiting', found: null });
});

test('a rename while the first answer is waited for, or while the plan is searched by itself, loses neither', async () => {
  const { planning: plans, solvings } = planning();
  plans.ask(questionOf(CAMPUS));
  const second = questionOf(renamed('Heron Hall'));
  plans.ask(second);
  expect([solvings.length, solvings[0].cancelled]).toEqual([1, false]);
  solvings[0].finish(solved(second));
  await turn();
  expect(plans.store.getState()).toMatchObject({ asked: second, phase: 'found', drawing: { phase: 'drawing' } });

  const rested = await resting();
  rested.calm();
  const better = { ...rested.found, grooved: rested.found.grooved - 1 };
  rested.solvings[1].part(better);
  rested.planning.ask(second);
  expect(rested.solvings[1].cancelled).toBe(true);
  expect(rested.planning.store.getState()).toMatchObject({
    found: better,
    better: null,
    drawing: { phase: 'drawing' },
  });
  rested.planDrawings[1].finish(REFUSED);
  await turn();
  // It was not searched to the end: that is begun anew.
  rested.calm();
  expect(rested.solvings).toHaveLength(3);
});

test('nobody looking, a proof, or a wish for more leave no search by itself', async () => {
  const { planning: plans, solvings, calm, found } = await resting();
  plans.improve(20);
  expect(calm()).toBe(0);
  solvings[1].finish(found);
  await turn();
  expect(calm()).toBe(0);
  expect(solvings).toHaveLength(2);
  const unwatched = planning();
  unwatched.planning.ask(questionOf(CAMPUS));
  unwatched.solvings[0].finish({ ...found, lowerBound: 2, proved: false });
  await turn();
  unwatched.planDrawings[0].finish(REFUSED);
  await turn();
  expect(unwatched.calm()).toBe(0);
});

test('a longer search shows the best so far and its bound, keeps it when cancelled, and never takes a worse one', async () => {
  const { planning: plans, solvings, planDrawings } = planning();
  const question = questionOf(CAMPUS);
  plans.ask(question);
  const found: WardPlan = { ...solved(question), lowerBound: 2, proved: false };
  solvings[0].finish(found);
  await turn();
  planDrawings[0].finish(REFUSED);
  await turn();
  plans.improve(5);
  expect(solvings[1].input.options.seconds).toBe(5);
  const worse = { ...found, sites: found.sites + 1 };
  solvings[1].part(worse);
  expect(plans.store.getState()).toMatchObject({ phase: 'improving', found, drawing: { phase: 'done' } });
  // A better bound for the same wards leaves their drawing.
  solvings[1].part({ ...found, lowerBound: found.sites, bound: 'search', proved: true });
  expect(plans.store.getState().found).toMatchObject({ sites: found.sites, proved: true, bound: 'search' });
  expect(plans.store.getState().drawing.phase).toBe('done');
  const better = { ...found, grooved: found.grooved - 1 };
  solvings[1].part(better);
  expect(plans.store.getState()).toMatchObject({ found: better, drawing: { phase: 'none' } });
  plans.stop();
  expect(solvings[1].cancelled).toBe(true);
  solvings[1].fail(new JobCancelled());
  await turn();
  expect(plans.store.getState()).toMatchObject({ phase: 'stopped', found: better, drawing: { phase: 'drawing' } });
  plans.stop();
  expect(plans.store.getState().drawing.phase).toBe('stopped');
  plans.again();
  expect(planDrawings).toHaveLength(3);
});

test('a search that is begun while the sections are drawn is cancelled as a search, and they are drawn after it', async () => {
  const { planning: plans, solvings, planDrawings } = planning();
  const question = questionOf(CAMPUS);
  plans.ask(question);
  solvings[0].finish(solved(question));
  await turn();
  plans.improve(5);
  expect(planDrawings[0].cancelled).toBe(true);
  expect(plans.store.getState()).toMatchObject({ phase: 'improving', drawing: { phase: 'none' } });
  plans.stop();
  expect(plans.store.getState()).toMatchObject({ phase: 'stopped', drawing: { phase: 'drawing' } });
});

test('a job that fails says why, and can be taken up again', async () => {
  const { planning: plans, solvings } = planning();
  plans.ask(questionOf(CAMPUS));
  solvings[0].fail(new Error('no memory'));
  await turn();
  expect(plans.store.getState()).toMatchObject({ phase: 'failed', trouble: 'no memory' });
  plans.again();
  expect(solvings).toHaveLength(2);
});

test('where the blade has too few sites nothing is drawn: changes that help are looked for', async () => {
  const { planning: plans, solvings, planDrawings, nearings } = planning();
  const question = questionOf({ ...CAMPUS, plan: { ...CAMPUS.plan, stops: 2 } });
  plans.ask(question);
  const room = question.layout.sites.length;
  solvings[0].finish({ ...solved(question), sites: room + 1 });
  await turn();
  expect(plans.store.getState().near).toBeNull();
  for (let at = 1; at < solvings.length; at++) {
    solvings[at].finish({ ...solved(question), sites: room });
    await turn();
  }
  expect(planDrawings).toHaveLength(0);
  expect(plans.store.getState().near).toBeNull();
  // What the solver says of fewer sections comes last.
  const words = { words: '', options: nearings[0].input.options, blanks: [0], table: [], plan: solved(question) };
  nearings[0].finish([
    { change: 'stops', sections: [[0], [1], [2], [3]], ...words },
    { change: 'sections', sections: [[0], [2], [3]], ...words },
    { change: 'sharing', sections: [[0, 1], [2], [3]], ...words },
  ]);
  await turn();
  const near = plans.store.getState().near ?? [];
  expect(near.slice(-2).map(({ change }) => change)).toEqual([{ without: ['Smew'] }, { shared: [['Heron', 'Smew']] }]);
  for (const { sites, room: has } of near) expect(sites).toBeLessThanOrEqual(has);
});

test('choices are steps of undo, and another family is planned anew', async () => {
  const { doors, solvings } = fakeDoors();
  const session = makeSession(doors, null);
  openText(session.documents, doors, JSON.stringify(CAMPUS), 'campus.json');
  const plans = sectionsPlanningOf(session);
  const family = () => session.documents.getState().document?.family;
  const ask = () => plans.ask(sectionsQuestion(family() as NonNullable<ReturnType<typeof family>>));
  ask();
  expect(changePlan(session, { options: { stops: 2, reserve: 3 } })).toBeNull();
  expect(family()?.plan).toMatchObject({ stops: 2, reserve: 3 });
  expect(changePlan(session, { blade: { height: 9_000_000 } })).toBeNull();
  expect(family()?.plan?.blade.height).toBe(9_000_000);
  expect(
    changePlan(session, {
      shared: [
        ['Heron', 'Smew'],
        ['Knot', 'Rail'],
      ],
    }),
  ).toBeNull();
  const sections = () => family()?.plan?.areas.flatMap(({ section }) => section ?? []);
  expect(sections()).toEqual(['Heron', 'Heron', 'Knot', 'Knot']);
  undo(session.documents);
  expect(sections()).toEqual(['Heron', 'Smew', 'Knot', 'Rail']);
  undo(session.documents);
  undo(session.documents);
  expect(family()?.plan).toMatchObject({ stops: 1, reserve: 0, blade: { height: 8_400_000 } });
  openText(session.documents, doors, JSON.stringify({ ...CAMPUS, name: 'Another' }), 'another.json');
  expect(plans.store.getState().asked).toBeNull();
  expect(solvings[0].cancelled).toBe(true);
});

test('rows name sections with their areas and blanks with their holders, those in reserve last', () => {
  const question = questionOf({ ...CAMPUS, plan: { ...CAMPUS.plan, reserve: 1 } });
  const found = solved(question);
  const sections = sectionRows(question, found);
  expect(sections.map(({ name, aside }) => [name, aside])).toEqual([
    ['Heron', 'Heron House'],
    ['Smew', 'Smew House'],
    ['Knot', 'Knot House'],
    ['Rail', 'Rail House'],
    ['Reserve 1', 'for a section to come'],
  ]);
  expect(sections[0].depths).toBe(found.wards[0]);
  const blanks = blankRows(question, found);
  expect(blanks).toHaveLength(8);
  expect(blanks.at(-1)).toMatchObject({ reserve: true, aside: 'base blank to come' });
  expect(blanks.find(({ aside }) => aside === 'group blank: Warden')?.depths).toBeDefined();
});
