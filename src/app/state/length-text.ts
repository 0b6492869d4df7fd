// biome-ignore lint/performance/noBarrelFile: lengths are written by the core, so that pages say them as the window does
export {
  bandText,
  gapText,
  heightNumber,
  heightText,
  readingText,
  shiftText,
  sizeText,
  type Units,
  wearLengthText,
} from '../../family/length-text.ts';
