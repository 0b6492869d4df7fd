import { type Family, openingsOf } from '../../../../family/family.ts';
import { readingText, shiftText, sizeText } from '../../../../family/length-text.ts';
import type { Passage } from '../../../../passage/passage.ts';
import type { Fact } from '../../../state/profile-facts.ts';
import { passageStateOf } from '../../../state/tiers/passage-state.ts';
import { areaText, lessText, sureText } from '../../../state/tiers/passage-words.ts';
import { FactList } from '../../fact-list.tsx';
import styles from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';
import { AlsoEntered } from './also-entered.tsx';
import { MillingForm } from './milling-form.tsx';
import { PassageChoice } from './passage-choice.tsx';
import { useMadePassage } from './use-milled-passage.ts';

/** The readings beside the common passage: which keyways, what it loses in each, the blank in figures. */
export function PassageReadings({ family }: { family: Family }) {
  const { passage } = useMadePassage(family);
  if (openingsOf(family).length === 0) return null;
  return (
    <>
      <PassageChoice family={family} passage={passage} />
      {passage?.blank && <AlsoEntered family={family} passage={passage} />}
      <MillingForm family={family} />
      {passage && <Figures family={family} passage={passage} />}
    </>
  );
}

function Figures({ family, passage }: { family: Family; passage: Passage }) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const lit = useStore(passageStateOf(session), (s) => s.pointed ?? s.pinned);
  const { blank, sure, clearance, area } = passage;
  const facts: Fact[] = [{ term: 'Shared by all', value: areaText(area, units) }];
  if (blank) {
    facts.unshift(
      { term: 'Thickness × height', value: sizeText(blank.width, blank.height, units) },
      { term: 'Thinnest web', value: readingText(blank.web.thickness, units) },
      { term: 'Its area', value: areaText(blank.area, units) },
    );
    if (blank.milled)
      facts.push({ term: 'Less than in any form', value: lessText(blank.milled.free, blank.area, units) });
    facts.push({ term: 'Gap kept all round', value: readingText(clearance, units) });
  }
  const member = passage.members.find(({ id }) => id === lit);
  const name = family.profiles.find(({ id }) => id === lit)?.name;
  return (
    <section className={styles.part} aria-labelledby="reading-passage">
      <h2 id="reading-passage" className={styles.title}>
        {blankTitle(blank)}
      </h2>
      <FactList facts={facts} />
      {member && name && (
        <p>
          {name} is drawn here moved sideways by {shiftText(member.move.x, units)} and up by{' '}
          {shiftText(member.move.y, units)} against its own drawing.
        </p>
      )}
      {blank && sure && passage.members.length > 1 && <p>{sureText(sure, units)}</p>}
      <p className={styles.note}>
        For new parts as drawn, held upright. A blank is pushed into each keyway by itself, so each is moved to where
        all leave the most room; none is turned. Heights are measured from the back of the blank.
      </p>
    </section>
  );
}

function blankTitle(blank: Passage['blank']): string {
  if (!blank) return 'What they share';
  return blank.milled ? 'The milled blank' : 'The widest blank';
}
