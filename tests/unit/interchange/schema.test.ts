import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { familyJsonSchema } from '../../../src/interchange/json/schema.ts';

interface SchemaNode {
  description?: string;
  properties?: Record<string, SchemaNode>;
  $ref?: string;
  $defs?: Record<string, SchemaNode>;
}

const published = JSON.parse(readFileSync('shared/family.schema.json', 'utf8')) as SchemaNode;

describe('the published schema of the family file', () => {
  test('is the one that the reader uses (renew it with: npm run -s cli -- schema > shared/family.schema.json)', () => {
    expect(published).toEqual(familyJsonSchema());
  });

  test('describes every field, and says the unit or range of every number', () => {
    const fields = [published, ...Object.values(published.$defs ?? {})].flatMap((node) =>
      Object.entries(node.properties ?? {}),
    );
    expect(fields.length).toBeGreaterThan(20);
    for (const [name, field] of fields) {
      const described = field.$ref ? published.$defs?.[field.$ref.replace('#/$defs/', '')] : field;
      expect(described?.description?.length, name).toBeGreaterThan(15);
    }
  });
});
