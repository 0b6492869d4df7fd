/** The right to write a work, which one window has at a time. */
export interface Hold {
  release(): void;
  /** Resolves when another window has taken the right away. */
  readonly lost: Promise<void>;
}

/** What windows of one browser say to each other. */
export type TabMessage = { readonly ask: 'hand-over'; readonly id: string };

/** The other windows of the same browser. */
export interface Tabs {
  /** Whether the browser can tell who has the right; where not, everybody gets it who asks. */
  readonly knowsOthers: boolean;
  /** The right to write a work, when it comes free within so many milliseconds; null where another window keeps it. */
  hold(id: string, waitMs: number): Promise<Hold | null>;
  /** The right to write a work, taken from whichever window has it. */
  seize(id: string): Promise<Hold>;
  /** The works that some window has the right to write. */
  held(): Promise<ReadonlySet<string>>;
  send(message: TabMessage): void;
  listen(listener: (message: TabMessage) => void): void;
}
