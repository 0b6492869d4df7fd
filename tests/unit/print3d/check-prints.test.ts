import { expect, test } from 'vitest';
import { loadTypeface } from '../../../src/lettering/typeface.ts';
import { checkBed, checkLetters, checkSetup } from '../../../src/print3d/check-prints.ts';
import type { PartKind, SolidPart } from '../../../src/print3d/display-set.ts';
import { usualSetup } from '../../../src/print3d/display-setup.ts';
import type { MadePart } from '../../../src/print3d/make-parts.ts';
import { fitLetters } from '../../../src/print3d/raise-letters.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const setup = usualSetup(demoFamily());
const face = await loadTypeface();
const kinds = (checks: readonly { readonly kind: string }[]) => checks.map(({ kind }) => kind);

test('true size brings a caution, the usual setup none', () => {
  expect(checkSetup(setup)).toEqual([]);
  const [caution] = checkSetup({ ...setup, scale: 1 });
  expect(caution).toMatchObject({ kind: 'true-size', weight: 'caution' });
  expect(caution.what).toContain('mistaken for a key');
  expect(checkSetup({ ...setup, wall: 0.7 })).toMatchObject([{ kind: 'wall', size: 0.7, limit: 0.8 }]);
});

function part(name: string, kind: PartKind, size: readonly [number, number, number]): SolidPart {
  const surface = { positions: new Float32Array(), triangles: new Uint32Array(), lettersFrom: 0 };
  const rest = {
    subjects: [],
    colour: '#000000',
    letterColour: '#ffffff',
    volume: 0,
    place: [0, 0, 0],
    bed: 0,
  } as const;
  return { name, kind, size, ...surface, ...rest };
}

test('a part that is larger than the bed is named with the side that is too long, a cut block is told', () => {
  const parts = [part('Block 1 of 2', 'block', [100, 100, 20]), part('Block 2 of 2', 'block', [100, 230, 20])];
  expect(checkBed(parts, setup)).toMatchObject([
    { kind: 'bed', size: 230, limit: 210 },
    { kind: 'cut', weight: 'note' },
  ]);
  expect(checkBed(parts, setup)[0].what).toContain('Block 2 of 2');
  expect(checkBed(parts.slice(0, 1), setup)).toEqual([]);
});

function lettered(text: string, size: number): MadePart {
  const line = { ...fitLetters(face, text, { width: 200, size }, [0, 0]), subject: 'it' };
  const surface = { positions: new Float32Array(), triangles: new Uint32Array(), lettersFrom: 0 };
  return { kind: 'coupon', subjects: ['it'], surface, lines: [line] };
}

test('letters that a nozzle cannot draw are named, with those that the typeface lacks', () => {
  expect(checkLetters(lettered('Bittern', 7), face, setup)).toEqual([]);
  expect(checkLetters(lettered('Bittern', 2), face, setup)).toMatchObject([
    { kind: 'letters', subjects: ['it'], size: 2 },
  ]);
  expect(kinds(checkLetters(lettered('Bittern', 2), face, { ...setup, nozzle: 0.15 }))).toEqual([]);
  // Of several sections the same words, so that they are told as one.
  const whats = ['Bittern', 'Heron'].map((name) => checkLetters(lettered(name, 2), face, setup)[0].what);
  expect(new Set(whats).size).toBe(1);
  const [leftOut] = checkLetters(lettered('x'.repeat(900), 7), face, setup);
  expect(leftOut.what).toMatch(/left out$/);
  expect(checkLetters(lettered(' ', 7), face, setup)).toEqual([]);
  expect(kinds(checkLetters(lettered('鷺', 7), face, setup))).toEqual(['missing-letters']);
});
