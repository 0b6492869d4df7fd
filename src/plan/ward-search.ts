import { type Random, shuffled } from '../fit/monte-carlo.ts';
import type { Kernel } from './reduce-table.ts';

/** What stays as it is while wards are searched. */
export interface SearchSetting {
  readonly kernel: Kernel;
  readonly stops: number;
  readonly depths: number;
  readonly pairs: ForbiddenPairs;
}

/** The forbidden pairs of a kernel, numbered, with their numbers by row and by column. */
interface ForbiddenPairs {
  readonly row: Int32Array;
  readonly column: Int32Array;
  readonly ofRow: readonly Int32Array[];
  readonly ofColumn: readonly Int32Array[];
}

/** What a search for wards of a kernel needs. */
export function settingOf(kernel: Kernel, stops: number, depths: number): SearchSetting {
  const row = Int32Array.from(kernel.zeros.flatMap((columns, i) => columns.map(() => i)));
  const column = Int32Array.from(kernel.zeros.flat());
  const ofRow = kernel.ones.map(() => [] as number[]);
  const ofColumn = kernel.onesOf.map(() => [] as number[]);
  for (let p = 0; p < row.length; p++) {
    ofRow[row[p]].push(p);
    ofColumn[column[p]].push(p);
  }
  const packed = (lists: number[][]) => lists.map((list) => Int32Array.from(list));
  return { kernel, stops, depths, pairs: { row, column, ofRow: packed(ofRow), ofColumn: packed(ofColumn) } };
}

/**
 * Wards of a kernel on a fixed number of sites, with the least grooves that let in whom they must, and how many stops
 * each forbidden pair lacks. A change of one ward is followed through in the time of the pairs that it touches.
 */
export class WardSearch {
  /** Wards, `row * sites + site`. */
  readonly wards: Uint8Array;
  /** Grooves, `column * sites + site`. */
  readonly grooves: Uint8Array;
  /** Stops that are lacking over all pairs; 0: the wards do. */
  lacking: number;
  /** Sum of all groove depths. */
  grooved = 0;
  private readonly pairRow: Int32Array;
  private readonly pairColumn: Int32Array;
  private readonly pairsOfRow: readonly Int32Array[];
  private readonly pairsOfColumn: readonly Int32Array[];
  private readonly stopped: Uint8Array;
  /** How many of a column's rows have a ward of a depth: `(column * sites + site) * (depths + 1) + depth`. */
  private readonly having: Uint16Array;
  /** The pairs that lack a stop, and where each stands in that list. */
  private readonly open: number[] = [];
  private readonly openAt: Int32Array;
  /** By ward: until which step it is left alone. */
  private readonly resting: Int32Array;
  private step = 0;

  constructor(
    readonly setting: SearchSetting,
    readonly sites: number,
  ) {
    const { kernel, depths, stops, pairs } = setting;
    const count = pairs.row.length;
    this.pairRow = pairs.row;
    this.pairColumn = pairs.column;
    this.pairsOfRow = pairs.ofRow;
    this.pairsOfColumn = pairs.ofColumn;
    this.wards = new Uint8Array(kernel.rows * sites);
    this.grooves = new Uint8Array(kernel.columns * sites);
    this.resting = new Int32Array(kernel.rows * sites);
    this.stopped = new Uint8Array(count);
    this.having = new Uint16Array(kernel.columns * sites * (depths + 1));
    for (let j = 0; j < kernel.columns; j++)
      for (let s = 0; s < sites; s++) this.having[(j * sites + s) * (depths + 1)] = kernel.onesOf[j].length;
    this.openAt = new Int32Array(count);
    for (let p = 0; p < count; p++) {
      this.openAt[p] = p;
      this.open.push(p);
    }
    this.lacking = count * stops;
  }

  /** Puts a ward of a depth, 0 for none, at a site of a row. */
  set(row: number, site: number, depth: number): void {
    const { kernel, depths } = this.setting;
    const place = row * this.sites + site;
    const before = this.wards[place];
    if (before === depth) return;
    this.wards[place] = depth;
    for (const p of this.pairsOfRow[row]) {
      const groove = this.grooves[this.pairColumn[p] * this.sites + site];
      this.change(p, Number(depth > groove) - Number(before > groove));
    }
    for (const j of kernel.ones[row]) {
      const at = (j * this.sites + site) * (depths + 1);
      this.having[at + before]--;
      this.having[at + depth]++;
      this.regroove(j, site, this.deepest(at));
    }
  }

  private regroove(column: number, site: number, depth: number): void {
    const place = column * this.sites + site;
    const before = this.grooves[place];
    if (before === depth) return;
    this.grooves[place] = depth;
    this.grooved += depth - before;
    for (const p of this.pairsOfColumn[column]) {
      const ward = this.wards[this.pairRow[p] * this.sites + site];
      this.change(p, Number(ward > depth) - Number(ward > before));
    }
  }

  private deepest(at: number): number {
    for (let depth = this.setting.depths; depth > 0; depth--) if (this.having[at + depth] > 0) return depth;
    return 0;
  }

