import { type Affine, compose, rotation, scaling, translation } from '../../geom/affine.ts';
import { sayText } from '../json/file-fault.ts';
import type { Chain } from './chain.ts';
import { type DrawnEntity, entityChains, ownPlane } from './entity-chains.ts';
import type { Notes } from './gather-notes.ts';
import { type DxfBlock, type DxfEntities, type DxfEntity, type DxfInsert, foldName } from './parse-entities.ts';

/** How a layer is shown. */
export type LayerState = 'shown' | 'off' | 'frozen';

/** Deepest nesting of blocks. */
const MOST_DEPTH = 16;

/** Most placements of blocks, and most vertices of all lines, in one drawing. */
const MOST_PLACEMENTS = 20_000;
const MOST_VERTICES = 400_000;

const DRAW_ONLY = 'Save only the sections as DXF, without the rest of the drawing.';
const SHOW_LAYER = 'Show the layer and save again, if what is on it is meant.';

/** Where the walk through a drawing stands. */
interface Place {
  readonly map: Affine;
  /** Layer of the insert, which entities on layer 0 of its block take over. */
  readonly layer: string;
  readonly hidden: boolean;
  /** Names of the blocks round this place, in small letters, the outermost first. */
  readonly within: readonly string[];
}

/**
 * Every line of a drawing in nanometres, blocks expanded, without what is hidden or in paper space.
 *
 * @param nmPerUnit nanometres in one unit of the drawing.
 * @param layers by name in small letters; layers not in it are shown.
 * @source DXF reference, INSERT and BLOCK: base point, scale, rotation, columns and rows turned with the insert, layer 0
 *   of a block takes the layer of its insert (from memory).
 * @check tests/unit/interchange/dxf-read.test.ts, tests/outside/dxf-readers.test.ts
 */
export function placeEntities(
  { entities, blocks }: DxfEntities,
  nmPerUnit: number,
  layers: ReadonlyMap<string, LayerState>,
  notes: Notes,
): Chain[] {
  const walk: Walk = { blocks, layers, notes, chains: [], placements: 0, vertices: 0, full: false };
  walkEntities(walk, entities, { map: scaling(nmPerUnit, nmPerUnit), layer: '0', hidden: false, within: [] });
  return walk.chains;
}

/** A walk through a drawing: where it looks things up, and what it has met. */
interface Walk {
  readonly blocks: DxfEntities['blocks'];
  readonly layers: ReadonlyMap<string, LayerState>;
  readonly notes: Notes;
  readonly chains: Chain[];
  placements: number;
  vertices: number;
  full: boolean;
}

/** Whether as much was met as is read of one drawing; told once. */
function isFull(walk: Walk): boolean {
  if (!walk.full && walk.placements <= MOST_PLACEMENTS && walk.vertices <= MOST_VERTICES) return false;
  if (!walk.full) walk.notes.add(null, 'holds so much that only its first part was read', DRAW_ONLY);
  walk.full = true;
  return true;
}

function walkEntities(walk: Walk, entities: readonly DxfEntity[], place: Place): void {
  for (const entity of entities) {
    if (isFull(walk)) return;
    const here = placeOf(entity, place, walk);
    if (!here) continue;
    if (entity.type === 'INSERT') walkInsert(walk, entity, here);
    else draw(walk, entity, here);
  }
}

/**
 * Where an entity lies, or null where it is not seen, which is noted. Of an insert on a layer that is only switched off,
 * what lies on other layers is still seen.
 */
function placeOf(entity: DxfEntity, place: Place, { layers, notes }: Walk): Place | null {
  const own = entity.layer ?? '0';
  const layer = own === '0' ? place.layer : own;
  const state = own === '0' && place.hidden ? 'off' : (layers.get(foldName(layer)) ?? 'shown');
  if (state === 'off' && entity.type === 'INSERT' && isSeen(entity)) return { ...place, layer, hidden: true };
  const why = hiddenBecause(entity, layer, state);
  if (why === null) return { ...place, layer, hidden: false };
  notes.add(Number(entity.handle), why, SHOW_LAYER);
  return null;
}

