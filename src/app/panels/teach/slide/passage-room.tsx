import { useMemo } from 'react';
import type { WallRoom } from '../../../../teach/wall-grid.ts';
import { ALL_LAYERS, PassagePicture } from '../../tiers/passage/passage-picture.tsx';
import { usePassage } from '../../tiers/passage/use-passage.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from './slide.module.css';
import type { SlideProps } from './slide-text.tsx';

/** The picture is made for a desk; so much larger its smallest type can be read from the last row. */
const ENLARGED = 1.5;

/** What keyways have in common, laid on each other, as large as the slide. */
export function PassageRoom({ family, parts, room, unit }: SlideProps & { room: WallRoom }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const ids = useMemo(() => parts.openings.map(({ id }) => id), [parts.openings]);
  const { found, current, phase, trouble } = usePassage(family, ids);
  if (ids.length === 0) return <p className={styles.rest}>This step shows no keyway.</p>;
  if (phase === 'failed') return <p className={styles.rest}>The common passage could not be found: {trouble}</p>;
  if (!found || !current) return <p className={styles.rest}>The keyways are being laid over each other …</p>;
  const larger = Math.max(ENLARGED, 1.6 * unit);
  return (
    <div className={styles.enlarged} style={{ width: room.width, height: room.height }} data-passage="">
      <div style={{ transform: `scale(${larger})` }}>
        <PassagePicture
          passage={found.output}
          openings={parts.openings}
          lit={null}
          layers={ALL_LAYERS}
          units={units}
          width={Math.floor(room.width / larger)}
          height={Math.floor(room.height / larger)}
          label="Keyways laid over each other, their common passage lit"
        />
      </div>
    </div>
  );
}
