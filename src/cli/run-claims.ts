import type { ClaimStanding } from '../claims/check-claims.ts';
import type { Claim } from '../family/claim.ts';
import type { Family } from '../family/family.ts';
import { readClaims } from '../interchange/csv/read-claims.ts';
import { catalogue } from '../jobs/catalogue.ts';
import type { ClaimsReport, ToldClaim } from '../jobs/check-family-claims.ts';
import { JobRefused } from '../jobs/job.ts';
import { shown } from './fit-table.ts';
import type { ClaimsCommand } from './parse-command.ts';
import { EXIT, readOrWarn, type Shell } from './shell.ts';

/** A sign for each standing, told apart without colour, in the order in which claims are listed. */
const MARKS: Readonly<Record<ClaimStanding, string>> = {
  contradicted: 'x',
  'too close to call': '~',
  'name not found': '?',
  'name ambiguous': '?',
  'not judged yet': '.',
  confirmed: '+',
};

/**
 * Checks the claims of a family, or those of a table, prints what came of them, and returns the exit code: done where
 * all are confirmed, notConfirmed where one is not, badInput where rows of the table could not be read.
 *
 * @check tests/unit/cli/run-claims.test.ts
 */
export async function runClaims(family: Family, command: ClaimsCommand, shell: Shell): Promise<number> {
  const table = command.table === undefined ? null : readTable(command.table, shell);
  if (table && !table.claims) return EXIT.badInput;
  const claims = table?.claims ?? family.claims ?? [];
  try {
    const report = await catalogue.checkFamilyClaims({ family, claims }, shell.jobs);
    shell.print(command.json ? claimsJson(report) : claimsText(family, report));
    if (table && table.leftOut > 0) return EXIT.badInput;
    return report.claims.every(({ checked }) => checked.standing === 'confirmed') ? EXIT.done : EXIT.notConfirmed;
  } catch (error) {
    if (!(error instanceof JobRefused)) throw error;
    shell.warn(`${command.file}: ${error.message}.\n`);
    return EXIT.badInput;
  }
}

/** The claims of a table, after saying what is wrong with it; null where none can be read. */
function readTable(file: string, shell: Shell): { claims: readonly Claim[] | null; leftOut: number } {
  const text = readOrWarn(file, shell);
  if (text === null) return { claims: null, leftOut: 0 };
  const read = readClaims(text);
  for (const { path, what, cure } of read.faults) shell.warn(`${file}: ${path}: ${what}. ${cure}\n`);
  if (!read.ok) return { claims: null, leftOut: 0 };
  const more = read.leftOut - read.faults.length;
  if (more > 0) shell.warn(`${file}: ${more} more faults like these\n`);
  return { claims: read.claims, leftOut: read.leftOut };
}

/** What came of the claims as text, those that are not confirmed first and with their reason. */
function claimsText({ name }: Family, { claims, summary }: ClaimsReport): string {
  const order = Object.keys(MARKS);
  const sorted = [...claims].sort((a, b) => order.indexOf(a.checked.standing) - order.indexOf(b.checked.standing));
  return [`${shown(name)}: ${summary}`, ...sorted.map(claimLines), ''].join('\n');
}

function claimLines({ checked, margin, reason }: ToldClaim): string {
  const { claim, standing } = checked;
  const says = `${shown(claim.blank)} ${claim.enters ? 'enters' : 'does not enter'} ${shown(claim.opening)}`;
  const by = claim.by ? ` (${shown(claim.by)})` : '';
  const head = `${MARKS[standing]} ${standing.padEnd(17)}  ${says}${by}`;
  return standing === 'confirmed' ? `${head}: ${margin}` : `${head}\n${' '.repeat(21)}${shown(reason)}`;
}

function claimsJson({ claims, summary }: ClaimsReport): string {
  const lines = claims.map(({ checked, margin, reason }) => {
    const { claim, standing, pair, against } = checked;
    const judged = pair && { profile: pair.entrantId, opening: pair.openingId };
    return `    ${JSON.stringify({ ...claim, standing, pair: judged, margin, reason, against })}`;
  });
  const list = lines.length > 0 ? `[\n${lines.join(',\n')}\n  ]` : '[]';
  return `{\n  "summary": ${JSON.stringify(summary)},\n  "claims": ${list}\n}\n`;
}
