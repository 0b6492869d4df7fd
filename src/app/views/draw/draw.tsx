import { useState } from 'react';
import type { Family } from '../../../family/family.ts';
import { EmptyNotice } from '../../panels/empty-notice.tsx';
import { useSession, useStore } from '../../panels/use-store.ts';
import { editedProfile } from '../../state/selection-state.ts';
import styles from './draw.module.css';
import { DrawDrawing } from './draw-drawing.tsx';
import { DrawFitStrip } from './draw-fit-strip.tsx';
import { DrawPenBar } from './draw-pen-bar.tsx';

/** One outline, edited: what it goes into, its sheet, its keys. */
export function Draw({ family }: { family: Family }) {
  const { selection, draw } = useSession();
  const pen = useStore(draw, (s) => s.tool === 'pen');
  const [told, tell] = useState('');
  const profile = editedProfile(
    family,
    useStore(selection, (s) => s),
  );
  if (!profile) return <EmptyNotice title="Nothing to draw" what="Pick a section in the tray." />;
  return (
    <div className={styles.draw}>
      <header className={styles.head}>
        {/* The pen's bar lies over it, so that the sheet stands still when the pen is taken. */}
        <div className={styles.heading} data-hidden={pen}>
          <h1 className={styles.name}>{profile.name}</h1>
          <DrawFitStrip family={family} profile={profile} />
        </div>
        {pen && <DrawPenBar tell={tell} />}
      </header>
      <DrawDrawing family={family} profile={profile} told={told} tell={tell} />
    </div>
  );
}
