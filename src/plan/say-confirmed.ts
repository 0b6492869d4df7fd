import type { PlanReport } from './drawn-plan.ts';

/** An angle in words, degrees. */
export function sayDegrees(angle: number): string {
  return `${Math.round((angle * 18_000) / Math.PI) / 100}°`;
}

/**
 * What else was confirmed of a drawn plan, in sentences: forbidden pairs tilted, and sections kept in reserve.
 *
 * @param nameOf the name of a part by its id.
 * @check tests/unit/plan/draw-plan.test.ts
 */
export function sayConfirmed({ tilted, reserve }: PlanReport, nameOf: (id: string) => string): string[] {
  const lines: string[] = [];
  if (tilted) {
    const { limit, looked, ofPairs, loosest } = tilted;
    const pairs = `${looked} of ${ofPairs} forbidden ${ofPairs === 1 ? 'pair' : 'pairs'} at the guard margin`;
    const found = loosest
      ? `as drawn none goes in; within tolerance ${nameOf(loosest.blank)} may go into ${nameOf(loosest.opening)}`
      : 'none goes in, for all parts within tolerance';
    lines.push(`Tilted by up to ${sayDegrees(limit)}, ${pairs} were judged: ${found}.`);
  } else lines.push('Forbidden pairs were judged upright, not tilted.');
  if (reserve > 0) {
    const kept = reserve === 1 ? '1 section kept in reserve was' : `${reserve} sections kept in reserve were`;
    lines.push(`${kept} drawn with a blank each and confirmed too; grooves for them are in the all-section blank.`);
  }
  return lines;
}
