import { looksLikeClaims } from './csv/read-claims.ts';
import type { FileFault } from './json/file-fault.ts';

/** What a file is, going by what stands in it. */
export type SniffedFormat = 'family' | 'svg' | 'dxf' | 'points' | 'claims' | 'picture';

/** How the letters of a text file are written down. */
export type TextEncoding = 'utf-8' | 'utf-16le' | 'utf-16be';

/** What a file is, or why it cannot be opened. */
export type Sniffed =
  | { readonly ok: true; readonly format: SniffedFormat; readonly encoding: TextEncoding }
  | { readonly ok: false; readonly fault: FileFault };

/** So many bytes of a file are enough to tell what it is. */
export const SNIFFED_BYTES = 65_536;

/** What can be opened, in words. */
export const OPENABLE =
  'a family file (.json), an SVG, a DXF, a table of points or of claims (CSV) or a picture (PNG, JPEG, WebP)';

/** A form known by fixed letters at a place near its start; `words` and `cure` where it cannot be read. */
interface Signature {
  readonly at: number;
  readonly letters: string;
  readonly refused?: readonly [what: string, cure: string];
}

const OTHER_PICTURE = ['is a picture of a kind that is not read here', 'Save it as PNG or JPEG.'] as const;

/** Bytes as Latin letters. */
const SIGNATURES: readonly Signature[] = [
  { at: 0, letters: '\x89PNG\r\n\x1a\n' },
  { at: 0, letters: '\xff\xd8\xff' },
  { at: 8, letters: 'WEBPVP8' },
  { at: 0, letters: 'GIF8', refused: OTHER_PICTURE },
  { at: 0, letters: 'II*\0', refused: OTHER_PICTURE },
  { at: 0, letters: 'MM\0*', refused: OTHER_PICTURE },
  { at: 4, letters: 'ftyp', refused: OTHER_PICTURE },
  {
    at: 0,
    letters: '%PDF-',
    refused: ['is a PDF', 'Save the drawing as SVG or DXF, or its page as a PNG picture to trace.'],
  },
  {
    at: 0,
    letters: '\x1f\x8b',
    refused: ['is a compressed file (gzip)', 'Unpack it first; an .svgz holds an SVG.'],
  },
  {
    at: 0,
    letters: 'PK\x03\x04',
    refused: ['is a ZIP archive or a workbook of a spreadsheet', 'Unpack it, or save the sheet as CSV.'],
  },
  { at: 0, letters: 'AC10', refused: ['is a DWG drawing', 'Save it as DXF in the drawing program.'] },
];

/** How a binary DXF goes on after the name of the program that made it. */
const BINARY_DXF = ' Binary DXF\r\n';

/**
 * What a file is, by its first bytes; its name decides only between tables of points and prose.
 *
 * @param bytes the first {@link SNIFFED_BYTES} of the file, or all of them.
 * @source PNG (ISO/IEC 15948), JPEG (ISO/IEC 10918-1), WebP container (RFC 9649) and other signatures from memory.
 * @check tests/unit/interchange/sniff-format.test.ts
 */
export function sniffFormat(name: string, bytes: Uint8Array): Sniffed {
  if (bytes.length === 0) return refuse('is empty', `Choose ${OPENABLE}.`);
  const start = lettersOf(bytes.subarray(0, 64));
  if (start.includes(BINARY_DXF))
    return refuse('is a binary DXF', 'Save it as ASCII DXF (also called text DXF) in the drawing program.');
  const known = SIGNATURES.find(({ at, letters }) => start.startsWith(letters, at));
  if (known?.refused) return refuse(...known.refused);
  if (known) return { ok: true, format: 'picture', encoding: 'utf-8' };
  const encoding = encodingOf(bytes);
  const text = encoding === 'utf-8' ? lettersOf(bytes) : lettersOf(everySecond(bytes, encoding));
  return sniffText(name, text.replace(/^(ï»¿|ÿ|þ)/, ''), encoding);
}

