import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { addSection } from '../../../src/interchange/json/add-section.ts';
import { changeFamily } from '../../../src/interchange/json/change-family.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';

const LESSON = readFileSync(new URL('../../../profiles-demo/first-lesson.json', import.meta.url), 'utf8');

test('a drawn profile is added behind another one, under an id of its own, and reads back to the nanometre', () => {
  const read = readFamily(LESSON);
  if (!read.ok) throw new Error('the lesson does not read');
  const { file } = read.document;
  const [first] = file.profiles;
  const vertices = [
    { x: 0, y: 0 },
    { x: 1_234_567, y: 0, bulge: 0.25 },
    { x: 1_234_567, y: 4_000_001 },
  ];
  const made = addSection(file, { kind: 'opening', name: first.name, afterId: first.id }, { drawn: vertices });
  expect(file.profiles.map(({ id }) => id)).not.toContain(made.id);
  expect(made.file.profiles[1].id).toBe(made.id);
  const changed = changeFamily(made.file);
  expect(changed.ok && changed.document.family.profiles[1].drawn).toEqual(vertices);
});
