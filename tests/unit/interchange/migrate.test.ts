import { describe, expect, test } from 'vitest';
import { type Migration, migrate } from '../../../src/interchange/json/migrate.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { familyValue } from '../../cases/bad-files/nearly-sound.ts';

/** Invented steps: version 1 called the clearance `gap`, version 2 had no name. */
const STEPS: Migration[] = [
  { from: 1, step: ({ gap, ...file }) => ({ ...file, runningClearance: gap }) },
  { from: 2, step: (file) => ({ name: 'Unnamed', ...file }) },
];

describe('bringing an older file to the present version', () => {
  test('a file of the newest version is taken as it is', () => {
    const file = { version: 3, anything: true };
    expect(migrate(file, STEPS, 3)).toEqual({ ok: true, file });
  });

  test('every step from the version of the file on is taken, in order', () => {
    expect(migrate({ version: 1, gap: 0.04, kept: [1] }, STEPS, 3)).toEqual({
      ok: true,
      file: { version: 3, runningClearance: 0.04, name: 'Unnamed', kept: [1] },
    });
    expect(migrate({ version: 2, gap: 0.04 }, STEPS, 3)).toEqual({
      ok: true,
      file: { version: 3, gap: 0.04, name: 'Unnamed' },
    });
  });

  test('the file that was read is not changed', () => {
    const file = Object.freeze({ version: 1, gap: 0.04 });
    migrate(file, STEPS, 3);
    expect(file).toEqual({ version: 1, gap: 0.04 });
  });

  test.each([undefined, null, '1', 0, -1, 1.5, Number.NaN])('version %j is no version', (version) => {
    const result = migrate({ version }, STEPS, 3);
    expect(result).toMatchObject({
      ok: false,
      fault: { path: 'version', what: expect.stringMatching(/whole number from 1 to 3/) },
    });
  });

  test('a newer version is refused, with both numbers', () => {
    expect(migrate({ version: 9 }, STEPS, 3)).toMatchObject({
      ok: false,
      fault: { path: 'version', what: 'is 9, newer than the version 3 that this program knows' },
    });
  });

  test('readFamily takes the steps before it looks at the fields, and the document is of the newest version', () => {
    const older = { ...familyValue(), version: 0, runningClearance: undefined, gap: 0.05, remark: 'kept' };
    const read = readFamily(JSON.stringify(older), [{ ...STEPS[0], from: 0 }]);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    expect(read.document.file).toMatchObject({ version: 1, runningClearance: 0.05, remark: 'kept' });
    expect(read.document.file).not.toHaveProperty('gap');
    expect(read.document.family.runningClearance).toBe(50_000);
    expect(readFamily(JSON.stringify(older)).ok).toBe(false);
  });

  test('a step that throws is a fault of the file, not a crash', () => {
    const broken: Migration = {
      from: 0,
      step: () => {
        throw new TypeError('no such field');
      },
    };
    const read = readFamily(JSON.stringify(familyValue({ version: 0 })), [broken]);
    expect(read).toMatchObject({
      ok: false,
      faults: [{ path: 'version', what: expect.stringMatching(/could not be brought/) }],
    });
  });
});
