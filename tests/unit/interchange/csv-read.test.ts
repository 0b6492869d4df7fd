import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readPoints } from '../../../src/interchange/csv/read.ts';
import { CSV_TABLES, csvTable } from '../../cases/csv-tables.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';
import { expectDrawing } from './expect-drawing.ts';

function read(text: string, options = {}) {
  const result = readPoints(text, options);
  if (!result.ok) throw new Error(result.faults.map(({ path, what }) => `${path}: ${what}`).join('\n'));
  return result.drawing;
}

function faultsOf(text: string): string {
  const result = readPoints(text);
  return result.ok ? '' : result.faults.map(({ path, what, cure }) => `${path}: ${what}. ${cure}`).join('\n');
}

describe('the corpus of tables', () => {
  it.each(CSV_TABLES.map((table) => [table.file, table] as const))('%s', (_, table) => {
    expectDrawing(read(csvTable(table.file)), table);
  });

  it('leaves no table out', () => {
    const files = readdirSync(new URL('../../cases/drawings/csv/', import.meta.url));
    expect(CSV_TABLES.map(({ file }) => file).sort()).toEqual(files.sort());
  });

  it('takes inch signs for units, not for quotes', () => {
    const { paths, nmPerUnit } = read('x,y\n0",0"\n0.08",0"\n0.08",0.32"\n');
    expect(nmPerUnit).toBe(25.4e6);
    expect(paths[0].vertices[2]).toEqual({ x: 2_032_000, y: 8_128_000 });
    expect(read('0" ,0"\n0.08",0"\n0.08",0.32"\n').nmPerUnit).toBe(25.4e6);
  });

  it('takes the unit of the caller before its own', () => {
    expect(read(csvTable('header-inches.csv'), { nmPerUnit: 1e6 }).paths[0].vertices[2]).toEqual({ x: 8e4, y: 3.2e5 });
  });
});

describe('cells that are no numbers', () => {
  const withCell = (cell: string, separator = ';') =>
    faultsOf(['0;0', '2;0', `2;${cell}`, '0;8.4'].join('\n').replaceAll(';', separator));

  it.each([
    ['=1+1', /row 3: y "=1\+1" is a formula, which is not worked out here\. Copy the values/],
    ['=HYPERLINK(A1)', /row 3: y "=HYPERLINK\(A1\)" is a formula/],
    ['+cmd|x', /row 3: y "\+cmd\|x" is a formula/],
    ['-cmd', /row 3: y "-cmd" is a formula/],
    ['@SUM(A1:A9)', /row 3: y "@SUM\(A1:A9\)" is a formula/],
    ['#REF!', /row 3: y "#REF!" is an error of the spreadsheet/],
    ['NaN', /row 3: y "NaN" is not a number/],
    ['Infinity', /row 3: y "Infinity" is not a number/],
    ['1e400', /row 3: y "1e400" is too large/],
    ['0x1F', /row 3: y "0x1F" is a hexadecimal number/],
    ['1.234,5', /row 3: y "1\.234,5" has thousands separators/],
    ['1,234.5', /row 3: y "1,234\.5" has thousands separators/],
    ["1'234.5", /row 3: y "1'234\.5" has thousands separators/],
    ['1 234', /row 3: y "1 234" has thousands separators/],
    ['8,4', /row 4: y has a point where row 3 has a comma/],
    ['', /row 3: y is empty/],
    ['8.4.1', /row 3: y "8\.4\.1" is not a number/],
    ['8.4 ft lb', /row 3: y "8\.4 ft lb" is not a number/],
    ['8.4m', /row 3: y "8\.4m" is not a number/],
    ['1e300', /row 1: the outline that begins here reaches a thousand kilometres out/],
  ])('%s', (cell, message) => {
    expect(withCell(cell)).toMatch(message);
  });

  it('in the first row too, where they are neither header nor name', () => {
    expect(faultsOf('=1+1,2\n3,4\n5,6\n')).toMatch(/row 1: x "=1\+1" is a formula/);
    expect(faultsOf('=1+1,2,0\n3,4,0\n5,6,0\n')).toMatch(/row 1: x "=1\+1" is a formula/);
    expect(faultsOf('NaN,2,0\n3,4,0\n5,6,0\n')).toMatch(/row 1: x "NaN" is not a number/);
    expect(faultsOf('=cmd()\n0,0\n2,0\n2,2\n')).toMatch(/row 1/);
  });
});

