import { useState } from 'react';
import type { Family } from '../../../family/family.ts';
import { sizeText } from '../../../family/length-text.ts';
import { outlineBox } from '../../../profile/outline-box.ts';
import type { Profile } from '../../../profile/profile.ts';
import { type DrawForm, editedVertices, headInHand } from '../../state/draw/draw-state.ts';
import { dropPreview } from '../../state/draw/outline-preview.ts';
import { editedProfile } from '../../state/selection-state.ts';
import { MillPanel } from '../mill/mill-panel.tsx';
import styles from '../readings.module.css';
import { TracePanel } from '../trace/trace-panel.tsx';
import { useSession, useStore } from '../use-store.ts';
import { DrawFitList } from './draw-fit-list.tsx';
import own from './draw-readings.module.css';
import { OutlineActions } from './outline-actions.tsx';
import { PenReadings } from './pen-readings.tsx';
import { SectionMenu } from './section-menu.tsx';
import { VertexTable } from './vertex-table.tsx';

/** The edited outline in numbers: what it is, its vertices or its grooves, what can be done to it, what it goes into. */
export function DrawReadings({ family }: { family: Family }) {
  const session = useSession();
  const { selection, draw } = session;
  const form = useStore(draw, (s) => s.form);
  const head = useStore(draw, headInHand);
  // Another number closes the form of an operation.
  const [begun, setBegun] = useState(0);
  const profile = editedProfile(
    family,
    useStore(selection, (s) => s),
  );
  // While the pen makes a section, the one that happens to be picked is out of reach.
  if (head) return <PenReadings head={head} />;
  if (!profile) return null;
  const onBegin = () => {
    dropPreview(session);
    setBegun((n) => n + 1);
  };
  return (
    <>
      <DrawHead family={family} profile={profile} onBegin={onBegin} />
      {form === 'outline' && (
        <div className={styles.part}>
          <VertexTable key={profile.id} profile={profile} />
        </div>
      )}
      {form === 'outline' && (
        <OutlineActions key={`${profile.id} actions ${begun}`} family={family} profile={profile} />
      )}
      {form === 'mill' && <MillPanel family={family} profile={profile} />}
      <TracePanel profile={profile} />
      <DrawFitList family={family} profile={profile} />
    </>
  );
}

/** From where each kind is seen; all are seen the same way round. */
const SEEN = {
  opening: 'keyway, seen from the front of the plug',
  blank: 'blank, seen from the bow',
  tool: 'tool, seen from the bow',
} as const;

interface DrawHeadProps {
  readonly family: Family;
  readonly profile: Profile;
  onBegin(): void;
}

function DrawHead({ family, profile, onBegin }: DrawHeadProps) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const [told, setTold] = useState('');
  const { minX, maxX, minY, maxY } = outlineBox(editedVertices(profile));
  return (
    <section className={styles.part} aria-labelledby="draw-title">
      <h2 id="draw-title" className={own.name}>
        {profile.name}
      </h2>
      <p className={own.said}>
        {SEEN[profile.kind]}; {sizeText(maxX - minX, maxY - minY, units).replaceAll(' ', '\u00a0')}
      </p>
      <p role="status" className={own.told}>
        {told}
      </p>
      <div className={own.head}>
        <FormKeys />
        <SectionMenu family={family} profile={profile} tell={setTold} onBegin={onBegin} />
      </div>
    </section>
  );
}

const FORMS: readonly { form: DrawForm; label: string; title: string }[] = [
  { form: 'outline', label: 'Outline', title: 'Its vertices and edges' },
  { form: 'mill', label: 'Mill', title: 'Thickness, height, grooves and steps' },
];

function FormKeys() {
  const { draw } = useSession();
  const form = useStore(draw, (s) => s.form);
  return (
    <fieldset className="key-row bare" aria-label="Described by">
      {FORMS.map(({ form: name, label, title }) => (
        <button
          key={name}
          type="button"
          className="key"
          aria-pressed={form === name}
          title={title}
          onClick={() => draw.setState({ form: name, chosen: [], refused: null })}
        >
          {label}
        </button>
      ))}
    </fieldset>
  );
}
