import { describe, expect, it } from 'vitest';
import { readDxf } from '../../../src/interchange/dxf/read.ts';
import { dxfDrawing } from '../../cases/dxf-drawings.ts';
import { randomNumbers } from '../../cases/random-numbers.ts';

/** Pairs of a group code and its value as DXF lines. */
function dxf(...pairs: (string | number)[]): string {
  return `${pairs.join('\n')}\n`;
}

const RECTANGLE = dxf(0, 'LWPOLYLINE', 8, 0, 70, 1, 10, 0, 20, 0, 10, 2, 20, 0, 10, 2, 20, 8, 10, 0, 20, 8);

const drawing = (...entities: string[]) =>
  `${dxf(0, 'SECTION', 2, 'ENTITIES')}${entities.join('')}${dxf(0, 'ENDSEC', 0, 'EOF')}`;

const withBlocks = (blocks: string, entities: string) =>
  `${dxf(0, 'SECTION', 2, 'BLOCKS')}${blocks}${dxf(0, 'ENDSEC')}${drawing(entities)}`;

function faultsOf(text: string): string {
  const read = readDxf(text);
  return read.ok ? '' : read.faults.map(({ path, what, cure }) => `${path}: ${what}. ${cure}`).join('\n');
}

function notesOf(text: string): string {
  const read = readDxf(text);
  if (!read.ok) throw new Error(faultsOf(text));
  return read.drawing.notes.map(({ path, what }) => `${path}: ${what}`).join('\n');
}

describe('text that is no DXF drawing', () => {
  it.each([
    ['nothing', '', /file: holds nothing/],
    ['blank lines', '\n\n\n', /file: holds nothing/],
    ['garbage', 'Here is my drawing.\nThanks!\n', /line 1: is "Here is my drawing\.".*ASCII DXF/],
    ['binary DXF', 'AutoCAD Binary DXF\r\n\x1a\0\0SECTION\0', /is a binary DXF file.*ASCII/],
    ['DWG', 'AC1032\0\0\0\0\0', /is a DWG file/],
    ['other bytes', '\x01\x02\0\x03', /is not text/],
    ['SVG', '<?xml version="1.0"?><svg/>', /SVG or XML/],
    ['a family file', '{ "format": 1 }', /JSON/],
    ['an end at once', dxf(0, 'EOF'), /file: holds nothing/],
    ['pairs without a section', dxf(0, 'LINE', 10, 0), /line 1: does not begin with a section/],
    ['an empty drawing', drawing(), /has no line that can be an outline/],
    ['a value too many', `${dxf(0, 'SECTION', 2, 'ENTITIES')}LINE\nmore\n`, /line 5: must be a group code.*"LINE"/],
  ])('says so for %s', (_, text, message) => {
    expect(faultsOf(text)).toMatch(message);
  });

  it('refuses 50 million characters at once', () => {
    const text = '0\n'.repeat(25_000_000);
    const start = process.cpuUsage();
    expect(faultsOf(text)).toMatch(/longer than 20 million characters/);
    expect(process.cpuUsage(start).user / 1e3).toBeLessThan(500);
  });
});

