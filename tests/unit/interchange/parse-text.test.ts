import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MAX_DEPTH, parseText } from '../../../src/interchange/json/parse-text.ts';

const pathOf = (text: string) => {
  const parsed = parseText(text);
  return parsed.ok ? 'ok' : parsed.faults[0].path;
};

/** Whether the language's own parser takes a text: the outside truth of what JSON is. */
function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('parsing the text of a file', () => {
  test('any JSON value is read as the language reads it', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 5 }), (text) => {
        const parsed = parseText(text);
        if (!parsed.ok) expect(parsed.faults.every((f) => /twice|__proto__/.test(f.what))).toBe(true);
        else expect(JSON.stringify(parsed.value)).toBe(JSON.stringify(JSON.parse(text)));
      }),
    );
  });

  test('a text with one character changed is read exactly when the language reads it, and never throws', () => {
    const sound = '{"a":[1,-2.5e3,"x\\n\\u00e9"],"b":{"c":null,"d":true}}';
    fc.assert(
      fc.property(fc.nat(sound.length - 1), fc.constantFrom(...'{}[]:,"\\0-.eEtn \n/*'), (at, sign) => {
        const text = sound.slice(0, at) + sign + sound.slice(at + 1);
        const parsed = parseText(text);
        const named = !parsed.ok && /twice/.test(parsed.faults[0].what);
        expect(parsed.ok || named).toBe(isJson(text));
        if (!parsed.ok && !named) expect(parsed.faults[0].path).toMatch(/^line \d+, column \d+$/);
      }),
      { numRuns: 1000 },
    );
  });

  test('lines are counted whatever ends them', () => {
    expect(pathOf('{\n\n  oops }')).toBe('line 3, column 3');
    expect(pathOf('{\r\n\r\n  oops }')).toBe('line 3, column 3');
    expect(pathOf('{\r\r  oops }')).toBe('line 3, column 3');
  });

  test('nesting up to the limit is read, one more is not, and brackets in texts do not count', () => {
    const nested = (depth: number) => '['.repeat(depth) + ']'.repeat(depth);
    expect(pathOf(nested(MAX_DEPTH))).toBe('ok');
    expect(pathOf(nested(MAX_DEPTH + 1))).toBe(`line 1, column ${MAX_DEPTH + 1}`);
    expect(pathOf(JSON.stringify(`\\"${'['.repeat(500)}`))).toBe('ok');
  });

  test('a million brackets are refused, not run into', () => {
    expect(pathOf('['.repeat(1_000_000))).toBe('line 1, column 65');
  });

  test('the same field in two objects is no repeat', () => {
    expect(pathOf('{"a":{"x":1},"b":{"x":2},"c":[{"x":3},{"x":4}]}')).toBe('ok');
    expect(pathOf('{"a":[{"x":3,"y":{"x":1},"x":4}]}')).toBe('a[0].x (line 1, column 26)');
  });
});
