// Tier diagrams and concepts. The diagram of 8 to 300 blanks beside the layout library as it comes (its own order within
// layers and its linear programme for the places across), on the same layers. The concepts of invented families and of
// random tables beside the plain way: all sets that arise by intersecting the columns, kept in a list.

import { type Graph, graph, sugiyama } from 'd3-dag';
import type { EntryTable } from '../../src/family/entry-table.ts';
import { countConcepts } from '../../src/family/tiers.ts';
import { type Diagram, type DiagramInput, layOutDiagram } from '../../src/order/lay-out-diagram.ts';
import { largeFamily } from '../cases/large-families.ts';
import { randomNumbers } from '../cases/random-numbers.ts';
import { nestedSets, type SetDiagram, scatteredSets } from '../cases/set-diagrams.ts';
import { checksumOf, takeTurns } from './measure.ts';
import { figures, printNote, printTable, times } from './print-table.ts';

const BOX = { width: 112, height: 96 };
const GAP = { x: 28, y: 72 };
/** What a layout of 120 boxes may take, milliseconds. */
const MOST_MS = 1000;

diagrams();
concepts();

function inputOf({ tiers, covers }: SetDiagram): DiagramInput {
  return { nodes: tiers.map((tier, i) => ({ id: `${i}`, ...BOX, tier })), covers, gap: GAP };
}

/** The library's own way from end to end, but for the layers, which are given. */
function layOutAsItComes({ nodes, covers }: DiagramInput): Diagram {
  const highest = Math.max(...nodes.map(({ tier }) => tier));
  const dag = graph<{ layer: number }, number>();
  const boxes = nodes.map(({ tier }) => dag.node({ layer: highest - tier }));
  for (const [i, [lower, upper]] of covers.entries()) dag.link(boxes[upper], boxes[lower], i);
  const layering = (drawn: Graph<{ layer: number }, number>) => {
    for (const node of drawn.nodes()) node.y = node.data.layer;
    return highest;
  };
  const place = sugiyama().layering(layering).nodeSize([BOX.width, BOX.height]).gap([GAP.x, GAP.y]);
  // The library infers no kind of graph from a layering of one's own.
  const size = place(dag as never);
  const edges = [...dag.links()]
    .sort((a, b) => a.data - b.data)
    .map(({ data, points }) => {
      const [from, to] = covers[data];
      return { from, to, points: [...points].sort((a, b) => b[1] - a[1]) };
    });
  return { at: boxes.map(({ x, y }) => ({ x, y })), ...size, edges };
}

function diagrams(): void {
  const sizes: [string, SetDiagram, boolean][] = [
    ['8 nested', nestedSets(8, 1), true],
    ['40 nested', nestedSets(40, 2), true],
    ['120 nested', nestedSets(120, 3), true],
    ['120 scattered', scatteredSets(120, 3), true],
    ['300 nested', nestedSets(300, 3), false],
    ['300 scattered', scatteredSets(300, 3), false],
  ];
  const rows = sizes.flatMap(([name, sets, beside]) => {
    const input = inputOf(sets);
    const ways = [
      { name: 'ours', layOut: layOutDiagram },
      ...(beside ? [{ name: 'd3-dag as it comes', layOut: layOutAsItComes }] : []),
    ];
    const timings = takeTurns(
      ways.map((way) => ({ name: way.name, run: () => void way.layOut(input) })),
      3,
    );
    const baseline = timings[timings.length - 1];
    if (name.startsWith('120') && timings[0].median > MOST_MS) fail(`${name}: over ${MOST_MS} ms.`);
    const places = [1, 2].map(() => leftOf(input, layOutDiagram(input)));
    if (places[0] !== places[1]) fail(`${name}: not repeatable.`);
    return timings.map((timing, i) => {
      const drawn = ways[i].layOut(input);
      return [
        `${name}, ${input.covers.length} lines: ${timing.name}`,
        figures(timing.median),
        `${figures(timing.least)} - ${figures(timing.greatest)}`,
        beside ? times(baseline.median / timing.median) : '',
        String(crossingsOf(input, drawn)),
        leftOf(input, drawn),
      ];
    });
  });
  printTable(
    'Tier diagrams; speed beside d3-dag as it comes',
    ['', 'ms', 'range', 'speed', 'crossings', 'places'],
    rows,
  );
}

