import type { PlugFace } from '../family/plug-face.ts';
import type { TextMeasure } from '../lettering/text-measure.ts';
import type { Profile } from '../profile/profile.ts';
import { type Block, placeBlock, rowOfBlocks } from './block.ts';
import type { Mark } from './page.ts';
import { ASCENT, LEADING } from './paragraph.ts';
import { plugPicture } from './plug-picture.ts';
import { sectionPicture } from './section-picture.ts';
import { drawn, polyline, rectangle } from './strokes.ts';

/** How questions are set; millimetres. */
export interface QuestionStyle {
  readonly width: number;
  readonly height: number;
  /** Height of the em. */
  readonly size: number;
  /** How many times their size the parts are drawn. */
  readonly scale: number;
  /** Room for the widest blank, so that pictures stand in line. */
  readonly blankWidth: number;
  readonly face: PlugFace;
  readonly measure: TextMeasure;
}

/** What can be ticked. */
const CHOICES = ['goes in', 'does not go in'] as const;

/** From one line to write on to the next, in heights of the em: what a hand needs. */
const WRITING = 2.3;

/** Room for the number, in heights of the em. */
const NUMBER = 2.2;

/** The two parts of a question beside each other, without their names. */
export function apartPicture(
  entrant: Profile,
  opening: Profile,
  { face, scale, blankWidth }: Pick<QuestionStyle, 'face' | 'scale' | 'blankWidth'>,
): Block {
  const drawn = sectionPicture(entrant, { scale, line: 0.22 });
  const blank = { ...drawn, width: blankWidth, marks: placeBlock(drawn, (blankWidth - drawn.width) / 2, 0) };
  const plug = plugPicture(opening, null, { face, scale, line: 0.22 });
  return nameless(rowOfBlocks([blank, plug], 2.2 * scale));
}

/** The picture without labels, which would tell who it is. */
function nameless(block: Block): Block {
  const marks = block.marks.flatMap((mark): readonly Mark[] => (mark.kind === 'group' ? mark.marks : [mark]));
  return { ...block, marks };
}

/** The least height of a question: its picture, or its boxes and so many lines to write on. */
export function questionHeight(size: number, picture: number, lines: number): number {
  return Math.max(picture + 2 * size, size * (2 * 1.6 + LEADING + lines * WRITING));
}

/** One question: number, picture, boxes to tick, and lines to say why as far down as there is room. */
export function questionBlock(number: number, entrant: Profile, opening: Profile, style: QuestionStyle): Block {
  const { width, height, size, measure } = style;
  const picture = apartPicture(entrant, opening, style);
  const left = NUMBER * size;
  const right = left + picture.width + 1.6 * size;
  const top = 0.8 * size;
  const label = `Question ${number}: a ${entrant.kind} and a keyway, one beside the other`;
  return {
    width,
    height,
    marks: [
      { kind: 'text', spot: [0, top + ASCENT * size * 1.25], text: `${number}`, size: size * 1.25, bold: true },
      { kind: 'group', label, marks: placeBlock(picture, left, (height - picture.height) / 2) },
      ...boxes(right, top, size),
      ...lines(right, top + 2 * 1.6 * size, width, height, size, measure),
    ],
  };
}

function boxes(x: number, top: number, size: number): Mark[] {
  return CHOICES.flatMap((text, i): Mark[] => {
    const y = top + i * 1.6 * size;
    return [
      drawn([rectangle(x, y + 0.12 * size, size, size)], 'ink', 0.3),
      { kind: 'text', spot: [x + 1.5 * size, y + ASCENT * size], text, size },
    ];
  });
}

function lines(x: number, top: number, right: number, bottom: number, size: number, measure: TextMeasure): Mark[] {
  const text = 'because';
  const base = top + WRITING * size;
  const count = Math.max(1, Math.floor((bottom - 0.6 * size - base) / (WRITING * size)) + 1);
  const rules = Array.from({ length: count }, (_, i) => {
    const y = base + i * WRITING * size;
    return polyline([i === 0 ? x + measure.width(text, size) + 0.5 * size : x, y], [right, y]);
  });
  return [{ kind: 'text', spot: [x, base - 0.12 * size], text, size, ink: 'soft' }, drawn(rules, 'rule', 0.25)];
}
