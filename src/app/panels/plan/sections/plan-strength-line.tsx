import { useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { type PlanStrength, planStrength } from '../../../state/plan/sections/plan-strength.ts';
import { sectionsLookOf } from '../../../state/plan/sections/sections-state.ts';
import { examiningOf } from '../../../state/plan/strength/examining-strength.ts';
import { materialOf } from '../../../state/plan/strength/strength-state.ts';
import { limitText, materialText } from '../../../state/plan/strength/strength-words.ts';
import { useSession, useStore } from '../../use-store.ts';
import { useExamined, useStrengthSettings } from '../strength/use-strength.ts';
import styles from './sections-report.module.css';
import type { FoundSections } from './use-sections.ts';

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
  const strength = usePlanStrength(family, found.drawn?.blanks ?? NO_BLANKS);
  const { limits, troubles, done, weakest } = strength;
  const phase = phaseOf(strength);
  const limit = limits[weakest];
  const nameOf = (blank: number) => found.blanks[blank]?.name ?? '';
  const failed = troubles.findIndex((trouble) => trouble !== '');
  const examined = `${done} of ${limits.length} blanks examined`;
  const words = {
    known: limit && `yields at ${limitText(limit.yieldNm, units)} in ${materialText(material)}: ${nameOf(weakest)}`,
    examining: `${examined} …`,
    failed: `${examined}; ${nameOf(failed)} could not be: ${troubles[failed]}`,
  };
  return (
    <div className={styles.line} data-plan-strength={phase}>
      <b>Weakest in torsion</b>
      <span role={phase === 'failed' ? 'alert' : undefined}>{words[phase]}</span>
      {phase === 'examining' && <progress max={Math.max(1, limits.length)} value={done} aria-label="Blanks examined" />}
      {phase === 'failed' ? (
        <button type="button" className="key" onClick={() => examiningOf(session).again()}>
          Try again
        </button>
      ) : (
        <button
          type="button"
          className="key"
          title="Show the blank that yields first in the picture beside"
          disabled={weakest < 0}
          onClick={() => sectionsLookOf(session).setState({ blank: weakest })}
        >
          Show
        </button>
      )}
    </div>
  );
}

function phaseOf({ limits, troubles, weakest }: PlanStrength): 'known' | 'failed' | 'examining' {
  if (limits[weakest]) return 'known';
  const open = limits.some((limit, i) => !limit && troubles[i] === '');
  return open || limits.length === 0 ? 'examining' : 'failed';
}

/** Has these blanks examined while the component is there. */
export function usePlanStrength(family: Family, blanks: readonly Profile[]): PlanStrength {
  const { store } = useExamined(blanks, null);
  const known = useStore(store, (s) => s.known);
  const failed = useStore(store, (s) => s.failed);
  const material = materialOf(useStrengthSettings(family));
  return useMemo(() => planStrength(blanks, { known, failed }, material), [blanks, known, failed, material]);
}
