import { ownStyle, type SvgElement } from './element.ts';

/** Properties of a `style` that move or shape an element. They are not followed, so the element is not taken. */
const MOVING = new Set([
  ...[
    'transform',
    'translate',
    'rotate',
    'scale',
    'transform-origin',
    'transform-box',
    'offset',
    'offset-path',
    'zoom',
  ],
  ...['d', 'x', 'y', 'cx', 'cy', 'r', 'rx', 'ry', 'width', 'height'],
]);

/** Values that leave an element where and as it is. */
const STILL = new Set(['', 'none', 'auto', 'initial', 'unset', 'normal']);

/** A property as the `style` attribute has it, else the attribute of its name. */
export function property(element: SvgElement, name: string): string {
  return ownStyle(element).get(name) ?? element.attributes.get(name)?.trim().toLowerCase() ?? '';
}

/** Whether an element, with all that is in it, is taken out of the drawing. */
export function isTakenOut(element: SvgElement): boolean {
  return property(element, 'display') === 'none';
}

/** Whether an element is hidden; what is inside may be visible again. */
export function isHidden(element: SvgElement, around: boolean): boolean {
  const visibility = property(element, 'visibility');
  if (visibility === 'visible') return false;
  return visibility === 'hidden' || visibility === 'collapse' || around;
}

/** Whether the conditions of an element hold: no extensions are known, the language is English. */
export function isForUs({ attributes }: SvgElement): boolean {
  const languages = attributes.get('systemLanguage');
  if (attributes.has('requiredExtensions')) return false;
  return languages === undefined || languages.split(',').some((language) => /^\s*en\b/i.test(language));
}

/** What a `switch` shows: the first of its elements whose conditions hold. */
export function firstFitting(element: SvgElement): readonly SvgElement[] {
  const shown = ({ name }: SvgElement) => !['title', 'desc', 'metadata', 'style', 'script', 'defs'].includes(name);
  return element.children.filter((child) => shown(child) && isForUs(child)).slice(0, 1);
}

/** The property that moves or shapes an element from its style, or an origin of its transform; undefined where none does. */
export function movedBy(element: SvgElement): string | undefined {
  const moving = [...ownStyle(element)].find(([name, value]) => MOVING.has(name) && !STILL.has(value));
  if (moving !== undefined) return moving[0];
  const about = element.attributes.has('transform-origin') && element.attributes.has('transform');
  return about ? 'transform-origin' : undefined;
}
