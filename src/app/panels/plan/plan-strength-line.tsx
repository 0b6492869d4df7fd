import { useEffect, useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Profile } from '../../../profile/profile.ts';
import { examiningOf } from '../../state/plan/examining-strength.ts';
import { type PlanStrength, planStrength } from '../../state/plan/plan-strength.ts';
import { sectionsLookOf } from '../../state/plan/sections-state.ts';
import { materialOf } from '../../state/plan/strength-state.ts';
import { limitText, materialText } from '../../state/plan/strength-words.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './sections-report.module.css';
import type { FoundSections } from './use-sections.ts';
import { useStrengthSettings } from './use-strength.ts';

const NO_BLANKS: readonly Profile[] = [];

interface PlanStrengthLineProps {
  readonly family: Family;
  readonly found: FoundSections;
}

/** The blank of the plan that yields first in torsion, in the material of the Strength sheet; how far that is known. */
export function PlanStrengthLine({ family, found }: PlanStrengthLineProps) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const material = materialOf(useStrengthSettings(family));
  const { limits, done, weakest } = usePlanStrength(family, found.drawn?.blanks ?? NO_BLANKS);
  const limit = limits[weakest];
  return (
    <div className={styles.line} data-plan-strength={limit ? 'known' : 'examining'}>
      <b>Weakest in torsion</b>
      <span>
        {limit
          ? `yields at ${limitText(limit.yieldNm, units)} in ${materialText(material)}: ${found.blanks[weakest]?.name ?? ''}`
          : `${done} of ${limits.length} blanks examined …`}
      </span>
      {!limit && <progress max={Math.max(1, limits.length)} value={done} aria-label="Blanks examined" />}
      <button
        type="button"
        className="key"
        title="Show the blank that yields first in the picture beside"
        disabled={weakest < 0}
        onClick={() => sectionsLookOf(session).setState({ blank: weakest })}
      >
        Show
      </button>
    </div>
  );
}

/** Has these blanks examined while the component is there. */
export function usePlanStrength(family: Family, blanks: readonly Profile[]): PlanStrength {
  const examining = examiningOf(useSession());
  const known = useStore(examining.store, (s) => s.known);
  const material = materialOf(useStrengthSettings(family));
  useEffect(() => {
    examining.follow(blanks, null);
    return () => examining.follow([], null);
  }, [examining, blanks]);
  return useMemo(() => planStrength(blanks, { known }, material), [blanks, known, material]);
}
