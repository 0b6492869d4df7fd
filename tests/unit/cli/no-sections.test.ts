import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { hearCommand } from '../../kit/hearing-shell.ts';

const PLANNED = JSON.parse(readFileSync('profiles-demo/polderwick-plan.json', 'utf8'));
const planned = { ...PLANNED, profiles: [], names: [], claims: [], lesson: undefined };
const bare = { ...planned, plan: undefined };

const COMMANDS = ['fit', 'fit --json', 'tiers', 'passage', 'grow', 'gauge --height 6', 'print3d -o set.3mf'];

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

test.each(['strength', 'publish --sheet chart -o chart.pdf'])('%s of one ends with 2 as well', async (line) => {
  const [name, ...options] = line.split(' ');
  const { code, out, err } = await hearCommand([name, 'family.json', ...options], JSON.stringify(planned));
  expect([code, out]).toEqual([2, '']);
  expect(err).toMatch(/^family\.json: /);
});
