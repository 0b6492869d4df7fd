import { type Random, shuffled } from '../fit/monte-carlo.ts';
import type { Code } from './ward-code.ts';

/** What grooves are chosen for. */
export interface PartInput {
  /** By group: how many rows it holds. */
  readonly sizes: readonly number[];
  /** By group: the grooves that it may have. */
  readonly choices: readonly (readonly Code[])[];
  /** Grooves to begin with. */
  readonly first: readonly Code[];
  /** Wards that rows may have, none of them let by a group elsewhere. */
  readonly wards: readonly Code[];
  /** At so many sites other groups' grooves must be too shallow. */
  readonly stops: number;
  readonly random: Random;
}

/** Steps without a better state after which nothing more is hoped for. */
const PATIENCE = 3;

/**
 * Chooses grooves of neighbouring groups anew, one after another, each so that the fewest rows lack wards of their own:
 * wards within the grooves of their group that every other group's grooves lack. Ends where all rows have some.
 *
 * @returns grooves by group; those of `first` where nothing is better.
 */
export function partGroups(input: PartInput): readonly Code[] {
  const { sizes, choices, random } = input;
  const parting = new Parting(input);
  for (let idle = 0; idle < PATIENCE; idle++) {
    const before = parting.lack;
    for (const group of shuffled([...sizes.keys()], random)) {
      if (isDone(parting.lack, sizes)) return parting.chosen;
      parting.chooseAnew(group, choices[group], random);
    }
    if (parting.lack < before) idle = -1;
  }
  return parting.chosen;
}

/** Grooves by group, with the number of groups that let each ward by. */
class Parting {
  readonly chosen: Code[];
  lack: number;
  private readonly count: Int16Array;
  private readonly known = new Map<Code, Reach>();

  constructor(private readonly input: PartInput) {
    this.chosen = [...input.first];
    this.count = new Int16Array(input.wards.length);
    for (const code of this.chosen) this.own(code, 1);
    this.lack = this.measure();
  }

  /** Takes for one group the grooves with the least lack; among equal ones now and then another. */
  chooseAnew(group: number, choices: readonly Code[], random: Random): void {
    let best = this.chosen[group];
    for (const code of choices) {
      if (code === this.chosen[group]) continue;
      const was = this.chosen[group];
      this.swap(group, code);
      const lack = this.measure();
      if (lack < this.lack || (lack === this.lack && random() < 0.2)) {
        best = code;
        this.lack = lack;
      }
      this.swap(group, was);
    }
    this.swap(group, best);
  }

  private swap(group: number, code: Code): void {
    this.own(this.chosen[group], -1);
    this.chosen[group] = code;
    this.own(code, 1);
  }

  private own(code: Code, by: number): void {
    for (const v of this.reach(code).near) this.count[v] += by;
  }

  private reach(code: Code): Reach {
    const reach = this.known.get(code) ?? reachOfCode(code, this.input.wards, this.input.stops);
    this.known.set(code, reach);
    return reach;
  }

  /** A thousand for each row without wards of its own, less a little for spare ones. */
  private measure(): number {
    let lack = 0;
    for (const [z, code] of this.chosen.entries()) {
      let own = 0;
      for (const v of this.reach(code).within) if (this.count[v] === 1) own++;
      const size = this.input.sizes[z];
      lack += Math.max(0, size - own) * 1_000 - Math.min(own, 2 * size);
    }
    return lack;
  }
}

/** Wards by number: those within some grooves, and those that they let by but for less than the wanted stops. */
interface Reach {
  readonly within: readonly number[];
  readonly near: readonly number[];
}

/** Whether every row has wards: then what is left of the lack is below one row's. */
function isDone(lack: number, sizes: readonly number[]): boolean {
  return lack <= -sizes.reduce((sum, size) => sum + size, 0);
}

function reachOfCode(code: Code, wards: readonly Code[], stops: number): Reach {
  const [within, near]: [number[], number[]] = [[], []];
  for (const [v, ward] of wards.entries()) {
    let above = 0;
    for (let s = 0; s < ward.length && above < stops; s++) if (ward[s] > code[s]) above++;
    if (above === 0) within.push(v);
    if (above < stops) near.push(v);
  }
  return { within, near };
}