/** A fingerprint of who stands left of whom. */
function leftOf({ nodes }: DiagramInput, { at }: Diagram): string {
  return checksumOf(
    nodes.flatMap(({ tier }, i) =>
      nodes.flatMap((other, k) => (other.tier === tier && i < k ? [at[i].x < at[k].x] : [])),
    ),
  );
}

/** How many lines cross between the rows, as drawn. */
function crossingsOf({ nodes }: DiagramInput, { at, edges }: Diagram): number {
  const rows = [...new Set(nodes.map((_, i) => Math.round(at[i].y)))].sort((a, b) => b - a);
  let crossings = 0;
  for (let row = 0; row + 1 < rows.length; row++) {
    const [low, high] = [rows[row], rows[row + 1]];
    const through = edges
      .filter(({ from, to }) => at[from].y >= low - 1 && at[to].y <= high + 1)
      .map(({ points }) => [acrossAt(points, low), acrossAt(points, high)]);
    for (const [i, [a, b]] of through.entries())
      for (const [c, d] of through.slice(i + 1)) if ((a - c) * (b - d) < -1e-6) crossings++;
  }
  return crossings;
}

/** Where a line that goes up is at a height. */
function acrossAt(points: Diagram['edges'][number]['points'], height: number): number {
  const next = points.findIndex(([, y]) => y <= height);
  if (next <= 0) return points[next < 0 ? points.length - 1 : 0][0];
  const [[x, y], [u, v]] = [points[next - 1], points[next]];
  return x + ((u - x) * (y - height)) / (y - v);
}

function concepts(): void {
  const limit = 100_000;
  const tables: [string, EntryTable, boolean][] = [
    ['60 keyways x 120 blanks, invented', invented(60, 120), true],
    ['200 x 200, invented', invented(200, 200), true],
    ['30 x 30, random, 3 in 10', random(30, 0.3), true],
    ['60 x 60, random, 3 in 10', random(60, 0.3), true],
    [`200 x 200, random, 1 in 5, up to ${limit}`, random(200, 0.2), false],
  ];
  const rows = tables.flatMap(([name, table, beside]) => {
    const counted = countConcepts(table, limit);
    const plain = beside ? countByIntersecting(table) : null;
    if (plain !== null && plain !== counted.concepts) fail(`${name}: ${counted.concepts} concepts, not ${plain}.`);
    const ways = [
      { name: 'NextClosure, with lines', run: () => void countConcepts(table, limit) },
      ...(beside ? [{ name: 'intersecting', run: () => void countByIntersecting(table) }] : []),
    ];
    const timings = takeTurns(ways, beside ? 3 : 1);
    const baseline = timings[timings.length - 1];
    return timings.map((timing) => [
      `${name}: ${timing.name}`,
      figures(timing.median),
      `${figures(timing.least)} - ${figures(timing.greatest)}`,
      beside ? times(baseline.median / timing.median) : '',
      `${counted.concepts}${counted.capped ? '+' : ''}`,
      timing.name === 'intersecting' ? '' : String(counted.edges),
    ]);
  });
  printTable('Concepts; speed beside intersecting', ['', 'ms', 'range', 'speed', 'concepts', 'lines'], rows);
}

function invented(openings: number, blanks: number): EntryTable {
  const { goesIn } = largeFamily(openings, blanks);
  return tableOf(goesIn, openings);
}

function random(size: number, density: number): EntryTable {
  const numbers = randomNumbers(size);
  return tableOf(
    Array.from({ length: size }, () => Array.from({ length: size }, () => numbers.chance(density))),
    size,
  );
}

function tableOf(goesIn: readonly (readonly boolean[])[], openings: number): EntryTable {
  return {
    goesIn,
    entrants: goesIn.map((_, i) => `blank ${i}`),
    openings: Array.from({ length: openings }, (_, k) => `keyway ${k}`),
  };
}

/** All sets of keyways that arise from the rows by intersecting, the whole among them. */
function countByIntersecting({ goesIn, openings }: EntryTable): number {
  const known = new Map<string, readonly boolean[]>();
  const whole = openings.map(() => true);
  known.set(whole.map(Number).join(''), whole);
  for (const row of goesIn)
    for (const set of [...known.values()]) {
      const shared = set.map((has, k) => has && row[k] === true);
      known.set(shared.map(Number).join(''), shared);
    }
  return known.size;
}

function fail(words: string): void {
  printNote(words);
  process.exitCode = 1;
}
