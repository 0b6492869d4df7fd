// Every claim in the words of the demo's lessons, against the geometry of the family that they are told of.
import { expect, test } from 'vitest';
import { entryTable } from '../../../src/family/entry-table.ts';
import { entrantsOf, openingsOf } from '../../../src/family/family.ts';
import { FitCache } from '../../../src/family/fit-cache.ts';
import { knownFits } from '../../../src/family/known-fits.ts';
import type { LessonStep } from '../../../src/family/lesson.ts';
import { tiersOf } from '../../../src/family/tiers.ts';
import { plainConditions } from '../../../src/fit/conditions.ts';
import { explainPlacement } from '../../../src/fit/explain-placement.ts';
import { signedArea } from '../../../src/geom/signed-area.ts';
import type { Groove, Profile } from '../../../src/profile/profile.ts';
import { checkLesson } from '../../../src/teach/check-lesson.ts';
import { tryIn } from '../../../src/teach/teaching-knowledge.ts';
import { demoFamily, knowledgeOf } from './known-family.ts';

const college = demoFamily('polderwick');
const knowledge = knowledgeOf(college);
const steps = college.lesson?.steps ?? [];

function stepSaying(words: string, of: readonly LessonStep[] = steps): LessonStep {
  const step = of.find((s) => s.words?.includes(words));
  if (!step) throw new Error(`No step says "${words}".`);
  return step;
}

function profile(id: string | undefined, family = college): Profile {
  const found = family.profiles.find((p) => p.id === id);
  if (!found) throw new Error(`No profile ${id}.`);
  return found;
}

const insideOf = (blank: string | undefined, of = knowledge) => tryIn(of, blank ?? '').inside.map((p) => p.section);
const groovesOf = (id: string | undefined, family = college): readonly Groove[] =>
  profile(id, family).milled?.grooves ?? [];

/** Whether two grooves, or a groove and a ward, stand on one side at one height; a keyway's wards stand 0.1 mm off. */
const meets = (a: Groove, b: Groove) =>
  a.side === b.side && Math.abs(a.bottom + a.width / 2 - b.bottom - b.width / 2) < 150_000;

test('both lessons show only what their families have, one in ten steps', () => {
  expect(steps).toHaveLength(10);
  const first = demoFamily('first-lesson');
  for (const family of [college, first]) expect(family.lesson && checkLesson(family, family.lesson)).toEqual([]);
});

test('ten keyways, and a blank that belongs to each', () => {
  stepSaying('Ten keyways, and a blank that belongs to each.');
  const openings = openingsOf(college);
  expect(openings).toHaveLength(10);
  for (const { section, id } of openings) {
    const own = entrantsOf(college).filter((p) => p.kind === 'blank' && p.section === section);
    expect(own.length).toBeGreaterThan(0);
    for (const blank of own) expect(knowledge.fitOf(blank.id, id)?.verdict).toBe('enters');
  }
});

test('three wards, three grooves, one for each, and room all round', () => {
  const { blank, opening, push } = stepSaying('The Heron keyway has three wards.');
  const wards = groovesOf(opening);
  const grooves = groovesOf(blank);
  expect([wards.length, grooves.length, push]).toEqual([3, 3, true]);
  for (const ward of wards) expect(grooves.filter((groove) => meets(groove, ward))).toHaveLength(1);
  const fit = knowledge.fitOf(blank ?? '', opening ?? '');
  expect(fit?.verdict).toBe('enters');
  expect(fit?.clearance).toBeGreaterThan(0);
});

test('the same blank at Bittern is stopped by a ward on the right that finds no groove', () => {
  const { blank, opening } = stepSaying('A ward on the right finds no groove.');
  expect(blank).toBe(stepSaying('The Heron keyway has three wards.').blank);
  expect(college.profiles.find((p) => p.id === opening)?.section).toBe('Bittern');
  const unmet = groovesOf(opening).filter((ward) => !groovesOf(blank).some((groove) => meets(groove, ward)));
  expect(unmet.map(({ side }) => side)).toEqual(['right']);
  const fit = knowledge.fitOf(blank ?? '', opening ?? '');
  expect(fit?.verdict).toBe('blocked');
  const { collisions } = explainPlacement(
    profile(opening).ring,
    profile(blank).ring,
    fit?.placement ?? { x: 0, y: 0, tilt: 0 },
  );
  const [deepest] = collisions;
  expect([deepest.side, deepest.ward]).toEqual(['right', true]);
  expect(deepest.from).toBeGreaterThan(unmet[0].bottom - 500_000);
  expect(deepest.to).toBeLessThan(unmet[0].bottom + unmet[0].width + 500_000);
});

test('Smew stands between Heron and Bittern, shares a groove with each, and goes into neither', () => {
  const step = stepSaying('Smew was squeezed in later, between Heron and Bittern.');
  const sections = openingsOf(college).map((p) => p.section);
  expect(sections.slice(0, 3)).toEqual(['Heron', 'Smew', 'Bittern']);
  expect(step.openings).toEqual(
    openingsOf(college)
      .slice(0, 3)
      .map((p) => p.id),
  );
  expect(insideOf(step.blank)).toEqual(['Smew']);
  const common = groovesOf('smew-blank').filter((groove) => groovesOf('dunlin-blank').some((g) => meets(g, groove)));
  for (const neighbour of ['heron-blank-5', 'bittern-blank']) {
    const shared = groovesOf('smew-blank').filter((groove) => groovesOf(neighbour).some((g) => meets(g, groove)));
    // One more than the groove that all sections have.
    expect(shared.length - common.length).toBe(1);
  }
});

