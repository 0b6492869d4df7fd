import { type BoxRun, type LetterRun, MISSING_BOX, plainLine, type SetLine } from '../lettering/set-line.ts';
import type { Mark, Page, PathMark, Spot, Stroke, TextMark } from './page.ts';
import { SHARE_BEFORE } from './paragraph.ts';

/** How a line is set: what stands where, and which letters are missing. */
export type SetText = (text: string, bold?: boolean) => SetLine;

/**
 * The page with a box drawn for each letter that the typeface has not, so that it looks the same wherever it is shown.
 *
 * @returns the page as it is where it has all its letters and no control signs.
 * @check tests/unit/publish/box-missing.test.ts
 */
export function boxMissing(page: Page, set: SetText): Page {
  const marks = page.marks.map((mark) => boxed(mark, set));
  return marks.every((mark, i) => mark === page.marks[i]) ? page : { ...page, marks };
}

function boxed(mark: Mark, set: SetText): Mark {
  if (mark.kind === 'text') return boxedText(mark, set);
  if (mark.kind === 'path') return mark;
  const marks = mark.marks.map((inner) => boxed(inner, set));
  return marks.every((inner, i) => inner === mark.marks[i]) ? mark : { ...mark, marks };
}

function boxedText(mark: TextMark, set: SetText): Mark {
  const line = set(mark.text, mark.bold);
  const text = plainLine(mark.text);
  if (line.runs.every((run) => run.kind === 'letters')) return text === mark.text ? mark : { ...mark, text };
  // Where the line starts, along its base line from the spot.
  const start = -SHARE_BEFORE[mark.align ?? 'start'] * line.width * mark.size;
  return {
    kind: 'group',
    label: text,
    marks: joinLetters(line.runs).map((run) =>
      run.kind === 'box'
        ? missingBox(mark, start + run.at * mark.size)
        : { ...mark, text: run.text, align: 'start' as const, spot: along(mark, start + run.at * mark.size) },
    ),
  };
}

/** Runs of letters that follow each other, whichever part of the typeface they come from, as one. */
function joinLetters(runs: SetLine['runs']): (LetterRun | BoxRun)[] {
  const joined: (LetterRun | BoxRun)[] = [];
  for (const run of runs) {
    const last = joined.at(-1);
    if (last?.kind !== 'letters' || run.kind !== 'letters') joined.push(run);
    else joined[joined.length - 1] = { ...last, text: last.text + run.text, width: last.width + run.width };
  }
  return joined;
}

/** The place so far along the base line of a text and so far above it. */
function along({ spot: [x, y], turned = 0 }: TextMark, far: number, above = 0): Spot {
  const angle = (turned * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  return [x + far * cos + above * sin, y + far * sin - above * cos];
}

function missingBox(mark: TextMark, at: number): PathMark {
  const { left, width, height, line } = MISSING_BOX;
  const [from, to] = [at + left * mark.size, at + (left + width) * mark.size];
  const top = height * mark.size;
  const spots = [along(mark, from), along(mark, to), along(mark, to, top), along(mark, from, top)];
  const stroke: Stroke = { spots, closed: true };
  return { kind: 'path', strokes: [stroke], line: { ink: mark.ink ?? 'ink', width: line * mark.size } };
}
