import { expect, test } from 'vitest';
import {
  boundsText,
  limitText,
  materialText,
  memoryText,
  modulusText,
  momentText,
  ratioText,
  sectionAreaText,
  sharpText,
  strengthText,
  stressText,
  torqueText,
  verdictSentence,
} from '../../../src/app/state/plan/strength/strength-words.ts';
import { findMaterial } from '../../../src/strength/materials.ts';
import type { SectionStrength } from '../../../src/strength/strength.ts';

const material = (id: string) => {
  const found = findMaterial(id);
  if (!found) throw new Error(`no ${id}`);
  return found;
};

// 1 N m = 8.8507 in-lb, 1 ksi = 6.8948 MPa, 1 in = 25.4 mm: NIST SP 811.
test('torques, stresses and sizes in both systems of units', () => {
  expect([torqueText(2.5, 'mm'), torqueText(2.5, 'in')]).toEqual(['2.50 N m', '22.1 in-lb']);
  expect([stressText(540, 'mm'), stressText(540, 'in')]).toEqual(['540 MPa', '78.3 ksi']);
  expect([sectionAreaText(16, 'mm'), sectionAreaText(16, 'in')]).toEqual(['16.00 mm²', '0.0248 in²']);
  expect(modulusText(16_387.064, 'in')).toBe('1000000 × 10⁻⁶ in³');
  expect([momentText(14.6049, 'mm'), momentText(14.6049, 'in')]).toEqual(['14.60 mm⁴', '35.09 × 10⁻⁶ in⁴']);
  expect(momentText(14.6049, 'mm', 6)).toBe('14.6049 mm⁴');
});

test('ranges say one figure where both ends read alike', () => {
  expect(limitText({ low: 3.861, high: 3.869 }, 'mm')).toBe('3.86–3.87 N m');
  expect(limitText({ low: 3.861, high: 3.862 }, 'mm')).toBe('3.86 N m');
  expect(strengthText([585, 590], 'mm')).toBe('585–590 MPa');
  expect(strengthText([0, 230], 'mm')).toBe('230 MPa at most');
  expect(boundsText({ below: 0.99, best: 1, above: 1.01 })).toBe('±\u00a01.0\u00a0%');
  expect(boundsText({ below: 1, best: 1, above: 1.0004 })).toBe('±\u00a0under\u00a00.1\u00a0%');
});

test('materials are told apart by temper and by how their yield was measured', () => {
  expect(materialText(material('c77000-h08-mill'))).toBe('Nickel silver 55-18 C77000, H08 (0.2 % offset)');
  expect(materialText(material('c77000-h08-extension'))).toBe('Nickel silver 55-18 C77000, H08 (0.5 % extension)');
  expect(materialText(material('s30400-annealed'))).toBe('Stainless steel 304, annealed (0.2 % offset)');
  expect(memoryText(material('c77000-h08-extension'))).toMatch(/not seen: yield, definition of yield\.$/);
  expect(memoryText(material('c77000-h02-mill'))).toBe('');
});

test('verdicts, sharp corners and ratios in words', () => {
  expect(verdictSentence('Knot', 'elastic', 1, 'mm')).toBe('Knot bears 1.00 N m without yielding anywhere.');
  expect(verdictSentence('Knot', 'too-much', 1, 'in')).toMatch(/^8\.9 in-lb is more than Knot bears/);
  const sharp = { sharpCorners: [{ x: 0, y: 0, angle: 4 }], keepOut: 136_000 } as unknown as SectionStrength;
  expect(sharpText(sharp, (nm) => `${nm / 1e6} mm`)).toMatch(/^One inner corner is sharp\..*within 0\.136 mm of it/);
  expect(sharpText({ ...sharp, sharpCorners: [] }, String)).toBe('');
  expect([ratioText(2, 1), ratioText(1, 1.001), ratioText(1, 0)]).toEqual(['× 2.00', 'the same', '–']);
});
