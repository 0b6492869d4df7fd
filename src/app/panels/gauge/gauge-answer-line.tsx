import { useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import { gaugeAnswer } from '../../../gauge/gauge-answer.ts';
import { gaugeSentence } from '../../../gauge/gauge-sentence.ts';
import { keywayName, sentenceLengths, tiltLimitText, waitingWords } from '../../state/gauge/gauge-words.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './gauge-answer.module.css';
import { GaugeAnswer } from './gauge-answer.tsx';
import type { ShownGauge } from './use-gauge.ts';

/** The answer that the back of the room reads: the thickest strip of the height in hand, who sets it, what a thicker one enters. */
export function GaugeAnswerLine({ family, gauge }: { family: Family; gauge: ShownGauge }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const tiltLimit = useStore(session.gauge, (s) => s.tiltLimit);
  const { limit, curves, openings, height, thickness, verdicts } = gauge;
  const words = useMemo(() => {
    if (!limit) return waitingWords(curves.size, openings.length);
    const outlineOf = (id: string) => openings.find((one) => one.id === id)?.ring ?? [];
    const nameOf = (id: string) => {
      const opening = openings.find((one) => one.id === id);
      return opening ? keywayName(opening) : id;
    };
    const answer = gaugeAnswer(
      [...curves.values()],
      outlineOf,
      height,
      thickness === null ? undefined : { thickness, verdicts },
      limit,
    );
    return gaugeSentence(answer, { nameOf, tilted: tiltLimitText(tiltLimit), ...sentenceLengths(units) });
  }, [limit, curves, openings, height, thickness, verdicts, units, tiltLimit]);
  return (
    <header className={styles.head} data-gauge-answer={family.name}>
      <GaugeAnswer words={words} />
    </header>
  );
}
