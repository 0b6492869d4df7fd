import { useMemo, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import { alignByBox, alignByOverlap, type BoxAlignment } from '../../../profile/align-outline.ts';
import type { Profile } from '../../../profile/profile.ts';
import { editedVertices } from '../../state/draw/draw-state.ts';
import { ChoiceField, TickField } from '../form-fields.tsx';
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
export function AlignForm({ family, profile, base, onDone, onClose }: AlignFormProps) {
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
      return { vertices: alignByBox(base, editedVertices(onto), boxes), words: `${words}.` };
    }
    const laid = alignByOverlap(base, editedVertices(onto), { turn, mirror });
    const degrees = (laid.turned * 180) / Math.PI;
    const turned = Math.abs(degrees) < 0.005 ? '' : `, turned by ${degrees.toFixed(2)}°`;
    const info = `${laid.mirrored ? 'Mirrored' : 'Not mirrored'}${turned}; ${share(laid.apart)} of its area is not shared.`;
    return { vertices: laid.vertices, words: `${words}${laid.mirrored ? ', mirrored' : ''}${turned}.`, info };
  }, [base, onto, how, x, y, turn, mirror]);
  if (others.length === 0) return <p>There is no other section to lay it onto.</p>;
  return (
    <OutlineForm title="Align" wanted={wanted} doIt="Lay it there" onDone={onDone} onClose={onClose}>
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

function share(part: number): string {
  return `${(100 * part).toFixed(part < 0.1 ? 2 : 1)} %`;
}
