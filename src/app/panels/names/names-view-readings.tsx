import type { Family } from '../../../family/family.ts';
import { useSession, useStore } from '../use-store.ts';
import { AskReadings } from './ask/ask-readings.tsx';
import { IdentifyReadings } from './identify/identify-readings.tsx';
import { MisleadingReadings } from './misleading/misleading-readings.tsx';
import { RegisterReadings } from './register/register-readings.tsx';

/** The right side of the Names view. */
export function NamesViewReadings({ family }: { family: Family }) {
  const { names } = useSession();
  const sheet = useStore(names, (s) => s.sheet);
  return (
    <>
      {sheet === 'ask' && <AskReadings family={family} />}
      {sheet === 'register' && <RegisterReadings family={family} />}
      {sheet === 'misleading' && <MisleadingReadings family={family} />}
      {sheet === 'identify' && <IdentifyReadings family={family} />}
    </>
  );
}
