import { type Family, openingsOf } from '../family/family.ts';
import { bandText, flooredText, heightText, type Units } from '../family/length-text.ts';
import type { Verdict } from '../fit/fit.ts';
import { type AskedThickness, type GaugeAnswer, gaugeAnswer } from '../gauge/gauge-answer.ts';
import { type GaugeWords, gaugeSentence } from '../gauge/gauge-sentence.ts';
import { judgeStrip } from '../gauge/judge-strip.ts';
import { type OpeningReport, openingReports } from '../gauge/opening-reports.ts';
import { heightAt, spareOf, type ThicknessCurve } from '../gauge/thickness-curve.ts';
import { catalogue } from '../jobs/catalogue.ts';
import { MARKS, shown, shownNames } from './fit-table.ts';
import { sayNoOpenings } from './no-sections.ts';
import type { GaugeCommand } from './parse-gauge.ts';
import { mm, um } from './round-lengths.ts';
import { EXIT, type Shell } from './shell.ts';

/**
 * Tells the thickest strip of a height that enters all openings of a family, who sets it, and the figures of each opening;
 * returns the exit code.
 *
 * @check tests/unit/cli/run-gauge.test.ts
 */
export async function runGauge(family: Family, command: GaugeCommand, shell: Shell): Promise<number> {
  const openings = openingsOf(family);
  const fault = sayNoOpenings(family, command.file, 'there is nothing to gauge', shell);
  if (fault !== null) return fault;
  const tiltLimit = (command.tiltDeg * Math.PI) / 180;
  const { curves } = await catalogue.gaugeFamily({ family, tiltLimit }, shell.jobs);
  shell.jobs.progress(1, 1);
  const outlines = new Map(openings.map(({ id, ring }) => [id, ring]));
  const asked = askedOf(family, curves, command);
  const answer = gaugeAnswer(curves, (id) => outlines.get(id) ?? [], command.height, asked);
  const reports = openingReports(openings, curves, command.height);
  const sentence = gaugeSentence(answer, wordsOf(family, command.tiltDeg));
  shell.print(
    command.json ? toJson(command, answer, reports, sentence) : toText(family, command, asked, reports, sentence),
  );
  return EXIT.done;
}

/** What a strip of the given thickness does in each opening, where one is given. */
function askedOf(
  family: Family,
  curves: readonly ThicknessCurve[],
  { height, thickness }: GaugeCommand,
): AskedThickness | undefined {
  if (thickness === undefined) return undefined;
  const verdicts = openingsOf(family).flatMap(({ id, ring }): [string, Verdict][] => {
    const curve = curves.find(({ openingId }) => openingId === id);
    return curve ? [[id, judgeStrip(curve, ring, { thickness, height }, family.runningClearance)]] : [];
  });
  return { thickness, verdicts: new Map(verdicts) };
}

function wordsOf(family: Family, tiltDeg: number): GaugeWords {
  const { units } = family;
  const names = shownNames(family);
  return {
    nameOf: (id) => names.get(id) ?? id,
    ...(tiltDeg > 0 && { tilted: `up to ${tiltDeg}°` }),
    thickness: (nm) => thicknessText(nm, units),
    asked: (nm) => (units === 'in' ? `${digits(nm / 25_400)} thou` : `${digits(nm / 1e6)} mm`),
    height: (nm) => heightDigits(nm, units),
    tooTall: (nm) => heightDigits(nm, units),
    tallest: (nm) => tallestText(nm, units),
    at: (nm) => heightText(nm, units),
    band: (from, to) => bandText(from, to, units),
  };
}

/** A length that was asked for: all its digits, to less than a nanometre. */
function digits(value: number): number {
  return Number(value.toFixed(6));
}

/** The height of a strip with all its digits. */
function heightDigits(nm: number, units: Units): string {
  return units === 'in' ? `${digits(nm / 25.4e6)} in` : `${digits(nm / 1e6)} mm`;
}

/** A thickness with its unit, never rounded up: a strip of what is said goes in. */
function thicknessText(nm: number, units: Units): string {
  return units === 'in' ? flooredText(nm / 25_400, 1, 'thou') : flooredText(nm / 1e6, 3, 'mm', 0);
}

/** The height of the tallest strip, never rounded up. */
function tallestText(nm: number, units: Units): string {
  return units === 'in' ? flooredText(nm / 25.4e6, 4, 'in', 0) : flooredText(nm / 1e6, 3, 'mm', 0);
}

