import type { Family } from '../../../../family/family.ts';
import type { GrowProposal, GrowReport } from '../../../../plan/grow.ts';
import { growStateOf } from '../../../state/plan/grow/grow-state.ts';
import { betweenText, guardLength, namesOf, wardsText } from '../../../state/plan/grow/grow-words.ts';
import { useSession, useStore } from '../../use-store.ts';
import { GrowPicture } from './grow-picture.tsx';
import styles from './grow-proposals.module.css';
import { useGrowth } from './use-growth.ts';

/** The next sections, each with its picture and its margin; one of them is looked at. */
export function GrowProposals({ family, report }: { family: Family; report: GrowReport }) {
  const session = useSession();
  const store = growStateOf(session);
  const { input, picked } = useGrowth(family);
  if (report.proposals.length === 0) return <p className={styles.none}>{noProposal(report)}</p>;
  const nameOf = namesOf(family);
  const [first, second] = input?.between ?? ['', ''];
  return (
    <ol className={styles.list} aria-label="Next sections, the greatest guard margin first">
      {report.proposals.map((proposal, i) => (
        <li key={proposal.code.join(' ')}>
          <button
            type="button"
            className={styles.card}
            aria-pressed={proposal === picked}
            onClick={() => store.setState({ picked: i, trouble: '' })}
          >
            <GrowPicture proposal={proposal} width={54} height={150} />
            <Words
              proposal={proposal}
              number={i + 1}
              report={report}
              between={betweenText(proposal, nameOf(first), nameOf(second))}
            />
          </button>
        </li>
      ))}
    </ol>
  );
}

interface WordsProps {
  readonly proposal: GrowProposal;
  readonly number: number;
  readonly report: GrowReport;
  readonly between: string;
}

function Words({ proposal, number, report, between }: WordsProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  return (
    <span className={styles.words}>
      <strong>
        {number}. Guard margin {guardLength(proposal.guard, units)}
      </strong>
      <span>Wards: {wardsText(proposal, report.places, units)}</span>
      {between && <span className={styles.soft}>{between}</span>}
    </span>
  );
}

function noProposal({ count }: GrowReport): string {
  if (count.single === 0)
    return 'Every choice of wards would let a blank in that must stay out, or its own blank into another keyway. A group blank that may enter new keyways makes room: tick one at the right.';
  return 'None of the next sections was confirmed when it was drawn and judged.';
}
