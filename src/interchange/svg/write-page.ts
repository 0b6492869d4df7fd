import { FACE_NAME, type FacePart } from '../../lettering/face-file.ts';
import type { Typeface } from '../../lettering/typeface.ts';
import { type Ink, inkColour, type Palette } from '../../publish/inks.ts';
import type { GroupMark, Mark, Page, PathMark, Stroke, TextMark } from '../../publish/page.ts';
import { escapeXml } from './escape-xml.ts';

/** How a page is written as part of another text. */
export interface PageWriting {
  readonly palette: Palette;
  /** Before every id, so that several pages can stand in one text. */
  readonly idPrefix: string;
}

/**
 * A page as an SVG file of its own: its size in millimetres, so that it prints true, its typeface inside, so that it
 * opens anywhere, its text as text.
 *
 * @param about a sentence on the page, for whoever cannot see it.
 * @returns the text of the file.
 * @accuracy lengths within 0.0001 mm of the page's.
 * @source Scalable Vector Graphics (SVG) 1.1, second edition, W3C 2011; CSS Fonts Module Level 3, W3C 2018.
 * @check tests/browser/page-drawing.test.ts
 */
export function writePage(page: Page, palette: Palette, typeface: Typeface, about: string): string {
  const { width, height } = page;
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${say(width)}mm" height="${say(height)}mm" viewBox="0 0 ${say(width)} ${say(height)}" xml:space="preserve">`,
    `<title>${escapeXml(page.title)}</title>`,
    `<desc>${escapeXml(about)}</desc>`,
    `<style>${faceRules([page], typeface)}</style>`,
    pageMarkup(page, { palette, idPrefix: '' }),
    '</svg>',
    '',
  ].join('\n');
}

/**
 * The marks of a page as SVG elements, over a sheet of its paper; numbers are millimetres. Whoever puts them in an
 * `svg` element gives that the page's `viewBox` and, as {@link faceRules} or otherwise, the typeface.
 */
export function pageMarkup(page: Page, writing: PageWriting): string {
  const clips = { count: 0 };
  const paper = inkColour('paper', writing.palette);
  const marks = writeMarks(page.marks, writing, clips);
  return [
    `<rect width="${say(page.width)}" height="${say(page.height)}" fill="${paper}"/>`,
    // Without geometric precision browsers round the width of each letter to whole points of the screen.
    `<g font-family="'${FACE_NAME}', sans-serif" text-rendering="geometricPrecision" stroke-linejoin="round" fill-rule="evenodd">`,
    ...marks,
    '</g>',
  ].join('\n');
}

/** What the file with plain letters is asked for in any case: Latin-1 and general punctuation. */
const PLAIN_RANGE = ['U+0-ff', 'U+2000-206f'];

function isRare(letter: string): boolean {
  return letter > '\u00ff' && !(letter >= '\u2000' && letter <= '\u206f');
}

/**
 * The style sheet rules that bring those files of the typeface which the pages use. Each file is asked for
 * the letters that are taken from it, and for no others: browsers would rather join a letter and a mark of the first file.
 */
export function faceRules(pages: readonly Page[], typeface: Typeface): string {
  const used = new Map<string, Set<string>>();
  for (const page of pages) noteLetters(page.marks, typeface, used);
  return typeface.files
    .flatMap(({ part, bold, address }) => {
      const letters = used.get(faceKey(part, bold));
      if (!letters) return [];
      const range = [...(part === 'latin' ? PLAIN_RANGE : []), ...[...letters].filter(isRare).map(sayCodePoint)];
      const weight = bold ? 700 : 400;
      return `@font-face{font-family:'${FACE_NAME}';font-weight:${weight};src:url(${address}) format('woff');unicode-range:${range.join(',')}}`;
    })
    .join('\n');
}

function noteLetters(marks: readonly Mark[], typeface: Typeface, used: Map<string, Set<string>>): void {
  for (const mark of marks) {
    if (mark.kind === 'group') noteLetters(mark.marks, typeface, used);
    if (mark.kind !== 'text') continue;
    for (const run of typeface.setLine(mark.text, mark.bold).runs) {
      if (run.kind === 'box') continue;
      const key = faceKey(run.part, mark.bold ?? false);
      const letters = used.get(key) ?? new Set<string>();
      for (const letter of run.text) letters.add(letter);
      used.set(key, letters);
    }
  }
}

function faceKey(part: FacePart, bold: boolean): string {
  return `${part} ${bold ? 'bold' : 'regular'}`;
}

function sayCodePoint(letter: string): string {
  return `U+${(letter.codePointAt(0) ?? 0).toString(16)}`;
}

function writeMarks(marks: readonly Mark[], writing: PageWriting, clips: { count: number }): string[] {
  return marks.flatMap((mark) => {
    if (mark.kind === 'path') return writePath(mark, writing.palette);
    if (mark.kind === 'text') return writeText(mark, writing.palette);
    return writeGroup(mark, writing, clips);
  });
}

function writeGroup({ label, clip, marks }: GroupMark, writing: PageWriting, clips: { count: number }): string[] {
  const id = `${writing.idPrefix}clip${clip ? ++clips.count : ''}`;
  const title = label ? [`<title>${escapeXml(label)}</title>`] : [];
  const inside = writeMarks(marks, writing, clips);
  if (!clip) return ['<g>', ...title, ...inside, '</g>'];
  return [
    `<clipPath id="${id}"><path d="${pathData(clip)}" clip-rule="evenodd"/></clipPath>`,
    `<g clip-path="url(#${id})">`,
    ...title,
    ...inside,
    '</g>',
  ];
}

function writePath({ strokes, fill, line }: PathMark, palette: Palette): string[] {
  const data = pathData(strokes);
  if (data === '') return [];
  const colour = (ink: Ink) => inkColour(ink, palette);
  const filled = `fill="${fill ? colour(fill) : 'none'}"`;
  const dashes = line?.dashes?.length ? ` stroke-dasharray="${line.dashes.map(say).join(' ')}"` : '';
  const stroked = line ? ` stroke="${colour(line.ink)}" stroke-width="${say(line.width)}"${dashes}` : '';
  return [`<path d="${data}" ${filled}${stroked}/>`];
}

const ANCHORS = { start: '', middle: ' text-anchor="middle"', end: ' text-anchor="end"' } as const;

function writeText(mark: TextMark, palette: Palette): string[] {
  const { spot, text, size, bold, align = 'start', ink = 'ink', turned } = mark;
  if (text === '') return [];
  const [x, y] = spot.map(say);
  const weight = bold ? ' font-weight="700"' : '';
  const turn = turned ? ` transform="rotate(${say(turned)} ${x} ${y})"` : '';
  const place = `x="${x}" y="${y}" font-size="${say(size)}"${weight}${ANCHORS[align]}${turn}`;
  return [`<text ${place} fill="${inkColour(ink, palette)}">${escapeXml(text)}</text>`];
}

/** Strokes as path data, millimetres; '' where nothing is seen of them. */
export function pathData(strokes: readonly Stroke[]): string {
  return strokes
    .filter(({ spots }) => spots.length > 1)
    .map(({ spots, closed }) => `M${spots.map(([x, y]) => `${say(x)} ${say(y)}`).join('L')}${closed ? 'Z' : ''}`)
    .join('');
}

/** A length with four decimals at most. */
function say(value: number): string {
  return String(Number(value.toFixed(4)));
}
