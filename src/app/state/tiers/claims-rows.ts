import { type CheckedClaim, CLAIM_STANDINGS, isFailing } from '../../../claims/check-claims.ts';
import type { Claim } from '../../../family/claim.ts';
import type { ClaimsState } from './claims-state.ts';

/** What one source claims, counted. */
export interface SourceTally {
  /** '' for claims that name no source. */
  readonly source: string;
  readonly total: number;
  readonly failing: number;
  readonly contradicted: number;
}

/**
 * The claims that are listed: of the standing and the source that are asked for, those that need a look first, and
 * among equals in the order of the family.
 *
 * @check tests/unit/app/claims-checking.test.ts
 */
export function claimRows(
  checked: readonly CheckedClaim[],
  { shown, source }: Pick<ClaimsState, 'shown' | 'source'>,
): CheckedClaim[] {
  const ranks = new Map(CLAIM_STANDINGS.map((standing) => [standing, [] as CheckedClaim[]]));
  for (const one of checked) {
    if (source !== null && sourceText(one.claim) !== source) continue;
    if (shown === 'failing' ? !isFailing(one) : shown !== 'all' && one.standing !== shown) continue;
    ranks.get(one.standing)?.push(one);
  }
  return [...ranks.values()].flat();
}

/** Every source with its figures, in the order in which they come up. */
export function tallySources(checked: readonly CheckedClaim[]): SourceTally[] {
  const tallies = new Map<string, { source: string; total: number; failing: number; contradicted: number }>();
  for (const one of checked) {
    const source = sourceText(one.claim);
    const tally = tallies.get(source) ?? { source, total: 0, failing: 0, contradicted: 0 };
    tallies.set(source, tally);
    tally.total++;
    if (isFailing(one)) tally.failing++;
    if (one.standing === 'contradicted') tally.contradicted++;
  }
  return [...tallies.values()];
}

/** The source of a claim; '' where it names none. */
function sourceText({ by }: Claim): string {
  return by?.trim() ?? '';
}
