import { NAMED_VIEWS, type TurnedView, type ViewName, zoomView } from '../../canvas/solid/turned-view.ts';
import { FootKey } from '../foot-key.tsx';

const VIEWS: readonly (readonly [ViewName, string, string])[] = [
  ['corner', 'Corner', 'From a corner, all of it (1, Home)'],
  ['front', 'Front', 'From the front (2)'],
  ['top', 'Top', 'From above (3)'],
];

const STEP = 1.25;

interface ViewKeysProps {
  readonly view: TurnedView;
  setView(view: TurnedView): void;
}

/** The keys that turn and enlarge a picture of solids. */
export function ViewKeys({ view, setView }: ViewKeysProps) {
  const is = (name: ViewName) => NAMED_VIEWS[name].turn === view.turn && NAMED_VIEWS[name].lift === view.lift;
  return (
    <>
      <span className="key-row">
        {VIEWS.map(([name, label, title]) => (
          <FootKey key={name} title={title} pressed={is(name)} press={() => setView(NAMED_VIEWS[name])}>
            {label}
          </FootKey>
        ))}
      </span>
      <span className="key-row">
        <FootKey title="Smaller (−)" name="Zoom out" press={() => setView(zoomView(view, 1 / STEP))}>
          −
        </FootKey>
        <FootKey title="Larger (+)" name="Zoom in" press={() => setView(zoomView(view, STEP))}>
          +
        </FootKey>
      </span>
    </>
  );
}
