import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Shell } from '../../../src/cli/shell.ts';
import { largeFamily } from '../../cases/large-families.ts';
import { hearCommand } from '../../kit/hearing-shell.ts';

const LESSON = readFileSync('profiles-demo/first-lesson.json', 'utf8');
const COLLEGE = readFileSync('profiles-demo/polderwick.json', 'utf8');
/** The lesson with its openings only, or without them. */
function lessonWith(openings: boolean): string {
  const family = JSON.parse(LESSON);
  const profiles = family.profiles.filter(({ kind }: { kind: string }) => (kind === 'opening') === openings);
  return JSON.stringify({ ...family, profiles });
}

function run(line: string, text: string, jobs: Partial<Shell['jobs']> = {}) {
  return hearCommand(line.split(' '), text, { jobs });
}

describe('tiers', () => {
  test('tells the tiers from the top down, each with what it enters and its neighbours', async () => {
    const { code, out } = await run('tiers family.json --blanks', COLLEGE);
    expect(code).toBe(0);
    expect(out).toMatch(/^Polderwick College: 16 blanks in 10 openings$/m);
    expect(out).toContain(
      [
        'Tier 3',
        '  Causeway group blank  [group]',
        '      enters 7 of 10: Heron, Smew, Bittern, Ruff, Plover, Knot and Curlew',
        '      above  Ruff blank, Reed group blank and Dyke group blank',
        '      below  Polder all-section blank',
      ].join('\n'),
    );
    expect(out).toContain('Heron blank, five chambers; and Heron blank, six chambers. They differ only in length.');
    expect(out.match(/^Tier \d$/gm)).toEqual(['Tier 4', 'Tier 3', 'Tier 2', 'Tier 1']);
  });

  test('with tools has those too, and what enters nothing', async () => {
    const { out } = await run('tiers family.json', COLLEGE);
    expect(out).toMatch(/20 blanks and tools in 10 openings/);
    expect(out).toContain('  Polder all-section blank and Strip 0.55 x 6  [all]');
    expect(out).toContain('  Strip 1.75 x 6  [nothing]\n      enters none of 10\n');
  });

  test('as JSON gives nodes, covers and the size of the lattice', async () => {
    const { code, out } = await run('tiers family.json --json --blanks', LESSON);
    expect(code).toBe(0);
    const json = JSON.parse(out);
    expect(json.nodes.map(({ id, tier, rank }: Record<string, unknown>) => [id, tier, rank])).toEqual([
      ['heron-blank', 1, 'base'],
      ['bittern-blank', 1, 'base'],
      ['plover-blank', 1, 'base'],
      ['reed-group-blank', 2, 'group'],
    ]);
    expect(json.nodes[3].sentence).toBe(
      'The Reed group blank enters 2 of 3 keyways: Heron and Bittern; it is blocked in Plover.',
    );
    expect(json.covers).toEqual([
      { lower: 'heron-blank', upper: 'reed-group-blank' },
      { lower: 'bittern-blank', upper: 'reed-group-blank' },
    ]);
    // Whole, empty, {Heron, Bittern}, and each keyway for itself.
    expect(json.lattice).toEqual({ concepts: 6, lines: 7, capped: false });
    expect(json.openings[2]).toEqual({ id: 'plover-keyway', tier: 1 });
  });

  test('of a family without blanks, or without openings, says so much', async () => {
    const { code, out } = await run('tiers family.json', lessonWith(true));
    expect(code).toBe(0);
    expect(out).toContain('0 blanks in 3 openings');
    expect(JSON.parse((await run('tiers family.json --json', lessonWith(true))).out).nodes).toEqual([]);
    const blanks = await run('tiers family.json', lessonWith(false));
    expect(blanks.code).toBe(0);
    expect(blanks.out).toContain('enters nothing: the family has no openings');
  });

  test('of one tool is told in the singular', async () => {
    const family = JSON.parse(lessonWith(true));
    const feeler = { ...JSON.parse(lessonWith(false)).profiles[0], kind: 'tool' };
    const { out } = await run(
      'tiers family.json',
      JSON.stringify({ ...family, profiles: [...family.profiles, feeler] }),
    );
    expect(out).toContain(': 1 tool in 3 openings');
  });

  test('counts what it does not list of long rows', async () => {
    const { out } = await run('tiers family.json', largeFamily(20, 30).text);
    expect(out).toMatch(/enters all of 20: .* and 8 more$/m);
  });

  test('can be stopped, and is refused with options that it does not know', async () => {
    let now = 0;
    const clock = () => {
      now += 100;
      return now;
    };
    const stopped = await run('tiers family.json', COLLEGE, { cancelled: () => true, now: clock });
    expect(stopped).toEqual({ code: 130, out: '', err: 'Stopped; nothing was printed.\n' });
    expect(await run('tiers family.json --margins', LESSON)).toMatchObject({ code: 2, out: '' });
  });
});
