import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Area, Holder, Plan } from '../../src/family/plan.ts';
import { deleteArea, indentArea, moveArea, outdentArea } from '../../src/interchange/json/edit-areas.ts';
import { emptyPlan, putPlan } from '../../src/interchange/json/edit-plan.ts';
import { tickArea } from '../../src/interchange/json/edit-ticks.ts';
import { planFaults } from '../../src/interchange/json/read-plan.ts';
import type { FamilyFile } from '../../src/interchange/json/schema.ts';
import { accessOf } from '../../src/plan/access.ts';
import { areaTree, FREE, leafTicks, MUST, NOT } from '../../src/plan/area-tree.ts';

const BARE: FamilyFile = {
  format: 'sectionary-family',
  version: 1,
  name: 'Marsh',
  units: 'mm',
  runningClearance: 0.03,
  profiles: [],
};

/** Trees of up to twelve areas, some sharing a section, in any order. */
const areasOf: fc.Arbitrary<Area[]> = fc
  .array(fc.record({ under: fc.nat(), section: fc.option(fc.constantFrom('Reed', 'Dyke')) }), {
    minLength: 1,
    maxLength: 12,
  })
  .chain((list) => {
    const areas = list.map(({ under, section }, i) => {
      const parent = under % (i + 1);
      return {
        id: `a${i}`,
        name: `Area ${i}`,
        ...(parent < i && { parent: `a${parent}` }),
        ...(section && { section }),
      };
    });
    return fc.shuffledSubarray(areas, { minLength: areas.length, maxLength: areas.length });
  });

const planOf: fc.Arbitrary<Plan> = areasOf.chain((areas) => {
  const ids = areas.map(({ id }) => id);
  const holder = fc.record({ enters: fc.subarray(ids), free: fc.subarray(ids) });
  return fc
    .record({ holders: fc.array(holder, { maxLength: 6 }), baseBlanks: fc.boolean(), allSection: fc.boolean() })
    .map(({ holders, ...options }) => ({
      areas,
      holders: holders.map((one, i): Holder => ({ id: `h${i}`, name: `Holder ${i}`, ...one })),
      ...options,
      reserve: 0,
      stops: 1,
      depths: 1,
      blade: { sides: 'both' } as Plan['blade'],
    }));
});

function fileOf({ areas, holders }: Plan): FamilyFile {
  const held = holders.map(({ free = [], ...holder }) => ({ ...holder, enters: [...holder.enters], free: [...free] }));
  return putPlan(BARE, { ...emptyPlan('mm'), areas: areas.map((area) => ({ ...area })), holders: held });
}

test('who must enter something carries one blank, which enters all that is must and nothing that is not', () => {
  fc.assert(
    fc.property(planOf, (plan) => {
      const { sections, blanks, table } = accessOf(plan);
      const tree = areaTree(plan.areas);
      const at = new Map(sections.flatMap(({ areas }, s) => areas.map((id) => [id, s] as const)));
      for (const holder of plan.holders) {
        const ticks = leafTicks(tree, holder);
        const must = new Set(tree.leaves.flatMap(({ id }, leaf) => (ticks[leaf] === MUST ? [at.get(id)] : [])));
        const not = new Set(tree.leaves.flatMap(({ id }, leaf) => (ticks[leaf] === NOT ? [at.get(id)] : [])));
        const carried = blanks.flatMap(({ holders }, b) => (holders.includes(holder.id) ? [b] : []));
        expect(carried).toHaveLength(must.size > 0 ? 1 : 0);
        for (const b of carried)
          for (const [s, row] of table.entries()) {
            if (must.has(s)) expect(row[b]).toBe(1);
            else if (not.has(s)) expect(row[b]).toBe(0);
          }
      }
    }),
  );
});

test('no two blanks have one set, one id or one name, and each is in the table as it says', () => {
  fc.assert(
    fc.property(planOf, (plan) => {
      const { sections, blanks, table } = accessOf(plan);
      for (const key of ['id', 'name'] as const)
        expect(new Set(blanks.map((blank) => blank[key])).size).toBe(blanks.length);
      expect(new Set(blanks.map((blank) => blank.sections.join())).size).toBe(blanks.length);
      for (const [b, blank] of blanks.entries()) {
        const cells = sections.map((_, s): 0 | 1 | null => (blank.sections.includes(s) ? 1 : 0));
        for (const s of blank.free) cells[s] = null;
        expect(table.map((row) => row[b])).toEqual(cells);
      }
    }),
  );
});

test('a tick changes what it speaks of and nothing else', () => {
  const tick = fc.constantFrom(NOT, MUST, FREE);
  fc.assert(
    fc.property(planOf, fc.nat(), fc.nat(), tick, (plan, h, a, wanted) => {
      fc.pre(plan.holders.length > 0);
      const tree = areaTree(plan.areas);
      const holder = plan.holders[h % plan.holders.length];
      const row = tree.rows[a % tree.rows.length];
      const file = tickArea(fileOf(plan), holder.id, row.area.id, wanted);
      const after = file.plan?.holders.find(({ id }) => id === holder.id);
      const expected = leafTicks(tree, holder);
      expected.fill(wanted, row.from, row.to);
      expect(after && [...leafTicks(tree, after)]).toEqual([...expected]);
    }),
  );
});

test('whatever is moved or deleted, a plan stays sound and keeps its other areas', () => {
  fc.assert(
    fc.property(planOf, fc.array(fc.tuple(fc.nat(4), fc.nat()), { maxLength: 8 }), (plan, acts) => {
      let file = fileOf(plan);
      for (const [act, which] of acts) {
        const areas = file.plan?.areas ?? [];
        if (areas.length === 0) break;
        const { id } = areas[which % areas.length];
        const next = [
          () => moveArea(file, id, 1),
          () => moveArea(file, id, -1),
          () => indentArea(file, id),
          () => outdentArea(file, id),
          () => deleteArea(file, id),
        ][act]();
        if (act < 4)
          expect(next.plan?.areas.map((area) => area.id).sort()).toEqual(areas.map((area) => area.id).sort());
        else expect(next.plan?.areas.some((area) => area.id === id)).toBe(false);
        if (next.plan) expect(planFaults(next.plan, 'mm')).toEqual([]);
        file = next;
      }
    }),
  );
});
