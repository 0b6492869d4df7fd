/** What somebody says of a blank and a keyway, by whatever names the source uses. */
export interface Claim {
  /** The blank or tool. */
  readonly blank: string;
  /** The keyway. */
  readonly opening: string;
  /** Whether it is said to go in. */
  readonly enters: boolean;
  /** Who says so. */
  readonly by?: string;
  readonly note?: string;
}
