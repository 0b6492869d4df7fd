import { readClaims } from '../../interchange/csv/read-claims.ts';
import { writeClaims, writeClaimsReport } from '../../interchange/csv/write-claims.ts';
import {
  addClaims,
  dropRepeatedClaims,
  removeClaims,
  removeClaimsBy,
  renameInClaims,
  replaceClaim,
} from '../../interchange/json/edit-claims.ts';
import type { ClaimsDoors } from '../state/tiers/claims-doors.ts';

/** The real operations on claims; how tolerances are judged in another thread is the window's affair. */
export function claimsDoors(judgeTolerances: ClaimsDoors['judgeTolerances']): ClaimsDoors {
  const tables = { readClaims, writeClaims, writeClaimsReport };
  const edits = { addClaims, replaceClaim, removeClaims, removeClaimsBy, dropRepeatedClaims, renameInClaims };
  return { ...tables, ...edits, judgeTolerances };
}
