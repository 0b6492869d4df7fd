/** The window's time: when what has come in is shown, and when the hand counts as calm. */
export interface Pace {
  /** Calls `run` once, at the next frame; returns how to call it off. */
  frame(run: () => void): () => void;
  /** Calls `run` once, after so many milliseconds; returns how to call it off. */
  later(ms: number, run: () => void): () => void;
}
