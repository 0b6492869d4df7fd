/** The ids of an option that may be given several times, each time ids parted by commas; an empty one where one is missing. */
export function listedIds(lists: readonly string[]): string[] {
  return lists.flatMap((list) => list.split(',')).map((id) => id.trim());
}
