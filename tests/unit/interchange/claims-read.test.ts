import { describe, expect, test } from 'vitest';
import { claimMark } from '../../../src/interchange/csv/claim-marks.ts';
import { looksLikeClaims, readClaims } from '../../../src/interchange/csv/read-claims.ts';
import { writeClaims, writeClaimsReport } from '../../../src/interchange/csv/write-claims.ts';

/** What is read, each claim in a line; or the faults. */
function linesOf(text: string, options = {}): string[] {
  const read = readClaims(text, options);
  if (!read.ok) return read.faults.map(({ path, what }) => `${path} ${what}`);
  return read.claims.map(({ blank, opening, enters, by, note }) =>
    [blank, enters ? '+' : '-', opening, ...(by ? [`by ${by}`] : []), ...(note ? [`(${note})`] : [])].join(' '),
  );
}

function faultsOf(text: string): string[] {
  return readClaims(text).faults.map(({ path, what, cure }) => `${path}: ${what}. ${cure}`);
}

describe('a list', () => {
  const EXPECTED = ["Heron + Heron keyway by Porter's chart (old)", 'Smew - Heron keyway'];
  test.each([
    ['commas', "blank,keyway,enters,source,note\nHeron,Heron keyway,yes,Porter's chart,old\nSmew,Heron keyway,no,,\n"],
    ['semicolons', "Blank;Keyway;Enters?;By;Note\r\nHeron;Heron keyway;x;Porter's chart;old\r\nSmew;Heron keyway;-;;"],
    [
      'a spreadsheet',
      "blank\topening\tgoes in\twho says so\tremark\nHeron\tHeron keyway\tTRUE\tPorter's chart\told\nSmew\tHeron keyway\tFALSE",
    ],
    [
      'another order',
      "note|source|enters|opening|tool\nold|Porter's chart|1|Heron keyway|Heron\n||0|Heron keyway|Smew\n",
    ],
    [
      'German words',
      "Rohling;Keyway;passt;Quelle;Notiz\nHeron;Heron keyway;ja;Porter's chart;old\nSmew;Heron keyway;nein;;\n",
    ],
    ['no header', "Heron,Heron keyway,yes,Porter's chart,old\nSmew,Heron keyway,blocked\n"],
    [
      'what the program of a spreadsheet says first',
      "sep=;\nblank;keyway;enters;by;note\nHeron;Heron keyway;ENTERS;Porter's chart;old\nSmew;Heron keyway;does not enter;;\n",
    ],
    [
      'a mark of byte order and empty rows',
      "\uFEFFblank,keyway,enters,by,note\n\nHeron , Heron keyway,✓,Porter's chart,old\n,,,,\nSmew,Heron keyway,✗,,\n\n",
    ],
  ])('with %s', (_, text) => {
    expect(linesOf(text)).toEqual(EXPECTED);
  });

  test('keeps commas and quotes in quoted names', () => {
    expect(linesOf('blank,keyway,enters\n"Heron blank, five chambers","the ""old"" keyway",yes\n')).toEqual([
      'Heron blank, five chambers + the "old" keyway',
    ]);
  });

  test('says whether it names its sources', () => {
    expect(readClaims('blank,keyway,enters,by\na,b,yes,me\n')).toMatchObject({ form: 'list', namesSource: true });
    expect(readClaims('blank,keyway,enters,by\na,b,yes,\n')).toMatchObject({ namesSource: false });
  });

  test('leaves out rows that say nothing clear, each by row, column and cure', () => {
    const text =
      'blank,keyway,enters\nHeron,Heron,maybe\nHeron,Smew,\n,Smew,no\nHeron,,no\nHeron,Knot,=1+1\nHeron,Ruff,×\nSmew,Smew,yes\n';
    expect(linesOf(text)).toEqual(['Smew + Smew']);
    const marks = 'Write yes or no, x or -, 1 or 0; leave the cell empty where nothing is said.';
    expect(faultsOf(text)).toEqual([
      `row 2, column 3 (enters): "maybe" says neither that it enters nor that it does not. ${marks}`,
      'row 3, column 3 (enters): is empty. Write yes or no.',
      'row 4, column 1 (blank): is empty. Give the name of a blank.',
      'row 5, column 2 (keyway): is empty. Give the name of a keyway.',
      'row 6, column 3 (enters): "=1+1" is a formula, which is not worked out here. Copy the values instead of the formulas.',
      `row 7, column 3 (enters): "×" may mean either. ${marks}`,
    ]);
  });

  test('that lacks a column or has one twice is refused by its header', () => {
    expect(faultsOf('blank,enters\nHeron,yes\n')).toEqual([
      'row 1: has no column “keyway”. Name the columns blank, keyway and enters; source and note may follow.',
    ]);
    expect(faultsOf('blank,keyway,enters,fits\nHeron,Heron,yes,no\n')).toEqual([
      'row 1: has two columns for “enters”. Leave one of them out.',
    ]);
  });
});

