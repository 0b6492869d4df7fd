import { NAMED_VIEWS, type TurnedView, type ViewName, zoomView } from '../../canvas/solid/turned-view.ts';
import { FootKey } from '../foot-key.tsx';
import styles from './block-sheet.module.css';

const VIEWS: readonly (readonly [ViewName | 'home', string, string])[] = [
  ['home', 'Corner', 'From a corner, all of it (1, Home)'],
  ['front', 'Front', 'From the front (2)'],
  ['top', 'Top', 'From above (3)'],
];

const STEP = 1.25;

interface ViewKeysProps {
  readonly view: TurnedView;
  /** The view that shows all from a corner. */
  readonly home: ViewName;
  setView(view: TurnedView): void;
}

/** The keys that turn and enlarge a picture of solids. */
export function ViewKeys({ view, home, setView }: ViewKeysProps) {
  const is = ({ turn, lift }: TurnedView) => turn === view.turn && lift === view.lift;
  return (
    <span className={styles.viewKeys}>
      <span className="key-row">
        {VIEWS.map(([name, label, title]) => {
          const to = NAMED_VIEWS[name === 'home' ? home : name];
          return (
            <FootKey key={name} title={title} pressed={is(to)} press={() => setView(to)}>
              {label}
            </FootKey>
          );
        })}
      </span>
      <span className="key-row">
        <FootKey title="Smaller (−)" name="Zoom out" press={() => setView(zoomView(view, 1 / STEP))}>
          −
        </FootKey>
        <FootKey title="Larger (+)" name="Zoom in" press={() => setView(zoomView(view, STEP))}>
          +
        </FootKey>
      </span>
    </span>
  );
}
