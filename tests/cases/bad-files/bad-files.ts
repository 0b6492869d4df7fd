/** A text that is no family file, and what a reader must say about it. */
export interface BadFile {
  readonly name: string;
  readonly text: string;
  /** Where the first fault is said to be. */
  readonly path: string | RegExp;
  /** Key words of what is said. */
  readonly words: RegExp;
  /** True where the published schema alone refuses the value too (see tests/outside/schema.test.ts). */
  readonly byShape?: boolean;
}

type Json = Record<string, unknown>;

const SQUARE = [
  [0, 0],
  [2, 0],
  [2, 8],
  [0, 8],
];

const GROOVE = { side: 'left', bottom: 1.2, width: 0.9, depth: 0.6 };

const outlineProfile = (outline: unknown, more: Json = {}): Json => ({
  id: 'heron-keyway',
  kind: 'opening',
  name: 'Heron keyway',
  outline,
  ...more,
});

const milledProfile = (more: Json = {}, grooves: unknown = [GROOVE]): Json => ({
  id: 'heron-blank',
  kind: 'blank',
  name: 'Heron blank',
  milled: { thickness: 2, height: 8.4, grooves, ...more },
});

/** A sound family of two profiles with parts replaced. */
export function familyValue(more: Json = {}): Json {
  return {
    format: 'sectionary-family',
    version: 1,
    name: 'Two herons',
    units: 'mm',
    runningClearance: 0.04,
    profiles: [outlineProfile(SQUARE), milledProfile()],
    ...more,
  };
}

const family = (more: Json = {}): string => JSON.stringify(familyValue(more));
const withProfile = (profile: unknown): string =>
  family({ profiles: [outlineProfile(SQUARE, { id: 'first' }), profile] });
const withOutline = (outline: unknown): string => withProfile(outlineProfile(outline));
const without = (...fields: string[]): string => family(Object.fromEntries(fields.map((field) => [field, undefined])));

/** A regular polygon of many points, all different, radius 4. */
const circle = (count: number) =>
  Array.from({ length: count }, (_, i) => [
    4 * Math.cos((2 * Math.PI * i) / count),
    4 * Math.sin((2 * Math.PI * i) / count),
  ]);

