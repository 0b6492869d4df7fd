import { useMemo } from 'react';
import { type Family, openingsOf } from '../../../family/family.ts';
import type { Passage } from '../../../passage/passage.ts';
import { EmptyNotice } from '../../panels/empty-notice.tsx';
import { MillingProgress } from '../../panels/tiers/passage/milling-progress.tsx';
import { MakeBlankKey, PassageHead } from '../../panels/tiers/passage/passage-head.tsx';
import { PassageLegend } from '../../panels/tiers/passage/passage-legend.tsx';
import { PassagePicture } from '../../panels/tiers/passage/passage-picture.tsx';
import { PassageProgress } from '../../panels/tiers/passage/passage-progress.tsx';
import { useAskedMilling } from '../../panels/tiers/passage/use-milled-passage.ts';
import { useChosenIds, usePassage } from '../../panels/tiers/passage/use-passage.ts';
import { useSize } from '../../panels/use-size.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { passageStateOf } from '../../state/tiers/passage-state.ts';
import { chosenText, passageHeadline } from '../../state/tiers/passage-words.ts';
import styles from './passage-sheet.module.css';

/** What several keyways have in common: all sections at their best alignment, the shared channel, the widest blank. */
export function PassageSheet({ family }: { family: Family }) {
  if (openingsOf(family).length === 0)
    return (
      <EmptyNotice
        title="This family has no keyways"
        what="The common passage is what several keyways share. Make a keyway in Draw, or import one."
      />
    );
  return <Passages family={family} />;
}

function Passages({ family }: { family: Family }) {
  const ids = useChosenIds(family);
  const { found, phase } = usePassage(family, ids);
  const made = useAskedMilling(family);
  const all = ids.length === openingsOf(family).length;
  if (ids.length === 0)
    return (
      <section className={styles.none}>
        <h1>No keyway is chosen</h1>
        <p>Tick keyways in the list at the right: here they are laid on each other, with what they share.</p>
      </section>
    );
  return (
    <div className={styles.sheet} data-passage={phase} data-milling={made.phase}>
      <PassageHead family={family} passage={made.passage} all={all} />
      <PassageProgress what={chosenText(ids.length, all)} />
      <MillingProgress made={made} />
      <div className={styles.picture} data-busy={!made.passage || undefined}>
        {found && <Picture family={family} passage={made.passage ?? found.output} all={all} />}
      </div>
      <footer className={styles.foot}>
        <PassageLegend />
        {made.passage?.blank && <MakeBlankKey family={family} passage={made.passage} />}
      </footer>
    </div>
  );
}

function Picture({ family, passage, all }: { family: Family; passage: Passage; all: boolean }) {
  const session = useSession();
  const [frame, size] = useSize<HTMLDivElement>();
  const store = passageStateOf(session);
  const { pointed, pinned, layers } = useStore(store, (s) => s);
  const units = useStore(session.settings, (s) => s.units);
  const openings = useMemo(() => openingsOf(family), [family]);
  return (
    <div ref={frame} className={styles.frame}>
      {size && (
        <PassagePicture
          passage={passage}
          openings={openings}
          lit={pointed ?? pinned}
          layers={layers}
          units={units}
          width={size.width}
          height={size.height}
          label={`${passage.members.length} keyways laid on each other. ${passageHeadline(passage, all, units)}.`}
          onPoint={(id) => store.setState({ pointed: id })}
        />
      )}
    </div>
  );
}
