import { expect, test } from 'vitest';
import { CountingConcepts } from '../../../src/app/state/tiers/counting-concepts.ts';
import { diagramNodes } from '../../../src/app/state/tiers/diagram-nodes.ts';
import { type DiagramOrder, LayingOut } from '../../../src/app/state/tiers/laying-out.ts';
import { tiersOf } from '../../../src/family/tiers.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import { layOutDiagram } from '../../../src/order/lay-out-diagram.ts';
import { largeFamily } from '../../cases/large-families.ts';
import { fakeDoors } from './fake-doors.ts';

const { family, goesIn } = largeFamily(4, 8);
const BLANKS = family.profiles.filter(({ kind }) => kind === 'blank');
const TABLE = { entrants: BLANKS.map(({ id }) => id), openings: ['1', '2', '3', '4'], goesIn };

function order(rename = (name: string) => name, count = BLANKS.length): DiagramOrder {
  const table = { ...TABLE, entrants: TABLE.entrants.slice(0, count), goesIn: goesIn.slice(0, count) };
  const tiers = tiersOf(table);
  const profiles = new Map(BLANKS.map((p) => [p.id, { ...p, name: rename(p.name) }]));
  return { tiers, nodes: diagramNodes({ ...tiers, openings: 4 }, profiles, { width: 900, height: 700 }) ?? [] };
}

const settled = () => new Promise((done) => setTimeout(done));

test('lays out what is ordered, and keeps the places where nothing but a picture has changed', async () => {
  const fake = fakeDoors();
  const laying = new LayingOut(fake.doors.tiers, fake.doors.pace);
  laying.follow(order());
  expect(laying.store.getState()).toMatchObject({ phase: 'laying out', drawn: null });
  const layout = layOutDiagram(fake.layouts[0].input);
  fake.layouts[0].finish(layout);
  await settled();
  expect(laying.store.getState()).toMatchObject({ phase: 'ready', slow: false });
  const again = order();
  laying.follow(again);
  expect(fake.layouts.length).toBe(1);
  expect(laying.store.getState().drawn?.tiers).toBe(again.tiers);
  expect(laying.store.getState().drawn?.layout).toBe(layout);
});

test('a stale job is cancelled, the old picture stays, and the latest wish is next', async () => {
  const fake = fakeDoors();
  const laying = new LayingOut(fake.doors.tiers, fake.doors.pace);
  laying.follow(order());
  fake.layouts[0].finish(layOutDiagram(fake.layouts[0].input));
  await settled();
  const old = laying.store.getState().drawn;
  laying.follow(order(undefined, 6));
  laying.follow(order(undefined, 5));
  expect(fake.layouts[1].cancelled).toBe(true);
  expect(laying.store.getState().drawn).toBe(old);
  fake.layouts[1].fail(new JobCancelled());
  await settled();
  expect(fake.layouts.length).toBe(3);
  fake.layouts[2].finish(layOutDiagram(fake.layouts[2].input));
  await settled();
  expect(laying.store.getState().drawn?.nodes.length).toBe(fake.layouts[2].input.nodes.length);
});

test('a long one is told of, may be stopped, and goes on when asked', async () => {
  const fake = fakeDoors();
  const laying = new LayingOut(fake.doors.tiers, fake.doors.pace);
  laying.follow(order());
  fake.calm();
  expect(laying.store.getState().slow).toBe(true);
  laying.stop();
  fake.layouts[0].fail(new JobCancelled());
  await settled();
  expect(laying.store.getState()).toMatchObject({ phase: 'stopped', slow: false });
  laying.again();
  fake.layouts[1].fail(new Error('no room'));
  await settled();
  expect(laying.store.getState()).toMatchObject({ phase: 'failed', trouble: 'no room' });
});

test('another family forgets the picture', async () => {
  const fake = fakeDoors();
  const laying = new LayingOut(fake.doors.tiers, fake.doors.pace);
  laying.follow(order());
  fake.layouts[0].finish(layOutDiagram(fake.layouts[0].input));
  await settled();
  laying.clear();
  expect(laying.store.getState()).toMatchObject({ phase: 'idle', drawn: null });
});

test('concepts are counted for the latest table only, and once', async () => {
  const fake = fakeDoors();
  const counting = new CountingConcepts(fake.doors.tiers);
  const first = { key: '1', table: TABLE, tiers: tiersOf(TABLE) };
  counting.follow(first);
  counting.follow({ ...first, key: '2' });
  expect(fake.counts[0].cancelled).toBe(true);
  fake.counts[0].fail(new JobCancelled());
  await settled();
  const count = { concepts: 8, edges: 11, capped: false };
  fake.counts[1].finish(count);
  await settled();
  expect(counting.store.getState()).toEqual({ phase: 'known', count });
  counting.follow(null);
  expect(fake.counts.length).toBe(2);
});
