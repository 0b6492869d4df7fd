/** A text that is no family file, and what a reader must say about it. */
export interface BadFile {
  readonly name: string;
  readonly text: string;
  /** Where the first fault is said to be. */
  readonly path: string | RegExp;
  /** Key words of what is said. */
  readonly words: RegExp;
  /** True where the published schema alone refuses the value too (see tests/outside/schema.test.ts). */
  readonly byShape?: boolean;
}
