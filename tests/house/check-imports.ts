import type { Project } from './read-project.ts';
import type { Import, SourceFile } from './read-source.ts';
import type { DependencyTable, LayerTable } from './read-tables.ts';

/** Data that code may import although it lies outside `src`. */
const DATA_FOLDERS = ['shared/', 'profiles-demo/'];

function layerOf(path: string, layers: LayerTable): string | null {
  const inside = [...layers.keys()].filter((folder) => path.startsWith(`src/${folder}/`));
  return inside.sort((a, b) => b.length - a.length)[0] ?? null;
}

/** Everything that `layer` may import, and what those may import in turn. */
function reachable(layer: string, layers: LayerTable): Set<string> {
  const seen = new Set<string>();
  const visit = (name: string) => {
    for (const next of layers.get(name) ?? []) {
      if (seen.has(next)) continue;
      seen.add(next);
      visit(next);
    }
  };
  visit(layer);
  return seen;
}

function judgeImport(source: SourceFile, from: string, found: Import, layers: LayerTable): string | null {
  const { target, specifier, typeOnly } = found;
  if (target === null || DATA_FOLDERS.some((folder) => target.startsWith(folder))) return null;
  const to = layerOf(target, layers);
  if (to === null) return `${source.path}:${found.line} imports ${specifier}, which is in no folder of the layer table`;
  if (to === from || layers.get(from)?.has(to)) return null;
  const typesFree = typeOnly && (from.startsWith('app') || reachable(from, layers).has(to));
  return typesFree ? null : `${source.path}:${found.line} ${from} may not import ${to} (${specifier})`;
}

/**
 * Imports that the layer table forbids. A type may come from any folder that values reach in several steps, and
 * inside the app from anywhere.
 */
export function checkLayers(project: Project, layers: LayerTable): string[] {
  return project.sources.flatMap((source) => {
    const from = layerOf(source.path, layers);
    if (from === null) return [`${source.path} is in no folder of the layer table`];
    return source.imports.flatMap((found) => judgeImport(source, from, found, layers) ?? []);
  });
}

/** Circles of files that import each other, one line a circle, types included. */
export function checkCycles(project: Project): string[] {
  const graph = new Map(project.sources.map((s) => [s.path, s.imports.flatMap((i) => i.target ?? [])]));
  const done = new Set<string>();
  const cycles: string[] = [];
  const visit = (path: string, trail: string[]) => {
    const at = trail.indexOf(path);
    if (at >= 0) cycles.push([...trail.slice(at), path].join(' -> '));
    if (at >= 0 || done.has(path)) return;
    for (const next of graph.get(path) ?? []) visit(next, [...trail, path]);
    done.add(path);
  };
  for (const path of graph.keys()) visit(path, []);
  return cycles;
}

function isInPlace(path: string, places: readonly string[]): boolean {
  return places.some((place) => (place.endsWith('/') ? path.startsWith(place) : path === place));
}

function checkRow(project: Project, name: string, places: readonly string[]): string[] {
  const files = places.filter((place) => !place.endsWith('/'));
  const findings = files.length > 1 ? [`${name} enters through ${files.length} files: ${files.join(', ')}`] : [];
  const importers = project.sources.filter((s) => s.imports.some((i) => i.packageName === name));
  if (importers.length === 0) return [...findings, `${name} has a row in DEVELOPERS.md, and nothing imports it`];
  const strays = importers.filter((s) => !isInPlace(s.path, places));
  return [...findings, ...strays.map((s) => `${s.path} imports ${name}, which enters through ${places.join(', ')}`)];
}

/** Packages without a row, rows without a package, imports outside the named place, versions that are not exact. */
export function checkDependencies(project: Project, table: DependencyTable, packageJson: string): string[] {
  const manifest = JSON.parse(packageJson) as Record<string, Record<string, string> | undefined>;
  const runtime = Object.keys(manifest.dependencies ?? {});
  const versions = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });
  const imported = new Set(project.sources.flatMap((s) => s.imports.flatMap((i) => i.packageName ?? [])));
  return [
    ...runtime.filter((name) => !table.has(name)).map((name) => `${name} has no row in DEVELOPERS.md`),
    ...[...imported].filter((name) => !table.has(name)).map((name) => `src imports ${name}, which has no row`),
    ...[...table].flatMap(([name, places]) => checkRow(project, name, places)),
    ...versions.filter(([, v]) => !/^\d/.test(v)).map(([name, v]) => `${name}: version ${v} is not exact`),
  ];
}
