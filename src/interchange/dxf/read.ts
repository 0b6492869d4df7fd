import { NM_PER_MM } from '../../geom/point.ts';
import type { DrawingOptions, DrawingRead } from '../drawing.ts';
import { soundRecords } from './check-records.ts';
import { unitOfCode } from './drawing-units.ts';
import { gatherNotes, type Notes } from './gather-notes.ts';
import { makePaths } from './make-paths.ts';
import { foldName, parseEntities, unescapeName } from './parse-entities.ts';
import { type LayerState, placeEntities } from './place-entities.ts';
import { scanGroups } from './scan-groups.ts';
import { type DxfRecord, groupValue, type SortedRecords, sortRecords } from './sort-records.ts';

const FROZEN = 1;

/**
 * The lines of a drawing in the Drawing Interchange Format (ASCII DXF, R12 to R2018), in model space, as closed and open
 * paths: polylines, lines and arcs joined end to end, circles, ellipses, splines, and blocks placed by inserts.
 *
 * @param text the whole file.
 * @param options a unit of length in place of the drawing's own.
 * @returns paths with the name of their layer (or, on layer 0, of their block), and notes about all that was left out or
 *   closed; faults where there is no path.
 * @accuracy straight lines and arcs as written (doubles); other curves within `CURVE_CHORD_ERROR`.
 * @source Autodesk, DXF Reference (group codes, from memory); read by the `dxf` package.
 * @check tests/unit/interchange/dxf-read.test.ts, tests/outside/dxf-readers.test.ts
 */
export function readDxf(text: string, options: DrawingOptions = {}): DrawingRead {
  const scan = scanGroups(text);
  if (!scan.ok) return scan;
  const notes = gatherNotes();
  if (!scan.ended) notes.add(null, 'has no end (EOF): it may have been cut off', 'Check that all is there.');
  const records = sortRecords(scan.groups, notes);
  const stated = statedUnit(records, notes);
  const nmPerUnit = options.nmPerUnit ?? stated ?? NM_PER_MM;
  const sound = soundParts(records, notes);
  const chains = placeEntities(parseEntities(sound), nmPerUnit, readLayers(records.layers), notes);
  const paths = makePaths(chains, notes);
  if (paths.length > 0)
    return { ok: true, drawing: { paths, nmPerUnit, unitsStated: stated !== null, notes: notes.list() } };
  const none = {
    path: 'file',
    what: 'has no line that can be an outline',
    cure: 'Draw the section as a closed polyline, or as lines and arcs that meet, in model space.',
  };
  return { ok: false, faults: [none, ...notes.list()] };
}

/** The unit that the drawing states, in nanometres; null where it states none, which is noted if it is odd. */
function statedUnit({ header }: SortedRecords, notes: Notes): number | null {
  const code = header.get('$INSUNITS');
  const unit = unitOfCode(code);
  if (unit === null && code !== undefined && code !== '0')
    notes.add(null, `states a unit that is not known ($INSUNITS ${code.slice(0, 20)})`, 'Choose the unit by hand.');
  return unit;
}

function soundParts({ blocks, entities }: SortedRecords, notes: Notes): Pick<SortedRecords, 'blocks' | 'entities'> {
  // What lies in blocks that nothing places (as sheets and the pictures of dimensions do) is not worth a note.
  const used = usedBlocks({ blocks, entities });
  return {
    entities: soundRecords(entities, notes),
    blocks: blocks
      .filter(({ head }) => used.has(foldName(groupValue(head, 2) ?? '')))
      .map(({ head, entities }) => ({ head: withSoundBase(head), entities: soundRecords(entities, notes) })),
  };
}

/** Names of the blocks that an insert in the drawing, or in a block that is used, names. */
function usedBlocks({ blocks, entities }: Pick<SortedRecords, 'blocks' | 'entities'>): Set<string> {
  const inserted = (records: readonly DxfRecord[]) =>
    records.flatMap((record) => (record.type === 'INSERT' ? [foldName(groupValue(record, 2) ?? '')] : []));
  const contents = new Map(
    blocks.map(({ head, entities }) => [foldName(groupValue(head, 2) ?? ''), inserted(entities)]),
  );
  const used = new Set<string>();
  const waiting = inserted(entities);
  for (let name = waiting.pop(); name !== undefined; name = waiting.pop()) {
    if (used.has(name)) continue;
    used.add(name);
    for (const inner of contents.get(name) ?? []) waiting.push(inner);
  }
  return used;
}

/** A block whose base point is no number stands at its origin. */
function withSoundBase(head: DxfRecord): DxfRecord {
  const groups = head.groups.filter(
    ({ code, value }) => (code !== 10 && code !== 20) || Number.isFinite(Number(value)),
  );
  return { ...head, groups };
}

function readLayers(records: readonly DxfRecord[]): Map<string, LayerState> {
  const layers = new Map<string, LayerState>();
  for (const record of records) {
    const frozen = (Number(groupValue(record, 70) ?? 0) & FROZEN) !== 0;
    const shown = Number(groupValue(record, 62) ?? 7) < 0 ? 'off' : 'shown';
    layers.set(foldName(unescapeName(groupValue(record, 2) ?? '')), frozen ? 'frozen' : shown);
  }
  return layers;
}
