import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Claim } from '../../../src/family/claim.ts';
import { changeFamily } from '../../../src/interchange/json/change-family.ts';
import {
  addClaims,
  dropRepeatedClaims,
  removeClaims,
  removeClaimsBy,
  renameInClaims,
  replaceClaim,
} from '../../../src/interchange/json/edit-claims.ts';
import { MAX_CLAIMS } from '../../../src/interchange/json/record-schema.ts';
import type { FamilyFile } from '../../../src/interchange/json/schema.ts';

const { claims: _claims, ...LESSON } = JSON.parse(
  readFileSync('profiles-demo/first-lesson.json', 'utf8'),
) as FamilyFile;

const claim = (blank: string, by?: string, enters = true): Claim => ({
  blank,
  opening: 'Heron',
  enters,
  ...(by && { by }),
});
const namesIn = (file: FamilyFile) => (file.claims ?? []).map(({ blank }) => blank);
const THREE = addClaims(LESSON, [claim('a', 'chart'), claim('b', 'list'), claim('c')]);

test('claims come at the end, in their order, without what stands there already or twice in one lot', () => {
  const more = addClaims(THREE, [
    claim(' b ', ' list '),
    claim('d'),
    claim('d'),
    claim('b', 'other'),
    claim('b', 'list', false),
  ]);
  expect(namesIn(more)).toEqual(['a', 'b', 'c', 'd', 'b', 'b']);
  expect(addClaims(THREE, [claim('c')])).toBe(THREE);
  expect(more.claims?.slice(0, 3)).toEqual(THREE.claims);
  expect(more.claims?.[0]).toBe(THREE.claims?.[0]);
  expect(changeFamily(more).ok).toBe(true);
});

test('empty sources and notes are left out, spaces round names too', () => {
  const file = addClaims(LESSON, [{ blank: ' a ', opening: ' b', enters: false, by: '  ', note: '' }]);
  expect(file.claims).toEqual([{ blank: 'a', opening: 'b', enters: false }]);
});

test('a changed claim keeps fields that are not known here; no such place is a mistake', () => {
  const odd = { ...THREE, claims: [{ ...claim('a', 'chart'), page: 12 }, ...(THREE.claims ?? []).slice(1)] };
  expect(replaceClaim(odd, 0, claim('z')).claims?.[0]).toEqual({
    blank: 'z',
    opening: 'Heron',
    enters: true,
    page: 12,
  });
  expect(() => replaceClaim(THREE, 3, claim('z'))).toThrow(RangeError);
});

test('claims go by place, by source, or because they are repeated; the last one takes the list along', () => {
  expect(namesIn(removeClaims(THREE, [0, 2]))).toEqual(['b']);
  expect(namesIn(removeClaimsBy(THREE, 'list'))).toEqual(['a', 'c']);
  expect(namesIn(removeClaimsBy(THREE, undefined))).toEqual(['a', 'b']);
  expect(removeClaimsBy(THREE, 'nobody')).toBe(THREE);
  expect(Object.hasOwn(removeClaims(THREE, [0, 1, 2]), 'claims')).toBe(false);
  const twice = { ...THREE, claims: [...(THREE.claims ?? []), ...(THREE.claims ?? [])] };
  expect(namesIn(dropRepeatedClaims(twice))).toEqual(['a', 'b', 'c']);
  expect(dropRepeatedClaims(THREE)).toBe(THREE);
});

test('a name is written anew in all claims of one side that use it, or in some', () => {
  const two = addClaims(THREE, [claim('a', 'other')]);
  expect(namesIn(renameInClaims(two, 'blank', 'a', 'z'))).toEqual(['z', 'b', 'c', 'z']);
  expect(namesIn(renameInClaims(two, 'blank', 'a', 'z', new Set([3])))).toEqual(['a', 'b', 'c', 'z']);
  expect(renameInClaims(two, 'opening', 'a', 'z')).toBe(two);
});

test('more claims than a family may have are refused with a cure, and nothing changes', () => {
  const many = Array.from({ length: MAX_CLAIMS + 1 }, (_, i) => claim(`b${i}`));
  const read = changeFamily(addClaims(LESSON, many));
  expect(read.ok).toBe(false);
  expect(read.ok || read.faults[0].path).toBe('claims');
});
