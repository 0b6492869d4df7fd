import { MILLED } from './bad-blades.ts';
import { PROFILES, TOP } from './bad-fields.ts';
import type { BadFile } from './bad-file.ts';
import { OUTLINES } from './bad-outlines.ts';
import { PICTURES } from './bad-pictures.ts';
import { PROTOTYPES, SYNTAX } from './bad-texts.ts';

/** Every text that a reader must refuse. */
export const BAD_FILES: readonly BadFile[] = [
  ...SYNTAX,
  ...PROTOTYPES,
  ...TOP,
  ...PROFILES,
  ...OUTLINES,
  ...MILLED,
  ...PICTURES,
];
