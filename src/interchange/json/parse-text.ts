import { printParseErrorCode, visit } from 'jsonc-parser';
import { type FileFault, type FilePath, sayPath, sayText } from './file-fault.ts';

/** Longest text that is read, in characters. */
export const MAX_CHARACTERS = 20_000_000;

/** Deepest nesting of lists and objects that is read. */
export const MAX_DEPTH = 64;

/** A JSON value, or why the text is not one. */
export type ParsedText =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly faults: FileFault[] };

/** What each kind of mistake is called, and its cure. */
const MISTAKES: Readonly<Record<string, readonly [what: string, cure: string]>> = {
  InvalidSymbol: [
    'a word or sign that JSON does not know',
    'Quote text with "…"; NaN and Infinity do not exist in JSON.',
  ],
  InvalidNumberFormat: ['a number that is not well written', 'Write numbers like 0.6 or -1.25.'],
  PropertyNameExpected: ['the name of a field is missing', 'Remove the comma too many, or write "name": value.'],
  ValueExpected: ['a value is missing', 'Remove the comma too many, or write the value.'],
  ColonExpected: ['a colon is missing', 'Put : between the name of a field and its value.'],
  CommaExpected: ['a comma is missing', 'Put a comma between entries.'],
  CloseBraceExpected: ['a closing } is missing', 'Close the object; the end of the file may have been cut off.'],
  CloseBracketExpected: ['a closing ] is missing', 'Close the list; the end of the file may have been cut off.'],
  EndOfFileExpected: ['text after the end of the family', 'Remove what follows the last }.'],
  InvalidCommentToken: ['a comment', 'Remove it, JSON has no comments; the field "note" holds remarks.'],
  UnexpectedEndOfString: [
    'a text that is not closed',
    'Close the text with a quotation mark; write a line break in it as \\n.',
  ],
  UnexpectedEndOfNumber: ['a number that is not finished', 'Write numbers like 0.6 or -1.25.'],
  InvalidUnicode: ['a \\u that is not followed by four digits', 'Write \\u and four hexadecimal digits.'],
  InvalidEscapeCharacter: ['a backslash before a letter that needs none', 'Write a backslash itself as \\\\.'],
  InvalidCharacter: ['a control character inside a text', 'Remove it, or write it as an escape such as \\t.'],
};

/**
 * The JSON value that a text holds.
 *
 * Stricter than the language asks: a field given twice, a field named `__proto__`, and nesting without end are
 * refused, since the first loses a value silently and the others upset programs that read the value later.
 *
 * @param text the whole text; a byte-order mark in front is skipped.
 * @returns the value, or every fault found (syntax: the first one only, with its line and column).
 * @check tests/unit/interchange/parse-text.test.ts
 */
export function parseText(text: string): ParsedText {
  if (typeof text !== 'string') return refuse('file', 'is not a text', 'Choose a family file.');
  if (text.length > MAX_CHARACTERS)
    return refuse(
      'file',
      `has ${text.length} characters, more than ${MAX_CHARACTERS}`,
      'Split the family, or draw its outlines with fewer points.',
    );
  const json = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (json.trim() === '')
    return refuse('file', 'is empty', 'Choose a family file; a new one needs at least one profile.');
  const tooDeep = findTooDeep(json);
  if (tooDeep >= 0)
    return refuse(
      sayOffset(json, tooDeep),
      `lists and objects are nested more than ${MAX_DEPTH} deep`,
      'Remove the needless brackets.',
    );
  try {
    const value: unknown = JSON.parse(json);
    const faults = fieldNameFaults(json);
    return faults.length > 0 ? { ok: false, faults } : { ok: true, value };
  } catch {
    return { ok: false, faults: [syntaxFault(json)] };
  }
}

function refuse(path: string, what: string, cure: string): ParsedText {
  return { ok: false, faults: [{ path, what, cure }] };
}

/** Offset of the first bracket that is nested too deep, or -1. Brackets inside texts do not count. */
function findTooDeep(json: string): number {
  let depth = 0;
  let quoted = false;
  for (let i = 0; i < json.length; i++) {
    const sign = json[i];
    if (quoted) {
      if (sign === '\\') i++;
      else if (sign === '"') quoted = false;
    } else if (sign === '"') quoted = true;
    else if (sign === '[' || sign === '{') depth++;
    else if (sign === ']' || sign === '}') depth--;
    if (depth > MAX_DEPTH) return i;
  }
  return -1;
}

/** The first place where the text stops being JSON. */
function syntaxFault(json: string): FileFault {
  let first: { code: number; offset: number; length: number } | undefined;
  visit(json, { onError: (code, offset, length) => (first ??= { code, offset, length }) }, { disallowComments: true });
  if (!first) return { path: 'file', what: 'is not JSON', cure: 'Choose a family file.' };
  const [what, cure] = MISTAKES[printParseErrorCode(first.code)] ?? ['not JSON', 'Correct it.'];
  const seen = json.slice(first.offset, first.offset + first.length);
  return { path: sayOffset(json, first.offset), what: `not JSON: ${what}${seen ? `, at ${sayText(seen)}` : ''}`, cure };
}

/** Fields that are given twice in one object, or that bear a name no field may have. */
function fieldNameFaults(json: string): FileFault[] {
  const faults: FileFault[] = [];
  const open: Set<string>[] = [];
  visit(json, {
    onObjectBegin: () => {
      open.push(new Set());
    },
    onObjectEnd: () => {
      open.pop();
    },
    onObjectProperty: (name, offset, _length, _line, _column, pathOf) => {
      const names = open[open.length - 1];
      const place = () => `${sayPath([...(pathOf() as FilePath), name])} (${sayOffset(json, offset)})`;
      if (names.has(name))
        faults.push({ path: place(), what: `the field ${sayText(name)} is given twice`, cure: 'Keep one of the two.' });
      if (name === '__proto__')
        faults.push({
          path: place(),
          what: 'a field may not be named "__proto__"',
          cure: 'Remove or rename the field.',
        });
      names.add(name);
    },
  });
  return faults;
}

/** A place in a text as line and column, both counted from 1. */
function sayOffset(text: string, offset: number): string {
  const before = text.slice(0, offset).split(/\r\n|\r|\n/);
  return `line ${before.length}, column ${before[before.length - 1].length + 1}`;
}
