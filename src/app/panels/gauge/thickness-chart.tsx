import type { Verdict } from '../../../fit/fit.ts';
import type { CurveKnot } from '../../../gauge/knots.ts';
import type { Axis } from '../../state/gauge/chart-scale.ts';
import { curvePath, type Plot, placeOf, underCurvePath } from '../../state/gauge/curve-path.ts';
import { dotLabels, type LabelBox } from '../../state/gauge/dot-labels.ts';
import { VerdictMark } from '../verdict-mark.tsx';
import styles from './thickness-chart.module.css';

/** The curve of one keyway, as it is drawn. */
export interface DrawnCurve {
  readonly id: string;
  readonly name: string;
  readonly knots: readonly CurveKnot[];
  readonly look: 'plain' | 'picked' | 'pointed';
}

/** A tool in the chart. */
export interface DrawnDot {
  readonly id: string;
  readonly height: number;
  readonly thickness: number;
  readonly verdict: Verdict | null;
  readonly picked: boolean;
  readonly lines: readonly string[];
}

/** A piece of the limit and who sets it. */
export interface CoursePiece {
  readonly openingIds: readonly string[];
  readonly name: string;
  /** Where the name finds no room. */
  readonly short: string;
  readonly from: number;
  readonly to: number;
}

interface ThicknessChartProps {
  readonly plot: Plot;
  readonly width: number;
  readonly height: number;
  readonly curves: readonly DrawnCurve[];
  /** The family's own limit; empty until all curves are there. */
  readonly limit: readonly CurveKnot[];
  readonly course: readonly CoursePiece[];
  readonly dots: readonly DrawnDot[];
  /** Height in hand, nanometres, and what is said at the hair line. */
  readonly hair: { readonly height: number; readonly text: string };
  /** Thickest strip at that height that enters all, nanometres; null where none is known. */
  readonly most: { readonly thickness: number; readonly text: string } | null;
  /** Thickness in hand, nanometres. */
  readonly thickness: { readonly nm: number; readonly text: string } | null;
  /** What stands under the limit. */
  readonly underText: string;
}

/** Of more dots than this only the picked one has its name beside it. */
const MOST_NAMED = 12;

/** Height of the strip that tells who sets the limit, pixels. */
export const COURSE = 26;

/** Thickness against height: a line for each keyway, the family's limit, tools as dots, the height in hand. */
export function ThicknessChart(props: ThicknessChartProps) {
  const { plot, width, height, curves, limit, course, dots, hair, most, thickness, underText } = props;
  const plain = curves.filter(({ look }) => look === 'plain');
  const lit = curves.filter(({ look }) => look !== 'plain');
  const taken = most ? [mostBox(mostPlace(plot, hair.height, most), most.text)] : [];
  return (
    <svg className={styles.chart} width={width} height={height} aria-hidden="true">
      <Grid plot={plot} />
      {limit.length > 0 && <path className={styles.under} d={underCurvePath(plot, limit)} />}
      {plain.map(({ id, knots }) => (
        <path key={id} className={styles.curve} d={curvePath(plot, knots)} />
      ))}
      {lit.map(({ id, knots }) => (
        <path key={id} className={styles.litHalo} d={curvePath(plot, knots)} />
      ))}
      {limit.length > 0 && (
        <>
          <path className={styles.limitHalo} d={curvePath(plot, limit)} />
          <path className={styles.limit} d={curvePath(plot, limit)} />
        </>
      )}
      {lit.map(({ id, knots, look }) => (
        <path key={id} className={styles.lit} data-look={look} d={curvePath(plot, knots)} />
      ))}
      <UnderText plot={plot} limit={limit} text={underText} />
      <Course plot={plot} course={course} />
      {thickness && <Level plot={plot} {...thickness} taken={taken} />}
      <Hair plot={plot} {...hair} />
      <Dots plot={plot} dots={dots} taken={taken} />
      {most && <Most {...most} {...mostPlace(plot, hair.height, most)} />}
      {lit.map(({ id, name, knots, look }) => (
        <CurveName key={id} plot={plot} name={name} knots={knots} look={look} />
      ))}
    </svg>
  );
}

