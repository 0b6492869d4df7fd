import type { Family } from '../../../family/family.ts';
import { SheetKeys } from '../../panels/sheet-keys.tsx';
import { useSession, useStore } from '../../panels/use-store.ts';
import styles from '../sheeted-view.module.css';
import { AskSheet } from './ask-sheet.tsx';
import { IdentifySheet } from './identify-sheet.tsx';
import { MisleadingSheet } from './misleading-sheet.tsx';
import { RegisterSheet } from './register-sheet.tsx';

const SHEETS = [
  { sheet: 'ask', label: 'Ask', title: 'A question in plain words' },
  { sheet: 'register', label: 'Register', title: 'Every name and what it stands for' },
  { sheet: 'misleading', label: 'Misleading names', title: 'Names that are easily misread' },
  { sheet: 'identify', label: 'Identify', title: 'What an unknown outline is' },
] as const;

/** What names stand for, and what an unknown section is. */
export function Names({ family }: { family: Family }) {
  const { names } = useSession();
  const sheet = useStore(names, (s) => s.sheet);
  return (
    <div className={styles.view}>
      <header className={styles.head}>
        <SheetKeys
          label="Sheets of Names"
          sheets={SHEETS}
          shown={sheet}
          onShow={(next) => names.setState({ sheet: next })}
        />
      </header>
      {sheet === 'ask' && <AskSheet family={family} />}
      {sheet === 'register' && <RegisterSheet family={family} />}
      {sheet === 'misleading' && <MisleadingSheet family={family} />}
      {sheet === 'identify' && <IdentifySheet family={family} />}
    </div>
  );
}
