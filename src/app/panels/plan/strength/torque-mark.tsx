import type { Verdict } from '../../../../fit/fit.ts';
import type { TorqueVerdict } from '../../../../strength/torque-limits.ts';
import { VerdictMark } from '../../verdict-mark.tsx';

const AS: Readonly<Record<TorqueVerdict, Verdict>> = {
  elastic: 'enters',
  'part-plastic': 'tight',
  'too-much': 'blocked',
};

/** How a blade takes a torque, by the silhouettes that all verdicts have: open, half and full. */
export function TorqueMark({ verdict, size }: { verdict: TorqueVerdict | null; size: number }) {
  return <VerdictMark verdict={verdict && AS[verdict]} size={size} />;
}
