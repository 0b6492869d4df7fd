import { countWord } from '../../../../family/count-word.ts';
import type { Family } from '../../../../family/family.ts';
import { type Area, type Holder, MOST_RESERVE, type Plan } from '../../../../family/plan.ts';
import { type Access, accessOf, sectionName } from '../../../../plan/access.ts';
import { areaPath, FREE, MUST, NOT } from '../../../../plan/area-tree.ts';
import {
  changeOptions,
  copyHolder,
  nameSection,
  removeArea,
  removeHolder,
  tick,
  typeName,
} from '../../../state/plan/access/access-editing.ts';
import { planForView, tickShown, ticksOf, tickWords, treeOf } from '../../../state/plan/access/access-rows.ts';
import { accessLookOf } from '../../../state/plan/access/access-state.ts';
import { carrierWords, rankWords, sectionWords } from '../../../state/plan/access/access-words.ts';
import type { Fact } from '../../../state/profile-facts.ts';
import { FactList } from '../../fact-list.tsx';
import { TickField, WholeNumberField } from '../../form-fields.tsx';
import styles from '../../readings.module.css';
import { useSession, useStore } from '../../use-store.ts';
import { useTyped } from '../../use-typed.ts';
import own from './access-readings.module.css';
import { TickMark } from './tick-mark.tsx';

/** The picked area and holder, what can be done with them, and what the plan asks for besides. */
export function AccessReadings({ family }: { family: Family }) {
  const { areaId, holderId } = useStore(accessLookOf(useSession()), (s) => s);
  const plan = planForView(family.plan);
  const access = accessOf(plan);
  const area = plan.areas.find(({ id }) => id === areaId);
  const holder = plan.holders.find(({ id }) => id === holderId);
  return (
    <>
      {area && holder && <CellReading plan={plan} area={area} holder={holder} />}
      {area && <AreaReading key={area.id} plan={plan} access={access} area={area} />}
      {holder && <HolderReading plan={plan} access={access} holder={holder} />}
      {(plan.areas.length > 0 || plan.holders.length > 0) && <Options plan={plan} />}
      <KeysReading />
    </>
  );
}

const TICKS = [
  [MUST, 'Must'],
  [FREE, 'Free'],
  [NOT, 'Not'],
] as const;

function CellReading({ plan, area, holder }: { plan: Plan; area: Area; holder: Holder }) {
  const session = useSession();
  const tree = treeOf(plan);
  const row = tree.byId.get(area.id);
  if (!row) return null;
  const shown = tickShown(tree, holder, row);
  return (
    <section className={styles.part} aria-labelledby="reading-cell">
      <h2 id="reading-cell" className={styles.title}>
        {holder.name}, {area.name}
      </h2>
      <p>
        {row.isGroup
          ? `A group of ${countWord(row.to - row.from, 'area')}: ${tickWords(shown)}.`
          : `The blank ${tickWords(shown)}.`}
      </p>
      <fieldset className={`key-row bare ${own.ticks}`} aria-label="What the blank has to do with the area">
        {TICKS.map(([wanted, label]) => (
          <button
            key={label}
            type="button"
            className="key"
            aria-pressed={shown === wanted}
            onClick={() => tick(session, holder.id, area.id, wanted)}
          >
            <TickMark tick={wanted} />
            {label}
          </button>
        ))}
      </fieldset>
    </section>
  );
}

function AreaReading({ plan, access, area }: { plan: Plan; access: Access; area: Area }) {
  const session = useSession();
  const tree = treeOf(plan);
  const row = tree.byId.get(area.id);
  if (!row) return null;
  const entering = plan.holders.filter((holder) => ticksOf(tree, holder).subarray(row.from, row.to).includes(MUST));
  const others = row.isGroup ? 0 : sharing(access, area) - 1;
  const facts: Fact[] = [
    {
      term: row.isGroup ? 'Group of' : 'Area',
      value: row.isGroup ? countWord(row.to - row.from, 'area') : areaPath(tree, area.id),
    },
    ...(row.isGroup ? [] : [{ term: 'Section', value: sectionName(area) }]),
    ...(others > 0 ? [{ term: 'Shared with', value: countWord(others, 'area') }] : []),
    { term: 'Entered by', value: carrierWords({ holders: entering.map(({ id }) => id) }, plan, 4) },
  ];
  return (
    <section className={styles.part} aria-labelledby="reading-area">
      <h2 id="reading-area" className={styles.title}>
        {area.name}
      </h2>
      <FactList facts={facts} />
      {!row.isGroup && <SectionField area={area} />}
      <div className={own.keys}>
        <button type="button" className="key" onClick={() => typeName(session, { what: 'area', id: area.id })}>
          Rename
        </button>
        <button type="button" className="key" onClick={() => removeArea(session, area.id)}>
          Delete area
        </button>
      </div>
    </section>
  );
}

