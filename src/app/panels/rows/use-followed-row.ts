import { type RefObject, useLayoutEffect, useRef } from 'react';

/**
 * Brings the picked row into sight when another one is picked, and the focus along where a row had it.
 *
 * @param at the place of the picked row; -1 for none.
 * @param picked what tells one picked row from another.
 */
export function useFollowedRow(
  frame: RefObject<HTMLElement | null>,
  at: number,
  picked: string | number | null,
  reveal: (index: number) => void,
): void {
  const before = useRef<string | number | null>(null);
  useLayoutEffect(() => {
    if (before.current === picked || at < 0) return;
    before.current = picked;
    reveal(at);
    const focused = document.activeElement;
    if (focused?.closest('tbody tr') && frame.current?.contains(focused))
      frame.current.querySelector<HTMLElement>('tbody [aria-selected="true"]')?.focus({ preventScroll: true });
  });
}