/** What a text is, such as one pasted: as {@link sniffFormat}. */
export function sniffText(name: string, text: string, encoding: TextEncoding = 'utf-8'): Sniffed {
  const start = text.slice(0, SNIFFED_BYTES).replace('\uFEFF', '').trimStart();
  if (start === '') return refuse('is empty', `Choose ${OPENABLE}.`);
  if (start.includes('\0')) return refuse('is of a kind that is not read here', `Choose ${OPENABLE}.`);
  const found = (format: SniffedFormat): Sniffed => ({ ok: true, format, encoding });
  if (start.startsWith('{') || start.startsWith('[')) return found('family');
  if (start.startsWith('<')) return sniffMarkup(name, start, found);
  if (isDxf(start)) return found('dxf');
  if (looksLikeClaims(start)) return found('claims');
  if (hasPoints(start) || /\.(csv|tsv)$/i.test(name)) return found('points');
  return refuse('is no drawing, no table of points and no family file', `Choose ${OPENABLE}.`);
}

function sniffMarkup(name: string, start: string, found: (format: SniffedFormat) => Sniffed): Sniffed {
  if (/<([\w-]+:)?svg[\s>/]/i.test(start)) return found('svg');
  if (/^<(!doctype\s+html|html)[\s>]/i.test(start))
    return refuse('is a web page', 'Save the drawing in it as an SVG file of its own.');
  // A long prologue may hide the root; the reader tells what is wrong with it.
  if (/\.svg$/i.test(name) || /^<!doctype\s+svg/i.test(start)) return found('svg');
  return refuse('is XML, but no SVG', `Choose ${OPENABLE}.`);
}

/** Group code 0 with SECTION comes first in a DXF, after remarks with group code 999. Lines end in any of three ways. */
function isDxf(start: string): boolean {
  const lines = start.split(/\r\n|\r|\n/, 2_000).map((line) => line.trim());
  const first = lines.findIndex((line, i) => i % 2 === 0 && line !== '999');
  return lines[first] === '0' && /^(SECTION|EOF)$/.test(lines[first + 1] ?? '');
}

const NUMBER = String.raw`[-+]?(\d+([.,]\d*)?|[.,]\d+)([eE][-+]?\d+)?`;
const TWO_NUMBERS = new RegExp(`(^|[\\s,;|"])${NUMBER}"?\\s*(mm|in)?\\s*[,;|\\s]\\s*"?${NUMBER}([\\s,;|"]|mm|in|$)`);

/** Whether a line near the start has two numbers side by side. */
function hasPoints(start: string): boolean {
  const lines = start.split(/\r?\n|\r/, 200).filter((line) => line.trim() !== '');
  const rows = lines.filter((line) => TWO_NUMBERS.test(line.slice(0, 400)));
  return rows.length >= 2 && rows.length * 3 >= lines.length;
}

function encodingOf(bytes: Uint8Array): TextEncoding {
  const [a, b, c, d] = bytes;
  if (a === 0xff && b === 0xfe) return 'utf-16le';
  if (a === 0xfe && b === 0xff) return 'utf-16be';
  if (a !== 0 && b === 0 && c !== 0 && d === 0) return 'utf-16le';
  return a === 0 && b !== 0 && c === 0 && d !== 0 ? 'utf-16be' : 'utf-8';
}

function everySecond(bytes: Uint8Array, encoding: TextEncoding): Uint8Array {
  const first = encoding === 'utf-16le' ? 0 : 1;
  return bytes.filter((_, i) => i % 2 === first);
}

/** Bytes as Latin letters, which is enough to know a form by. */
function lettersOf(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 4_096) text += String.fromCharCode(...bytes.subarray(i, i + 4_096));
  return text;
}

function refuse(what: string, cure: string): Sniffed {
  return { ok: false, fault: { path: 'file', what, cure } };
}
