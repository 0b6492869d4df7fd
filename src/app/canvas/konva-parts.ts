// The one file that imports Konva: the stage and the few shapes that are used, so that the rest stays out of the bundle.
import 'konva/lib/shapes/Arrow.js';
import 'konva/lib/shapes/Circle.js';
import 'konva/lib/shapes/Label.js';
import 'konva/lib/shapes/Line.js';
import 'konva/lib/shapes/Path.js';
import 'konva/lib/shapes/Rect.js';
import 'konva/lib/shapes/Text.js';
import type { Context } from 'konva/lib/Context.js';

// biome-ignore lint/performance/noBarrelFile: the one door through which the package enters
export {
  Arrow,
  Circle,
  Group,
  Label,
  Layer,
  Line,
  Path,
  Rect,
  Shape,
  Stage,
  Tag,
  Text,
} from 'react-konva/lib/ReactKonvaCore';

/** What a shape of our own draws on. */
export type DrawingContext = Context;
