import { useLayoutEffect, useMemo, useRef } from 'react';
import type { Profile } from '../../../../profile/profile.ts';
import type { SectionStrength } from '../../../../strength/strength.ts';
import { shearBands } from '../../../state/plan/strength/shear-bands.ts';
import { type ShearPlace, shearPlace } from '../../../state/plan/strength/shear-place.ts';
import type { ShearScale } from '../../../state/plan/strength/shear-scale.ts';
import { outlinePath } from '../../draw/outline-path.ts';
import styles from './shear-picture.module.css';

interface ShearPictureProps {
  readonly profile: Profile;
  readonly section: SectionStrength;
  readonly scale: ShearScale;
  /** CSS pixels. */
  readonly width: number;
  readonly height: number;
  /** The picture in words. */
  readonly label: string;
}

/** The shear over a section as bands with lines between them; the peak and sharp inner corners are marked. */
export function ShearPicture(props: ShearPictureProps) {
  const { profile, section, scale, width, height, label } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  const place = useMemo(() => shearPlace(profile, width, height), [profile, width, height]);
  const cut = useMemo(() => {
    const { yieldLevel, levels } = scale;
    return {
      bands: shearBands(section.field, levels),
      yielding: yieldLevel === null ? [] : shearBands(section.field, [0, yieldLevel]).lines[1],
    };
  }, [section, scale]);
  useLayoutEffect(() => {
    if (canvas.current) paint(canvas.current, cut, scale.colours, place, width, height);
  }, [cut, scale, place, width, height]);
  const at = (p: { x: number; y: number }) => ({ x: place.x + p.x * place.scale, y: place.y - p.y * place.scale });
  return (
    <div className={styles.picture} role="img" aria-label={label} style={{ width, height }}>
      <canvas ref={canvas} className={styles.canvas} />
      <svg className={styles.marks} width={width} height={height} aria-hidden="true">
        <path
          className={styles.outline}
          d={outlinePath(profile.ring)}
          transform={`translate(${place.x} ${place.y}) scale(${place.perMm} ${-place.perMm})`}
        />
        {section.sharpCorners.map((corner) => (
          <SharpMark key={`${corner.x} ${corner.y}`} {...at(corner)} reach={section.keepOut * place.scale} />
        ))}
        <PeakMark {...at(section.peakAt)} />
      </svg>
    </div>
  );
}

/** Paints bands from the lowest up, then the lines between them, then the line at which the metal yields. */
function paint(
  canvas: HTMLCanvasElement,
  { bands, yielding }: { bands: ReturnType<typeof shearBands>; yielding: readonly Float64Array[] },
  colours: readonly string[],
  place: ShearPlace,
  width: number,
  height: number,
): void {
  const dots = window.devicePixelRatio || 1;
  canvas.width = Math.round(width * dots);
  canvas.height = Math.round(height * dots);
  const pen = canvas.getContext('2d');
  if (!pen) return;
  pen.setTransform(dots * place.scale, 0, 0, -dots * place.scale, dots * place.x, dots * place.y);
  for (const [i, parts] of bands.bands.entries()) {
    pen.beginPath();
    for (const part of parts) trace(pen, part, true);
    pen.fillStyle = colours[i];
    pen.fill();
    // Neighbours of one band would show the ground between them.
    pen.strokeStyle = colours[i];
    pen.lineWidth = 0.6 / place.scale;
    pen.stroke();
  }
  for (const [i, pieces] of bands.lines.entries())
    if (i > 0) strokeAll(pen, pieces, i < bands.lines.length / 2 ? '#33180c' : '#f6e3b4', 0.9 / place.scale);
  strokeAll(pen, yielding, '#ffffff', 4.5 / place.scale);
  strokeAll(pen, yielding, '#000000', 2 / place.scale);
}

function strokeAll(
  pen: CanvasRenderingContext2D,
  pieces: readonly Float64Array[],
  colour: string,
  thick: number,
): void {
  pen.beginPath();
  for (const piece of pieces) trace(pen, piece, false);
  pen.strokeStyle = colour;
  pen.lineWidth = thick;
  pen.lineCap = 'round';
  pen.stroke();
}

function trace(pen: CanvasRenderingContext2D, part: Float64Array, closed: boolean): void {
  pen.moveTo(part[0], part[1]);
  for (let i = 2; i < part.length; i += 2) pen.lineTo(part[i], part[i + 1]);
  if (closed) pen.closePath();
}

function PeakMark({ x, y }: { x: number; y: number }) {
  return (
    <g className={styles.peak}>
      <circle className={styles.halo} cx={x} cy={y} r={7} />
      <circle cx={x} cy={y} r={7} />
    </g>
  );
}

/** A cross at the corner, and round it the reach within which no peak is told. */
function SharpMark({ x, y, reach }: { x: number; y: number; reach: number }) {
  return (
    <g className={styles.sharp}>
      <circle className={styles.halo} cx={x} cy={y} r={Math.max(4, reach)} />
      <circle cx={x} cy={y} r={Math.max(4, reach)} />
      <path d={`M${x - 4} ${y - 4}L${x + 4} ${y + 4}M${x + 4} ${y - 4}L${x - 4} ${y + 4}`} />
    </g>
  );
}
