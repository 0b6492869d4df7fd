// What a drawing from a stranger may hold. Each is refused, or read without what is harmful, with words that say where and
// what to do, and quickly: a page must stay alive.
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { FileFault } from '../../../src/interchange/json/file-fault.ts';
import { readSvg } from '../../../src/interchange/svg/read.ts';

const OPEN =
  '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" width="10mm" height="10mm" viewBox="0 0 10 10">';
const SLOT = '<path id="slot" d="M0 0H2V8H0Z"/>';
const sheet = (inside: string) => `${OPEN}${inside}</svg>`;

/** Work of the processor, not time by the clock, so that a busy machine does not fail it; a quiet one takes 2 s at most. */
const QUICK_MS = 15_000;

function quickly<T>(run: () => T): T {
  const begin = process.cpuUsage();
  const result = run();
  const { user, system } = process.cpuUsage(begin);
  expect((user + system) / 1000).toBeLessThan(QUICK_MS);
  return result;
}

function faultsOf(text: string): readonly FileFault[] {
  const read = quickly(() => readSvg(text));
  expect(read.ok).toBe(false);
  const faults = read.ok ? [] : read.faults;
  for (const { path, what, cure } of faults) for (const word of [path, what, cure]) expect(word).not.toBe('');
  return faults;
}

const firstWords = (text: string) => {
  const [{ path, what }] = faultsOf(text);
  return `${path}: ${what}`;
};

function notesOf(text: string): string[] {
  const read = quickly(() => readSvg(text));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  expect(read.drawing.paths.map(({ label }) => label)).toEqual(['slot']);
  return read.drawing.notes.map(({ what }) => what);
}

afterEach(() => vi.unstubAllGlobals());

describe('nothing of a drawing is run or fetched', () => {
  test('scripts and event handlers are left out, wherever they stand', () => {
    const text = sheet(
      `<script>globalThis.ran = 1</script><defs><script xlink:href="https://example.invalid/a.js"/></defs><g onload="globalThis.ran = 1" onclick="x()">${SLOT}</g>`,
    );
    expect(notesOf(text)).toEqual(['2 scripts are left out', '2 event handlers are left out']);
    expect(globalThis).not.toHaveProperty('ran');
  });

  test('what points out of the drawing is left out, and no request is made', () => {
    const request = vi.fn(() => Promise.reject(new Error('no network')));
    vi.stubGlobal('fetch', request);
    vi.stubGlobal('XMLHttpRequest', request);
    const text = sheet(
      `<use href="https://example.invalid/a.svg#x"/><use xlink:href="other.svg#y"/><use/><image href="https://example.invalid/a.png"/>${SLOT}<use href="javascript:alert(1)"/>`,
    );
    expect(notesOf(text)).toEqual([
      '3 times <use> points out of the drawing and is left out',
      'a <use> points to nothing and is left out',
      '1 picture is left out',
    ]);
    expect(request).not.toHaveBeenCalled();
  });

  test('an inclusion and a style sheet from elsewhere are told of', () => {
    const included = '<xi:include xmlns:xi="http://www.w3.org/2001/XInclude" href="file:///etc/hosts" parse="text"/>';
    const text = `<?xml-stylesheet href="https://example.invalid/a.css"?>${sheet(`${included}${SLOT}`)}`;
    expect(notesOf(text)).toEqual(['1 style sheet is left out', '1 inclusion of another file is left out']);
  });

  test('fields by the names of the language do no harm', () => {
    const text = sheet(`<constructor id="__proto__"/><use href="#__proto__"/><use href="#constructor"/>${SLOT}`);
    expect(notesOf(text)).toHaveLength(2);
    expect(firstWords(sheet('<g transform="constructor(1)"/>'))).toMatch(/function "constructor"/);
    expect(firstWords(sheet('<rect width="1toString" height="1"/>'))).toMatch(/attribute width: "1toString"/);
  });
});

