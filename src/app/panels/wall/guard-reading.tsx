import type { Family } from '../../../family/family.ts';
import { alikeWords, type SettingPair } from '../../../family/guard-margin.ts';
import { readingText, wearLengthText } from '../../../family/length-text.ts';
import { MEASURING } from '../../../family/margin-text.ts';
import { NOT_MEASURED } from '../../state/pair-words.ts';
import styles from '../readings.module.css';
import { useHalted } from '../use-family.ts';
import { useSession, useStore } from '../use-store.ts';

/** How much room the family has on either side of its verdicts, with the pairs that set it. */
export function GuardReading({ family }: { family: Family }) {
  const { guard } = useSession();
  const { phase, margins, keepsOut } = useStore(guard, (s) => s);
  const pending = useHalted() ? NOT_MEASURED : MEASURING;
  const none = phase === 'failed' ? 'could not be measured' : pending;
  const nothingGuarded = keepsOut ? 'no wear lets any in' : 'Nothing is kept out';
  return (
    <section className={styles.part} aria-labelledby="reading-family">
      <h2 id="reading-family" className={styles.title}>
        Family as drawn
      </h2>
      <ul className={styles.pairs}>
        <Setting
          family={family}
          name="Guard margin"
          lengthText={wearLengthText}
          pair={margins?.guard ?? null}
          otherwise={margins ? nothingGuarded : none}
        />
        <Setting
          family={family}
          name="Smallest clearance"
          lengthText={readingText}
          pair={margins?.clearance ?? null}
          otherwise={margins ? 'none goes in' : none}
        />
      </ul>
      <p className={styles.note}>
        Guard margin: the least wear, off a blank and as much off a keyway, that lets in a blank that is now kept out.
      </p>
    </section>
  );
}

interface SettingProps {
  readonly family: Family;
  readonly name: string;
  readonly lengthText: typeof readingText;
  readonly pair: SettingPair | null;
  readonly otherwise: string;
}

/** One figure of the family; a press picks the pair that sets it. */
function Setting({ family, name, lengthText, pair, otherwise }: SettingProps) {
  const { settings, selection } = useSession();
  const units = useStore(settings, (s) => s.units);
  if (!pair) {
    return (
      <li className={styles.setting}>
        <span className={styles.grow}>{name}</span>
        <span>{otherwise}</span>
      </li>
    );
  }
  const nameOf = (id: string) => family.profiles.find((profile) => profile.id === id)?.name ?? id;
  const words = `${nameOf(pair.profile)} in ${nameOf(pair.opening)}${alikeWords(pair)}`;
  return (
    <li>
      <button
        type="button"
        className={styles.setting}
        title={`Pick this pair: ${words}`}
        onClick={() => selection.setState({ entrantId: pair.profile, openingId: pair.opening })}
      >
        <span className={styles.grow}>{name}</span>
        <b>{lengthText(pair.length, units)}</b>
        <span className={styles.by}>{words}</span>
      </button>
    </li>
  );
}
