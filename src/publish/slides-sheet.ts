import type { Lesson, LessonStep } from '../family/lesson.ts';
import { stepFaults } from '../teach/check-lesson.ts';
import { partsOf, wordsOf } from '../teach/lesson-words.ts';
import { makeLesson } from '../teach/make-lesson.ts';
import type { TeachingKnowledge } from '../teach/teaching-knowledge.ts';
import { type Block, placeBlock } from './block.ts';
import type { Page } from './page.ts';
import type { SheetGround } from './sheet-ground.ts';
import type { SlidesOrder } from './sheet-order.ts';
import { type Extent, numberedSlides, SLIDE_ROOM, type SlideBody, type SlideGround } from './slides-frame.ts';
import { pairSlide, questionSlides } from './slides-pair.ts';
import { passageOf, passagePicture, toldPassage } from './slides-passage.ts';
import { fitPieces, titleAndWords } from './slides-text.ts';
import { shownTiers, tiersPicture, toldTiers } from './slides-tiers.ts';
import { toldWall, wallPicture } from './slides-wall.ts';
import { taughtGround } from './taught-ground.ts';

/** The most height of title and words over a picture, less over tiers, which take height for their rows; the room between them, millimetres. */
const HEAD = 42;
const HEAD_OF_TIERS = 32;
const UNDER_HEAD = 5;

/**
 * The steps of the family's lesson as slides of 16:9; a family without one gets the lesson that Teach would make. A question
 * takes two slides, the second with the answer; tiers take one for each row that comes to those below it.
 *
 * @returns at least one slide.
 * @check tests/unit/publish/class-sheets.test.ts
 */
export function slidesSheet(ground: SheetGround, order: SlidesOrder): Page[] {
  const knowledge = taughtGround(ground, order.units);
  const lesson = lessonShown(knowledge);
  const bodies = lesson.steps.flatMap((step) => stepSlides(slideGround(ground, knowledge, order, step)));
  const foot = order.date ? { lesson: lesson.title, date: order.date } : { lesson: lesson.title };
  return numberedSlides(bodies, foot, ground.measure);
}

/** The lesson that slides are made of. */
export function lessonShown(knowledge: TeachingKnowledge): Lesson {
  const { lesson } = knowledge.family;
  return lesson && lesson.steps.length > 0 ? lesson : makeLesson(knowledge);
}

/** The keyways whose common passages slides of this ground show, so that they can be found before. */
export function passagesShown(ground: SheetGround, order: SlidesOrder): string[][] {
  const knowledge = taughtGround(ground, order.units);
  return lessonShown(knowledge)
    .steps.filter(({ show }) => show === 'passage')
    .map((step) => partsOf(ground.family, step).openings.map(({ id }) => id));
}

function slideGround(
  ground: SheetGround,
  knowledge: TeachingKnowledge,
  order: SlidesOrder,
  step: LessonStep,
): SlideGround {
  const { family } = ground;
  return { ground, knowledge, order, step, parts: partsOf(family, step), words: wordsOf(step, knowledge) };
}

function stepSlides(slide: SlideGround): SlideBody[] {
  const { step, parts } = slide;
  const lost = stepFaults(slide.ground.family, step);
  const wallStands = step.show === 'wall' && parts.blank !== null && parts.openings.length > 0;
  if (lost.length > 0 && step.show !== 'passage' && !wallStands)
    return [aloneSlide(slide, [...new Set(lost.map(({ field }) => LOST[field]))])];
  switch (step.show) {
    case 'words':
      return [aloneSlide(slide, [])];
    case 'pair':
      return orAlone(slide, pairSlide(slide));
    case 'question':
      return orAlone(slide, questionSlides(slide));
    case 'wall':
      return [pictureSlide(slide, (room) => wallPicture(slide, room), [toldWall(slide)])];
    case 'tiers':
      return tiersSlides(slide);
    case 'passage':
      return [passageSlide(slide)];
  }
}

/** What a room is told where a step's part is gone; the script tells who made it what is missing. */
const LOST = {
  blank: 'The blank of this step is not in this family.',
  opening: 'The keyway of this step is not in this family.',
  openings: 'The keyways of this step are not in this family.',
} as const;

function orAlone(slide: SlideGround, slides: SlideBody[]): SlideBody[] {
  return slides.length > 0 ? slides : [aloneSlide(slide, ['This pair was not judged.'])];
}

/** Title and words by themselves, large; under them what cannot be shown. */
function aloneSlide({ step, words, ground: { measure } }: SlideGround, faults: readonly string[]): SlideBody {
  const inset = 18;
  const room = { width: SLIDE_ROOM.width - 2 * inset, height: SLIDE_ROOM.height - 16 };
  const lost = faults.map((text) => ({ text, size: 8, bold: true, ink: 'blocked' as const }));
  const text = fitPieces([...titleAndWords(step.title, words, [19, 10]), ...lost], room, measure);
  const y = SLIDE_ROOM.y + (SLIDE_ROOM.height - text.height) / 2;
  return {
    title: step.title,
    told: [step.title, words, ...faults].filter((line) => line !== ''),
    marks: placeBlock(text, SLIDE_ROOM.x + inset, y),
  };
}

/** Title and words over a picture of the whole width. */
function pictureSlide(
  { step, words, ground: { measure } }: SlideGround,
  picture: (room: Extent) => Block,
  told: readonly string[],
  mostHead = HEAD,
): SlideBody {
  const { x, y, width, height } = SLIDE_ROOM;
  const head = fitPieces(titleAndWords(step.title, words, [12.4, 6.8]), { width, height: mostHead }, measure);
  const top = y + head.height + UNDER_HEAD;
  const room = { width, height: height - head.height - UNDER_HEAD };
  const block = picture(room);
  return {
    title: step.title,
    told: [step.title, words, ...told].filter((line) => line !== ''),
    marks: [
      ...placeBlock(head, x, y),
      ...placeBlock(block, x + (width - block.width) / 2, top + (room.height - block.height) / 2),
    ],
  };
}

/** A slide for each row that comes to those below it. */
function tiersSlides(slide: SlideGround): SlideBody[] {
  const tiers = shownTiers(slide);
  return Array.from({ length: Math.max(1, tiers.rows.length) }, (_, i) =>
    pictureSlide(slide, (room) => tiersPicture(tiers, i + 1, slide, room), toldTiers(tiers, i + 1), HEAD_OF_TIERS),
  );
}

function passageSlide(slide: SlideGround): SlideBody {
  const ids = slide.parts.openings.map(({ id }) => id);
  if (ids.length === 0) return aloneSlide(slide, ['This step shows no keyway.']);
  const passage = passageOf(slide.ground, ids);
  return pictureSlide(slide, (room) => passagePicture(slide, passage, room), [toldPassage(slide, passage)]);
}
