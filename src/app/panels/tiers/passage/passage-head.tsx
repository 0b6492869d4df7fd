import { useState } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { Passage } from '../../../../passage/passage.ts';
import { makePassageBlank } from '../../../state/tiers/passage-blank.ts';
import { passageStateOf } from '../../../state/tiers/passage-state.ts';
import {
  apartText,
  lossText,
  milledText,
  noBlankText,
  othersText,
  passageHeadline,
  webText,
} from '../../../state/tiers/passage-words.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './passage-head.module.css';

interface PassageHeadProps {
  readonly family: Family;
  /** Null while it is looked for. */
  readonly passage: Passage | null;
  /** Whether all keyways of the family are chosen. */
  readonly all: boolean;
}

/** The answer in words over the picture; about one keyway while it is lit. */
export function PassageHead({ family, passage, all }: PassageHeadProps) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const lit = useStore(passageStateOf(session), (s) => s.pointed ?? s.pinned);
  const nameOf = (id: string) => family.profiles.find((profile) => profile.id === id)?.name ?? id;
  if (!passage)
    return (
      <header className={styles.head}>
        <h1 className={styles.title}>Common passage</h1>
      </header>
    );
  const { blank, none } = passage;
  const loss = passage.members.find(({ id }) => id === lit)?.loss;
  return (
    <header className={styles.head}>
      <div className={styles.words}>
        <h1 className={styles.title}>{passageHeadline(passage, all, units)}</h1>
        {none && <p>{noBlankText(none, nameOf, passage.clearance, units)}</p>}
        {blank && lit && loss && <p>{lossText(nameOf(lit), loss, units)}</p>}
        {blank && !(lit && loss) && <BlankWords family={family} passage={passage} nameOf={nameOf} />}
      </div>
    </header>
  );
}

interface BlankWordsProps {
  readonly family: Family;
  readonly passage: Passage;
  nameOf(id: string): string;
}

function BlankWords({ family, passage, nameOf }: BlankWordsProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const { blank } = passage;
  if (!blank) return null;
  const web = webText(blank, family, units);
  const more = [milledText(blank, units), apartText(blank, units), othersText(passage, nameOf)]
    .filter(Boolean)
    .join(' ');
  return (
    <p>
      {web.weak ? <strong>{web.words}</strong> : web.words} {more}
    </p>
  );
}

/** Adds the blank to the family. */
export function MakeBlankKey({ family, passage }: { family: Family; passage: Passage }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const [fault, setFault] = useState<string | null>(null);
  return (
    <div className={styles.make}>
      <button
        type="button"
        className="key"
        title="Add this blank to the family; undo takes it out again"
        onClick={() => setFault(makePassageBlank(session, family, passage, units))}
      >
        Make a blank from this
      </button>
      {fault && <p role="alert">{fault}</p>}
    </div>
  );
}
