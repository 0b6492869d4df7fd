import { useMemo, useState } from 'react';
import type { DisplaySet } from '../../../print3d/display-set.ts';
import { NAMED_VIEWS, type TurnedView } from '../../canvas/solid/turned-view.ts';
import { BlockParts } from '../../panels/publish/block-parts.tsx';
import { setPicture } from '../../panels/publish/block-set-picture.ts';
import { useBlockLook } from '../../panels/publish/use-block.ts';
import { pickPart } from '../../state/publish/block-state.ts';
import { FootKey } from '../foot-key.tsx';
import styles from './block-sheet.module.css';
import { NoSolids } from './block-sheet-no-solids.tsx';
import { BlockStage, type StageProps, useStill } from './block-sheet-stage.tsx';

/** All parts on their beds. */
export function SetStage({ set, ...rest }: StageProps) {
  return set ? (
    <ShownSet set={set} {...rest} />
  ) : (
    <p className={styles.waiting}>The set is shown here once it is built.</p>
  );
}

function ShownSet({ set, scene, stillOf }: StageProps & { readonly set: DisplaySet }) {
  const [{ picked, bed }, look] = useBlockLook();
  const only = bed !== null && bed < set.beds && set.beds > 1 ? bed : null;
  const picture = useMemo(() => setPicture(set, picked, only), [set, picked, only]);
  const [view, setView] = useState<TurnedView>(NAMED_VIEWS.corner);
  useStill(stillOf, picture, view);
  const walk = (steps: number) => {
    const at = set.parts.findIndex(({ name }) => name === picked);
    const next = set.parts[(Math.max(at, steps > 0 ? -1 : 0) + steps + set.parts.length) % set.parts.length];
    if (next) look.setState(pickPart(next, only));
    return true;
  };
  const onKey = (key: string) => {
    if (key === 'n' || key === 'PageDown') return walk(1);
    if (key === 'p' || key === 'PageUp') return walk(-1);
    if (key !== 'Escape' || picked === null) return false;
    look.setState({ picked: null });
    return true;
  };
  const isThere = set.parts.some((part) => part.name === picked && (only === null || part.bed === only));
  return (
    <BlockStage
      picture={picture}
      label={`The display set on its bed${isThere ? `, ${picked} pointed out` : ''}`}
      plate={isThere && picked !== null ? { id: picked, words: picked } : null}
      home="corner"
      {...{ scene, view, setView, onKey }}
      onPick={(id) => look.setState({ picked: id })}
      hold={() => null}
      instead={
        <NoSolids>
          <BlockParts set={set} />
        </NoSolids>
      }
    >
      {set.beds > 1 && <BedKeys beds={set.beds} only={only} />}
      {set.beds <= FEW_BEDS && (
        <p className={styles.hint}>Drag to turn, with Shift to move; click a part to name it.</p>
      )}
    </BlockStage>
  );
}

/** With more beds than that their keys take the room of the hint. */
const FEW_BEDS = 3;

/** Which bed is looked at. */
function BedKeys({ beds, only }: { readonly beds: number; readonly only: number | null }) {
  const [, look] = useBlockLook();
  return (
    <fieldset className="key-row bare" aria-label="Bed that is looked at">
      <FootKey title="All beds side by side" pressed={only === null} press={() => look.setState({ bed: null })}>
        All beds
      </FootKey>
      {[...Array(beds).keys()].map((n) => (
        <FootKey
          key={n}
          title={`Bed ${n + 1} alone`}
          name={`Bed ${n + 1}`}
          pressed={only === n}
          press={() => look.setState({ bed: n })}
        >
          {n + 1}
        </FootKey>
      ))}
    </fieldset>
  );
}
