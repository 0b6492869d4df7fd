import { sayText } from '../json/file-fault.ts';
import type { Notes } from './gather-notes.ts';
import { type DxfRecord, groupValue } from './sort-records.ts';

/** The entities that an outline can be taken from, and the groups without which they cannot be drawn. */
const NEEDED: Readonly<Record<string, readonly number[]>> = {
  LINE: [10, 20, 11, 21],
  ARC: [10, 20, 40, 50, 51],
  CIRCLE: [10, 20, 40],
  ELLIPSE: [10, 20, 11, 21, 40],
  LWPOLYLINE: [10, 20],
  POLYLINE: [],
  VERTEX: [10, 20],
  SPLINE: [71, 10, 20],
  INSERT: [2],
};

/** Records that belong to others and say nothing about lines. */
const SILENT = new Set(['SEQEND', 'ATTRIB', 'ATTDEF', 'VIEWPORT']);

/** What the file calls its frame of a smoothed polyline: points that lie off its line. */
const FRAME_POINT = 16;

const DRAW_AGAIN = 'Draw it once more, or save the drawing once more.';
const AS_LINES = 'Explode it or draw it as lines, arcs and polylines, if it is part of an outline.';

/**
 * The records that are sound: known entities with all the groups that they need, each number a number. All others are
 * told with their line and left out.
 *
 * @source DXF reference, "ENTITIES section": group codes of each entity (from memory).
 * @check tests/unit/interchange/dxf-hostile.test.ts
 */
export function soundRecords(records: readonly DxfRecord[], notes: Notes): DxfRecord[] {
  return withVertices(records).flatMap((parts) => {
    const [{ type, line }] = parts;
    if (SILENT.has(type) || type === 'VERTEX') return [];
    if (!Object.hasOwn(NEEDED, type)) {
      notes.add(line, `${sayType(type)} is not a line that an outline can be made of; left out`, AS_LINES);
      return [];
    }
    const fault = parts.map(recordFault).find((found) => found !== null);
    if (fault) notes.add(fault.line, `${fault.what}; ${type} left out`, DRAW_AGAIN);
    if (fault) return [];
    tellDoubts(parts[0], notes);
    return parts.filter((part) => part.type !== 'VERTEX' || !isFramePoint(part));
  });
}

/** Each record by itself, but a polyline with its vertices: without one of them it would be another line. */
function withVertices(records: readonly DxfRecord[]): DxfRecord[][] {
  const entities: DxfRecord[][] = [];
  for (const record of records) {
    const last = entities.at(-1);
    if (record.type === 'VERTEX' && last?.[0].type === 'POLYLINE') last.push(record);
    else entities.push([record]);
  }
  return entities;
}

function isFramePoint(vertex: DxfRecord): boolean {
  return (Number(groupValue(vertex, 70) ?? 0) & FRAME_POINT) !== 0;
}

function recordFault(record: DxfRecord): { line: number; what: string } | null {
  const { type, line, groups } = record;
  if (type === 'SPLINE' && groupValue(record, 10) === undefined && groupValue(record, 11) !== undefined)
    return { line, what: 'a spline with fit points only does not say how it runs between them' };
  const missing = NEEDED[type].find((code) => groupValue(record, code) === undefined);
  if (missing !== undefined) return { line, what: `group ${missing} is missing` };
  const bad = groups.find(({ code, value }) => isNumeric(code) && !isNumber(value));
  if (bad) return { line: bad.line, what: `group ${bad.code} is ${sayText(bad.value.trim())}, not a number` };
  const firstX = groups.findIndex(({ code }) => code === 10);
  const early = groups.findIndex(({ code }) => code === 20 || code === 42);
  const orders = type === 'LWPOLYLINE' || type === 'SPLINE';
  if (orders && groups[early].code === 20 && early < firstX) return { line, what: 'a y (group 20) has no x before it' };
  if (type === 'LWPOLYLINE' && early < firstX) return { line, what: 'a bulge (group 42) has no vertex before it' };
  const [xs, ys] = [10, 20].map((code) => groups.filter((group) => group.code === code).length);
  return xs === ys || !orders ? null : { line, what: `${xs} x (group 10) and ${ys} y (group 20) do not match` };
}

/** Whether a group of an entity that we read holds a number. */
function isNumeric(code: number): boolean {
  return (code >= 10 && code < 80) || (code >= 210 && code < 240);
}

function isNumber(value: string): boolean {
  return /^\s*[+-]?(\d+(?:\.\d*)?|\.\d+)([eE][+-]?\d+)?\s*$/.test(value) && Number.isFinite(Number(value));
}

function tellDoubts(record: DxfRecord, notes: Notes): void {
  const { type, line, groups } = record;
  if (type === 'LWPOLYLINE') {
    const stated = groupValue(record, 90);
    const count = groups.filter(({ code }) => code === 10).length;
    if (stated !== undefined && Number(stated) !== count)
      notes.add(line, `says that it has ${sayText(stated)} vertices and has ${count}`, 'Look whether any is missing.');
  }
  const wide = groups.some(({ code, value }) => (code === 40 || code === 41 || code === 43) && Number(value) !== 0);
  if (wide && type.endsWith('POLYLINE'))
    notes.add(line, 'is a line with a width; its middle is taken', 'Draw both its edges, if those are meant.');
}

function sayType(type: string): string {
  return /^[A-Z0-9_]{1,40}$/.test(type) ? type : sayText(type);
}