function Grid({ plot }: { plot: Plot }) {
  const { frame, heights, thicknesses } = plot;
  const bottom = frame.top + frame.height;
  return (
    <g className={styles.grid}>
      {heights.ticks.map(({ nm, text }) => {
        const { x } = placeOf(plot, nm, 0);
        return (
          <g key={nm}>
            <path d={`M${x} ${frame.top}V${bottom}`} />
            <text x={x} y={bottom + COURSE + 24} textAnchor="middle">
              {text}
            </text>
          </g>
        );
      })}
      {thicknesses.ticks.map(({ nm, text }) => {
        const { y } = placeOf(plot, 0, nm);
        return (
          <g key={nm}>
            <path d={`M${frame.left} ${y}H${frame.left + frame.width}`} />
            <text x={frame.left - 8} y={y + 5} textAnchor="end">
              {text}
            </text>
          </g>
        );
      })}
      <path className={styles.axes} d={`M${frame.left} ${frame.top}V${bottom}H${frame.left + frame.width}`} />
      <AxisName axis={thicknesses} what="thickness" x={8} y={frame.top - 12} anchor="start" />
      <AxisName axis={heights} what="height of the strip" x={frame.left + frame.width} y={bottom + COURSE + 45} />
    </g>
  );
}

interface AxisNameProps {
  readonly axis: Axis;
  readonly what: string;
  readonly x: number;
  readonly y: number;
  readonly anchor?: 'start' | 'end';
}

function AxisName({ axis, what, x, y, anchor = 'end' }: AxisNameProps) {
  return (
    <text className={styles.axisName} x={x} y={y} textAnchor={anchor}>
      {what}, {axis.unit}
    </text>
  );
}

/** What goes in below the limit, written in the corner where hardly any tool lies. */
function UnderText({ plot, limit, text }: { plot: Plot; limit: readonly CurveKnot[]; text: string }) {
  if (limit.length === 0) return null;
  const { frame } = plot;
  return (
    <text className={styles.underText} x={frame.left + 12} y={frame.top + frame.height - 12}>
      {text}
    </text>
  );
}

