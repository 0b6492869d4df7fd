import { describe, expect, test } from 'vitest';
import { type SniffedFormat, sniffFormat, sniffText } from '../../../src/interchange/sniff-format.ts';

const bytesOf = (text: string) => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
const formatOf = (name: string, text: string) => {
  const sniffed = sniffFormat(name, bytesOf(text));
  return sniffed.ok ? sniffed.format : sniffed.fault;
};

const KNOWN: [string, string, SniffedFormat][] = [
  ['a.json', '{ "format": "sectionary-family" }', 'family'],
  ['noname', '\xef\xbb\xbf  {"a":1}', 'family'],
  ['a.svg', '<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg"/>', 'svg'],
  ['wrong-name.dxf', '<svg viewBox="0 0 1 1"></svg>', 'svg'],
  ['prefixed.xml', '<!-- x --><s:svg xmlns:s="http://www.w3.org/2000/svg"/>', 'svg'],
  ['long.svg', `<!-- ${'x'.repeat(70_000)} --><svg/>`, 'svg'],
  ['bomb.svg', `<!DOCTYPE svg [ ${'<!ENTITY a "aaaa">'.repeat(5_000)} ]><svg/>`, 'svg'],
  ['a.dxf', '  0\r\nSECTION\r\n  2\r\nHEADER\r\n', 'dxf'],
  ['remark.dxf', '999\nmade by hand\n  0\nSECTION\n  2\nENTITIES\n', 'dxf'],
  ['renamed.txt', '0\nSECTION\n2\nENTITIES\n0\nENDSEC\n0\nEOF\n', 'dxf'],
  ['old-line-ends.dxf', '  0\rSECTION\r  2\rENTITIES\r', 'dxf'],
  ['a.csv', 'x,y\n0,0\n2,0\n2,8\n0,8\n', 'points'],
  ['german.csv', 'x;y\n0,0;0,0\n2,1;0\n2,1;8,4\n', 'points'],
  ['columns.txt', '0 0\n2 0\n2 8\n0 8', 'points'],
  ['tabs', '0\t0\n2.1e0\t0\n-2\t8\n', 'points'],
  ['named.csv', 'name,x,y\nHeron,0,0\nHeron,2,0\nHeron,2,8\n', 'points'],
  ['formulas.csv', '=HYPERLINK("x")\n@cmd\n', 'points'],
  ['list.csv', 'blank,keyway,enters\nHeron,Smew,no\n', 'claims'],
  ['matrix.csv', 'blank;Heron;Smew\nHeron;x;-\nSmew;;x\n', 'claims'],
  ['headless.txt', 'Heron blank\tHeron keyway\tyes\nSmew blank\tHeron keyway\tno\n', 'claims'],
  ['half-open.csv', 'name,x,y\nsquare,0,0\nsquare,1,0\nsquare,1,1\n', 'points'],
  ['unit-square.csv', 'square,0,0\nsquare,1,0\nsquare,1,1\nsquare,0,1\n', 'points'],
  ['bare-square.csv', '0,0\n1,0\n1,1\n0,1\n', 'points'],
  ['a.png', '\x89PNG\r\n\x1a\n\0\0\0\rIHDR', 'picture'],
  ['a.jpg', '\xff\xd8\xff\xe0\0\x10JFIF', 'picture'],
  ['a.webp', 'RIFF\x10\0\0\0WEBPVP8 ', 'picture'],
];

test.each(KNOWN)('%s is known by what stands in it', (name, text, format) => {
  expect(formatOf(name, text)).toBe(format);
});

const REFUSED: [string, string, RegExp][] = [
  ['empty.svg', '', /empty/],
  ['blank.csv', ' \n\n ', /empty/],
  ['old.dxf', 'AnyProgram Binary DXF\r\n\x1a\0', /binary DXF/],
  ['plan.dxf', 'AC1032\0\0\0\0', /DWG/],
  ['sheet.pdf', '%PDF-1.7\n', /PDF/],
  ['a.svgz', '\x1f\x8b\x08\0', /compressed/],
  ['table.csv', 'PK\x03\x04\x14\0', /workbook/],
  ['photo.heic', '\0\0\0\x18ftypheic', /picture of a kind/],
  ['page.svg', '<!DOCTYPE html><html><body></body></html>', /web page/],
  ['feed.xml', '<?xml version="1.0"?><rss/>', /XML, but no SVG/],
  ['letter.txt', 'Dear Anna,\nthe 2 blades are ready.\n', /no drawing/],
  ['program.exe', 'MZ\x90\0\x03\0\0\0', /kind that is not read/],
];

test.each(REFUSED)('%s is refused with what to do', (name, text, what) => {
  const fault = formatOf(name, text);
  expect(fault).toMatchObject({
    path: 'file',
    what: expect.stringMatching(what),
    cure: expect.stringMatching(/.{20}/),
  });
});

describe('letters of two bytes', () => {
  test.each([
    ['utf-16le', [0, 1]],
    ['utf-16be', [1, 0]],
  ] as const)('%s, with and without a mark', (encoding, [low, high]) => {
    const wide = (text: string) =>
      Uint8Array.from(
        [...text].flatMap((letter) => (low < high ? [letter.charCodeAt(0), 0] : [0, letter.charCodeAt(0)])),
      );
    const mark = encoding === 'utf-16le' ? [0xff, 0xfe] : [0xfe, 0xff];
    const table = wide('x\ty\n0\t0\n2\t0\n2\t8\n');
    const points = { ok: true, format: 'points', encoding };
    expect(sniffFormat('a.txt', table)).toEqual(points);
    expect(sniffFormat('a.txt', Uint8Array.from([...mark, ...table]))).toEqual(points);
  });
});

test('a pasted text is known like a file', () => {
  expect(sniffText('Pasted text', '\uFEFF<svg></svg>')).toMatchObject({ ok: true, format: 'svg' });
  expect(sniffText('Pasted text', '0, 0\n2, 0\n2, 8')).toMatchObject({ ok: true, format: 'points' });
  expect(sniffText('Pasted text', 'good morning')).toMatchObject({ ok: false });
});
