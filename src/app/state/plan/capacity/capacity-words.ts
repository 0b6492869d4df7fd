import type { BittingRules } from '../../../../capacity/bitting-rules.ts';
import type { Capacity, Grown, Variant } from '../../../../capacity/capacity.ts';

/** Digits in groups of three, whatever the size; the spaces do not break. */
export function countText(value: bigint | number): string {
  return String(value).replace(/\B(?=(\d{3})+$)/g, '\u00a0');
}

/** "753 754 bittings × 10 sections = 7 537 540 key changes". */
export function capacityHeadline({ bittings, count, keys }: Capacity): string {
  const sections = `${countText(count)} ${count === 1 ? 'section' : 'sections'}`;
  const of = `${countText(bittings)} ${bittings === 1n ? 'bitting' : 'bittings'}`;
  return `${of} × ${sections} = ${countText(keys)} key changes`;
}

/** How many of all bittings keep the rules. */
export function keptText({ bittings, without }: Capacity): string {
  if (bittings === without) return `Every one of the ${countText(without)} bittings keeps the rules.`;
  if (bittings === 0n) return `None of the ${countText(without)} bittings keeps the rules.`;
  const share = Number((bittings * 10_000n) / without) / 100;
  const percent = share < 0.01 ? 'under 0.01' : share.toFixed(share < 10 ? 2 : 1);
  return `Of ${countText(without)} bittings ${percent} % keep the rules.`;
}

const ONE: Readonly<Record<Grown, string>> = { chambers: 'chamber', depths: 'depth', sections: 'section' };

/** "7 chambers", "1 section". */
export function variantName({ of, count }: Variant): string {
  return `${count} ${count === 1 ? ONE[of] : of}`;
}

/** "× 9.46" against the system as asked; empty for that one itself, and where it has no keys. */
export function factorText({ keys, now }: Variant, asked: bigint): string {
  if (now || asked === 0n) return '';
  const factor = Number((keys * 10_000n) / asked) / 10_000;
  return `× ${factor < 0.01 ? factor.toPrecision(1) : factor.toFixed(2)}`;
}

/** What one more of each brings, a sentence each. */
export function growthSentences({ variants, keys }: Capacity): string[] {
  return (['sections', 'chambers', 'depths'] as const).flatMap((of) => {
    const mine = variants.filter((variant) => variant.of === of);
    const more = mine[mine.findIndex(({ now }) => now) + 1];
    if (!more || keys === 0n) return [];
    const added = countText(more.keys - keys);
    if (of === 'sections') return [`One section more adds ${added} keys, and leaves every cylinder there is as it is.`];
    const what = of === 'chambers' ? 'One chamber more' : 'One depth more';
    const cost = of === 'chambers' ? 'longer blanks and cylinders' : 'finer steps, and so less tolerance';
    return [`${what} brings ${factorText(more, keys).replace('× ', '')} times as many (${added} more), for ${cost}.`];
  });
}

/** What depths a chamber has that is added in the chart, where that is not plain; empty otherwise. */
export function addedChamberText({ master, progression }: BittingRules): string {
  if (master) return 'A chamber that is added takes the depth of the top master that leaves the most bittings.';
  return progression === 'two-step' ? 'A chamber that is added takes the parity that leaves the most bittings.' : '';
}

/** Depths as they are written on a key. */
export function bittingText(cuts: readonly number[], firstDepth: number): string {
  return cuts.map((depth) => depth + firstDepth).join(' ');
}

/** The rules in one line, as they would be said. */
export function rulesText(rules: BittingRules, firstDepth: number): string {
  const { chambers, depths, maximumAdjacent, mostAlike, leastDifferent, progression, master } = rules;
  const parts = [
    `${chambers} chambers, depths ${firstDepth} to ${firstDepth + depths - 1}`,
    maximumAdjacent === null ? 'no maximum adjacent cut' : `MACS ${maximumAdjacent}`,
    ...(mostAlike === null ? [] : [`at most ${mostAlike} alike in a row`]),
    ...(leastDifferent > 1 ? [`at least ${leastDifferent} different depths`] : []),
    progression === 'two-step' ? 'two-step' : 'one-step',
    ...(master ? [`under the top master ${bittingText(master, firstDepth)}`] : []),
  ];
  return parts.join('; ');
}

/** A depth list as typed, "5 2 7 4 1 8" or "5,2,7": depths from 0, or what is wrong. */
export function readCuts(
  text: string,
  firstDepth: number,
): { ok: true; cuts: number[] } | { ok: false; words: string } {
  const parts = text.trim().split(/[\s,;]+/);
  if (!parts.every((part) => /^\d{1,2}$/.test(part)))
    return { ok: false, words: 'Type depths with blanks or commas between them: 5 2 7 4 1 8.' };
  const cuts = parts.map((part) => Number(part) - firstDepth);
  if (cuts.some((depth) => depth < 0)) return { ok: false, words: `Depths begin at ${firstDepth}.` };
  return { ok: true, cuts };
}
