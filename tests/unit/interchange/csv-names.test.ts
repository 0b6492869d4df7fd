import { expect, it } from 'vitest';
import { readNames, writeNames } from '../../../src/interchange/csv/read-names.ts';

function read(text: string) {
  const result = readNames(text);
  if (!result.ok) throw new Error(result.faults.map(({ path, what }) => `${path}: ${what}`).join('\n'));
  return result;
}

function faultsOf(text: string): string {
  const result = readNames(text);
  return result.ok ? '' : result.faults.map(({ path, what, cure }) => `${path}: ${what}. ${cure}`).join('\n');
}

it('reads a table as a spreadsheet copies it, with columns in any order', () => {
  const text = 'Kind\tName\tChambers\tSuperseded by\tSection\tScheme\r\nblank\tH-106\t6\tH-206\tHeron\told list\r\n';
  expect(read(text).names).toEqual([
    { text: 'H-106', kind: 'blank', section: 'Heron', scheme: 'old list', chambers: 6, supersededBy: 'H-206' },
  ]);
});

it('reads CSV with commas in quotes, semicolons, a stated separator, and no header', () => {
  expect(read('name,kind\n"Heron blank, five chambers",blank\n').names[0].text).toBe('Heron blank, five chambers');
  expect(read('name;kind;section\nHeron, the old;Key blank;Heron').names[0]).toEqual({
    text: 'Heron, the old',
    kind: 'blank',
    section: 'Heron',
  });
  expect(read('sep=|\nname|kind\nHeron|section').names).toEqual([{ text: 'Heron', kind: 'section' }]);
  expect(read('HN,series,Heron,chart,,\n').names).toEqual([
    { text: 'HN', kind: 'series', section: 'Heron', scheme: 'chart' },
  ]);
  // A name without a header, and with digits in front: a header it is not.
  expect(read('106\tblank\tHeron').names).toEqual([{ text: '106', kind: 'blank', section: 'Heron' }]);
});

it('keeps digits, signs and case of names as they are', () => {
  const names = ['007', '1e3', '#12', "O'Reed", '=A1', '-5', '+5', '@x', 'ÄÖ 10/6', '5,20', 'two  spaces'];
  const table = writeNames(names.map((text) => ({ text, kind: 'blank' })));
  expect(read(table).names.map(({ text }) => text)).toEqual(names);
});

it('writes every field so that it comes back', () => {
  const names = [
    {
      text: 'Heron "old", wide',
      kind: 'blank' as const,
      section: 'Heron',
      scheme: 'a; b',
      chambers: 5,
      supersededBy: 'H2',
    },
    { text: 'Snipe', kind: 'tool' as const, profile: 'strip-055', note: 'two\nlines' },
  ];
  expect(read(writeNames(names)).names).toEqual(names);
});

it('tells every fault by its row, and takes nothing', () => {
  const text = 'name,kind,chambers\nHeron,bird,5\n,blank,6\nRail,blank,six\nKnot,,\nRuff,blank,0';
  expect(faultsOf(text).split('\n')).toEqual([
    'row 2: "bird" is no kind of thing. Give keyway, section, blank, tool or series.',
    'row 3: has no name. Fill in the column name, or leave the row out.',
    'row 4: "six" is no number of chambers. Give a whole number from 1 to 12, or leave it empty.',
    'row 5: has no kind. Give keyway, section, blank, tool or series.',
    'row 6: "0" is no number of chambers. Give a whole number from 1 to 12, or leave it empty.',
  ]);
  expect(faultsOf('')).toMatch(/^table: is empty/);
  expect(faultsOf('name,kind')).toMatch(/^table: holds no names/);
  expect(faultsOf('name,kind,text\nA,blank,B')).toMatch(
    /^row 1: has more than one column that means the same as "name"/,
  );
  expect(faultsOf('name,kind\n"Heron,blank')).toMatch(/^row \d: has a stray quotation mark/);
  expect(faultsOf('A,blank,,,,,,,surplus')).toMatch(/^row 1: has 9 cells; without a header/);
  expect(faultsOf(`name,kind\n${'x'.repeat(201)},blank`)).toMatch(/^row 2: .* is longer than 200 characters/);
  expect(faultsOf(`name,kind\n${'x,\n'.repeat(500)}`).split('\n')).toHaveLength(20);
});

it('says what it left out', () => {
  const { names, notes } = read('name,kind,colour\nHeron,section,grey\n\nHeron,section,brown\n');
  expect(names).toHaveLength(1);
  expect(notes.map(({ path, what }) => `${path}: ${what}`)).toEqual([
    'row 1: columns not read: "colour"',
    'row 4: "Heron" stands above already',
  ]);
});
