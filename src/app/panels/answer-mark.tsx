import type { Verdict } from '../../fit/fit.ts';
import type { ThreeWay } from '../../fit/judge-tolerance.ts';
import { PartsMark } from './parts-mark.tsx';
import { VerdictMark } from './verdict-mark.tsx';

/** The mark of a single verdict or of the answer for all parts; a dashed ring while neither is known. */
export function AnswerMark({ mark, size }: { mark: Verdict | ThreeWay | null; size: number }) {
  if (mark === 'always' || mark === 'depends' || mark === 'never') return <PartsMark answer={mark} size={size} />;
  return <VerdictMark verdict={mark} size={size} />;
}
