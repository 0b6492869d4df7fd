import { useMemo, useRef } from 'react';
import type { Family } from '../../../family/family.ts';
import type { MisleadingName } from '../../../names/misleading-name.ts';
import { MisleadingFinding } from '../../panels/names/misleading/misleading-finding.tsx';
import { MISLEADING_KINDS, MISLEADING_WORDS } from '../../panels/names/misleading/misleading-words.ts';
import { DoneLine } from '../../panels/names/register/done-line.tsx';
import { useRenameGround } from '../../panels/names/register/use-rename-ground.ts';
import notice from '../../panels/notices.module.css';
import { useKeptFocus } from '../../panels/use-kept-focus.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { VerdictMark } from '../../panels/verdict-mark.tsx';
import { type RenameGround, renameAll } from '../../state/names/check-rename.ts';
import { rename } from '../../state/names/register-editing.ts';
import { isRunning } from '../../state/results-state.ts';
import styles from './misleading-sheet.module.css';

/** Names that are easily misread, by how they mislead, with better ones. */
export function MisleadingSheet({ family }: { family: Family }) {
  const ground = useRenameGround(family);
  const judging = useStore(useSession().results, (s) => s.phase === 'judging');
  const sheet = useRef<HTMLDivElement>(null);
  // A case that is mended goes, and the key that was pressed with it.
  useKeptFocus(sheet, NEXT);
  return (
    <div ref={sheet} className={styles.sheet}>
      <DoneLine />
      {judging && (
        <p role="status" className={styles.judging}>
          Still judging: names that join two sections are looked at as the answers come.
        </p>
      )}
      {ground && (ground.found.length === 0 ? <NoneFound family={family} /> : <Findings ground={ground} />)}
    </div>
  );
}

/** The next case's key; after the last one the key that takes it back. */
const NEXT = ['form button[type="submit"]', 'button'];

function Findings({ ground }: { ground: RenameGround }) {
  return (
    <>
      <AllKey ground={ground} />
      {MISLEADING_KINDS.map((kind) => {
        const findings = ground.found.filter((one) => one.kind === kind);
        return findings.length > 0 && <KindOfFindings key={kind} kind={kind} findings={findings} ground={ground} />;
      })}
    </>
  );
}

interface KindOfFindingsProps {
  readonly kind: MisleadingName['kind'];
  readonly findings: readonly MisleadingName[];
  readonly ground: RenameGround;
}

function KindOfFindings({ kind, findings, ground }: KindOfFindingsProps) {
  const { title, meaning } = MISLEADING_WORDS[kind];
  return (
    <section className={styles.kind} aria-label={title}>
      <h2>
        {title} <span>{findings.length}</span>
      </h2>
      <p className={styles.meaning}>{meaning}</p>
      <ul className={styles.findings}>
        {findings.map((finding) => (
          <MisleadingFinding key={finding.words} finding={finding} ground={ground} />
        ))}
      </ul>
    </section>
  );
}

/** The key that takes all suggestions as one step, where that is safe; else what speaks against it. */
function AllKey({ ground }: { ground: RenameGround }) {
  const session = useSession();
  const { found } = ground;
  const { renames, trouble } = useMemo(() => renameAll(ground), [ground]);
  return (
    <div className={styles.all}>
      <p className={styles.count}>
        {found.length === 1 ? 'One case of names that mislead' : `${found.length} cases of names that mislead`}
      </p>
      <button
        type="button"
        className="key"
        disabled={trouble !== ''}
        title={trouble === '' ? 'All suggestions below, as one step' : trouble}
        onClick={() => rename(session, renames, `${renames.length} names were changed.`)}
      >
        Rename all {renames.length > 0 && renames.length}
      </button>
      {trouble !== '' && <p className={styles.meaning}>Not all at once. {trouble}</p>}
    </div>
  );
}

function NoneFound({ family }: { family: Family }) {
  const running = useStore(useSession().results, (s) => isRunning(s.phase));
  return (
    <section className={`${notice.empty} ${styles.none}`}>
      <VerdictMark verdict={running ? null : 'enters'} size={72} />
      <h2>{running ? 'No name misleads so far' : 'No name misleads'}</h2>
      <p>
        Nothing in {family.name} joins two sections, looks like another section, counts against its length, has two
        meanings, or can be misread for another.
      </p>
    </section>
  );
}
