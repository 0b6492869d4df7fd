import type { Session } from '../session.ts';
import { makeStore, type Store } from '../store.ts';

/** The settings of each family of a visit, by its name. */
export type ByFamily<Settings> = Readonly<Record<string, Settings>>;

/** What a sheet is set to for each family of a window; kept for the visit, not in the file. */
export interface FamilySettings<Settings> {
  /** The settings of a window. */
  storeOf(session: Session): Store<ByFamily<Settings>>;
  /** The settings for a family; the usual ones until it has its own. */
  settingsOf(all: ByFamily<Settings>, family: string): Settings;
  /** Changes some settings of a family. */
  change(session: Session, family: string, change: Partial<Settings>): void;
}

/**
 * The settings of one sheet.
 *
 * @param usual what a family begins with.
 * @check tests/unit/app/family-settings.test.ts
 */
export function makeFamilySettings<Settings extends object>(usual: Settings): FamilySettings<Settings> {
  const stores = new WeakMap<Session, Store<ByFamily<Settings>>>();
  const storeOf = (session: Session) => {
    const known = stores.get(session) ?? makeStore<ByFamily<Settings>>({});
    stores.set(session, known);
    return known;
  };
  const settingsOf = (all: ByFamily<Settings>, family: string) => (Object.hasOwn(all, family) ? all[family] : usual);
  return {
    storeOf,
    settingsOf,
    change(session, family, change) {
      const store = storeOf(session);
      store.setState({ [family]: { ...settingsOf(store.getState(), family), ...change } });
    },
  };
}
