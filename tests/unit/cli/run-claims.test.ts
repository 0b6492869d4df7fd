import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { EXIT } from '../../../src/cli/shell.ts';
import { hearCommand } from '../../kit/hearing-shell.ts';

const DEMO = readFileSync('profiles-demo/polderwick.json', 'utf8');
const LESSON = readFileSync('profiles-demo/first-lesson.json', 'utf8');

/** Runs a command in a shell whose files are the demo, the lesson and `table.csv`. */
function run(line: string, table = '') {
  const files: Record<string, string> = { 'demo.json': DEMO, 'lesson.json': LESSON, 'table.csv': table };
  const readText = (file: string) => {
    if (!Object.hasOwn(files, file)) throw new Error('there is no such file');
    return files[file];
  };
  return hearCommand(line.split(' '), '', { readText });
}

describe('claims', () => {
  test('of the family are told, those that fail first with their reason', async () => {
    const { code, out, err } = await run('claims demo.json');
    expect([code, err]).toEqual([EXIT.notConfirmed, '']);
    const lines = out.split('\n');
    expect(lines[0]).toBe('Polderwick College: 22 claims: 18 confirmed, 3 contradicted, 1 too close to call');
    expect(lines[1]).toBe("x contradicted       Smew blank enters Heron keyway (Porter's wall chart)");
    expect(lines[2]).toMatch(/^ {21}It does not go in: blocked by the right ward/);
    expect(lines.filter((line) => line.startsWith('+ confirmed'))).toHaveLength(18);
  });

  test('of a table stand in their place; all confirmed is done', async () => {
    const { code, out } = await run(
      'claims demo.json --table table.csv',
      ',Heron,Smew\nHeron blank,x,-\nSmew blank,-,x\n',
    );
    expect(code).toBe(EXIT.done);
    expect(out).toMatch(/^Polderwick College: 4 claims: 4 confirmed\n/);
  });

  test('as JSON are complete', async () => {
    const { code, out } = await run('claims demo.json --json');
    expect(code).toBe(EXIT.notConfirmed);
    const { summary, claims } = JSON.parse(out);
    expect(summary).toMatch(/^22 claims: /);
    expect(claims).toHaveLength(22);
    expect(claims[2]).toMatchObject({
      ...{ blank: 'Smew blank', opening: 'Heron keyway', enters: true, by: "Porter's wall chart" },
      ...{ standing: 'contradicted', against: [19], margin: '0.220 mm too deep' },
      pair: { profile: 'smew-blank', opening: 'heron-keyway' },
    });
  });

  test('a family without any has none, and that is no fault', async () => {
    expect(await run('claims lesson.json')).toMatchObject({
      code: EXIT.done,
      out: expect.stringContaining(': 0 claims'),
    });
    expect((await run('claims lesson.json --json')).out).toBe('{\n  "summary": "0 claims",\n  "claims": []\n}\n');
  });

  test('rows that cannot be read are told, the others are checked, and the code says so', async () => {
    const { code, out, err } = await run(
      'claims demo.json --table table.csv',
      'Heron,Heron,yes\nHeron,Smew,perhaps\nSmew,Smew,yes\n',
    );
    expect(code).toBe(EXIT.badInput);
    expect(err).toContain('table.csv: row 2, column 3 (enters): "perhaps" says neither');
    expect(out).toContain('2 claims: 2 confirmed');
  });

  test.each([
    ['claims demo.json --table none.csv', '', 'none.csv: there is no such file\n'],
    [
      'claims demo.json --table table.csv',
      'good morning',
      'table.csv: table: is neither a list of claims nor a matrix',
    ],
    ['claims demo.json --table a --table b', '', '--table is given 2 times, give it once'],
    ['claims demo.json --verify', '', '"claims" takes no --verify'],
    ['claims', '', '"claims" needs the name of a family file'],
    ['claims demo.json --table', '', '--table needs the name of a table of claims'],
  ])('%s is refused in words', async (line, table, words) => {
    const { code, out, err } = await run(line, table);
    expect([code, out]).toEqual([EXIT.badInput, '']);
    expect(err).toContain(words);
  });

  test('names cannot move the cursor of a terminal', async () => {
    const { out } = await run(
      'claims demo.json --table table.csv',
      'blank,keyway,enters,by\nHe\u001b[2Jron,Heron,yes,me\u0007\n',
    );
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is looked for
    expect(out).not.toMatch(/[\u0000-\u0009\u000b-\u001f]/);
  });
});