function toText(
  family: Family,
  { height, tiltDeg }: GaugeCommand,
  asked: AskedThickness | undefined,
  reports: readonly OpeningReport[],
  sentence: string,
): string {
  const { units } = family;
  const width = Math.max('tightest first'.length, ...reports.map(({ opening }) => shown(opening.name).length));
  const head = ['thickest', ...(asked ? ['spare'] : []), ...(tiltDeg > 0 ? ['tilt'] : []), 'held at'];
  const lines = reports.map((report) => {
    const { opening, curve, thickest, tallest, pinch } = report;
    const spare = asked ? [goesWord(spareOf(curve, { ...asked, height }), asked.verdicts.get(opening.id), units)] : [];
    const tilt = tiltDeg > 0 ? [pinch ? `${((pinch.tilt * 180) / Math.PI).toFixed(2)}°` : ''] : [];
    const held = report.heights?.map((nm) => heightText(nm, units)).join(', ') ?? '';
    const cells = [thickest > 0 ? thicknessText(thickest, units) : 'none', ...spare, ...tilt, held];
    return {
      name: shown(opening.name),
      cells: [...cells, tallestText(tallest, units), sightText(report, units)],
    };
  });
  const table = [{ name: 'tightest first', cells: [...head, 'tallest', 'line of sight'] }, ...lines];
  const widths = table[0].cells.map((_, k) => Math.max(...table.map(({ cells }) => cells[k].length)));
  const body = table.map(({ name, cells }) =>
    [name.padEnd(width), ...cells.map((cell, k) => cell.padEnd(widths[k]))].join('  ').trimEnd(),
  );
  const how = tiltDeg > 0 ? `tilted by up to ${tiltDeg} degrees either way, to 1 um` : 'upright, exact';
  const clearance = thicknessText(family.runningClearance, units);
  const spareNote = asked ? `\nSpare: both sides together. Tight: goes in with less than ${clearance} all round.` : '';
  return `${sentence}\n\n${body.join('\n')}\n\nStraight strips ${how}; touching is allowed. Held at: heights above the lowest point of the keyway, left and right.${spareNote}\n`;
}

/** "+ 0.15 mm", "~ 0.05 mm, tight", "x 0.020 mm too thick": what is spare is rounded down, what is too much up. */
function goesWord(spare: number, verdict: Verdict | undefined, units: Units): string {
  if (spare >= 0 && verdict === 'tight') return `${MARKS.tight} ${thicknessText(spare, units)}, tight`;
  if (spare >= 0) return `${MARKS.enters} ${thicknessText(spare, units)}`;
  const [decimals, per, unit] = units === 'in' ? [1, 25_400, 'thou'] : [3, 1e6, 'mm'];
  const tens = 10 ** decimals;
  const steps = Math.max(1, Math.ceil((-spare / per) * tens - 1e-6));
  return `${MARKS.blocked} ${(steps / tens).toFixed(decimals)} ${unit} too thick`;
}

function sightText({ sight }: OpeningReport, units: Units): string {
  const open = sight.strip > 0 ? thicknessText(sight.strip, units) : 'none';
  return sight.paracentric ? `${open}, paracentric` : open;
}

function toJson(
  { height, tiltDeg }: GaugeCommand,
  answer: GaugeAnswer,
  reports: readonly OpeningReport[],
  sentence: string,
): string {
  const { thickest, tallest, setters, asked } = answer;
  const value = {
    sentence,
    heightMm: mm(height),
    tiltLimitDeg: tiltDeg,
    thickestMm: mm(thickest),
    setBy: setters.map(({ openingId }) => openingId),
    tallestMm: mm(tallest),
    asked: asked ? askedJson(asked) : null,
    openings: reports.map((report) => openingJson(report, asked, height)),
  };
  return `${JSON.stringify(value, null, 2)}\n`;
}

function askedJson({ thickness, verdicts }: AskedThickness) {
  const idsOf = (wanted: Verdict) => [...verdicts].flatMap(([id, verdict]) => (verdict === wanted ? [id] : []));
  return {
    thicknessMm: mm(thickness),
    enters: idsOf('enters'),
    tight: idsOf('tight'),
    blocked: idsOf('blocked'),
  };
}

function openingJson(
  { opening, curve, thickest, tallest, rank, pinch, heights, sight }: OpeningReport,
  asked: AskedThickness | undefined,
  height: number,
) {
  return {
    opening: opening.id,
    name: opening.name,
    rank,
    thickestMm: mm(thickest),
    accuracyUm: um(curve.accuracy),
    tiltDeg: pinch ? Number(((pinch.tilt * 180) / Math.PI).toFixed(4)) : null,
    heldAtMm: heights?.map(mm) ?? null,
    stripMm: pinch ? pinch.strip.map(({ x, y }) => [mm(x), mm(y)]) : null,
    verdict: asked?.verdicts.get(opening.id) ?? null,
    spareMm: asked ? mm(spareOf(curve, { ...asked, height })) : null,
    tallestSoThickMm: asked ? millimetres(heightAt(curve, asked.thickness)) : null,
    tallestMm: mm(tallest),
    sight: {
      lineOfSightMm: mm(sight.strip),
      leftReachMm: mm(sight.left),
      rightReachMm: mm(sight.right),
      paracentric: sight.paracentric,
    },
    curveMm: curve.knots.map((knot) => [mm(knot.height), mm(knot.thickness)]),
  };
}

function millimetres(nm: number | null): number | null {
  return nm === null ? null : mm(nm);
}
