/** Under what conditions pairs are judged. Lengths in nanometres, angles in radians. */
export interface Conditions {
  /** Uniform gap below which a fit is tight. */
  readonly runningClearance: number;
  /** Greatest tilt of the blank either way; 0 means upright only. */
  readonly tiltLimit: number;
  /** Uniform wear: taken off the blank and, as much again, off the keyway. */
  readonly wear: number;
}

/** New parts, held upright. */
export function plainConditions(runningClearance: number): Conditions {
  return { runningClearance, tiltLimit: 0, wear: 0 };
}
