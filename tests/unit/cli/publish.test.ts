import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { hearCommand, writtenFiles } from '../../kit/hearing-shell.ts';

const LESSON = readFileSync('profiles-demo/first-lesson.json', 'utf8');

const EMPTY =
  '{ "format": "sectionary-family", "version": 1, "name": "None", "units": "mm", "runningClearance": 0.04, "profiles": [] }';

/** Runs a command in a shell whose only file is `family.json`; a file in the folder `full` cannot be written. */
async function run(line: string, text = LESSON) {
  const { written, writeText } = writtenFiles();
  const { code, out, err } = await hearCommand(line.split(' '), text, { writeText });
  return { code, written, said: out + err };
}

function beginning(content: string | Uint8Array | undefined): string {
  return typeof content === 'string' ? content : Buffer.from(content ?? []).toString('latin1');
}

describe('publish', () => {
  test('raises on the chart what the file says is in between, or what the option says instead', async () => {
    const between = JSON.parse(LESSON);
    between.profiles.find((profile: { id: string }) => profile.id === 'bittern-keyway').inBetween = true;
    const chartOf = async (options: string, text = JSON.stringify(between)) => {
      const { written, said } = await run(`publish family.json --sheet chart${options} -o out.svg`, text);
      expect(said).toMatch(/written/);
      return beginning(written.get('out.svg'));
    };
    const plain = await chartOf('', LESSON);
    const said = await chartOf('');
    expect(said).not.toBe(plain);
    expect(await chartOf(' --in-between bittern-keyway', LESSON)).toBe(said);
    expect(await chartOf(' --in-between heron-keyway')).not.toBe(said);
  });

  test.each(['chart', 'matrix', 'scale', 'card', 'answers'])('writes the sheet %s as PDF', async (sheet) => {
    const { code, written, said } = await run(`publish family.json --sheet ${sheet} -o out.pdf`);
    expect([code, said]).toEqual([0, expect.stringMatching(/^out\.pdf: \d+ pages? written\n$/)]);
    expect(beginning(written.get('out.pdf'))).toMatch(/^%PDF-1\.7/);
  });

  test('writes one SVG file a page, numbered where there are several', async () => {
    const one = await run('publish family.json --sheet matrix --paper A3 --landscape --grey -o out.svg');
    expect([...one.written.keys()]).toEqual(['out.svg']);
    expect(beginning(one.written.get('out.svg'))).toContain('width="420mm" height="297mm"');
    const several = await run('publish family.json --sheet answers --questions 30 -o a.b/out.svg');
    expect([...several.written.keys()].slice(0, 2)).toEqual(['a.b/out-1.svg', 'a.b/out-2.svg']);
    expect(several.said).toMatch(/^a\.b\/out-1\.svg to a\.b\/out-\d\.svg: \d pages written\n$/);
  });

  test('holds the paper as is usual for each sheet, or as it is told', async () => {
    const sizeOf = async (sheet: string) => {
      const { written } = await run(`publish family.json --sheet ${sheet} -o out.svg`);
      return /width="[\d.]+mm" height="[\d.]+mm"/.exec(beginning([...written.values()][0]))?.[0];
    };
    const [lying, upright] = ['width="297mm" height="210mm"', 'width="210mm" height="297mm"'];
    expect([await sizeOf('chart'), await sizeOf('scale')]).toEqual([lying, upright]);
    expect([await sizeOf('chart --portrait'), await sizeOf('scale --landscape')]).toEqual([upright, lying]);
  });

  test('writes slides as one HTML file and the matrix as a table', async () => {
    const slides = await run('publish family.json --sheet slides -o out.html');
    expect(beginning(slides.written.get('out.html'))).toMatch(/^<!doctype html>/i);
    const table = await run('publish family.json --sheet matrix -o out.csv');
    expect([beginning(table.written.get('out.csv')).slice(0, 10), table.said]).toEqual([
      'name,kind,',
      'out.csv: a table written\n',
    ]);
  });

  test('tells a date only where it is given', async () => {
    const svg = async (more: string) =>
      beginning((await run(`publish family.json --sheet matrix${more} -o out.svg`)).written.get('out.svg'));
    expect(await svg(' --date 2030-05-14')).toContain('2030-05-14');
    expect(await svg('')).toBe(await svg(''));
  });
});

