import { isMeasured } from '../family/fit-cache.ts';
import { gapText, type Units } from '../family/length-text.ts';
import { VERDICT_WORDS } from '../family/margin-text.ts';
import type { Fit, Verdict } from '../fit/fit.ts';
import type { TextMeasure } from '../lettering/text-measure.ts';
import { type Block, placeBlock } from './block.ts';
import type { Mark } from './page.ts';
import { ASCENT, LEADING } from './paragraph.ts';
import { drawn, filled, rectangle } from './strokes.ts';
import { verdictMark } from './verdict-sign.ts';

const VERDICTS: readonly Verdict[] = ['enters', 'tight', 'blocked'];

/** Of a cell, in heights of the em: room at its sides, above and below, and between mark and word. */
const PAD = { x: 0.4, y: 0.32 };
const MARK = 1;
const APART = 0.32;

/**
 * The margin of a pair without its unit: "+0.052", "−0.21", "0" for touching; the legend says the unit.
 *
 * @returns '' where it was not measured.
 */
export function marginFigure(fit: Fit, units: Units): string {
  if (!isMeasured(fit)) return '';
  if (fit.clearance === 0) return '0';
  const figure = gapText(fit.clearance, units)
    .replace(/ (mm|thou)$/, '')
    .replace('under ', '<');
  return `${fit.clearance < 0 ? '−' : '+'}${figure}`;
}

/** What the unit of {@link marginFigure} is called. */
export function marginUnit(units: Units): string {
  return units === 'in' ? 'thousandths of an inch' : 'mm';
}

/** The size that a cell needs, in heights of the em. */
export interface CellNeeds {
  readonly width: number;
  readonly height: number;
}

/** The size of a cell that has room for every word and for all of these figures. */
export function cellNeeds(figures: Iterable<string>, measure: TextMeasure): CellNeeds {
  const words = VERDICTS.map((verdict) => MARK + APART + measure.width(VERDICT_WORDS[verdict], 1, true));
  const widest = Math.max(...words, ...[...new Set(figures)].map((figure) => measure.width(figure, 1)));
  return { width: widest + 2 * PAD.x, height: 2 * LEADING + 2 * PAD.y };
}

/** How a cell is set; millimetres. */
export interface CellStyle {
  readonly size: number;
  readonly width: number;
  readonly height: number;
  readonly units: Units;
  readonly measure: TextMeasure;
  /** Whether blank and keyway are of one section: framed. */
  readonly own: boolean;
}

/** One pair: mark and word, the margin under them; on a grey ground where it goes in, so that the pattern is seen from afar. */
export function matrixCell(fit: Fit, { size, width, height, units, measure, own }: CellStyle): Block {
  const goesIn = fit.verdict !== 'blocked';
  const word = VERDICT_WORDS[fit.verdict];
  const line = size * (MARK + APART) + measure.width(word, size, goesIn);
  const left = (width - line) / 2;
  const top = (height - 2 * LEADING * size) / 2;
  const ink = goesIn ? 'ink' : 'soft';
  const figure = marginFigure(fit, units);
  const marks: Mark[] = [
    ...(goesIn ? [filled([rectangle(0, 0, width, height)], 'faint')] : []),
    ...placeBlock(verdictMark(fit.verdict, size * MARK), left, top + size * 0.16),
    textMark(word, [left + size * (MARK + APART), top + size * ASCENT], size, { bold: goesIn, ink }),
    ...(figure === ''
      ? []
      : [textMark(figure, [width / 2, top + size * (ASCENT + LEADING)], size, { align: 'middle', ink: 'ink' })]),
    ...(own ? [ownFrame(width, height, size)] : []),
  ];
  return { width, height, marks };
}

/** The frame round a pair of one section. */
export function ownFrame(width: number, height: number, size: number): Mark {
  const line = size * 0.16;
  return drawn([rectangle(line, line, width - 2 * line, height - 2 * line)], 'ink', line);
}

function textMark(
  text: string,
  spot: readonly [number, number],
  size: number,
  more: { bold?: boolean; align?: 'middle'; ink: 'ink' | 'soft' },
): Mark {
  return { kind: 'text', spot, text, size, ...more };
}
