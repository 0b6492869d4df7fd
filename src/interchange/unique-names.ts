import type { Profile } from '../profile/profile.ts';

/**
 * The names of profiles in a form that a format can hold, all different (capitals do not count as a difference): one
 * that was there before has its id behind it.
 *
 * @param clean makes a name fit for the format; an empty one becomes the id.
 * @check tests/unit/interchange/dxf-write.test.ts
 */
export function uniqueNames(
  profiles: readonly Pick<Profile, 'id' | 'name'>[],
  clean: (name: string) => string,
): string[] {
  const taken = new Set<string>();
  return profiles.map(({ id, name }) => {
    const plain = clean(name) || clean(id) || 'profile';
    const wanted = [plain, clean(`${plain} (${id})`)].find((text) => !taken.has(text.toLowerCase()));
    let free = wanted ?? plain;
    for (let i = 2; taken.has(free.toLowerCase()); i += 1) free = `${clean(plain)} ${i}`;
    taken.add(free.toLowerCase());
    return free;
  });
}
