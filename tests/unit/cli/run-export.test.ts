import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readPoints } from '../../../src/interchange/csv/read.ts';
import { readDxf } from '../../../src/interchange/dxf/read.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { readSvg } from '../../../src/interchange/svg/read.ts';
import { hearCommand, writtenFiles } from '../../kit/hearing-shell.ts';

const LESSON = readFileSync('profiles-demo/first-lesson.json', 'utf8');

const EMPTY = '{ "format": "sectionary-family", "version": 1, "name": "None", "units": "mm", "profiles": [] }';

/** Runs a command in a shell whose only file is `family.json`; a file in the folder `full` cannot be written. */
async function run(line: string, text = LESSON) {
  const { written, writeText } = writtenFiles();
  const readText = (file: string) => {
    if (file !== 'family.json') throw new Error('there is no such file');
    return text;
  };
  return { written, ...(await hearCommand(line.split(' '), text, { readText, writeText })) };
}

const READERS = { svg: readSvg, dxf: readDxf, csv: readPoints };

function lesson() {
  const read = readFamily(LESSON);
  if (!read.ok) throw new Error('the lesson is not sound');
  return read.document.family.profiles;
}

describe('export', () => {
  test.each(['svg', 'dxf', 'csv'] as const)('prints every outline of the family as %s', async (format) => {
    const { code, out, err } = await run(`export family.json --as ${format}`);
    expect([code, err]).toEqual([0, '']);
    const read = READERS[format](out);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    const profiles = lesson();
    expect(read.drawing.unitsStated).toBe(true);
    expect(read.drawing.paths).toHaveLength(profiles.length);
    const counts = read.drawing.paths.map(({ vertices }) => vertices.length);
    expect(counts).toEqual(profiles.map(({ drawn, ring }) => (drawn ?? ring).length));
  });

  test('writes the profiles asked for, in that order, into a file and says so', async () => {
    const { code, out, err, written } = await run('export family.json --only plover-keyway,heron-blank -o out.dxf');
    expect([code, out, err]).toEqual([0, '', 'out.dxf: 2 outlines written\n']);
    const read = readDxf(String(written.get('out.dxf') ?? ''));
    expect(read.ok && read.drawing.paths.map(({ label }) => label)).toEqual(['Plover keyway', 'Heron blank']);
  });

  test.each([
    [
      'export family.json --as svg --only heron',
      LESSON,
      /family\.json: there is no profile with the id "heron"; it has heron-keyway, /,
    ],
    ['export family.json --as svg -o family.json', LESSON, /family\.json: this is the family file itself/],
    ['export family.json -o full/out.svg', LESSON, /full\/out\.svg: the disk is full\./],
    ['export other.json --as svg', LESSON, /other\.json: there is no such file/],
    ['export family.json', LESSON, /say --as svg, dxf or csv\. Use --help/],
    ['export family.json --as svg', '{', /family\.json: /],
    ['export family.json --as svg', EMPTY, /family\.json: /],
  ])('%s ends with 2 and says why', async (line, text, words) => {
    const { code, out, err, written } = await run(line, text);
    expect([code, out, written.size]).toEqual([2, '', 0]);
    expect(err).toMatch(words);
  });
});
