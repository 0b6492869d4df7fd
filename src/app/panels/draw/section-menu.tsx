import { type ReactNode, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Profile } from '../../../profile/profile.ts';
import {
  deleteSection,
  duplicateSection,
  type EditAnswer,
  moveSection,
  neighbourOf,
} from '../../state/draw/section-editing.ts';
import { identifyProfile } from '../../state/names/identifying.ts';
import { HangingPanel } from '../hanging-panel.tsx';
import styles from '../menu-row.module.css';
import { useSession } from '../use-store.ts';
import { FamilySheet, NewFamilySheet } from './family-sheets.tsx';
import { NewSectionSheet, SectionSheet } from './section-sheets.tsx';

type Sheet = 'new' | 'section' | 'family' | 'new-family';

interface SectionMenuProps {
  readonly family: Family;
  readonly profile: Profile;
  /** Says what was done, or why not. */
  tell(words: string): void;
  /** Closes the form of an operation: what it only shows is not copied or kept. */
  onBegin(): void;
}

/** Makes, copies, names, moves and deletes sections, and names the family. Every one is a step of undo. */
export function SectionMenu({ family, profile, tell, onBegin }: SectionMenuProps) {
  const session = useSession();
  const [sheet, setSheet] = useState<Sheet | null>(null);
  const done = (answer: EditAnswer, words: string) =>
    tell(answer ? answer.map(({ what, cure }) => `${what}. ${cure}`).join(' ') : words);
  const { name, id } = profile;
  const move = (steps: -1 | 1, where: string) => {
    const next = neighbourOf(session, id, steps);
    if (next) done(moveSection(session, id, steps), `${name} now stands ${where} ${next.name}.`);
    else tell(`${name} is the ${steps < 0 ? 'first' : 'last'} of its kind already.`);
  };
  const remove = () => {
    if (family.profiles.length < 2) tell(`${name} is the last section of the family and cannot be deleted.`);
    else done(deleteSection(session, profile), `${name} deleted. Undo brings it back.`);
  };
  return (
    <>
      <HangingPanel
        label={<>Section ▾</>}
        title="New section, duplicate, rename, move, delete; the family's own fields"
      >
        {(close) => {
          const row = (label: ReactNode, hint: string, onPress: () => void) => (
            <Row
              label={label}
              hint={hint}
              onPress={() => {
                close();
                onBegin();
                onPress();
              }}
            />
          );
          return (
            <ul className={styles.menu}>
              {row('New section…', 'keyway, blank or tool', () => setSheet('new'))}
              {row('Duplicate', `a copy of ${name}`, () =>
                done(duplicateSection(session, profile), `${name} duplicated; the copy is in hand.`),
              )}
              {row('Identify', 'which other section it is like', () => tell(identifyProfile(session, profile) ?? ''))}
              {row('Rename, kind, note…', 'what is said of it', () => setSheet('section'))}
              {row('Move up', 'in the chart', () => move(-1, 'before'))}
              {row('Move down', 'in the chart', () => move(1, 'after'))}
              {row('Delete', 'undo brings it back', remove)}
              {row('The family…', 'name, running clearance, tolerance, tilt', () => setSheet('family'))}
              {row('New family…', 'one plain blank and its keyway, or a plan', () => setSheet('new-family'))}
            </ul>
          );
        }}
      </HangingPanel>
      {sheet === 'new' && <NewSectionSheet family={family} afterId={id} onClose={() => setSheet(null)} />}
      {sheet === 'section' && <SectionSheet family={family} profile={profile} onClose={() => setSheet(null)} />}
      {sheet === 'family' && <FamilySheet family={family} onClose={() => setSheet(null)} />}
      {sheet === 'new-family' && <NewFamilySheet onClose={() => setSheet(null)} />}
    </>
  );
}

function Row({ label, hint, onPress }: { label: ReactNode; hint: string; onPress(): void }) {
  return (
    <li>
      <button type="button" className={styles.row} onClick={onPress}>
        <b>{label}</b>
        <span>{hint}</span>
      </button>
    </li>
  );
}
