import { type BittingRules, type Parity, USUAL_RULES } from '../../../../capacity/bitting-rules.ts';
import { makeFamilySettings, type SettingsPlace } from '../../family-settings.ts';
import { keptRules } from './kept-rules.ts';

/** What the Capacity sheet is set to for one family; kept in this browser, not in the file. */
export interface CapacitySettings {
  readonly rules: BittingRules;
  /** The number of the shallowest depth, as it is written: 0 or 1. */
  readonly firstDepth: 0 | 1;
  /** Which bitting is the example; null for the first one that is shown. Not kept. */
  readonly example: bigint | null;
}

const USUAL: CapacitySettings = { rules: USUAL_RULES, firstDepth: 0, example: null };

/** The settings of the sheet, family by family. */
export const {
  storeOf: capacityStateOf,
  settingsOf: capacitySettings,
  change: setCapacity,
} = makeFamilySettings<CapacitySettings>('sectionary-capacity', USUAL, ({ rules, firstDepth }) => ({
  rules: keptRules(rules) ?? USUAL.rules,
  firstDepth: firstDepth === 1 ? 1 : 0,
  example: null,
}));

/** Changes some rules of a family; excluded depths, parity and master follow the number of chambers and of depths. */
export function setRules(place: SettingsPlace, family: string, change: Partial<BittingRules>): void {
  const { rules } = capacitySettings(capacityStateOf(place).getState(), family);
  setCapacity(place, family, { rules: settled({ ...rules, ...change }), example: null });
}

/**
 * Rules whose rows have as many places as there are chambers, and no depth that there is not: a master gets the depth
 * of its last cut at the tip, a depth too deep becomes the deepest.
 *
 * @check tests/unit/app/capacity-state.test.ts
 */
export function settled(rules: BittingRules): BittingRules {
  const { chambers, depths } = rules;
  const places = Array.from({ length: chambers }, (_, chamber) => chamber);
  const { master } = rules;
  return {
    ...rules,
    excluded: places.map((chamber) => (rules.excluded[chamber] ?? []).filter((depth) => depth < depths)),
    parity: places.map((chamber): Parity => rules.parity[chamber] ?? 'even'),
    leastDifferent: Math.min(rules.leastDifferent, chambers, depths),
    master: master && places.map((chamber) => Math.min(depths - 1, master[chamber] ?? master[master.length - 1] ?? 0)),
  };
}

/** The rules with one depth of one chamber left out, or taken in again. */
export function toggleDepth(rules: BittingRules, chamber: number, depth: number): BittingRules {
  const rows = settled(rules).excluded;
  const excluded = rows.map((row, i) => (i === chamber ? toggled(row, depth) : row));
  return { ...rules, excluded };
}

/** The rules with a depth left out of every chamber, or taken in again everywhere where it is out of all of them. */
export function toggleDepthEverywhere(rules: BittingRules, depth: number): BittingRules {
  const rows = settled(rules).excluded;
  const out = rows.every((row) => row.includes(depth));
  const without = rows.map((row) => row.filter((other) => other !== depth));
  return { ...rules, excluded: out ? without : without.map((row) => [...row, depth].sort((a, b) => a - b)) };
}

function toggled(row: readonly number[], depth: number): number[] {
  if (row.includes(depth)) return row.filter((other) => other !== depth);
  return [...row, depth].sort((a, b) => a - b);
}
