import { useRef } from 'react';
import { openText } from '../state/document-state.ts';
import { SAMPLE_FAMILIES, type SampleFamily } from '../state/sample-families.ts';
import type { Session } from '../state/session.ts';
import styles from './family-menu.module.css';
import { HangingPanel } from './hanging-panel.tsx';
import { mayReplace } from './may-replace.ts';
import { openFile } from './open-file.ts';
import { canSaveAs, saveAs, saveFamily } from './save-file.ts';
import { useSession, useStore } from './use-store.ts';

/** Open, save, and the families that come with the app. */
export function FamilyMenu() {
  const session = useSession();
  const isOpen = useStore(session.documents, (s) => s.document !== null);
  const picker = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={picker}
        type="file"
        accept=".json,application/json"
        className="unseen"
        aria-label="Family file"
        tabIndex={-1}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file) openFile(session, file);
        }}
      />
      <HangingPanel label={<>Family ▾</>} title="Open, save, demo families">
        {(close) => (
          <ul className={styles.menu}>
            <MenuRow
              close={close}
              onPress={() => picker.current?.click()}
              name="Open family…"
              hint="or drop a file on the window"
            />
            {isOpen && (
              <MenuRow
                close={close}
                onPress={() => saveFamily(session)}
                name="Save family"
                hint="into your downloads"
              />
            )}
            {isOpen && canSaveAs() && (
              <MenuRow
                close={close}
                onPress={() => saveAs(session)}
                name="Save family as…"
                hint="to a place you pick"
              />
            )}
            {SAMPLE_FAMILIES.map((sample) => (
              <MenuRow
                key={sample.id}
                close={close}
                onPress={() => openSample(session, sample)}
                name={sample.label}
                hint="invented, comes with the app"
              />
            ))}
          </ul>
        )}
      </HangingPanel>
    </>
  );
}

function openSample(session: Session, { text, fileName }: SampleFamily): void {
  if (mayReplace(session)) openText(session.documents, session.doors, text, fileName);
}

interface MenuRowProps {
  readonly name: string;
  readonly hint: string;
  close(): void;
  onPress(): void;
}

function MenuRow({ name, hint, close, onPress }: MenuRowProps) {
  return (
    <li>
      <button
        type="button"
        className={styles.row}
        onClick={() => {
          close();
          onPress();
        }}
      >
        <b>{name}</b>
        <span>{hint}</span>
      </button>
    </li>
  );
}
