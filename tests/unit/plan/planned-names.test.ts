import { expect, test } from 'vitest';
import type { Access, PlannedBlank } from '../../../src/plan/planned-access.ts';
import { plannedNames } from '../../../src/plan/planned-names.ts';

const blank = (id: string, name: string, rank: PlannedBlank['rank'], sections: number[]): PlannedBlank => {
  return { id, name, rank, sections, free: [], holders: [] };
};

const ACCESS: Access = {
  sections: [
    { name: 'Heron', areas: ['heron'] },
    { name: 'Little Owl', areas: ['little-owl'] },
  ],
  blanks: [
    blank('b-heron', 'Heron', 'base', [0]),
    blank('b-reed', 'Reed', 'group', [0, 1]),
    blank('b-2', 'Blank for 2 keyways', 'group', [0, 1]),
    blank('b-all', 'All-section blank', 'all-section', [0, 1]),
  ],
  table: [
    [1, 1, 1, 1],
    [0, 1, 1, 1],
  ],
  faults: [],
};

test('keyways and base blanks have the name of their section, groups their own', () => {
  const { openings, blanks } = plannedNames(ACCESS);
  expect(openings.map(({ name }) => name)).toEqual(['Heron keyway', 'Little Owl keyway']);
  expect(openings.map(({ id }) => id)).toEqual(['heron-keyway', 'little-owl-keyway']);
  expect(blanks.map(({ name }) => name)).toEqual([
    'Heron blank',
    'Reed group blank',
    'Blank for 2 keyways',
    'All-section blank',
  ]);
  expect(blanks.map(({ section }) => section)).toEqual(['Heron', undefined, undefined, undefined]);
});

test('other names change names and not ids', () => {
  const { openings, blanks } = plannedNames(ACCESS, ['Bittern', ' ']);
  expect(openings.map(({ name }) => name)).toEqual(['Bittern keyway', 'Little Owl keyway']);
  expect(blanks[0]).toEqual({ id: 'b-heron', name: 'Bittern blank', section: 'Bittern' });
  expect(openings.map(({ id }) => id)).toEqual(plannedNames(ACCESS).openings.map(({ id }) => id));
});

test('names that come to one id get different ones', () => {
  const sections = ['A 1', 'A-1', '…'].map((name) => ({ name, areas: [] }));
  const { openings } = plannedNames({ ...ACCESS, sections, blanks: [] });
  expect(new Set(openings.map(({ id }) => id)).size).toBe(3);
});
