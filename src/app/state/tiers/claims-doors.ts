import type { readClaims } from '../../../interchange/csv/read-claims.ts';
import type { writeClaims, writeClaimsReport } from '../../../interchange/csv/write-claims.ts';
import type {
  addClaims,
  dropRepeatedClaims,
  removeClaims,
  removeClaimsBy,
  renameInClaims,
  replaceClaim,
} from '../../../interchange/json/edit-claims.ts';
import type { TolerancesInput, TolerancesPart } from '../../../jobs/judge-tolerances.ts';

/** The operations of the core on claims; main.tsx names the real ones. */
export interface ClaimsDoors {
  readClaims: typeof readClaims;
  writeClaims: typeof writeClaims;
  writeClaimsReport: typeof writeClaimsReport;
  addClaims: typeof addClaims;
  replaceClaim: typeof replaceClaim;
  removeClaims: typeof removeClaims;
  removeClaimsBy: typeof removeClaimsBy;
  dropRepeatedClaims: typeof dropRepeatedClaims;
  renameInClaims: typeof renameInClaims;
  /** The answers for all parts of pairs within their tolerance, in another thread; they come in parts. */
  judgeTolerances(
    input: TolerancesInput,
    onPart: (part: TolerancesPart) => void,
  ): { readonly result: Promise<number>; cancel(): void };
}
