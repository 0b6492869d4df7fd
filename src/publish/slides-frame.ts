import type { LessonStep } from '../family/lesson.ts';
import type { TextMeasure } from '../lettering/text-measure.ts';
import type { StepParts } from '../teach/lesson-words.ts';
import type { TeachingKnowledge } from '../teach/teaching-knowledge.ts';
import type { Mark, Page } from './page.ts';
import type { SheetGround } from './sheet-ground.ts';
import type { SlidesOrder } from './sheet-order.ts';
import { shortenText } from './wrap-text.ts';

/** A slide of 16:9, millimetres: as large as an A4 sheet is long, so that it prints well. */
const SLIDE = { width: 320, height: 180 } as const;

/** Millimetres: the least type that the last row of a room can read, room at the sides, and the foot. */
export const LEAST_TYPE = 4.4;
export const MARGIN = 8;
const FOOT = 12;

/** Where a slide's own marks may stand: millimetres from its upper left corner. */
export const SLIDE_ROOM = {
  x: MARGIN,
  y: MARGIN,
  width: SLIDE.width - 2 * MARGIN,
  height: SLIDE.height - MARGIN - FOOT,
} as const;

/** Width and height that a picture has, millimetres. */
export interface Extent {
  readonly width: number;
  readonly height: number;
}

/** What one step of a lesson is laid out from. */
export interface SlideGround {
  readonly ground: SheetGround;
  readonly knowledge: TeachingKnowledge;
  readonly order: SlidesOrder;
  readonly step: LessonStep;
  readonly parts: StepParts;
  readonly words: string;
}

/** One slide without its foot. */
export interface SlideBody {
  readonly title: string;
  readonly marks: readonly Mark[];
  /** What it says, in reading order, the title first. */
  readonly told: readonly string[];
}

/** Slides as pages, each with the lesson's title, the date and its number at the foot. */
export function numberedSlides(
  bodies: readonly SlideBody[],
  foot: { readonly lesson: string; readonly date?: string },
  measure: TextMeasure,
): Page[] {
  const size = LEAST_TYPE;
  const y = SLIDE.height - 4.5;
  return bodies.map(({ title, marks, told }, i): Page => {
    const number = `${i + 1} / ${bodies.length}`;
    const left = [foot.lesson, ...(foot.date ? [foot.date] : [])].join(' · ');
    const room = SLIDE_ROOM.width - measure.width(number, size) - 8;
    const text = shortenText(left, { width: room, size }, measure);
    return {
      ...SLIDE,
      title,
      told,
      marks: [
        ...marks,
        ...(text === '' ? [] : [footMark(text, MARGIN, y, 'start')]),
        footMark(number, SLIDE.width - MARGIN, y, 'end'),
      ],
    };
  });
}

function footMark(text: string, x: number, y: number, align: 'start' | 'end'): Mark {
  return { kind: 'text', spot: [x, y], text, size: LEAST_TYPE, ink: 'soft', align };
}
