import type { Family } from '../../../family/family.ts';
import { useSession, useStore } from '../use-store.ts';
import { BlockReadings } from './block-readings.tsx';
import { SheetsReadings } from './sheets-readings.tsx';
import { SlidesReadings } from './slides-readings.tsx';

/** The right side of the Publish view. */
export function PublishViewReadings({ family }: { family: Family }) {
  const { publish } = useSession();
  const sheet = useStore(publish, (s) => s.sheet);
  return (
    <>
      {sheet === 'sheets' && <SheetsReadings family={family} />}
      {sheet === 'slides' && <SlidesReadings family={family} />}
      {sheet === 'block' && <BlockReadings family={family} />}
    </>
  );
}