  private change(pair: number, by: number): void {
    if (by === 0) return;
    const { stops } = this.setting;
    const before = this.stopped[pair];
    this.stopped[pair] = before + by;
    this.lacking += Math.max(0, stops - before - by) - Math.max(0, stops - before);
    const [wasOpen, isOpen] = [before < stops, before + by < stops];
    if (wasOpen === isOpen) return;
    if (isOpen) {
      this.openAt[pair] = this.open.length;
      this.open.push(pair);
      return;
    }
    const last = this.open[this.open.length - 1];
    this.open[this.openAt[pair]] = last;
    this.openAt[last] = this.openAt[pair];
    this.open.pop();
  }

  /** By how much `lacking` would grow, were a ward set. */
  growth(row: number, site: number, depth: number): number {
    const { kernel, depths } = this.setting;
    const before = this.wards[row * this.sites + site];
    let growth = 0;
    for (const p of this.pairsOfRow[row]) {
      const groove = this.grooves[this.pairColumn[p] * this.sites + site];
      growth += this.lackChange(p, Number(depth > groove) - Number(before > groove));
    }
    for (const j of kernel.ones[row]) {
      const place = j * this.sites + site;
      const groove = this.grooves[place];
      const next = this.deepestAfter(place * (depths + 1), before, depth);
      if (next === groove) continue;
      for (const p of this.pairsOfColumn[j]) {
        const ward = this.wards[this.pairRow[p] * this.sites + site];
        growth += this.lackChange(p, Number(ward > next) - Number(ward > groove));
      }
    }
    return growth;
  }

  private lackChange(pair: number, by: number): number {
    if (by === 0) return 0;
    const lack = this.setting.stops - this.stopped[pair];
    return Math.max(0, lack - by) - Math.max(0, lack);
  }

  private deepestAfter(at: number, leaving: number, coming: number): number {
    for (let depth = this.setting.depths; depth > coming; depth--)
      if (this.having[at + depth] - Number(depth === leaving) > 0) return depth;
    return coming;
  }

  /** One step towards lacking nothing: mends one open pair in the way that costs the others least. */
  mend(random: Random): void {
    if (this.open.length === 0) return;
    this.step++;
    const pair = this.open[Math.floor(random() * this.open.length)];
    const moves = this.movesFor(pair, random);
    let [best, least, ties] = [-1, Number.POSITIVE_INFINITY, 0];
    const stray = random() < 0.02;
    for (const [at, [row, site, depth]] of moves.entries()) {
      const growth = stray ? 0 : this.growth(row, site, depth);
      if (!stray && this.resting[row * this.sites + site] > this.step && this.lacking + growth > 0) continue;
      if (growth > least) continue;
      ties = growth < least ? 1 : ties + 1;
      if (growth < least || random() * ties < 1) best = at;
      least = growth;
    }
    if (best < 0) return;
    const [row, site, depth] = moves[best];
    this.set(row, site, depth);
    this.resting[row * this.sites + site] = this.step + 4 + Math.floor(random() * 8);
  }

  /** What would stop a pair at one more site: a deeper ward of the row, or a shallower one of a row that the blank enters. */
  private movesFor(pair: number, random: Random): [number, number, number][] {
    const { kernel, depths } = this.setting;
    const [row, column] = [this.pairRow[pair], this.pairColumn[pair]];
    const moves: [number, number, number][] = [];
    for (let site = 0; site < this.sites; site++) {
      const groove = this.grooves[column * this.sites + site];
      const ward = this.wards[row * this.sites + site];
      if (ward > groove) continue;
      if (groove < depths) moves.push([row, site, groove + 1]);
      if (ward === 0) continue;
      const blockers = kernel.onesOf[column].filter((k) => this.wards[k * this.sites + site] >= ward);
      const blocker = blockers[Math.floor(random() * blockers.length)];
      if (blockers.length <= 2 || random() < 0.1) moves.push([blocker, site, ward - 1]);
    }
    return moves;
  }

  /** By site: how many stops would be lacking without it. */
  lackingWithout(): number[] {
    const { stops } = this.setting;
    const lacking = new Array<number>(this.sites).fill(0);
    for (let p = 0; p < this.stopped.length; p++) {
      if (this.stopped[p] > stops) continue;
      for (let site = 0; site < this.sites; site++) {
        const ward = this.wards[this.pairRow[p] * this.sites + site];
        if (ward > this.grooves[this.pairColumn[p] * this.sites + site]) lacking[site]++;
      }
    }
    return lacking;
  }

  /** Lowers every ward as far as all pairs stay stopped, those first that nothing needs. Only where nothing is lacking. */
  trim(random: Random): void {
    const places = Array.from(this.wards, (_, place) => place).filter((place) => this.wards[place] > 0);
    for (const place of shuffled(places, random)) {
      const [row, site] = [Math.floor(place / this.sites), place % this.sites];
      while (this.wards[place] > 0 && this.growth(row, site, this.wards[place] - 1) <= 0)
        this.set(row, site, this.wards[place] - 1);
    }
  }

  /** The wards by row. */
  rows(): number[][] {
    return Array.from({ length: this.setting.kernel.rows }, (_, i) => [
      ...this.wards.subarray(i * this.sites, (i + 1) * this.sites),
    ]);
  }
}

/** A search that starts from wards by row; sites beyond them are empty. */
export function searchFrom(setting: SearchSetting, sites: number, wards: readonly (readonly number[])[]): WardSearch {
  const search = new WardSearch(setting, sites);
  for (const [row, depths] of wards.entries())
    for (const [site, depth] of depths.entries()) if (site < sites) search.set(row, site, depth);
  return search;
}
