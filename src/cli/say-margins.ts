import type { Family } from '../family/family.ts';
import { alikeWords, type GuardMargins, type SettingPair } from '../family/guard-margin.ts';
import { shownNames } from './fit-table.ts';

/**
 * The guard margin and the smallest clearance of a family with the pairs that set them, one line each.
 *
 * @check tests/unit/cli/say-margins.test.ts
 */
export function sayMargins(family: Family, { guard, clearance }: GuardMargins): string {
  const names = shownNames(family);
  const pair = ({ profile, opening }: SettingPair) => [names.get(profile) ?? profile, names.get(opening) ?? opening];
  return `${sayGuard(guard, pair)}\n${sayClearance(clearance, pair)}\n`;
}

function sayGuard(guard: SettingPair | null, pair: (pair: SettingPair) => string[]): string {
  if (!guard) return 'guard margin        none: no blank is stopped that wear up to 4 mm would let in';
  const [blank, keyway] = pair(guard);
  return `guard margin        ${um(guard)}: worn by as much, and the keyway too, ${blank} goes into ${keyway}${alikeWords(guard)}`;
}

function sayClearance(clearance: SettingPair | null, pair: (pair: SettingPair) => string[]): string {
  if (!clearance) return 'smallest clearance  none: no blank goes in anywhere';
  const [blank, keyway] = pair(clearance);
  return `smallest clearance  ${um(clearance)}: ${blank} in ${keyway}${alikeWords(clearance)}`;
}

function um({ length }: SettingPair): string {
  return `${(length / 1e3).toFixed(1)} um`;
}
