// Outside truth: JSON Schema draft 2020-12 (json-schema.org, 2022-06 patch) as implemented by Ajv 8, which knows nothing
// of our reader. The schema in shared/ and the reader must refuse the same shapes.

import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFamily } from '../../src/interchange/json/read.ts';
import { frameFaults, profileFaults } from '../../src/interchange/json/schema.ts';
import { BAD_FILES } from '../cases/bad-files/bad-files.ts';
import { familyValue } from '../cases/bad-files/nearly-sound.ts';

type Json = Record<string, unknown>;

const schema = JSON.parse(readFileSync('shared/family.schema.json', 'utf8')) as object;
// A point may leave its third number out, which strict tuples would take for a slip.
const ajv = new Ajv2020({
  ...{ allErrors: false, strict: true, strictRequired: false, strictTuples: false },
  allowUnionTypes: true,
});
const valid = ajv.compile(schema);

/** The value that a text holds, or undefined where it holds none or one that only the text betrays. */
function parsedOrNothing(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Whether the reader finds the shape of the format, geometry and ids left aside. */
function hasShape(value: unknown): boolean {
  if (frameFaults(value).length > 0) return false;
  return (value as { profiles: Json[] }).profiles.every(
    (profile) =>
      profileFaults(profile).length === 0 && (profile.outline === undefined) !== (profile.milled === undefined),
  );
}

describe('the published schema against an independent validator', () => {
  test('the schema is itself a valid schema of draft 2020-12', () => {
    expect(ajv.validateSchema(schema)).toBe(true);
  });

  const shaped = BAD_FILES.filter((bad) => bad.byShape);
  test.each(shaped)('refuses by shape: $name', ({ text }) => {
    expect(valid(parsedOrNothing(text))).toBe(false);
  });

  const geometric = BAD_FILES.filter(
    (bad) => !bad.byShape && /^(profiles|runningClearance|tolerance)[^(]*$/.test(String(bad.path)),
  );
  test.each(geometric)('has no word against, since only geometry or ids are wrong: $name', ({ text }) => {
    expect(valid(parsedOrNothing(text)), ajv.errorsText(valid.errors)).toBe(true);
  });

  test('there are enough cases of both kinds', () => {
    expect(shaped.length).toBeGreaterThan(30);
    expect(geometric.length).toBeGreaterThan(15);
  });

  test('validator and reader agree on 3,000 files with one value replaced, removed or added', () => {
    let refused = 0;
    fc.assert(
      fc.property(fc.nat(), fc.oneof(replacement, fc.jsonValue({ maxDepth: 2 })), (pick, value) => {
        const changed = withOneChange(pick, value);
        const accepted = valid(changed) === true;
        if (!accepted) refused++;
        expect(hasShape(changed), JSON.stringify(changed)).toBe(accepted);
        if (!accepted) expect(readFamily(JSON.stringify(changed)).ok).toBe(false);
      }),
      { numRuns: 3000 },
    );
    expect(refused).toBeGreaterThan(500);
    expect(refused).toBeLessThan(2900);
  });

  const demos = readdirSync('profiles-demo').filter((name) => name.endsWith('.json'));
  test.each(demos)('profiles-demo/%s is valid, and is read', (name) => {
    const text = readFileSync(`profiles-demo/${name}`, 'utf8');
    expect(valid(parsedOrNothing(text)), ajv.errorsText(valid.errors)).toBe(true);
    expect(readFamily(text)).toMatchObject({ ok: true });
  });

  test('there is at least one demo to look at', () => {
    expect(demos.length).toBeGreaterThan(0);
  });
});

/** Values that are likely to be right or nearly right somewhere in a file. */
const replacement = fc.constantFrom<unknown>(
  undefined,
  0,
  1,
  -1,
  0.5,
  12,
  13,
  89.9,
  90,
  'mm',
  'in',
  'left',
  'tool',
  'a.b:c-d',
  '-a',
  '',
  ' ',
  'valueOf',
  [],
  [0, 0],
  [0, 0, 0],
  {},
);

/** A sound family with the value at one of its places replaced; undefined removes it. */
function withOneChange(pick: number, value: unknown): Json {
  const family = structuredClone(
    familyValue({
      tolerance: 0.02,
      tiltLimitDeg: 3,
      profiles: [
        {
          id: 'a',
          kind: 'blank',
          name: 'A',
          section: 'S',
          chambers: 5,
          tolerance: 0.01,
          note: '',
          outline: [
            [0, 0],
            [1, 0],
            [1, 1],
          ],
        },
        {
          id: 'b',
          kind: 'opening',
          name: 'B',
          extra: 1,
          milled: {
            thickness: 2,
            height: 8,
            backRadius: 0,
            grooves: [{ side: 'left', bottom: 1, width: 1, depth: 0.5, flankDeg: 10, rootRadius: 0.1 }],
          },
        },
      ],
    }),
  );
  const places = placesIn(family);
  const [holder, key] = places[pick % places.length];
  if (value !== undefined) holder[key] = value;
  else if (Array.isArray(holder)) holder.splice(Number(key), 1);
  else delete holder[key];
  return family;
}

/** Every field and list entry of a value, as its holder and its key; lists and objects also have one more, unused key. */
function placesIn(value: unknown): [Json, string][] {
  if (typeof value !== 'object' || value === null) return [];
  const holder = value as Json;
  const unused = Array.isArray(value) ? String(value.length) : 'unused';
  return [
    [holder, unused],
    ...Object.keys(holder).flatMap((key): [Json, string][] => [[holder, key], ...placesIn(holder[key])]),
  ];
}
