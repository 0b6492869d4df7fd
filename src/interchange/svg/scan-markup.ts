import type { FileFault } from '../json/file-fault.ts';

/** Longest text that is read, in characters. */
export const MAX_CHARACTERS = 20_000_000;

/** Most elements, comments and instructions of one drawing. */
const MAX_MARKS = 100_000;

/** Deepest nesting of elements. */
export const MAX_DEPTH = 200;

/** Most attributes of one element. */
const MAX_ATTRIBUTES = 200;

/** Characters that no XML text may hold; a picture or an archive by the wrong name is full of them. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for.
const FORBIDDEN_CHARACTER = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/;

const WRONG_PROGRAM = 'Draw the sections alone, without the rest of the sheet, and import that.';

/** A piece of markup: where it ends, and what it does to the depth. */
interface Mark {
  readonly end: number;
  readonly deeper: number;
  readonly attributes: number;
}

/**
 * Why a text should not be handed to an XML parser at all: too long, too deep, too much, or with declarations that can
 * grow without end. One pass over the text, so that a hostile file is refused before it costs anything. What is merely
 * malformed passes here; the parser names its line.
 *
 * @check tests/unit/interchange/svg-hostile.test.ts
 */
export function scanMarkup(text: string): FileFault | null {
  if (text.length > MAX_CHARACTERS) return tooLong(text.length);
  const strange = FORBIDDEN_CHARACTER.exec(text);
  if (strange) return notText(text, strange.index);
  let depth = 0;
  let marks = 0;
  for (let at = text.indexOf('<'); at >= 0; ) {
    if (text.startsWith('<!DOCTYPE', at) && hasOwnRules(text, at)) return ownRules(text, at);
    const mark = markAt(text, at);
    depth += mark.deeper;
    marks++;
    if (depth > MAX_DEPTH) return tooMuch(text, at, `elements are nested more than ${MAX_DEPTH} deep`);
    if (marks > MAX_MARKS) return tooMuch(text, at, `the drawing has more than ${MAX_MARKS} elements`);
    if (mark.attributes > MAX_ATTRIBUTES) return tooMuch(text, at, `has more than ${MAX_ATTRIBUTES} attributes`);
    at = text.indexOf('<', mark.end);
  }
  return null;
}

/** A place in a text as line and column, both counted from 1. */
export function sayOffset(text: string, offset: number): string {
  let line = 1;
  let start = 0;
  for (let next = text.indexOf('\n'); next >= 0 && next < offset; next = text.indexOf('\n', start)) {
    line++;
    start = next + 1;
  }
  return `line ${line}, column ${offset - start + 1}`;
}

function markAt(text: string, at: number): Mark {
  if (text.startsWith('<!--', at)) return passOver(text, at, '-->');
  if (text.startsWith('<![CDATA[', at)) return passOver(text, at, ']]>');
  if (text.startsWith('<?', at)) return passOver(text, at, '?>');
  if (text.startsWith('<!', at)) return passOver(text, at, '>');
  if (text.startsWith('</', at)) return { ...passOver(text, at, '>'), deeper: -1 };
  return tagAt(text, at);
}

function passOver(text: string, at: number, end: string): Mark {
  const found = text.indexOf(end, at + 2);
  return { end: found < 0 ? text.length : found + end.length, deeper: 0, attributes: 0 };
}

/** A start tag; signs inside its quoted values do not count. */
function tagAt(text: string, at: number): Mark {
  let attributes = 0;
  let i = at + 1;
  while (i < text.length && text[i] !== '>' && text[i] !== '<') {
    if (text[i] !== '"' && text[i] !== "'") i++;
    else {
      attributes++;
      const close = text.indexOf(text[i], i + 1);
      i = close < 0 ? text.length : close + 1;
    }
  }
  const empty = text[i - 1] === '/';
  return { end: i, deeper: empty ? 0 : 1, attributes };
}

/** Whether a document type brings declarations of its own, in square brackets. */
function hasOwnRules(text: string, at: number): boolean {
  const bracket = text.indexOf('[', at);
  const end = text.indexOf('>', at);
  return bracket >= 0 && (end < 0 || bracket < end);
}

function ownRules(text: string, at: number): FileFault {
  return {
    path: sayOffset(text, at),
    what: 'the DOCTYPE declares entities or rules of its own, which can grow or fetch without end',
    cure: 'Save the drawing again as plain SVG, or delete the part of the DOCTYPE from [ to ].',
  };
}

function tooLong(length: number): FileFault {
  return {
    path: 'file',
    what: `has ${length} characters, more than ${MAX_CHARACTERS}`,
    cure: 'Take embedded pictures out of the drawing, and import the sections alone.',
  };
}

function notText(text: string, offset: number): FileFault {
  return {
    path: sayOffset(text, offset),
    what: 'a control character: this is no SVG text',
    cure: 'Choose an SVG drawing; a packed one (.svgz) must be unpacked first.',
  };
}

function tooMuch(text: string, offset: number, what: string): FileFault {
  return { path: sayOffset(text, offset), what, cure: WRONG_PROGRAM };
}