describe('entities that are not sound', () => {
  const bad = (...pairs: (string | number)[]) => notesOf(drawing(dxf(...pairs), RECTANGLE));

  it.each([
    ['a line without an end', [0, 'LINE', 8, 0, 10, 0, 20, 0], /line 5: group 11 is missing; LINE left out/],
    ['NaN', [0, 'LINE', 10, 'NaN', 20, 0, 11, 1, 21, 1], /line 7: group 10 is "NaN", not a number/],
    ['an old NaN', [0, 'CIRCLE', 10, 0, 20, '1.#QNAN', 40, 1], /line 9: group 20 is "1\.#QNAN"/],
    ['infinity by exponent', [0, 'CIRCLE', 10, 0, 20, 0, 40, '1e999'], /group 40 is "1e999"/],
    ['a decimal comma', [0, 'CIRCLE', 10, '1,5', 20, 0, 40, 1], /group 10 is "1,5"/],
    ['no radius', [0, 'CIRCLE', 10, 0, 20, 0, 40, 0], /the radius of CIRCLE is 0/],
    ['a radius below zero', [0, 'ARC', 10, 0, 20, 0, 40, -1, 50, 0, 51, 90], /the radius of ARC is -1/],
    ['y before x', [0, 'LWPOLYLINE', 70, 1, 20, 5, 10, 1], /a y \(group 20\) has no x before it/],
    ['a bulge before x', [0, 'LWPOLYLINE', 42, 1, 10, 1, 20, 5], /a bulge \(group 42\) has no vertex before it/],
    ['an x without y', [0, 'LWPOLYLINE', 10, 1, 20, 5, 10, 3], /2 x \(group 10\) and 1 y/],
    ['one vertex', [0, 'LWPOLYLINE', 10, 1, 20, 5], /LWPOLYLINE has 1 vertices/],
    [
      'a wrong count',
      [0, 'LWPOLYLINE', 90, 9, 70, 1, 10, 9, 20, 9, 10, 8, 20, 9, 10, 9, 20, 8],
      /says .* "9" .* has 3/,
    ],
    ['an ellipse without axis', [0, 'ELLIPSE', 10, 0, 20, 0, 11, 0, 21, 0, 40, 1], /an axis of ELLIPSE has no length/],
    ['a mesh', [0, 'POLYLINE', 70, 64, 0, 'VERTEX', 10, 0, 20, 0, 0, 'SEQEND'], /is a mesh/],
    ['a point by itself', [0, 'POINT', 10, 0, 20, 0], /POINT is not a line/],
    ['a strange entity', [0, 'constructor', 10, 0], /CONSTRUCTOR is not a line/],
    [
      'a vertex that is broken',
      [0, 'POLYLINE', 70, 1, 0, 'VERTEX', 10, 0, 0, 'SEQEND'],
      /group 20 is missing; POLYLINE/,
    ],
    ['a degree of 99', [0, 'SPLINE', 71, 99, 40, 0, 10, 0, 20, 0], /its degree is 99/],
    ['knots that fall', [0, 'SPLINE', 71, 1, 40, 0, 40, 2, 40, 1, 40, 3, 10, 0, 20, 0, 10, 1, 20, 0], /do not rise/],
    ['a scale of 0', [0, 'INSERT', 2, 'A', 41, 0], /not in the file/],
    ['no length', [0, 'LINE', 10, 1, 20, 1, 11, 1, 21, 1], /has no length/],
  ])('tells %s, and reads the rest', (_, pairs, message) => {
    expect(bad(...(pairs as (string | number)[]))).toMatch(message);
  });

  it('tells forty things at most, and how many more there are', () => {
    const lines = Array.from({ length: 100 }, (_, i) => dxf(0, 'CIRCLE', 10, `x${i}`, 20, 0, 40, 1));
    const told = notesOf(drawing(...lines, RECTANGLE)).split('\n');
    expect(told).toHaveLength(41);
    expect(told[40]).toMatch(/60 more things/);
  });

  it('takes a stray vertex, attributes and ends for what they are', () => {
    const strays = dxf(0, 'VERTEX', 10, 1, 20, 1, 0, 'SEQEND', 0, 'ATTRIB', 1, 'x', 0, 'SEQEND');
    expect(notesOf(drawing(strays, RECTANGLE))).toBe('');
  });

  it('skips comments and empty lines at the end', () => {
    expect(notesOf(`${dxf(999, 'made by hand')}${drawing(RECTANGLE)}\n\n`)).toBe('');
    expect(notesOf(`\n\r\n${drawing(RECTANGLE)}`)).toBe('');
  });
});

