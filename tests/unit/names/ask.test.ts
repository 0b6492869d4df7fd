import { describe, expect, it } from 'vitest';
import { asTrustedRing } from '../../../src/geom/ring.ts';
import { ask, LONGEST_QUESTION } from '../../../src/names/ask.ts';
import { EXAMPLE_FORMS } from '../../../src/names/example-forms.ts';
import { registerOf } from '../../../src/names/register.ts';
import { QUESTIONS, type Question } from '../../cases/questions.ts';
import { demoKnowledge } from '../../kit/demo-knowledge.ts';

const knowledge = demoKnowledge();

function check({ question, kind = 'answer', verdict, pair, ...facts }: Question): void {
  const answer = ask(question, knowledge);
  const words = answer.sentences.join(' ').toLowerCase();
  expect({ kind: answer.kind, words }).toMatchObject({ kind });
  if (verdict) expect(answer.verdict).toBe(verdict);
  if (pair) expect(answer.pair).toEqual({ entrantId: pair[0], openingId: pair[1] });
  if (facts.names) expect(answer.profiles).toEqual(expect.arrayContaining([...facts.names]));
  for (const id of facts.notNames ?? []) expect(answer.profiles).not.toContain(id);
  for (const said of facts.says ?? []) expect(words).toContain(said.toLowerCase());
  for (const said of facts.saysNot ?? []) expect(words).not.toContain(said.toLowerCase());
  const offered = answer.choices.map((choice) => choice.question);
  if (facts.offers) expect(offered).toEqual(expect.arrayContaining([...facts.offers]));
}

describe.each(Object.entries(QUESTIONS))('%s', (_, questions) => {
  it.each(questions.map((one) => [one.question, one] as const))('%s', (__, one) => check(one));
});

describe('the question line', () => {
  it('answers the same without a question mark, in capitals, and with spaces around', () => {
    for (const { question } of [...QUESTIONS.PAIRS, ...QUESTIONS.REACH]) {
      const plain = ask(question, knowledge);
      const bare = ask(`  ${question.replace(/[?]$/, '')}  `, knowledge);
      expect(bare.sentences).toEqual(plain.sentences);
    }
    const shouted = ask('DOES THE HERON BLANK GO INTO THE HERON KEYWAY', knowledge);
    expect(shouted.verdict).toBe('enters');
  });

  it('understands every ready-made question that it offers', () => {
    for (const { choices } of [ask('', knowledge), ask('does hereon go into bitern', knowledge)])
      for (const { question } of choices) {
        const answer = ask(question, knowledge);
        expect(['answer', 'choose']).toContain(answer.kind);
      }
    expect(ask('', knowledge).choices).toHaveLength(EXAMPLE_FORMS.length);
  });

  it('says what is not judged yet, and says nothing of it', () => {
    const waiting = { ...knowledge, fitOf: () => undefined };
    for (const question of [
      'Does Heron go into Bittern?',
      'What goes into Heron?',
      'Where does Reed go?',
      'What enters all?',
    ]) {
      const answer = ask(question, waiting);
      expect(answer.kind).toBe('not judged yet');
      expect(answer.verdict).toBeUndefined();
      expect(answer.sentences.join(' ')).toContain('not judged yet');
    }
    expect(ask('What is PC 105?', waiting).kind).toBe('answer');
  });

  it('gives a verdict of the fits, not of its own', () => {
    const swapped = {
      ...knowledge,
      fitOf: (entrant: string, opening: string) => {
        const fit = knowledge.fitOf(entrant, opening);
        return fit && { ...fit, verdict: fit.verdict === 'blocked' ? ('enters' as const) : ('blocked' as const) };
      },
    };
    expect(ask('Does Heron go into Bittern?', swapped).sentences[0]).toMatch(/^Yes/);
    expect(ask('Does Heron go into Heron?', swapped).sentences[0]).toMatch(/^No/);
  });

  it('takes one outline for the same where it is moved aside and starts at another vertex', () => {
    const aside = ({ x, y }: { x: number; y: number }) => ({ x: x + 1_000_000, y });
    const profiles = knowledge.family.profiles.map((profile) =>
      profile.id === 'heron-blank-6'
        ? { ...profile, ring: asTrustedRing([...profile.ring.slice(3), ...profile.ring.slice(0, 3)].map(aside)) }
        : profile,
    );
    const family = { ...knowledge.family, profiles };
    const answer = ask('is PC 105 the same as PC 106', { ...knowledge, family, register: registerOf(family) });
    expect(answer.sentences[0]).toContain('one and the same section; they differ in length only');
  });

  it('refuses a question that is too long with a word of why', () => {
    const answer = ask('Does Heron go into Bittern? '.repeat(400), knowledge);
    expect(answer.kind).toBe('not understood');
    expect(answer.sentences[0]).toContain('too long');
    expect('Does Heron go into Bittern? '.repeat(400).length).toBeGreaterThan(LONGEST_QUESTION);
  });
});
