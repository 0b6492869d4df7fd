import { coordGreedy, type Graph, type GraphLink, graph, type SugiNode, sugiyama } from 'd3-dag';
import { orderLayers } from './order-layers.ts';

/** A box of a diagram: its size in pixels, and the tier that it stands in, 0 or more. */
export interface DiagramNode {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly tier: number;
}

/** What is laid out. */
export interface DiagramInput {
  /** In the order in which they would stand side by side, as far as the lines allow it. */
  readonly nodes: readonly DiagramNode[];
  /** Numbers of nodes; the upper stands in a higher tier. */
  readonly covers: readonly (readonly [lower: number, upper: number])[];
  /** Least room between boxes side by side, and between tiers, in pixels. */
  readonly gap?: { readonly x: number; readonly y: number };
}

/** A line of a diagram, bent where it passes a tier. */
export interface DiagramEdge {
  /** Number of the lower node. */
  readonly from: number;
  /** Number of the upper node. */
  readonly to: number;
  /** From the top of the lower box to the foot of the upper one; upright wherever it passes a tier. */
  readonly points: readonly (readonly [x: number, y: number])[];
}

/** Where everything stands: pixels, x right, y down, the lowest tier at the foot. */
export interface Diagram {
  /** The middle of each box, in the order of the input. */
  readonly at: readonly { readonly x: number; readonly y: number }[];
  readonly width: number;
  readonly height: number;
  readonly edges: readonly DiagramEdge[];
}

/** Room between boxes where none is given, pixels. */
const GAP = 28;

/** Room between tiers where none is given: this share of the widest tier's width, within two bounds in pixels. */
const TIER_GAP = { share: 1 / 40, least: 72, most: 200 };

/** Room between two lines that pass a tier side by side, pixels. */
const LINE_GAP = 12;

interface Datum {
  readonly index: number;
  readonly layer: number;
}

/** From the library's own type: a node of a layer, a box or a place where a line passes. */
type Place = SugiNode<Datum, number>;

/**
 * Lays out an order as a diagram in tiers: boxes of one tier in a row, lines that pass a tier between its boxes.
 *
 * The library puts a place into each tier that a line passes, and finds the places across by its quick rule, which stands
 * a box over the middle of what it holds. The order within a layer is ours ({@link orderLayers}): the library's counts
 * crossings pair by pair and takes half a minute at 300 boxes.
 *
 * @returns no boxes overlap; no line runs through a box; the same input always gives the same drawing.
 * @throws RangeError where a line does not lead to a higher tier, or a box has no size.
 * @check tests/unit/order/lay-out-diagram.test.ts, tests/bench/tiers.bench.ts
 */
export function layOutDiagram({ nodes, covers, gap }: DiagramInput): Diagram {
  checkInput({ nodes, covers });
  if (nodes.length === 0) return { at: [], width: 0, height: 0, edges: [] };
  const layers = layersOf(nodes);
  const dag = graph<Datum, number>();
  const boxes = nodes.map((_, index) => dag.node({ index, layer: layers[index] }));
  for (const [i, [lower, upper]] of covers.entries()) dag.link(boxes[upper], boxes[lower], i);
  const room = gap ?? gapFor(nodes, layers);
  const place = sugiyama()
    .layering(layerByDatum)
    .decross(orderPlaces)
    .coord(coordGreedy())
    .nodeSize(({ data: { index } }: { data: Datum }): [number, number] => [
      nodes[index].width + Math.max(0, room.x - LINE_GAP),
      nodes[index].height,
    ])
    .gap([LINE_GAP, room.y]);
  const { width, height } = place(dag);
  const tall = tallestOf(nodes, layers);
  return {
    at: boxes.map(({ x, y }) => ({ x, y })),
    width,
    height,
    edges: [...dag.links()]
      .map((link) => edgeOf(link, nodes, tall))
      .sort((a, b) => a.line - b.line)
      .map(({ from, to, points }) => ({ from, to, points })),
  };
}

