import type { Family } from '../../../family/family.ts';
import type { SolidPart } from '../../../print3d/display-set.ts';
import { partSize, volumeText } from '../../state/publish/block-words.ts';
import { FactList } from '../fact-list.tsx';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import { BlockChecks } from './block-checks.tsx';
import { BlockPairReading } from './block-pair-reading.tsx';
import { BlockParts } from './block-parts.tsx';
import { useBlock, useBlockLook } from './use-block.ts';

/** What belongs beside the Display block sheet: the tried pair or the picked part, what was checked, and all parts. */
export function BlockReadings({ family }: { family: Family }) {
  const { seen } = useBlock();
  const [{ part, picked }] = useBlockLook();
  if (!seen) return <About />;
  const pointed = seen.parts.find(({ name }) => name === picked);
  return (
    <>
      {part === 'try' ? (
        <BlockPairReading family={family} set={seen} />
      ) : (
        pointed && <PickedPart family={family} part={pointed} bed={seen.beds > 1 ? pointed.bed + 1 : null} />
      )}
      <BlockChecks family={family} checks={seen.checks} />
      <section className={readings.part} aria-labelledby="reading-parts">
        <h2 id="reading-parts" className={readings.title}>
          Parts
        </h2>
        <BlockParts set={seen} />
      </section>
      <About />
    </>
  );
}

interface PickedPartProps {
  readonly family: Family;
  readonly part: SolidPart;
  /** Which bed it lies on; null where there is one only. */
  readonly bed: number | null;
}

function PickedPart({ family, part, bed }: PickedPartProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const names = part.subjects.map((id) => family.profiles.find((profile) => profile.id === id)?.name ?? id);
  return (
    <section className={readings.part} aria-labelledby="reading-part">
      <h2 id="reading-part" className={readings.title}>
        {part.name}
      </h2>
      <FactList
        facts={[
          { term: 'Size', value: partSize(part, units) },
          { term: 'Volume', value: volumeText(part.volume, units) },
          ...(bed === null ? [] : [{ term: 'Bed', value: String(bed) }]),
        ]}
      />
      {part.kind !== 'coupon' && names.length > 0 && (
        <p className={readings.note}>
          {part.kind === 'block' ? 'Shows' : 'Holds'} {names.join(', ')}.
        </p>
      )}
    </section>
  );
}

function About() {
  return (
    <section className={readings.part}>
      <h2 className={readings.title}>What this is for</h2>
      <p className={readings.note}>
        A block with all openings side by side, and blanks as coupons with a grip, to be held and tried in class. It is
        made several times as large as the real sections, so that nothing of it can be taken for a key.
      </p>
    </section>
  );
}
