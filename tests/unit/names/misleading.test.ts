import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { NameEntry } from '../../../src/family/name-entry.ts';
import { changeFamily } from '../../../src/interchange/json/change-family.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { renameIn } from '../../../src/interchange/json/rename.ts';
import { misleadingNames } from '../../../src/names/misleading.ts';
import { registerOf } from '../../../src/names/register.ts';
import { demoKnowledge } from '../../kit/demo-knowledge.ts';
import { familyOf, knownAs, named, sectionOf } from '../../kit/named-family.ts';

const THREE = [...sectionOf('Heron', 1), ...sectionOf('Smew', 2), ...sectionOf('Bittern', 3)];

/** Kinds and texts of what misleads in a family of three sections with some names. */
function found(names: readonly NameEntry[], profiles = THREE, enters?: Parameters<typeof knownAs>[1]) {
  return misleadingNames(knownAs(familyOf(profiles, names), enters)).map(({ kind, texts }) => [kind, ...texts]);
}

describe('joined names', () => {
  const smew = (text: string): NameEntry => ({ text, kind: 'section', section: 'Smew', scheme: 'List' });

  it.each([
    'Heron-Bittern',
    'BitternHeron',
    'Heron and Bittern',
    'HerBit',
    'Bit-Her',
    'HB',
    'B-H',
    'Heron/Bittern blank',
  ])('%s for the section between', (text) => expect(found([smew(text)])).toEqual([['joined', text]]));

  it.each(['Smew', 'S', 'H', 'HX', 'Hermit', 'Heronry', 'Bit', 'HB 12', 'Middle section'])('not %s', (text) =>
    expect(found([smew(text)])).toEqual([]),
  );

  it('tells which of the two it does enter, and gives the name of the section', () => {
    const half = knownAs(
      familyOf(THREE, [smew('HB')]),
      (entrant, opening) => entrant.section === opening.section || opening.section === 'Heron',
    );
    expect(misleadingNames(half)).toMatchObject([
      {
        kind: 'joined',
        words: expect.stringContaining('only Heron'),
        renames: [{ target: { of: 'register', index: 0 }, to: 'Smew' }],
      },
    ]);
  });

  it('is told of no name that tells the truth, and of none that is not judged yet', () => {
    expect(found([smew('HB')], THREE, (e, o) => e.section === o.section || e.section === 'Smew')).toEqual([]);
    expect(found([smew('HB')], THREE, () => undefined)).toEqual([]);
  });

  it('is told of a section that is called so itself, and of letters', () => {
    const letters = [...sectionOf('A', 1), ...sectionOf('AB', 2), ...sectionOf('B', 3), ...sectionOf('C', 4)];
    const [told, ...more] = misleadingNames(knownAs(familyOf(letters)));
    expect(told).toMatchObject({
      kind: 'joined',
      texts: ['AB'],
      renames: [{ target: { of: 'section', section: 'AB' } }],
    });
    expect(more).toEqual([]);
  });
});

describe('lengths and their order', () => {
  const blank = (text: string, chambers: number, section = 'Heron'): NameEntry => ({
    text,
    kind: 'blank',
    section,
    chambers,
    scheme: 'List',
  });

  it('two numbers of one section look like two sections', () => {
    expect(found([blank('K 10', 5), blank('K 11', 6)])).toEqual([['lengths', 'K 10', 'K 11']]);
    expect(found([blank('K 15', 5), blank('K 16', 6)])).toEqual([['lengths', 'K 15', 'K 16']]);
    expect(found([blank('Adder', 5), blank('Viper', 6)])).toEqual([['lengths', 'Adder', 'Viper']]);
  });

  it.each([
    [[blank('K 10-5', 5), blank('K 10-6', 6)]],
    [[blank('Heron short', 5), blank('Heron long', 6)]],
    [[blank('K 10, five chambers', 5), blank('K 10, six chambers', 6)]],
    [[blank('K 10 (5)', 5), blank('K 10 (6)', 6)]],
    [[blank('K 10', 5), blank('K 20', 6, 'Bittern')]],
    [[blank('K 10', 5), blank('K 12', 5)]],
  ])('%# is plain', (names) => expect(found(names)).toEqual([]));

  it('two numbers of one section without a length: nothing tells what sets them apart', () => {
    const bare = (text: string, section = 'Heron'): NameEntry => ({ text, kind: 'blank', section, scheme: 'List' });
    expect(found([bare('K 55'), bare('K 56')])).toEqual([['lengths', 'K 55', 'K 56']]);
    expect(found([bare('K 55'), bare('K 56', 'Bittern')])).toEqual([]);
    expect(found([bare('K 55'), { ...bare('K 56'), supersededBy: 'K 55' }])).toEqual([]);
    expect(found([bare('K 55'), { ...bare('K 56'), scheme: 'Other list' }])).toEqual([]);
  });

  it('the higher number is the shorter blank', () => {
    const told = misleadingNames(knownAs(familyOf(THREE, [blank('K 11', 5), blank('K 10', 6)])));
    expect(told.map(({ kind }) => kind)).toEqual(['lengths', 'order']);
    expect(told[1].renames.map(({ to }) => to)).toEqual(told[0].renames.map(({ to }) => to));
    expect(told[0].renames.map(({ to }) => to)).toEqual(['K 10-5', 'K 10-6']);
  });
});

