import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFamily } from '../../../src/interchange/json/read.ts';
import type { FamilyFile } from '../../../src/interchange/json/schema.ts';
import { writeFamily } from '../../../src/interchange/json/write.ts';
import { familyValue } from '../../cases/bad-files/nearly-sound.ts';

const asFile = (value: unknown) => value as FamilyFile;

describe('writing a family file', () => {
  test('points and grooves stand one to a line, the rest is indented by two', () => {
    expect(writeFamily(asFile(familyValue()))).toBe(`{
  "format": "sectionary-family",
  "version": 1,
  "name": "Two herons",
  "units": "mm",
  "runningClearance": 0.04,
  "profiles": [
    {
      "id": "heron-keyway",
      "kind": "opening",
      "name": "Heron keyway",
      "outline": [
        [0, 0],
        [2, 0],
        [2, 8],
        [0, 8]
      ]
    },
    {
      "id": "heron-blank",
      "kind": "blank",
      "name": "Heron blank",
      "milled": {
        "thickness": 2,
        "height": 8.4,
        "grooves": [
          { "side": "left", "bottom": 1.2, "width": 0.9, "depth": 0.6 }
        ]
      }
    }
  ]
}
`);
  });

  test('what was read is written with the same values, fields in the same order', () => {
    const text = JSON.stringify({
      remark: ['first', {}],
      ...familyValue({ zebra: { a: -0, b: [[], [1e-7, 12345.678901]] } }),
    });
    const read = readFamily(text);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    expect(JSON.stringify(JSON.parse(writeFamily(read.document.file)))).toBe(text);
  });

  test('writing, reading and writing again changes nothing', () => {
    const first = writeFamily(asFile(familyValue({ note: 'Zeile\n"quoted" \u2028 \\' })));
    const read = readFamily(first);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    expect(writeFamily(read.document.file)).toBe(first);
  });

  test('any JSON value in an unknown field comes back the same', () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 4 }), (extra) => {
        const text = writeFamily(asFile(familyValue({ extra })));
        // JSON itself is the outside truth: it must read our text as the value that it writes itself.
        expect(JSON.stringify(JSON.parse(text).extra)).toBe(JSON.stringify(extra));
      }),
      { numRuns: 500 },
    );
  });

  test('a field that is undefined is left out, as JSON does', () => {
    expect(JSON.parse(writeFamily(asFile(familyValue({ note: undefined }))))).not.toHaveProperty('note');
  });

  test('a number that JSON cannot hold is a mistake of the caller', () => {
    expect(() => writeFamily(asFile(familyValue({ runningClearance: Number.NaN })))).toThrow(RangeError);
  });
});
