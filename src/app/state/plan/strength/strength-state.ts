import { findMaterial, type Material, USE_TORQUE, USUAL_MATERIAL } from '../../../../strength/materials.ts';
import { makeFamilySettings } from '../../family-settings.ts';

/** What the Strength sheet is set to for one family; kept in this browser, not in the file. */
export interface StrengthSettings {
  readonly materialId: string;
  /** The torque that blades are compared with, newton metres. */
  readonly torqueNm: number;
  /** The blade that the picked one is compared with; null where none is. */
  readonly besideId: string | null;
}

/** Most torque that blades can be compared with, newton metres. */
export const MOST_TORQUE_NM = 100;

const USUAL: StrengthSettings = { materialId: USUAL_MATERIAL.id, torqueNm: USE_TORQUE.nm, besideId: null };

/** The settings of the sheet, family by family. */
export const {
  storeOf: strengthStateOf,
  settingsOf: strengthSettings,
  change: setStrength,
} = makeFamilySettings<StrengthSettings>('sectionary-strength', USUAL, ({ materialId, torqueNm, besideId }) => ({
  materialId: typeof materialId === 'string' && findMaterial(materialId) ? materialId : USUAL.materialId,
  torqueNm: isTorque(torqueNm) ? torqueNm : USUAL.torqueNm,
  besideId: typeof besideId === 'string' ? besideId : null,
}));

/** The chosen material. */
export function materialOf({ materialId }: StrengthSettings): Material {
  return findMaterial(materialId) ?? USUAL_MATERIAL;
}

/** Whether it is a torque that blades can be compared with, newton metres: above 0, and no more than the field takes. */
export function isTorque(nm: unknown): nm is number {
  return typeof nm === 'number' && nm > 0 && nm <= MOST_TORQUE_NM;
}