function sharing({ sections }: Access, { id }: Area): number {
  return sections.find(({ areas }) => areas.includes(id))?.areas.length ?? 1;
}

/** The section that an area has; areas with one name share it. */
function SectionField({ area }: { area: Area }) {
  const session = useSession();
  const said = area.section ?? '';
  const [typed, setTyped] = useTyped(said);
  const text = typed ?? said;
  const take = () => {
    const refused = text.trim() === said ? null : nameSection(session, area.id, text);
    if (!refused) setTyped(null);
  };
  return (
    <label className={own.field}>
      Its section
      <input
        type="text"
        maxLength={200}
        autoComplete="off"
        value={text}
        placeholder={area.name}
        aria-describedby="section-hint"
        onChange={(event) => setTyped(event.target.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
        }}
      />
      <small id="section-hint">Areas that name one section share it. Empty: one of its own.</small>
    </label>
  );
}

function HolderReading({ plan, access, holder }: { plan: Plan; access: Access; holder: Holder }) {
  const session = useSession();
  const blank = access.blanks.find(({ holders }) => holders.includes(holder.id));
  const facts: Fact[] = blank
    ? [
        { term: 'Blank', value: blank.name },
        { term: 'Rank', value: rankWords(blank) },
        { term: 'Enters', value: sectionWords(blank, access, 8) },
        ...(blank.holders.length > 1 ? [{ term: 'Carried by', value: carrierWords(blank, plan, 3) }] : []),
      ]
    : [{ term: 'Blank', value: 'none yet: nothing is ticked as must' }];
  return (
    <section className={styles.part} aria-labelledby="reading-holder">
      <h2 id="reading-holder" className={styles.title}>
        {holder.name}
      </h2>
      <FactList facts={facts} />
      <div className={own.keys}>
        <button type="button" className="key" onClick={() => typeName(session, { what: 'holder', id: holder.id })}>
          Rename
        </button>
        <button
          type="button"
          className="key"
          title="Another holder with the same ticks"
          onClick={() => copyHolder(session, holder.id)}
        >
          Copy
        </button>
        <button type="button" className="key" onClick={() => removeHolder(session, holder.id)}>
          Delete holder
        </button>
      </div>
    </section>
  );
}

function Options({ plan }: { plan: Plan }) {
  const session = useSession();
  const { baseBlanks, allSection, reserve } = plan;
  return (
    <section className={styles.part} aria-labelledby="reading-options">
      <h2 id="reading-options" className={styles.title}>
        Besides the holders
      </h2>
      <TickField
        label="A base blank for each section, which enters it alone"
        value={baseBlanks}
        onChange={(wanted) => changeOptions(session, { baseBlanks: wanted })}
      />
      <TickField
        label="An all-section blank, which enters every section"
        value={allSection}
        onChange={(wanted) => changeOptions(session, { allSection: wanted })}
      />
      <WholeNumberField
        label="Sections to keep room for"
        value={reserve}
        least={0}
        most={MOST_RESERVE}
        hint="To be added later; the blades leave sites for them."
        onChange={(count) => changeOptions(session, { reserve: count })}
      />
    </section>
  );
}

const KEYS = [
  ['Arrows', 'from cell to cell, with Ctrl to the end'],
  ['Space', 'on a cell: must, free, not; on a group: fold'],
  ['X F -', 'must, free, not'],
  ['Enter', 'on a name: add the next; with Shift inside'],
  ['F2', 'rename'],
  ['Alt + arrows', 'move, in and out of a group'],
  ['Delete', 'delete an area or a holder, or a tick'],
] as const;

function KeysReading() {
  return (
    <section className={styles.part} aria-labelledby="reading-keys">
      <h2 id="reading-keys" className={styles.title}>
        By keyboard
      </h2>
      <dl className={own.list}>
        {KEYS.map(([key, does]) => (
          <div key={key}>
            <dt>{key}</dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
