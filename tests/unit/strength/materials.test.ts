import { expect, test } from 'vitest';
import shared from '../../../shared/materials.json';
import { findMaterial, MATERIALS, readMaterials, USE_TORQUE } from '../../../src/strength/materials.ts';

test('every row of the shared table is sound, has a source and says how its yield was measured', () => {
  expect(readMaterials(shared).ok).toBe(true);
  expect(MATERIALS.length).toBe(34);
  for (const { source, yieldBy, fromMemory } of MATERIALS) {
    expect(source.length).toBeGreaterThan(6);
    expect(['0.2 % offset', '0.5 % extension', 'not stated']).toContain(yieldBy);
    expect(Array.isArray(fromMemory)).toBe(true);
  }
});

test('one alloy and temper by two definitions of yield are two rows, 10 % or more apart where both are known', () => {
  const mill = findMaterial('c77000-h08-mill');
  const extension = findMaterial('c77000-h08-extension');
  expect([mill?.yieldBy, extension?.yieldBy]).toEqual(['0.2 % offset', '0.5 % extension']);
  expect((mill?.yield[0] ?? 0) / (extension?.yield[0] ?? 1)).toBeGreaterThan(1.1);
  expect(extension?.fromMemory).toContain('yield');
  const seen = new Set(MATERIALS.map(({ alloy, temper, yieldBy }) => `${alloy} ${temper} ${yieldBy}`));
  expect(seen.size).toBe(MATERIALS.length);
});

test('nickel silver, brass, steel and stainless steel are all there', () => {
  expect([...new Set(MATERIALS.map(({ family }) => family))]).toEqual([
    'nickel silver',
    'brass',
    'steel',
    'stainless steel',
  ]);
});

// Handbook relation G = E / 2(1 + nu), nu 0.31 to 0.34 for brasses and 0.27 to 0.30 for steels.
test.each([
  ['c77000-h02-mill', 124 / (2 * 1.33)],
  ['c36000-h02', 97 / (2 * 1.31)],
  ['s17700-ch900', 200 / (2 * 1.29)],
])('G of %s follows from E and the ratio of Poisson', (id, expected) => {
  const [low, high] = findMaterial(id)?.G ?? [0, 0];
  expect(low * 0.99).toBeLessThan(expected);
  expect(high * 1.01).toBeGreaterThan(expected);
});

test.each([
  ['yield above tensile strength', { yield: [800, 800] }, /yields above its tensile strength/],
  ['a shear modulus that no such metal has', { G: [80, 81] }, /G must be 45\.\d to 48\.\d GPa/],
  ['a range the wrong way round', { tensile: [655, 540] }, /tensile must be a range/],
  ['no source', { source: '' }, /source is missing/],
  ['no definition of yield', { yieldBy: 'proof' }, /yieldBy must be one of/],
  ['no least yield in a row of nominal figures', { yield: [0, 500] }, /must be "at most"/],
])('a row with %s is refused by name', (_what, change, words) => {
  const [first, ...others] = shared.materials;
  const read = readMaterials({ ...shared, materials: [{ ...first, ...change }, ...others] });
  expect(read.ok ? '' : read.faults.join('\n')).toMatch(/^materials\[0\] \(c77000-h02-mill\)/);
  expect(read.ok ? '' : read.faults.join('\n')).toMatch(words);
});

test('a table without rows, with a row twice or without the torque is refused', () => {
  for (const bad of [null, {}, { materials: [] }]) expect(readMaterials(bad).ok).toBe(false);
  const twice = readMaterials({ ...shared, materials: [...shared.materials, shared.materials[0]] });
  expect(twice.ok ? [] : twice.faults).toEqual(['materials[34]: a second row "c77000-h02-mill"']);
  expect(readMaterials({ materials: shared.materials }).ok).toBe(false);
});

test('the torque that keys are compared with says that it is second-hand', () => {
  expect(USE_TORQUE.nm).toBe(2.5);
  expect(USE_TORQUE.sure).toMatch(/not from the text of the standard/);
});
