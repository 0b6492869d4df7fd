import { findMaterial, type Material, USE_TORQUE, USUAL_MATERIAL } from '../../../strength/materials.ts';
import type { Session } from '../session.ts';
import { makeStore, type Store } from '../store.ts';

/** What the Strength sheet is set to for one family; kept for the visit, not in the file. */
export interface StrengthSettings {
  readonly materialId: string;
  /** The torque that blades are compared with, newton metres. */
  readonly torqueNm: number;
  /** The blade that the picked one is compared with; null where none is. */
  readonly besideId: string | null;
}

const USUAL: StrengthSettings = { materialId: USUAL_MATERIAL.id, torqueNm: USE_TORQUE.nm, besideId: null };

/** The settings of each family of this visit, by its name. */
export type StrengthByFamily = Readonly<Record<string, StrengthSettings>>;

const stores = new WeakMap<Session, Store<StrengthByFamily>>();

/** The settings of a window. */
export function strengthStateOf(session: Session): Store<StrengthByFamily> {
  const known = stores.get(session) ?? makeStore<StrengthByFamily>({});
  stores.set(session, known);
  return known;
}

/** The settings for a family; the usual ones until it has its own. */
export function strengthSettings(all: StrengthByFamily, family: string): StrengthSettings {
  return all[family] ?? USUAL;
}

/** Changes some settings of a family. */
export function setStrength(session: Session, family: string, change: Partial<StrengthSettings>): void {
  const store = strengthStateOf(session);
  store.setState({ [family]: { ...strengthSettings(store.getState(), family), ...change } });
}

/** The chosen material. */
export function materialOf({ materialId }: StrengthSettings): Material {
  return findMaterial(materialId) ?? USUAL_MATERIAL;
}