describe('rows that do not fit', () => {
  it.each([
    ['a third cell', '0,0\n2,0,5\n2,8', /row 2: has 3 cells, the rows before have 2/],
    ['decimal commas between commas', '0,0,0,0\n2,5,0,0', /row 1: has 4 numbers, must be x and y.*semicolons/],
    ['one number', '0\n2\n3', /row 1: has 1 number, must be/],
    ['a missing y', 'x,y\n0,0\n2\n2,8', /row 3: y is empty/],
    ['a word in the middle', '0,0\n2,0\nhello\n2,8', /row 3: x "hello" is not a number/],
    ['no y in the header', 'x,z\n1,2\n', /row 1: has no column y\. Name the columns/],
    ['x twice', 'x,y,x,y\n1,2,3,4\n', /row 1: has more than one column for x/],
    ['two units', 'x (mm),y (in)\n1,2\n', /row 1: names two units/],
    ['an unknown unit', 'x (furlong),y (furlong)\n1,2\n', /row 1: names the unit "furlong"/],
    ['another unit below', 'x (mm),y (mm)\n0,0\n1,0\n1,1\nx (in),y (in)\n0,0\n1,0\n1,1', /row 5: names another unit/],
    ['units that change', 'x,y\n0mm,0\n2in,0\n2,8', /row 3: x is in in, row 2 in mm/],
    ['words only', 'Dear all,\nplease find my points.\n', /row 1: has no number and no column called x or y/],
    [
      'a bulge that is a count',
      '1,0,0\n2,2,200\n3,2,8',
      /row 2: bulge is 200, must be from -100 to 100.*name the columns/,
    ],
    ['two points', '0,0\n2,0\n\n0,0\n1,0\n1,1', /row 1: the outline that begins here has 2 points/],
    ['an open quote', '"0,0\n2,0\n2,8', /has a stray quotation mark/],
    ['nothing', '', /table: holds no points/],
    ['a header only', 'x,y\n', /table: holds no points/],
    ['comments only', '# nothing here\n', /table: holds no points/],
  ])('%s', (_, text, message) => {
    expect(faultsOf(text)).toMatch(message);
  });

  it('tells every fault, and at most twenty', () => {
    expect(faultsOf('0,0\nx1,0\n2,y2\n').split('\n')).toHaveLength(2);
    expect(faultsOf(`0,0\n${'a1,b2\n'.repeat(500)}`).split('\n')).toHaveLength(20);
  });

  it('notes a name that comes a second time', () => {
    const rows = ['a,0,0', 'a,1,0', 'a,1,1', 'b,5,0', 'b,6,0', 'b,6,1', 'a,8,0', 'a,9,0', 'a,9,1'];
    const { paths, notes } = read(`name,x,y\n${rows.join('\n')}`);
    expect(paths.map(({ label }) => label)).toEqual(['a', 'b', 'a']);
    expect(notes.map(({ what }) => what)).toEqual(['"a" comes a second time, as an outline of its own']);
  });
});

describe('tables without end', () => {
  it('refuses 50 million characters at once', () => {
    const text = '0,0\n'.repeat(12_500_000);
    const start = process.cpuUsage();
    expect(faultsOf(text)).toMatch(/longer than 5 million characters/);
    expect(process.cpuUsage(start).user / 1e3).toBeLessThan(500);
  });

  it('reads a hundred thousand rows, or a row of a hundred thousand cells', () => {
    const rows = Array.from({ length: 100_000 }, (_, i) => `${Math.cos(i / 16_000)},${Math.sin(i / 16_000)}`);
    expect(read(rows.join('\n')).paths[0].vertices).toHaveLength(100_000);
    expect(faultsOf('1,'.repeat(100_000))).toMatch(/row 1: has 100000 numbers/);
  });

  it('reads what has a run of blanks or digits without end at once', () => {
    const blanks = ' '.repeat(200_000);
    const began = process.cpuUsage();
    for (const text of [
      `x${blanks}!,y\n1,2`,
      `x;y${blanks}z!\n1;2`,
      `a${blanks}b${blanks}c\n1,2\n1,3\n2,2`,
      `#units${blanks}${blanks}?\n1,2\n2,3\n4,5`,
      `1${blanks}x\n1 2`,
      `${'1'.repeat(200_000)}x,1`,
    ])
      readPoints(text);
    // Time of this process alone: a busy machine must not fail it.
    expect(process.cpuUsage(began).user / 1e3).toBeLessThan(10_000);
    expect(read('x  (mm)  y   (mm)\n0 0\n2 0\n2 8').paths[0].vertices).toHaveLength(3);
    expect(read('# units = in\n0,0\n2,0\n2,8').nmPerUnit).toBe(25.4e6);
  });

  it('never throws on spoilt text, and reads finite numbers only', () => {
    const random = randomNumbers(3);
    const signs = [
      '0',
      '1',
      '8',
      '.',
      ',',
      ';',
      '\t',
      ' ',
      '\n',
      '\n',
      '-',
      'e',
      '"',
      '#',
      'x',
      'y',
      '=',
      '|',
      '\r',
      '\uFEFF',
    ];
    for (let run = 0; run < 3_000; run += 1) {
      const text = Array.from({ length: random.whole(0, 60) }, () => random.pick(signs)).join('');
      const result = readPoints(text);
      if (!result.ok) expect(result.faults.length).toBeGreaterThan(0);
      else for (const { x, y } of result.drawing.paths.flatMap(({ vertices }) => vertices)) expect(x + y).not.toBeNaN();
    }
  });
});
