/** Whether neighbouring bittings may differ by one depth, or keep the odd or the even depths of each position. */
export type Progression = 'one-step' | 'two-step';

/** Which depths of a position a two-step progression keeps: those with an even, or with an odd number. */
export type Parity = 'even' | 'odd';

/** What a bitting of a system must keep to. Depths are numbered from 0, chambers from the bow on from 0. */
export interface BittingRules {
  readonly chambers: number;
  /** How many depths a cut may have. */
  readonly depths: number;
  /** Greatest difference of two neighbouring cuts (MACS); null where there is none. */
  readonly maximumAdjacent: number | null;
  /** `excluded[chamber]`: depths that are not used there; shorter than the number of chambers where none follow. */
  readonly excluded: readonly (readonly number[])[];
  /** At most so many equal cuts side by side; null where any number may be. */
  readonly mostAlike: number | null;
  /** At least so many different depths in one bitting; 1 where any will do. */
  readonly leastDifferent: number;
  readonly progression: Progression;
  /** Two-step without a master: which depths of each chamber; 'even' where not given. Under a master it is the master's. */
  readonly parity: readonly Parity[];
  /** The top master: no change key equals it in any position; null where the keys stand under none. */
  readonly master: readonly number[] | null;
}

/** Six chambers, ten depths, neighbours at most seven apart: a common kind of system, no source. */
export const USUAL_RULES: BittingRules = {
  chambers: 6,
  depths: 10,
  maximumAdjacent: 7,
  excluded: [],
  mostAlike: null,
  leastDifferent: 1,
  progression: 'one-step',
  parity: [],
  master: null,
};

/** Most chambers and most depths that are counted. */
export const MOST_CHAMBERS = 12;
export const MOST_DEPTHS = 12;

/** What is wrong with some rules: the field, what, and what to do. */
export interface RuleFault {
  readonly field: keyof BittingRules;
  readonly what: string;
  readonly cure: string;
}

/**
 * What is wrong with some rules; none where they can be counted.
 *
 * @check tests/unit/capacity/bitting-rules.test.ts
 */
export function ruleFaults(rules: BittingRules): readonly RuleFault[] {
  const faults: RuleFault[] = [];
  const whole = (
    field: 'chambers' | 'depths' | 'leastDifferent' | 'mostAlike' | 'maximumAdjacent',
    low: number,
    high: number,
  ) => {
    const value = rules[field];
    if (value === null || (Number.isInteger(value) && value >= low && value <= high)) return;
    faults.push({ field, what: `${NAMES[field]}: ${value}`, cure: `Give a whole number from ${low} to ${high}.` });
  };
  whole('chambers', 1, MOST_CHAMBERS);
  whole('depths', 2, MOST_DEPTHS);
  if (faults.length > 0) return faults;
  whole('maximumAdjacent', 0, MOST_DEPTHS);
  whole('mostAlike', 1, MOST_CHAMBERS);
  whole('leastDifferent', 1, Math.min(rules.chambers, rules.depths));
  faults.push(...excludedFaults(rules), ...masterFaults(rules));
  return faults;
}

const NAMES = {
  chambers: 'number of chambers',
  depths: 'number of depths',
  maximumAdjacent: 'maximum adjacent cut',
  mostAlike: 'cuts alike in a row',
  leastDifferent: 'different depths',
} as const;

function excludedFaults({ excluded, chambers, depths }: BittingRules): RuleFault[] {
  if (excluded.length > chambers)
    return [
      {
        field: 'excluded',
        what: `depths are excluded for chamber ${excluded.length} of ${chambers}`,
        cure: 'Leave that chamber out, or give more chambers.',
      },
    ];
  const chamber = excluded.findIndex((list) => list.some((depth) => !isDepth(depth, depths)));
  if (chamber < 0) return [];
  const everywhere = excluded.length === chambers && excluded.every((list) => list.some((d) => !isDepth(d, depths)));
  return [
    {
      field: 'excluded',
      what: `${everywhere ? 'every chamber' : `chamber ${chamber + 1}`} excludes a depth that there is not`,
      cure: `There are ${depths} depths.`,
    },
  ];
}

function masterFaults(rules: BittingRules): RuleFault[] {
  const { master, chambers, depths, maximumAdjacent } = rules;
  if (master === null) return [];
  if (master.length !== chambers)
    return [
      {
        field: 'master',
        what: `the top master has ${master.length} cuts for ${chambers} chambers`,
        cure: `Give ${chambers} depths, one for each chamber.`,
      },
    ];
  const wrong = master.findIndex((depth) => !isDepth(depth, depths));
  if (wrong >= 0)
    return [
      {
        field: 'master',
        what: `cut ${wrong + 1} of the top master is no depth of this system`,
        cure: `There are ${depths} depths.`,
      },
    ];
  const steep = master.findIndex((depth, i) => i > 0 && Math.abs(depth - master[i - 1]) > (maximumAdjacent ?? depths));
  if (steep < 0) return masterClashes(rules, master);
  return [
    {
      field: 'master',
      what: `cuts ${steep} and ${steep + 1} of the top master are further apart than the maximum adjacent cut`,
      cure: 'Such a key cannot be cut: choose other depths, or a greater maximum.',
    },
  ];
}

/** Rules of the system that the top master, a key like others, does not keep. */
function masterClashes({ excluded, mostAlike }: BittingRules, master: readonly number[]): RuleFault[] {
  const out = master.findIndex((depth, chamber) => excluded[chamber]?.includes(depth));
  const starts = mostAlike === null ? [] : [...master.keys()].slice(0, -mostAlike);
  const run = starts.findIndex((at) => master.slice(at, at + (mostAlike ?? 0) + 1).every((d) => d === master[at]));
  const cure = 'Choose other depths for it, or loosen the rule.';
  if (out >= 0)
    return [{ field: 'master', what: `cut ${out + 1} of the top master has a depth that is excluded there`, cure }];
  if (run < 0) return [];
  return [{ field: 'master', what: `the top master has more than ${mostAlike} cuts alike in a row`, cure }];
}

function isDepth(depth: number, depths: number): boolean {
  return Number.isInteger(depth) && depth >= 0 && depth < depths;
}

/**
 * The depths that a change key may have in each chamber, ascending: all but the excluded ones, the master's, and in a
 * two-step progression those of the other parity.
 */
export function allowedDepths(rules: BittingRules): readonly (readonly number[])[] {
  return Array.from({ length: rules.chambers }, (_, chamber) => {
    const master = rules.master?.[chamber];
    const odd = isOdd(rules, chamber);
    return Array.from({ length: rules.depths }, (_, depth) => depth).filter(
      (depth) =>
        !rules.excluded[chamber]?.includes(depth) && depth !== master && (odd === null || odd === (depth % 2 === 1)),
    );
  });
}

/** Whether a chamber keeps the odd depths; null where it keeps both. */
function isOdd({ progression, master, parity }: BittingRules, chamber: number): boolean | null {
  if (progression === 'one-step') return null;
  const own = master?.[chamber];
  return own === undefined ? parity[chamber] === 'odd' : own % 2 === 1;
}
