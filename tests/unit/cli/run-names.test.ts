import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseCommand } from '../../../src/cli/parse-command.ts';
import type { Shell } from '../../../src/cli/shell.ts';
import { hearCommand } from '../../kit/hearing-shell.ts';

const COLLEGE = readFileSync('profiles-demo/polderwick.json', 'utf8');
const LESSON = readFileSync('profiles-demo/first-lesson.json', 'utf8');

function run(words: readonly string[], text = COLLEGE, jobs: Partial<Shell['jobs']> = {}) {
  return hearCommand(words, text, { jobs });
}

describe('ask', () => {
  test('answers in plain words', async () => {
    const { code, out } = await run(['ask', 'family.json', 'Does the nose feeler go into PC 105?']);
    expect(code).toBe(0);
    expect(out).toContain('PC 105 is a blank number in "Stores list", not a keyway');
    expect(out).toContain('No: Nose feeler does not go into Heron keyway.');
  });

  test('offers questions where a name is not there', async () => {
    const { code, out } = await run(['ask', 'family.json', 'Does Hereon go into Smew?']);
    expect(code).toBe(0);
    expect(out.split('\n')).toContain('- Does Heron go into Smew?');
  });

  test('lets no control character of a question reach the terminal', async () => {
    const { out } = await run(['ask', 'family.json', 'what is "X\u001b[2J 9"']);
    expect(out).not.toContain('\u001b');
    expect(out).toContain('no name');
  });

  test('stops when it is told to', async () => {
    let now = 0;
    const { code, out } = await run(['ask', 'f.json', 'What is Heron?'], COLLEGE, {
      cancelled: () => true,
      now: () => (now += 100),
    });
    expect([code, out]).toEqual([130, '']);
  });

  test('needs a question', () => {
    expect(parseCommand(['ask', 'f.json'])).toEqual({ ok: false, fault: '"ask" needs a question in quotation marks' });
    expect(parseCommand(['ask', 'f.json', 'what', 'is'])).toEqual({ ok: false, fault: '"ask" takes no "is"' });
  });
});

describe('names', () => {
  test('lists every name with what it stands for, and those that mislead', async () => {
    const { code, out } = await run(['names', 'family.json']);
    expect(code).toBe(0);
    expect(out).toContain('PC 105: blank, section Heron, 6 chambers, in "Stores list"');
    expect(out).toContain('PC 99: blank, section Heron, 5 chambers, in "Stores list", now PC 106');
    expect(out).toMatch(/Names that mislead\n"HB" joins the names of Heron and Bittern/);
    expect(out).toContain('Instead: PC 140.');
  });

  test('prints the same as JSON', async () => {
    const { out } = await run(['names', 'family.json', '--json']);
    const { names, misleading } = JSON.parse(out);
    expect(names).toContainEqual(
      expect.objectContaining({ text: 'W-12', scheme: "Porter's book", kind: 'keyway', section: 'Dunlin' }),
    );
    expect(misleading.map(({ kind }: { kind: string }) => kind)).toContain('two schemes');
  });

  test('says so where none misleads', async () => {
    expect((await run(['names', 'family.json'], LESSON)).out).toContain('No name misleads.');
  });
});
