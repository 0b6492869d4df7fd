import type { DocumentState } from './document-state.ts';
import { makeKeptStore, type Shelf } from './kept-store.ts';
import type { Store } from './store.ts';

/** The settings of families by their names, the one changed last at the end. */
export type ByFamily<Settings> = Readonly<Record<string, Settings>>;

/** What of a window settings need to know: the open family, and where they are kept. */
export interface SettingsPlace {
  readonly documents: Store<DocumentState>;
  readonly shelf: Shelf | null;
}

/** What a sheet is set to for each family; kept in this browser, not in the file. */
export interface FamilySettings<Settings> {
  /** The settings of a window. */
  storeOf(place: SettingsPlace): Store<ByFamily<Settings>>;
  /** The settings for a family; the usual ones until it has its own. */
  settingsOf(all: ByFamily<Settings>, family: string): Settings;
  /** Changes some settings of a family. */
  change(place: SettingsPlace, family: string, change: Partial<Settings>): void;
}

/** The settings of so many families are kept; those changed longest ago go first. */
const MOST_FAMILIES = 30;

/**
 * The settings of one sheet.
 *
 * @param key what they are kept under.
 * @param usual what a family begins with.
 * @param read makes settings of what was kept for a family; the usual ones of what is not sound.
 * @check tests/unit/app/family-settings.test.ts
 */
export function makeFamilySettings<Settings extends object>(
  key: string,
  usual: Settings,
  read: (fields: Readonly<Record<string, unknown>>) => Settings,
): FamilySettings<Settings> {
  const stores = new WeakMap<SettingsPlace, Store<ByFamily<Settings>>>();
  const readAll = (fields: Readonly<Record<string, unknown>>) =>
    Object.fromEntries(Object.entries(fields).flatMap(([name, kept]) => (isRecord(kept) ? [[name, read(kept)]] : [])));
  const storeOf = (place: SettingsPlace) => {
    const known = stores.get(place);
    if (known) return known;
    const made = makeKeptStore<ByFamily<Settings>>(place.shelf, key, readAll);
    stores.set(place, made);
    followNames(place, made);
    return made;
  };
  const settingsOf = (all: ByFamily<Settings>, family: string) => (Object.hasOwn(all, family) ? all[family] : usual);
  return {
    storeOf,
    settingsOf,
    change(place, family, change) {
      const store = storeOf(place);
      const all = store.getState();
      const others = Object.entries(all).filter(([name]) => name !== family);
      const changed = [family, { ...settingsOf(all, family), ...change }] as const;
      store.setState(Object.fromEntries([...others.slice(1 - MOST_FAMILIES), changed]), true);
    },
  };
}

/** A family that is given another name keeps its settings. */
function followNames<Settings>({ documents }: SettingsPlace, store: Store<ByFamily<Settings>>): void {
  documents.subscribe((now, before) => {
    const [name, old] = [now.document?.family.name, before.document?.family.name];
    if (now.opened !== before.opened || name === undefined || old === undefined || name === old) return;
    const all = store.getState();
    if (Object.hasOwn(all, old) && !Object.hasOwn(all, name)) store.setState({ ...all, [name]: all[old] }, true);
  });
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
