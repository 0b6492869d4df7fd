import { useRef, useState } from 'react';
import { keepOf } from '../keep/keep-state.ts';
import { openText } from '../state/document-state.ts';
import { dropPreview } from '../state/draw/outline-preview.ts';
import { beginExport } from '../state/exchange/export-state.ts';
import { SAMPLE_FAMILIES, type SampleFamily } from '../state/sample-families.ts';
import type { Session } from '../state/session.ts';
import { FamilySheet, NewFamilySheet } from './draw/family-sheets.tsx';
import { pickImports } from './exchange/import-files.ts';
import { pasteFromClipboard } from './exchange/import-paste.ts';
import { mayReplace } from './exchange/may-replace.ts';
import { ACCEPTED, openFile, pickFile } from './exchange/open-file.ts';
import { canSaveAs, saveAs, saveFamily, savesTo } from './exchange/save-file.ts';
import { HangingPanel } from './hanging-panel.tsx';
import { RecentSheet } from './keep/recent-sheet.tsx';
import { ShareSheet } from './keep/share-sheet.tsx';
import { SnapshotsSheet } from './keep/snapshots-sheet.tsx';
import styles from './menu-row.module.css';
import { MenuRow } from './menu-row.tsx';
import { NamingSchemeSheet } from './names/register/naming-scheme-sheet.tsx';
import { useSession, useStore } from './use-store.ts';

/** What the menu opens over the window. */
const SHEETS = {
  new: NewFamilySheet,
  family: OpenFamilySheet,
  scheme: NamingSchemeSheet,
  snapshots: SnapshotsSheet,
  recent: RecentSheet,
  share: ShareSheet,
} as const;

/** Open, save, share, what is kept, and the families that come with the app. */
export function FamilyMenu() {
  const session = useSession();
  const picker = useRef<HTMLInputElement>(null);
  const [sheet, setSheet] = useState<keyof typeof SHEETS | null>(null);
  const Sheet = sheet && SHEETS[sheet];
  return (
    <>
      <input
        ref={picker}
        type="file"
        accept={ACCEPTED}
        className="unseen"
        aria-label="Family file"
        tabIndex={-1}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file) openFile(session, file);
        }}
      />
      <HangingPanel label={<>Family ▾</>} title="New, open, save, share, what is kept, demo families">
        {(close) => (
          <ul className={styles.menu}>
            <FamilyRows close={close} show={setSheet} />
            <FileRows close={close} pick={() => pickFile(session, () => picker.current?.click())} />
            <TransferRows close={close} />
            <KeepRows close={close} show={setSheet} />
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
      {Sheet && <Sheet onClose={() => setSheet(null)} />}
    </>
  );
}

/** A family of one's own, and what is said of the open one. */
function FamilyRows({ close, show }: { close(): void; show(sheet: keyof typeof SHEETS): void }) {
  const session = useSession();
  const isOpen = useStore(session.documents, (s) => s.document !== null);
  const showFamily = () => {
    // What an operation only shows is not kept with it.
    dropPreview(session);
    show('family');
  };
  const showScheme = () => {
    dropPreview(session);
    show('scheme');
  };
  return (
    <>
      <MenuRow
        close={close}
        onPress={() => show('new')}
        name="New family…"
        hint="begins with one plain blank and its keyway, or with a plan"
      />
      {isOpen && (
        <MenuRow
          close={close}
          onPress={showFamily}
          name="The family…"
          hint="its name, running clearance, tolerance, tilt, note"
        />
      )}
      {isOpen && (
        <MenuRow
          close={close}
          onPress={showScheme}
          name="Name the sections…"
          hint="all of them by one rule, none misleading"
        />
      )}
    </>
  );
}

function OpenFamilySheet({ onClose }: { onClose(): void }) {
  const family = useStore(useSession().documents, (s) => s.document?.family);
  return family ? <FamilySheet family={family} onClose={onClose} /> : null;
}

/** Files of the user's disk. */
function FileRows({ close, pick }: { close(): void; pick(): void }) {
  const session = useSession();
  const isOpen = useStore(session.documents, (s) => s.document !== null);
  // Where it is saved to changes with the file's name.
  useStore(session.documents, (s) => s.fileName);
  return (
    <>
      <MenuRow close={close} onPress={pick} name="Open family…" hint="a family file (.json), or drop one here" />
      {isOpen && (
        <MenuRow close={close} onPress={() => saveFamily(session)} name="Save family" hint={savesTo(session)} />
      )}
      {isOpen && canSaveAs() && (
        <MenuRow close={close} onPress={() => saveAs(session)} name="Save family as…" hint="to another place" />
      )}
    </>
  );
}

/** What comes from other programs and goes to them. */
function TransferRows({ close }: { close(): void }) {
  const session = useSession();
  const isOpen = useStore(session.documents, (s) => s.document !== null);
  if (!isOpen) return null;
  const rows = [
    { name: 'Import…', hint: 'SVG, DXF, points, claims, a picture, another family', run: pickImports },
    { name: 'Paste from clipboard', hint: 'a drawing, points or a picture, or press Ctrl+V', run: pasteFromClipboard },
    { name: 'Export…', hint: 'sections as SVG, DXF or points', run: beginExport },
  ];
  return rows.map(({ name, hint, run }) => (
    <MenuRow key={name} close={close} onPress={() => run(session)} name={name} hint={hint} />
  ));
}

/** What is kept in the browser, and what is passed on without a file. */
function KeepRows({ close, show }: { close(): void; show(sheet: keyof typeof SHEETS): void }) {
  const session = useSession();
  const isOpen = useStore(session.documents, (s) => s.document !== null);
  const keeps = useStore(keepOf(session), (s) => s.status !== 'off');
  const rows = [
    { sheet: 'share', name: 'Share by a link…', hint: 'the family goes in the link itself', on: isOpen },
    { sheet: 'snapshots', name: 'Snapshots…', hint: 'the family as it was, by name', on: isOpen && keeps },
    { sheet: 'recent', name: 'Recent families…', hint: 'kept in this browser', on: keeps },
  ] as const;
  return rows
    .filter(({ on }) => on)
    .map(({ sheet, name, hint }) => (
      <MenuRow key={sheet} close={close} onPress={() => show(sheet)} name={name} hint={hint} />
    ));
}

function openSample(session: Session, { text, fileName }: SampleFamily): void {
  if (mayReplace(session)) openText(session.documents, session.doors, text, fileName);
}
