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
  /** Where a line from the dot meets the label; null where it stands beside its dot. */
  readonly lead: { readonly x: number; readonly y: number } | null;
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
 * Places labels right or left of their dots, else over or under them, where they cover neither another label nor a dot. One
 * that finds no room keeps its first line alone; where that has none either it stands as near as it can, with a line to its
 * dot, and is left out only where there is no room at all. Those given first choose first.
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
    const found = [...tries(dot), ...tries(alone), ...triesAway(alone)].find(
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

/** Pixels from a dot to the nearest side of a label that has a line to it, and how many ways round it is tried. */
const AWAY = [36, 50, 66, 84, 105, 130, 160, 200, 250];
const WAYS = 16;

/** Further and further away, all round. */
function triesAway({ id, x, y, lines }: LabelledDot): { label: DotLabel; box: LabelBox }[] {
  const half = (LETTER * Math.max(...lines.map((line) => line.length))) / 2;
  const height = LINE * lines.length;
  const within = (at: number, least: number, most: number) => Math.min(most, Math.max(least, at));
  return AWAY.flatMap((away) =>
    Array.from({ length: WAYS }, (_, i) => {
      const turn = (2 * Math.PI * i) / WAYS;
      const [middle, across] = [x + Math.cos(turn) * (away + half), y + Math.sin(turn) * (away + height / 2)];
      const box = { left: middle - half, top: across - height / 2, right: middle + half, bottom: across + height / 2 };
      const lead = { x: within(x, box.left, box.right), y: within(y, box.top, box.bottom) };
      const label = { id, x: middle, y: box.top + LINE - 4, anchor: 'middle' as const, lead, lines };
      return { label, box };
    }),
  );
}

/** Right, left, then both a little above and below, and further; at last over and under the dot. */
function tries(dot: LabelledDot): { label: DotLabel; box: LabelBox }[] {
  const { id, x, y, lines } = dot;
  const width = LETTER * Math.max(...lines.map((line) => line.length));
  const height = LINE * lines.length;
  const heights = [y - height / 2, y - height - 2, y + 2, y - height - LINE, y + LINE];
  const over = [y - OVER - height, y + OVER].map((top) => {
    const label = { id, x, y: top + LINE - 4, anchor: 'middle' as const, lead: null, lines };
    return { label, box: { left: x - width / 2, top, right: x + width / 2, bottom: top + height } };
  });
  const beside = heights.flatMap((top) =>
    (['start', 'end'] as const).map((anchor) => {
      const from = anchor === 'start' ? x + APART : x - APART - width;
      const label = { id, x: anchor === 'start' ? x + APART : x - APART, y: top + LINE - 4, anchor, lead: null, lines };
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
