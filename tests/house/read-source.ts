import { posix } from 'node:path';
import { type ESTree, parseSync, Visitor } from 'vite';

/** One thing that a source file reaches for: an import, a re-export, a dynamic import or a worker's address. */
export interface Import {
  readonly specifier: string;
  readonly typeOnly: boolean;
  readonly line: number;
  /** Path in the project, for a relative specifier; null for a package. */
  readonly target: string | null;
  /** `react` for `react/jsx-runtime`, `@scope/name` for a scoped one, `node:*` for Node's own; null for a relative one. */
  readonly packageName: string | null;
}

export interface FunctionSpan {
  readonly name: string;
  readonly line: number;
  readonly lineCount: number;
}

export interface SourceFile {
  /** Path in the project, with forward slashes. */
  readonly path: string;
  readonly lineCount: number;
  readonly imports: readonly Import[];
  readonly functions: readonly FunctionSpan[];
  /** Exported functions without a doc comment right above them. */
  readonly undocumented: readonly { readonly name: string; readonly line: number }[];
}

interface Spanned {
  readonly start: number;
  readonly end: number;
}

/** Shorter than this, a doc comment says nothing. */
const LEAST_DOC_LENGTH = 20;

function lineCounter(text: string): (offset: number) => number {
  const ends = [...text.matchAll(/\n/g)].map((match) => match.index);
  return (offset) => 1 + ends.filter((end) => end < offset).length;
}

/** The package that a bare specifier comes from. */
export function packageOf(specifier: string): string {
  if (specifier.startsWith('node:')) return 'node:*';
  const parts = specifier.split('/');
  return specifier.startsWith('@') ? parts.slice(0, 2).join('/') : (parts[0] ?? specifier);
}

function makeImport(path: string, specifier: string, typeOnly: boolean, line: number): Import {
  const relative = specifier.startsWith('.');
  const bare = specifier.replace(/[?#].*$/, '');
  return {
    specifier,
    typeOnly,
    line,
    target: relative ? posix.join(posix.dirname(path), bare) : null,
    packageName: relative ? null : packageOf(bare),
  };
}

/** The literal address in `new URL('./x.ts', import.meta.url)`, which bundlers follow like an import. */
function workerAddress(node: ESTree.NewExpression): string | null {
  const [first, second] = node.arguments;
  if (node.callee.type !== 'Identifier' || node.callee.name !== 'URL') return null;
  if (first?.type !== 'Literal' || typeof first.value !== 'string') return null;
  return second?.type === 'MemberExpression' && first.value.startsWith('.') ? first.value : null;
}

function collectImports(path: string, program: ESTree.Program, lineOf: (offset: number) => number): Import[] {
  const found: Import[] = [];
  const add = (source: string, typeOnly: boolean, at: Spanned) =>
    found.push(makeImport(path, source, typeOnly, lineOf(at.start)));
  new Visitor({
    ImportDeclaration(node) {
      const allTypes = node.specifiers.every((s) => s.type === 'ImportSpecifier' && s.importKind === 'type');
      add(node.source.value, node.importKind === 'type' || (node.specifiers.length > 0 && allTypes), node);
    },
    ExportNamedDeclaration(node) {
      if (node.source) add(node.source.value, node.exportKind === 'type', node);
    },
    ExportAllDeclaration(node) {
      add(node.source.value, node.exportKind === 'type', node);
    },
    ImportExpression(node) {
      if (node.source.type === 'Literal') add(String(node.source.value), false, node);
    },
    NewExpression(node) {
      const address = workerAddress(node);
      if (address) add(address, false, node);
    },
  }).visit(program);
  return found;
}

function collectFunctions(program: ESTree.Program, lineOf: (offset: number) => number): FunctionSpan[] {
  const found: FunctionSpan[] = [];
  const named = new Map<number, string>();
  const add = (node: Spanned & { id?: { name: string } | null }) => {
    const line = lineOf(node.start);
    const name = node.id?.name ?? named.get(node.start) ?? 'a function';
    found.push({ name, line, lineCount: lineOf(node.end) - line + 1 });
  };
  new Visitor({
    VariableDeclarator(node) {
      if (node.init && node.id.type === 'Identifier') named.set(node.init.start, node.id.name);
    },
    MethodDefinition(node) {
      if (node.key.type === 'Identifier') named.set(node.value.start, node.key.name);
    },
    FunctionDeclaration: add,
    FunctionExpression: add,
    ArrowFunctionExpression: add,
  }).visit(program);
  return found;
}

function exportedFunctions(declaration: ESTree.Declaration | null): string[] {
  if (declaration?.type === 'FunctionDeclaration') return declaration.id ? [declaration.id.name] : [];
  if (declaration?.type !== 'VariableDeclaration') return [];
  return declaration.declarations.flatMap(({ id, init }) => {
    const isFunction = init?.type === 'ArrowFunctionExpression' || init?.type === 'FunctionExpression';
    return isFunction && id.type === 'Identifier' ? [id.name] : [];
  });
}

function hasDocAbove(text: string, start: number): boolean {
  const doc = /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\s*$/.exec(text.slice(0, start));
  return (doc?.[1]?.replace(/[\s*]+/g, ' ').trim().length ?? 0) >= LEAST_DOC_LENGTH;
}

function collectUndocumented(text: string, program: ESTree.Program, lineOf: (offset: number) => number) {
  return program.body.flatMap((node) => {
    if (node.type !== 'ExportNamedDeclaration' || hasDocAbove(text, node.start)) return [];
    return exportedFunctions(node.declaration).map((name) => ({ name, line: lineOf(node.start) }));
  });
}

/** The packages and files that a style sheet imports. */
function readStyleSheet(path: string, text: string): SourceFile {
  const lineOf = lineCounter(text);
  const imports = [...text.matchAll(/@import\s+(?:url\()?['"]([^'"]+)['"]/g)].map((match) =>
    makeImport(path, match[1] ?? '', false, lineOf(match.index)),
  );
  return { path, lineCount: lineOf(text.length), imports, functions: [], undocumented: [] };
}

/**
 * What the house rules ask about one file of `src`.
 * @throws when the file does not parse
 */
export function readSource(path: string, text: string): SourceFile {
  if (path.endsWith('.css')) return readStyleSheet(path, text);
  const { program, errors } = parseSync(path, text);
  if (errors[0]) throw new Error(`${path} does not parse: ${errors[0].message}`);
  const lineOf = lineCounter(text);
  return {
    path,
    lineCount: lineOf(text.length),
    imports: collectImports(path, program, lineOf),
    functions: collectFunctions(program, lineOf),
    undocumented: collectUndocumented(text, program, lineOf),
  };
}
