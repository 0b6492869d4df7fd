import { makeStore, type Store } from '../store.ts';

/** The sheets of the Gauge view. */
export const GAUGE_SHEETS = ['curves', 'tools', 'tightness'] as const;

/** See {@link GAUGE_SHEETS}. */
export type GaugeSheet = (typeof GAUGE_SHEETS)[number];

/** What the Gauge view shows. */
export interface GaugeState {
  readonly sheet: GaugeSheet;
}

/** A store that shows the first sheet. */
export function makeGaugeStore(): Store<GaugeState> {
  return makeStore<GaugeState>({ sheet: 'curves' });
}
