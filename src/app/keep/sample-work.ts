import { diffFiles } from '../../interchange/json/file-edit.ts';
import { SAMPLE_FAMILIES, type SampleFamily } from '../state/sample-families.ts';
import type { WorkState } from './kept-work.ts';

/** The family that came with the app which this is, unchanged and without a history; null where it is another. */
export function untouchedSample({ document, past, future }: WorkState): SampleFamily | null {
  if (past.length > 0 || future.length > 0) return null;
  const isIt = ({ text }: SampleFamily) => diffFiles(JSON.parse(text), document.file).length === 0;
  return SAMPLE_FAMILIES.find(isIt) ?? null;
}
