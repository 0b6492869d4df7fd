import type { TextMeasure } from '../../src/lettering/text-measure.ts';
import type { GroupMark, Mark, Page, Stroke, TextMark } from '../../src/publish/page.ts';

/** An upright rectangle on a page, millimetres, y down. */
export interface PageBox {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** A text with the room that its letters take; a picture or mark with its bounds. */
export interface LaidOutThing extends PageBox {
  readonly what: string;
}

/** How far letters reach over and under their base line, in heights of the em. */
const REACH = { up: 0.74, down: 0.22 };

/** The room that the letters of a text take. */
function textBox(
  { text, size, bold, align = 'start', spot, turned = 0 }: TextMark,
  measure: TextMeasure,
): LaidOutThing {
  const width = measure.width(text, size, bold);
  const from = { start: 0, middle: -width / 2, end: -width }[align];
  const corners = [
    [from, -REACH.up * size],
    [from + width, -REACH.up * size],
    [from + width, REACH.down * size],
    [from, REACH.down * size],
  ];
  const angle = (turned * Math.PI) / 180;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return {
    what: text,
    ...boxOfSpots(corners.map(([x, y]) => [spot[0] + c * x - s * y, spot[1] + s * x + c * y] as const)),
  };
}

/** Every text of a page. */
export function textsOf(marks: readonly Mark[], measure: TextMeasure): LaidOutThing[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'group') return textsOf(mark.marks, measure);
    return mark.kind === 'text' ? [textBox(mark, measure)] : [];
  });
}

/** Every labelled group without words in it: pictures of sections and plugs, marks of verdicts. */
export function picturesOf(marks: readonly Mark[], measure: TextMeasure): LaidOutThing[] {
  return marks.flatMap((mark) => {
    if (mark.kind !== 'group') return [];
    if (mark.label !== undefined && textsOf(mark.marks, measure).length === 0)
      return [{ what: `[${mark.label}]`, ...boundsOf([mark], measure) }];
    return picturesOf(mark.marks, measure);
  });
}

/** The bounds of marks, lines as thin, what is clipped as its clip. */
export function boundsOf(marks: readonly Mark[], measure: TextMeasure): PageBox {
  const boxes = marks.map((mark): PageBox => {
    if (mark.kind === 'text') return textBox(mark, measure);
    if (mark.kind === 'path') return boxOfStrokes(mark.strokes);
    return groupBox(mark, measure);
  });
  return boxOfSpots(boxes.flatMap(({ minX, minY, maxX, maxY }) => [[minX, minY] as const, [maxX, maxY] as const]));
}

function groupBox({ clip, marks }: GroupMark, measure: TextMeasure): PageBox {
  return clip ? boxOfStrokes(clip) : boundsOf(marks, measure);
}

function boxOfStrokes(strokes: readonly Stroke[]): PageBox {
  return boxOfSpots(strokes.flatMap(({ spots }) => spots));
}

function boxOfSpots(spots: readonly (readonly [number, number])[]): PageBox {
  let box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const [x, y] of spots)
    box = {
      minX: Math.min(box.minX, x),
      minY: Math.min(box.minY, y),
      maxX: Math.max(box.maxX, x),
      maxY: Math.max(box.maxY, y),
    };
  return box;
}

/** Touching, and letters that all but touch, are no overlap: millimetres. */
const SLACK = 0.05;

function overlap(a: PageBox, b: PageBox): boolean {
  return (
    Math.min(a.maxX, b.maxX) - Math.max(a.minX, b.minX) > SLACK &&
    Math.min(a.maxY, b.maxY) - Math.max(a.minY, b.minY) > SLACK
  );
}

/**
 * What is wrong with a page: marks outside the margins, texts over each other or over pictures.
 *
 * @param margin kept free at all four sides, millimetres; a line's own width may reach into it.
 */
export function pageFaults({ title, width, height, marks }: Page, margin: number, measure: TextMeasure): string[] {
  const faults: string[] = [];
  const bounds = boundsOf(marks, measure);
  const numbers = Object.values(bounds);
  if (!numbers.every(Number.isFinite)) faults.push(`${title}: marks without a place`);
  if (bounds.minX < margin - 0.2 || bounds.minY < margin - 0.2)
    faults.push(`${title}: marks left of or over the margins`);
  if (bounds.maxX > width - margin + 0.2 || bounds.maxY > height - margin + 0.2)
    faults.push(
      `${title}: marks right of or below the margins, to ${bounds.maxX.toFixed(1)}, ${bounds.maxY.toFixed(1)}`,
    );
  const texts = textsOf(marks, measure);
  const pictures = picturesOf(marks, measure);
  for (const [i, text] of texts.entries()) {
    for (const other of texts.slice(i + 1))
      if (overlap(text, other)) faults.push(`${title}: "${text.what}" over "${other.what}"`);
    for (const picture of pictures)
      if (overlap(text, picture)) faults.push(`${title}: "${text.what}" over ${picture.what}`);
  }
  return faults;
}