test('Reed has the grooves of three sections and goes into these three and no other', () => {
  const { blank } = stepSaying('The caretaker carries Reed.');
  expect(insideOf(blank)).toEqual(['Heron', 'Smew', 'Bittern']);
  for (const own of ['heron-blank-5', 'smew-blank', 'bittern-blank'])
    for (const groove of groovesOf(own)) expect(groovesOf(blank).some((g) => meets(g, groove))).toBe(true);
});

test('tier by tier: one, three, seven, ten, and each goes into all that those below it go into', () => {
  stepSaying('A base blank goes into one keyway, a group blank into three, Causeway into seven, Polder into all ten.');
  const cache = new FitCache();
  const conditions = plainConditions(college.runningClearance);
  for (const entrant of entrantsOf(college))
    for (const opening of openingsOf(college)) {
      const fit = knowledge.fitOf(entrant.id, opening.id);
      if (fit) cache.set(opening.ring, entrant.ring, conditions, fit);
    }
  const { nodes, covers } = tiersOf(entryTable(knownFits(college, cache, conditions)));
  const reach = (id: string) => nodes.find(({ entrants }) => entrants.includes(id))?.openings.length;
  for (const { id, kind, section } of college.profiles)
    if (kind === 'blank' && openingsOf(college).some((p) => p.section === section)) expect(reach(id)).toBe(1);
  for (const group of ['reed-group-blank', 'dyke-group-blank', 'shore-group-blank']) expect(reach(group)).toBe(3);
  expect([reach('causeway-group-blank'), reach('polder-all-section-blank')]).toEqual([7, 10]);
  for (const [lower, upper] of covers)
    for (const opening of nodes[lower].openings) expect(nodes[upper].openings).toContain(opening);
});

test('Polder has every groove, least metal of all blanks, and goes into all ten', () => {
  const { blank } = stepSaying('Polder has the grooves of every section, and the least metal of all blanks.');
  expect(insideOf(blank)).toHaveLength(10);
  const blanks = college.profiles.filter(({ kind }) => kind === 'blank');
  for (const other of blanks)
    for (const groove of groovesOf(other.id)) expect(groovesOf(blank).some((g) => meets(g, groove))).toBe(true);
  const metal = signedArea(profile(blank).ring);
  for (const other of blanks) if (other.id !== blank) expect(signedArea(other.ring)).toBeGreaterThan(metal);
});

test('Heron for five and for six chambers is the same section point for point, and goes in wherever the other does', () => {
  const { blank } = stepSaying('Heron comes for five chambers and for six.');
  const [five, six] = [profile('heron-blank-5'), profile(blank)];
  expect([five.chambers, six.chambers]).toEqual([5, 6]);
  expect(six.ring).toEqual(five.ring);
  expect(insideOf(six.id)).toEqual(insideOf(five.id));
});

test('the strip of 0.55 mm goes in everywhere, that of 1.75 mm nowhere', () => {
  stepSaying('The 0.55 mm strip goes in everywhere, the 1.75 mm strip nowhere.');
  expect(insideOf('strip-055')).toHaveLength(10);
  expect(insideOf('strip-175')).toHaveLength(0);
});

test('Rail stands next to Curlew, Causeway goes in from Heron to Curlew, and not into Rail', () => {
  const { blank, opening } = stepSaying('Causeway goes into every keyway from Heron to Curlew.');
  const sections = openingsOf(college).map((p) => p.section);
  const last = sections.indexOf('Curlew');
  expect(sections[last + 1]).toBe('Rail');
  expect(insideOf(blank)).toEqual(sections.slice(0, last + 1));
  expect(knowledge.fitOf(blank ?? '', opening ?? '')?.verdict).toBe('blocked');
});

test('what the first lesson says is so', () => {
  const first = demoFamily('first-lesson');
  const known = knowledgeOf(first);
  const told = first.lesson?.steps ?? [];
  const own = stepSaying('One ward, one groove, at the same height on the same side.', told);
  const [ward, ...moreWards] = groovesOf(own.opening, first);
  const [groove, ...moreGrooves] = groovesOf(own.blank, first);
  expect([moreWards, moreGrooves, meets(ward, groove)]).toEqual([[], [], true]);
  expect(known.fitOf(own.blank ?? '', own.opening ?? '')?.verdict).toBe('enters');
  const stopped = stepSaying('The ward of Bittern stands on the other side.', told);
  expect(groovesOf(stopped.opening, first)[0].side).not.toBe(groove.side);
  expect(known.fitOf(stopped.blank ?? '', stopped.opening ?? '')?.verdict).toBe('blocked');
  expect(insideOf(stepSaying('Reed has the groove of Heron and the groove of Bittern.', told).blank, known)).toEqual([
    'Heron',
    'Bittern',
  ]);
});