describe('a matrix', () => {
  test('of two keyways with an unclear mark is no list: the mark is told, and no keyway is made of it', () => {
    for (const corner of ['', 'blank'])
      expect(readClaims(`${corner},A,B\nHeron,✓ tight,✗\n`)).toMatchObject({
        ok: true,
        form: 'matrix',
        claims: [{ blank: 'Heron', opening: 'B', enters: false }],
        leftOut: 1,
        faults: [{ path: 'row 2, column 2' }],
      });
  });

  const EXPECTED = ['Heron + Heron', 'Heron - Smew', 'Smew + Smew'];
  test.each([
    ['commas', ',Heron,Smew\nHeron,x,-\nSmew,,x\n'],
    ['semicolons and a corner', 'blank \\ keyway;Heron;Smew\nHeron;yes;no\nSmew;;yes\n'],
    ['a spreadsheet', 'Blank\tHeron\tSmew\t\nHeron\t1\t0\t\nSmew\t\t1\t\n'],
    ['words', ',Heron,Smew\nHeron,enters,blocked\nSmew,,tight\n'],
  ])('with %s', (_, text) => {
    expect(readClaims(text)).toMatchObject({ ok: true, form: 'matrix' });
    expect(linesOf(text)).toEqual(EXPECTED);
  });

  test('with keyways down and blanks across is read so where told', () => {
    expect(linesOf(',Heron,Smew\nKnot,x,-\n', { swapped: true })).toEqual(['Heron + Knot', 'Smew - Knot']);
  });

  test('with a keyway called X or 1 is still one', () => {
    expect(linesOf('blank,X,Y,1\nHeron,x,-,x\nSmew,-,x,-\n')).toEqual([
      ...['Heron + X', 'Heron - Y', 'Heron + 1', 'Smew - X', 'Smew + Y', 'Smew - 1'],
    ]);
  });

  test('tells cells that are no marks and columns without a name', () => {
    const text = ',Heron,Smew,\nHeron,x,??,x\nSmew,-,x,\n';
    expect(linesOf(text)).toEqual(['Heron + Heron', 'Smew - Heron', 'Smew + Smew']);
    expect(faultsOf(text).map((line) => line.split('. ')[0])).toEqual([
      'row 2, column 3: "??" says neither that it enters nor that it does not',
      'row 2, column 4: stands in a column whose name is empty',
    ]);
  });
});

