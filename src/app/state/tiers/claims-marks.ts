import type { CheckedClaim, ClaimStanding } from '../../../claims/check-claims.ts';

/** What is claimed of one pair, put together for a cell of a matrix. */
export interface ClaimMarkOfPair {
  /** The worst standing of the claims on the pair. */
  readonly standing: Extract<ClaimStanding, 'contradicted' | 'too close to call' | 'confirmed' | 'not judged yet'>;
  /** How many claims speak of it. */
  readonly count: number;
  /** Whether some say that it enters and others that it does not. */
  readonly disputed: boolean;
}

const WORST_FIRST = ['contradicted', 'too close to call', 'not judged yet', 'confirmed'] as const;

const RANKS: readonly ClaimStanding[] = WORST_FIRST;

/** The key of a pair in {@link claimMarks}. */
export function claimMarkKey(entrantId: string, openingId: string): string {
  return `${entrantId}\n${openingId}`;
}

/**
 * What is claimed of each pair, by {@link claimMarkKey}: the mark that a cell of a matrix may show. A claim on a name
 * that stands for several blanks of one outline marks all of them; claims whose names are not found mark nothing.
 *
 * @check tests/unit/app/claims-rows.test.ts
 */
export function claimMarks(checked: readonly CheckedClaim[]): ReadonlyMap<string, ClaimMarkOfPair> {
  const marks = new Map<string, ClaimMarkOfPair>();
  for (const { standing, blank, opening, against } of checked) {
    const rank = RANKS.indexOf(standing);
    if (rank < 0) continue;
    for (const entrantId of blank.ids)
      for (const openingId of opening.ids) {
        const key = claimMarkKey(entrantId, openingId);
        const before = marks.get(key);
        const worst = Math.min(rank, before ? WORST_FIRST.indexOf(before.standing) : rank);
        const disputed = (before?.disputed ?? false) || against.length > 0;
        marks.set(key, { standing: WORST_FIRST[worst], count: (before?.count ?? 0) + 1, disputed });
      }
  }
  return marks;
}
