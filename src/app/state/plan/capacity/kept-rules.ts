import { type BittingRules, MOST_CHAMBERS, MOST_DEPTHS } from '../../../../capacity/bitting-rules.ts';

/**
 * The rules of a bitting as they were kept; null where what was kept is none. They may still contradict each other, as
 * rules that are typed may: the sheet says so.
 *
 * @check tests/unit/app/family-settings.test.ts
 */
export function keptRules(kept: unknown): BittingRules | null {
  if (typeof kept !== 'object' || kept === null) return null;
  const { chambers, depths, maximumAdjacent, excluded, mostAlike, leastDifferent, progression, parity, master } =
    kept as Record<string, unknown>;
  const isSound =
    [isWhole(chambers, MOST_CHAMBERS), isWhole(depths, MOST_DEPTHS), isWhole(leastDifferent, MOST_DEPTHS)].every(
      Boolean,
    ) &&
    (maximumAdjacent === null || isWhole(maximumAdjacent, MOST_DEPTHS)) &&
    (mostAlike === null || isWhole(mostAlike, MOST_CHAMBERS)) &&
    (progression === 'one-step' || progression === 'two-step') &&
    isList(excluded, isDepths) &&
    isList(parity, (one) => one === 'even' || one === 'odd') &&
    (master === null || isDepths(master));
  return isSound ? (kept as BittingRules) : null;
}

const isWhole = (value: unknown, most: number) =>
  Number.isInteger(value) && Number(value) >= 0 && Number(value) <= most;

const isList = (value: unknown, isPart: (part: unknown) => boolean) =>
  Array.isArray(value) && value.length <= MOST_CHAMBERS && value.every(isPart);

const isDepths = (value: unknown) => isList(value, (depth) => isWhole(depth, MOST_DEPTHS));
