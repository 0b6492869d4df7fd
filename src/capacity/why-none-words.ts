import type { BittingRules } from './bitting-rules.ts';
import type { LooseRule, WhyNone } from './why-none.ts';

const RULE_WORDS: Readonly<Record<LooseRule, string>> = {
  maximumAdjacent: 'the maximum adjacent cut',
  excluded: 'the excluded depths',
  mostAlike: 'the limit on cuts alike in a row',
  leastDifferent: 'the number of different depths',
  progression: 'the two-step progression',
  master: 'the top master',
};

/**
 * Why no bitting keeps some rules, in sentences: what empties which chamber, and what would help.
 *
 * @param firstDepth the number of the shallowest depth, as it is written.
 * @check tests/unit/capacity/why-none.test.ts
 */
export function whyNoneWords(rules: BittingRules, { empty, endsAt, by }: WhyNone, firstDepth: number): string[] {
  const places = empty.map(
    (chamber) => `Chamber ${chamber + 1} has no depth left: ${takers(rules, chamber, firstDepth)}.`,
  );
  return [...(places.length > 0 ? places : [endWords(rules, endsAt)]), byWords(by)];
}

/** "excluded are 0 1 2, the top master has 5, of the other parity are 4 6". */
function takers(rules: BittingRules, chamber: number, firstDepth: number): string {
  const own = rules.master?.[chamber];
  const out = rules.excluded[chamber] ?? [];
  const written = (depths: readonly number[]) => depths.map((depth) => depth + firstDepth).join(' ');
  const rest = Array.from({ length: rules.depths }, (_, depth) => depth).filter(
    (depth) => depth !== own && !out.includes(depth),
  );
  return [
    ...(out.length > 0 ? [`excluded ${out.length === 1 ? 'is' : 'are'} ${written(out)}`] : []),
    ...(own === undefined || out.includes(own) ? [] : [`the top master has ${written([own])}`]),
    ...(rest.length > 0 ? [`of the other parity ${rest.length === 1 ? 'is' : 'are'} ${written(rest)}`] : []),
  ].join(', ');
}

function endWords({ leastDifferent }: BittingRules, endsAt: number | null): string {
  if (endsAt === null) return `No key has ${leastDifferent} different depths.`;
  const before = endsAt === 1 ? 'chamber 1' : `chambers 1 to ${endsAt}`;
  return `No depth of chamber ${endsAt + 1} may stand after a cut that ${before} can have.`;
}

function byWords(by: readonly LooseRule[]): string {
  if (by.length === 0) return 'No one rule alone is the cause: loosen several of them.';
  return `There would be some without ${by.map((rule) => RULE_WORDS[rule]).join(', or without ')}.`;
}
