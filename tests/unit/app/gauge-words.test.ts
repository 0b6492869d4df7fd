import { expect, test } from 'vitest';
import { coverHeadline, coverNote, tryingWords } from '../../../src/app/state/gauge/cover-words.ts';
import {
  alikeNames,
  keywayName,
  pinchWords,
  shortName,
  tiltLimitText,
  tiltWords,
} from '../../../src/app/state/gauge/gauge-words.ts';
import type { ToolCover } from '../../../src/gauge/cover-tools.ts';
import { pinchAtTilt } from '../../../src/gauge/pinch.ts';
import { demoProfile } from '../../kit/demo-family.ts';

const AVOCET = demoProfile('avocet-keyway');

test('keyways that do the same are told as one, by number where they are many', () => {
  const named = (names: string[]) => names.map((section) => ({ name: `${section} keyway`, section }));
  expect(alikeNames(named(['Annexe']))).toBe('Annexe');
  expect(alikeNames(named(['Annexe', 'Theatre', 'Laboratory']))).toBe('Annexe, Theatre and Laboratory');
  expect(alikeNames(named(['A', 'B', 'C', 'D', 'E']))).toBe('5 keyways alike');
});

test('the pinch is told with thickness, tilt and the heights that hold it', () => {
  const pinch = pinchAtTilt(AVOCET.ring, 6e6, 0);
  expect(pinchWords(AVOCET, 6e6, pinch, 'mm')).toMatch(
    /^0\.75 mm is the thickest strip 6 mm tall that goes into Avocet keyway, upright\. It is held on the (left|right) at \d\.\d mm and on the (left|right) at \d\.\d mm above the floor of the keyway\.$/,
  );
  expect(pinchWords(AVOCET, 6e6, pinch, 'in')).toContain('29.5 thou is the thickest strip 0.236 in tall');
  expect(pinchWords(AVOCET, 20e6, null, 'mm')).toBe('No strip 20 mm tall goes into Avocet keyway, however thin.');
});

test('a tilt is told by the side that the top leans to', () => {
  expect(tiltWords(0)).toBe('upright');
  expect(tiltWords((2 * Math.PI) / 180)).toBe('tilted 2.0° to the left');
  expect(tiltWords((-0.5 * Math.PI) / 180)).toBe('tilted 0.50° to the right');
  expect(keywayName({ section: 'Marsh', name: 'Marsh opening 3' })).toBe('Marsh keyway');
  expect(keywayName({ name: 'The old one' })).toBe('The old one');
  expect(shortName({ name: 'Marsh 7 keyway' })).toBe('Marsh 7');
  expect(shortName({ name: 'Keyway' })).toBe('Keyway');
});

const NAMES = { toolName: (id: string) => `Tool ${id}`, openingName: (id: string) => `K${id}` };

function cover(tools: string[], uses: [string, string][], uncovered: string[] = []): ToolCover {
  const list = uses.map(([openingId, toolId]) => ({ openingId, toolId, clearance: 1, tight: openingId === '9' }));
  return {
    tools,
    uses: list,
    uncovered,
    clearance: 1,
    sets: tools.length > 0 ? [tools] : [],
    more: false,
    proved: true,
  };
}

test('the fewest tools are told in one line, with what nothing enters', () => {
  expect(
    coverHeadline(
      cover(
        ['a'],
        [
          ['1', 'a'],
          ['2', 'a'],
        ],
      ),
      NAMES,
    ),
  ).toBe('Tool a alone enters all 2 ticked keyways');
  expect(
    coverHeadline(
      cover(
        ['a', 'b'],
        [
          ['1', 'a'],
          ['2', 'b'],
        ],
        ['3'],
      ),
      NAMES,
    ),
  ).toBe('2 tools enter 2 of the 3 ticked keyways: Tool a and Tool b; nothing enters K3');
  expect(
    coverHeadline(
      cover(
        ['a'],
        [
          ['1', 'a'],
          ['9', 'a'],
        ],
      ),
      NAMES,
    ),
  ).toBe('Tool a alone enters all 2 ticked keyways, one of them tight');
  expect(coverHeadline(cover([], [], ['1', '2']), NAMES)).toBe('No tool enters any of the 2 ticked keyways');
  expect(coverHeadline(cover([], [], ['1']), NAMES)).toBe('No tool enters K1');
  expect(coverHeadline(cover([], []), NAMES)).toBe('Tick the keyways that are to be covered');
});

test('a tilt limit is told in degrees, no tilt not at all', () => {
  expect(tiltLimitText((2 * Math.PI) / 180)).toBe('up to 2°');
  expect(tiltLimitText(0)).toBeUndefined();
});

test('without tools nothing is said to be tried', () => {
  expect(tryingWords(0)).toBe('No tools to try');
  expect(tryingWords(3)).toBe('Trying the tools …');
});

test('how sure the set is', () => {
  expect(coverNote(cover(['a'], [['1', 'a']]))).toBe('No other tool alone does.');
  expect(
    coverNote({
      ...cover(['a', 'b'], [['1', 'a']]),
      sets: [
        ['a', 'b'],
        ['a', 'c'],
      ],
    }),
  ).toBe('Fewer do not do. This set has most room in its tightest keyway; one other set is as small.');
  expect(coverNote({ ...cover(['a', 'b'], [['1', 'a']]), proved: false })).toBe(
    'The search was cut short: fewer than 2 tools may do.',
  );
});
