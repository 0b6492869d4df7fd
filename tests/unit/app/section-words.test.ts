import { expect, test } from 'vitest';
import { sectionWords } from '../../../src/app/state/teach/section-words.ts';
import { demoFamily } from '../teach/known-family.ts';

const { profiles } = demoFamily('first-lesson');
const words = (id: string, units: 'mm' | 'in' = 'mm') => {
  const profile = profiles.find((p) => p.id === id);
  return profile ? sectionWords(profile, units) : '';
};

test('grooves of a blank and wards of a keyway are told from the back up, without any name', () => {
  expect(words('reed-group-blank')).toBe(
    '2.00 × 8.40 mm; grooves: left at 1.0–2.0 mm, 0.700 mm deep; right at 2.4–3.4 mm, 0.700 mm deep',
  );
  expect(words('bittern-keyway')).toBe('2.10 × 8.50 mm; wards: right at 2.5–3.4 mm, 0.700 mm deep');
  expect(words('heron-blank', 'in')).toBe('0.079 × 0.331 in; grooves: left at 0.039–0.079 in, 27.6 thou deep');
});

test('a drawn outline is told by its corners', () => {
  expect(words('strip-06')).toBe('drawn outline with 4 corners, 0.60 × 6.00 mm');
});
