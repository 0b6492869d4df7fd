/** A key press that no field, list or hanging panel has a use for, and that is no shortcut of the browser's. */
export function isFreeKey(event: KeyboardEvent): event is KeyboardEvent & { target: Element } {
  if (event.defaultPrevented || event.ctrlKey || event.altKey || event.metaKey) return false;
  // An open panel takes all keys for itself, wherever the focus is.
  if (document.querySelector(':popover-open')) return false;
  return event.target instanceof Element && !event.target.closest('input, select, textarea, [popover]');
}
