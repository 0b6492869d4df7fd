import { useEffect, useMemo, useRef, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import { readingText, type Units } from '../../../family/length-text.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import { alignByBox, alignByOverlap, type BoxAlignment } from '../../../profile/align-outline.ts';
import { measureApart } from '../../../profile/measure-apart.ts';
import type { Profile } from '../../../profile/profile.ts';
import { editedVertices } from '../../state/draw/draw-state.ts';
import type { Session } from '../../state/session.ts';
import { ChoiceField, TickField } from '../form-fields.tsx';
import { useSession } from '../use-store.ts';
import { OutlineForm, type Wanted } from './outline-form.tsx';
import type { OperationProps } from './outline-forms.tsx';

const HOW = [
  ['overlap', 'as well as they can lie'],
  ['box', 'by edges and middles'],
] as const;

const ACROSS = [
  ['left', 'left on left'],
  ['middle', 'middle on middle'],
  ['right', 'right on right'],
  ['none', 'as it is'],
] as const;

const UP = [
  ['bottom', 'back on back'],
  ['middle', 'middle on middle'],
  ['top', 'upper edge on upper edge'],
  ['none', 'as it is'],
] as const;

interface AlignFormProps extends OperationProps {
  readonly family: Family;
  readonly profile: Profile;
}

/** Lays the outline onto that of another section. */
export function AlignForm({ family, profile, base, units, onDone, onClose }: AlignFormProps) {
  const others = family.profiles.filter(({ id }) => id !== profile.id);
  const [ontoId, setOntoId] = useState(others[0]?.id ?? '');
  const [how, setHow] = useState<'overlap' | 'box'>('overlap');
  const [x, setX] = useState<(typeof ACROSS)[number][0]>('middle');
  const [y, setY] = useState<(typeof UP)[number][0]>('bottom');
  const [turn, setTurn] = useState(false);
  const [mirror, setMirror] = useState(false);
  const onto = others.find(({ id }) => id === ontoId);
  const wanted = useMemo((): Wanted => {
    if (!onto) return null;
    const words = `Laid onto ${onto.name}`;
    if (how === 'box') {
      const boxes: BoxAlignment = { x: x === 'none' ? null : x, y: y === 'none' ? null : y };
      const vertices = alignByBox(base, editedVertices(onto), boxes);
      const far = farWords(vertices, onto, units);
      return { vertices, words: `${words}: ${far}`, info: sentence(far) };
    }
    const laid = alignByOverlap(base, editedVertices(onto), { turn, mirror });
    const degrees = (laid.turned * 180) / Math.PI;
    const turned = Math.abs(degrees) < 0.005 ? '' : `, turned by ${degrees.toFixed(2)}°`;
    const info = `${laid.mirrored ? 'Mirrored' : 'Not mirrored'}${turned}; ${share(laid.apart)} of its area is not shared.`;
    const far = farWords(laid.vertices, onto, units);
    const mirrored = laid.mirrored ? ', mirrored' : '';
    return {
      vertices: laid.vertices,
      words: `${words}${mirrored}${turned}: ${far}`,
      info: `${info} ${sentence(far)}`,
    };
  }, [base, onto, how, x, y, turn, mirror, units]);
  const isTaken = useLaidUnder(useSession(), profile, onto);
  const done = (words: string) => {
    isTaken.current = true;
    onDone(words);
  };
  if (others.length === 0) return <p>There is no other section to lay it onto.</p>;
  return (
    <OutlineForm title="Align" wanted={wanted} doIt="Lay it there" onDone={done} onClose={onClose}>
      <ChoiceField
        label="Onto"
        value={ontoId}
        choices={others.map(({ id, name }) => [id, name])}
        onChange={setOntoId}
      />
      <ChoiceField label="How" value={how} choices={HOW} onChange={setHow} />
      {how === 'box' ? (
        <>
          <ChoiceField label="Sideways" value={x} choices={ACROSS} onChange={setX} />
          <ChoiceField label="In height" value={y} choices={UP} onChange={setY} />
        </>
      ) : (
        <>
          <TickField label="It may be turned" value={turn} onChange={setTurn} />
          <TickField label="It may be mirrored" value={mirror} onChange={setMirror} />
        </>
      )}
    </OutlineForm>
  );
}

/** How far the outline then is from the other one, where most and in the mean. */
function farWords(vertices: readonly Vertex[], onto: Profile, units: Units): string {
  const { most, at, mean } = measureApart(vertices, editedVertices(onto));
  const say = (nm: number) => readingText(Math.round(nm), units);
  return `at most ${say(most)} apart, at x ${say(at.x)}, y ${say(at.y)}; ${say(mean)} in the mean.`;
}

function sentence(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/**
 * Lays the other section under the sheet, so that it is seen what the outline is laid onto; it stays there where the
 * operation is taken. One of the other side, keyway or blade, would lie there as it fits, not as it is laid.
 */
function useLaidUnder(session: Session, profile: Profile, onto: Profile | undefined) {
  const isTaken = useRef(false);
  const id = onto && (onto.kind === 'opening') === (profile.kind === 'opening') ? onto.id : null;
  useEffect(() => {
    const { draw } = session;
    if (id === null || draw.getState().ghosts.includes(id)) return;
    draw.setState((s) => ({ ghosts: [...s.ghosts, id] }));
    return () => {
      if (!isTaken.current) draw.setState((s) => ({ ghosts: s.ghosts.filter((ghost) => ghost !== id) }));
    };
  }, [session, id]);
  return isTaken;
}

function share(part: number): string {
  return `${(100 * part).toFixed(part < 0.1 ? 2 : 1)} %`;
}
