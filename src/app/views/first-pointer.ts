/**
 * A listener that hears one pointer only: a second finger or a resting palm neither leads nor ends what the first one
 * holds.
 *
 * @check tests/browser/two-fingers.test.ts
 */
export function ofFirst(listener: (event: PointerEvent) => void): (event: Event) => void {
  return (event) => {
    if (event instanceof PointerEvent && event.isPrimary) listener(event);
  };
}
