import { toggleCorners } from '../../panels/compare/corner-editing.ts';
import { cornersOf } from '../../panels/compare/corner-state.ts';
import type { ShownPair } from '../../panels/use-pair.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { snapToBest } from '../../state/hand-state.ts';
import { FootKey } from '../foot-key.tsx';
import styles from './compare.module.css';
import { standInKeyway } from './stand-in-keyway.ts';
import type { Push } from './use-compare-push.ts';

const ZOOM_STEP = 1.5;

interface CompareFootProps {
  readonly pair: ShownPair;
  readonly push: Push;
  zoom(factor: number): void;
  fit(): void;
}

/** The keys under Compare's drawing: whatever the pointer or a key of the keyboard does there. */
export function CompareFoot({ pair, push, zoom, fit }: CompareFootProps) {
  const session = useSession();
  const on = useStore(cornersOf(session), (s) => s.on);
  return (
    <div className={styles.foot}>
      <FootKey title="Lay the blank where it fits best (Home)" press={() => snapToBest(session.hand)}>
        Best placement
      </FootKey>
      <FootKey
        title="Stand the blank where a keyway of its own section would hold it: in the middle, with the spare height halved, so that what is in the way shows its own depth (M)"
        press={() => standInKeyway(session, pair)}
      >
        Stand centred
      </FootKey>
      <FootKey title="Push the blank in endwise, as it lies (I)" press={() => push.end() || push.begin()}>
        {push.pushed ? 'Take it out' : 'Push it in'}
      </FootKey>
      <FootKey title="Move the corners of the outlines (C)" pressed={on} press={() => toggleCorners(session)}>
        Move corners
      </FootKey>
      <span className="key-row">
        <FootKey title="Smaller (−)" name="Zoom out" press={() => zoom(1 / ZOOM_STEP)}>
          −
        </FootKey>
        <FootKey
          title="Larger (+); a close view shows the tolerance bands"
          name="Zoom in"
          press={() => zoom(ZOOM_STEP)}
        >
          +
        </FootKey>
        <FootKey title="The whole plug (0)" press={fit}>
          Whole plug
        </FootKey>
      </span>
      <p className={styles.hint}>
        {/* Of one length, or the foot would grow and the drawing be fitted anew as the corners come. */}
        {on ? 'Drag a corner, the blank or the sheet.' : 'Drag the blank, or beside it the sheet.'}
      </p>
    </div>
  );
}
