import type { Family } from '../../../../family/family.ts';
import type { GrowProposal, GrowReport } from '../../../../plan/grow.ts';
import { blankSize } from '../../../state/plan/grow/grow-frame.ts';
import { growStateOf } from '../../../state/plan/grow/grow-state.ts';
import { clearanceLength, guardLength, guardText, namesOf } from '../../../state/plan/grow/grow-words.ts';
import { addGrown, proposedName } from '../../../state/plan/grow/growing.ts';
import type { Fact } from '../../../state/profile-facts.ts';
import { FactList } from '../../fact-list.tsx';
import { TextField, TickField } from '../../form-fields.tsx';
import styles from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';
import form from './grow-form.module.css';
import { useGrowth } from './use-growth.ts';

/** The readings beside room to grow: the proposal that is looked at, its name, and which group blanks may enter. */
export function GrowReadings({ family }: { family: Family }) {
  const { report, picked } = useGrowth(family);
  if (!report) return <Rules stops={family.plan?.stops ?? 1} />;
  return (
    <>
      {picked && <Picked family={family} report={report} proposal={picked} />}
      {report.groups.length > 0 && <Groups family={family} report={report} />}
      <Rules stops={family.plan?.stops ?? 1} />
    </>
  );
}

interface PickedProps {
  readonly family: Family;
  readonly report: GrowReport;
  readonly proposal: GrowProposal;
}

function Picked({ family, report, proposal }: PickedProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const nameOf = namesOf(family);
  const facts: Fact[] = [
    { term: 'Guard margin', value: guardLength(proposal.guard, units) },
    ...(proposal.guard ? [{ term: 'Set by', value: guardText(proposal, nameOf) }] : []),
    { term: 'Smallest clearance', value: clearanceLength(proposal.clearance, units) },
    { term: 'Its blank', value: blankSize(proposal, units) },
    ...(proposal.roomAfter === null ? [] : [{ term: 'Room after it', value: `at most ${proposal.roomAfter} more` }]),
  ];
  const number = report.proposals.indexOf(proposal) + 1;
  return (
    <section className={styles.part} aria-labelledby="reading-grown">
      <h2 id="reading-grown" className={styles.title}>
        Next section {number} of {report.proposals.length}
      </h2>
      <AddForm key={proposal.code.join(' ')} family={family} />
      <FactList facts={facts} />
      <h3>Existing blanks that come closest</h3>
      <ul className={styles.places}>
        {proposal.closest.map(({ blank, length }) => (
          <li key={blank} className={styles.setting}>
            <span className={styles.grow}>{blank === null ? '' : nameOf(blank)}</span>
            <span>{guardLength({ blank, keyway: null, length }, units)}</span>
          </li>
        ))}
      </ul>
      <p className={styles.note}>
        The guard margin is the least wear, of blank and keyway each, at which a blank first goes in where it must not.
        Its blank is as large over all as most base blanks of the family are. Where they share no size it is the widest
        that its keyway takes.
      </p>
    </section>
  );
}

/** Its name, and the key that adds it. */
function AddForm({ family }: { family: Family }) {
  const session = useSession();
  const store = growStateOf(session);
  const { name, trouble } = useStore(store, (s) => s);
  const { input, report, picked } = useGrowth(family);
  const shown = name ?? proposedName(family);
  const add = () => {
    if (!input || !report || !picked) return;
    const fault = addGrown(session, family, { input, report, proposal: picked }, shown);
    store.setState(fault === null ? { name: null, trouble: '', picked: 0, top: 'blank' } : { trouble: fault });
  };
  return (
    <form
      className={form.form}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <TextField
        label="Name of the new section"
        value={shown}
        onChange={(text) => store.setState({ name: text, trouble: '' })}
      />
      {trouble && <p role="alert">{trouble}</p>}
      <button type="submit" className="key" title="Adds its keyway and its blank; undo takes both out again">
        Add to the family
      </button>
    </form>
  );
}

/** Which group blanks may enter new keyways. */
function Groups({ family, report }: { family: Family; report: GrowReport }) {
  const store = growStateOf(useSession());
  const allowed = useStore(store, (s) => s.allowed);
  const nameOf = namesOf(family);
  const toggle = (id: string, may: boolean) =>
    store.setState((s) => ({
      allowed: may ? [...s.allowed, id] : s.allowed.filter((one) => one !== id),
      picked: 0,
      trouble: '',
    }));
  return (
    <section className={styles.part} aria-labelledby="reading-groups">
      <h2 id="reading-groups" className={styles.title}>
        Group blanks
      </h2>
      <p>A group blank stays out of new keyways, unless it is ticked here: then it may enter.</p>
      {report.groups.map(({ id, enters }) => (
        <TickField
          key={id}
          label={`${nameOf(id)} (enters ${enters})`}
          value={allowed.includes(id)}
          onChange={(may) => toggle(id, may)}
        />
      ))}
    </section>
  );
}

/** What counts as room; said before the answer is there as well. */
function Rules({ stops }: { stops: number }) {
  const by = stops === 1 ? 'a ward that is enough by itself' : `${stops} wards, each enough by itself`;
  return (
    <section className={styles.part}>
      <h2 className={styles.title}>What counts as room</h2>
      <p className={styles.note}>
        A new keyway has wards only where the all-section blank has grooves. No base blank enters it, its own blank
        enters no other keyway, and new sections keep each other's blanks out: each by {by}, for all parts within their
        tolerance, new and upright.
      </p>
    </section>
  );
}
