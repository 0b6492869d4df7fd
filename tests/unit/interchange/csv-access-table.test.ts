import { expect, test } from 'vitest';
import { readAccessTable } from '../../../src/interchange/csv/read-access-table.ts';

function read(text: string) {
  const got = readAccessTable(text);
  if (!got.ok) throw new Error(JSON.stringify(got.faults));
  return got.read;
}

test.each([
  ['commas', '1,0,*\n0,1,1\n'],
  ['semicolons', '1;0;*\r\n0;1;1'],
  ['tabs, spaces and empty lines', '\n 1\t0 \t*\n\n0\t1\t1\n\n'],
  ['a mark of byte order', '\uFEFF1,0,*\n0,1,1'],
  ['a first line that says what parts the cells', 'sep=;\n1;0;*\n0;1;1'],
])('a bare matrix with %s is counted', (_, text) => {
  expect(read(text)).toEqual({
    table: [
      [1, 0, null],
      [0, 1, 1],
    ],
    sections: ['section 1', 'section 2'],
    blanks: ['blank 1', 'blank 2', 'blank 3'],
  });
});

test.each([
  ['with a corner', 'areas,x,y\nHeron,1,0\nRail,0,1', ['x', 'y'], ['Heron', 'Rail']],
  ['without a corner', 'x,y\nHeron,1,0\nRail,0,1', ['x', 'y'], ['Heron', 'Rail']],
  ['an empty corner and counted blanks', ',1,2\nHeron,1,0\nRail,0,1', ['1', '2'], ['Heron', 'Rail']],
  ['names of blanks only', 'x,y\n1,0\n0,1', ['x', 'y'], ['section 1', 'section 2']],
  ['names of sections only', '"Heron, old",1,0\nRail,0,1', ['blank 1', 'blank 2'], ['Heron, old', 'Rail']],
])('names are taken %s', (_, text, blanks, sections) => {
  expect(read(text)).toEqual({
    table: [
      [1, 0],
      [0, 1],
    ],
    sections,
    blanks,
  });
});

test.each([
  ['', 'table', 'is empty'],
  ['x,y', 'row 1', 'names blanks, and no section follows'],
  ['1,0\n1', 'row 2', 'has 1 mark, must have 2'],
  ['1,0\n1,0,1', 'row 2', 'has 3 marks, must have 2'],
  ['a,1,0\nb,1,yes', 'row 2, column 3', 'is "yes", which is no mark'],
  ['a,1,0\nb,1,', 'row 2, column 3', 'is "", which is no mark'],
  ['a,1,0\na,1,1', 'row 2, column 1', 'has the name "a" again'],
  ['1,x\n0,1', 'row 1, column 2', 'is "x", which is no mark'],
  ['Heron,1,yes\nRail,0,1', 'row 1, column 3', 'is "yes", which is no mark'],
  ['k,x,x\na,1,0', 'row 1, column 3', 'has the name "x" again'],
  ['a,1\n,0', 'row 2, column 1', 'has no name'],
  ['1,0\n"1,0', 'row 2', 'has a stray quotation mark'],
  [Array(300).fill('1,0').join('\n'), 'table', 'has 300 sections and 2 blanks, more than 256 and 640'],
])('%j is refused at %s', (text, path, what) => {
  const got = readAccessTable(text);
  expect(got.ok).toBe(false);
  if (!got.ok)
    expect(got.faults).toContainEqual(expect.objectContaining({ path, what, cure: expect.stringMatching(/\.$/) }));
});
