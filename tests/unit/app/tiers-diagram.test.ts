import { describe, expect, test } from 'vitest';
import { conceptWords } from '../../../src/app/state/tiers/counting-concepts.ts';
import { diagramNodes, GAP, tierGap } from '../../../src/app/state/tiers/diagram-nodes.ts';
import { firstView, fitDiagram, revealBox, zoomDiagram } from '../../../src/app/state/tiers/diagram-view.ts';
import { nodeAfter } from '../../../src/app/state/tiers/diagram-walk.ts';
import { textWidth, wrapWords } from '../../../src/app/state/tiers/text-width.ts';
import { nodeOf, onlyNodes, reachOf } from '../../../src/family/tier-reach.ts';
import { type Tiers, tiersOf } from '../../../src/family/tiers.ts';
import { layOutDiagram } from '../../../src/order/lay-out-diagram.ts';
import { largeFamily } from '../../cases/large-families.ts';

/** Four base blanks a to d, a group ab, a group bc, one that enters all, and one more of a's section. */
const TABLE = {
  entrants: ['a', 'b', 'c', 'd', 'ab', 'bc', 'all', 'a2'],
  openings: ['A', 'B', 'C', 'D'],
  goesIn: [
    [true, false, false, false],
    [false, true, false, false],
    [false, false, true, false],
    [false, false, false, true],
    [true, true, false, false],
    [false, true, true, false],
    [true, true, true, true],
    [true, false, false, false],
  ],
};
const TIERS: Tiers = tiersOf(TABLE);
const [SAMPLE] = largeFamily(2, 3).family.profiles.filter(({ kind }) => kind === 'blank');
const PROFILES = new Map(TABLE.entrants.map((id) => [id, { ...SAMPLE, id, name: `${id} blank` }]));
const names = (nodes: Iterable<number>, tiers = TIERS) => [...nodes].map((at) => tiers.nodes[at].id).sort();

describe('what stands above and below', () => {
  test('is found near and far', () => {
    const b = reachOf(TIERS, nodeOf(TIERS, 'b'));
    expect(names(b.above)).toEqual(['ab', 'all', 'bc']);
    expect(names(b.below)).toEqual([]);
    expect(names(reachOf(TIERS, nodeOf(TIERS, 'all')).below)).toEqual(['a', 'ab', 'b', 'bc', 'c', 'd']);
  });

  test('alone is an order of its own, on tiers without gaps', () => {
    const d = nodeOf(TIERS, 'd');
    const only = onlyNodes(TIERS, new Set([d, ...reachOf(TIERS, d).above]));
    expect(only.nodes.map(({ id, tier }) => [id, tier])).toEqual([
      ['d', 0],
      ['all', 1],
    ]);
    expect(only.covers).toEqual([[0, 1]]);
  });
});

describe('nodes', () => {
  const at = (room: number) => diagramNodes({ ...TIERS, openings: 4 }, PROFILES, { width: room, height: 900 }) ?? [];

  test('list all that enter the same, with what they are in words', () => {
    const [a] = at(2000);
    expect(a).toMatchObject({ names: ['a blank', 'a2 blank'], labels: ['a', 'a2'], kind: 'base', count: '1 of 4' });
    expect(at(2000).map(({ kind }) => kind)).toEqual(['base', 'base', 'base', 'base', 'group', 'group', 'all-section']);
  });

  test('are set broad where there is room, upright where there is none, and fit their tier', () => {
    expect(at(2000).every(({ form }) => form === 'broad')).toBe(true);
    const tight = at(250);
    expect(tight.filter(({ tier }) => tier === 0).every(({ form }) => form === 'upright')).toBe(true);
    expect(tight[6].form).toBe('broad');
  });

  test('say "blank" only where the picture does not, and count blanks of one section', () => {
    const named = (id: string, name: string) => [id, { ...SAMPLE, id, name }] as const;
    const members = new Map([
      ...PROFILES,
      named('a', 'Heron blank, five chambers'),
      named('a2', 'Heron blank, six chambers'),
    ]);
    const [a, b] = diagramNodes({ ...TIERS, openings: 4 }, members, { width: 900, height: 900 }) ?? [];
    expect(a.labels).toEqual(['Heron (2)']);
    expect(a.names).toEqual(['Heron blank, five chambers', 'Heron blank, six chambers']);
    expect(b.labels).toEqual(['b']);
  });

  test('stand further apart where the frame is high', () => {
    const nodes = at(500);
    expect(tierGap(nodes, { width: 500, height: 1200 })).toBeGreaterThan(tierGap(nodes, { width: 500, height: 300 }));
    expect(tierGap(nodes, { width: 500, height: 100 })).toBe(GAP.y);
  });

  test('of another family are none', () => {
    expect(diagramNodes({ ...TIERS, openings: 4 }, new Map(), { width: 500, height: 900 })).toBeNull();
  });
});

