import type { Point } from '../../../src/geom/point.ts';
import type { FitCase } from '../../cases/fit-case.ts';
import type { CoreAnswer } from './core-answer.ts';
import type { InnerFit, InnerFitEngine } from './inner-fit-result.ts';
import { ARC_SHORTFALL, DepthMeter } from './jsts-interference.ts';
import { jstsOpening, jstsOutlineDistance, jstsPolygon } from './jsts-shapes.ts';

/*
 * Where the program under test and somebody else do not agree, in words, with the case by name. An empty list is
 * full agreement. Lengths in nanometres.
 */

/** No comparison may be this far out, whatever its own allowance: the promise made to the user. */
export const PROMISE = 1000;

/** A clearance may be stated no more roughly than this. */
const CLEARANCE_ACCURACY = 100;

/** Rounding of witnesses and vertices. */
const ROUNDING = 0.1;
/** Share by which the engines' clearance may be too large, from arcs drawn as inscribed polygons. */
const ARCS = 8e-5;
/** An area may differ by this times half the outline of the region's box. */
const AREA_EDGE = 1;

/** What an engine answers otherwise than the program under test. */
export function disagreements(fitCase: FitCase, answer: CoreAnswer, name: string, engine: InnerFitEngine): string[] {
  const theirs = engine(fitCase.opening, fitCase.blank);
  const found = theirs.area > 0 ? areaDisagreements(answer, theirs) : noAreaDisagreements(answer);
  return found.map((text) => `${fitCase.name}, ${name}: ${text}`);
}

function areaDisagreements({ fit, area }: CoreAnswer, theirs: InnerFit): string[] {
  if (fit.verdict === 'blocked')
    return [`goes in with ${theirs.radius} to spare, ours is blocked by ${-fit.clearance}`];
  const found: string[] = [];
  const low = theirs.radius * (1 - ARCS) - ROUNDING - fit.accuracy;
  const high = theirs.radius + theirs.short + ROUNDING;
  const off = Math.max(low - fit.clearance, fit.clearance - high, 0);
  if (off > 0 || Math.abs(fit.clearance - theirs.radius) > PROMISE)
    found.push(`clearance ${theirs.radius}, ours ${fit.clearance}`);
  const halfOutline = fit.play.lateral + fit.play.vertical;
  if (Math.abs(area - theirs.area) > AREA_EDGE * halfOutline) found.push(`area ${theirs.area}, ours ${area}`);
  if (theirs.pieces === 1 && playDiffers(fit.play, theirs.play)) {
    found.push(
      `play ${theirs.play.lateral} x ${theirs.play.vertical}, ours ${fit.play.lateral} x ${fit.play.vertical}`,
    );
  }
  return found;
}

function playDiffers(a: InnerFit['play'], b: InnerFit['play']): boolean {
  return Math.abs(a.lateral - b.lateral) > 1 || Math.abs(a.vertical - b.vertical) > 1;
}

/** Engines that work by area see nothing of a contact: then the witness alone decides, elsewhere. */
function noAreaDisagreements({ fit, area }: CoreAnswer): string[] {
  const found: string[] = [];
  if (fit.verdict !== 'blocked' && fit.clearance > 0.1) found.push(`no area, ours has ${fit.clearance} to spare`);
  if (area > AREA_EDGE * (fit.play.lateral + fit.play.vertical)) found.push(`no area, ours ${area}`);
  return found;
}

/**
 * Whether the placement that the program shows is what it says, by JSTS: where it goes in, the blank lies inside and
 * its outline keeps the clearance from the opening's; where it does not, it stands out by the interference.
 */
export function witnessFaults(fitCase: FitCase, { fit }: CoreAnswer): string[] {
  const { opening, blank, name } = fitCase;
  const at = { x: fit.placement.x, y: fit.placement.y };
  const meter = new DepthMeter(opening, blank);
  if (fit.verdict === 'blocked')
    return depthFaults(meter, at, -fit.clearance, fit.accuracy).map((text) => `${name}: ${text}`);
  const gap = jstsOutlineDistance(jstsOpening(opening, minus(at)), jstsPolygon(blank));
  const found: string[] = [];
  if (fit.accuracy > CLEARANCE_ACCURACY) found.push(`clearance stated within ${fit.accuracy} only`);
  if (!meter.isWithin(at, 0.5)) found.push('the blank at the witness does not lie inside the opening');
  if (gap < fit.clearance - 1 || gap > fit.clearance + fit.accuracy + 1)
    found.push(`gap at the witness ${gap}, said ${fit.clearance}`);
  return found.map((text) => `${name}: ${text}`);
}

/** The depth at the witness is no less than the interference and no more than its upper end, the arcs' shortfall allowed. */
function depthFaults(meter: DepthMeter, at: Point, said: number, accuracy: number): string[] {
  const depth = meter.depthAt(at, 1);
  if (accuracy > PROMISE) return [`interference stated within ${accuracy} only`];
  const fits = depth - 1 - ARC_SHORTFALL <= said + accuracy && depth + 1 >= said - accuracy;
  return fits && Math.abs(depth - said) <= PROMISE
    ? []
    : [`depth at the witness ${depth}, said ${said} within ${accuracy}`];
}

/** What is known of a case by construction or formula and answered otherwise. */
export function knownFaults(fitCase: FitCase, { fit, area }: CoreAnswer): string[] {
  const { known, name, why } = fitCase;
  const within = (known.within ?? 0) + fit.accuracy + 1e-3;
  const found: string[] = [];
  if (known.outcome && outcomeOf(fit) !== known.outcome) found.push(`is ${outcomeOf(fit)}, should be ${known.outcome}`);
  if (known.clearance !== undefined && Math.abs(Math.max(0, fit.clearance) - known.clearance) > within) {
    found.push(`clearance ${fit.clearance} within ${fit.accuracy}, should be ${known.clearance}`);
  }
  if (known.interference !== undefined && Math.abs(-fit.clearance - known.interference) > within) {
    found.push(`interference ${-fit.clearance} within ${fit.accuracy}, should be ${known.interference}`);
  }
  if (known.area !== undefined && Math.abs(area - known.area) > (known.areaWithin ?? 0) + 1e-9 * known.area) {
    found.push(`area ${area}, should be ${known.area}`);
  }
  if (
    known.play &&
    Math.hypot(fit.play.lateral - known.play.lateral, fit.play.vertical - known.play.vertical) >
      (known.within ?? 0) + 1e-3
  ) {
    found.push(
      `play ${fit.play.lateral} x ${fit.play.vertical}, should be ${known.play.lateral} x ${known.play.vertical}`,
    );
  }
  return found.map((text) => `${name}: ${text} (${why})`);
}

function outcomeOf(fit: CoreAnswer['fit']): 'fits' | 'contact' | 'blocked' {
  if (fit.verdict === 'blocked') return 'blocked';
  return fit.clearance > 0 ? 'fits' : 'contact';
}

function minus(p: Point): Point {
  return { x: -p.x, y: -p.y };
}
