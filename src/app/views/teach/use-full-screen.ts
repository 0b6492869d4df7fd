import { type RefObject, useCallback, useEffect, useRef } from 'react';

/**
 * Fills the whole screen with an element while it is there, where the browser lets it; the window is filled anyway. Leaving
 * the full screen by the browser's own key ends the lesson; leaving it by `toggle` does not.
 */
export function useFullScreen(element: RefObject<HTMLElement | null>, onLeave: () => void): { toggle(): void } {
  const filled = useRef(false);
  const leave = useRef(onLeave);
  useEffect(() => {
    leave.current = onLeave;
  });
  useEffect(() => {
    const shown = element.current;
    const follow = () => {
      const now = document.fullscreenElement === shown;
      if (filled.current && !now) leave.current();
      filled.current = now;
    };
    document.addEventListener('fullscreenchange', follow);
    fill(shown);
    return () => {
      document.removeEventListener('fullscreenchange', follow);
      if (document.fullscreenElement === shown) document.exitFullscreen().catch(() => {});
    };
  }, [element]);
  const toggle = useCallback(() => {
    if (document.fullscreenElement === null) return fill(element.current);
    filled.current = false;
    document.exitFullscreen().catch(() => {});
  }, [element]);
  return { toggle };
}

/** A browser may refuse, or know no full screen: then the window has to do. */
function fill(element: HTMLElement | null): void {
  if (element?.isConnected && document.fullscreenEnabled) element.requestFullscreen().catch(() => {});
}
