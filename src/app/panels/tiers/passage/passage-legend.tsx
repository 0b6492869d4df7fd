import type { PassageLayers } from '../../../state/tiers/passage-state.ts';
import { passageStateOf } from '../../../state/tiers/passage-state.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './passage-legend.module.css';

const LAYERS: readonly (readonly [keyof PassageLayers, string, string])[] = [
  ['sections', 'Keyways', 'The chosen keyways, laid on each other: the darker, the more of them are open'],
  ['common', 'Shared by all', 'The part that lies in every chosen keyway: dark, with stripes'],
  ['blank', 'Widest blank', 'What passes them all with the running clearance'],
  ['loss', 'Given up', 'What would pass the keyway that is lit but not all of them: the blank gives it up'],
];

/** The layers of the picture with their signs: legend and switches in one. */
export function PassageLegend() {
  const store = passageStateOf(useSession());
  const layers = useStore(store, (s) => s.layers);
  return (
    <fieldset className={`bare ${styles.legend}`} aria-label="Layers">
      {LAYERS.map(([layer, label, title]) => (
        <label key={layer} className={styles.layer} title={title}>
          <input
            type="checkbox"
            checked={layers[layer]}
            onChange={(event) => store.setState({ layers: { ...layers, [layer]: event.target.checked } })}
          />
          <Sign layer={layer} />
          {label}
        </label>
      ))}
    </fieldset>
  );
}

function Sign({ layer }: { layer: keyof PassageLayers }) {
  return (
    <svg className={styles.sign} data-layer={layer} width="30" height="20" viewBox="0 0 30 20" aria-hidden="true">
      {layer === 'sections' && <path d="M2 2h16v16h-16zM12 2h16v16h-16z" />}
      {layer === 'common' && (
        <>
          <rect x="2" y="2" width="26" height="16" />
          <path d="M4 17L17 3M13 17L26 3" />
        </>
      )}
      {layer === 'blank' && <path d="M3 17V8l4-5h20v5l-5 2v2l5 2v3z" />}
      {layer === 'loss' && (
        <>
          <rect x="2" y="2" width="26" height="16" />
          <path d="M4 17L17 3M13 17L26 3" />
        </>
      )}
    </svg>
  );
}
