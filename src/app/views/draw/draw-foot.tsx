import type { ReactNode } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Profile } from '../../../profile/profile.ts';
import { HangingPanel } from '../../panels/hanging-panel.tsx';
import { useSession, useStore } from '../../panels/use-store.ts';
import { headInHand, type SnapSettings } from '../../state/draw/draw-state.ts';
import { hasBegun, putPenAway, takePen } from '../../state/draw/pen-editing.ts';
import type { Session } from '../../state/session.ts';
import { GRID_STEPS } from '../../tools/draw/snap-targets.ts';
import { NM_OF_UNIT } from '../../tools/ruler-steps.ts';
import { FootKey } from '../foot-key.tsx';
import styles from './draw.module.css';

const ZOOM_STEP = 1.5;

interface DrawFootProps {
  readonly family: Family;
  readonly profile: Profile;
}

/** The keys under the sheet: what the hand holds, what draws it, and what lies under the outline. */
export function DrawFoot({ family, profile }: DrawFootProps) {
  const session = useSession();
  const tool = useStore(session.draw, (s) => s.tool);
  const form = useStore(session.draw, (s) => s.form);
  const begun = useStore(session.draw, hasBegun);
  return (
    <div className={styles.foot}>
      <fieldset className="key-row bare" aria-label="Tool">
        <FootKey
          title="Choose and drag vertices and edges (V)"
          pressed={tool === 'choose'}
          press={() => putPenAway(session)}
        >
          Choose
        </FootKey>
        <FootKey
          title={begun ? 'Go on with the outline that the pen has begun (P)' : 'New outline with the pen (P)'}
          name="New outline with the pen"
          pressed={tool === 'pen'}
          press={() => takePen(session)}
        >
          {begun && tool === 'choose' ? 'Pen …' : 'Pen'}
        </FootKey>
      </fieldset>
      {(form === 'outline' || tool === 'pen') && <SnapKeys />}
      <GhostPanel family={family} profile={profile} />
    </div>
  );
}

/** The zoom, at the upper right corner of the sheet. */
export function ZoomKeys({ zoom, fit }: { zoom(factor: number): void; fit(): void }) {
  return (
    <span className={`key-row ${styles.zoom}`}>
      <FootKey title="Smaller (−)" name="Zoom out" press={() => zoom(1 / ZOOM_STEP)}>
        −
      </FootKey>
      <FootKey title="Larger (+)" name="Zoom in" press={() => zoom(ZOOM_STEP)}>
        +
      </FootKey>
      <FootKey title="The whole section (0)" press={fit}>
        Fit
      </FootKey>
    </span>
  );
}

const SNAPS: readonly { key: 'grid' | 'vertices' | 'edges' | 'axes'; label: string; title: string }[] = [
  { key: 'grid', label: 'Grid', title: 'Places go to the grid' },
  { key: 'vertices', label: 'Vertices', title: 'Places go to vertices of this outline and of those under it' },
  { key: 'edges', label: 'Edges', title: 'Places go to edges of this outline and of those under it' },
  {
    key: 'axes',
    label: 'Level',
    title: 'Places go level with, or in line above and below, their neighbours and where they were',
  },
];

function SnapKeys() {
  const session = useSession();
  const snap = useStore(session.draw, (s) => s.snap);
  const change = (part: Partial<SnapSettings>) => session.draw.setState((s) => ({ snap: { ...s.snap, ...part } }));
  return (
    <span className={styles.snaps}>
      <span className={styles.snapWord} id="draw-snap">
        Snap to
      </span>
      <fieldset className="key-row bare" aria-labelledby="draw-snap">
        {SNAPS.map(({ key, label, title }) => (
          <FootKey
            key={key}
            title={`${title}. Hold Ctrl to place freely`}
            pressed={snap[key]}
            press={() => change({ [key]: !snap[key] })}
          >
            {label}
          </FootKey>
        ))}
      </fieldset>
      <StepChoice snap={snap} change={change} />
    </span>
  );
}

function StepChoice({ snap, change }: { snap: SnapSettings; change(part: Partial<SnapSettings>): void }) {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const offered = GRID_STEPS[units];
  const steps = [...new Set([...offered, ...(snap.step === null ? [] : [snap.step])])].sort((a, b) => a - b);
  return (
    <select
      className={styles.step}
      aria-label="Step of the grid"
      title="Step of the grid"
      disabled={!snap.grid}
      value={snap.step ?? offered[0]}
      onChange={(event) => change({ step: Number(event.target.value) })}
    >
      {steps.map((step) => (
        <option key={step} value={step}>
          {Number((step / NM_OF_UNIT[units]).toFixed(6))} {units}
        </option>
      ))}
    </select>
  );
}

/** Which other outlines lie under the edited one. */
function GhostPanel({ family, profile }: { family: Family; profile: Profile }) {
  const session = useSession();
  const counterpart = useStore(session.draw, (s) => s.counterpart);
  const ghosts = useStore(session.draw, (s) => s.ghosts);
  const isNew = useStore(session.draw, (s) => headInHand(s) !== null);
  const others = family.profiles.filter(({ id }) => isNew || id !== profile.id);
  const count = others.filter(({ id }) => ghosts.includes(id)).length + (counterpart && !isNew ? 1 : 0);
  return (
    <HangingPanel label={`Under it: ${count} ▾`} title="Other outlines under the edited one, to compare and to snap to">
      {() => (
        <div className={styles.ghosts}>
          {!isNew && (
            <GhostRow on={counterpart} press={() => session.draw.setState({ counterpart: !counterpart })}>
              The {profile.kind === 'opening' ? 'picked blank or tool' : 'picked keyway'}, as it fits best
            </GhostRow>
          )}
          {others.map(({ id, name }) => (
            <GhostRow key={id} on={ghosts.includes(id)} press={() => toggleGhost(session, id)}>
              {name}
            </GhostRow>
          ))}
        </div>
      )}
    </HangingPanel>
  );
}

function toggleGhost({ draw }: Session, id: string): void {
  draw.setState(({ ghosts }) => ({
    ghosts: ghosts.includes(id) ? ghosts.filter((other) => other !== id) : [...ghosts, id],
  }));
}

function GhostRow({ on, press, children }: { on: boolean; press(): void; children: ReactNode }) {
  return (
    <button type="button" className={styles.ghostRow} aria-pressed={on} onClick={press}>
      <span aria-hidden="true">{on ? '☑' : '☐'}</span> <span>{children}</span>
    </button>
  );
}
