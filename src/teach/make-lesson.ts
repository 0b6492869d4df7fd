import { openingsOf } from '../family/family.ts';
import type { Lesson, LessonStep } from '../family/lesson.ts';
import { outlineKey } from '../profile/outline-key.ts';
import type { Profile } from '../profile/profile.ts';
import { nearMissesOf } from './quiz.ts';
import { blanksOf, shortNameOf, type TeachingKnowledge, tryIn } from './teaching-knowledge.ts';

/** Most characters of a title in a family file. */
const MOST_TITLE = 200;

/** A blank with the keyways that it goes into. */
interface Reach {
  readonly blank: Profile;
  readonly inside: readonly Profile[];
}

/** A blank that goes into one keyway, and that keyway. */
interface Base {
  readonly blank: Profile;
  readonly opening: Profile;
}

/**
 * A ready lesson for a family: what a section is, a blank in its own keyway and in the next one, an in-between section, a
 * group blank, the tiers, the blank that enters all, two blanks that differ in length only, the common passage, and a
 * question to the room. Steps for which the family has nothing are left out. Figures are not written down: where a step
 * has no words it is told by what the core says when it is shown.
 *
 * @check tests/unit/teach/make-lesson.test.ts
 */
export function makeLesson(knowledge: TeachingKnowledge): Lesson {
  const { family } = knowledge;
  const openings = openingsOf(family);
  const reaches = blanksOf(family).map((blank) => ({ blank, inside: tryIn(knowledge, blank.id).inside }));
  const bases = reaches.flatMap(({ blank, inside }) => (inside.length === 1 ? [{ blank, opening: inside[0] }] : []));
  const base = bases.find(({ blank, opening }) => blank.section === opening.section) ?? bases[0] ?? null;
  return {
    title: `${family.name}: which blank goes where`.slice(0, MOST_TITLE),
    steps: [
      openingStep(openings.length, reaches.length),
      ...baseSteps(knowledge, base, openings),
      ...betweenStep(knowledge, bases, openings, base),
      ...groupStep(reaches, openings),
      ...tiersStep(reaches, openings),
      ...allStep(reaches, openings),
      ...lengthStep(reaches),
      ...passageStep(openings),
      ...questionStep(knowledge, base),
    ],
  };
}

function openingStep(keyways: number, blanks: number): LessonStep {
  return {
    show: 'words',
    title: 'What decides is the section',
    words: `This family has ${counted(keyways, 'keyway')} and ${counted(blanks, 'blank')}. Which blank goes into which keyway depends on the shape of its blade alone, seen from the end.`,
  };
}

function counted(count: number, word: string): string {
  return `${count} ${word}${count === 1 ? '' : 's'}`;
}

/** The base blank in the one keyway that takes it, then in the next keyway of the chart. */
function baseSteps(knowledge: TeachingKnowledge, base: Base | null, openings: readonly Profile[]): LessonStep[] {
  if (!base) return [];
  const { blank, opening } = base;
  const own: LessonStep = {
    show: 'pair',
    title: `${blank.name}: in it goes`.slice(0, MOST_TITLE),
    blank: blank.id,
    opening: opening.id,
    push: true,
  };
  const at = openings.indexOf(opening);
  const isBlocked = ({ id }: Profile) => knowledge.fitOf(blank.id, id)?.verdict === 'blocked';
  const next = [...openings.slice(at + 1), ...openings.slice(0, at).reverse()].find(isBlocked);
  if (!next) return [own];
  return [
    own,
    { show: 'pair', title: 'The keyway next to it: it stops', blank: blank.id, opening: next.id, push: true },
  ];
}

