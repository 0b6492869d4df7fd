/** Papers that sheets are laid out on; A1 is the poster. */
export type PaperName = 'A4' | 'A3' | 'Letter' | 'A1';

/** How a paper is held. */
export type PaperTurn = 'portrait' | 'landscape';

/** Papers in the order in which they are offered. */
export const PAPER_NAMES: readonly PaperName[] = ['A4', 'A3', 'Letter', 'A1'];

/** Width and height held upright, millimetres. */
const SIZES: Readonly<Record<PaperName, readonly [width: number, height: number]>> = {
  A4: [210, 297],
  A3: [297, 420],
  Letter: [215.9, 279.4],
  A1: [594, 841],
};

/**
 * The size of a sheet of paper, millimetres.
 *
 * @source ISO 216 for A4, A3 and A1; ANSI/ASME Y14.1 size A (8.5 in by 11 in) for Letter, both from memory.
 * @check tests/outside/pdf-pages.test.ts
 */
export function paperSize(paper: PaperName, turned: PaperTurn): { readonly width: number; readonly height: number } {
  const [short, long] = SIZES[paper];
  return turned === 'portrait' ? { width: short, height: long } : { width: long, height: short };
}
