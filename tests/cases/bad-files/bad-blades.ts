import type { BadFile } from './bad-file.ts';
import { GROOVE, milledProfile, withProfile } from './nearly-sound.ts';

/** Blades that cannot be milled. */
export const MILLED: BadFile[] = [
  {
    name: 'milled as a list',
    text: withProfile({ ...milledProfile(), milled: [] }),
    path: 'profiles[1].milled',
    words: /a list.*an object/,
    byShape: true,
  },
  {
    name: 'no thickness',
    text: withProfile(milledProfile({ thickness: undefined })),
    path: 'profiles[1].milled.thickness',
    words: /heron-blank: is missing/,
    byShape: true,
  },
  {
    name: 'thickness 0',
    text: withProfile(milledProfile({ thickness: 0 })),
    path: 'profiles[1].milled.thickness',
    words: /0, must be more than 0/,
    byShape: true,
  },
  {
    name: 'a negative height',
    text: withProfile(milledProfile({ height: -8 })),
    path: 'profiles[1].milled.height',
    words: /more than 0/,
    byShape: true,
  },
  {
    name: 'a thickness below a nanometre',
    text: withProfile(milledProfile({ thickness: 1e-9 })),
    path: 'profiles[1].milled.thickness',
    words: /greater than 0/,
  },
  {
    name: 'a height of 1e9',
    text: withProfile(milledProfile({ height: 1e9 })),
    path: 'profiles[1].milled.height',
    words: /1000000000 mm, more than 47\.45 mm/,
  },
  {
    name: 'grooves missing',
    text: withProfile(milledProfile({ grooves: undefined })),
    path: 'profiles[1].milled.grooves',
    words: /missing.*list/,
    byShape: true,
  },
  {
    name: 'a groove on the back',
    text: withProfile(milledProfile({}, [{ ...GROOVE, side: 'back' }])),
    path: 'profiles[1].milled.grooves[0].side',
    words: /"back".*"left" or "right"/,
    byShape: true,
  },
  {
    name: 'a groove below the back',
    text: withProfile(milledProfile({}, [{ ...GROOVE, bottom: -0.1 }])),
    path: 'profiles[1].milled.grooves[0].bottom',
    words: /at least 0/,
    byShape: true,
  },
  {
    name: 'a flank of 90 degrees',
    text: withProfile(milledProfile({}, [{ ...GROOVE, flankDeg: 90 }])),
    path: 'profiles[1].milled.grooves[0].flankDeg',
    words: /less than 90/,
    byShape: true,
  },
  {
    name: 'a groove off the blade',
    text: withProfile(milledProfile({}, [{ ...GROOVE, bottom: 8 }])),
    path: 'profiles[1].milled.grooves[0].width',
    words: /8 mm to 8\.9 mm, off the blade/,
  },
  {
    name: 'a groove through the blade',
    text: withProfile(milledProfile({}, [{ ...GROOVE, depth: 2.2 }])),
    path: 'profiles[1].milled.grooves[0].depth',
    words: /heron-blank: the groove goes through the blade: depth 2\.2 mm/,
  },
  {
    name: 'overlapping grooves',
    text: withProfile(milledProfile({}, [GROOVE, { ...GROOVE, bottom: 1.9 }])),
    path: 'profiles[1].milled.grooves[1].bottom',
    words: /overlap from 1\.9 mm to 2\.1 mm.*grooves\[0\]/,
  },
  {
    name: 'grooves that leave no web',
    text: withProfile(
      milledProfile({}, [
        { ...GROOVE, depth: 1.1 },
        { ...GROOVE, depth: 0.9, side: 'right' },
      ]),
    ),
    path: 'profiles[1].milled.grooves[1].depth',
    words: /no web/,
  },
  {
    name: 'flanks that meet',
    text: withProfile(milledProfile({}, [{ ...GROOVE, flankDeg: 40 }])),
    path: 'profiles[1].milled.grooves[0].flankDeg',
    words: /flanks meet/,
  },
  {
    name: 'a root radius too large',
    text: withProfile(milledProfile({}, [{ ...GROOVE, rootRadius: 0.5 }])),
    path: 'profiles[1].milled.grooves[0].rootRadius',
    words: /root radius 0\.5 mm is too large/,
  },
  {
    name: 'a back radius too large',
    text: withProfile(milledProfile({ backRadius: 1.5 })),
    path: 'profiles[1].milled.backRadius',
    words: /back radius is too large/,
  },
  {
    name: 'too many grooves',
    text: withProfile(milledProfile({}, Array(201).fill(GROOVE))),
    path: 'profiles[1].milled.grooves',
    words: /201 entries, must have at most 200/,
    byShape: true,
  },
];