describe('declarations of the document type', () => {
  test('a bomb of entities is refused before it is unpacked', () => {
    const lol = Array.from({ length: 10 }, (_, i) => `<!ENTITY l${i + 1} "${`&l${i};`.repeat(10)}">`).join('');
    const text = `<!DOCTYPE svg [<!ENTITY l0 "lol">${lol}]>\n${sheet('<title>&l10;</title>')}`;
    expect(firstWords(text)).toMatch(/^line 1, column 1: the DOCTYPE declares entities/);
  });

  test('an entity from elsewhere is refused', () => {
    const text = `<?xml version="1.0"?>\n<!DOCTYPE svg [<!ENTITY x SYSTEM "file:///etc/passwd">]>\n${sheet('<title>&x;</title>')}`;
    expect(firstWords(text)).toMatch(/^line 2, column 1: the DOCTYPE/);
    expect(firstWords(text.replace(']>', ''))).toMatch(/DOCTYPE/);
    expect(firstWords(text.replace('DOCTYPE', 'doctype'))).toMatch(
      /^line 2, .*a declaration after <! that is not known/,
    );
  });

  test('a document type by name alone is harmless', () => {
    expect(notesOf(`<!DOCTYPE svg SYSTEM "https://example.invalid/svg.dtd">${sheet(SLOT)}`)).toEqual([]);
  });

  test('an entity that nobody declared is named', () => {
    expect(firstWords(sheet('\n<title>&nbsp;</title>'))).toMatch(/^line 2, .*the entity &nbsp; is not known/);
  });
});

