import { useRef, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import { straighten } from '../../../profile/bend-edge.ts';
import { type MirrorWay, mirrorOutline } from '../../../profile/mirror-outline.ts';
import type { Profile } from '../../../profile/profile.ts';
import { chosenNow, putOutline, verticesInHand } from '../../state/draw/draw-editing.ts';
import { dropPreview, standingOutline } from '../../state/draw/outline-preview.ts';
import type { Session } from '../../state/session.ts';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import { AlignForm } from './align-form.tsx';
import styles from './outline-actions.module.css';
import {
  MoveForm,
  OffsetForm,
  type OperationProps,
  OriginForm,
  SimplifyForm,
  SizeForm,
  TurnForm,
} from './outline-forms.tsx';
import { RoundForm } from './round-form.tsx';

const FORMS = {
  origin: OriginForm,
  move: MoveForm,
  turn: TurnForm,
  size: SizeForm,
  offset: OffsetForm,
  simplify: SimplifyForm,
};

type Operation = keyof typeof FORMS | 'align' | 'round';

const OPERATIONS: readonly (readonly [Operation, string, string])[] = [
  ['offset', 'Offset…', 'Grow or shrink it by a gap all round'],
  ['align', 'Align…', 'Lay it onto another section'],
  ['simplify', 'Simplify…', 'Leave out vertices within a tolerance'],
  ['round', 'Round…', 'Round the chosen vertices by a radius'],
  ['origin', 'To origin…', 'Back on y = 0, a side or the middle on x = 0'],
  ['move', 'Move…', 'Move it by typed lengths'],
  ['turn', 'Turn…', 'Turn it by an angle'],
  ['size', 'Size…', 'Multiply its size, for wrong units'],
];

/** What is done at once. */
const ACTS: readonly { label: string; title: string; run(session: Session): string }[] = [
  { label: 'Mirror ⇆', title: 'Left and right change places', run: (session) => mirror(session, 'left-right') },
  { label: 'Mirror ⇅', title: 'Top and bottom change places', run: (session) => mirror(session, 'top-bottom') },
  { label: 'Straighten', title: 'Make the edges after the chosen vertices straight', run: straightenChosen },
];

/** What can be done to the whole outline in hand, or to the chosen part of it; each is one step of undo, told in words. */
export function OutlineActions({ family, profile }: { family: Family; profile: Profile }) {
  const session = useSession();
  const [open, setOpen] = useState<Operation | null>(null);
  const [told, setTold] = useState('');
  const keys = useRef<HTMLDivElement>(null);
  const close = () => {
    setOpen(null);
    keys.current?.querySelector<HTMLElement>(`[data-operation=${open}]`)?.focus();
  };
  const act = (run: (session: Session) => string) => {
    dropPreview(session);
    setTold(run(session));
  };
  const done = (words: string) => {
    setTold(words);
    close();
  };
  return (
    <section className={readings.part} aria-labelledby="outline-actions">
      <h3 id="outline-actions" className={readings.title}>
        Change it
      </h3>
      <div ref={keys} className={styles.keys}>
        {ACTS.map(({ label, title, run }) => (
          <ActKey key={label} label={label} title={title} onPress={() => act(run)} />
        ))}
        {OPERATIONS.map(([name, label, title]) => (
          <button
            key={name}
            type="button"
            className="key"
            data-operation={name}
            aria-expanded={open === name}
            title={title}
            onClick={() => {
              setTold('');
              setOpen(open === name ? null : name);
            }}
          >
            {label}
          </button>
        ))}
      </div>
      {open && <OpenForm key={open} operation={open} family={family} profile={profile} onDone={done} onClose={close} />}
      <p role="status" className={styles.told}>
        {told}
      </p>
    </section>
  );
}

function ActKey({ label, title, onPress }: { label: string; title: string; onPress(): void }) {
  return (
    <button type="button" className="key" title={title} onClick={onPress}>
      {label}
    </button>
  );
}

interface OpenFormProps {
  readonly operation: Operation;
  readonly family: Family;
  readonly profile: Profile;
  onDone(words: string): void;
  onClose(): void;
}

function OpenForm({ operation, family, profile, onDone, onClose }: OpenFormProps) {
  const session = useSession();
  const units = useStore(session.settings, (s) => s.units);
  const base = useStore(session.documents, (s) => standingOutline(s, profile.id));
  if (operation === 'round') return <RoundForm units={units} count={base.length} onDone={onDone} onClose={onClose} />;
  const common: OperationProps = { base, units, onDone, onClose };
  if (operation === 'align') return <AlignForm {...common} family={family} profile={profile} />;
  const Form = FORMS[operation];
  return <Form {...common} />;
}

/** Mirrors the outline in its place; returns what is told. */
function mirror(session: Session, way: MirrorWay): string {
  const before = session.documents.getState().past.length;
  const taken = putOutline(session, mirrorOutline(verticesInHand(session), way), []);
  if (!taken) return '';
  if (session.documents.getState().past.length === before) return 'It is its own mirror image: nothing changed.';
  return way === 'left-right' ? 'Mirrored: left and right changed places.' : 'Mirrored: top and bottom changed places.';
}

function straightenChosen(session: Session): string {
  const vertices = verticesInHand(session);
  const bowed = chosenNow(session).filter((i) => vertices[i].bulge);
  if (bowed.length === 0) return 'Choose vertices that an arc follows; then Straighten makes it straight.';
  const taken = putOutline(session, straighten(vertices, bowed));
  return taken ? `${bowed.length} ${bowed.length === 1 ? 'edge' : 'edges'} made straight.` : '';
}
