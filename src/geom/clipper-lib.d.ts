/**
 * The part of clipper-lib 6.4 that `clip.ts` uses. Written here because the declarations published for it
 * do not match the module: it has a default export only, and points have capital coordinates.
 */
declare module 'clipper-lib' {
  interface IntPoint {
    X: number;
    Y: number;
  }
  interface ExPolygon {
    outer: IntPoint[];
    holes: IntPoint[][];
  }
  class PolyTree {
    private readonly polyTree: true;
  }
  class Clipper {
    constructor(options?: number);
    static readonly ioStrictlySimple: number;
    AddPaths(paths: IntPoint[][], role: number, closed: boolean): boolean;
    Execute(operation: number, solution: PolyTree, subjectFill: number, clipFill: number): boolean;
  }
  class ClipperOffset {
    constructor(miterLimit: number, arcTolerance: number);
    AddPaths(paths: IntPoint[][], join: number, end: number): void;
    Execute(solution: PolyTree, delta: number): void;
  }
  const clipperLib: {
    Clipper: typeof Clipper;
    ClipperOffset: typeof ClipperOffset;
    PolyTree: typeof PolyTree;
    ClipType: { ctIntersection: number; ctUnion: number; ctDifference: number; ctXor: number };
    PolyType: { ptSubject: number; ptClip: number };
    PolyFillType: { pftEvenOdd: number; pftNonZero: number; pftPositive: number; pftNegative: number };
    JoinType: { jtSquare: number; jtRound: number; jtMiter: number };
    EndType: { etClosedPolygon: number };
    JS: { PolyTreeToExPolygons(tree: PolyTree): ExPolygon[] };
  };
  export default clipperLib;
}
