import type { Claim } from '../../family/claim.ts';
import { formatTable } from './table-text.ts';

/** What parts the cells: a comma where not given. */
export type ClaimsSeparator = ',' | ';' | '\t';

/** One claim with what came of it, in words. */
export interface ReportedClaim {
  readonly claim: Claim;
  readonly standing: string;
  /** Such as "+0.052 mm"; empty where it is not known. */
  readonly margin: string;
  readonly reason: string;
}

const HEADINGS = ['blank', 'keyway', 'enters', 'source', 'note'];

/**
 * Claims as a list that `readClaims` reads back the same. A name that a spreadsheet would take for a formula gets an
 * apostrophe.
 *
 * @check tests/laws/claims.test.ts
 */
export function writeClaims(claims: readonly Claim[], separator: ClaimsSeparator = ','): string {
  return formatTable([HEADINGS, ...claims.map(cellsOf)], separator);
}

/** Claims with their standing, margin and reason, as a list for a spreadsheet. */
export function writeClaimsReport(rows: readonly ReportedClaim[], separator: ClaimsSeparator = ','): string {
  const body = rows.map(({ claim, standing, margin, reason }) => {
    const [blank, opening, enters, by, note] = cellsOf(claim);
    return [blank, opening, enters, by, standing, margin, reason, note];
  });
  const headings = ['blank', 'keyway', 'enters', 'source', 'standing', 'margin', 'reason', 'note'];
  return formatTable([headings, ...body], separator);
}

function cellsOf({ blank, opening, enters, by, note }: Claim): string[] {
  return [blank, opening, enters ? 'yes' : 'no', by ?? '', note ?? ''];
}
