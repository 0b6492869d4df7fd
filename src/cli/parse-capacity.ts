import {
  type BittingRules,
  MOST_CHAMBERS,
  MOST_DEPTHS,
  type Parity,
  type RuleFault,
  ruleFaults,
  USUAL_RULES,
} from '../capacity/bitting-rules.ts';

/** What `capacity` is asked for. */
export interface CapacityCommand {
  readonly name: 'capacity';
  /** A family whose sections are counted; undefined: none. */
  readonly file?: string;
  readonly json: boolean;
  readonly rules: BittingRules;
  /** The number of the shallowest depth, as it is written: 0 or 1. */
  readonly firstDepth: number;
  /** Without a family: sections taken to exclude each other. */
  readonly sections?: number;
}

/** The options of `capacity` that take a value. */
export const CAPACITY_OPTIONS = [
  'chambers',
  'depths',
  'macs',
  'exclude',
  'alike',
  'different',
  'parity',
  'master',
  'first-depth',
  'sections',
] as const;

type Given = { readonly [option in (typeof CAPACITY_OPTIONS)[number]]?: readonly string[] } & {
  readonly json?: boolean;
  readonly 'two-step'?: boolean;
};

type Parsed = { readonly ok: true; readonly command: CapacityCommand } | { readonly ok: false; readonly fault: string };

/** Most sections that may be assumed. */
const MOST_SECTIONS = 100_000;

/** Words for the fields of the rules, as options. */
const OPTION_OF: Readonly<Partial<Record<RuleFault['field'], string>>> = {
  maximumAdjacent: 'macs',
  excluded: 'exclude',
  mostAlike: 'alike',
  leastDifferent: 'different',
};

/**
 * The rules that the options of `capacity` state, or what is wrong with them.
 *
 * @check tests/unit/cli/run-capacity.test.ts
 */
export function toCapacityCommand(file: string | undefined, given: Given): Parsed {
  try {
    const firstDepth = whole(given, 'first-depth', 0, 1) ?? 0;
    const sections = whole(given, 'sections', 1, MOST_SECTIONS);
    if (file !== undefined && sections !== undefined)
      throw new OptionFault('--sections is for a count without a family: leave out one of the two');
    const rules = rulesOf(given, firstDepth);
    const [wrong] = ruleFaults(rules);
    if (wrong) throw new OptionFault(`--${OPTION_OF[wrong.field] ?? wrong.field}: ${wrong.what}; ${lower(wrong.cure)}`);
    const { json = false } = given;
    return {
      ok: true,
      command: { name: 'capacity', ...(file !== undefined && { file }), json, rules, firstDepth, sections },
    };
  } catch (error) {
    if (!(error instanceof OptionFault)) throw error;
    return { ok: false, fault: error.message };
  }
}

/** What is wrong with an option, on its way to who asked. */
class OptionFault extends Error {}

function rulesOf(given: Given, firstDepth: number): BittingRules {
  const chambers = whole(given, 'chambers', 1, MOST_CHAMBERS) ?? USUAL_RULES.chambers;
  const depths = whole(given, 'depths', 2, MOST_DEPTHS) ?? USUAL_RULES.depths;
  const twoStep = given['two-step'] ?? false;
  const [letters] = given.parity ?? [];
  if (letters !== undefined && !twoStep) throw new OptionFault('--parity goes with --two-step: give both');
  const [cuts] = given.master ?? [];
  return {
    chambers,
    depths,
    maximumAdjacent:
      given.macs?.[0] === 'none' ? null : (whole(given, 'macs', 0, MOST_DEPTHS) ?? USUAL_RULES.maximumAdjacent),
    excluded: excludedOf(given.exclude ?? [], chambers, firstDepth),
    mostAlike: whole(given, 'alike', 1, MOST_CHAMBERS) ?? null,
    leastDifferent: whole(given, 'different', 1, Math.min(chambers, depths)) ?? 1,
    progression: twoStep ? 'two-step' : 'one-step',
    parity: letters === undefined ? [] : parityOf(letters, chambers, firstDepth),
    master: cuts === undefined ? null : depthsIn(cuts, firstDepth, 'master'),
  };
}

function whole(given: Given, option: keyof Given & string, low: number, high: number): number | undefined {
  const [text] = (given[option as (typeof CAPACITY_OPTIONS)[number]] as readonly string[] | undefined) ?? [];
  if (text === undefined) return undefined;
  if (/^\d{1,6}$/.test(text) && Number(text) >= low && Number(text) <= high) return Number(text);
  throw new OptionFault(`--${option} is "${text}", must be a whole number from ${low} to ${high}`);
}

/** "0,9" for every chamber, "2:0,9" for the second one. */
function excludedOf(texts: readonly string[], chambers: number, firstDepth: number): number[][] {
  const excluded: number[][] = Array.from({ length: chambers }, () => []);
  for (const text of texts) {
    const [, chamber, list] = /^(?:(\d+):)?(.*)$/.exec(text) ?? [];
    const depths = depthsIn(list, firstDepth, 'exclude');
    if (chamber === undefined) for (const row of excluded) row.push(...depths);
    else {
      const row = excluded[Number(chamber) - 1];
      if (!row) throw new OptionFault(`--exclude names chamber ${chamber} of ${chambers}`);
      row.push(...depths);
    }
  }
  return excluded;
}

function depthsIn(text: string, firstDepth: number, option: string): number[] {
  const parts = text.split(/[\s,]+/);
  if (!parts.every((part) => /^\d{1,2}$/.test(part)))
    throw new OptionFault(`--${option} is "${text}", must be depths parted by commas`);
  return parts.map((part) => Number(part) - firstDepth);
}

/** Letters say the parity of the numbers as they are written. */
function parityOf(letters: string, chambers: number, firstDepth: number): Parity[] {
  if (!/^[eo]+$/i.test(letters) || letters.length !== chambers)
    throw new OptionFault(`--parity is "${letters}", must be ${chambers} letters e (even) or o (odd)`);
  return [...letters.toLowerCase()].map((letter) => ((letter === 'o') === (firstDepth === 0) ? 'odd' : 'even'));
}

function lower(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1).replace(/\.$/, '');
}
