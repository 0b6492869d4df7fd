import type { Units } from '../../../family/length-text.ts';
import type { Point } from '../../../geom/point.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import { setBulge } from '../../../profile/bend-edge.ts';
import { type BulgeResult, bowOf, bulgeOfBow, bulgeOfRadius, radiusOf } from '../../../profile/edge-bulge.ts';
import { moveVertices } from '../../../profile/edit-vertices.ts';
import { chosenNow, putOutline, putVertex, verticesInHand } from '../../state/draw/draw-editing.ts';
import type { Session } from '../../state/session.ts';
import { readLength } from '../../tools/draw/typed-length.ts';
import { readPlace } from '../../tools/draw/typed-place.ts';
import { NM_OF_UNIT } from '../../tools/ruler-steps.ts';

/** What a row of the table of vertices tells: the place of the vertex, and the edge that runs on from it. */
export const COLUMNS = ['x', 'y', 'radius', 'bow'] as const;

/** See {@link COLUMNS}. */
export type VertexColumn = (typeof COLUMNS)[number];

/** What became of an entry: taken, refused as an outline (the sheet says why), or not understood, in words. */
export type EntryAnswer = 'taken' | 'refused' | { readonly words: string };

const DECIMALS = { mm: 3, in: 4 } as const;
const EXACT = { mm: 6, in: 9 } as const;

/** A length as the table shows it, without its unit. */
export function shownLength(nm: number, units: Units): string {
  const text = (nm / NM_OF_UNIT[units]).toFixed(DECIMALS[units]);
  return Number(text) === 0 ? text.replace('-', '') : text.replace('-', '−');
}

/** A length to the nanometre, as an entry begins with it. */
export function exactLength(nm: number, units: Units): string {
  return String(Number((nm / NM_OF_UNIT[units]).toFixed(EXACT[units])));
}

/** A length with its unit, as faults tell it. */
export function toldLength(nm: number, units: Units): string {
  return `${exactLength(Math.round(nm), units)} ${units}`;
}

/** The length in a cell, nanometres; null for the radius or bow of a straight edge. */
export function lengthOf(vertices: readonly Vertex[], row: number, column: VertexColumn): number | null {
  const from = vertices[row];
  if (column === 'x' || column === 'y') return from[column];
  if (!from.bulge) return null;
  const to = vertices[(row + 1) % vertices.length];
  return column === 'radius' ? radiusOf(from, to) : bowOf(from, to);
}

/**
 * Takes what was typed into a cell, as one step of undo. A step (`+0.1`) or a bow goes to all chosen rows where the
 * cell is in one of them; a place (`2.1 0.5`, `@0 -0.5`, `3<90`) goes to both coordinates at once.
 */
export function takeEntry(session: Session, row: number, column: VertexColumn, text: string): EntryAnswer {
  const chosen = chosenNow(session);
  const rows = chosen.length > 1 && chosen.includes(row) ? chosen : [row];
  if (column === 'radius' || column === 'bow') return takeBend(session, rows, row, column, text);
  return isPlace(text) ? takePlace(session, row, text) : takeCoordinate(session, rows, row, column, text);
}

/** More than one number: parted by a space, a semicolon or a comma and a space, or from the vertex before. */
function isPlace(text: string): boolean {
  return /[@<;]/.test(text) || /[\d.]\s*,\s+[-+.\d]|[\d.]\s+[-+]?[.\d]/.test(text.trim());
}

function takePlace(session: Session, row: number, text: string): EntryAnswer {
  const before = verticesInHand(session).at(row - 1) ?? null;
  const place = readPlace(text, session.settings.getState().units, before);
  if (!place.ok) return { words: place.words };
  return answer(putVertex(session, row, place.at));
}

function takeCoordinate(
  session: Session,
  rows: readonly number[],
  row: number,
  column: keyof Point,
  text: string,
): EntryAnswer {
  const vertices = verticesInHand(session);
  const before = vertices[row][column];
  const typed = readLength(text, session.settings.getState().units, before);
  if (!typed.ok) return { words: typed.words };
  if (typed.nm === before) return 'taken';
  if (!typed.isStep || rows.length === 1)
    return answer(putVertex(session, row, { ...vertices[row], [column]: typed.nm }));
  const by = { x: 0, y: 0, [column]: typed.nm - before };
  return answer(putOutline(session, moveVertices(vertices, rows, by)));
}

function takeBend(
  session: Session,
  rows: readonly number[],
  row: number,
  column: 'radius' | 'bow',
  text: string,
): EntryAnswer {
  const { units } = session.settings.getState();
  const vertices = verticesInHand(session);
  const wantsStraight = /^(straight|line|0|)$/i.test(text.trim());
  const typed = wantsStraight ? { ok: true as const, nm: 0 } : readLength(text, units, null);
  if (!typed.ok) return { words: typed.words };
  if (typed.nm === (lengthOf(vertices, row, column) ?? 0)) return 'taken';
  let wanted = vertices;
  for (const edge of rows) {
    const [from, to] = [vertices[edge], vertices[(edge + 1) % vertices.length]];
    const bent: BulgeResult =
      column === 'bow'
        ? bulgeOfBow(from, to, typed.nm)
        : bulgeOfRadius(from, to, typed.nm, (nm) => toldLength(nm, units));
    if (!bent.ok) return { words: `${bent.fault.what}. ${bent.fault.cure}` };
    wanted = setBulge(wanted, edge, bent.bulge);
  }
  return answer(putOutline(session, wanted));
}

function answer(taken: boolean): EntryAnswer {
  return taken ? 'taken' : 'refused';
}
