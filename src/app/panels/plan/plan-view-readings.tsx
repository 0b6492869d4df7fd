import type { Family } from '../../../family/family.ts';
import { useSession, useStore } from '../use-store.ts';
import { AccessReadings } from './access/access-readings.tsx';
import { BladeReadings } from './blade/blade-readings.tsx';
import { CapacityReadings } from './capacity/capacity-readings.tsx';
import { GrowReadings } from './grow/grow-readings.tsx';
import { SectionsReadings } from './sections/sections-readings.tsx';
import { StrengthReadings } from './strength/strength-readings.tsx';

/** The right side of the Plan view. */
export function PlanViewReadings({ family }: { family: Family }) {
  const { plan } = useSession();
  const sheet = useStore(plan, (s) => s.sheet);
  return (
    <>
      {sheet === 'access' && <AccessReadings family={family} />}
      {sheet === 'blade' && <BladeReadings family={family} />}
      {sheet === 'sections' && <SectionsReadings family={family} />}
      {sheet === 'grow' && <GrowReadings family={family} />}
      {sheet === 'strength' && <StrengthReadings family={family} />}
      {sheet === 'capacity' && <CapacityReadings family={family} />}
    </>
  );
}
