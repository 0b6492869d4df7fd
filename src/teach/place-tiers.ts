import { type Diagram, layOutDiagram } from '../order/lay-out-diagram.ts';
import type { TierPlate, TierRows } from './tier-rows.ts';

/** What the rows may take, all in the unit of the picture: pixels or millimetres, x right, y down. */
export interface TierRoom {
  readonly width: number;
  readonly height: number;
  /** Height of the type that names are written in. */
  readonly type: number;
  /** Width of a piece of a name as it is written. */
  widthOf(text: string): number;
  /** Room for the lines between two rows. */
  readonly between: number;
  /** A row is no higher than this. */
  readonly highest: number;
}

/** One plate: its middle across, and the top of its place. */
export interface PlacedPlate {
  readonly plate: TierPlate;
  readonly row: number;
  readonly x: number;
  readonly top: number;
  /** Room across for its name. */
  readonly wide: number;
}

/** A line from the top of a plate up to the foot of one that stands on it, round all plates between. */
export interface PlacedLine {
  readonly from: TierPlate;
  readonly to: TierPlate;
  /** Row of the upper end: with this row it appears. */
  readonly row: number;
  readonly points: readonly (readonly [x: number, y: number])[];
}

/** Where plates and lines stand. */
export interface PlacedTiers {
  readonly plates: readonly PlacedPlate[];
  readonly lines: readonly PlacedLine[];
  /** Height of each plate's place. */
  readonly high: number;
  /** Tops of the rows' plates, from the lowest row. */
  readonly tops: readonly number[];
  /** Plates of each row that found no room. */
  readonly more: readonly number[];
}

/** Widths of plates in heights of type: none is wider, and none narrower, nor is one narrower than a word of its name. */
const WIDE = { most: 9, least: 2.6 };

/** Between two names, in heights of type. */
const NAME_GAP = 0.5;

/** So much of a row's height a plate may take where rows are low. */
const MOST_PLATE = 0.8;

/** Room at the end of a row for the word that there are more, in heights of type. */
const MORE = 5.5;

/** {@link layOutDiagram} thinks in pixels of a screen, with type of about this height. */
const DIAGRAM_TYPE = 22;

/**
 * Places the tiers of a lesson row by row, the lowest at the foot, so that no line runs through a plate. Plates become as
 * narrow as they must; where even that is too wide, the last ones of the longest rows are left out, and counted.
 *
 * @returns nothing overlaps, nothing stands out of the room, as long as one plate finds room in each row.
 * @check tests/unit/teach/place-tiers.test.ts
 */
export function placeTiers({ rows }: TierRows, room: TierRoom): PlacedTiers {
  const plateIn = (row: number) => Math.min(MOST_PLATE * row, Math.max(room.type, row - room.between));
  const share = room.height / Math.max(1, rows.length);
  // Over the highest row stand no lines: what they would take goes to all rows.
  const rowHeight = Math.min(share + (share - plateIn(share)) / Math.max(1, rows.length), room.highest);
  const high = plateIn(rowHeight);
  const between = rowHeight - high;
  const foot = (room.height + rowHeight * rows.length - between) / 2;
  const tops = rows.map((_, row) => foot - row * rowHeight - high);
  const longest = Math.max(1, ...rows.map(({ plates }) => plates.length));
  for (let most = longest; ; most--) {
    const kept = rows.map(({ plates }) => plates.slice(0, most));
    const width = most < longest ? room.width - room.type * MORE : room.width;
    const fitting = fitAcross(kept, { ...room, width, high, between });
    if (fitting) {
      const more = rows.map(({ plates }, row) => plates.length - kept[row].length);
      return { ...placed(kept, fitting, { tops, high, width }), high, tops, more };
    }
  }
}

interface Fitting {
  readonly diagram: Diagram;
  /** Widths of the plates, row by row. */
  readonly wides: readonly number[];
  /** Pictures' units for one of the diagram's. */
  readonly unit: number;
}

