import { makeStore, type Store } from '../store.ts';

/** The sheets of the Gauge view. */
export const GAUGE_SHEETS = ['curves', 'tools', 'tightness'] as const;

/** See {@link GAUGE_SHEETS}. */
export type GaugeSheet = (typeof GAUGE_SHEETS)[number];

/** How the rows of tools are put in order. */
export type ToolOrder =
  | { readonly by: 'family' | 'name' | 'size' | 'count'; readonly down: boolean }
  /** By the spare thickness in one keyway. */
  | { readonly by: 'opening'; readonly openingId: string; readonly down: boolean };

/** Most that a strip may be tilted either way, as in Compare; degrees. */
export const MOST_TILT_DEG = 5;

/** What is asked and looked at; another family begins anew, one that was there before as it was left (`kept-gauge.ts`). */
export interface GaugeLook {
  /** Height of the strip in hand, nanometres; null: the usual one of the family. */
  readonly height: number | null;
  /** Thickness of the strip in hand, nanometres; null where only the thickest is asked for. */
  readonly thickness: number | null;
  /** Radians either way; 0 is upright. */
  readonly tiltLimit: number;
  readonly order: ToolOrder;
  /** Whether blanks stand among the tools. */
  readonly withBlanks: boolean;
  /** Ids of the keyways to be covered; null: all of them. */
  readonly ticked: readonly string[] | null;
  /** What the keyways are ranked by. */
  readonly measure: TightBy;
  /** The keyway that is pointed at; null for none. */
  readonly pointed: string | null;
}

/** What tightness can be measured by: the thickest strip of the height in hand, the mean over all heights, the line of sight. */
export const TIGHT_BY = ['height', 'mean', 'sight'] as const;

/** See {@link TIGHT_BY}. */
export type TightBy = (typeof TIGHT_BY)[number];

/** What the Gauge view shows. */
export interface GaugeState extends GaugeLook {
  readonly sheet: GaugeSheet;
}

/** What a family begins with. */
export const NOTHING_GAUGED: GaugeLook = {
  height: null,
  thickness: null,
  tiltLimit: 0,
  order: { by: 'family', down: false },
  withBlanks: false,
  ticked: null,
  measure: 'height',
  pointed: null,
};

/** A store that shows the first sheet. */
export function makeGaugeStore(): Store<GaugeState> {
  return makeStore<GaugeState>({ sheet: 'curves', ...NOTHING_GAUGED });
}
