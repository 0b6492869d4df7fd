import type { BadFile } from './bad-file.ts';
import { family, outlineProfile, SQUARE, withProfile } from './nearly-sound.ts';

/** Texts that are no JSON, or JSON that loses or hides something. */
export const SYNTAX: BadFile[] = [
  { name: 'empty text', text: '', path: 'file', words: /is empty/ },
  { name: 'blank text', text: ' \n\t ', path: 'file', words: /is empty/ },
  {
    name: 'text that is no JSON',
    text: 'Heron, Bittern, Plover',
    path: 'line 1, column 1',
    words: /not JSON.*"Heron"/,
  },
  {
    name: 'cut off in the middle',
    text: family().slice(0, 60),
    path: /^line 1, column \d+$/,
    words: /not closed|missing/,
  },
  {
    name: 'a comma too many',
    text: '{\n  "format": "sectionary-family",\n}',
    path: 'line 3, column 1',
    words: /name of a field is missing/,
  },
  {
    name: 'a comma missing',
    text: '{ "format": "sectionary-family"\n  "version": 1 }',
    path: 'line 2, column 3',
    words: /comma is missing/,
  },
  { name: 'single quotes', text: "{ 'format': 1 }", path: 'line 1, column 3', words: /not JSON/ },
  { name: 'a comment', text: '{ // Heron\n "format": 1 }', path: 'line 1, column 3', words: /comment/ },
  {
    name: 'NaN as a coordinate',
    text: family().replace('[2,0]', '[NaN,0]'),
    path: /^line 1, column \d+$/,
    words: /JSON does not know, at "NaN"/,
  },
  {
    name: 'Infinity as a size',
    text: family().replace('"thickness":2', '"thickness":-Infinity'),
    path: /^line 1, column \d+$/,
    words: /JSON does not know/,
  },
  {
    name: 'a second value after the family',
    text: `${family()} {}`,
    path: /^line 1, column \d+$/,
    words: /after the end/,
  },
  {
    name: 'a field given twice',
    text: family().replace('"units":"mm"', '"units":"mm","units":"in"'),
    path: /^units \(line 1, column \d+\)$/,
    words: /"units" is given twice/,
  },
  {
    name: 'nesting without end',
    text: `${'['.repeat(100_000)}`,
    path: 'line 1, column 65',
    words: /nested more than 64 deep/,
  },
  {
    name: 'deep nesting in an unknown field',
    text: family({ extra: JSON.parse(`${'['.repeat(80)}${']'.repeat(80)}`) }),
    path: /^line 1, column \d+$/,
    words: /nested more than 64 deep/,
  },
  {
    name: 'a text without end',
    text: `{"name":"${'x'.repeat(20_000_000)}"}`,
    path: 'file',
    words: /characters, more than 20000000/,
  },
];

/** Names that programs could stumble over. */
export const PROTOTYPES: BadFile[] = [
  {
    name: 'a field named __proto__ on top',
    text: family().replace('{', '{"__proto__":{"polluted":true},'),
    path: /^__proto__ \(line 1, column 2\)$/,
    words: /may not be named "__proto__"/,
  },
  {
    name: 'a field named __proto__ in a groove',
    text: family().replace('"side"', '"__proto__":{"depth":9},"side"'),
    path: /^profiles\[1\]\.milled\.grooves\[0\]\.__proto__ /,
    words: /may not be named/,
  },
  {
    name: 'a field named __proto__ by escape',
    text: family().replace('{', '{"\\u005f_proto__":1,'),
    path: /^__proto__ /,
    words: /may not be named/,
  },
  {
    name: 'the id constructor',
    text: withProfile(outlineProfile(SQUARE, { id: 'constructor' })),
    path: 'profiles[1].id',
    words: /"constructor".*programs reserve/,
    byShape: true,
  },
  {
    name: 'the id __proto__',
    text: withProfile(outlineProfile(SQUARE, { id: '__proto__' })),
    path: 'profiles[1].id',
    words: /"__proto__".*letters, digits/,
    byShape: true,
  },
];