/** The diagram with the widest plates for which there is room; one plate in each row always finds it. */
function fitAcross(
  rows: readonly (readonly TierPlate[])[],
  { width, high, type, between, widthOf }: TierRoom & { readonly high: number },
): Fitting | null {
  const unit = type / DIAGRAM_TYPE;
  const plates = rows.flat();
  const number = new Map(plates.map(({ id }, i) => [id, i]));
  const covers = plates.flatMap(({ onto }, upper) =>
    onto.flatMap((id): [number, number][] => {
      const lower = number.get(id);
      return lower === undefined ? [] : [[lower, upper]];
    }),
  );
  const tiers = rows.flatMap((row, tier) => row.map(() => tier));
  const names = plates.map(({ name }) => ({
    line: widthOf(name) + type * NAME_GAP,
    word: Math.max(...name.split(' ').map(widthOf)) + type * NAME_GAP,
  }));
  for (let most = type * WIDE.most; ; most *= 0.9) {
    const wides = names.map(({ line, word }) => Math.max(type * WIDE.least, word, Math.min(line, most)));
    const narrowest = most < type * WIDE.least;
    // A row that is too long without its lines need not be laid out.
    const widest = Math.max(...rows.map((_, row) => sum(wides.filter((__, i) => tiers[i] === row))));
    if (widest > width && rows.some((row) => row.length > 1)) {
      if (narrowest) return null;
      continue;
    }
    const nodes = plates.map(({ id }, i) => ({ id, width: wides[i] / unit, height: high / unit, tier: tiers[i] }));
    const diagram = layOutDiagram({ nodes, covers, gap: { x: 12, y: between / unit } });
    if (diagram.width * unit <= width || rows.every((row) => row.length <= 1)) return { diagram, wides, unit };
    if (narrowest) return null;
  }
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** The diagram in the room: its rows where they belong, spread over the whole width. */
function placed(
  rows: readonly (readonly TierPlate[])[],
  { diagram, wides, unit }: Fitting,
  { tops, high, width }: { tops: readonly number[]; high: number; width: number },
): Pick<PlacedTiers, 'plates' | 'lines'> {
  const bends = diagram.edges.flatMap(({ points }) => points.map(([x]) => ({ x: x * unit, half: 0 })));
  const across = stretchOver([...diagram.at.map(({ x }, i) => ({ x: x * unit, half: wides[i] / 2 })), ...bends], width);
  const plates = rows.flatMap((row, tier) => row.map((plate) => ({ plate, row: tier })));
  const yOf = new Map(plates.map(({ row }, i) => [row, diagram.at[i].y * unit]));
  const lowest = yOf.get(0) ?? 0;
  const down = (y: number) => y * unit - lowest + (tops[0] ?? 0) + high / 2;
  return {
    plates: plates.map(({ plate, row }, i) => ({
      plate,
      row,
      x: across(diagram.at[i].x * unit),
      top: tops[row],
      wide: wides[i],
    })),
    lines: diagram.edges.map(({ from, to, points }) => ({
      from: plates[from].plate,
      to: plates[to].plate,
      row: plates[to].row,
      points: points.map(([x, y]) => [across(x * unit), down(y)] as const),
    })),
  };
}

/** Takes places across as far apart as the room lets them, all of them within it; what has one place stands in the middle. */
function stretchOver(
  places: readonly { readonly x: number; readonly half: number }[],
  width: number,
): (x: number) => number {
  let stretch = Number.POSITIVE_INFINITY;
  for (const a of places)
    for (const b of places) if (b.x > a.x) stretch = Math.min(stretch, (width - a.half - b.half) / (b.x - a.x));
  if (!Number.isFinite(stretch)) return () => width / 2;
  stretch = Math.max(0, stretch);
  const least = Math.max(...places.map(({ x, half }) => half - stretch * x));
  const most = Math.min(...places.map(({ x, half }) => width - half - stretch * x));
  return (x) => stretch * x + (least + most) / 2;
}
