import { useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import { type CoverNames, coverHeadline, tryingWords } from '../../state/gauge/cover-words.ts';
import { shortName, waitingWords } from '../../state/gauge/gauge-words.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './gauge-answer.module.css';
import { GaugeAnswer } from './gauge-answer.tsx';
import type { ShownGauge } from './use-gauge.ts';
import { useCover, useTicked, useTools } from './use-tools.ts';

/** How the profiles of a family are called. */
export function useCoverNames(family: Family): CoverNames {
  return useMemo(() => {
    const find = (id: string) => family.profiles.find((profile) => profile.id === id);
    return {
      toolName: (id) => find(id)?.name ?? id,
      openingName: (id) => {
        const opening = find(id);
        return opening ? shortName(opening) : id;
      },
    };
  }, [family]);
}

/** The fewest tools for the ticked keyways, in one line. */
export function CoverLine({ family, gauge }: { family: Family; gauge: ShownGauge }) {
  const cover = useCover(family, useTicked(gauge.openings));
  const names = useCoverNames(family);
  const withBlanks = useStore(useSession().gauge, (s) => s.withBlanks);
  const tools = useTools(family, withBlanks);
  const waiting = gauge.complete ? tryingWords(tools.length) : waitingWords(gauge.curves.size, gauge.openings.length);
  const words = cover ? coverHeadline(cover, names) : waiting;
  return (
    <header className={styles.head} data-cover={cover?.tools.join(' ')}>
      <GaugeAnswer words={words} />
    </header>
  );
}
