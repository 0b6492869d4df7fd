import { beforeAll, expect, test } from 'vitest';
import { loadTypeface, type Typeface } from '../../../src/lettering/typeface.ts';
import { cardContents } from '../../../src/publish/card-content.ts';
import { cardSheet } from '../../../src/publish/card-sheet.ts';
import type { CardOrder } from '../../../src/publish/sheet-order.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { textsOf } from '../../kit/laid-out.ts';
import { toldGround } from '../../kit/told-ground.ts';

let typeface: Typeface;
beforeAll(async () => {
  typeface = await loadTypeface();
});

const family = demoFamily();
const openings = family.profiles.filter(({ kind }) => kind === 'opening');
const entrants = family.profiles.filter(({ kind }) => kind !== 'opening');

/** The demo family, where each blank enters the keyways that its note and the register say. */
const GROUPS: Readonly<Record<string, readonly string[]>> = {
  'reed-group-blank': ['Heron', 'Smew', 'Bittern'],
  'dyke-group-blank': ['Plover', 'Knot', 'Curlew'],
};

const ground = (groups = GROUPS) =>
  toldGround(
    family,
    (e, o) => {
      const { id, section } = entrants[e];
      const inside = groups[id] ?? (section === undefined ? [] : [section]);
      return inside.includes(openings[o].section ?? '') ? 'enters' : 'blocked';
    },
    typeface,
  );

test('a holder’s card names the doors, and finds the blank by what it enters', () => {
  const [card] = cardContents(ground(), { of: 'caretaker' });
  expect(card).toMatchObject({ title: 'Caretaker of Reed court', carries: 'carries the Reed group blank', notes: [] });
  expect(card.enters.map(({ name, aside }) => [name, aside])).toEqual([
    ['Gatehouse and offices', 'Heron'],
    ['Post room', 'Smew'],
    ['Library', 'Bittern'],
  ]);
  expect(card.staysOut).toHaveLength(7);
});

test('a holder whose blank is not drawn is told by the plan, and the card says so', () => {
  const [card] = cardContents(ground({}), { of: 'caretaker' });
  expect(card.blank).toBeNull();
  expect(card.enters.map(({ name }) => name)).toEqual(['Gatehouse and offices', 'Post room', 'Library']);
  expect(card.notes).toEqual(['As planned: the blank is not drawn yet.']);
});

test('a blank’s card tells every keyway; with nothing named there is a card for every holder', () => {
  const [card] = cardContents(ground(), { of: 'dyke-group-blank' });
  expect(card.title).toBe('Dyke group blank');
  expect(card.enters.map(({ aside }) => aside)).toEqual(['Plover keyway', 'Knot keyway', 'Curlew keyway']);
  expect(cardContents(ground()).map(({ title }) => title)).toEqual(family.plan?.holders.map(({ name }) => name));
  const blanks = family.profiles.filter(({ kind }) => kind === 'blank').map(({ name }) => name);
  expect(cardContents(ground(), { every: 'blanks' }).map(({ title }) => title)).toEqual(blanks);
});

test('cards stand on pages with their words', () => {
  const order: CardOrder = { sheet: 'card', paper: 'A4', turned: 'portrait', palette: 'grey', units: 'mm' };
  const words = cardSheet(ground(), order).flatMap(({ marks }) => textsOf(marks, typeface).map(({ what }) => what));
  expect(words.filter((word) => word === 'Your blank enters')).toHaveLength(5);
  expect(words.filter((word) => word === 'Chemical store')).toHaveLength(5);
});
