import type { DocumentState } from './document-state.ts';
import { keepOn, keptFields, type Shelf } from './kept-store.ts';
import { makeStore, type Store } from './store.ts';

/** The settings of families by their names, the one changed last at the end. */
export type ByFamily<Settings> = Readonly<Record<string, Settings>>;

/** What of a window settings need to know: the open family, and where they are kept. */
export interface SettingsPlace {
  readonly documents: Store<DocumentState>;
  readonly shelf: Shelf | null;
}

/** What a sheet is set to for each family; kept in this browser, not in the file. */
export interface FamilySettings<Settings> {
  /** The settings of a window; they follow a family to another name from the first look at them on. */
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
    const made = makeStore<ByFamily<Settings>>(readAll(keptFields(place.shelf, key)));
    stores.set(place, made);
    followNames(place, made, (family, settings) => put(place, family, settings));
    return made;
  };
  const put = (place: SettingsPlace, family: string, settings: Settings) => {
    const store = storeOf(place);
    store.setState(withLast(store.getState(), family, settings), true);
    // Another window may have kept settings of other families since this one was opened.
    keepOn(place.shelf, key, withLast(keptFields(place.shelf, key), family, settings));
  };
  const settingsOf = (all: ByFamily<Settings>, family: string) => (Object.hasOwn(all, family) ? all[family] : usual);
  return {
    storeOf,
    settingsOf,
    change(place, family, change) {
      put(place, family, { ...settingsOf(storeOf(place).getState(), family), ...change });
    },
  };
}

/** The settings with those of one family changed last. */
function withLast<Settings>(all: ByFamily<Settings>, family: string, settings: Settings): ByFamily<Settings> {
  const others = Object.entries(all).filter(([name]) => name !== family);
  return Object.fromEntries([...others.slice(1 - MOST_FAMILIES), [family, settings]]);
}

/** A family that is given another name keeps its settings. */
function followNames<Settings>(
  { documents }: SettingsPlace,
  store: Store<ByFamily<Settings>>,
  put: (family: string, settings: Settings) => void,
): void {
  documents.subscribe((now, before) => {
    const [name, old] = [now.document?.family.name, before.document?.family.name];
    if (now.opened !== before.opened || name === undefined || old === undefined || name === old) return;
    const all = store.getState();
    if (Object.hasOwn(all, old) && !Object.hasOwn(all, name)) put(name, all[old]);
  });
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
