import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { hearCommand, writtenFiles } from '../../kit/hearing-shell.ts';

const PLANNED = JSON.parse(readFileSync('profiles-demo/polderwick-plan.json', 'utf8'));
const planned = { ...PLANNED, profiles: [], names: [], claims: [], lesson: undefined };
const bare = { ...planned, plan: undefined };

const COMMANDS = [
  ...['fit', 'fit --json', 'tiers', 'passage', 'grow', 'gauge --height 6', 'print3d -o set.3mf', 'capacity'],
  ...['export --as svg', 'publish --sheet chart -o chart.pdf', 'identify drawing.svg'],
];

test.each(COMMANDS)(
  '%s of a family without sections says what is missing and what to do, and ends with 2',
  async (line) => {
    const [name, ...options] = line.split(' ');
    const run = (family: object) => hearCommand([name, 'family.json', ...options], JSON.stringify(family));
    const toPlan = await run(planned);
    expect([toPlan.code, toPlan.out]).toEqual([2, '']);
    expect(toPlan.err).toMatch(
      /^family\.json: has no openings.*, so there is nothing to .*\. Make its sections first: plan FILE -o NEW-FILE\.\n$/,
    );
    expect(await run(bare)).toEqual({
      code: 2,
      out: '',
      err: expect.stringMatching(/^family\.json: has no openings.*\. Add a keyway to the file\.\n$/),
    });
  },
);

test('strength of one asks for blades, and a card of its holders needs no sections', async () => {
  const run = (line: string[], family: object) => hearCommand(line, JSON.stringify(family), writtenFiles());
  const strength = ['strength', 'family.json'];
  const lack = 'family.json: has no blanks and no tools, so there is nothing to examine.';
  expect(await run(strength, planned)).toEqual({
    code: 2,
    out: '',
    err: `${lack} Make its sections first: plan FILE -o NEW-FILE.\n`,
  });
  expect(await run(strength, bare)).toEqual({ code: 2, out: '', err: `${lack} Add a blank to the file.\n` });
  const card = await run(['publish', 'family.json', '--sheet', 'card', '-o', 'card.svg'], planned);
  expect([card.code, card.err]).toEqual([0, expect.stringMatching(/written\n$/)]);
});
