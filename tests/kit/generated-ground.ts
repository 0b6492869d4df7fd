import type { Verdict } from '../../src/fit/fit.ts';
import type { Typeface } from '../../src/lettering/typeface.ts';
import type { SheetGround } from '../../src/publish/sheet-ground.ts';
import { largeFamily } from '../cases/large-families.ts';
import { toldGround } from './told-ground.ts';

/** A long name of many words, and one of a single word. */
export const LONG = 'of the old pumping station beyond the second sluice, kept by the Water and Drainage Committee';
export const UNBROKEN = 'Gemeenschappelijkwaterschapsgemaalsleutelprofielnummerzevenentwintig';

/** A generated family with its wards' own verdicts, some of them tight. */
export function generatedGround(
  typeface: Typeface,
  openings: number,
  blanks: number,
  rename = (name: string, _i: number) => name,
): SheetGround {
  const { family, goesIn } = largeFamily(openings, blanks, { lengths: 2 });
  const profiles = family.profiles.map((profile, i) => ({
    ...profile,
    name: rename(profile.name, i),
    ...(profile.section !== undefined && { section: rename(profile.section, i % openings) }),
  }));
  const verdict = (e: number, o: number): Verdict => {
    if (!goesIn[e][o]) return 'blocked';
    return (e + o) % 5 === 0 ? 'tight' : 'enters';
  };
  return toldGround({ ...family, profiles }, verdict, typeface);
}