describe('amounts without end', () => {
  test.each([
    ['100,000 groups deep', () => sheet('<g>'.repeat(100_000) + '</g>'.repeat(100_000)), /nested more than 200 deep/],
    ['200,000 elements', () => sheet('<g/>'.repeat(200_000)), /more than 100000 elements/],
    ['200,000 comments', () => sheet('<!---->'.repeat(200_000)), /more than 100000 elements/],
    [
      'a thousand attributes',
      () => sheet(`<g ${Array.from({ length: 1000 }, (_, i) => `a${i}=""`).join(' ')}/>`),
      /200 attributes/,
    ],
    ['50 MB in one path', () => sheet(`<path d="M0 0${' 1 1'.repeat(12_500_000)}"/>`), /file: has \d+ characters/],
    [
      '18 MB in one path',
      () => sheet(`<path d="M0 0${' 1 1'.repeat(4_500_000)}"/>`),
      /attribute d: has \d+ characters/,
    ],
    [
      '300,000 lines in a row',
      () => sheet(`<path d="M0 0${' 1 1'.repeat(310_000)}"/>`),
      /more than (300000 pieces|200000 points)/,
    ],
    ['1.4 MB of arcs in a row', () => sheet(`<path d="M0 0A${'1 1 0 0 1 9 9 '.repeat(100_000)}"/>`), /run of numbers/],
    ['300,000 moves', () => sheet(`<path d="${'M0 0'.repeat(310_000)}"/>`), /more than 300000 pieces/],
    [
      'a long run that breaks off in rubbish',
      () => sheet(`<path d="M0 0${' 1 1'.repeat(100_000)} # 2"/>`),
      /run of numbers/,
    ],
  ])('%s', (_name, text, words) => {
    expect(firstWords(text())).toMatch(words);
  });

  test.each([
    ['a long number in a transform', `<g transform="scale(${'1'.repeat(100_000)}x)">${SLOT}</g>`, /is not understood/],
    [
      'numbers without end in a transform',
      `<g transform="scale(${'1 '.repeat(100_000)})">${SLOT}</g>`,
      /100000 numbers/,
    ],
    [
      'blanks without end in a transform',
      `<g transform="translate(1${' '.repeat(300_000)}x)">${SLOT}</g>`,
      /is not understood/,
    ],
    ['forty numbers and a slip', `<g transform="scale(${'1 '.repeat(40)}x)">${SLOT}</g>`, /is not understood/],
    ['300,000 points in a polygon', `<polygon points="${'1 1 '.repeat(310_000)}"/>`, /more than 300000 pieces/],
    ['a polygon of 8 MB', `<polygon points="${'1 1 '.repeat(2_000_000)}"/>`, /attribute points: has 8000000/],
    ['a name of a megabyte', `<${'a'.repeat(1_000_000)}>`, /not well-formed XML/],
    ['an entity of a megabyte', `<g>&${'a'.repeat(1_000_000)};</g>`, /not well-formed XML/],
  ])('%s', (_name, inside, words) => {
    const [{ path, what }] = faultsOf(sheet(inside));
    expect(`${path}: ${what}`).toMatch(words);
    expect(path.length + what.length).toBeLessThan(400);
  });

  test('a style full of comments that are never closed', () => {
    expect(notesOf(sheet(`<g style="${'/*'.repeat(2_000_000)}">${SLOT}</g>`))).toEqual([]);
    expect(firstWords(sheet(`<g style="/*a*/display/**/:/*;*/none/*">${SLOT}</g>`))).toMatch(/no line/);
  });

  test('a chain of uses, each inside the next', () => {
    const chain = Array.from({ length: 1000 }, (_, i) => `<g id="c${i + 1}"><use href="#c${i}"/></g>`).join('');
    const text = sheet(`<defs><path id="c0" d="M0 0H1V1Z"/>${chain}</defs><use href="#c1000"/>`);
    expect(firstWords(text)).toMatch(/nested more than 400 deep, counting/);
  });

  test('a use that comes back to itself, by one step or by three', () => {
    const loop =
      '<g id="a"><use href="#a"/></g><g id="b"><use href="#c"/></g><g id="c"><use href="#d"/></g><use id="d" href="#b"/>';
    expect(notesOf(sheet(`${loop}${SLOT}`))).toEqual([expect.stringMatching(/times <use> comes back to itself/)]);
  });

  test('uses of uses of uses, ten to the power of ten', () => {
    const levels = Array.from({ length: 10 }, (_, i) => `<g id="l${i + 1}">${`<use href="#l${i}"/>`.repeat(10)}</g>`);
    const text = sheet(`<defs><path id="l0" d="M0 0H1V1Z"/>${levels.join('')}</defs><use href="#l10"/>`);
    expect(firstWords(text)).toMatch(/more than (300000 pieces, counting what <use> repeats|200000 points)/);
  });

  test('a use of a path with many parts and no line', () => {
    const text = sheet(`<defs><path id="p" d="${'M0 0'.repeat(1000)}"/></defs>${'<use href="#p"/>'.repeat(2000)}`);
    expect(firstWords(text)).toMatch(/more than 300000 pieces/);
  });

  test('a circle with a radius of 1e12, and an ellipse', () => {
    expect(notesOf(sheet(`<circle r="1e12"/>${SLOT}`))).toEqual(['lies more than 1 km away and is left out']);
    expect(notesOf(sheet(`<ellipse rx="1e12" ry="5"/>${SLOT}`))).toEqual(['lies more than 1 km away and is left out']);
    expect(firstWords(sheet('<path d="M0 0A1e12 5e11 0 1 1 1 0Z"/>'))).toMatch(/more than 200000 points/);
  });

  test('an arc of radius 1e12 between near points is a line, at any size of its numbers', () => {
    for (const radius of ['1e9', '1e12', '1e300']) {
      const read = quickly(() => readSvg(sheet(`<path d="M0 0A${radius} ${radius} 0 0 1 2 0V8Z"/>`)));
      if (!read.ok) throw new Error(JSON.stringify(read.faults));
      expect(read.drawing.paths[0].vertices).toHaveLength(3);
      expect(read.drawing.paths[0].vertices.every(({ bulge }) => bulge === undefined)).toBe(true);
    }
  });

  test('a curve that is far too large for its points', () => {
    expect(firstWords(sheet(`<path d="${'M0 0C0 9e5 9e5 9e5 9e5 0'.repeat(60)}"/>`))).toMatch(
      /more than 200000 points/,
    );
  });

  test('many faults are told up to ten', () => {
    expect(faultsOf(sheet('<circle r="x"/>'.repeat(1000)))).toHaveLength(10);
    const notes = notesOf(sheet(`${'<circle r="x"/>'.repeat(1000)}${SLOT}`));
    expect(notes).toHaveLength(11);
    expect(notes[10]).toBe('990 more shapes are left out for such reasons');
  });
});

