import type { EntryTable } from '../../src/family/entry-table.ts';
import type { Family } from '../../src/family/family.ts';
import { judgeEntryTable } from '../../src/family/judge-entry-table.ts';

/** Every pair of a family judged by its outlines, as yes or no: verdicts only, so it is quick. */
export function judgeTable(family: Family): EntryTable {
  const steps = judgeEntryTable(family);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