const SYNTAX: BadFile[] = [
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

const PROTOTYPES: BadFile[] = [
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

const TOP: BadFile[] = [
  {
    name: 'a list instead of an object',
    text: '[]',
    path: 'file',
    words: /holds a list with 0 entries, must hold one object/,
    byShape: true,
  },
  { name: 'null', text: 'null', path: 'file', words: /holds null/, byShape: true },
  { name: 'no format', text: without('format'), path: 'format', words: /missing.*sectionary-family/, byShape: true },
  {
    name: 'another format',
    text: family({ format: 'drawing' }),
    path: 'format',
    words: /"drawing".*sectionary-family/,
    byShape: true,
  },
  { name: 'no version', text: without('version'), path: 'version', words: /whole number/, byShape: true },
  { name: 'a version in words', text: family({ version: '1' }), path: 'version', words: /whole number/, byShape: true },
  {
    name: 'version 0',
    text: family({ version: 0 }),
    path: 'version',
    words: /is 0, must be a whole number, 1/,
    byShape: true,
  },
  { name: 'a half version', text: family({ version: 1.5 }), path: 'version', words: /whole number/, byShape: true },
  {
    name: 'a version newer than known',
    text: family({ version: 2 }),
    path: 'version',
    words: /2, newer than the version 1/,
    byShape: true,
  },
  { name: 'no name', text: without('name'), path: 'name', words: /missing.*text in quotes/, byShape: true },
  { name: 'a blank name', text: family({ name: '  ' }), path: 'name', words: /must not be blank/, byShape: true },
  {
    name: 'a name without end',
    text: family({ name: 'x'.repeat(201) }),
    path: 'name',
    words: /at most 200 characters/,
    byShape: true,
  },
  { name: 'no units', text: without('units'), path: 'units', words: /missing.*"mm" or "in"/, byShape: true },
  { name: 'an unknown unit', text: family({ units: 'cm' }), path: 'units', words: /"cm".*"mm" or "in"/, byShape: true },
  {
    name: 'no running clearance',
    text: without('runningClearance'),
    path: 'runningClearance',
    words: /missing.*number/,
    byShape: true,
  },
  {
    name: 'a running clearance in words',
    text: family({ runningClearance: '0.04 mm' }),
    path: 'runningClearance',
    words: /"0\.04 mm".*a number/,
    byShape: true,
  },
  {
    name: 'a negative running clearance',
    text: family({ runningClearance: -0.04 }),
    path: 'runningClearance',
    words: /-0\.04.*at least 0/,
    byShape: true,
  },
  {
    name: 'a running clearance of 1e9',
    text: family({ runningClearance: 1e9 }),
    path: 'runningClearance',
    words: /1000000000 mm, more than 47\.45 mm/,
  },
  {
    name: 'a running clearance beyond all numbers',
    text: family().replace('0.04', '1e999'),
    path: 'runningClearance',
    words: /Infinity.*a number/,
    byShape: true,
  },
  {
    name: 'an empty family',
    text: family({ profiles: [] }),
    path: 'profiles',
    words: /0 entries, must have at least 1 entry/,
    byShape: true,
  },
  { name: 'no profiles', text: without('profiles'), path: 'profiles', words: /missing.*list/, byShape: true },
  {
    name: 'profiles by name',
    text: family({ profiles: { heron: {} } }),
    path: 'profiles',
    words: /an object.*a list/,
    byShape: true,
  },
  {
    name: 'too many profiles',
    text: family({ profiles: Array.from({ length: 2001 }, (_, i) => outlineProfile(SQUARE, { id: `p${i}` })) }),
    path: 'profiles',
    words: /2001 profiles, more than 2000/,
    byShape: true,
  },
];

const PROFILES: BadFile[] = [
  {
    name: 'a profile that is a text',
    text: withProfile('heron'),
    path: 'profiles[1]',
    words: /"heron".*an object/,
    byShape: true,
  },
  {
    name: 'a profile without id',
    text: withProfile(outlineProfile(SQUARE, { id: undefined })),
    path: 'profiles[1].id',
    words: /missing/,
    byShape: true,
  },
  {
    name: 'an id with a space',
    text: withProfile(outlineProfile(SQUARE, { id: 'heron keyway' })),
    path: 'profiles[1].id',
    words: /letters, digits/,
    byShape: true,
  },
  {
    name: 'an id given twice',
    text: withProfile(outlineProfile(SQUARE, { id: 'first' })),
    path: 'profiles[1].id',
    words: /"first" is taken by profiles\[0\]/,
  },
  {
    name: 'an unknown kind',
    text: withProfile(outlineProfile(SQUARE, { kind: 'key' })),
    path: 'profiles[1].kind',
    words: /heron-keyway: .*"key".*"opening" or "blank" or "tool"/,
    byShape: true,
  },
  {
    name: 'a section that is a number',
    text: withProfile(outlineProfile(SQUARE, { section: 7 })),
    path: 'profiles[1].section',
    words: /7, must be a text/,
    byShape: true,
  },
  {
    name: 'half a chamber',
    text: withProfile(outlineProfile(SQUARE, { chambers: 5.5 })),
    path: 'profiles[1].chambers',
    words: /5\.5.*whole number/,
    byShape: true,
  },
  {
    name: 'thirteen chambers',
    text: withProfile(outlineProfile(SQUARE, { chambers: 13 })),
    path: 'profiles[1].chambers',
    words: /at most 12/,
    byShape: true,
  },
  {
    name: 'neither outline nor milled',
    text: withProfile(outlineProfile(undefined)),
    path: 'profiles[1]',
    words: /heron-keyway: has neither "outline" nor "milled"/,
    byShape: true,
  },
  {
    name: 'both outline and milled',
    text: withProfile({ ...milledProfile(), outline: SQUARE }),
    path: 'profiles[1]',
    words: /has both "outline" and "milled"/,
    byShape: true,
  },
  {
    name: 'an outline that is null',
    text: withOutline(null),
    path: 'profiles[1].outline',
    words: /null.*a list/,
    byShape: true,
  },
];

const OUTLINES: BadFile[] = [
  {
    name: 'an outline of two points',
    text: withOutline(SQUARE.slice(0, 2)),
    path: 'profiles[1].outline',
    words: /2 entries, must have at least 3/,
    byShape: true,
  },
  {
    name: 'two points and a closing one',
    text: withOutline([
      [0, 0],
      [2, 0],
      [0, 0],
    ]),
    path: 'profiles[1].outline',
    words: /2 different vertices/,
  },
  {
    name: 'a point of one number',
    text: withOutline([[0, 0], [2], [2, 8]]),
    path: 'profiles[1].outline[1]',
    words: /1 entry, must have at least 2/,
    byShape: true,
  },
  {
    name: 'a point of three numbers',
    text: withOutline([
      [0, 0],
      [2, 0, 1],
      [2, 8],
    ]),
    path: 'profiles[1].outline[1]',
    words: /3 entries, must have at most 2/,
    byShape: true,
  },
  {
    name: 'a point with names',
    text: withOutline([{ x: 0, y: 0 }, [2, 0], [2, 8]]),
    path: 'profiles[1].outline[0]',
    words: /an object.*pair of numbers/,
    byShape: true,
  },
  {
    name: 'a coordinate in words',
    text: withOutline([
      [0, 0],
      ['2', 0],
      [2, 8],
    ]),
    path: 'profiles[1].outline[1][0]',
    words: /heron-keyway: .*"2".*a number/,
    byShape: true,
  },
  {
    name: 'a coordinate that is null',
    text: withOutline([
      [0, 0],
      [2, null],
      [2, 8],
    ]),
    path: 'profiles[1].outline[1][1]',
    words: /null.*a number/,
    byShape: true,
  },
  {
    name: 'a coordinate beyond all numbers',
    text: withOutline(SQUARE).replace('[2,0]', '[1e400,0]').replace('[2,0]', '[1e400,0]'),
    path: 'profiles[0].outline[1][0]',
    words: /Infinity.*a number/,
    byShape: true,
  },
  {
    name: 'a coordinate of 1e9',
    text: withOutline([
      [0, 0],
      [1e9, 0],
      [2, 8],
    ]),
    path: 'profiles[1].outline[1]',
    words: /heron-keyway: lies more than 47\.45 mm/,
  },
  {
    name: 'an inch outline just too large',
    text: family({
      units: 'in',
      profiles: [
        outlineProfile([
          [0, 0],
          [1.87, 0],
          [1, 1],
        ]),
      ],
    }),
    path: 'profiles[0].outline[1]',
    words: /more than 1\.868 in/,
  },
  {
    name: 'a self-crossing outline',
    text: withOutline([
      [0, 0],
      [4, 0],
      [4, 4],
      [1, -1],
    ]),
    path: /^profiles\[1\]\.outline\[\d\]$/,
    words: /crosses edge \d at \(.* mm, .* mm\)/,
  },
  {
    name: 'a bow-tie',
    text: withOutline([
      [0, 0],
      [2, 2],
      [2, 0],
      [0, 2],
    ]),
    path: 'profiles[1].outline[0]',
    words: /edge 0 crosses edge 2 at \(1 mm, 1 mm\)/,
  },
  {
    name: 'an outline without area',
    text: withOutline([
      [0, 0],
      [1, 1],
      [3, 3],
    ]),
    path: 'profiles[1].outline[0]',
    words: /encloses nothing/,
  },
  {
    name: 'a spike that runs back on itself',
    text: withOutline([
      [0, 0],
      [4, 0],
      [4, 4],
      [2, 4],
      [2, 6],
      [2, 4],
      [0, 4],
    ]),
    path: /^profiles\[1\]\.outline\[\d\]$/,
    words: /same point|runs back/,
  },
  {
    name: 'a vertex on another edge',
    text: withOutline([
      [0, 0],
      [4, 0],
      [4, 4],
      [2, 0],
      [0, 4],
    ]),
    path: 'profiles[1].outline[3]',
    words: /vertex 3 lies on edge 0/,
  },
  {
    name: 'a point used twice',
    text: withOutline([
      [0, 0],
      [2, 2],
      [4, 0],
      [4, 4],
      [2, 2],
      [0, 4],
    ]),
    path: /^profiles\[1\]\.outline\[[14]\]$/,
    words: /vertex 1 and vertex 4 are the same point/,
  },
  {
    name: 'a point repeated in a row',
    text: withOutline([
      [0, 0],
      [2, 0],
      [2, 0],
      [2, 8],
    ]),
    path: 'profiles[1].outline[2]',
    words: /is the same point as profiles\[1\]\.outline\[1\]/,
  },
  {
    name: 'all points the same',
    text: withOutline([
      [1, 1],
      [1, 1],
      [1, 1],
      [1, 1],
    ]),
    path: /^profiles\[1\]\.outline\[\d\]$/,
    words: /same point/,
  },
  {
    name: 'a closing point given twice',
    text: withOutline([...SQUARE, [0, 0], [0, 0]]),
    path: 'profiles[1].outline[0]',
    words: /same point/,
  },
  {
    name: '10,001 points',
    text: withOutline(circle(10_001)),
    path: 'profiles[1].outline',
    words: /10001.*more than 10000/,
  },
  {
    name: '100,000 points',
    text: withOutline(circle(100_000)),
    path: 'profiles[1].outline',
    words: /100000 points, more than 10000/,
    byShape: true,
  },
];

const MILLED: BadFile[] = [
  {
    name: 'milled as a list',
    text: withProfile({ ...milledProfile(), milled: [] }),
    path: 'profiles[1].milled',
    words: /a list.*an object/,
    byShape: true,
  },
  {
    name: 'no thickness',
    text: withProfile(milledProfile({ thickness: undefined })),
    path: 'profiles[1].milled.thickness',
    words: /heron-blank: is missing/,
    byShape: true,
  },
  {
    name: 'thickness 0',
    text: withProfile(milledProfile({ thickness: 0 })),
    path: 'profiles[1].milled.thickness',
    words: /0, must be more than 0/,
    byShape: true,
  },
  {
    name: 'a negative height',
    text: withProfile(milledProfile({ height: -8 })),
    path: 'profiles[1].milled.height',
    words: /more than 0/,
    byShape: true,
  },
  {
    name: 'a thickness below a nanometre',
    text: withProfile(milledProfile({ thickness: 1e-9 })),
    path: 'profiles[1].milled.thickness',
    words: /greater than 0/,
  },
  {
    name: 'a height of 1e9',
    text: withProfile(milledProfile({ height: 1e9 })),
    path: 'profiles[1].milled.height',
    words: /1000000000 mm, more than 47\.45 mm/,
  },
  {
    name: 'grooves missing',
    text: withProfile(milledProfile({ grooves: undefined })),
    path: 'profiles[1].milled.grooves',
    words: /missing.*list/,
    byShape: true,
  },
  {
    name: 'a groove on the back',
    text: withProfile(milledProfile({}, [{ ...GROOVE, side: 'back' }])),
    path: 'profiles[1].milled.grooves[0].side',
    words: /"back".*"left" or "right"/,
    byShape: true,
  },
  {
    name: 'a groove below the back',
    text: withProfile(milledProfile({}, [{ ...GROOVE, bottom: -0.1 }])),
    path: 'profiles[1].milled.grooves[0].bottom',
    words: /at least 0/,
    byShape: true,
  },
  {
    name: 'a flank of 90 degrees',
    text: withProfile(milledProfile({}, [{ ...GROOVE, flankDeg: 90 }])),
    path: 'profiles[1].milled.grooves[0].flankDeg',
    words: /less than 90/,
    byShape: true,
  },
  {
    name: 'a groove off the blade',
    text: withProfile(milledProfile({}, [{ ...GROOVE, bottom: 8 }])),
    path: 'profiles[1].milled.grooves[0].width',
    words: /8 mm to 8\.9 mm, off the blade/,
  },
  {
    name: 'a groove through the blade',
    text: withProfile(milledProfile({}, [{ ...GROOVE, depth: 2.2 }])),
    path: 'profiles[1].milled.grooves[0].depth',
    words: /heron-blank: the groove goes through the blade: depth 2\.2 mm/,
  },
  {
    name: 'overlapping grooves',
    text: withProfile(milledProfile({}, [GROOVE, { ...GROOVE, bottom: 1.9 }])),
    path: 'profiles[1].milled.grooves[1].bottom',
    words: /overlap from 1\.9 mm to 2\.1 mm.*grooves\[0\]/,
  },
  {
    name: 'grooves that leave no web',
    text: withProfile(
      milledProfile({}, [
        { ...GROOVE, depth: 1.1 },
        { ...GROOVE, depth: 0.9, side: 'right' },
      ]),
    ),
    path: 'profiles[1].milled.grooves[1].depth',
    words: /no web/,
  },
  {
    name: 'flanks that meet',
    text: withProfile(milledProfile({}, [{ ...GROOVE, flankDeg: 40 }])),
    path: 'profiles[1].milled.grooves[0].flankDeg',
    words: /flanks meet/,
  },
  {
    name: 'a root radius too large',
    text: withProfile(milledProfile({}, [{ ...GROOVE, rootRadius: 0.5 }])),
    path: 'profiles[1].milled.grooves[0].rootRadius',
    words: /root radius 0\.5 mm is too large/,
  },
  {
    name: 'a back radius too large',
    text: withProfile(milledProfile({ backRadius: 1.5 })),
    path: 'profiles[1].milled.backRadius',
    words: /back radius is too large/,
  },
  {
    name: 'too many grooves',
    text: withProfile(milledProfile({}, Array(201).fill(GROOVE))),
    path: 'profiles[1].milled.grooves',
    words: /201 entries, must have at most 200/,
    byShape: true,
  },
];

/** Every text that a reader must refuse. */
export const BAD_FILES: readonly BadFile[] = [...SYNTAX, ...PROTOTYPES, ...TOP, ...PROFILES, ...OUTLINES, ...MILLED];
