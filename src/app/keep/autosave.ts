/** Longest that a change waits after the write before it, milliseconds. */
const LONGEST_PAUSE_MS = 250;

/**
 * Writes the latest of what there is to write: at once where nothing is being written, else as soon as that is done,
 * and then the latest only. Where the writes of a large family take the window's time, they leave a pause between them
 * of four times that, but never more than a quarter of a second.
 *
 * @check tests/unit/app/autosave.test.ts
 */
export class Autosave {
  private waiting: (() => Promise<void>) | null = null;
  private running: Promise<void> | null = null;

  constructor(private readonly pause: (ms: number) => Promise<void>) {}

  /** Has `write` called, unless a later one comes before its turn. It must not reject. */
  request(write: () => Promise<void>): void {
    this.waiting = write;
    this.running ??= this.run();
  }

  /** Whether something later waits for its turn. */
  get isBehind(): boolean {
    return this.waiting !== null;
  }

  /** Resolves when all that was asked for is written. */
  async settled(): Promise<void> {
    while (this.running) await this.running;
  }

  private async run(): Promise<void> {
    // What changes together is written together.
    await Promise.resolve();
    while (this.waiting) {
      const write = this.waiting;
      this.waiting = null;
      const started = performance.now();
      const written = write();
      const busy = performance.now() - started;
      await written;
      if (this.waiting && busy > 10) await this.pause(Math.min(LONGEST_PAUSE_MS, 4 * busy));
    }
    this.running = null;
  }
}