function draw(walk: Walk, entity: DrawnEntity, { map, layer, within }: Place): void {
  const label = layer === '0' ? (walk.blocks.get(within.at(-1) ?? '')?.name ?? '') : layer;
  for (const chain of entityChains(entity, map, label, walk.notes)) {
    walk.chains.push(chain);
    walk.vertices += chain.vertices.length;
  }
}

function walkInsert(walk: Walk, entity: DxfInsert, place: Place): void {
  const block = findBlock(entity, walk.blocks, place.within, walk.notes);
  const maps = block ? insertMaps(entity, block, walk.notes) : null;
  if (!block || !maps) return;
  const within = [...place.within, foldName(block.name)];
  for (const map of maps) {
    walk.placements += 1;
    if (isFull(walk)) return;
    walkEntities(walk, block.entities, { ...place, map: compose(place.map, map), within });
  }
}

function isSeen({ visible, paperSpace }: DxfEntity): boolean {
  return visible !== false && !paperSpace;
}

/** Why an entity is not part of what the drawing shows, or null. */
function hiddenBecause(entity: DxfEntity, layer: string, state: LayerState): string | null {
  if (entity.paperSpace) return `${entity.type} is on a sheet (paper space), not in the drawing; left out`;
  if (entity.visible === false) return `${entity.type} is hidden; left out`;
  if (state === 'shown') return null;
  return `is on the layer ${sayText(layer)}, which is ${state === 'off' ? 'switched off' : 'frozen'}; left out`;
}

/** The block of an insert where it may be placed; else why not is noted. */
function findBlock(
  { handle, block: name }: DxfInsert,
  blocks: DxfEntities['blocks'],
  within: readonly string[],
  notes: Notes,
): DxfBlock | null {
  const line = Number(handle);
  const block = blocks.get(foldName(name));
  const tell = (what: string, cure: string): null => {
    notes.add(line, what, cure);
    return null;
  };
  if (!block)
    return tell(
      `INSERT places the block ${sayText(name)}, which is not in the file; left out`,
      'Bind or explode it, and save again.',
    );
  if (within.includes(foldName(name)))
    return tell(
      `the block ${sayText(name)} holds itself; the inner one is left out`,
      'Explode it in the drawing program.',
    );
  if (within.length >= MOST_DEPTH)
    return tell(`blocks are nested deeper than ${MOST_DEPTH}; the inner ones are left out`, 'Explode them.');
  return block;
}

/** The maps from a block into what holds its insert, one for each column and row, or null where it cannot be placed. */
function insertMaps(entity: DxfInsert, block: DxfBlock, notes: Notes): Iterable<Affine> | null {
  const { handle, x = 0, y = 0, scaleX = 1, scaleY = 1, rotation: angle = 0 } = entity;
  const plane = ownPlane(entity);
  if (!plane || scaleX === 0 || scaleY === 0) {
    const what = plane ? 'INSERT has a scale of 0' : 'INSERT lies in a tilted plane';
    notes.add(Number(handle), `${what}; left out`, 'Explode it in the drawing program.');
    return null;
  }
  const stand = compose(plane, compose(translation(x, y), rotation(angle)));
  const sized = compose(scaling(scaleX, scaleY), translation(-block.base.x, -block.base.y));
  return cells(entity, (dx, dy) => compose(compose(stand, translation(dx, dy)), sized));
}

function* cells(entity: DxfInsert, place: (dx: number, dy: number) => Affine): Iterable<Affine> {
  const { columnCount = 1, rowCount = 1, columnSpacing = 0, rowSpacing = 0 } = entity;
  for (let row = 0; row < Math.max(1, rowCount); row += 1)
    for (let column = 0; column < Math.max(1, columnCount); column += 1)
      yield place(column * columnSpacing, row * rowSpacing);
}
