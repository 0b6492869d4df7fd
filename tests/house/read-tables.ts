/** Which folders of `src` a folder may import, as DEVELOPERS.md has it; keys in the document's order. */
export type LayerTable = ReadonlyMap<string, ReadonlySet<string>>;

/** Where a package may be imported: a file, or folders ending in `/`. */
export type DependencyTable = ReadonlyMap<string, readonly string[]>;

const ALL_ABOVE = 'all of the above';
const NOTHING = 'nothing of ours';

function tableUnder(markdown: string, heading: string): string[][] {
  const lines = markdown.split('\n');
  const start = lines.findIndex((line) => /^#+\s/.test(line) && line.replace(/^#+\s*/, '').trim() === heading);
  if (start < 0) throw new Error(`DEVELOPERS.md has no heading "${heading}".`);
  const rest = lines.slice(start + 1);
  const end = rest.findIndex((line) => /^#+\s/.test(line));
  const section = end < 0 ? rest : rest.slice(0, end);
  const rows = section.filter((line) => line.startsWith('|')).map((line) => line.split('|').slice(1, -1));
  if (rows.length < 3) throw new Error(`DEVELOPERS.md has no table under "${heading}".`);
  return rows.slice(2).map((cells) => cells.map((cell) => cell.trim()));
}

const namesIn = (cell: string) =>
  cell
    .replaceAll('`', '')
    .split(',')
    .map((name) => name.trim())
    .filter((name) => name !== '');

/**
 * The table under "Layers". A cell holds folder names, "nothing of ours" or "all of the above".
 * @throws when a cell names a folder that has no row
 */
export function readLayerTable(markdown: string): LayerTable {
  const table = new Map<string, Set<string>>();
  for (const [folders = '', allowed = ''] of tableUnder(markdown, 'Layers')) {
    const above = [...table.keys()];
    const written = allowed === NOTHING ? [] : namesIn(allowed);
    const names = written.flatMap((name) => (name === ALL_ABOVE ? above : [name]));
    for (const folder of namesIn(folders)) table.set(folder, new Set(names));
  }
  for (const [folder, allowed] of table) {
    const unknown = [...allowed].filter((name) => !table.has(name));
    if (unknown.length > 0) throw new Error(`DEVELOPERS.md lets ${folder} import ${unknown}, which has no row.`);
  }
  return table;
}

/** The table under "Dependencies": package, places, reason. @throws when a reason is missing */
export function readDependencyTable(markdown: string): DependencyTable {
  return new Map(
    tableUnder(markdown, 'Dependencies').map(([name = '', places = '', reason = '']) => {
      if (reason === '') throw new Error(`DEVELOPERS.md gives no reason for ${name}.`);
      return [name.replaceAll('`', ''), namesIn(places)];
    }),
  );
}
