import type { Profile } from '../profile/profile.ts';

/** What stands raised at an opening or on a coupon, by the profile's id. */
export type LabelTexts = ReadonlyMap<string, string>;

/**
 * The words raised at each opening or on each coupon, by the profile's id: the name of the section; with the chambers,
 * else the profile's own name, where several of them are of one section.
 *
 * @param profiles of one kind, openings or what goes in.
 * @check tests/unit/print3d/label-parts.test.ts
 */
export function labelParts(profiles: readonly Profile[]): LabelTexts {
  const tries: ((profile: Profile) => string)[] = [
    ({ section, name }) => section ?? name,
    ({ section, name, chambers }) => (section && chambers ? `${section} ${chambers}` : name),
    ({ name }) => name,
    ({ name, id }) => `${name} (${id})`,
  ];
  const labels = new Map<string, string>();
  let open = profiles;
  for (const words of tries) {
    const counts = new Map<string, number>();
    for (const profile of open) counts.set(words(profile), (counts.get(words(profile)) ?? 0) + 1);
    const taken = new Set(labels.values());
    const free = (profile: Profile) => counts.get(words(profile)) === 1 && !taken.has(words(profile));
    for (const profile of open.filter(free)) labels.set(profile.id, words(profile));
    open = open.filter(({ id }) => !labels.has(id));
  }
  for (const { id } of open) labels.set(id, id);
  return labels;
}
