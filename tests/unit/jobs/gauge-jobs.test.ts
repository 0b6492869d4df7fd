import { expect, test } from 'vitest';
import { openingsOf } from '../../../src/family/family.ts';
import { uprightCurve } from '../../../src/gauge/thickness-curve.ts';
import { coverOpenings } from '../../../src/jobs/cover-openings.ts';
import type { JobContext } from '../../../src/jobs/job.ts';
import { tableTools } from '../../../src/jobs/table-tools.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const context: JobContext = { progress: () => {}, cancelled: () => false, pause: async () => {}, now: () => 0 };

test('tools are tabled and the fewest are found as jobs', async () => {
  const family = demoFamily();
  const openings = openingsOf(family);
  const tools = family.profiles.filter(({ kind }) => kind === 'tool');
  const curves = openings.map(({ id, ring }) => uprightCurve(id, ring));
  const { runningClearance } = family;
  const table = await tableTools({ tools, openings, curves, runningClearance }, context);
  expect(table.rows.map(({ toolId }) => toolId)).toEqual(tools.map(({ id }) => id));
  // The strip of 1.31 mm is as thick as no two wards of the Heron keyway leave above 2.5 mm: it enters that, not the Avocet.
  const at = (toolId: string, openingId: string) =>
    table.rows.find((row) => row.toolId === toolId)?.cells.find((cell) => cell.openingId === openingId)?.verdict;
  expect([at('strip-131', 'heron-keyway'), at('strip-131', 'avocet-keyway')]).toEqual(['enters', 'blocked']);
  const chosen = openings.map(({ id }) => id);
  expect((await coverOpenings({ table, chosen }, context)).tools).toEqual(['strip-055']);
});