describe('hostile tables', () => {
  test.each([
    ['', 'table holds no claims'],
    ['\n\n , ,\n', 'table holds no claims'],
    ['good morning', 'table is neither a list of claims nor a matrix'],
    ['x,y\n0,0\n1,0\n1,1\n', 'table is neither a list of claims nor a matrix'],
    ['blank,keyway,enters\n', 'table says nothing of any pair'],
    ['blank,keyway,enters\nHeron,"Smew,yes\n', 'row 2 has a stray quotation mark'],
    ['blank,keyway,enters\nHe\0ron,Smew,yes\n', 'row 2 has characters that no table has'],
  ])('%j is refused', (text, fault) => {
    expect(linesOf(text)).toEqual([fault]);
  });

  test('names that are formulas stay text, in and out', () => {
    const claims = [{ blank: '=HYPERLINK("http://x")', opening: '+cmd|x', enters: true, by: '@me', note: '-1' }];
    const text = writeClaims(claims);
    for (const cell of text.split('\r\n')[1].split(',')) expect(cell).not.toMatch(/^"?[=+\-@]/);
    expect(readClaims(text)).toMatchObject({ claims });
    const report = writeClaimsReport([{ claim: claims[0], standing: 'confirmed', margin: '+0.05 mm', reason: '=1' }]);
    for (const cell of report.split('\r\n')[1].split(/,(?=["'\w])/)) expect(cell).not.toMatch(/^"?[=+\-@]/);
  });

  test('the report is a list of claims too', () => {
    const claim = { blank: 'Heron', opening: 'Smew', enters: false, by: 'me' };
    const report = writeClaimsReport([{ claim, standing: 'confirmed', margin: '0.2 mm too deep', reason: 'Blocked.' }]);
    expect(readClaims(report)).toMatchObject({ form: 'list', claims: [claim] });
  });

  test('50 MB are refused, a name of 10,000 letters by its row', () => {
    expect(linesOf('Heron,Smew,x\n'.repeat(4_000_000))).toEqual(['table is longer than 8 million characters']);
    expect(faultsOf(`blank,keyway,enters\n${'a'.repeat(10_000)},b,yes\n`)[0]).toContain(
      'row 2, column 1 (blank): is longer',
    );
  });

  test('a million separators, quotes and odd letters come to an end', () => {
    for (const text of [
      ','.repeat(1e6),
      '"'.repeat(1e6),
      '\t\n'.repeat(5e5),
      'a,b,'.repeat(2e5),
      '\u202E,x,\u0007\n'.repeat(1e5),
    ])
      expect(JSON.stringify(readClaims(text).faults)).not.toBe('');
  });

  test('no more than 20 faults are told, and how many there are', () => {
    const read = readClaims(`blank,keyway,enters\n${'a,b,maybe\n'.repeat(500)}`);
    expect(read).toMatchObject({ ok: true, leftOut: 500, claims: [] });
    expect(read.faults).toHaveLength(20);
  });
});

test('a matrix of 200 by 200 is read', () => {
  const names = Array.from({ length: 200 }, (_, i) => `Section ${i}`);
  const rows = names.map((name, i) => [name, ...names.map((_, k) => (i === k ? 'x' : '-'))].join('\t'));
  const read = readClaims([['', ...names].join('\t'), ...rows].join('\n'));
  expect(read).toMatchObject({ ok: true, form: 'matrix', leftOut: 0 });
  expect(read.ok && read.claims.length).toBe(40_000);
});

describe('what a cell says', () => {
  test.each(['yes', 'Y', 'JA', 'x', 'X', '1', 'true', '+', 'enters', 'goes  in', '✓', "'+"])('%s: enters', (cell) => {
    expect(claimMark(cell).says).toBe('enters');
  });
  test.each(['no', 'Nein', '0', 'false', '-', '–', '−', 'blocked', "doesn't enter", 'does not enter', '✗', "'-"])(
    '%s: stays out',
    (cell) => {
      expect(claimMark(cell).says).toBe('stays out');
    },
  );
  test.each(['', '  ', '\t'])('%j: nothing', (cell) => {
    expect(claimMark(cell).says).toBe('nothing');
  });
  test.each(['maybe', '2', '=TRUE', '×', '?', 'x'.repeat(50)])('%s: unclear', (cell) => {
    expect(claimMark(cell).says).toBe('unclear');
  });
});

describe('a text is known as claims', () => {
  test.each([
    ['blank,keyway,enters\nHeron,Smew,no\n', true],
    [',Heron,Smew\nHeron,x,-\nSmew,-,x\n', true],
    ['Heron blank,Heron keyway,yes\nSmew blank,Heron keyway,no\n', true],
    ['name,x,y\nHeron,0,0\nHeron,1,0\nHeron,1,1\n', false],
    ['Heron,0,0\nHeron,1,0\nHeron,1,1\nHeron,0,1\n', false],
    ['0,0\n1,0\n1,1\n0,1\n', false],
    ['x\ty\n0\t0\n1\t0\n', false],
    ['text,kind,section\nK 105,blank,Heron\n', false],
    ['', false],
  ])('%j: %s', (text, expected) => {
    expect(looksLikeClaims(text)).toBe(expected);
  });
});
