import type { Profile } from '../../../profile/profile.ts';
import { pinchWords } from '../../state/gauge/gauge-words.ts';
import { pinchInHand } from '../../state/gauge/strip-in-hand.ts';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import type { ShownGauge } from './use-gauge.ts';

/** The thickest strip of the picked keyway in words, and the key to its picture. */
export function PinchReading({ gauge, opening }: { gauge: ShownGauge; opening: Profile }) {
  const units = useStore(useSession().settings, (s) => s.units);
  const { height } = gauge;
  const curve = gauge.curves.get(opening.id);
  const pinch = curve ? pinchInHand(curve, opening, height) : null;
  return (
    <section className={readings.part} aria-labelledby="reading-pinch" data-pinch-words={opening.id}>
      <h2 id="reading-pinch" className={readings.title}>
        {opening.name}
      </h2>
      <p>{curve ? pinchWords(opening, height, pinch, units) : 'Not gauged yet …'}</p>
      {pinch && (
        <p className={readings.note}>
          In the picture: thick lines where the plug touches the strip, arrows where it is pinched.
        </p>
      )}
    </section>
  );
}
