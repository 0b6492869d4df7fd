import { useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Units } from '../../../family/length-text.ts';
import { thicknessAt } from '../../../gauge/thickness-curve.ts';
import { makeAxis } from '../../state/gauge/chart-scale.ts';
import { type Plot, placeOf } from '../../state/gauge/curve-path.ts';
import {
  askedHeightText,
  askedThicknessText,
  HEIGHT_MEASURES,
  spareText,
  thicknessText,
} from '../../state/gauge/gauge-lengths.ts';
import { alikeNames, shortName } from '../../state/gauge/gauge-words.ts';
import { holdTool } from '../../state/gauge/strip-in-hand.ts';
import { countWords, type ShownTool } from '../../state/gauge/tool-rows.ts';
import { useSize } from '../use-size.ts';
import { useSession, useStore } from '../use-store.ts';
import { type ChartTargets, useChartHands } from './chart-hands.ts';
import styles from './chart-panel.module.css';
import { COURSE, type CoursePiece, type DrawnCurve, type DrawnDot, ThicknessChart } from './thickness-chart.tsx';
import type { ShownGauge } from './use-gauge.ts';
import { useShownTools } from './use-tools.ts';

/** Room for numbers and names round the plot, pixels. */
const LEFT = 52;
const TOP = 40;
const RIGHT = 24;
const BOTTOM = COURSE + 54;

/** From this width on a dot also tells how many keyways it enters, pixels. */
const WIDE = 520;

/** Least sizes of the plot, pixels. */
const LEAST_WIDTH = 180;
const LEAST_HEIGHT = 120;

/** The chart with its hands; what is in it can also be read and picked in the readings. */
export function ChartPanel({ family, gauge }: { family: Family; gauge: ShownGauge }) {
  const [frame, size] = useSize<HTMLDivElement>();
  return (
    <div className={styles.panel}>
      <Legend />
      <div ref={frame} className={styles.frame}>
        {size && size.width > 0 && size.height > 0 && (
          <Chart family={family} gauge={gauge} width={size.width} height={size.height} />
        )}
      </div>
    </div>
  );
}

function Legend() {
  return (
    <ul className={styles.legend}>
      <li data-line="limit">
        <Line /> enters all keyways
      </li>
      <li data-line="picked">
        <Line /> the picked one
      </li>
      <li>
        <Line /> each other one
      </li>
    </ul>
  );
}

function Line() {
  return (
    <svg width="34" height="8" aria-hidden="true">
      <path d="M1 4H33" />
    </svg>
  );
}

interface ChartProps {
  readonly family: Family;
  readonly gauge: ShownGauge;
  readonly width: number;
  readonly height: number;
}

function Chart({ family, gauge, width, height }: ChartProps) {
  const session = useSession();
  const { selection, gauge: store } = session;
  const units = useStore(session.settings, (s) => s.units);
  const plot = usePlot(gauge, width, height);
  const curves = useDrawnCurves(gauge);
  const targets = useMemo(() => targetsOf(gauge, plot), [gauge, plot]);
  const hands = useChartHands({
    plot,
    height: gauge.height,
    measure: HEIGHT_MEASURES[units],
    targets,
    pickedId: gauge.picked?.id ?? null,
    onHeight: (nm) => store.setState({ height: nm }),
    onPickOpening: (openingId) => selection.setState({ openingId, part: 'opening' }),
    onPickTool: (id) => holdTool(session, family, id),
    onPoint: (pointed) => store.setState({ pointed }),
  });
  const tools = useShownTools(family, false);
  const entrantId = useStore(selection, (s) => s.entrantId);
  const { most } = gauge;
  return (
    <div
      className={styles.hands}
      role="slider"
      tabIndex={0}
      aria-label="Height of the strip"
      aria-orientation="horizontal"
      aria-valuemin={0}
      aria-valuemax={plot.heights.end / 1e6}
      aria-valuenow={gauge.height / 1e6}
      aria-valuetext={valueText(gauge, units)}
      aria-describedby="gauge-chart-keys"
      data-gauge-chart
      {...hands}
    >
      <ThicknessChart
        plot={plot}
        width={width}
        height={height}
        curves={curves}
        limit={gauge.limit?.knots ?? []}
        course={courseOf(gauge)}
        dots={dotsOf(tools, entrantId, width > WIDE, units)}
        hair={{ height: gauge.height, text: askedHeightText(gauge.height, units) }}
        most={most === null ? null : { thickness: most, text: thicknessText(most, units) }}
        thickness={
          gauge.thickness === null ? null : { nm: gauge.thickness, text: askedThicknessText(gauge.thickness, units) }
        }
        underText={`enters all ${gauge.openings.length}`}
      />
      <span id="gauge-chart-keys" className="unseen">
        Left and right move the height; up and down pick the next wider or tighter keyway at that height.
      </span>
    </div>
  );
}