describe('publish, asked wrongly', () => {
  test.each([
    ['--sheet poster -o a.pdf', '--sheet is "poster", must be chart, matrix, scale, card, answers or slides'],
    ['-o a.pdf', 'say --sheet chart, matrix, scale, card, answers or slides'],
    ['--sheet chart', 'say -o and the name of a file that ends in .pdf or .svg'],
    ['--sheet chart -o a.csv', '"a.csv" does not end in .pdf or .svg, which --sheet chart is written as'],
    ['--sheet chart -o a', '"a" does not end in .pdf or .svg'],
    ['--sheet chart --paper A5 -o a.pdf', '--paper is "A5", must be A4, A3, Letter or A1'],
    ['--sheet chart --landscape --portrait -o a.pdf', 'say --landscape or --portrait, not both'],
    ['--sheet chart --enlarge 3 -o a.pdf', '--enlarge goes with --sheet scale'],
    ['--sheet chart --of x -o a.pdf', '--of goes with --sheet scale or card'],
    ['--sheet scale --enlarge six -o a.pdf', '--enlarge is "six", must be a number'],
    ['--sheet answers --questions 2.5 -o a.pdf', '--questions is "2.5", must be a whole number'],
    ['--sheet scale --of a,b,c -o a.pdf', '--of takes one opening and one blank'],
    ['--sheet card --of a,b -o a.pdf', '--of takes one blank or holder for a card'],
    ['--sheet card --of a, -o a.pdf', '--of needs an id where there is none'],
    ['--sheet chart --units cm -o a.pdf', '--units is "cm", must be mm or in'],
    ['--sheet scale --enlarge 99 -o a.pdf', '--enlarge is "99", must be a number from 1 to 50.'],
    ['--sheet scale --enlarge -3 -o a.pdf', '--enlarge is "-3", must be a number from 1 to 50.'],
    ['--sheet answers --questions 0 -o a.pdf', '--questions is "0", must be a whole number from 1 to 100.'],
    ['--sheet answers --seed 99999999999 -o a.pdf', 'must be a whole number from 0 to 999999999.'],
    ['--sheet chart --date foo -o a.pdf', '--date is "foo", must be a date YYYY-MM-DD, as in 2030-05-14.'],
    ['--sheet chart --date 2030-02-30 -o a.pdf', '--date is "2030-02-30", must be a date'],
    [
      '--sheet scale --of heron-keyway,bittern-keyway -o a.pdf',
      'family.json: --of is "heron-keyway,bittern-keyway", must be one opening and one blank or tool.',
    ],
    ['--sheet scale --of heron-keyway,heron-keyway -o a.pdf', 'must be one opening and one blank or tool.'],
    [
      '--sheet scale --of heron-keyway,none -o a.pdf',
      'family.json: there is no opening, blank or tool with the id "none"; it has ',
    ],
    ['--sheet card --of none -o a.pdf', 'family.json: there is no blank, tool or holder with the id "none"; it has '],
    ['--sheet chart -o full/a.pdf', 'full/a.pdf: the disk is full'],
  ])('%s', async (words, fault) => {
    const { code, written, said } = await run(`publish family.json ${words}`);
    expect([code, written.size]).toEqual([2, 0]);
    expect(said).toContain(fault);
  });

  test('of a family without parts', async () => {
    const { code, said } = await run('publish family.json --sheet chart -o a.pdf', EMPTY);
    expect([code, said]).toEqual([
      2,
      'family.json: has no openings, so there is nothing to lay out. Add a keyway to the file.\n',
    ]);
  });

  test('never writes over the family file', async () => {
    const { code, said, written } = await run('publish a.svg --sheet chart -o a.svg');
    expect([code, written.size]).toEqual([2, 0]);
    expect(said).toContain('this is the family file itself');
  });
});