describe('one bad shape among good ones', () => {
  test.each([
    ['a path', '<path d="M1 1 L foo"/>', /is not path data at character.*; it is left out/],
    ['a number that is none', '<rect width="NaN" height="2"/>', /"NaN" is not a length; it is left out/],
    ['a group', `<g transform="slant(3)">${SLOT}</g>`, /function "slant".*; it is left out/],
    ['a use', `<use href="#p" x="far"/>`, /"far" is not a length; it is left out/],
    ['a symbol', `<svg width="wide" height="1"><path d="M0 0H1V1Z"/></svg>`, /"wide" is not a length; it is left out/],
  ])('%s is left out with a note, and the good ones are taken', (_name, bad, words) => {
    const good = Array.from({ length: 20 }, (_, i) => `<path id="p${i || ''}" d="M${i} 0H${i + 0.5}V1Z"/>`).join('');
    const read = readSvg(sheet(`${good}${bad}`));
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    expect(read.drawing.paths).toHaveLength(20);
    expect(read.drawing.notes.map(({ what }) => what)).toEqual([expect.stringMatching(words)]);
    expect(faultsOf(sheet(bad))[0].what).not.toMatch(/left out/);
  });

  test('what a use repeats is told once', () => {
    const bad = '<defs><path id="bad" d="M1 1 L foo"/></defs>';
    expect(notesOf(sheet(`${bad}${'<use href="#bad"/>'.repeat(50)}${SLOT}`))).toHaveLength(1);
  });
});

describe('numbers that are none', () => {
  test.each([
    ['<circle id="c" r="NaN"/>', /<circle id="c">, attribute r: "NaN" is not a length/],
    ['<rect x="Infinity" width="1" height="1"/>', /<rect>, attribute x: "Infinity" is not a length/],
    ['<rect width="1e999" height="1"/>', /attribute width/],
    ['<rect width="1" height="1" rx="2em"/>', /attribute rx: "2em"/],
    ['<ellipse rx="1" ry="--1"/>', /attribute ry/],
    ['<line x1="0" y1="0" x2="NaN" y2="1"/>', /attribute x2/],
    ['<polygon points="0 0 NaN 1 2 2"/>', /<polygon>, attribute points: "NaN" is not a coordinate/],
    ['<polyline points="0,0 1e999,1"/>', /attribute points: "a number that is too large"/],
    [
      '<path id="p" d="M0 0L NaN 1"/>',
      /<path id="p">, attribute d: is not path data at character 7, near "M0 0L NaN 1"/,
    ],
    ['<path d="M0 0L1e999 1"/>', /attribute d: holds a number that is too large/],
    ['<path d="L1 1"/>', /attribute d: is not path data: string should start with/],
    ['<path d="M0 0R1 1 2 2"/>', /the command R, which SVG does not know/],
    ['<path d="M0 0L1"/>', /is not path data/],
    ['<path d="M0 0A1 1 0 2 0 3 3"/>', /arc|is not path data at character/],
    ['<g transform="rotate(NaN)"/>', /<g>, attribute transform: is not understood from/],
    ['<g transform="scale(1e308) scale(1e308)"/>', /holds a number that is too large/],
    ['<g transform="spin(4)"/>', /the function "spin", which SVG does not know/],
    ['<g transform="rotate(1,2)"/>', /gives rotate 2 numbers/],
    ['<g transform="scale(2"/>', /is not understood/],
    ['<svg x="left"><path d="M0 0H1"/></svg>', /<svg>, attribute x/],
    ['<use href="#q" x="far"/><g id="q"/>', /<use>, attribute x/],
  ])('%s', (inside, words) => {
    expect(firstWords(sheet(inside))).toMatch(words);
  });

  test('a needless zero in front of a number is refused, though the standard allows it', () => {
    expect(firstWords(sheet('<path d="M0 0L007 1"/>'))).toMatch(/is not path data/);
  });

  test('a percentage of nothing', () => {
    expect(firstWords('<svg><rect width="50%" height="1"/></svg>')).toMatch(/attribute width: is a percentage/);
    expect(firstWords('<svg><svg viewBox="0 0 1 1"><path d="M0 0H1"/></svg></svg>')).toMatch(/as large as the drawing/);
  });

  test('a sheet without size, and sizes that are none', () => {
    expect(firstWords('<svg viewBox="0 0 0 5"><path d="M0 0H1V1Z"/></svg>')).toMatch(/no width or no height/);
    expect(firstWords('<svg width="0"><path d="M0 0H1V1Z"/></svg>')).toMatch(/no width or no height/);
    const text = '<svg width="wide" height="-4" viewBox="0 0 a 5"><path id="slot" d="M0 0H1V1Z"/></svg>';
    expect(notesOf(text)).toEqual([
      'is not understood and left out',
      'is no size that can be read',
      'is no size that can be read',
      expect.stringMatching(/true size/),
    ]);
  });

  test('what a style shapes or moves is left out, unless it stays as it is', () => {
    const text = sheet(
      `<rect width="1" height="1" style="width: 5px"/><g style="transform: none; x: auto">${SLOT}</g>`,
    );
    expect(notesOf(text)).toEqual(['an element is moved or shaped by width, and left out']);
    const turned = sheet(SLOT).replace('<svg ', '<svg style="rotate: 5deg" ');
    expect(notesOf(turned)).toEqual(['the whole drawing is moved by the style rotate, which is not followed']);
  });

  test('half a point at the end of a list is told of', () => {
    const text = sheet('<polygon id="slot" points="0 0 1 0 1 1 7"/>');
    expect(notesOf(text)).toEqual(['ends with half a point, which is left out']);
  });
});

