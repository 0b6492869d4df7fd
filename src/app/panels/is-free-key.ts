/** What takes letters, digits and page keys for itself, and what takes no more than arrows and Space. */
const FIELDS = 'input, select, textarea, [popover]';
const BUT_TICKS = 'input:not([type="radio"], [type="checkbox"]), select, textarea, [popover]';

/**
 * A key press that no field, list or hanging panel has a use for, and that is no shortcut of the browser's.
 *
 * @param isForTicks whether it is a key that radios and ticks have no use for, so that it is free there too.
 */
export function isFreeKey(event: KeyboardEvent, isForTicks = false): event is KeyboardEvent & { target: Element } {
  if (event.defaultPrevented || event.ctrlKey || event.altKey || event.metaKey) return false;
  // An open panel takes all keys for itself, wherever the focus is.
  if (document.querySelector(':popover-open')) return false;
  return event.target instanceof Element && !event.target.closest(isForTicks ? BUT_TICKS : FIELDS);
}