describe('walking', () => {
  const nodes = diagramNodes({ ...TIERS, openings: 4 }, PROFILES, { width: 2000, height: 900 }) ?? [];
  const drawn = { tiers: TIERS, nodes, layout: layOutDiagram({ nodes, covers: TIERS.covers }) };
  const walk = (from: string, key: string) => {
    const next = nodeAfter(drawn, nodeOf(TIERS, from), key);
    return next === null ? null : TIERS.nodes[next].id;
  };

  test('goes along the lines upwards and downwards', () => {
    expect(walk('a', 'ArrowUp')).toBe('ab');
    expect(walk('d', 'ArrowUp')).toBe('all');
    expect(['a', 'b']).toContain(walk('ab', 'ArrowDown'));
    expect(walk('all', 'ArrowUp')).toBeNull();
    expect(walk('a', 'ArrowDown')).toBeNull();
  });

  test('goes along the tier sideways', () => {
    const tier = ['a', 'b', 'c', 'd'].sort(
      (p, q) => drawn.layout.at[nodeOf(TIERS, p)].x - drawn.layout.at[nodeOf(TIERS, q)].x,
    );
    expect(walk(tier[0], 'ArrowRight')).toBe(tier[1]);
    expect(walk(tier[3], 'ArrowRight')).toBeNull();
    expect(walk(tier[2], 'Home')).toBe(tier[0]);
    expect(walk(tier[1], 'End')).toBe(tier[3]);
    expect(walk('a', 'x')).toBeNull();
  });
});

describe('the view', () => {
  const frame = { width: 500, height: 400 };

  test('begins with the whole where it can be read, else at readable size from the top, with the picked node in sight', () => {
    expect(firstView({ width: 600, height: 300 }, frame, null)).toEqual(fitDiagram({ width: 600, height: 300 }, frame));
    const node = { x: 2000, y: 100, width: 100, height: 80 };
    const view = firstView({ width: 4000, height: 300 }, frame, node);
    expect(view.scale).toBe(0.75);
    expect(view.x + 0.75 * 2050).toBe(250);
    const low = firstView({ width: 4000, height: 2000 }, frame, { ...node, y: 100 });
    expect(low.y).toBeGreaterThan(0);
    const deep = firstView({ width: 4000, height: 2000 }, frame, { ...node, y: 1500 });
    expect(deep.y + 0.75 * 1580).toBeLessThan(frame.height);
  });

  test('zooms about a place, and moves no further than needed to show a node', () => {
    const view = { scale: 1, x: -100, y: 0 };
    const near = zoomDiagram(view, 50, 60, 2);
    expect((50 - near.x) / near.scale).toBeCloseTo((50 - view.x) / view.scale, 9);
    expect(revealBox(view, { x: 200, y: 50, width: 100, height: 80 }, frame)).toBe(view);
    const moved = revealBox(view, { x: 900, y: 50, width: 100, height: 80 }, frame);
    expect(moved.x + 1000).toBeLessThan(500);
    expect(moved.y).toBe(0);
  });
});

test('words are measured by their letters and broken between words', () => {
  expect(textWidth('mm', 10)).toBeGreaterThan(textWidth('ii', 10));
  expect(wrapWords('Polder all-section blank', 16, 140)).toEqual(['Polder all-section', 'blank']);
  expect(wrapWords('Unbreakable', 16, 10)).toEqual(['Unbreakable']);
});

test('the size of the lattice is told with its limit', () => {
  expect(conceptWords({ phase: 'known', count: { concepts: 19, edges: 32, capped: false } })).toMatch(
    /19 nodes and 32 lines/,
  );
  expect(conceptWords({ phase: 'known', count: { concepts: 50_000, edges: 1, capped: true } })).toMatch(
    /more than 50,000/,
  );
  expect(conceptWords({ phase: 'counting', count: null })).toMatch(/^Counting/);
});
