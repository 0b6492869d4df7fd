import type { FileUnits } from '../../family/family.ts';
import type { OutlineFaultKind } from '../../geom/check-outline.ts';
import type { Point } from '../../geom/point.ts';
import type { Ring } from '../../geom/ring.ts';
import { makeDrawn, type Vertex, vertexAt } from '../../geom/vertex.ts';
import { type FileFault, type FilePath, sayPath } from './file-fault.ts';
import { sayLength, sayLimit, toNanometres, withinLimit } from './file-units.ts';
import type { ProfileFile } from './schema.ts';

/** The vertices as the file gives them. */
type OutlineFile = NonNullable<ProfileFile['outline']>;

/** A sound outline of a profile, or everything that is wrong with it. */
export type OutlineRead =
  | { readonly ok: true; readonly ring: Ring; readonly drawn: readonly Vertex[] }
  | { readonly ok: false; readonly faults: FileFault[] };

/** What to do about each kind of fault of an outline. */
const CURES: Readonly<Record<OutlineFaultKind, string>> = {
  'too-few-vertices': 'Give at least three different points.',
  'too-many-vertices': 'Draw the outline with fewer points.',
  'too-jagged': 'Smooth the outline, or draw it with fewer points.',
  'not-finite': 'Give two numbers, [x, y].',
  'too-large': 'Check the units; move the outline to the origin.',
  'repeated-vertex': 'Remove one of the two, or part them.',
  'zero-area': 'Give points that enclose an area.',
  'self-crossing':
    'Put the points in order round the outline, or move them so that the edges no longer cross. Edge n starts at point n.',
  'self-touching': 'Move the points so that the edges keep apart. Edge n starts at point n.',
};

/**
 * Turns the outline of a profile into a ring.
 *
 * Accepts either way round and a repeated closing point. A point given twice in a row is refused: it is more often
 * a slip than meant, and dropping it would shift the numbers of the points that follow.
 *
 * @param outline points in the file's units; shape already checked.
 * @param place where the outline stands in the file.
 * @check tests/unit/interchange/read.test.ts
 */
export function readOutline(outline: OutlineFile, units: FileUnits, place: FilePath): OutlineRead {
  const points = withoutClosingPoint(outline).map(([x, y, bulge]) =>
    vertexAt(toNanometres(x, units), toNanometres(y, units), bulge),
  );
  const faults = [...limitFaults(points, units, place), ...repeatFaults(points, place)];
  if (faults.length > 0) return { ok: false, faults };
  const made = makeDrawn(points);
  if (made.ok) return made;
  const { kind, message, vertices, at } = made.fault;
  const where = at ? ` at (${sayLength(at.x, units)}, ${sayLength(at.y, units)})` : '';
  const path = sayPath(vertices.length > 0 ? [...place, vertices[0]] : place);
  return { ok: false, faults: [{ path, what: message + where, cure: CURES[kind] }] };
}

/** The outline without the first point repeated at its end. */
function withoutClosingPoint(outline: OutlineFile): OutlineFile {
  const [first, last] = [outline[0], outline[outline.length - 1]];
  return first[0] === last[0] && first[1] === last[1] ? outline.slice(0, -1) : outline;
}

/** Points that lie too far out for the core. */
function limitFaults(points: readonly Point[], units: FileUnits, place: FilePath): FileFault[] {
  return points.flatMap((p, i) =>
    withinLimit(p.x) && withinLimit(p.y)
      ? []
      : [
          {
            path: sayPath([...place, i]),
            what: `lies more than ${sayLimit(units)} from the origin`,
            cure: CURES['too-large'],
          },
        ],
  );
}

/** Points that are the same as the one before, to the nanometre. */
function repeatFaults(points: readonly Point[], place: FilePath): FileFault[] {
  return points.flatMap((p, i) => {
    const before = (i + points.length - 1) % points.length;
    const same = points.length > 1 && points[before].x === p.x && points[before].y === p.y;
    const what = `is the same point as ${sayPath([...place, before])}`;
    return same ? [{ path: sayPath([...place, i]), what, cure: 'Remove one of the two.' }] : [];
  });
}
