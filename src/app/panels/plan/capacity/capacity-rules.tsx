import { useId } from 'react';
import { type BittingRules, MOST_CHAMBERS, MOST_DEPTHS, type RuleFault } from '../../../../capacity/bitting-rules.ts';
import type { Family } from '../../../../family/family.ts';
import { setCapacity, setRules } from '../../../state/plan/capacity/capacity-state.ts';
import { bittingText, readCuts } from '../../../state/plan/capacity/capacity-words.ts';
import fields from '../../form-fields.module.css';
import { ChoiceField, WholeNumberField } from '../../form-fields.tsx';
import { useSession } from '../../use-store.ts';
import { useTyped } from '../../use-typed.ts';
import styles from './capacity-rules.module.css';
import { useCapacitySettings } from './use-capacity.ts';

/** The rules that a bitting keeps. */
export function CapacityRules({ family, faults }: { family: Family; faults: readonly RuleFault[] }) {
  const session = useSession();
  const { rules, firstDepth } = useCapacitySettings(family);
  const put = (change: Partial<BittingRules>) => setRules(session, family.name, change);
  return (
    <section className={styles.rules} aria-label="Rules of a bitting">
      <Sizes family={family} put={put} />
      <WholeNumberField
        atOnce
        label="Maximum adjacent cut"
        value={rules.maximumAdjacent}
        least={0}
        most={MOST_DEPTHS}
        none="no maximum"
        hint="MACS"
        onChange={(n) => put({ maximumAdjacent: n })}
      />
      <WholeNumberField
        atOnce
        label="Alike in a row, at most"
        value={rules.mostAlike}
        least={1}
        most={MOST_CHAMBERS}
        none="any number"
        onChange={(n) => put({ mostAlike: n })}
      />
      <WholeNumberField
        atOnce
        label="Different depths, at least"
        value={rules.leastDifferent}
        least={1}
        most={Math.min(rules.chambers, rules.depths)}
        onChange={(n) => put({ leastDifferent: n })}
      />
      <ChoiceField
        label="Progression"
        value={rules.progression}
        choices={[
          ['one-step', 'one-step'],
          ['two-step', 'two-step'],
        ]}
        onChange={(progression) => put({ progression })}
      />
      <MasterField
        rules={rules}
        firstDepth={firstDepth}
        fault={faults.find(({ field }) => field === 'master')}
        onChange={(master) => put({ master })}
      />
    </section>
  );
}

/** How many chambers and depths there are, and how depths are written. */
function Sizes({ family, put }: { family: Family; put(change: Partial<BittingRules>): void }) {
  const session = useSession();
  const { rules, firstDepth } = useCapacitySettings(family);
  return (
    <>
      <WholeNumberField
        atOnce
        label="Chambers"
        value={rules.chambers}
        least={1}
        most={MOST_CHAMBERS}
        onChange={(n) => put({ chambers: n })}
      />
      <WholeNumberField
        atOnce
        label="Depths"
        value={rules.depths}
        least={2}
        most={MOST_DEPTHS}
        onChange={(n) => put({ depths: n })}
      />
      <ChoiceField
        label="Numbered from"
        value={String(firstDepth) as '0' | '1'}
        choices={[
          ['0', '0'],
          ['1', '1'],
        ]}
        onChange={(value) => setCapacity(session, family.name, { firstDepth: value === '1' ? 1 : 0 })}
      />
    </>
  );
}

interface MasterFieldProps {
  readonly rules: BittingRules;
  readonly firstDepth: number;
  readonly fault: RuleFault | undefined;
  onChange(master: readonly number[] | null): void;
}

/** The top master as typed; empty for none. */
function MasterField({ rules, firstDepth, fault, onChange }: MasterFieldProps) {
  const id = useId();
  const { master } = rules;
  const shown = master ? bittingText(master, firstDepth) : '';
  const [typed, setTyped] = useTyped(shown);
  const text = typed ?? shown;
  const read = readMaster(text, rules, firstDepth);
  const put = (next: string) => {
    setTyped(next);
    const master = readMaster(next, rules, firstDepth);
    if (master.ok) onChange(master.cuts);
  };
  const words = read.ok ? '' : read.words;
  const told = words || (fault ? `${fault.what}. ${fault.cure}` : '');
  return (
    <div className={fields.field}>
      <label htmlFor={id}>Top master</label>
      <input
        id={id}
        className={fields.text}
        type="text"
        inputMode="numeric"
        autoComplete="off"
        value={text}
        aria-invalid={told !== ''}
        aria-describedby={`${id}-told`}
        onChange={(event) => put(event.target.value)}
      />
      <span id={`${id}-told`} className={told ? fields.fault : fields.hint} role={told ? 'alert' : undefined}>
        {told || (master ? 'no change key equals it in any position' : 'none')}
      </span>
    </div>
  );
}

/** The depths that are typed, null for none; else what is wrong with them. */
function readMaster(text: string, { chambers, depths }: BittingRules, firstDepth: number) {
  if (text.trim() === '') return { ok: true, cuts: null } as const;
  const read = readCuts(text, firstDepth);
  const words = read.ok ? cutsFault(read.cuts, chambers, depths, firstDepth) : read.words;
  return read.ok && words === '' ? read : ({ ok: false, words } as const);
}

function cutsFault(cuts: readonly number[], chambers: number, depths: number, firstDepth: number): string {
  if (cuts.length !== chambers) return `${cuts.length} of ${chambers} depths.`;
  if (cuts.some((depth) => depth >= depths)) return `Depths end at ${firstDepth + depths - 1}.`;
  return '';
}
