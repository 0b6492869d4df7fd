import { settersAt } from '../../../gauge/family-limit.ts';
import type { Profile } from '../../../profile/profile.ts';
import { askedHeightText, thicknessText } from '../../state/gauge/gauge-lengths.ts';
import { pinchWords, shortName } from '../../state/gauge/gauge-words.ts';
import { pinchInHand } from '../../state/gauge/strip-in-hand.ts';
import { useSize } from '../use-size.ts';
import { useSession, useStore } from '../use-store.ts';
import styles from './pinch-panel.module.css';
import { PinchPicture } from './pinch-picture.tsx';
import type { ShownGauge } from './use-gauge.ts';

/** The picked keyway with the thickest strip of the height in hand, and where it is held. */
export function PinchPanel({ gauge }: { gauge: ShownGauge }) {
  const { picked } = gauge;
  if (!picked) return null;
  return <Pinch gauge={gauge} opening={picked} />;
}

function Pinch({ gauge, opening }: { gauge: ShownGauge; opening: Profile }) {
  const units = useStore(useSession().settings, (s) => s.units);
  const [frame, size] = useSize<HTMLDivElement>();
  const curve = gauge.curves.get(opening.id);
  const { height } = gauge;
  const reach = { width: gauge.thickest, height: gauge.tallest };
  const pinch = curve ? pinchInHand(curve, opening, height) : null;
  const words = curve ? pinchWords(opening, height, pinch, units) : `${opening.name} is not gauged yet.`;
  return (
    <section className={styles.panel} aria-labelledby="pinch-title" data-pinch={opening.id}>
      <h2 id="pinch-title" className={styles.title}>
        {opening.name}
      </h2>
      <div ref={frame} className={styles.frame}>
        {size && size.width > 0 && size.height > 0 && (
          <PinchPicture
            opening={opening}
            reach={reach}
            pinch={pinch}
            width={size.width}
            height={size.height}
            heightText={askedHeightText(height, units)}
            thicknessText={pinch ? thicknessText(pinch.thickness, units) : ''}
            label={words}
          />
        )}
      </div>
      <SetterKey gauge={gauge} opening={opening} />
    </section>
  );
}

/** Leads to the keyway that sets the limit, where another one is picked. */
function SetterKey({ gauge, opening }: { gauge: ShownGauge; opening: Profile }) {
  const { selection } = useSession();
  const { curves, limit, height, openings } = gauge;
  const ids = limit && openings.length > 1 ? settersAt([...curves.values()], height, limit) : [];
  const setter = ids.includes(opening.id) ? undefined : openings.find(({ id }) => id === ids[0]);
  if (!setter) return null;
  return (
    <button
      type="button"
      className={`key ${styles.setter}`}
      onClick={() => selection.setState({ openingId: setter.id, part: 'opening' })}
    >
      Show {shortName(setter)}, {ids.length === 1 ? 'which sets the limit' : `one of ${ids.length} that set the limit`}
    </button>
  );
}
