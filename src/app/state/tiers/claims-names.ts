import { makeNameFinder, type NamedSide, type Side } from '../../../claims/resolve-claims.ts';
import type { Claim } from '../../../family/claim.ts';
import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import { registerOf } from '../../../names/register.ts';
import { canBe } from '../../../names/resolve.ts';

/** Most names that a field offers. */
const MOST_OFFERED = 1_000;

/** The names that may be written on one side of a claim: those of profiles in chart order, then others of the register. */
export function suggestedNames(family: Family, side: Side): string[] {
  const profiles = side === 'opening' ? openingsOf(family) : entrantsOf(family);
  const role = side === 'opening' ? 'opening' : 'entrant';
  const own = profiles.map(({ name }) => name);
  const others = registerOf(family)
    .senses.filter((sense) => canBe(sense, role))
    .map(({ text }) => text);
  return [...new Set([...own, ...others])].slice(0, MOST_OFFERED);
}

/** A name of a table that does not stand for one outline, and in how many claims it is used. */
export interface OddName extends NamedSide {
  readonly count: number;
}

/** The names of some claims that are not found or ambiguous, those used most first. */
export function oddNames(family: Family, claims: readonly Claim[]): OddName[] {
  const finder = makeNameFinder(family, registerOf(family));
  const counts = new Map<NamedSide, number>();
  for (const { blank, opening, by } of claims)
    for (const named of [finder.find('blank', blank, by), finder.find('opening', opening, by)])
      if (named.standing !== 'found') counts.set(named, (counts.get(named) ?? 0) + 1);
  const odd = [...counts].map(([named, count]) => ({ ...named, count }));
  return odd.sort((a, b) => b.count - a.count);
}

/** The key of a name among {@link withNames}. */
export function nameKey(side: Side, text: string): string {
  return `${side}\n${text}`;
}

/** Claims with other names in place of those that are given, by {@link nameKey}. */
export function withNames(claims: readonly Claim[], names: ReadonlyMap<string, string>): readonly Claim[] {
  if (names.size === 0) return claims;
  return claims.map((claim) => ({
    ...claim,
    blank: names.get(nameKey('blank', claim.blank)) ?? claim.blank,
    opening: names.get(nameKey('opening', claim.opening)) ?? claim.opening,
  }));
}

/** Claims with a source where they name none. */
export function withSource(claims: readonly Claim[], by: string): readonly Claim[] {
  const source = by.trim();
  return source === '' ? claims : claims.map((claim) => (claim.by ? claim : { ...claim, by: source }));
}

/** Whether more names of a matrix are found when its rows are keyways and its columns blanks. */
export function seemsSwapped(family: Family, claims: readonly Claim[]): boolean {
  const finder = makeNameFinder(family, registerOf(family));
  const found = (blank: string, opening: string) =>
    Number(finder.find('blank', blank, undefined).standing === 'found') +
    Number(finder.find('opening', opening, undefined).standing === 'found');
  let [asIs, swapped] = [0, 0];
  for (const { blank, opening } of claims) {
    asIs += found(blank, opening);
    swapped += found(opening, blank);
  }
  return swapped > asIs;
}
