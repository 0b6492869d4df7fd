import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { digitRunsOf, foldName, lookAlikeForm } from '../../../src/names/fold-name.ts';
import { readPhrase } from '../../../src/names/name-phrase.ts';
import { registerOf } from '../../../src/names/register.ts';
import { profilesOf, resolveName, successorOf } from '../../../src/names/resolve.ts';
import { textDistance } from '../../../src/names/text-distance.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { familyOf, named, sectionOf } from '../../kit/named-family.ts';

const college = demoFamily();
const register = registerOf(college);

/** The texts that a typed name comes near, or what it is found as. */
function near(text: string): string[] {
  const found = resolveName(register, text);
  return found.kind === 'near' ? found.candidates.map((sense) => sense.text) : [];
}

describe('folding', () => {
  it.each([
    ['  Héron – Blank ', 'heronblank'],
    ['PC-105', 'pc105'],
    ['W 12', 'w12'],
    ['10 5', '10 5'],
    ['10.5', '10 5'],
    ['Strip 0.55 × 6', 'strip0 55x6'],
    ['Straße', 'strasse'],
    ['👍 key', '👍key'],
    ['---', '---'],
  ])('%s is %s', (text, folded) => expect(foldName(text)).toBe(folded));

  it('keeps runs of digits apart, so that 10 5 is not 105', () => {
    expect(digitRunsOf(foldName('PC 10 5'))).toEqual(['10', '5']);
    expect(foldName('PC 10 5')).not.toBe(foldName('PC 105'));
  });

  it('makes look-alikes one only in their own form', () => {
    expect(foldName('PC 1O5')).not.toBe(foldName('PC 105'));
    expect(lookAlikeForm(foldName('PC lO5'))).toBe(lookAlikeForm(foldName('PC 105')));
  });
});

describe('the words around a name', () => {
  it.each([
    ['the Heron', 'Heron', null, null],
    ['heron blank', 'heron', 'blank', null],
    ['Reed group blank', 'Reed', 'blank', null],
    ['the five-chamber Heron blank', 'Heron', 'blank', 5],
    ['Heron blank in 6 chambers', 'Heron', 'blank', 6],
    ['keyway Heron', 'Heron', 'keyway', null],
    ["Heron's lock", 'Heron', 'keyway', null],
    ['blank', 'blank', null, null],
  ])('%s', (text, core, kind, chambers) => expect(readPhrase(text)).toEqual({ core, kind, chambers }));
});

