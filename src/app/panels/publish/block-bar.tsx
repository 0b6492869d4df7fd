import type { Family } from '../../../family/family.ts';
import type { DisplaySet } from '../../../print3d/display-set.ts';
import type { BlockPart } from '../../state/publish/block-state.ts';
import { HangingPanel } from '../hanging-panel.tsx';
import { useSession } from '../use-store.ts';
import styles from './block-bar.module.css';
import { type BlockFile, saveBlock } from './block-saving.ts';
import { useBlockLook } from './use-block.ts';

const PARTS: readonly (readonly [BlockPart, string, string])[] = [
  ['settings', 'Settings', 'What is in the set and how it is made'],
  ['set', 'The set', 'All parts on the bed, as they will be printed'],
  ['try', 'Try it', 'A coupon slides into an opening and stops where it must'],
];

interface BlockBarProps {
  readonly family: Family;
  readonly set: DisplaySet | null;
  /** What is shown now. */
  readonly part: BlockPart;
  /** Whether the settings stand beside the picture, so that they need no key. */
  readonly isWide: boolean;
  /** The picture as PNG; null where there is none. */
  still(): Promise<Blob | null>;
}

/** What is shown, and what can be saved. */
export function BlockBar({ family, set, part, isWide, still }: BlockBarProps) {
  const [, look] = useBlockLook();
  const shown = isWide ? PARTS.filter(([name]) => name !== 'settings') : PARTS;
  return (
    <div className={styles.bar}>
      <fieldset className="key-row bare" aria-label="What is shown of the display block">
        {shown.map(([name, label, title]) => (
          <button
            key={name}
            type="button"
            className="key"
            title={title}
            aria-pressed={name === part}
            onClick={() => look.setState({ part: name })}
          >
            {label}
          </button>
        ))}
      </fieldset>
      <SaveKeys family={family} set={set} still={still} />
    </div>
  );
}

function SaveKeys({ family, set, still }: Pick<BlockBarProps, 'family' | 'set' | 'still'>) {
  const session = useSession();
  const save = (file: BlockFile) => {
    if (set) void saveBlock(session, family, set, file, still);
  };
  return (
    <div className={styles.saving}>
      <button
        type="button"
        className="key"
        disabled={!set}
        title="All parts with their names and colours, in millimetres"
        onClick={() => save('3mf')}
      >
        Save 3MF
      </button>
      <HangingPanel label="Save STL" title="Shapes only, without names, colours and units">
        {(close) => (
          <div className={styles.choices}>
            {STL_CHOICES.map(([file, label, words]) => (
              <button
                key={file}
                type="button"
                className={styles.choice}
                disabled={!set}
                onClick={() => {
                  close();
                  save(file);
                }}
              >
                <b>{label}</b>
                <span>{words}</span>
              </button>
            ))}
          </div>
        )}
      </HangingPanel>
      <button
        type="button"
        className="key"
        disabled={!set}
        title="The picture as it stands, 1920 × 1200 pixels"
        onClick={() => save('png')}
      >
        Save picture
      </button>
    </div>
  );
}

const STL_CHOICES: readonly (readonly [BlockFile, string, string])[] = [
  ['stl', 'One file of all parts', 'Laid out on the bed as in the picture.'],
  ['stl-parts', 'One file for each part', 'Packed into an archive (ZIP).'],
];
