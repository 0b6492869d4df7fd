import { makeFamilySettings, type SettingsPlace } from '../family-settings.ts';
import { oneOf, yesOrNo } from '../kept-store.ts';
import { listenTo, type Store } from '../store.ts';
import { type GaugeLook, type GaugeState, MOST_TILT_DEG, NOTHING_GAUGED, TIGHT_BY } from './gauge-state.ts';

/** What of the Gauge view was set for a family, and is still wished for when it is opened again. */
type KeptGauge = Pick<GaugeLook, 'height' | 'thickness' | 'tiltLimit' | 'withBlanks' | 'measure'>;

const USUAL: KeptGauge = keptOf(NOTHING_GAUGED);

const { storeOf, settingsOf, change } = makeFamilySettings<KeptGauge>('sectionary-gauge', USUAL, (kept) => ({
  height: lengthOf(kept.height),
  thickness: lengthOf(kept.thickness),
  tiltLimit: tiltOf(kept.tiltLimit),
  withBlanks: yesOrNo(kept.withBlanks) ?? USUAL.withBlanks,
  measure: oneOf(TIGHT_BY)(kept.measure) ?? USUAL.measure,
}));

/**
 * Lets the Gauge view begin as it was left with each family on this computer, and keeps what is set there: the strip in
 * hand, the tilt, what is ranked by.
 *
 * @check tests/unit/app/kept-gauge.test.ts
 */
export function keepGauge(place: SettingsPlace & { readonly gauge: Store<GaugeState> }): void {
  const { documents, gauge } = place;
  const name = () => documents.getState().document?.family.name;
  listenTo(
    documents,
    (s) => s.opened,
    () => gauge.setState({ ...NOTHING_GAUGED, ...settingsOf(storeOf(place).getState(), name() ?? '') }),
  );
  gauge.subscribe((now, before) => {
    const family = name();
    if (family === undefined || KEPT.every((field) => now[field] === before[field])) return;
    const known = settingsOf(storeOf(place).getState(), family);
    if (KEPT.some((field) => now[field] !== known[field])) change(place, family, keptOf(now));
  });
}

const KEPT = ['height', 'thickness', 'tiltLimit', 'withBlanks', 'measure'] as const;

function keptOf({ height, thickness, tiltLimit, withBlanks, measure }: KeptGauge): KeptGauge {
  return { height, thickness, tiltLimit, withBlanks, measure };
}

/** A length that a field may hold, nanometres: above 0 and below a metre. */
function lengthOf(kept: unknown): number | null {
  return typeof kept === 'number' && kept > 0 && kept < 1e9 ? kept : null;
}

/** Radians: upright, or no more than the field takes. */
function tiltOf(kept: unknown): number {
  return typeof kept === 'number' && kept > 0 && kept <= (MOST_TILT_DEG * Math.PI) / 180 + 1e-9 ? kept : 0;
}
