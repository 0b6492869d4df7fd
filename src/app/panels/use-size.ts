import { type RefObject, useLayoutEffect, useRef, useState } from 'react';

/** The inner size of an element in CSS pixels, kept up to date; null until it has been laid out. */
export function useSize<E extends HTMLElement>(): [RefObject<E | null>, { width: number; height: number } | null] {
  const element = useRef<E>(null);
  const [size, setSize] = useState<{ width: number; height: number } | null>(null);
  useLayoutEffect(() => {
    const target = element.current;
    if (!target) return;
    const measure = () => setSize({ width: target.clientWidth, height: target.clientHeight });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(target);
    return () => observer.disconnect();
  }, []);
  return [element, size];
}
