import type { Family } from '../../../family/family.ts';
import { useSession, useStore } from '../use-store.ts';
import { ClaimsReadings } from './claims/claims-readings.tsx';
import { PassageReadings } from './passage/passage-readings.tsx';
import { TiersReadings } from './tiers-readings.tsx';

/** The right side of the Tiers view. */
export function TiersViewReadings({ family }: { family: Family }) {
  const { tiers } = useSession();
  const sheet = useStore(tiers, (s) => s.sheet);
  return (
    <>
      {sheet === 'tiers' && <TiersReadings family={family} />}
      {sheet === 'passage' && <PassageReadings family={family} />}
      {sheet === 'claims' && <ClaimsReadings family={family} />}
    </>
  );
}
