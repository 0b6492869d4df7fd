import type { Point } from '../../src/geom/point.ts';

/** An outline whose largest inscribed circle is hard to find, and that circle's radius, nanometres. */
export interface HardCircle {
  readonly name: string;
  readonly outline: readonly Point[];
  /** From another library (JSTS MaximumInscribedCircle at 1 nm), true within 1 nm. */
  readonly radius: number;
}

function points(pairs: readonly (readonly [number, number])[]): Point[] {
  return pairs.map(([x, y]) => ({ x, y }));
}

/**
 * Found: a search that cuts its cells where the best depth from the nearest wall ends can shave slivers off one cell
 * for ever, and stop at its limit tens of micrometres short.
 */
export const hardCircles: readonly HardCircle[] = [
  {
    name: 'crooked corridor of seven bends',
    outline: points([
      [-6251, -467052],
      [911115, -236233],
      [1942226, -658085],
      [3214401, -616126],
      [4086594, -397625],
      [5170732, -493944],
      [6294228, -832528],
      [7502308, -1301246],
      [7312984, -474848],
      [6344635, 26926],
      [5103613, 501454],
      [4017690, 474182],
      [3034561, 378697],
      [1925745, 146816],
      [1043569, 738339],
      [32213, 467052],
    ]),
    radius: 502576.4,
  },
  {
    name: 'star with 36 points',
    outline: points([
      [2726860, 124791],
      [1703391, 383176],
      [3570770, 1402080],
      [3201897, 2000058],
      [2902551, 2596979],
      [2177573, 2711261],
      [836463, 1296925],
      [872135, 2441608],
      [706095, 3445639],
      [-168144, 3951643],
      [-374553, 1739219],
      [-1322308, 3245511],
      [-1596268, 2794368],
      [-2273499, 2536826],
      [-2359157, 2103695],
      [-2188531, 1262792],
      [-2108419, 804588],
      [-1894885, 402514],
      [-1267482, 51452],
      [-2293005, -512102],
      [-3148889, -999090],
      [-3328870, -2147466],
      [-3132415, -2427015],
      [-1466218, -1867229],
      [-1345654, -2294481],
      [-717584, -1860932],
      [-842355, -3880210],
      [79447, -1808285],
      [279040, -1925056],
      [964835, -2596448],
      [2018159, -3315507],
      [1663708, -1827253],
      [1173411, -1046198],
      [3225075, -2035192],
      [2189443, -742318],
      [2971176, -524277],
    ]),
    radius: 1447808.5,
  },
];
