import { useEffect, useRef } from 'react';
import type { Family } from '../../../family/family.ts';
import type { SolidScene } from '../../canvas/solid/solid-scene.ts';
import { EmptyNotice } from '../../panels/empty-notice.tsx';
import { JobProgress } from '../../panels/job-progress.tsx';
import { BlockBar } from '../../panels/publish/block-bar.tsx';
import { BlockSettingsForm } from '../../panels/publish/block-settings-form.tsx';
import { hasSolids, useAskedBlock, useBlockLook } from '../../panels/publish/use-block.ts';
import { useSize } from '../../panels/use-size.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { blockMakingOf } from '../../state/publish/block-building.ts';
import { setWords } from '../../state/publish/block-words.ts';
import styles from './block-sheet.module.css';
import { SetStage } from './block-sheet-set.tsx';
import type { StillOf } from './block-sheet-stage.tsx';
import { TryStage } from './block-sheet-try.tsx';

/** From so many pixels on the settings stand beside the picture. */
const WIDE = 820;
/** What a still picture is saved in. */
const STILL = [1920, 1200] as const;

/** Openings and blanks as solids to print: settings, the set on its bed, a coupon tried in the block, and the files. */
export function BlockSheet({ family }: { family: Family }) {
  if (hasSolids(family)) return <BlockDesk family={family} />;
  return (
    <EmptyNotice
      title="Nothing to print yet"
      what="A display block is made of the openings and blanks of a family: draw a section, or open another family."
    />
  );
}

function BlockDesk({ family }: { family: Family }) {
  const { building, set, seen } = useAskedBlock(family);
  const job = useStore(building.store, (s) => s);
  const [look] = useBlockLook();
  const making = blockMakingOf(useSession());
  const file = useStore(making.store, (s) => s);
  // What was saved was another set.
  // biome-ignore lint/correctness/useExhaustiveDependencies: another set is what takes the words away
  useEffect(() => making.forget(), [making, set]);
  const [body, size] = useSize<HTMLDivElement>();
  const scene = useRef<SolidScene | null>(null);
  const stillOf = useRef<StillOf | null>(null);
  const isWide = size !== null && size.width >= WIDE;
  const part = isWide && look.part === 'settings' ? 'set' : look.part;
  const still = async () =>
    scene.current && stillOf.current ? stillOf.current(scene.current, ...STILL) : Promise.resolve(null);
  const shown = { family, set: seen, scene, stillOf };
  return (
    <div className={styles.sheet} data-block={set || job.phase !== 'found' ? job.phase : 'finding'}>
      <BlockBar family={family} set={set} part={part} isWide={isWide} still={still} />
      <div className={styles.told}>
        <p role="status" className={styles.status}>
          {job.phase === 'finding' ? 'Building the set …' : file.said || (set ? setWords(set) : '')}
        </p>
        <JobProgress
          id="block-progress"
          label="Making solids"
          job={job}
          keys={building}
          again="Build it again"
          stopped="The building was stopped."
          failed="The set could not be built"
        />
        <JobProgress
          id="block-file-progress"
          label={`Writing the ${file.what}`}
          job={file}
          keys={making}
          again="Try again"
          stopped={`Stopped: no ${file.what} was saved.`}
          failed={`No ${file.what} was saved`}
        />
      </div>
      <div ref={body} className={styles.body} data-wide={isWide || undefined}>
        {(isWide || part === 'settings') && (
          <div className={styles.settings}>
            <BlockSettingsForm family={family} />
          </div>
        )}
        {size && part === 'set' && <SetStage {...shown} />}
        {size && part === 'try' && <TryStage {...shown} />}
      </div>
    </div>
  );
}
