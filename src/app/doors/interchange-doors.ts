import { exportProfiles } from '../../interchange/export-profiles.ts';
import { mergeFamilies, planMerge } from '../../interchange/json/merge-families.ts';
import { placeLoop } from '../../interchange/place-loop.ts';
import { sniffFormat } from '../../interchange/sniff-format.ts';
import type { InterchangeDoors } from '../state/exchange/interchange-doors.ts';

/** The real operations of import and export; how a drawing is read in another thread is the window's affair. */
export function interchangeDoors(readDrawing: InterchangeDoors['readDrawing']): InterchangeDoors {
  return { sniffFormat, readDrawing, placeLoop, planMerge, mergeFamilies, exportProfiles };
}
