import type { Family } from '../../../family/family.ts';
import type { DisplaySet } from '../../../print3d/display-set.ts';
import { scaleForBed } from '../../../print3d/scale-for-bed.ts';
import { overBedWords } from '../../state/publish/block-words.ts';
import { ModalSheet } from '../modal-sheet.tsx';
import { useSession, useStore } from '../use-store.ts';
import styles from './block-bar.module.css';
import { useBlockSetup } from './use-block.ts';

interface BedQuestionProps {
  readonly family: Family;
  readonly set: DisplaySet;
  saveAllTheSame(): void;
  onClose(): void;
}

/** Asked before a set is saved that has parts larger than the bed: what to do about it. */
export function BedQuestion({ family, set, saveAllTheSame, onClose }: BedQuestionProps) {
  const { blockSettings, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const setup = useBlockSetup(family);
  const scale = scaleForBed(family, setup);
  const smaller = () => {
    if (scale !== null) blockSettings.setState({ scale });
    onClose();
  };
  return (
    <ModalSheet
      title="Larger than the bed"
      onClose={onClose}
      foot={
        <>
          <button type="button" className="key" onClick={onClose}>
            Cancel
          </button>
          <button type="button" className="key" onClick={saveAllTheSame}>
            Save it all the same
          </button>
          {scale !== null && (
            <button type="button" className="key" data-first="" onClick={smaller}>
              Build it at {scale}:1
            </button>
          )}
        </>
      }
    >
      <div className={styles.question}>
        <ul>
          {overBedWords(set, units).map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
        <p>
          {scale === null
            ? 'No smaller scale brings all parts onto the bed: make walls thinner or letters smaller, take fewer openings in a row, or set the size of a larger bed.'
            : `At ${scale}:1 every part goes on it. The set is built anew, and can then be saved; all other settings stay.`}
        </p>
      </div>
    </ModalSheet>
  );
}
