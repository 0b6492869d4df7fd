import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { readSource, type SourceFile } from './read-source.ts';

/** The project as the house rules see it. Paths are relative to its top folder, with forward slashes. */
export interface Project {
  /** Names at the top level. */
  readonly topLevel: readonly string[];
  /** Every file that is kept under version control, as text. */
  readonly texts: ReadonlyMap<string, string>;
  /** The code and style sheets of `src`. */
  readonly sources: readonly SourceFile[];
}

/** Made by tools, not by us. */
const MADE = new Set(['node_modules', 'dist', '.cache', '.git', 'package-lock.json']);
const MADE_PATHS = new Set(['tests/browser/shots']);

const TEXT_FILE = /\.(ts|tsx|mjs|js|css|json|md|html|svg|csv|dxf|txt)$|(^|\/)(run|LICENSE|\.gitignore|\.npmrc)$/;
const SOURCE_FILE = /^src\/.*\.(ts|tsx|css)$/;
const DECLARATION_FILE = /\.d\.ts$/;

function listFiles(root: string, folder: string): string[] {
  return readdirSync(join(root, folder), { withFileTypes: true }).flatMap((entry) => {
    const path = posix.join(folder, entry.name);
    if (MADE.has(entry.name) || MADE_PATHS.has(path)) return [];
    return entry.isDirectory() ? listFiles(root, path) : [path];
  });
}

/** Reads the project in `root` from the disk. */
export function readProject(root: string): Project {
  const paths = listFiles(root, '')
    .filter((path) => TEXT_FILE.test(path))
    .sort();
  const texts = new Map(paths.map((path) => [path, readFileSync(join(root, path), 'utf8')]));
  const code = paths.filter((path) => SOURCE_FILE.test(path) && !DECLARATION_FILE.test(path));
  const topLevel = readdirSync(root).sort();
  return { topLevel, texts, sources: code.map((path) => readSource(path, texts.get(path) ?? '')) };
}

/** A file's text. @throws when the project has no such file */
export function textOf(project: Project, path: string): string {
  const text = project.texts.get(path);
  if (text === undefined) throw new Error(`${path} is missing.`);
  return text;
}
