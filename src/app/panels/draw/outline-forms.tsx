import { useMemo, useState } from 'react';
import { readingText, type Units } from '../../../family/length-text.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import { moveOutline, type OriginSide, standOnOrigin } from '../../../profile/move-outline.ts';
import { type OffsetCorners, offsetOutline } from '../../../profile/offset-outline.ts';
import { outlineBox } from '../../../profile/outline-box.ts';
import { scaleOutline } from '../../../profile/scale-outline.ts';
import { simplifyDrawn } from '../../../profile/simplify-drawn.ts';
import { turnOutline } from '../../../profile/turn-outline.ts';
import { ChoiceField, LengthField, TickField, useTypedLength, useTypedNumber } from '../form-fields.tsx';
import { faultSentence, OutlineForm, type Wanted, wantedOf } from './outline-form.tsx';

/** What every form of an operation is given. */
export interface OperationProps {
  /** The outline as it stands without the form's own preview, nanometres. */
  readonly base: readonly Vertex[];
  readonly units: Units;
  onDone(words: string): void;
  onClose(): void;
}

const SIDES = [
  ['left', 'left side on x = 0'],
  ['middle', 'middle on x = 0'],
  ['right', 'right side on x = 0'],
] as const satisfies readonly (readonly [OriginSide, string])[];

/** Stands the outline on the origin: its back on y = 0. */
export function OriginForm({ base, onDone, onClose }: OperationProps) {
  const [side, setSide] = useState<OriginSide>('left');
  const wanted = useMemo(
    (): Wanted => ({ vertices: standOnOrigin(base, side), words: `Back on y = 0, ${side} on x = 0.` }),
    [base, side],
  );
  return (
    <OutlineForm title="To the origin" wanted={wanted} doIt="Move it there" onDone={onDone} onClose={onClose}>
      <ChoiceField label="Back on y = 0, and" value={side} choices={SIDES} onChange={setSide} />
    </OutlineForm>
  );
}

/** Moves the outline by a typed length each way. */
export function MoveForm({ base, units, onDone, onClose }: OperationProps) {
  const right = useTypedLength(0, units);
  const up = useTypedLength(0, units);
  const wanted = useMemo((): Wanted => {
    if (right.fault || up.fault || (!right.nm && !up.nm)) return null;
    return { vertices: moveOutline(base, { x: right.nm ?? 0, y: up.nm ?? 0 }), words: 'Moved.' };
  }, [base, right.nm, up.nm, right.fault, up.fault]);
  return (
    <OutlineForm title="Move" wanted={wanted} doIt="Move it" onDone={onDone} onClose={onClose}>
      <LengthField label="To the right" text={right.text} units={units} fault={right.fault} onChange={right.set} />
      <LengthField label="Upwards" text={up.text} units={units} fault={up.fault} onChange={up.set} />
    </OutlineForm>
  );
}

const ABOUT = [
  ['middle', 'the middle of its box'],
  ['origin', 'the origin'],
] as const;

/** Turns the outline by a typed angle. */
export function TurnForm({ base, units, onDone, onClose }: OperationProps) {
  const angle = useTypedNumber(90);
  const [about, setAbout] = useState<'middle' | 'origin'>('middle');
  const wanted = useMemo((): Wanted => {
    if (!angle.value) return null;
    const { minX, maxX, minY, maxY } = outlineBox(base);
    const centre = about === 'middle' ? { x: (minX + maxX) / 2, y: (minY + maxY) / 2 } : { x: 0, y: 0 };
    const vertices = turnOutline(base, (angle.value * Math.PI) / 180, centre);
    return { vertices, words: `Turned by ${angle.value}° to the ${angle.value > 0 ? 'left' : 'right'}.` };
  }, [base, angle.value, about]);
  return (
    <OutlineForm title="Turn" wanted={wanted} doIt="Turn it" onDone={onDone} onClose={onClose}>
      <LengthField
        label="By, positive to the left"
        text={angle.text}
        units={units}
        unit="°"
        fault={angle.fault}
        onChange={angle.set}
      />
      <ChoiceField label="About" value={about} choices={ABOUT} onChange={setAbout} />
    </OutlineForm>
  );
}