/** Below the axis: which keyway sets the limit at each height. */
function Course({ plot, course }: { plot: Plot; course: readonly CoursePiece[] }) {
  const top = plot.frame.top + plot.frame.height;
  return (
    <g className={styles.course}>
      {course.map(({ openingIds, name, short, from, to }, i) => {
        const left = placeOf(plot, from, 0).x;
        const width = placeOf(plot, to, 0).x - left;
        const told = [name, short].find((text) => width > 9 * text.length + 6);
        return (
          <g key={`${from}`} data-sets={openingIds[0]} data-shade={i % 2}>
            <title>{name}</title>
            <rect x={left} y={top + 2} width={Math.max(1, width)} height={COURSE - 6} />
            {told && (
              <text x={left + width / 2} y={top + COURSE - 9} textAnchor="middle">
                {told}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

function Hair({ plot, height, text }: { plot: Plot; height: number; text: string }) {
  const { frame } = plot;
  const { x } = placeOf(plot, height, 0);
  const width = 9 * text.length + 14;
  const left = Math.min(frame.left + frame.width - width, Math.max(frame.left, x - width / 2));
  return (
    <g className={styles.hair}>
      <path className={styles.hairGrip} d={`M${x} ${frame.top}V${frame.top + frame.height}`} />
      <path className={styles.hairLine} d={`M${x} ${frame.top - 4}V${frame.top + frame.height + COURSE}`} />
      <rect className={styles.hairPlate} x={left} y={frame.top - 30} width={width} height={26} rx={2} />
      <text x={left + width / 2} y={frame.top - 12} textAnchor="middle">
        {text}
      </text>
    </g>
  );
}

/** The thickness in hand, told at the right end of its line, at the left one where the thickest strip is told there. */
function Level({ plot, nm, text, taken }: { plot: Plot; nm: number; text: string; taken: readonly LabelBox[] }) {
  const { frame } = plot;
  if (nm > plot.thicknesses.end) return null;
  const { y } = placeOf(plot, 0, nm);
  const end = frame.left + frame.width - 4;
  const crowded = taken.some(({ right, top, bottom }) => right > end - 8.5 * text.length && top < y && bottom > y - 24);
  return (
    <g className={styles.level}>
      <path d={`M${frame.left} ${y}H${frame.left + frame.width}`} />
      <text x={crowded ? frame.left + 4 : end} y={y - 6} textAnchor={crowded ? 'start' : 'end'}>
        {text}
      </text>
    </g>
  );
}

/** Where the mark of the thickest strip lies, and on which side its text. */
interface MostPlace {
  readonly x: number;
  readonly y: number;
  readonly right: boolean;
}

/** Width of a letter of that text, pixels. */
const MOST_LETTER = 11;

function mostPlace(plot: Plot, height: number, { thickness, text }: { thickness: number; text: string }): MostPlace {
  const { x, y } = placeOf(plot, height, thickness);
  return { x, y, right: x + MOST_LETTER * text.length + 20 < plot.frame.left + plot.frame.width };
}

function mostBox({ x, y, right }: MostPlace, text: string) {
  const width = MOST_LETTER * text.length + 14;
  return { left: right ? x - 10 : x - width, right: right ? x + width : x + 10, top: y - 30, bottom: y + 9 };
}

function Most({ x, y, right, text }: MostPlace & { text: string }) {
  return (
    <g className={styles.most}>
      <circle cx={x} cy={y} r={7} />
      <text x={right ? x + 12 : x - 12} y={y - 11} textAnchor={right ? 'start' : 'end'}>
        {text}
      </text>
    </g>
  );
}

function Dots({ plot, dots, taken }: { plot: Plot; dots: readonly DrawnDot[]; taken: readonly LabelBox[] }) {
  const { frame } = plot;
  const shown = dots.filter((d) => d.height <= plot.heights.end && d.thickness <= plot.thicknesses.end);
  const places = shown.map((dot) => ({ dot, ...placeOf(plot, dot.height, dot.thickness) }));
  const named = places.length > MOST_NAMED ? places.filter(({ dot }) => dot.picked) : places;
  const first = [...named].sort((a, b) => Number(b.dot.picked) - Number(a.dot.picked));
  const labels = dotLabels(
    first.map(({ dot, x, y }) => ({ id: dot.id, x, y, lines: dot.lines })),
    { left: frame.left, top: frame.top, right: frame.left + frame.width, bottom: frame.top + frame.height },
    taken,
  );
  return (
    <>
      {places.map(({ dot, x, y }) => (
        <g key={dot.id} className={styles.dot} data-tool={dot.id} data-picked={dot.picked || undefined}>
          <title>{dot.lines.join(', ')}</title>
          <circle className={styles.ground} cx={x} cy={y} r={dot.picked ? 16 : 13} />
          <g transform={`translate(${x - 10} ${y - 10})`}>
            <VerdictMark verdict={dot.verdict} size={20} />
          </g>
        </g>
      ))}
      {labels.map(({ id, lead }) => {
        const place = places.find(({ dot }) => dot.id === id);
        return lead && place && <DotLead key={id} from={place} to={lead} />;
      })}
      {labels.map(({ id, x, y, anchor, lines }) => (
        <text key={id} className={styles.dotName} data-tool={id} textAnchor={anchor}>
          {lines.map((line, i) => (
            <tspan key={line} x={x} y={y + 18 * i}>
              {line}
            </tspan>
          ))}
        </text>
      ))}
    </>
  );
}

/** Pixels that a line keeps from the middle of its dot. */
const LEAD_FROM = 14;

interface DotLeadProps {
  readonly from: { readonly x: number; readonly y: number };
  readonly to: { readonly x: number; readonly y: number };
}

/** A line from a dot to its name, where that found no room beside it. */
function DotLead({ from, to }: DotLeadProps) {
  const share = LEAD_FROM / Math.hypot(to.x - from.x, to.y - from.y);
  const start = { x: from.x + (to.x - from.x) * share, y: from.y + (to.y - from.y) * share };
  const path = `M${start.x} ${start.y}L${to.x} ${to.y}`;
  return (
    <>
      <path className={styles.leadHalo} d={path} />
      <path className={styles.lead} d={path} />
    </>
  );
}

/** The name of a lit curve, above its beginning; of two that begin alike the second one stands below. */
function CurveName({ plot, name, knots, look }: Omit<DrawnCurve, 'id'> & { plot: Plot }) {
  if (knots.length === 0) return null;
  const { x, y } = placeOf(plot, 0, knots[0].thickness);
  return (
    <text className={styles.curveName} data-look={look} x={x + 8} y={look === 'picked' ? y - 8 : y + 20}>
      {name}
    </text>
  );
}
