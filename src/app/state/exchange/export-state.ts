import type { Family } from '../../../family/family.ts';
import type { Units } from '../../../family/length-text.ts';
import { fileNameText } from '../../../family/plain-name.ts';
import type { ExportFormat } from '../../../interchange/export-profiles.ts';
import type { Profile } from '../../../profile/profile.ts';
import { editedProfile } from '../selection-state.ts';
import type { Session } from '../session.ts';
import { makeStore, type Store } from '../store.ts';

/** What is to be handed on to other programs; null while nothing is asked. */
export interface ExportChoice {
  readonly ids: ReadonlySet<string>;
  readonly format: ExportFormat;
  readonly units: Units;
}

/** Whether an export is asked about, and with what. */
export interface ExportState {
  readonly choice: ExportChoice | null;
}

const stores = new WeakMap<Session, Store<ExportState>>();

/** What is asked about the export of a window's family. */
export function exportOf(session: Session): Store<ExportState> {
  const known = stores.get(session);
  if (known) return known;
  const made = makeStore<ExportState>({ choice: null });
  stores.set(session, made);
  return made;
}

/** Begins to ask, with the profile that was picked last. */
export function beginExport(session: Session): void {
  const family = session.documents.getState().document?.family;
  if (!family) return;
  const picked = editedProfile(family, session.selection.getState());
  const ids = new Set(picked ? [picked.id] : []);
  exportOf(session).setState({ choice: { ids, format: 'svg', units: session.settings.getState().units } });
}

/** Changes what is chosen. */
export function chooseExport(session: Session, change: Partial<ExportChoice>): void {
  const store = exportOf(session);
  const { choice } = store.getState();
  if (choice) store.setState({ choice: { ...choice, ...change } });
}

/** Puts the question away. */
export function endExport(session: Session): void {
  exportOf(session).setState({ choice: null });
}

/** The chosen profiles of a family, in chart order. */
export function chosenProfiles({ profiles }: Family, { ids }: ExportChoice): Profile[] {
  return profiles.filter(({ id }) => ids.has(id));
}

/** What an export is called: the one profile's name, else the family's, fit for a disk. */
export function exportFileName(family: Family, profiles: readonly Profile[], extension: string): string {
  const name = profiles.length === 1 ? profiles[0].name : family.name;
  return `${fileNameText(name) || 'sections'}.${extension}`;
}
