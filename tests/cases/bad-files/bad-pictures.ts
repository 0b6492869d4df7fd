import type { BadFile } from './bad-file.ts';
import { outlineProfile, SQUARE, withProfile } from './nearly-sound.ts';

/** The smallest picture there is: one pixel. */
const DOT =
  'data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNgAAAAAgABSK+kcQAAAABJRU5ErkJggg==';

const withPicture = (picture: unknown): string => withProfile(outlineProfile(SQUARE, { picture }));

/** Wrong fields of a kept picture. */
export const PICTURES: BadFile[] = [
  {
    name: 'a picture without an image',
    text: withPicture({ opacity: 0.5 }),
    path: 'profiles[1].picture.image',
    words: /heron-keyway: is missing, must be a text/,
    byShape: true,
  },
  {
    name: 'a picture from an address of the net',
    text: withPicture({ image: 'https://192.0.2.1/scan.png' }),
    path: 'profiles[1].picture.image',
    words: /must be a PNG, JPEG or WebP picture/,
    byShape: true,
  },
  {
    name: 'a picture that is a drawing with script in it',
    text: withPicture({ image: 'data:image/svg+xml;base64,PHN2Zy8+' }),
    path: 'profiles[1].picture.image',
    words: /must be a PNG, JPEG or WebP picture/,
    byShape: true,
  },
  {
    name: 'a picture with a quote in its base64',
    text: withPicture({ image: `${DOT}"` }),
    path: 'profiles[1].picture.image',
    words: /must be a PNG, JPEG or WebP picture/,
    byShape: true,
  },
  {
    name: 'a rectangle of three corners',
    text: withPicture({
      image: DOT,
      rectangle: {
        corners: [
          [0, 0],
          [1, 0],
          [1, 1],
        ],
        width: 1,
        height: 1,
      },
    }),
    path: 'profiles[1].picture.rectangle.corners',
    words: /a list with 3 entries/,
    byShape: true,
  },
  {
    name: 'a scale without a distance',
    text: withPicture({ image: DOT, scale: { from: [0, 0], to: [9, 0], distance: 0 } }),
    path: 'profiles[1].picture.scale.distance',
    words: /is 0, must be more than 0/,
    byShape: true,
  },
  {
    name: 'a picture stronger than whole',
    text: withPicture({ image: DOT, opacity: 2 }),
    path: 'profiles[1].picture.opacity',
    words: /must be at most 1/,
    byShape: true,
  },
];
