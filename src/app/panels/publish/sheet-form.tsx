import { useId } from 'react';
import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import { PAPER_NAMES } from '../../../publish/paper.ts';
import { markInBetween } from '../../state/draw/section-editing.ts';
import {
  cardSubject,
  ENLARGEMENTS,
  everyCardOf,
  PAPER_SHEETS,
  QUESTIONS,
  type SheetChoice,
} from '../../state/publish/sheet-choice.ts';
import { PAPER_LABELS, SHEET_WORDS } from '../../state/publish/sheet-words.ts';
import { sheetsLookOf } from '../../state/publish/sheets-look.ts';
import { pickProfile } from '../../state/selection-state.ts';
import { TickField, WholeNumberField } from '../form-fields.tsx';
import { useSession, useStore } from '../use-store.ts';
import lines from './choice-line.module.css';
import { Choice, InksChoice, LengthsChoice } from './choice-line.tsx';
import styles from './sheet-form.module.css';
import { useSheetSubjects } from './use-sheet-order.ts';

/** Which sheet, of what, and how it is printed. */
export function SheetForm({ family }: { family: Family }) {
  const { sheetChoice } = useSession();
  const choice = useStore(sheetChoice, (s) => s);
  const choose = (change: Partial<SheetChoice>) => sheetChoice.setState(change);
  return (
    <form className={styles.form} aria-label="What is printed" onSubmit={(event) => event.preventDefault()}>
      <SheetList choice={choice} choose={choose} />
      <SheetOptions family={family} choice={choice} choose={choose} />
      <PaperOptions choice={choice} choose={choose} />
    </form>
  );
}

interface ChoiceProps {
  readonly choice: SheetChoice;
  choose(change: Partial<SheetChoice>): void;
}

function SheetList({ choice, choose }: ChoiceProps) {
  const look = sheetsLookOf(useSession());
  return (
    <fieldset className={`bare ${styles.sheets}`}>
      <legend>Sheet</legend>
      {PAPER_SHEETS.map((sheet) => (
        <label key={sheet} className={styles.sheet} data-chosen={choice.sheet === sheet || undefined}>
          <input
            type="radio"
            name="publish-sheet"
            checked={choice.sheet === sheet}
            onChange={() => {
              choose({ sheet });
              look.setState({ page: 0 });
            }}
          />
          <span>
            <b>{SHEET_WORDS[sheet].label}</b>
            <small>{SHEET_WORDS[sheet].brief}</small>
          </span>
        </label>
      ))}
    </fieldset>
  );
}

/** What only the chosen sheet asks. */
function SheetOptions({ family, choice, choose }: ChoiceProps & { family: Family }) {
  switch (choice.sheet) {
    case 'chart':
      return (
        <div className={styles.group}>
          <ToolsTick choice={choice} choose={choose} />
          <TickField label="On one page" value={choice.onePage} onChange={(onePage) => choose({ onePage })} />
          <InBetweenTicks family={family} />
        </div>
      );
    case 'matrix':
      return (
        <div className={styles.group}>
          <ToolsTick choice={choice} choose={choose} />
        </div>
      );
    case 'scale':
      return (
        <div className={styles.group}>
          <PairChoice family={family} />
          <Choice
            label="Enlarged"
            value={String(choice.enlarge ?? '')}
            choices={[['', 'As fits'], ...ENLARGEMENTS.map((times) => [String(times), `${times}:1`] as const)]}
            onChange={(times) => choose({ enlarge: times === '' ? null : Number(times) })}
          />
        </div>
      );
    case 'card':
      return (
        <div className={styles.group}>
          <CardChoice family={family} />
        </div>
      );
    case 'answers':
      return (
        <div className={styles.group}>
          <QuestionFields choice={choice} choose={choose} />
        </div>
      );
  }
}

function ToolsTick({ choice, choose }: ChoiceProps) {
  return (
    <TickField label="With the tools" value={!choice.blanksOnly} onChange={(tools) => choose({ blanksOnly: !tools })} />
  );
}

/** Which sections were squeezed in between others later; the family file keeps it. */
function InBetweenTicks({ family }: { family: Family }) {
  const session = useSession();
  const openings = openingsOf(family);
  const count = openings.filter(({ inBetween }) => inBetween).length;
  return (
    <details className={styles.ticks}>
      <summary title="They stand higher on the chart, between their neighbours">
        In-between sections: {count === 0 ? 'none' : count}
      </summary>
      {openings.map(({ id, name, inBetween = false }) => (
        <TickField key={id} label={name} value={inBetween} onChange={(on) => markInBetween(session, id, on)} />
      ))}
    </details>
  );
}

/** What stands for all of them in a list of ids. */
const WHOLE = '*';

