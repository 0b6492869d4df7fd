import { expect, test } from 'vitest';
import { FIRST_FAMILY, FIRST_STEPS } from '../../../src/app/state/help/first-steps.ts';
import { makeHelpStore, putHintAway, wantHints } from '../../../src/app/state/help/help-state.ts';
import { KEYS } from '../../../src/app/state/help/key-list.ts';
import { seekWords, WORDS } from '../../../src/app/state/help/word-list.ts';
import { VIEW_NAMES } from '../../../src/app/state/selection-state.ts';
import { entryMatrix } from '../../../src/family/entry-matrix.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';

function shelfOf(text: string | null) {
  let kept = text;
  return {
    getItem: () => kept,
    setItem: (_key: string, value: string) => {
      kept = value;
    },
  };
}

test('a hint that is put away stays so on this computer, until hints are wanted again', () => {
  const shelf = shelfOf(null);
  putHintAway(makeHelpStore(shelf), 'wall');
  const next = makeHelpStore(shelf);
  expect(next.getState()).toMatchObject({ hints: true, hintsSeen: ['wall'], step: null });
  wantHints(next, false);
  expect(makeHelpStore(shelf).getState()).toMatchObject({ hints: false, hintsSeen: [] });
});

test.each(['nonsense', '{"hintsSeen":7}', '{"hintsSeen":["cellar"],"step":3,"open":"keys"}', '[]'])(
  'what is kept as %s shows all hints and nothing over the window',
  (text) => {
    expect(makeHelpStore(shelfOf(text)).getState()).toEqual({ hints: true, hintsSeen: [], step: null, open: null });
  },
);

test('every step of the first five minutes names what its family has, and says of it what is so', () => {
  const read = readFamily(FIRST_FAMILY.text);
  if (!read.ok) throw new Error('The family of the first five minutes is not sound.');
  const { family } = read.document;
  const kinds = new Map(family.profiles.map(({ id, kind }) => [id, kind]));
  for (const { view, entrantId, openingId } of FIRST_STEPS) {
    expect(VIEW_NAMES).toContain(view);
    if (entrantId) expect(['blank', 'tool']).toContain(kinds.get(entrantId));
    if (openingId) expect(kinds.get(openingId)).toBe('opening');
  }
  const steps = entryMatrix(family);
  let step = steps.next();
  while (!step.done) step = steps.next();
  const matrix = step.value;
  const entered = (id: string) =>
    matrix.fits[matrix.profiles.indexOf(id)].filter(({ verdict }) => verdict !== 'blocked').length;
  expect(matrix.openings).toHaveLength(3);
  expect([entered('heron-blank'), entered('reed-group-blank'), entered('strip-06')]).toEqual([1, 2, 3]);
});

test('words are found by their name and by their meaning; heads without one are left out', () => {
  expect(seekWords('  ')).toEqual(WORDS);
  expect(seekWords('MACS').flatMap(({ words }) => words.map(([word]) => word))).toEqual(['MACS']);
  expect(seekWords('springs').map(({ head }) => head)).toEqual(['Answers']);
  expect(seekWords('no such word')).toEqual([]);
});

test('no word and no shortcut of one place is told twice', () => {
  const words = WORDS.flatMap(({ words }) => words.map(([word]) => word));
  expect(new Set(words).size).toBe(words.length);
  for (const { keys } of KEYS) expect(new Set(keys.map(([key]) => key)).size).toBe(keys.length);
});