describe('texts that are no drawing', () => {
  test.each([
    ['', /^file: is empty/],
    ['\uFEFF \n', /^file: is empty/],
    ['0,0\n2,0\n2,8', /^file: is no SVG drawing: it begins with "0,0/],
    ['{"format": "x"}', /^file: is no SVG drawing/],
    ['<html><body/></html>', /^file: is no SVG drawing: it holds a <html>/],
    ['<svg xmlns="urn:example:other"/>', /^file: is no SVG drawing/],
    [`${OPEN}\n<g>\n${SLOT}\n</svg>`, /^line 3, column \d+: not well-formed XML: the element <g> is closed by <\/svg>/],
    [`${OPEN}\n${SLOT}`, /not well-formed XML: the drawing ends before/],
    [sheet(SLOT).slice(0, -9), /not well-formed XML/],
    [`\n\n${OPEN}<path d=M0/></svg>`, /^line 3, .*without quotation marks/],
    [sheet('<path d/>'), /the attribute d has no value/],
    [sheet('<path d="M0 0" d="M1 1"/>'), /the attribute d is given twice/],
    [sheet('<ed:path/>'), /a prefix \(the part of a name before a colon\) is not declared/],
    [`${sheet(SLOT)}${sheet(SLOT)}`, /a second element/],
    [`${sheet(SLOT)}rest`, /not well-formed XML/],
    ['\u0089PNG\r\n\u001a\n\u0000\u0000IHDR', /^line 2, column 1: a control character/],
    [sheet('<title>\u0000</title>'), /a control character/],
    [sheet(''), /^file: the drawing shows no line/],
    [sheet('<text>Reed</text>'), /^file: the drawing shows no line/],
  ])('%j', (text, words) => {
    expect(firstWords(text)).toMatch(words);
  });

  test('letters that an encoding lost do no harm', () => {
    expect(notesOf(sheet(`<title>Rohrs\ufffdnger</title>${SLOT}`))).toEqual([]);
    expect(firstWords(sheet('<path d="M0 0\ufffdL1 1"/>'))).toMatch(/is not path data/);
  });

  test('where nothing is drawn, what was left out is told as well', () => {
    expect(faultsOf(sheet('<text>Reed</text><image/>')).map(({ what }) => what)).toEqual([
      expect.stringMatching(/shows no line/),
      '1 text is left out',
      '1 picture is left out',
    ]);
  });

  test('whatever is cut off or overwritten, it is answered, never thrown', () => {
    const whole = sheet(`<g transform="rotate(3)"><use href="#slot"/>${SLOT}<!-- a --><circle r="1mm"/></g>`);
    for (let i = 0; i <= whole.length; i++) {
      for (const text of [
        whole.slice(0, i),
        `${whole.slice(0, i)}<${whole.slice(i + 1)}`,
        `${whole.slice(0, i)}&"${whole.slice(i)}`,
      ]) {
        const read = readSvg(text);
        expect(read.ok || read.faults.length > 0).toBe(true);
      }
    }
    expect(readSvg(null as unknown as string)).toMatchObject({ ok: false });
  });
});
