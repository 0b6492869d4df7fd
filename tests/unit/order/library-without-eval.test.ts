// The page's content policy forbids making code from text, and a thread has no window: the library that draws tier
// diagrams must load and run without either.

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createContext, runInContext } from 'node:vm';
import { expect, test } from 'vitest';

/** The module that is bundled, its exports given back instead: a realm of its own loads scripts only. */
function libraryAsScript(): string {
  const file = fileURLToPath(import.meta.resolve('d3-dag'));
  const text = readFileSync(file, 'utf8');
  expect(text).not.toMatch(/(^|[;}])import[ {*"']|import\(|require\(/);
  return text.replace(/export\{([^}]*)\};?\s*$/, (_, names: string) => {
    const pairs = names.split(',').map((name) => name.split(' as ').reverse().join(':'));
    return `return {${pairs.join()}}`;
  });
}

/** Loads the library in a realm of its own that has nothing of a page and no code from text, and draws three boxes. */
function drawIn(realm: Record<string, unknown>): unknown {
  const context = createContext(realm, { codeGeneration: { strings: false, wasm: false } });
  const library = runInContext(`(function () {${libraryAsScript()}\n})()`, context);
  const draw = `(function ({ graph, sugiyama, coordGreedy }) {
    const dag = graph();
    const [top, left, right] = [dag.node(0), dag.node(1), dag.node(1)];
    dag.link(top, left);
    dag.link(top, right);
    sugiyama().layering((drawn) => { for (const node of drawn.nodes()) node.y = node.data; return 1; }).coord(coordGreedy())(dag);
    return [top, left, right].map(({ y }) => y);
  })`;
  return runInContext(draw, context)(library);
}

test('the drawing library needs neither code from text nor a window', () => {
  expect(() =>
    runInContext('new Function("return 1")', createContext({}, { codeGeneration: { strings: false, wasm: false } })),
  ).toThrow('Code generation from strings disallowed');
  const [top, left, right] = drawIn({}) as number[];
  expect(top).toBeLessThan(left);
  expect(left).toBe(right);
});
