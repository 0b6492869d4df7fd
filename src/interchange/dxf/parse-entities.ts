import parseStringModule from 'dxf/lib/parseString.js';
import type { DxfRecord, SortedRecords } from './sort-records.ts';
import { groupValue } from './sort-records.ts';

/** What all entities have. `handle` is the number of the line that the entity begins on. */
interface Common {
  readonly handle: string;
  readonly layer?: string;
  readonly visible?: boolean;
  readonly paperSpace?: number;
  readonly extrusionX?: number;
  readonly extrusionY?: number;
  readonly extrusionZ?: number;
}

/** A point as the file gives it, in the units of the drawing. */
export interface DxfPoint {
  readonly x: number;
  readonly y: number;
  readonly z?: number;
  readonly bulge?: number;
}

export interface DxfLine extends Common {
  readonly type: 'LINE';
  readonly start: DxfPoint;
  readonly end: DxfPoint;
}

/** An arc or a circle; angles in radians. */
export interface DxfArc extends Common, DxfPoint {
  readonly type: 'ARC' | 'CIRCLE';
  readonly r: number;
  readonly startAngle?: number;
  readonly endAngle?: number;
}

/** The angles are parameters in radians, counted from the end of the major axis. */
export interface DxfEllipse extends Common, DxfPoint {
  readonly type: 'ELLIPSE';
  readonly majorX: number;
  readonly majorY: number;
  readonly majorZ?: number;
  readonly axisRatio: number;
  readonly startAngle?: number;
  readonly endAngle?: number;
}

export interface DxfPolyline extends Common {
  readonly type: 'LWPOLYLINE' | 'POLYLINE';
  readonly vertices: readonly DxfPoint[];
  readonly closed?: boolean;
  readonly polygonMesh?: boolean;
  readonly polyfaceMesh?: boolean;
}

export interface DxfSpline extends Common {
  readonly type: 'SPLINE';
  readonly controlPoints: readonly DxfPoint[];
  readonly knots: readonly number[];
  readonly weights?: readonly number[];
  readonly degree: number;
  readonly closed?: boolean;
}

/** Angles in degrees. */
export interface DxfInsert extends Common {
  readonly type: 'INSERT';
  readonly block: string;
  readonly x?: number;
  readonly y?: number;
  readonly scaleX?: number;
  readonly scaleY?: number;
  readonly rotation?: number;
  readonly columnCount?: number;
  readonly rowCount?: number;
  readonly columnSpacing?: number;
  readonly rowSpacing?: number;
}

export type DxfEntity = DxfLine | DxfArc | DxfEllipse | DxfPolyline | DxfSpline | DxfInsert;

/** A group of entities that inserts place. */
export interface DxfBlock {
  readonly name: string;
  readonly base: DxfPoint;
  readonly entities: readonly DxfEntity[];
}

/** The entities of a drawing and of its blocks. Names of layers and blocks are numbers in `names`. */
export interface DxfEntities {
  readonly entities: readonly DxfEntity[];
  /** By the name in small letters: names do not tell capitals from small letters. */
  readonly blocks: ReadonlyMap<string, DxfBlock>;
}

const parseString = typeof parseStringModule === 'function' ? parseStringModule : parseStringModule.default;

/**
 * Reads the entities of sound records by the library. What it is given is written anew: its reader takes a layer called
 * `ENDBLK` for the end of a block, and throws on groups out of order, so names become numbers and only sound records are
 * handed on, each with the number of its line as its handle.
 *
 * @param sorted records checked by `soundRecords`.
 * @check tests/unit/interchange/dxf-read.test.ts, tests/outside/dxf-readers.test.ts
 */
export function parseEntities({ blocks, entities }: Pick<SortedRecords, 'blocks' | 'entities'>): DxfEntities {
  const names: string[] = [];
  const lines: string[] = ['0', 'SECTION', '2', 'BLOCKS'];
  for (const { head, entities } of blocks) {
    lines.push('0', 'BLOCK', '2', alias(groupValue(head, 2) ?? '', names));
    lines.push('10', groupValue(head, 10) ?? '0', '20', groupValue(head, 20) ?? '0');
    writeRecords(entities, names, lines);
    lines.push('0', 'ENDBLK');
  }
  lines.push('0', 'ENDSEC', '0', 'SECTION', '2', 'ENTITIES');
  writeRecords(entities, names, lines);
  lines.push('0', 'ENDSEC', '0', 'EOF');
  const parsed = parseString(lines.join('\n')) as Parsed;
  const restored = parsed.blocks.map(({ name, x, y, entities }) => ({
    name: unescapeName(names[Number(name)]),
    base: { x, y },
    entities: restore(entities, names),
  }));
  const byName = restored.map((block) => [foldName(block.name), block] as const);
  return { entities: restore(parsed.entities, names), blocks: new Map(byName) };
}

/** A name of a layer or block in the form in which names are compared. */
export function foldName(name: string): string {
  return name.trim().toLowerCase();
}

/** What the library returns. */
interface Parsed {
  readonly entities: readonly DxfEntity[];
  readonly blocks: readonly { name: string; x: number; y: number; entities: readonly DxfEntity[] }[];
}

/** The number that stands for a name in the text for the library. */
function alias(name: string, names: string[]): string {
  names.push(name);
  return String(names.length - 1);
}

function writeRecords(records: readonly DxfRecord[], names: string[], lines: string[]): void {
  for (const { type, line, groups } of records) {
    lines.push('0', type, '5', String(line));
    for (const { code, value } of groups) {
      if (code === 8 || (code === 2 && type === 'INSERT')) lines.push(String(code), alias(value, names));
      else if ((code >= 10 && code < 80) || (code >= 210 && code < 240)) lines.push(String(code), value.trim());
    }
  }
}

function restore(entities: readonly DxfEntity[], names: readonly string[]): DxfEntity[] {
  return entities.map((entity) => ({
    ...entity,
    ...(entity.layer !== undefined && { layer: unescapeName(names[Number(entity.layer)]) }),
    ...(entity.type === 'INSERT' && { block: unescapeName(names[Number(entity.block)]) }),
  }));
}

/** A name with `\U+00F6` turned into the letter that it stands for. */
export function unescapeName(name: string): string {
  return name.replace(/\\U\+([0-9A-Fa-f]{4})/g, (_, hex: string) => String.fromCharCode(parseInt(hex, 16))).trim();
}
