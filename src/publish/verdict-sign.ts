import { VERDICT_WORDS } from '../family/margin-text.ts';
import type { Verdict } from '../fit/fit.ts';
import type { TextMeasure } from '../lettering/text-measure.ts';
import { type Block, rowOfBlocks } from './block.ts';
import type { Mark, Spot } from './page.ts';
import { layOutLine } from './paragraph.ts';
import { circle, drawn, filled, polyline, rectangle } from './strokes.ts';

/** Size of a mark beside its word, in heights of the type. */
const MARK_SHARE = 1.35;

/**
 * The mark of a verdict as the screen has it: an open ring with a tick, a diamond half filled, a full square with a bar.
 * Three shapes that grow heavier as less goes in, so that they stay apart in grey.
 *
 * @param size its width and height, millimetres.
 */
export function verdictMark(verdict: Verdict, size: number): Block {
  const u = size / 24;
  const at = (x: number, y: number): Spot => [x * u, y * u];
  const width = 2.4 * u;
  const marks: Record<Verdict, () => Mark[]> = {
    enters: () => [
      drawn([circle(12 * u, 12 * u, 10 * u)], 'enters', width),
      drawn([polyline(at(6.8, 12.6), at(10.4, 16.4), at(17.3, 8.2))], 'enters', width),
    ],
    tight: () => [
      filled([{ closed: true, spots: [at(12, 1.6), at(12, 22.4), at(1.6, 12)] }], 'tight'),
      drawn([{ closed: true, spots: [at(12, 2), at(22, 12), at(12, 22), at(2, 12)] }], 'tight', width),
    ],
    blocked: () => [
      filled([rectangle(1.5 * u, 1.5 * u, 21 * u, 21 * u)], 'blocked'),
      drawn([polyline(at(5.5, 12), at(18.5, 12))], 'paper', width * 1.2),
    ],
  };
  return {
    width: size,
    height: size,
    marks: [{ kind: 'group', label: VERDICT_WORDS[verdict], marks: marks[verdict]() }],
  };
}

/** The mark and its word. */
export function verdictSign(verdict: Verdict, size: number, measure: TextMeasure): Block {
  const text = layOutLine(VERDICT_WORDS[verdict], { size, ink: 'ink' }, measure);
  return rowOfBlocks([verdictMark(verdict, size * MARK_SHARE), text], size * 0.4);
}