describe('drawings without end', () => {
  const block = (name: string, body: string) => `${dxf(0, 'BLOCK', 2, name, 10, 0, 20, 0)}${body}${dxf(0, 'ENDBLK')}`;
  const insert = (name: string, ...more: (string | number)[]) => dxf(0, 'INSERT', 2, name, 10, 0, 20, 0, ...more);

  function quickly(text: string): string {
    const start = process.cpuUsage();
    const read = readDxf(text);
    // Time of this process alone: a busy machine must not fail it.
    expect(process.cpuUsage(start).user / 1e3).toBeLessThan(20_000);
    return read.ok ? read.drawing.notes.map(({ what }) => what).join('\n') : faultsOf(text);
  }

  it('stops where blocks double at each of twenty levels', () => {
    const blocks = Array.from({ length: 20 }, (_, i) => block(`B${i}`, insert(`B${i + 1}`) + insert(`B${i + 1}`)));
    expect(quickly(withBlocks(blocks.join('') + block('B20', RECTANGLE), insert('B0') + RECTANGLE))).toMatch(
      /only its first part was read|nested deeper/,
    );
  });

  it('knows a block by its name whatever its letters are written as', () => {
    const text = withBlocks(block('Bl\\U+00E4sse', RECTANGLE), insert('BL\\U+00E4SSE', 41, 2));
    const read = readDxf(text);
    expect(read.ok && read.drawing.paths.map(({ label }) => label)).toEqual(['Blässe']);
  });

  it('stops where an insert has a milliard of columns', () => {
    const many = insert('A', 70, 32767, 71, 32767, 44, 1, 45, 1);
    expect(quickly(withBlocks(block('A', RECTANGLE), many))).toMatch(/only its first part was read/);
    expect(quickly(withBlocks(block('A', ''), many + RECTANGLE))).toMatch(/only its first part was read/);
  });

  it('refuses a number of 200,000 digits with a slip at its end', () => {
    const line = dxf(0, 'LINE', 10, `${'1'.repeat(200_000)}x`, 20, 0, 11, 1, 21, 1);
    expect(quickly(drawing(line, RECTANGLE))).toMatch(/not a number; LINE left out/);
  });

  it('reads a circle of a million kilometres radius', () => {
    expect(quickly(drawing(dxf(0, 'CIRCLE', 10, 0, 20, 0, 40, 1e12)))).toMatch(
      /farther out than a thousand kilometres/,
    );
    expect(quickly(drawing(dxf(0, 'ELLIPSE', 10, 0, 20, 0, 11, 1e8, 21, 0, 40, 0.5)))).toBe('');
  });

  it('reads a spline of degree 25 with 500 control points that jump', () => {
    const { next: random } = randomNumbers(5);
    const knots = Array.from({ length: 526 }, (_, i) => [40, i]).flat();
    const points = Array.from({ length: 500 }, () => [10, random() * 1e6, 20, random() * 1e6]).flat();
    expect(quickly(drawing(dxf(0, 'SPLINE', 71, 25, ...knots, ...points), RECTANGLE))).toMatch(/is open/);
  });

  it('joins 10,000 lines of one outline', () => {
    const count = 10_000;
    const at = (i: number) => [Math.cos((i * 2 * Math.PI) / count) * 100, Math.sin((i * 2 * Math.PI) / count) * 100];
    const lines = Array.from({ length: count }, (_, i) => {
      const [[x, y], [u, v]] = [at(i), at((i + 1) % count)];
      return dxf(0, 'LINE', 8, 0, 10, x, 20, y, 11, u, 21, v);
    });
    const read = readDxf(drawing(...lines));
    expect(read.ok && read.drawing.paths.map(({ closed, vertices }) => [closed, vertices.length])).toEqual([
      [true, count],
    ]);
  });
});

describe('files that were cut off or spoilt', () => {
  const whole = dxfDrawing('insert-nested');

  it('never throws wherever a file is cut', () => {
    for (let length = 0; length < whole.length; length += 7)
      expect(() => readDxf(whole.slice(0, length))).not.toThrow();
  });

  it('never throws with a line lost, doubled or spoilt', () => {
    const lines = [...whole.split('\n'), ...dxfDrawing('spline-rational-circle').split('\n')];
    const { next: random } = randomNumbers(11);
    const pick = () => Math.floor(random() * lines.length);
    const spoilt = ['', '0', '-1', '1e309', 'NaN', 'SECTION', 'ENDSEC', 'BLOCK', '999999', '\u0000', '10'];
    for (let run = 0; run < 1_000; run += 1) {
      const changed = [...lines];
      const at = pick();
      const kind = Math.floor(random() * 4);
      if (kind === 0) changed.splice(at, 1);
      if (kind === 1) changed.splice(at, 0, changed[at]);
      if (kind === 2) changed[at] = spoilt[Math.floor(random() * spoilt.length)];
      if (kind === 3) changed.splice(at, 2, ...changed.slice(pick(), at + 2));
      const read = readDxf(changed.join('\n'));
      const told = read.ok ? read.drawing.notes : read.faults;
      for (const { path, what, cure } of told) expect(path !== '' && what !== '' && cure !== '').toBe(true);
      if (read.ok) {
        const numbers = read.drawing.paths.flatMap(({ vertices }) =>
          vertices.flatMap(({ x, y, bulge = 0 }) => [x, y, bulge]),
        );
        expect(numbers.every(Number.isFinite)).toBe(true);
      }
    }
  });
});
