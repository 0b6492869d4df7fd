import type { CheckedClaim } from '../../../../claims/check-claims.ts';
import { type ClaimWords, claimMargin } from '../../../../claims/claim-sentence.ts';
import type { Family } from '../../../../family/family.ts';
import { fileNameText } from '../../../../family/plain-name.ts';
import type { Session } from '../../../state/session.ts';
import { dropRepeated } from '../../../state/tiers/claims-editing.ts';
import { claimsOf } from '../../../state/tiers/claims-state.ts';
import { claimReason, claimsReportText } from '../../../state/tiers/claims-words.ts';
import { copyText, saveExported } from '../../exchange/export-file.ts';
import { HangingPanel } from '../../hanging-panel.tsx';
import menu from '../../menu-row.module.css';
import { useSession } from '../../use-store.ts';
import { useClaimWords } from './use-claims.ts';

interface ReportMenuProps {
  readonly family: Family;
  /** The claims that are listed. */
  readonly rows: readonly CheckedClaim[];
  /** Whether these are all. */
  readonly all: boolean;
}

/** What can be done with the listed claims as a whole: a report as text or table, the claims alone, repeated ones left out. */
export function ReportMenu({ family, rows, all }: ReportMenuProps) {
  const session = useSession();
  const words = useClaimWords(family);
  const run = async (act: () => Promise<string>) => {
    const said = await act();
    claimsOf(session).setState({ said, ticked: new Set() });
  };
  const which = all ? 'of all claims' : `of the ${rows.length.toLocaleString('en')} listed`;
  const acts = [
    { name: 'Copy the report', hint: `${which}, as text`, press: () => run(() => copyReport(family, rows, words)) },
    {
      name: 'Save the report',
      hint: `${which}, a table (CSV) with standing and reason`,
      press: () => run(() => saveReport(session, family, rows, words)),
    },
    {
      name: 'Save the claims',
      hint: `${which}, a list (CSV) that can be read back`,
      press: () => run(() => saveClaims(session, family, rows)),
    },
    {
      name: 'Leave out what is repeated',
      hint: 'claims that one source makes twice, word for word',
      press: () => dropRepeated(session),
    },
  ];
  return (
    <HangingPanel label={<>Report ▾</>} title="Copy or save the report, save the claims">
      {(close) => (
        <ul className={menu.menu}>
          {acts.map(({ name, hint, press }) => (
            <li key={name}>
              <button
                type="button"
                className={menu.row}
                onClick={() => {
                  close();
                  press();
                }}
              >
                <b>{name}</b>
                <span>{hint}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </HangingPanel>
  );
}

async function copyReport(family: Family, rows: readonly CheckedClaim[], words: ClaimWords): Promise<string> {
  const copied = await copyText(claimsReportText(family, rows, family.claims ?? [], words));
  return copied ? 'The report is in the clipboard.' : 'The browser did not allow it; save the report instead.';
}

async function saveReport(
  { doors }: Session,
  family: Family,
  rows: readonly CheckedClaim[],
  words: ClaimWords,
): Promise<string> {
  const claims = family.claims ?? [];
  const report = rows.map((one) => ({
    claim: one.claim,
    standing: one.standing,
    margin: claimMargin(one, words),
    reason: claimReason(one, claims, words),
  }));
  return saveTable(doors.claims.writeClaimsReport(report), `${plainName(family)} claims report.csv`);
}

async function saveClaims({ doors }: Session, family: Family, rows: readonly CheckedClaim[]): Promise<string> {
  const inOrder = [...rows].sort((a, b) => a.index - b.index).map(({ claim }) => claim);
  return saveTable(doors.claims.writeClaims(inOrder), `${plainName(family)} claims.csv`);
}

/** The name of a family, fit for a disk. */
function plainName({ name }: Family): string {
  return fileNameText(name) || 'family';
}

async function saveTable(text: string, name: string): Promise<string> {
  const saved = await saveExported({ text, mime: 'text/csv;charset=utf-8', extension: 'csv' }, name);
  return { saved: `${name} is saved.`, downloaded: `${name} is in your downloads.`, 'given up': '' }[saved];
}
