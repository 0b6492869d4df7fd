/** A dot of the chart that wants its name beside it, pixels. */
export interface LabelledDot {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  /** Lines of the label. */
  readonly lines: readonly string[];
}

/** Where the label of a dot begins or ends. */
export interface DotLabel {
  readonly id: string;
  readonly x: number;
  /** Base of the first line. */
  readonly y: number;
  readonly anchor: 'start' | 'end' | 'middle';
  readonly lines: readonly string[];
}

/** Room that something takes, pixels. */
export interface LabelBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Pixels from the middle of a dot to its label, the height of a line, the width of a letter; of text 15 pixels high. */
const APART = 15;
const LINE = 18;
const LETTER = 8.2;

/**
 * Places labels right or left of their dots, else over or under them, where they cover neither another label nor a dot; one that finds no room keeps
 * its first line alone, and is left out where that has none either. Those given first choose first.
 *
 * @param room what labels must stay within, pixels.
 * @param before what is written already.
 * @check tests/unit/app/gauge-chart.test.ts
 */
export function dotLabels(dots: readonly LabelledDot[], room: LabelBox, before: readonly LabelBox[] = []): DotLabel[] {
  const round = dots.map(({ x, y }) => ({ left: x - 11, top: y - 11, right: x + 11, bottom: y + 11 }));
  const taken: LabelBox[] = [...before, ...round];
  const placed: DotLabel[] = [];
  for (const dot of dots) {
    const alone = { ...dot, lines: dot.lines.slice(0, 1) };
    const found = [...tries(dot), ...tries(alone)].find(
      ({ box }) => isWithin(box, room) && !taken.some((other) => overlaps(box, other)),
    );
    if (!found) continue;
    taken.push(found.box);
    placed.push(found.label);
  }
  return placed;
}

/** Pixels from the middle of a dot to a label over or under it. */
const OVER = 12;

/** Right, left, then both a little above and below, and further; at last over and under the dot. */
function tries(dot: LabelledDot): { label: DotLabel; box: LabelBox }[] {
  const { id, x, y, lines } = dot;
  const width = LETTER * Math.max(...lines.map((line) => line.length));
  const height = LINE * lines.length;
  const heights = [y - height / 2, y - height - 2, y + 2, y - height - LINE, y + LINE];
  const over = [y - OVER - height, y + OVER].map((top) => {
    const label = { id, x, y: top + LINE - 4, anchor: 'middle' as const, lines };
    return { label, box: { left: x - width / 2, top, right: x + width / 2, bottom: top + height } };
  });
  const beside = heights.flatMap((top) =>
    (['start', 'end'] as const).map((anchor) => {
      const from = anchor === 'start' ? x + APART : x - APART - width;
      const label = { id, x: anchor === 'start' ? x + APART : x - APART, y: top + LINE - 4, anchor, lines };
      return { label, box: { left: from, top, right: from + width, bottom: top + height } };
    }),
  );
  return [...beside, ...over];
}

function isWithin(box: LabelBox, room: LabelBox): boolean {
  return box.left >= room.left && box.right <= room.right && box.top >= room.top && box.bottom <= room.bottom;
}

function overlaps(a: LabelBox, b: LabelBox): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}
