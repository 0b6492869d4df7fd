import type { Family } from '../../../family/family.ts';
import { useSession, useStore } from '../use-store.ts';
import { AccessReadings } from './access-readings.tsx';
import { BladeReadings } from './blade-readings.tsx';
import { CapacityReadings } from './capacity-readings.tsx';
import { GrowReadings } from './grow-readings.tsx';
import { SectionsReadings } from './sections-readings.tsx';
import { StrengthReadings } from './strength-readings.tsx';

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
