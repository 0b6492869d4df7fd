import { askMeshProgram } from './ask-mesh-program.ts';

/** What ADMesh finds in an STL file. It mends nothing: where something were to mend, a count is above zero. */
export interface AdmeshFacts {
  readonly facets: number;
  readonly parts: number;
  /** In single precision. */
  readonly volume: number;
  readonly bounds: readonly [readonly number[], readonly number[]];
  /** Facets with an edge that no other facet shares corner by corner, degenerate, removed, added and turned ones. */
  readonly faults: Readonly<Record<string, number>>;
}

const FAULTS = [
  'Total disconnected facets',
  'Degenerate facets',
  'Edges fixed',
  'Facets removed',
  'Facets added',
  'Facets reversed',
  'Backwards edges',
] as const;

/** @throws with what to do where ADMesh is missing, and with its own words where it refuses the file */
export function checkWithAdmesh(file: string): AdmeshFacts {
  const said = askMeshProgram('admesh', ['--exact', '--normal-directions', file]);
  const number = (label: string) => {
    const found = new RegExp(`${label} *[:=] *(-?[0-9.]+)`).exec(said);
    if (!found) throw new Error(`ADMesh does not say "${label}": ${said}`);
    return Number(found[1]);
  };
  const ends = (end: string) => ['X', 'Y', 'Z'].map((axis) => number(`${end} ${axis}`));
  return {
    facets: number('Number of facets'),
    parts: number('Number of parts'),
    volume: number('Volume'),
    bounds: [ends('Min'), ends('Max')],
    faults: Object.fromEntries(FAULTS.map((label) => [label, number(label)])),
  };
}
