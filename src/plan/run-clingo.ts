/** What clingo answers: the atoms of a model, that there is none, or why it cannot say. */
export type ClingoAnswer =
  | { readonly kind: 'model'; readonly atoms: readonly string[] }
  | { readonly kind: 'none' }
  | { readonly kind: 'unknown'; readonly why: 'stopped' | 'too large' | 'failed'; readonly words: string };

/** Longest programme that is handed over; from about 1.5 million characters clingo ends without a word. */
const MOST_CHARACTERS = 1_200_000;

/** How often the asker's own work comes in between, milliseconds. */
const WAIT_MS = 5;

/** Whoever waits for the one solver of this thread. */
let turn: Promise<unknown> = Promise.resolve();

/**
 * Asks clingo for one model of a programme, in a thread of its own that is loaded when first asked for. The caller
 * goes on meanwhile and may stop it: then the thread is ended.
 *
 * @param meanwhile called again and again while clingo works; true stops it.
 * @source clingo 5.8, Potsdam Answer Set Solving Collection, by the package clingo-wasm.
 * @check tests/unit/plan/run-clingo.test.ts
 */
export async function runClingo(
  programme: string,
  meanwhile: () => boolean,
  pause: () => Promise<void>,
): Promise<ClingoAnswer> {
  if (programme.length > MOST_CHARACTERS)
    return { kind: 'unknown', why: 'too large', words: 'the table is too large for the exact solver' };
  const before = turn;
  let done = () => {};
  turn = new Promise<void>((resolve) => {
    done = resolve;
  });
  try {
    await before;
    return await ask(programme, meanwhile, pause);
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    return { kind: 'unknown', why: 'failed', words: `the exact solver could not be loaded (${words})` };
  } finally {
    done();
  }
}

async function ask(programme: string, meanwhile: () => boolean, pause: () => Promise<void>): Promise<ClingoAnswer> {
  const { run, restart } = await import('clingo-wasm');
  const state: { answer: Answer | null } = { answer: null };
  const running = run(programme, 1, ['--configuration=tweety']).then((answer) => {
    state.answer = answer;
  });
  while (state.answer === null) {
    if (meanwhile()) {
      await restart();
      await running;
      return { kind: 'unknown', why: 'stopped', words: 'stopped' };
    }
    await pause();
    await Promise.race([running, wait(WAIT_MS)]);
  }
  return read(state.answer);
}

type Answer = Awaited<ReturnType<typeof import('clingo-wasm')['run']>>;

function read(answer: Answer): ClingoAnswer {
  if (answer.Result === 'UNSATISFIABLE') return { kind: 'none' };
  if (answer.Result === 'ERROR')
    return { kind: 'unknown', why: 'failed', words: `the exact solver failed (${answer.Error.split('\n')[0]})` };
  const model = answer.Call.at(-1)?.Witnesses.at(-1);
  if (!model) return { kind: 'unknown', why: 'failed', words: 'the exact solver gave no answer' };
  return { kind: 'model', atoms: model.Value };
}

/** Waits without keeping this thread busy. */
function wait(ms: number): Promise<void> {
  return new Promise((resolve) => {
    // Every place that runs this has timers; the pure core is compiled without saying so.
    (globalThis as unknown as { setTimeout(run: () => void, ms: number): void }).setTimeout(resolve, ms);
  });
}
