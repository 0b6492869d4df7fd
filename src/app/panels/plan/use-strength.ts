import { useEffect, useMemo } from 'react';
import { entrantsOf, type Family } from '../../../family/family.ts';
import { type ExaminingStrength, examiningOf } from '../../state/plan/examining-strength.ts';
import { type StrengthRow, strengthRows } from '../../state/plan/strength-rows.ts';
import {
  materialOf,
  type StrengthSettings,
  strengthSettings,
  strengthStateOf,
} from '../../state/plan/strength-state.ts';
import { useSession, useStore } from '../use-store.ts';

/** The settings of the Strength sheet for a family. */
export function useStrengthSettings(family: Family): StrengthSettings {
  return strengthSettings(
    useStore(strengthStateOf(useSession()), (all) => all),
    family.name,
  );
}

/** Has the blades of a family examined as long as the component is there, the picked one first. */
export function useExamining(family: Family): ExaminingStrength {
  const session = useSession();
  const examining = examiningOf(session);
  const picked = useStore(session.selection, (s) => s.entrantId);
  useEffect(() => {
    const blades = entrantsOf(family);
    examining.follow(blades, blades.find(({ id }) => id === picked) ?? null);
  }, [examining, family, picked]);
  useEffect(() => () => examining.follow([], null), [examining]);
  return examining;
}

/** The blades of a family with what is known of each in the chosen material. */
export function useStrengthRows(family: Family): readonly StrengthRow[] {
  const session = useSession();
  const known = useStore(examiningOf(session).store, (s) => s.known);
  const failed = useStore(examiningOf(session).store, (s) => s.failed);
  const settings = useStrengthSettings(family);
  const { torqueNm } = settings;
  const material = materialOf(settings);
  return useMemo(
    () => strengthRows(family, { known, failed }, material, torqueNm),
    [family, known, failed, material, torqueNm],
  );
}

/** The row of the picked blade; the first one where none is picked. */
export function usePickedRow(rows: readonly StrengthRow[]): StrengthRow | null {
  const picked = useStore(useSession().selection, (s) => s.entrantId);
  return rows.find(({ profile }) => profile.id === picked) ?? rows[0] ?? null;
}