describe('a typed name', () => {
  it('is found in capitals, with hyphens, with the words of its kind', () => {
    for (const text of ['Heron', 'HERON', 'the heron', 'pc-105', 'PC105', 'Polder all section blank', 'nose-feeler'])
      expect(resolveName(register, text).kind).toBe('found');
    const blank = resolveName(register, 'heron blank');
    expect(blank).toMatchObject({ kind: 'found', senses: [{ kind: 'blank', section: 'Heron' }] });
  });

  it('comes near with slips of letters, two neighbours swapped counting once', () => {
    expect(near('Hreon')[0]).toBe('Heron');
    expect(near('Bitern')[0]).toBe('Bittern');
    expect(near('Curlw')[0]).toBe('Curlew');
    expect(near('nose feler')[0]).toBe('Nose feeler');
    expect(resolveName(register, 'Woodpigeon')).toEqual({ kind: 'unknown', candidates: [] });
  });

  it('never comes near by another, a further or a missing digit', () => {
    expect(near('PC 108')).toEqual([]);
    expect(near('PC 1055')).toEqual([]);
    expect(near('PC 10')).toEqual([]);
    expect(near('PD 105')).toContain('PC 105');
    expect(near('105')).toEqual(['PC 105']);
  });

  it('with look-alikes is asked back, not taken', () => {
    expect(near('PC 1O5')).toEqual(['PC 105']);
    expect(near('PC 140')[0]).toBe('PC 14O');
    expect(near('Her0n')[0]).toBe('Heron');
  });

  it('has at most five candidates, and only those whose digits are the same', () => {
    const names = fc.stringMatching(/^[A-D]{1,3}[ -]?[0-9]{0,4}[A-D]?$/);
    fc.assert(
      fc.property(fc.array(names, { maxLength: 20 }), names, (texts, typed) => {
        const entries = texts.filter((text) => text.trim() !== '').map((text) => ({ text, kind: 'blank' as const }));
        const found = resolveName(registerOf(familyOf(sectionOf('Heron', 1), entries)), typed);
        if (found.kind === 'found')
          return found.senses.every(
            (sense) =>
              foldName(sense.text).includes(foldName(typed)) ||
              foldName(typed).includes(foldName(readPhrase(sense.text).core)),
          );
        const digits = digitRunsOf(foldName(typed)).join(' ');
        const same = found.candidates.every((sense) => digitRunsOf(foldName(sense.text)).join(' ') === digits);
        return found.candidates.length <= 5 && same;
      }),
      { numRuns: 400 },
    );
  });

  it('stands for the profiles of its section and length, and a blank for no keyway', () => {
    const idsOf = (text: string, wanted?: 'entrant' | 'opening') => {
      const found = resolveName(register, text, wanted);
      if (found.kind !== 'found') return null;
      return profilesOf(college, found.senses[0], wanted).map(({ id }) => id);
    };
    expect(idsOf('Heron', 'entrant')).toEqual(['heron-blank-5', 'heron-blank-6']);
    expect(idsOf('Heron', 'opening')).toEqual(['heron-keyway']);
    expect(idsOf('PC 105')).toEqual(['heron-blank-6']);
    expect(idsOf('PC 105', 'opening')).toEqual([]);
    expect(idsOf('PC 100', 'entrant')).toEqual(['heron-blank-5', 'heron-blank-6']);
    expect(idsOf('W-12', 'opening')).toEqual(['dunlin-keyway']);
    expect(idsOf('five-chamber heron blank')).toEqual(['heron-blank-5']);
    expect(idsOf('Feeler no 2')).toEqual(['nose-feeler']);
  });

  it('that is superseded leads to what is used now, also over several names, and a circle to nothing', () => {
    const family = familyOf(sectionOf('Heron', 1), [
      { text: 'A 1', kind: 'blank', supersededBy: 'A 2' },
      { text: 'A 2', kind: 'blank', supersededBy: 'Heron blank' },
      { text: 'B 1', kind: 'blank', supersededBy: 'B 2' },
      { text: 'B 2', kind: 'blank', supersededBy: 'B 1' },
    ]);
    const senseOf = (text: string) => {
      const found = resolveName(registerOf(family), text);
      if (found.kind !== 'found') throw new Error(text);
      return found.senses[0];
    };
    expect(successorOf(registerOf(family), senseOf('A 1'))?.text).toBe('Heron blank');
    expect(profilesOf(family, senseOf('A 1')).map(({ name }) => name)).toEqual(['Heron blank']);
    expect(successorOf(registerOf(family), senseOf('B 1'))).toBeNull();
    expect(profilesOf(family, senseOf('B 1'))).toEqual([]);
  });

  it('has all its senses: one text in two lists, a section and its blank', () => {
    const found = resolveName(register, 'W-12');
    expect(found).toMatchObject({ kind: 'found', senses: [{ scheme: 'Stores list' }, { scheme: "Porter's book" }] });
    const tool = familyOf([...sectionOf('Heron', 1), named('tool', 'Heron')]);
    expect(resolveName(registerOf(tool), 'heron')).toMatchObject({ senses: [{ kind: 'tool' }, { kind: 'section' }] });
  });
});

describe('the distance of two texts', () => {
  // Levenshtein's own properties, and the swap that counts once.
  it.each([
    ['kitten', 'sitting', 5, 3],
    ['heron', 'hreon', 5, 1],
    ['heron', 'heron', 5, 0],
    ['abc', 'abcdefgh', 2, 3],
    ['ab', 'ba', 0, 1],
  ])('%s %s', (a, b, most, distance) => expect(textDistance(a, b, most)).toBe(distance));
});
