import type { CheckedClaim, ClaimStanding } from '../../../claims/check-claims.ts';
import { sourceOf } from '../../../claims/claim-sentence.ts';

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

/**
 * What is to be told of the claims on one pair that fail: "Porter's wall chart says that it enters." Empty where none does.
 *
 * @check tests/unit/app/claims-checking.test.ts
 */
export function claimTold(
  checked: readonly CheckedClaim[],
  entrantId: string | null,
  openingId: string | null,
): string {
  if (entrantId === null || openingId === null) return '';
  const told = checked.flatMap(({ standing, blank, opening, claim }) => {
    if (!blank.ids.includes(entrantId) || !opening.ids.includes(openingId)) return [];
    const says = `${capital(sourceOf(claim))} says that it ${claim.enters ? 'enters' : 'does not enter'}`;
    if (standing === 'contradicted') return [`${says}, which is wrong.`];
    return standing === 'too close to call' ? [`${says}, which is too close to call.`] : [];
  });
  return [...new Set(told)].slice(0, MOST_TOLD).join(' ');
}

/** Most claims that are told of one pair. */
const MOST_TOLD = 2;

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** The key of a pair in {@link claimMarks}. */
export function claimMarkKey(entrantId: string, openingId: string): string {
  return `${entrantId}\n${openingId}`;
}

/**
 * What is claimed of each pair, by {@link claimMarkKey}: the mark that a cell of a matrix may show. A claim on a name
 * that stands for several blanks of one outline marks all of them; claims whose names are not found mark nothing.
 *
 * @check tests/unit/app/claims-checking.test.ts
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
