/** Thrown where a pair cannot be judged at all; tells which and why, in words for people. */
export class PairRefused extends Error {
  constructor(profile: string, opening: string, reason: string) {
    super(`${profile} in ${opening}: ${reason}`);
    this.name = 'PairRefused';
  }
}

/** The value, or {@link PairRefused} in place of a RangeError of the fit core. */
export function orRefuse<Value>(profile: string, opening: string, judge: () => Value): Value {
  try {
    return judge();
  } catch (error) {
    if (error instanceof RangeError) throw new PairRefused(profile, opening, error.message);
    throw error;
  }
}