/** The whole family, or the keyway and the blank that are picked in the tray; choosing one here picks it there. */
function PairChoice({ family }: { family: Family }) {
  const session = useSession();
  const { selection } = session;
  const { openingId, entrantId } = useStore(selection, (s) => s);
  const look = sheetsLookOf(session);
  const wholeFamily = useStore(look, (s) => s.wholeFamily);
  const named = (profiles: Family['profiles']) => profiles.map(({ id, name }) => [id, name] as const);
  return (
    <>
      <Choice
        names
        label="Keyway"
        value={wholeFamily ? WHOLE : (openingId ?? '')}
        choices={[[WHOLE, 'The whole family'], ...named(openingsOf(family))]}
        onChange={(id) => {
          look.setState({ wholeFamily: id === WHOLE, page: 0 });
          if (id !== WHOLE) pickProfile(selection, { id, kind: 'opening' });
        }}
      />
      {!wholeFamily && (
        <Choice
          names
          label="Blank"
          value={entrantId ?? ''}
          choices={named(entrantsOf(family))}
          onChange={(id) => pickProfile(selection, { id, kind: 'blank' })}
        />
      )}
    </>
  );
}

/** Whose cards: of all holders or all blanks, of one holder of the plan, or of the blank picked in the tray. */
function CardChoice({ family }: { family: Family }) {
  const session = useSession();
  const subjects = useSheetSubjects();
  const holders = family.plan?.holders ?? [];
  const blanks = family.profiles.filter(({ kind }) => kind === 'blank');
  const id = useId();
  const every = everyCardOf(family, subjects);
  const choose = (of: string) => {
    const all = CARDS_OF_ALL.find(([kind]) => of === `${WHOLE}${kind}`);
    sheetsLookOf(session).setState({ everyCard: all?.[0] ?? null, page: 0 });
    if (all) return;
    const isHolder = holders.some((holder) => holder.id === of);
    sheetsLookOf(session).setState({ holderId: isHolder ? of : null });
    if (!isHolder) pickProfile(session.selection, { id: of, kind: 'blank' });
  };
  const options = (things: readonly { readonly id: string; readonly name: string }[]) =>
    things.map((thing) => (
      <option key={thing.id} value={thing.id}>
        {thing.name}
      </option>
    ));
  return (
    <div className={lines.line} data-names="">
      <label htmlFor={id}>For</label>
      <select
        id={id}
        value={every === null ? (cardSubject(family, subjects) ?? '') : `${WHOLE}${every}`}
        onChange={(event) => choose(event.target.value)}
      >
        {CARDS_OF_ALL.filter(([kind]) => everyCardOf(family, { everyCard: kind }) !== null).map(([kind, words]) => (
          <option key={kind} value={`${WHOLE}${kind}`}>
            {words}
          </option>
        ))}
        {holders.length > 0 && <optgroup label="Holders of the plan">{options(holders)}</optgroup>}
        {holders.length > 0 ? <optgroup label="Blanks">{options(blanks)}</optgroup> : options(blanks)}
      </select>
    </div>
  );
}

const CARDS_OF_ALL = [
  ['holders', 'All holders'],
  ['blanks', 'All blanks'],
] as const;

function QuestionFields({ choice, choose }: ChoiceProps) {
  return (
    <>
      <WholeNumberField
        inline
        label="Questions"
        value={choice.questions}
        least={QUESTIONS.least}
        most={QUESTIONS.most}
        onChange={(questions) => choose({ questions })}
      />
      <WholeNumberField
        inline
        label="Set"
        title="The same number draws the same questions again"
        value={choice.seed}
        least={1}
        most={QUESTIONS.sets}
        onChange={(seed) => choose({ seed })}
      />
      <button type="button" className="key" onClick={() => choose({ seed: (choice.seed % QUESTIONS.sets) + 1 })}>
        Other questions
      </button>
    </>
  );
}

function PaperOptions({ choice, choose }: ChoiceProps) {
  const { sheet, turned } = choice;
  return (
    <div className={styles.group}>
      <Choice
        label="Paper"
        value={choice.paper}
        choices={PAPER_NAMES.map((name) => [name, PAPER_LABELS[name]])}
        onChange={(paper) => choose({ paper })}
      />
      <Choice
        label="Held"
        value={turned[sheet]}
        choices={[
          ['portrait', 'Portrait'],
          ['landscape', 'Landscape'],
        ]}
        onChange={(turn) => choose({ turned: { ...turned, [sheet]: turn } })}
      />
      <InksChoice />
      <LengthsChoice />
      <TickField label="With the date" value={choice.dated} onChange={(dated) => choose({ dated })} />
    </div>
  );
}
