import { describe, expect, test } from 'vitest';
import { addSection } from '../../../src/interchange/json/add-section.ts';
import { changeFamily } from '../../../src/interchange/json/change-family.ts';
import { putLeastWeb, putMilled } from '../../../src/interchange/json/mill-file.ts';
import type { FamilyFile } from '../../../src/interchange/json/schema.ts';
import type { Milled } from '../../../src/profile/profile.ts';

const MM = 1e6;

const file: FamilyFile = {
  format: 'sectionary-family',
  version: 1,
  name: 'Polderwick College',
  units: 'mm',
  runningClearance: 0.04,
  profiles: [
    {
      id: 'teal-blank',
      kind: 'blank',
      name: 'Teal blank',
      milled: {
        thickness: 2,
        height: 8,
        stock: 'nickel silver',
        grooves: [
          { side: 'left', bottom: 2, width: 1, depth: 0.5, cutter: 3 },
          { side: 'right', bottom: 4, width: 1, depth: 0.5, cutter: 7 },
        ],
      },
    },
  ],
};

const milledOf = (of: FamilyFile, id: string): Milled => {
  const read = changeFamily(of);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const milled = read.document.family.profiles.find((p) => p.id === id)?.milled;
  if (!milled) throw new Error('not milled');
  return milled;
};

describe('another milled description', () => {
  test('is read back as it was put, to the nanometre, in either unit', () => {
    for (const units of ['mm', 'in'] as const) {
      const milled: Milled = {
        thickness: 2_000_001,
        height: 8_400_003,
        backRadius: 350_007,
        grooves: [{ side: 'left', bottom: 1_950_001, width: 700_003, depth: 600_007, flank: 0.26, rootRadius: 80_009 }],
      };
      const back = milledOf(putMilled({ ...file, units }, 'teal-blank', milled, [null]), 'teal-blank');
      expect({ ...back, grooves: [] }).toEqual({ ...milled, grooves: [] });
      expect({ ...back.grooves[0], flank: 0 }).toEqual({ ...milled.grooves[0], flank: 0 });
      expect(back.grooves[0].flank).toBeCloseTo(0.26, 7);
    }
  });

  test('keeps what we do not know, by the grooves that stay', () => {
    const { grooves, ...blade } = milledOf(file, 'teal-blank');
    const next = putMilled(file, 'teal-blank', { ...blade, grooves: [grooves[1], grooves[1]] }, [1, null]);
    expect(next.profiles[0].milled).toMatchObject({ stock: 'nickel silver' });
    expect(next.profiles[0].milled?.grooves[0]).toMatchObject({ side: 'right', cutter: 7 });
    expect(next.profiles[0].milled?.grooves[1]).not.toHaveProperty('cutter');
    expect(file.profiles[0].milled?.grooves).toHaveLength(2);
  });

  test('makes a drawn profile milled', () => {
    const drawn: FamilyFile = {
      ...file,
      profiles: [
        {
          id: 'strip',
          kind: 'tool',
          name: 'Strip',
          note: 'thin',
          outline: [
            [0, 0],
            [1, 0],
            [1, 6],
          ],
        },
      ],
    };
    const next = putMilled(drawn, 'strip', { thickness: MM, height: 6 * MM, backRadius: 0, grooves: [] }, []);
    expect(next.profiles[0]).toEqual({
      id: 'strip',
      kind: 'tool',
      name: 'Strip',
      note: 'thin',
      milled: { thickness: 1, height: 6, grooves: [] },
    });
  });
});

test('a section is added after another one, under an id of its own', () => {
  const milled = { thickness: 2.1 * MM, height: 8.1 * MM, backRadius: 0, grooves: [] };
  const { file: next, id } = addSection(
    file,
    { kind: 'opening', name: 'Teal blank', afterId: 'teal-blank' },
    { milled },
  );
  expect(id).toBe('teal-blank-2');
  expect(milledOf(next, id)).toEqual(milled);
});

test('the least web is put, read in nanometres, and taken out', () => {
  const read = changeFamily(putLeastWeb(file, 0.5 * MM));
  expect(read.ok && read.document.family.leastWeb).toBe(0.5 * MM);
  expect(putLeastWeb(putLeastWeb(file, 0.5 * MM), null)).toEqual(file);
  const none = changeFamily(file);
  expect(none.ok && none.document.family).not.toHaveProperty('leastWeb');
});
