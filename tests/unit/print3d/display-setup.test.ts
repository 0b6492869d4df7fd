import { expect, test } from 'vitest';
import { type DisplaySetup, setupFaults, usualSetup } from '../../../src/print3d/display-setup.ts';
import { demoFamily } from '../../kit/demo-family.ts';

const family = demoFamily();
const usual = usualSetup(family);

test('a family begins with all openings, each outline once, enlarged', () => {
  expect(usual.openings).toHaveLength(10);
  expect(usual.blanks).toContain('heron-blank-5');
  expect(usual.blanks).not.toContain('heron-blank-6');
  expect(usual.blanks).toContain('strip-055');
  expect(usual.scale).toBe(4);
  expect(setupFaults(family, usual)).toEqual([]);
  expect(usual.columns).toBe(5);
  const lone = { ...family, profiles: family.profiles.filter(({ id }) => id === usual.openings[0]) };
  expect(usualSetup(lone).columns).toBe(1);
});

test.each<[Partial<DisplaySetup>, keyof DisplaySetup, string]>([
  [{ openings: [], blanks: [] }, 'openings', 'nothing is chosen'],
  [{ openings: ['heron-blank-5'] }, 'openings', 'no opening with the id "heron-blank-5"'],
  [{ blanks: ['stork-blank'] }, 'blanks', 'no blank or tool with the id "stork-blank"'],
  [{ scale: 0.5 }, 'scale', 'scale must be a number from 1 to 12'],
  [{ scale: Number.NaN }, 'scale', 'scale must be a number'],
  [{ columns: 2.5 }, 'columns', 'columns must be a whole number from 1 to 40'],
  [{ nozzle: 0 }, 'nozzle', 'from 0.1 to 2 mm'],
  [{ gap: -0.1 }, 'gap', 'fitting gap must be a number from 0 to 1 mm'],
  [{ bed: [200, 20] }, 'bed', 'from 50 to 2000 mm'],
])('%j is a fault of %s', (change, setting, words) => {
  const faults = setupFaults(family, { ...usual, ...change });
  expect(faults).toHaveLength(1);
  expect(faults[0].setting).toBe(setting);
  expect(faults[0].message).toContain(words);
});

test('a family without sections has nothing to print, and says so', () => {
  const empty = { ...family, profiles: [] };
  expect(setupFaults(empty, usualSetup(empty)).map(({ setting }) => setting)).toEqual(['openings']);
});
