import { expect, test } from 'vitest';
import { AskedJob, makeAskedJobs } from '../../../src/app/state/asked-job.ts';
import { openDocument } from '../../../src/app/state/document-state.ts';
import { SAMPLE_FAMILIES } from '../../../src/app/state/sample-families.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { JobCancelled } from '../../../src/jobs/job.ts';
import { fakeDoors } from './fake-doors.ts';

interface Begun {
  readonly input: number;
  tell(done: number, total: number): void;
  land(output: string): void;
  fall(reason: unknown): void;
  cancelled: boolean;
}

function askedJob() {
  const begun: Begun[] = [];
  const asked = new AskedJob<number, string>(
    (input, tell) => {
      const one: Begun = { input, tell, land: () => {}, fall: () => {}, cancelled: false };
      const promise = new Promise<string>((resolve, reject) => {
        one.land = resolve;
        one.fall = reject;
      });
      begun.push(one);
      return {
        result: promise,
        cancel: () => {
          one.cancelled = true;
          one.fall(new JobCancelled());
        },
      };
    },
    (a, b) => a === b,
  );
  return { asked, begun, now: () => asked.store.getState() };
}

const settled = () => new Promise((done) => setTimeout(done, 0));

test('a question is on its way until it is answered, and is answered from memory when it comes again', async () => {
  const { asked, begun, now } = askedJob();
  asked.ask(1);
  begun[0].tell(3, 10);
  expect(now()).toMatchObject({ phase: 'finding', done: 3, total: 10 });
  begun[0].land('one');
  await settled();
  expect(now()).toMatchObject({ phase: 'found', found: { input: 1, output: 'one' } });
  asked.ask(2);
  expect(now().phase).toBe('finding');
  asked.ask(1);
  expect(begun[1].cancelled).toBe(true);
  expect(now()).toMatchObject({ phase: 'found', found: { output: 'one' } });
  expect(begun).toHaveLength(2);
});

test('a stopped one leaves what was found before, and can be asked again', async () => {
  const { asked, begun, now } = askedJob();
  asked.ask(1);
  begun[0].land('one');
  await settled();
  asked.ask(2);
  asked.stop();
  await settled();
  expect(now()).toMatchObject({ phase: 'stopped', found: { output: 'one' } });
  asked.again();
  begun[1 + 1].land('two');
  await settled();
  expect(now()).toMatchObject({ phase: 'found', found: { output: 'two' } });
});

test('a failure is told in its own words, and an answer that nobody waits for any more changes nothing', async () => {
  const { asked, begun, now } = askedJob();
  asked.ask(1);
  begun[0].fall(new Error('no threads'));
  await settled();
  expect(now()).toMatchObject({ phase: 'failed', trouble: 'no threads' });
  asked.ask(null);
  asked.ask(3);
  asked.ask(null);
  begun[1].land('three');
  await settled();
  expect(now()).toMatchObject({ phase: 'idle', asked: null });
});

test('one that another question takes the place of gives way where it can, and is cancelled by a stop alone', async () => {
  const done: string[] = [];
  const asked = new AskedJob<number, string>(
    (input) => ({
      result: new Promise<string>(() => {}),
      cancel: () => done.push(`${input} cancelled`),
      giveWay: () => done.push(`${input} gave way`),
    }),
    (a, b) => a === b,
  );
  asked.ask(1);
  asked.ask(2);
  asked.stop();
  asked.ask(3);
  asked.ask(null);
  expect(done).toEqual(['1 gave way', '2 cancelled', '3 gave way']);
});

// A sheet is drawn with another family before it asks for its answer: what came last was shown as that family's.
test('what was found answers its own question only, also where that one comes first', async () => {
  const { asked, begun } = askedJob();
  expect(asked.answerTo(1)).toBe(null);
  asked.ask(1);
  expect(asked.answerTo(1)).toBe(null);
  begun[0].land('one');
  await settled();
  expect(asked.answerTo(1)?.output).toBe('one');
  expect(asked.answerTo(2)).toBe(null);
  expect(asked.answerTo(null)).toBe(null);
});

test('another family begins anew: nothing is found, what is on its way ends, and an edit changes nothing', async () => {
  const { begun, asked, now } = askedJob();
  const askedOf = makeAskedJobs<number, string>(() => asked);
  const session = makeSession(fakeDoors().doors, null);
  const read = (at: number) => {
    const answer = readFamily(SAMPLE_FAMILIES[at].text);
    if (!answer.ok) throw new Error('a sample family is not sound');
    return answer.document;
  };
  expect(askedOf(session)).toBe(askedOf(session));
  asked.ask(1);
  begun[0].land('one');
  await settled();
  session.documents.setState({ document: read(0) });
  expect(now().found?.output).toBe('one');
  asked.ask(2);
  const history = { fileName: 'reed.json', saved: null, past: [], future: [] };
  openDocument(session.documents, { document: read(1), ...history });
  expect(begun[1].cancelled).toBe(true);
  expect(now()).toMatchObject({ phase: 'idle', asked: null, found: null });
  asked.ask(1);
  expect(now()).toMatchObject({ phase: 'found', found: { output: 'one' } });
});
