import { leaveTyping, takeName } from '../../../state/plan/access/access-editing.ts';
import type { AccessTyping } from '../../../state/plan/access/access-state.ts';
import { useSession } from '../../use-store.ts';
import { NameField } from './name-field.tsx';

const LABELS: Readonly<Record<AccessTyping['what'], string>> = {
  area: 'Name of the area',
  holder: 'Name of the holder',
  'new area': 'Name of the new area',
  'new holder': 'Name of the new holder',
};

/** The name of an area or a holder, being typed. */
export function AccessNameField({ typing, start }: { typing: AccessTyping; start: string }) {
  const session = useSession();
  return (
    <NameField
      label={LABELS[typing.what]}
      start={start}
      onTake={(name, by) => takeName(session, typing, name, by === 'key')}
      onLeave={(by) => leaveTyping(session, by === 'key')}
    />
  );
}
