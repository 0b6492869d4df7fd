import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type FamilyDocument, readFamily } from '../../../src/interchange/json/read.ts';
import { replaceOutline } from '../../../src/interchange/json/replace-outline.ts';
import { writeFamily } from '../../../src/interchange/json/write.ts';

const text = readFileSync('profiles-demo/first-lesson.json', 'utf8');

function open(source: string): FamilyDocument {
  const read = readFamily(source);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.document;
}

const SQUARE = [
  { x: 0, y: 0 },
  { x: 1_234_567, y: 0 },
  { x: 1_234_567, y: 7_654_321 },
  { x: 0, y: 7_654_321 },
];

describe('another outline for one profile', () => {
  test.each(['mm', 'in'])('reads back to the same nanometre from a file in %s', (units) => {
    const before = open(
      JSON.stringify({ ...JSON.parse(text), units, profiles: [square(units)], runningClearance: 0.001 }),
    );
    const points = SQUARE.map(({ x, y }) => ({ x: x + 13, y: y - 7 }));
    const edit = replaceOutline(before, 'square', points);
    if (!edit.ok) throw new Error(edit.fault.message);
    expect(open(writeFamily(edit.document.file)).family.profiles[0].ring).toEqual(points);
  });

  test('makes a milled profile a drawn one, keeps unknown fields and leaves the old document whole', () => {
    const before = open(text);
    const { id } = before.family.profiles[0];
    const old = structuredClone(before.file);
    const edit = replaceOutline(before, id, SQUARE);
    if (!edit.ok) throw new Error(edit.fault.message);
    expect(edit.document.file.profiles[0]).not.toHaveProperty('milled');
    expect(edit.document.family.profiles[0]).not.toHaveProperty('milled');
    expect(edit.document.family.profiles[0].name).toBe(before.family.profiles[0].name);
    expect(before.file).toEqual(old);
    expect(edit.document.family.profiles.slice(1)).toEqual(before.family.profiles.slice(1));
  });

  test('an outline that crosses itself is refused with the edges named', () => {
    const before = open(text);
    const bowTie = [SQUARE[0], SQUARE[2], SQUARE[1], SQUARE[3]];
    const edit = replaceOutline(before, before.family.profiles[0].id, bowTie);
    expect(edit).toMatchObject({ ok: false, fault: { kind: 'self-crossing' } });
  });

  test('an outline so jagged that the saved file could not be opened again is refused, as the reader refuses it', () => {
    const before = open(text);
    const teeth = Array.from({ length: 1_500 }, (_, i) => ({ x: (i % 2) * 20_000, y: i * 5_000 }));
    const comb = [...teeth, { x: 2_000_000, y: 7_500_000 }, { x: 2_000_000, y: 0 }];
    const edit = replaceOutline(before, before.family.profiles[0].id, comb);
    expect(edit).toMatchObject({
      ok: false,
      fault: { kind: 'too-jagged', message: expect.stringMatching(/more than 1000 corners/) },
    });
    // A comb with half of the teeth is taken, and opens again.
    const coarse = replaceOutline(before, before.family.profiles[0].id, [...comb.slice(0, 700), ...comb.slice(-2)]);
    if (!coarse.ok) throw new Error(coarse.fault.message);
    expect(open(writeFamily(coarse.document.file)).family).toEqual(coarse.document.family);
  });

  test('a profile that is not there is the caller’s mistake', () => {
    expect(() => replaceOutline(open(text), 'nobody', SQUARE)).toThrow(RangeError);
  });
});

function square(units: string) {
  const per = units === 'in' ? 25.4e6 : 1e6;
  const outline = SQUARE.map(({ x, y }) => [x / per, y / per]);
  return { id: 'square', kind: 'blank', name: 'Square', outline };
}
