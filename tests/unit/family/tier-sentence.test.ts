import { describe, expect, test } from 'vitest';
import type { EntryTable } from '../../../src/family/entry-table.ts';
import { nameList } from '../../../src/family/name-list.ts';
import { sameReachSentence, tierNames, tierSentence } from '../../../src/family/tier-sentence.ts';
import { makeRing } from '../../../src/geom/ring.ts';
import type { Profile } from '../../../src/profile/profile.ts';
import { largeFamily } from '../../cases/large-families.ts';

const SECTIONS = ['Heron', 'Smew', 'Bittern', 'Ruff', 'Plover', 'Knot', 'Curlew', 'Rail', 'Avocet', 'Dunlin'];
const nameOf = (id: string) => (id === 'blank' ? 'Reed group blank' : id);

/** A row of the ten sections: 1 goes in, 0 does not, ? is not judged. */
function rowOf(cells: string, openings = SECTIONS): EntryTable {
  const row = [...cells].map((cell) => (cell === '?' ? null : cell === '1'));
  return { entrants: ['blank'], openings: openings.slice(0, row.length), goesIn: [row] };
}

const say = (cells: string, blockedBy?: (entrant: string, opening: string) => string) =>
  tierSentence(rowOf(cells), 'blank', { nameOf, ...(blockedBy && { blockedBy }) });

describe('a sentence about what a blank enters', () => {
  test('names what it enters and what blocks it elsewhere, keyways with the same part together', () => {
    const parts: Record<string, string> = { Ruff: 'left ward', Plover: 'right ward', Knot: 'left ward' };
    expect(say('111000', (_, opening) => parts[opening] ?? '')).toBe(
      'The Reed group blank enters 3 of 6 keyways: Heron, Smew and Bittern; it is blocked in Ruff and Knot by the left ward, and in Plover by the right ward.',
    );
  });

  test('counts the keyways of which the part is not known, names the only one', () => {
    const left = (_: string, opening: string) => (opening === 'Ruff' ? 'left ward' : '');
    expect(say('1110000000', left)).toContain('blocked in Ruff by the left ward, and in 6 more.');
    expect(say('11100', left)).toContain('blocked in Ruff by the left ward, and in Plover.');
    expect(say('11100')).toContain('it is blocked in Ruff and Plover.');
  });

  test('tells the first four keyways of one part and counts the rest', () => {
    expect(say('1110000000', () => 'left ward')).toContain('in Ruff, Plover, Knot, Curlew and 3 more by the left ward');
  });

  test('tells the first three parts and counts the rest', () => {
    expect(say('1110000000', (_, opening) => `ward at ${opening}`)).toBe(
      'The Reed group blank enters 3 of 10 keyways: Heron, Smew and Bittern; it is blocked in Ruff by the ward at Ruff, in Plover by the ward at Plover, in Knot by the ward at Knot, and in 4 more.',
    );
  });

  test('of all, of none, of the only one', () => {
    expect(say('1111111111')).toBe('The Reed group blank enters all 10 keyways.');
    expect(say('111')).toBe('The Reed group blank enters all 3 keyways: Heron, Smew and Bittern.');
    expect(say('00')).toBe('The Reed group blank enters none of 2 keyways; it is blocked in Heron and Smew.');
    expect(say('1')).toBe('The Reed group blank enters the only keyway, Heron.');
    expect(say('')).toBe('The Reed group blank has no keyway to enter.');
  });

  test('says what is not judged yet', () => {
    expect(say('1??')).toBe('The Reed group blank enters 1 of 3 keyways: Heron; 2 keyways are not judged yet.');
    expect(say('0?')).toBe(
      'The Reed group blank enters none so far; it is blocked in Heron; 1 keyway is not judged yet.',
    );
    expect(say('??')).toBe('The Reed group blank has not been judged; judging is under way.');
  });

  test('stays short with 200 keyways', () => {
    const { family, goesIn } = largeFamily(200, 200);
    const entrants = family.profiles.filter(({ kind }) => kind === 'blank').map(({ id }) => id);
    const openings = family.profiles.filter(({ kind }) => kind === 'opening').map(({ id }) => id);
    const table = { entrants, openings, goesIn };
    const words = {
      nameOf: tierNames(family),
      blockedBy: (_: string, id: string) => (id.length % 2 ? 'left ward' : 'right ward'),
    };
    const sentences = entrants.map((id) => tierSentence(table, id, words));
    expect(Math.max(...sentences.map((text) => text.length))).toBeLessThan(420);
    expect(sentences[0]).toContain('enters 1 of 200 keyways: Heron; it is blocked in');
    expect(sentences[0]).toMatch(/and \d+ more by the/);
    expect(sentences[199]).toBe('The All-section blank enters all 200 keyways.');
  });

  test('takes a name as it is: with an article, or with a comma', () => {
    const named = (name: string) => tierSentence(rowOf('1'), 'blank', { nameOf: (id) => (id === 'blank' ? name : id) });
    expect(named('the master')).toBe('The master enters the only keyway, Heron.');
    expect(named('Heron blank, five chambers')).toBe('The Heron blank, five chambers, enters the only keyway, Heron.');
  });

  test('of an entrant that is not there is empty', () => {
    expect(tierSentence(rowOf('1'), 'nobody', { nameOf })).toBe('');
  });
});

describe('names in a row', () => {
  test('are joined by "and", counted when there are many, parted by semicolons where they have commas', () => {
    expect(nameList(['Heron'])).toBe('Heron');
    expect(nameList(['Heron', 'Smew'])).toBe('Heron and Smew');
    expect(nameList(SECTIONS)).toBe('Heron, Smew, Bittern, Ruff, Plover, Knot, Curlew and 3 more');
    expect(nameList(SECTIONS.slice(0, 8))).toBe('Heron, Smew, Bittern, Ruff, Plover, Knot, Curlew and Rail');
    expect(nameList(['Heron, five', 'Heron, six'])).toBe('Heron, five; and Heron, six');
    expect(nameList(['Heron, five', 'Heron, six', 'Smew'])).toBe('Heron, five; Heron, six; and Smew');
  });
});

describe('a sentence about blanks with the same reach', () => {
  const profile = (name: string, over: Partial<Profile> & { width?: number; at?: number } = {}): Profile => {
    const { width = 2, at = 0, ...rest } = over;
    const corners = [
      { x: at, y: 0 },
      { x: at + width * 1e6, y: 0 },
      { x: at + width * 1e6, y: 8e6 },
      { x: at, y: 8e6 },
    ];
    const made = makeRing(corners);
    if (!made.ok) throw new Error('no outline');
    return { id: name, kind: 'blank', name, ring: made.ring, ...rest };
  };

  test('tells length, equal outlines and different ones apart', () => {
    const five = profile('Heron blank 5', { chambers: 5 });
    const six = profile('Heron blank 6', { chambers: 6, at: 3e6 });
    expect(sameReachSentence([five, six])).toBe(
      'Two blanks with the same reach: Heron blank 5 and Heron blank 6. They differ only in length.',
    );
    expect(sameReachSentence([five, profile('Copy', { chambers: 5 })])).toContain('Their outlines are equal.');
    const strip = profile('Strip', { kind: 'tool', width: 1 });
    expect(sameReachSentence([five, strip])).toBe(
      'A blank and a tool with the same reach: Heron blank 5 and Strip. Their outlines differ, but no keyway here tells them apart.',
    );
    expect(sameReachSentence([five, six, strip])).toContain('Two blanks and a tool');
    expect(sameReachSentence([five, six, strip])).toContain('Not all of their outlines are equal');
    expect(sameReachSentence([five])).toBe('');
  });
});
