import type { LessonStep } from '../../../family/lesson.ts';

/**
 * The step that a slide belongs to: a step may have several slides one after the other, all with its title.
 *
 * @param titles of all slides, in order.
 * @param slide from 0.
 * @returns number of the step, from 0; the first one where the titles are not those of the steps.
 * @check tests/unit/app/publish-choice.test.ts
 */
export function stepOfSlide(steps: readonly LessonStep[], titles: readonly string[], slide: number): number {
  let step = 0;
  for (const title of titles.slice(0, slide + 1)) {
    const next = steps.findIndex((one, i) => i >= step && one.title === title);
    if (next < 0) return 0;
    step = next;
  }
  return step;
}
