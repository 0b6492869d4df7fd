import { describe, expect, test } from 'vitest';
import { makeNameFinder, resolveClaims } from '../../../src/claims/resolve-claims.ts';
import { asTrustedRing as ringOf } from '../../../src/geom/ring.ts';
import { registerOf } from '../../../src/names/register.ts';
import { outlineKey } from '../../../src/profile/outline-key.ts';
import { slotFamily } from '../../cases/slot-family.ts';

const family = slotFamily(
  [
    { id: 'heron-keyway', name: 'Heron keyway', section: 'Heron', width: 1.1 },
    { id: 'smew-keyway', name: 'Smew keyway', section: 'Smew', width: 1.4 },
  ],
  [
    { id: 'heron-5', name: 'Heron blank, five chambers', section: 'Heron', width: 1, chambers: 5 },
    { id: 'heron-6', name: 'Heron blank, six chambers', section: 'Heron', width: 1, chambers: 6 },
    { id: 'smew-thin', name: 'Smew blank, thin', section: 'Smew', width: 1.2 },
    { id: 'smew-thick', name: 'Smew blank, thick', section: 'Smew', width: 1.3 },
    { id: 'twin-a', name: 'Twin', width: 1 },
    { id: 'twin-b', name: 'Twin', width: 1.05 },
  ],
  {
    names: [
      { text: 'K 105', kind: 'blank', section: 'Heron', chambers: 5, scheme: 'Stores list' },
      { text: 'Marsh', kind: 'blank', profile: 'heron-6', scheme: 'Stores list' },
      { text: 'Marsh', kind: 'blank', profile: 'smew-thin', scheme: 'Wall chart' },
    ],
  },
);
const finder = makeNameFinder(family, registerOf(family));
const blank = (text: string, by?: string) => finder.find('blank', text, by);
const keyway = (text: string, by?: string) => finder.find('opening', text, by);

describe('a name', () => {
  test('of a section stands for its blanks as a blank, and for its keyway as a keyway', () => {
    expect(blank('Heron')).toMatchObject({ standing: 'found', ids: ['heron-5', 'heron-6'] });
    expect(keyway('Heron')).toMatchObject({ standing: 'found', ids: ['heron-keyway'] });
    expect(keyway('Heron keyway')).toMatchObject({ standing: 'found', ids: ['heron-keyway'] });
  });

  test('of blanks for five and six chambers is not ambiguous: they have one outline', () => {
    expect(blank('Heron blank').ids).toEqual(['heron-5', 'heron-6']);
  });

  test('that is a blank number stands for the blank of that length', () => {
    expect(blank('K 105')).toMatchObject({ standing: 'found', ids: ['heron-5'] });
  });

  test('of different outlines is ambiguous, and the blanks are named', () => {
    expect(blank('Smew')).toMatchObject({
      standing: 'ambiguous',
      ids: [],
      candidates: ['Smew blank, thin', 'Smew blank, thick'],
    });
  });

  test('of two blanks that are called the same is told apart by ids', () => {
    expect(blank('Twin')).toMatchObject({ standing: 'ambiguous', candidates: ['twin-a', 'twin-b'] });
    expect(blank('twin-b')).toMatchObject({ standing: 'found', ids: ['twin-b'] });
  });

  test('of two schemes has the sense of the scheme that is the source', () => {
    expect(blank('Marsh').standing).toBe('ambiguous');
    expect(blank('Marsh', 'Stores list').ids).toEqual(['heron-6']);
    expect(blank('Marsh', ' wall  CHART ').ids).toEqual(['smew-thin']);
    expect(blank('Marsh', 'somebody').standing).toBe('ambiguous');
  });

  test('that is near one is not found, and the near one is told', () => {
    expect(blank('Hern')).toMatchObject({ standing: 'not found', candidates: ['Heron'] });
    expect(blank('Cormorant')).toMatchObject({ standing: 'not found', candidates: [] });
  });

  test('of a keyway is no blank; the blanks of its section are told', () => {
    expect(blank('Heron keyway')).toMatchObject({ standing: 'other kind', ids: [] });
    expect(blank('Heron keyway').candidates).toEqual(['Heron blank, five chambers', 'Heron blank, six chambers']);
  });

  test('with other digits is never offered', () => {
    expect(blank('K 106')).toMatchObject({ standing: 'not found', candidates: [] });
  });
});

test('claims keep their order and place', () => {
  const claims = [
    { blank: 'Heron', opening: 'Smew', enters: true },
    { blank: 'Hern', opening: 'Heron', enters: false },
  ];
  expect(resolveClaims(finder, claims).map(({ index, blank: b }) => [index, b.standing])).toEqual([
    [0, 'found'],
    [1, 'not found'],
  ]);
});

test('one outline has one key wherever it stands and wherever it begins; another has another', () => {
  const square = (x: number, y: number, side: number, first: number) => {
    const corners = [
      { x, y },
      { x: x + side, y },
      { x: x + side, y: y + side },
      { x, y: y + side },
    ];
    return ringOf(corners.map((_, i) => corners[(i + first) % 4]));
  };
  const keys = [square(0, 0, 5, 0), square(7, -3, 5, 0), square(7, -3, 5, 2)].map(outlineKey);
  expect(new Set(keys).size).toBe(1);
  expect(outlineKey(square(0, 0, 6, 0))).not.toBe(keys[0]);
});
