import { gapText, type Units } from '../../../family/length-text.ts';
import type { Contact } from '../../../fit/fit.ts';
import { type PixelPoint, toPixels } from '../../tools/drawing-view.ts';
import type { DrawingSheet } from '../drawing-sheet.ts';
import { Arrow, Circle, Group, Line } from '../konva-parts.ts';
import { NumberPlate } from '../number-plate.tsx';

const ARM = 34;
const SMALL_ARM = 15;

interface PinchMarksProps {
  readonly contacts: readonly Contact[];
  /** Where the keyway ends on its right, nanometres: dimensions stand beside it, clear of the ruler on its left. */
  readonly openingRight: number;
  readonly units: Units;
  readonly sheet: DrawingSheet;
}

/** The narrowest gap with its dimension, and a small dimension without words at every other place that limits. */
export function PinchMarks({ contacts, openingRight, units, sheet }: PinchMarksProps) {
  const [pinch, ...others] = contacts;
  if (!pinch) return null;
  return (
    <Group>
      {others.map((contact, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: contacts have no identity from one placement to the next
        <SmallMark key={i} contact={contact} sheet={sheet} />
      ))}
      <Pinch contact={pinch} openingRight={openingRight} label={gapText(pinch.gap, units)} sheet={sheet} />
    </Group>
  );
}

function Dot({ at, sheet: { palette } }: { at: PixelPoint; sheet: DrawingSheet }) {
  return <Circle x={at.px} y={at.py} radius={5} fill={palette.paperLit} stroke={palette.ink} strokeWidth={2.5} />;
}

/** Two arrows from either side that end where blank and plug are nearest. */
function SmallMark({ contact, sheet }: { contact: Contact; sheet: DrawingSheet }) {
  const a = toPixels(sheet.view, contact.onBlank);
  const b = toPixels(sheet.view, contact.onOpening);
  const out = outward(contact, a, b);
  const back = { px: a.px - out.px * SMALL_ARM, py: a.py - out.py * SMALL_ARM };
  const far = { px: b.px + out.px * SMALL_ARM, py: b.py + out.py * SMALL_ARM };
  return (
    <Group>
      <Arm from={back} to={a} head={7} sheet={sheet} />
      <Arm from={far} to={b} head={7} sheet={sheet} />
      {contact.gap === 0 && <Dot at={b} sheet={sheet} />}
    </Group>
  );
}

interface PinchProps {
  readonly contact: Contact;
  readonly openingRight: number;
  readonly label: string;
  readonly sheet: DrawingSheet;
}

function Pinch({ contact, openingRight, label, sheet }: PinchProps) {
  const { view, palette, size } = sheet;
  const a = toPixels(view, contact.onBlank);
  const b = toPixels(view, contact.onOpening);
  const out = outward(contact, a, b);
  const back = { px: a.px - out.px * ARM, py: a.py - out.py * ARM };
  const far = { px: b.px + out.px * ARM, py: b.py + out.py * ARM };
  // A dimension on the left is led across the blade, since the ruler stands on that side.
  const lead = out.px < -0.3 ? back : far;
  const beside = Math.max(lead.px, toPixels(view, { x: openingRight, y: 0 }).px + ARM - 10);
  const end = Math.abs(out.px) > 0.3 ? Math.min(beside, size.width - 120) : lead.px;
  return (
    <Group>
      <Line points={[lead.px, lead.py, end, lead.py]} stroke={palette.paperLit} strokeWidth={5} />
      <Arm from={back} to={a} sheet={sheet} />
      <Arm from={far} to={b} sheet={sheet} />
      <Line points={[lead.px, lead.py, end, lead.py]} stroke={palette.ink} strokeWidth={2} />
      {contact.gap === 0 && <Dot at={b} sheet={sheet} />}
      <Dimension at={{ px: end, py: lead.py }} out={out} text={label} sheet={sheet} />
    </Group>
  );
}

interface ArmProps {
  readonly from: PixelPoint;
  readonly to: PixelPoint;
  /** Length of the arrow's head in pixels. */
  readonly head?: number;
  readonly sheet: DrawingSheet;
}

function Arm({ from, to, head = 11, sheet: { palette } }: ArmProps) {
  const points = [from.px, from.py, to.px, to.py];
  return (
    <>
      <Line points={points} stroke={palette.paperLit} strokeWidth={6} lineCap="round" />
      <Arrow
        points={points}
        pointerLength={head}
        pointerWidth={head * 0.82}
        stroke={palette.ink}
        fill={palette.ink}
        strokeWidth={2}
      />
    </>
  );
}

function Dimension({
  at,
  out,
  text,
  sheet: { palette, size },
}: {
  at: PixelPoint;
  out: PixelPoint;
  text: string;
  sheet: DrawingSheet;
}) {
  const wide = text.length * 10.4 + 24;
  const sideways = Math.abs(out.px) > 0.3;
  const x = sideways ? at.px : at.px - wide / 2;
  const wanted = at.py - 15 + (sideways ? 0 : Math.sign(out.py) * 18);
  const isSeen = at.py > 0 && at.py < size.height;
  const y = isSeen ? Math.max(6, Math.min(size.height - 40, wanted)) : wanted;
  return <NumberPlate x={x} y={y} wide={wide} text={text} fontSize={18} palette={palette} />;
}

/** The direction from the blank to the plug at a contact, on the canvas; by the plug's side where the gap is nothing. */
function outward(contact: Contact, a: PixelPoint, b: PixelPoint): PixelPoint {
  const length = Math.hypot(b.px - a.px, b.py - a.py);
  if (length > 1e-6) return { px: (b.px - a.px) / length, py: (b.py - a.py) / length };
  return { left: { px: -1, py: 0 }, right: { px: 1, py: 0 }, bottom: { px: 0, py: 1 }, top: { px: 0, py: -1 } }[
    contact.side
  ];
}