const FACTORS = [
  ['25.4', 'inches were taken for mm: × 25.4'],
  ['0.039370078740157', 'mm were taken for inches: ÷ 25.4'],
  ['own', 'another factor'],
] as const;

/** Makes the outline larger or smaller about the origin, for one that was given in other units. */
export function SizeForm({ base, units, onDone, onClose }: OperationProps) {
  const [factor, setFactor] = useState<(typeof FACTORS)[number][0]>('own');
  const own = useTypedNumber(1);
  const by = factor === 'own' ? own.value : Number(factor);
  const wanted = useMemo((): Wanted => {
    if (by === null || by === 1) return null;
    return wantedOf(scaleOutline(base, by, { x: 0, y: 0 }), `Size multiplied by ${Number(by.toPrecision(6))}.`);
  }, [base, by]);
  return (
    <OutlineForm title="Size" wanted={wanted} doIt="Change the size" onDone={onDone} onClose={onClose}>
      <ChoiceField label="Multiply all lengths" value={factor} choices={FACTORS} onChange={setFactor} />
      {factor === 'own' && (
        <LengthField label="By" text={own.text} units={units} unit="×" fault={own.fault} onChange={own.set} />
      )}
    </OutlineForm>
  );
}

const CORNERS = [
  ['sharp', 'sharp: edges prolonged'],
  ['round', 'round: the same gap all round'],
] as const satisfies readonly (readonly [OffsetCorners, string])[];

/** Grows or shrinks the outline by a gap all round. */
export function OffsetForm({ base, units, onDone, onClose }: OperationProps) {
  const gap = useTypedLength(50_000, units);
  const [corners, setCorners] = useState<OffsetCorners>('sharp');
  const wanted = useMemo((): Wanted => {
    if (gap.nm === null) return null;
    const change = offsetOutline(base, gap.nm, corners);
    const done = `${gap.nm > 0 ? 'Grown' : 'Shrunk'} by ${readingText(gap.nm, units)} all round`;
    const shown = wantedOf(change, `${done}.`);
    return change.ok && shown ? { ...shown, info: `${base.length} → ${change.vertices.length} vertices.` } : shown;
  }, [base, gap.nm, corners, units]);
  return (
    <OutlineForm title="Offset" wanted={wanted} doIt="Offset it" onDone={onDone} onClose={onClose}>
      <LengthField label="Gap, negative to shrink" text={gap.text} units={units} fault={gap.fault} onChange={gap.set} />
      <ChoiceField label="Corners" value={corners} choices={CORNERS} onChange={setCorners} />
    </OutlineForm>
  );
}

/** Leaves out vertices that are not needed within a tolerance. */
export function SimplifyForm({ base, units, onDone, onClose }: OperationProps) {
  const tolerance = useTypedLength(5_000, units);
  const [arcs, setArcs] = useState(true);
  const wanted = useMemo((): Wanted => {
    if (tolerance.nm === null) return null;
    const simpler = simplifyDrawn(base, tolerance.nm, arcs);
    if (!simpler.ok) return { fault: faultSentence(simpler.fault) };
    const { vertices, deviation, newArcs } = simpler;
    const counts = `${base.length} → ${vertices.length} vertices`;
    const strays = deviation === 0 ? 'strays nowhere' : `strays by at most ${readingText(deviation, units)}`;
    const found = newArcs === 0 ? '' : `, ${newArcs} ${newArcs === 1 ? 'arc' : 'arcs'} found`;
    return { vertices, words: `${counts}.`, info: `${counts}${found}; ${strays}.` };
  }, [base, tolerance.nm, arcs, units]);
  return (
    <OutlineForm title="Simplify" wanted={wanted} doIt="Simplify it" onDone={onDone} onClose={onClose}>
      <LengthField
        label="It may stray by"
        text={tolerance.text}
        units={units}
        fault={tolerance.fault}
        onChange={tolerance.set}
      />
      <TickField label="Make arcs of chords" value={arcs} onChange={setArcs} />
    </OutlineForm>
  );
}
