import { expect, test } from 'vitest';
import { cautionLine, cautionsAbout } from '../../../src/family/cautions.ts';

test('figures of strength are called estimates and are to be confirmed before metal is cut', () => {
  expect(cautionLine('strength')).toMatch(/estimates.*maker and a licensed locksmith confirm before metal is cut/);
});

test('a plan says that sections are no boundary, and what comes first', () => {
  expect(cautionsAbout('plan').join(' ')).toMatch(/Exits, fire.*accessibility.*key-control rules/);
  for (const subject of ['plan', 'capacity'] as const) expect(cautionLine(subject)).toContain('no security boundary');
});

test('the page of help says all that is said anywhere of strength and of plans', () => {
  const everything = cautionsAbout('everything');
  for (const subject of ['strength', 'plan'] as const)
    for (const sentence of cautionsAbout(subject)) expect(everything).toContain(sentence);
});
