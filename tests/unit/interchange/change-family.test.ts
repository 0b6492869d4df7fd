import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { changeFamily } from '../../../src/interchange/json/change-family.ts';
import {
  addProfile,
  drawnProfile,
  freshId,
  milledProfile,
  replaceProfile,
} from '../../../src/interchange/json/edit-profiles.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { writeFamily } from '../../../src/interchange/json/write.ts';

const read = readFamily(readFileSync('profiles-demo/polderwick.json', 'utf8'));
if (!read.ok) throw new Error('the demo family does not open');
const { file, family } = read.document;
/** Without its plan, whose blades would be of another size in inches. */
const { plan: _, ...unplanned } = file;

const ARCH = [
  { x: 0, y: 0 },
  { x: 2_000_001, y: 0 },
  { x: 2_000_001, y: 8_000_000, bulge: 0.1234567890123 },
  { x: 0, y: 8_000_000 },
];

const shrunk = ({ x, y }: { x: number; y: number }) => ({ x: x / 10, y: y / 10 });

function taken(next: typeof file) {
  const changed = changeFamily(next);
  if (!changed.ok) throw new Error(JSON.stringify(changed.faults));
  return changed.document;
}

describe('a family made from the value of another', () => {
  test('reads as its text would, and takes unchanged profiles over as they are', () => {
    const arch = drawnProfile({ id: 'arch', kind: 'tool', name: 'Arch' }, ARCH, file.units);
    const changed = taken(addProfile(file, arch, file.profiles[0].id));
    const again = readFamily(writeFamily(changed.file));
    expect(again).toMatchObject({ ok: true });
    expect(again.ok && again.document.family).toEqual(changed.family);
    expect(changed.family.profiles[1].drawn).toEqual(ARCH);
    expect(changed.family.profiles[0]).toBe(family.profiles[0]);
    expect(changed.family.profiles.slice(2)).toEqual(family.profiles.slice(1));
  });

  test('is refused with the place of what is wrong, and the given value stays as it is', () => {
    const before = writeFamily(file);
    const [first] = file.profiles;
    const bad = changeFamily(replaceProfile(file, first.id, { ...first, name: ' ' }));
    expect(bad).toMatchObject({ ok: false, faults: [{ path: 'profiles[0].name' }] });
    expect(changeFamily({ ...file, profiles: {} as never })).toMatchObject({ ok: false });
    expect(writeFamily(file)).toBe(before);
  });

  test('is refused where it would be too long to be opened again', () => {
    const image = `data:image/png;base64,iVBORw0KGgo${'A'.repeat(5_600_000)}`;
    const [first] = file.profiles;
    const pictured = { ...first, picture: { image, opacity: 1 } };
    const copies = (count: number) => ({
      ...file,
      profiles: Array.from({ length: count }, (_, i) => ({ ...pictured, id: `copy-${i}` })),
    });
    const three = taken(copies(3));
    expect(readFamily(writeFamily(three.file))).toMatchObject({ ok: true });
    const four = changeFamily(copies(4));
    expect(four).toMatchObject({ ok: false, faults: [{ path: 'file' }] });
    expect(four.ok || four.faults[0].what).toMatch(/22\.4 million characters.*20\.0 million.*pictures take 22\.4/);
    expect(four.ok || four.faults[0].cure).toMatch(/take a picture out/);
    const wordy = { ...file, note: 'n'.repeat(20_000_000) };
    expect(changeFamily(wordy)).toMatchObject({ ok: false });
  });

  test('lengths that were read in other units are read anew', () => {
    const small = drawnProfile({ id: 'small', kind: 'tool', name: 'Small' }, ARCH.map(shrunk), 'mm');
    const inInches = taken({ ...unplanned, units: 'in', profiles: [small] }).family.profiles[0];
    expect(inInches.ring[1].x).toBe(Math.round(200_000.1 * 25.4));
  });
});

describe('edits of the list of profiles', () => {
  test('what is added can be removed again, to the letter', () => {
    const blade = { thickness: 2e6, height: 8e6, backRadius: 0, grooves: [] };
    const added = addProfile(file, milledProfile({ id: 'plain', kind: 'blank', name: 'Plain' }, blade, 'mm'));
    const removed = { ...added, profiles: added.profiles.filter(({ id }) => id !== 'plain') };
    expect(writeFamily(removed)).toBe(writeFamily(file));
    expect(taken(added).family.profiles.at(-1)?.milled).toMatchObject(blade);
    expect(() => replaceProfile(file, 'plain', file.profiles[0])).toThrow(RangeError);
  });

  test.each(['mm', 'in'] as const)('vertices come back from a file in %s to the nanometre', (units) => {
    const arch = drawnProfile({ id: 'arch', kind: 'tool', name: 'Arch' }, ARCH, units);
    expect(taken({ ...unplanned, units, profiles: [arch] }).family.profiles[0].drawn).toEqual(ARCH);
  });

  test('a fresh id is small letters and digits and nobody else’s', () => {
    expect(freshId(file, 'Rail, second try')).toBe('rail-second-try');
    expect(freshId(file, file.profiles[0].id)).toBe(`${file.profiles[0].id}-2`);
    expect(freshId(file, '鷺')).toBe('section');
    expect(freshId(file, 'Constructor')).toBe('section');
  });
});