describe('clashes', () => {
  it('one text for different things in two lists', () => {
    const one: NameEntry = { text: 'K 7', kind: 'blank', section: 'Heron', scheme: 'List' };
    const two: NameEntry = { text: 'k-7', kind: 'keyway', section: 'Smew', scheme: 'Book' };
    expect(found([one, two])).toEqual([['two schemes', 'K 7']]);
    expect(found([one, { ...two, section: 'Heron' }])).toEqual([]);
    expect(found([one, { ...two, supersededBy: 'Smew' }])).toEqual([]);
    expect(found([{ ...one, text: 'Smew' }]).map(([kind]) => kind)).toContain('two schemes');
  });

  it('two sections whose names are written alike, and two things of one name', () => {
    expect(found([], [...THREE, ...sectionOf('HÉRON', 9)])).toContainEqual(['same section name', 'Heron', 'HÉRON']);
    const twice = [
      ...THREE,
      named('tool', 'Pick', undefined, { shape: 7 }),
      named('tool', 'pick', undefined, { shape: 8 }),
    ];
    expect(found([], twice)).toEqual([['same section name', 'Pick', 'pick']]);
  });

  it('a blank that is named like the keyway of another section', () => {
    const foreign = [...THREE, named('blank', 'Bittern blank B', 'Smew', { shape: 12 })];
    expect(found([], foreign)).toEqual([]);
    const like = [
      ...THREE.filter(({ name }) => name !== 'Bittern blank'),
      named('blank', 'Bittern blank', 'Smew', { shape: 12 }),
    ];
    expect(found([], like)).toEqual([['foreign keyway', 'Bittern blank']]);
  });
});

describe('look-alikes', () => {
  const blank = (text: string): NameEntry => ({ text, kind: 'blank', section: 'Heron', scheme: 'List' });

  it.each([
    ['K 10', 'K 1O'],
    ['KI 7', 'Kl 7'],
    ['KS 4', 'K5 4'],
    // The first begins with a Cyrillic letter.
    ['\u041a 10', 'K 10'],
    ['Fern', 'Fem'],
  ])('%s and %s', (a, b) =>
    expect(found([blank(a), { ...blank(b), section: 'Smew' }])).toEqual([['look-alike', a, b]]),
  );

  it('a letter alone among digits', () => {
    const told = misleadingNames(knownAs(familyOf(THREE, [blank('K 1O7'), { ...blank('7l'), section: 'Smew' }])));
    expect(told.map(({ renames }) => renames[0].to)).toEqual(['K 107', '71']);
  });

  it.each(['No 5', 'Oil 10', 'K 10', 'Model T4', 'Io', 'Silo 10b'])('not %s', (text) =>
    expect(found([blank(text)])).toEqual([]),
  );
});

describe('the demo family', () => {
  it('has each fault that was put into its lists, and no other', () => {
    const told = misleadingNames(demoKnowledge()).map(({ kind, texts }) => [kind, ...texts]);
    expect(told).toEqual([
      ['joined', 'HB'],
      ['joined', 'Bit-Plo'],
      ['lengths', 'PC 106', 'PC 105'],
      ['order', 'PC 106', 'PC 105'],
      ['two schemes', 'W-12'],
      ['look-alike', 'PC 14O'],
    ]);
  });

  it('without its lists has none: the names of its sections, blanks, keyways and tools are good', () => {
    const knowledge = demoKnowledge();
    expect(
      misleadingNames(
        knownAs({ ...knowledge.family, names: [] }, (e, o) => knowledge.fitOf(e.id, o.id)?.verdict !== 'blocked'),
      ),
    ).toEqual([]);
  });

  it('loses each fault by its own renames, without a new one, and all by all', () => {
    const read = readFamily(readFileSync('profiles-demo/polderwick.json', 'utf8'));
    if (!read.ok) throw new Error('the demo family is not sound');
    const { file } = read.document;
    const known = demoKnowledge();
    const told = misleadingNames(known);
    const toldAfter = (renames: Parameters<typeof renameIn>[1]) => {
      const changed = changeFamily(renameIn(file, renames));
      if (!changed.ok) throw new Error(JSON.stringify(changed.faults));
      const { family } = changed.document;
      return misleadingNames({ ...known, family, register: registerOf(family) });
    };
    const wordsOf = (names: readonly { words: string }[]) => names.map(({ words }) => words);
    for (const name of told) {
      const left = wordsOf(toldAfter(name.renames));
      expect(left).not.toContain(name.words);
      expect(wordsOf(told)).toEqual(expect.arrayContaining(left));
    }
    expect(toldAfter(told.flatMap(({ renames }) => renames))).toEqual([]);
  });
});
