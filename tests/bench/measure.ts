import { performance } from 'node:perf_hooks';

/** Something timed: a name and one run of the whole work. */
export interface Contestant {
  readonly name: string;
  run(): void;
}

/** Times of one contestant, milliseconds a run: median, least and greatest over the repeats. */
export interface Timing {
  readonly name: string;
  readonly median: number;
  readonly least: number;
  readonly greatest: number;
}

/**
 * Runs the contestants by turns, `repeats` times each after one run that is not counted, so that a busy moment of the
 * machine falls on all of them.
 */
export function takeTurns(contestants: readonly Contestant[], repeats: number): Timing[] {
  for (const contestant of contestants) contestant.run();
  const times = contestants.map(() => [] as number[]);
  for (let repeat = 0; repeat < repeats; repeat++) {
    contestants.forEach((contestant, i) => {
      const start = performance.now();
      contestant.run();
      times[i].push(performance.now() - start);
    });
  }
  return contestants.map(({ name }, i) => timingOf(name, times[i]));
}

/** Median, least and greatest of some times. */
export function timingOf(name: string, times: readonly number[]): Timing {
  const sorted = [...times].sort((a, b) => a - b);
  return { name, median: shareOf(sorted, 0.5), least: sorted[0], greatest: sorted[sorted.length - 1] };
}

/** The value below which a share of the sorted values lies. */
export function shareOf(sorted: readonly number[], share: number): number {
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
}

/** A short fingerprint of yes/no answers (FNV-1a, 32 bits), to compare contestants by. */
export function checksumOf(answers: readonly boolean[]): string {
  let hash = 0x811c9dc5;
  for (const answer of answers) hash = Math.imul(hash ^ (answer ? 1 : 0), 0x01000193) >>> 0;
  return hash.toString(16).padStart(8, '0');
}
