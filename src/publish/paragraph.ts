import type { TextMeasure } from '../lettering/text-measure.ts';
import type { Block } from './block.ts';
import type { Ink } from './inks.ts';
import type { HeadingRank, TextMark } from './page.ts';
import { wrapText, wrapUpTo } from './wrap-text.ts';

/** How a paragraph is set; lengths in millimetres. */
export interface ParagraphStyle {
  readonly width: number;
  /** Height of the em. */
  readonly size: number;
  readonly bold?: boolean;
  readonly ink?: Ink;
  readonly align?: 'start' | 'middle' | 'end';
  /** Most lines; the last is shortened where there are more. */
  readonly most?: number;
  readonly heading?: HeadingRank;
}

/** How much of the spare room stands before a text. */
export const SHARE_BEFORE = { start: 0, middle: 0.5, end: 1 } as const;

/** From one base line to the next, in heights of the em. */
export const LEADING = 1.28;

/** From the top of a line to its base line, in heights of the em. */
export const ASCENT = 0.98;

/**
 * A text in lines as wide as there is room.
 *
 * @returns a block of the style's width, as high as its lines.
 * @check tests/unit/publish/page-parts.test.ts
 */
export function layOutParagraph(text: string, style: ParagraphStyle, measure: TextMeasure): Block {
  const { width, size, bold, ink, align = 'start', most, heading } = style;
  const lines = most === undefined ? wrapText(text, style, measure) : wrapUpTo(most, text, style, measure);
  const x = SHARE_BEFORE[align] * width;
  const marks = lines.map((line, i): TextMark => {
    const spot = [x, size * (ASCENT + i * LEADING)] as const;
    const look = { ...(bold && { bold }), ...(ink && { ink }), ...(heading && { heading }) };
    return { kind: 'text', spot, text: line, size, align, ...look };
  });
  return { width, height: lines.length * size * LEADING, marks: marks.filter((mark) => mark.text !== '') };
}

/** One line as wide as its text. */
export function layOutLine(text: string, style: Omit<ParagraphStyle, 'width'>, measure: TextMeasure): Block {
  const width = measure.width(text, style.size, style.bold);
  return layOutParagraph(text, { ...style, width, align: 'start' }, measure);
}