/** The axes: as far as the tallest and thickest curve, and a little beyond tools that are near. */
function usePlot(gauge: ShownGauge, width: number, height: number): Plot {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const { tallest, thickest } = gauge;
  return useMemo(() => {
    const frame = {
      left: LEFT,
      top: TOP,
      width: Math.max(LEAST_WIDTH, width - LEFT - RIGHT),
      height: Math.max(LEAST_HEIGHT, height - TOP - BOTTOM),
    };
    return {
      frame,
      heights: makeAxis('height', tallest, Math.min(12, Math.floor(frame.width / 52)), units),
      thicknesses: makeAxis('thickness', thickest, Math.min(10, Math.floor(frame.height / 42)), units),
    };
  }, [width, height, units, tallest, thickest]);
}

function useDrawnCurves(gauge: ShownGauge): DrawnCurve[] {
  const pointed = useStore(useSession().gauge, (s) => s.pointed);
  return gauge.openings.flatMap((opening): DrawnCurve[] => {
    const curve = gauge.curves.get(opening.id);
    if (!curve) return [];
    const other = opening.id === pointed ? 'pointed' : 'plain';
    const look = opening.id === gauge.picked?.id ? 'picked' : other;
    return [{ id: opening.id, name: shortName(opening), knots: curve.knots, look }];
  });
}

function targetsOf(gauge: ShownGauge, plot: Plot): ChartTargets {
  const at = (height: number) =>
    [...gauge.curves.values()].map((curve) => ({ id: curve.openingId, thickness: thicknessAt(curve, height) }));
  return {
    nearestCurve(height, y) {
      let best: { id: string; apart: number } | null = null;
      for (const { id, thickness } of at(height)) {
        const apart = Math.abs(placeOf(plot, height, thickness).y - y);
        if (!best || apart < best.apart) best = { id, apart };
      }
      return best;
    },
    stackAt: (height) =>
      at(height)
        .sort((a, b) => b.thickness - a.thickness)
        .map(({ id }) => id),
  };
}

function courseOf({ limit, openings }: ShownGauge): CoursePiece[] {
  if (!limit) return [];
  return limit.stretches.map(({ openingIds, from, to }) => {
    const setters = openings.filter(({ id }) => openingIds.includes(id));
    const name = alikeNames(setters);
    return { openingIds, name, short: setters.length > 1 ? `${setters.length} alike` : name, from, to };
  });
}

function dotsOf(tools: readonly ShownTool[], pickedId: string | null, wide: boolean, units: Units): DrawnDot[] {
  return tools.map((row) => {
    const { tool, size, straight, verdict, spare, cells } = row;
    const room = straight ? spareWords(spare, units) : 'shaped';
    const count = wide && cells.length > 0 ? `, ${countWords(row)}` : '';
    return { id: tool.id, ...size, verdict, picked: tool.id === pickedId, lines: [tool.name, `${room}${count}`] };
  });
}

function spareWords(spare: number | null, units: Units): string {
  return spare === null ? '…' : spareText(spare, units);
}

function valueText(gauge: ShownGauge, units: Units): string {
  const { height, most, picked, curves } = gauge;
  const parts = [`${askedHeightText(height, units)} tall`];
  if (most !== null) parts.push(`${thicknessText(most, units)} enters all`);
  const curve = picked && curves.get(picked.id);
  if (picked && curve) parts.push(`${picked.name} takes ${thicknessText(thicknessAt(curve, height), units)}`);
  return parts.join(', ');
}
