import { expect, test } from 'vitest';
import { asTrustedRing } from '../../../src/geom/ring.ts';
import { identify, profilesAmong } from '../../../src/identify/identify.ts';
import { candidateName, candidateWords, sayIdentity } from '../../../src/identify/say-identity.ts';
import { mirrorOutline } from '../../../src/profile/mirror-outline.ts';
import type { Profile } from '../../../src/profile/profile.ts';
import { demoFamily, demoProfile } from '../../kit/demo-family.ts';
import { boxOfMm, turned } from '../../kit/shapes.ts';

const { profiles } = demoFamily();
const entrants = profilesAmong(profiles, 'entrants');
const length = (nm: number) => `${(nm / 1e6).toFixed(3)} mm`;

function said(ring: Profile['ring'], error: number, among = entrants): string {
  const answer = identify({ outline: ring, error, mirrored: true, turned: true, profiles: among });
  return sayIdentity(answer, among, error, length).join(' ');
}

test('a section as it is drawn', () => {
  expect(said(demoProfile('knot-blank').ring, 10_000)).toMatch(
    /^This is almost certainly Knot blank: it lies on it everywhere\. The next, .*, is up to 0\.\d+ mm off\.$/,
  );
});

test('a tip view, upside down', () => {
  const seen = turned(asTrustedRing(mirrorOutline(demoProfile('knot-blank').ring, 'left-right')), 180);
  const words = said(seen, 10_000);
  expect(words).toMatch(/^This almost certainly looks like the tip view of Knot blank: /);
  expect(words).toMatch(/To lie on it, it was mirrored, as seen from the tip and turned upside down\.$/);
});

test('a turned one: by how much, and which way', () => {
  expect(said(turned(demoProfile('knot-blank').ring, 12), 10_000)).toMatch(/it was turned by 12° to the right\.$/);
});

test('what stands beside each: one word for all that cannot be told apart', () => {
  const boxes = [2, 2.02, 3].map(
    (width): Profile => ({ id: `${width}`, kind: 'blank', name: `${width}`, ring: boxOfMm(width, 8) }),
  );
  const words = (width: number, error: number) => {
    const answer = identify({ outline: boxOfMm(width, 8), error, mirrored: true, turned: true, profiles: boxes });
    return boxes.map((_, i) => candidateWords(answer, i));
  };
  expect(words(2, 50_000)).toEqual(['could be it', 'could be it', '']);
  expect(words(3, 50_000)).toEqual(['almost certainly', '', '']);
  expect(words(5, 10_000)).toEqual(['nearest, but not alike', '', '']);
});

test('one of two', () => {
  const two: Profile[] = [
    { id: 'a', kind: 'blank', name: 'Teal', ring: boxOfMm(2, 8) },
    { id: 'b', kind: 'blank', name: 'Wigeon', ring: boxOfMm(2.02, 8) },
  ];
  expect(said(boxOfMm(2, 8), 50_000, two)).toMatch(
    /^This could be either Teal or Wigeon\. Drawn with an error of 0\.050 mm/,
  );
});

test('like none', () => {
  expect(said(boxOfMm(4, 4), 50_000)).toMatch(
    /^This is like none of the family: it is up to \d\.\d+ mm from the nearest, /,
  );
});

test('one outline with two names', () => {
  expect(candidateName({ ids: ['heron-blank-5', 'heron-blank-6'] }, profiles)).toBe(
    'Heron blank (five chambers or six chambers: one outline)',
  );
  expect(candidateName({ ids: ['knot-blank', 'ruff-blank'] }, profiles)).toBe('Knot blank or Ruff blank (one outline)');
});
