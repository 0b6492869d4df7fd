import type { Pace } from '../state/pace.ts';

/** How often a page that nobody sees is brought up to date, milliseconds. */
const UNSEEN_MS = 100;

/** The browser's frames and timers; a page in the background has no frames, so it goes by a timer. */
export const browserPace: Pace = {
  frame(run) {
    if (document.hidden) return browserPace.later(UNSEEN_MS, run);
    const frame = requestAnimationFrame(run);
    return () => cancelAnimationFrame(frame);
  },
  later(ms, run) {
    const timer = setTimeout(run, ms);
    return () => clearTimeout(timer);
  },
};