function checkInput({ nodes, covers }: DiagramInput): void {
  const flat = nodes.find(({ width, height }) => !(width > 0 && height > 0));
  if (flat) throw new RangeError(`the box ${flat.id} has no size`);
  const fault = covers.find(([lower, upper]) => !(nodes[lower].tier < nodes[upper].tier));
  if (fault) throw new RangeError(`the line from ${nodes[fault[0]].id} to ${nodes[fault[1]].id} does not lead up`);
}

/** The layer of each node, 0 for the highest tier; tiers without a node get none. */
function layersOf(nodes: readonly DiagramNode[]): number[] {
  const tiers = [...new Set(nodes.map(({ tier }) => tier))].sort((a, b) => b - a);
  const layers = new Map(tiers.map((tier, layer) => [tier, layer]));
  return nodes.map(({ tier }) => layers.get(tier) ?? 0);
}

/** Room that grows with the width, so that lines far across do not lie flat. */
function gapFor(nodes: readonly DiagramNode[], layers: readonly number[]): { x: number; y: number } {
  const widths: number[] = [];
  for (const [i, { width }] of nodes.entries()) widths[layers[i]] = (widths[layers[i]] ?? 0) + width + GAP;
  const { share, least, most } = TIER_GAP;
  return { x: GAP, y: Math.min(most, Math.max(least, Math.max(...widths) * share)) };
}

/** The greatest height of a box in each layer. */
function tallestOf(nodes: readonly DiagramNode[], layers: readonly number[]): number[] {
  const tall: number[] = [];
  for (const [i, { height }] of nodes.entries()) tall[layers[i]] = Math.max(tall[layers[i]] ?? 0, height);
  return tall;
}

/** For the library: puts each node into its layer, and tells the last. */
function layerByDatum(dag: Graph<Datum, number>): number {
  let last = 0;
  for (const node of dag.nodes()) {
    node.y = node.data.layer;
    last = Math.max(last, node.y);
  }
  return last;
}

/** For the library: orders the places of each layer, which it lists from the top. */
function orderPlaces(rows: Place[][]): void {
  const up = rows.map((row) => [...row].sort((a, b) => rankOf(a) - rankOf(b))).reverse();
  const lines = up.slice(0, -1).map((row, layer) => {
    const above = new Map(up[layer + 1].map((place, i) => [place, i]));
    return row.flatMap((place, i) => [...place.parents()].flatMap((p): [number, number][] => [[i, above.get(p) ?? 0]]));
  });
  const orders = orderLayers({ sizes: up.map((row) => row.length), lines }).reverse();
  up.reverse();
  for (const [layer, row] of rows.entries()) row.splice(0, row.length, ...orders[layer].map((i) => up[layer][i]));
}

/** Boxes by their number, then the places of lines by the line's. */
function rankOf({ data }: Place): number {
  return data.role === 'node' ? data.node.data.index : 1e9 + data.link.data;
}

/** A line from the lower box to the upper one, upright wherever it passes a tier. */
function edgeOf(link: GraphLink<Datum, number>, nodes: readonly DiagramNode[], tall: readonly number[]) {
  const { source, target } = link;
  const from = target.data.index;
  const to = source.data.index;
  const up = [...link.points].sort((a, b) => b[1] - a[1]);
  const points = up.flatMap(([x, y], i): [number, number][] => {
    const half = tall[target.data.layer - i] / 2;
    if (i === 0)
      return [
        [x, y - nodes[from].height / 2],
        [x, y - half],
      ];
    if (i === up.length - 1)
      return [
        [x, y + half],
        [x, y + nodes[to].height / 2],
      ];
    return [
      [x, y + half],
      [x, y - half],
    ];
  });
  return { from, to, line: link.data, points: withoutRepeats(points) };
}

/** The points without those that repeat the one before. */
function withoutRepeats(points: readonly [number, number][]): [number, number][] {
  return points.filter(([x, y], i) => i === 0 || x !== points[i - 1][0] || y !== points[i - 1][1]);
}