/** A base section with a neighbour on either side in the chart, of which its blank enters neither. */
function betweenStep(
  knowledge: TeachingKnowledge,
  bases: readonly Base[],
  openings: readonly Profile[],
  before: Base | null,
): LessonStep[] {
  const between = bases.find(({ blank, opening }) => {
    const at = openings.indexOf(opening);
    if (opening === before?.opening || at === 0 || at === openings.length - 1) return false;
    return tryIn(knowledge, blank.id, [openings[at - 1], openings[at + 1]]).blocked.length === 2;
  });
  if (!between) return [];
  const at = openings.indexOf(between.opening);
  const three = openings.slice(at - 1, at + 2);
  const [left, own, right] = three.map(shortNameOf);
  return [
    {
      show: 'wall',
      title: `Between ${left} and ${right}`.slice(0, MOST_TITLE),
      words: `${own} stands between ${left} and ${right} in the chart. It is a section of its own: its blank goes into neither neighbour.`,
      blank: between.blank.id,
      openings: three.map(({ id }) => id),
    },
  ];
}

/** The blank that goes into fewest keyways of those that go into several, but not all. */
function groupStep(reaches: readonly Reach[], openings: readonly Profile[]): LessonStep[] {
  const groups = reaches.filter(({ inside }) => inside.length > 1 && inside.length < openings.length);
  if (groups.length === 0) return [];
  const least = Math.min(...groups.map(({ inside }) => inside.length));
  const group = groups.find(({ inside }) => inside.length === least) ?? groups[0];
  return [{ show: 'wall', title: 'A group blank: several keyways, not all', blank: group.blank.id }];
}

function tiersStep(reaches: readonly Reach[], openings: readonly Profile[]): LessonStep[] {
  const sizes = new Set(reaches.map(({ inside }) => inside.length).filter((size) => size > 0));
  if (sizes.size < 2) return [];
  const top = topOf(reaches);
  const reachesAll = top.inside.length === openings.length;
  const title = reachesAll ? 'Tier by tier: from one keyway to all' : 'Tier by tier';
  return [{ show: 'tiers', title, blank: top.blank.id }];
}

function allStep(reaches: readonly Reach[], openings: readonly Profile[]): LessonStep[] {
  if (reaches.length === 0 || openings.length < 2) return [];
  const top = topOf(reaches);
  if (top.inside.length < openings.length) return [];
  return [{ show: 'wall', title: 'One blank for all', blank: top.blank.id }];
}

function topOf(reaches: readonly Reach[]): Reach {
  return reaches.reduce((best, reach) => (reach.inside.length > best.inside.length ? reach : best));
}

/** Two blanks of one outline and different lengths in chambers. */
function lengthStep(reaches: readonly Reach[]): LessonStep[] {
  for (const [i, { blank, inside }] of reaches.entries()) {
    const other = reaches.slice(i + 1).find(({ blank: b }) => isOnlyLonger(blank, b));
    if (!other || inside.length === 0) continue;
    return [
      {
        show: 'pair',
        title: 'Two names, one section',
        words: `${blank.name} and ${other.blank.name} have the same section. They differ in length only, so the one goes in wherever the other does.`,
        blank: other.blank.id,
        opening: inside[0].id,
      },
    ];
  }
  return [];
}

function isOnlyLonger(a: Profile, b: Profile): boolean {
  if (a.chambers === undefined || b.chambers === undefined || a.chambers === b.chambers) return false;
  return outlineKey(a.ring) === outlineKey(b.ring);
}

function passageStep(openings: readonly Profile[]): LessonStep[] {
  return openings.length < 2 ? [] : [{ show: 'passage', title: 'What all keyways have in common' }];
}

/** The blocked pair that fails by least, one with another blank than the first where there is one. */
function questionStep(knowledge: TeachingKnowledge, base: Base | null): LessonStep[] {
  const blanks = new Set(blanksOf(knowledge.family).map(({ id }) => id));
  const near = nearMissesOf(knowledge).filter(({ entrantId }) => blanks.has(entrantId));
  const asked = near.find(({ entrantId }) => entrantId !== base?.blank.id) ?? near[0];
  if (!asked) return [];
  return [{ show: 'question', title: 'And now you: does it go in?', blank: asked.entrantId, opening: asked.openingId }];
}
