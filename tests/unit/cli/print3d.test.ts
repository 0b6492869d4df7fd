import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { hearCommand, writtenFiles } from '../../kit/hearing-shell.ts';

const LESSON = readFileSync('profiles-demo/first-lesson.json', 'utf8');

async function run(line: string) {
  const { written, writeText } = writtenFiles();
  return { written, ...(await hearCommand(line.split(' '), LESSON, { writeText })) };
}

describe('print3d', () => {
  test('writes one 3MF file, and says what was found out', async () => {
    const { code, err, written } = await run('print3d family.json --gap 0.3 -o set.3mf');
    expect(code).toBe(0);
    expect([...written.keys()]).toEqual(['set.3mf']);
    const bytes = written.get('set.3mf');
    expect(bytes).toBeInstanceOf(Uint8Array);
    expect(String.fromCharCode(...(bytes as Uint8Array).slice(0, 2))).toBe('PK');
    expect(err).toContain('note: Heron blank in Heron keyway: it enters with less room than the fitting gap adds');
    expect(err).toMatch(/set\.3mf: 7 parts on 1 bed, 4:1, written\n$/);
  });

  test('writes an STL file a part, numbered and named', async () => {
    const { code, written } = await run(
      'print3d family.json --no-board --no-letters --only heron-keyway,heron-blank -o set.stl',
    );
    expect(code).toBe(0);
    expect([...written.keys()]).toEqual(['set-1-block.stl', 'set-2-heron-blank.stl']);
    for (const bytes of written.values()) {
      const view = new DataView((bytes as Uint8Array).buffer);
      expect(bytes).toHaveLength(84 + 50 * view.getUint32(80, true));
    }
    const one = await run('print3d family.json --no-board --only heron-blank -o set.STL');
    expect([...one.written.keys()]).toEqual(['set.STL']);
  });

  test.each([
    ['-o set.txt', '"set.txt" ends neither in .3mf nor in .stl'],
    ['', 'say -o and the name of a file that ends in .3mf or .stl'],
    ['--scale 0 -o a.3mf', '--scale is "0", must be a number from 1 to 12'],
    ['--columns 2.5 -o a.3mf', '--columns is "2.5", must be a whole number'],
    ['--bed 200 -o a.3mf', '--bed is "200", must be width and depth of the bed in mm'],
    ['--bed 200x9 -o a.3mf', 'each from 50 to 2000'],
    ['--tip round -o a.3mf', '--tip is "round", must be flat, chamfered or pointed'],
    ['--only stork -o a.3mf', 'there is no profile with the id "stork"; it has heron-keyway'],
    ['--only heron-blank, -o a.3mf', '--only needs ids of profiles parted by commas'],
    ['--no-board -o full/a.3mf', 'full/a.3mf: the disk is full'],
    ['-o a.3mf -o b.3mf', '--output is given 2 times'],
    ['--json -o a.3mf', '"print3d" takes no --json'],
  ])('"%s" is refused in words', async (options, words) => {
    const { code, err, written } = await run(`print3d family.json ${options}`.trim());
    expect([code, written.size]).toEqual([2, 0]);
    expect(err).toContain(words);
  });

  test('never writes over the family file', async () => {
    const { code, err } = await run('print3d set.stl --no-board --only heron-blank -o set.stl');
    expect(code).toBe(2);
    expect(err).toContain('this is the family file itself');
  });
});
