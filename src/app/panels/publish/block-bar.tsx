import { useState } from 'react';
import type { Family } from '../../../family/family.ts';
import { isOverBed } from '../../../print3d/check-prints.ts';
import type { DisplaySet } from '../../../print3d/display-set.ts';
import type { BlockPart } from '../../state/publish/block-state.ts';
import { HangingPanel } from '../hanging-panel.tsx';
import { useSession } from '../use-store.ts';
import styles from './block-bar.module.css';
import { BedQuestion } from './block-bed-question.tsx';
import { type BlockFile, saveBlock, saveBlockPicture } from './block-saving.ts';
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
  const [asked, setAsked] = useState<BlockFile | null>(null);
  const save = (file: BlockFile) => {
    if (set?.parts.some(({ size }) => isOverBed(size, set.bed))) setAsked(file);
    else if (set) void saveBlock(session, family, set, file);
  };
  const several = set !== null && set.beds > 1;
  return (
    <div className={styles.saving}>
      {several ? (
        <SaveMenu form="3mf" title={TITLES['3mf']} choices={MODEL_CHOICES} save={save} />
      ) : (
        <button
          type="button"
          className="key"
          disabled={!set}
          title={TITLES['3mf']}
          onClick={() => save({ as: '3mf', each: 'set' })}
        >
          Save 3MF
        </button>
      )}
      <SaveMenu
        form="stl"
        title={TITLES.stl}
        choices={several ? SHAPE_CHOICES : SHAPE_CHOICES.filter(({ each }) => each !== 'bed')}
        save={set ? save : null}
      />
      <button
        type="button"
        className="key"
        disabled={!set}
        title="The picture as it stands, 1920 × 1200 pixels"
        onClick={() => void saveBlockPicture(session, family, still)}
      >
        Save picture
      </button>
      {asked && set && (
        <BedQuestion
          {...{ family, set }}
          saveAllTheSame={() => {
            setAsked(null);
            void saveBlock(session, family, set, asked);
          }}
          onClose={() => setAsked(null)}
        />
      )}
    </div>
  );
}

const TITLES = {
  '3mf': 'All parts with their names and colours, in millimetres',
  stl: 'Shapes only, without names, colours and units',
} as const;

interface SaveChoice {
  readonly each: BlockFile['each'];
  readonly label: string;
  readonly words: string;
}

const BY_BED: SaveChoice = {
  each: 'bed',
  label: 'One file for each bed',
  words: 'To be printed one after the other; in an archive (ZIP).',
};

const MODEL_CHOICES: readonly SaveChoice[] = [
  { each: 'set', label: 'One file of all beds', words: 'The beds side by side.' },
  BY_BED,
];

const SHAPE_CHOICES: readonly SaveChoice[] = [
  { each: 'set', label: 'One file of all parts', words: 'Laid out as they are printed, beds side by side.' },
  BY_BED,
  { each: 'part', label: 'One file for each part', words: 'In an archive (ZIP).' },
];

interface SaveMenuProps {
  readonly form: BlockFile['as'];
  readonly title: string;
  readonly choices: readonly SaveChoice[];
  /** Null while there is nothing to save. */
  readonly save: ((file: BlockFile) => void) | null;
}

/** A key with what each file may hold. */
function SaveMenu({ form, title, choices, save }: SaveMenuProps) {
  const label = `Save ${form.toUpperCase()}`;
  if (!save)
    return (
      <button type="button" className="key" disabled title={title}>
        {label}
      </button>
    );
  return (
    <HangingPanel label={`${label} ▾`} title={title}>
      {(close) => (
        <div className={styles.choices}>
          {choices.map(({ each, label, words }) => (
            <button
              key={each}
              type="button"
              className={styles.choice}
              onClick={() => {
                close();
                save({ as: form, each });
              }}
            >
              <b>{label}</b>
              <span>{words}</span>
            </button>
          ))}
        </div>
      )}
    </HangingPanel>
  );
}
