import { expect, it } from 'vitest';
import { countRows, lookedAt, nameRows } from '../../../src/app/state/names/name-rows.ts';
import type { RegisterLook } from '../../../src/app/state/names/names-state.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';

const outline = [
  [0, 0],
  [2, 0],
  [2, 8],
  [0, 8],
];

const FILE = {
  format: 'sectionary-family',
  version: 1,
  name: 'Marsh',
  units: 'mm',
  runningClearance: 0.03,
  profiles: [
    { id: 'k', kind: 'opening', name: 'Heron keyway', section: 'Heron', outline },
    { id: 'b', kind: 'blank', name: 'Heron blank', section: 'Heron', chambers: 6, outline },
    { id: 't', kind: 'tool', name: 'Strip', outline },
  ],
  names: [
    { text: 'H10', kind: 'blank', section: 'Heron', scheme: 'list', chambers: 10, supersededBy: 'H9' },
    { text: 'H9', kind: 'blank', profile: 'b', scheme: 'list', chambers: 9 },
    { text: 'Snipe', kind: 'section', section: 'Snipe' },
    { text: 'Feeler', kind: 'tool', profile: 'sold', note: 'lent to the boathouse' },
  ],
};

function rows() {
  const read = readFamily(JSON.stringify(FILE));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return nameRows(read.document.family);
}

const LOOK: RegisterLook = { search: '', only: 'all', sort: null, chosen: null };

const texts = (look: Partial<RegisterLook>) => lookedAt(rows(), { ...LOOK, ...look }).map(({ sense }) => sense.text);

it('lists entries, profiles and sections, and tells what each stands for', () => {
  expect(rows().map(({ sense, stands }) => `${sense.text}: ${stands}`)).toEqual([
    'H10: Heron section',
    'H9: Heron blank',
    'Snipe: Snipe section',
    'Feeler: sold',
    'Heron keyway: Heron section',
    'Heron blank: Heron section',
    'Strip: ',
    'Heron: Heron section',
  ]);
  expect(new Set(rows().map(({ key }) => key)).size).toBe(8);
});

it('marks entries whose section or profile the family has no longer', () => {
  expect(texts({ only: 'gone' })).toEqual(['Snipe', 'Feeler']);
  expect(countRows(rows())).toEqual({
    all: 8,
    kinds: { keyway: 1, section: 2, blank: 3, tool: 2, series: 0 },
    inRegister: 4,
    gone: 2,
  });
});

it('searches every cell and the note, all words at once', () => {
  expect(texts({ search: 'LIST 10' })).toEqual(['H10']);
  expect(texts({ search: 'boathouse' })).toEqual(['Feeler']);
  expect(texts({ search: 'heron', only: 'register' })).toEqual(['H10', 'H9']);
  expect(texts({ search: 'nothing such' })).toEqual([]);
});

it('sorts numbers by their size, and leaves empty cells last either way', () => {
  expect(texts({ sort: { column: 'chambers', falling: false } }).slice(0, 3)).toEqual(['Heron blank', 'H9', 'H10']);
  expect(texts({ sort: { column: 'chambers', falling: true } }).slice(0, 3)).toEqual(['H10', 'H9', 'Heron blank']);
  expect(texts({ only: 'register', sort: { column: 'text', falling: false } })).toEqual([
    'Feeler',
    'H9',
    'H10',
    'Snipe',
  ]);
});
