import { MAX_BULGE } from '../../geom/vertex.ts';
import type { FilePath } from './file-fault.ts';
import {
  chambers,
  claim,
  lengthAbove0,
  lesson,
  MAX_CLAIMS,
  MAX_NAMES,
  MAX_PROFILES,
  nameEntry,
  plan,
  shownText,
} from './record-schema.ts';
import { z } from './shape-library.ts';

/** Name of the format, the same in every version. */
export const FORMAT = 'sectionary-family';

/** The version of the format that is written, and the newest that is read. */
export const VERSION = 1;

/** Most points in one outline, a repeated closing point not counted. */
export const MAX_OUTLINE_POINTS = 10_000;

/** Most grooves on one blade. */
const MAX_GROOVES = 200;

/** Most characters of a kept picture, about six megabytes of file. */
const MAX_PICTURE_TEXT = 8_000_000;

/** Greatest tilt limit, in degrees: no plug lets a blade lean further, and a larger figure is a slip. */
export const MAX_TILT_DEG = 15;

/** Tilt limit of a family that states none, in degrees. */
export const DEFAULT_TILT_DEG = 2;

/** Words that every object of the language already carries: as ids they would be mistaken for those. */
const RESERVED_IDS = Object.getOwnPropertyNames(Object.prototype)
  .filter((name) => !name.startsWith('_'))
  .sort();

const tolerance = z.number().min(0).optional();

const point = z.tuple([z.number(), z.number(), z.number().min(-MAX_BULGE).max(MAX_BULGE).optional()]).meta({
  id: 'point',
  description:
    "One vertex, [x, y] in the file's units: x to the right, y up, seen from the front of the plug. A third number is the bulge of the edge from this vertex to the next: the tangent of a quarter of its arc's angle, positive where the edge turns to the left on its way; 0 or absent is a straight edge.",
});

const groove = z
  .looseObject({
    side: z
      .enum(['left', 'right'])
      .meta({ description: 'The face that the groove is milled into, seen from the bow.' }),
    bottom: z.number().min(0).meta({
      description:
        "Height of the groove's lower edge on the face, above the back of the blade, in the file's units. 0 makes a step at the back.",
    }),
    width: lengthAbove0.meta({ description: "Width of the groove on the face, in the file's units." }),
    depth: lengthAbove0.meta({
      description: "How far the groove goes into the blade from its face, in the file's units.",
    }),
    flankDeg: z.number().min(0).lt(90).optional().meta({
      description:
        'Lean of each flank from square, in degrees: the groove narrows towards its root by depth * tan(flankDeg) on each side. 0 where not given.',
    }),
    rootRadius: z.number().min(0).optional().meta({
      description:
        "Radius of the two corners at the root, tangent to flank and root, in the file's units. On an opening, the rounding of the ward's tip. 0 where not given.",
    }),
  })
  .meta({
    id: 'groove',
    description: 'One milled groove; on an opening, one ward of the plug. Fields not named here are kept.',
  });

const milled = z
  .looseObject({
    thickness: lengthAbove0.meta({
      description: "Thickness of the blade from left to right face, in the file's units.",
    }),
    height: lengthAbove0.meta({
      description: "Height of the blade from its back to its upper edge, in the file's units.",
    }),
    backRadius: z.number().min(0).optional().meta({
      description: "Radius of the two corners at the back of the blade, in the file's units. 0 where not given.",
    }),
    grooves: z.array(groove).max(MAX_GROOVES).meta({
      description:
        'The grooves of both faces, in any order. Grooves of one face may not touch; those of opposite faces must leave a web.',
    }),
  })
  .meta({
    id: 'milled',
    description:
      'A blade as it is milled, its back on y = 0 and its left face on x = 0. The same words describe an opening: what is a groove here is then a ward. Fields not named here are kept.',
  });

const pixel = z.tuple([z.number(), z.number()]).meta({
  id: 'pixel',
  description: 'A place in a picture, [x, y] in pixels from its upper left corner: x to the right, y down.',
});

const picture = z
  .looseObject({
    image: z
      .string()
      .max(MAX_PICTURE_TEXT)
      .regex(/^data:image\/(png|jpeg|webp);base64,[A-Za-z0-9+/]+={0,2}$/)
      .meta({ description: 'The picture itself, PNG, JPEG or WebP, as a data address in base64.' }),
    scale: z
      .looseObject({ from: pixel, to: pixel, distance: lengthAbove0 })
      .optional()
      .meta({ description: "Two places of the picture and how far apart they are in truth, in the file's units." }),
    rectangle: z
      .looseObject({ corners: z.array(pixel).length(4), width: lengthAbove0, height: lengthAbove0 })
      .optional()
      .meta({
        description:
          "The corners of a rectangle in the picture (upper left, upper right, lower right, lower left) and its size in truth, in the file's units: takes the perspective away.",
      }),
    line: z
      .looseObject({ from: pixel, to: pixel, lies: z.enum(['upright', 'level']) })
      .optional()
      .meta({ description: 'A line of the picture and how it should stand.' }),
    turnDeg: z.number().optional().meta({ description: 'A further turn, counter-clockwise, in degrees.' }),
    middle: z.tuple([z.number(), z.number()]).optional().meta({
      description: "Where the middle of the picture lies among the profiles, [x, y] in the file's units.",
    }),
    opacity: z.number().min(0).max(1).optional().meta({ description: 'How strongly the picture is shown, 0 to 1.' }),
  })
  .meta({
    id: 'picture',
    description:
      'A photograph or scan that the outline is traced over, kept because the user said so. No influence on fit. Fields not named here are kept.',
  });

const profile = z
  .looseObject({
    id: z
      .string()
      .regex(/^[A-Za-z0-9][A-Za-z0-9._:-]{0,99}$/)
      .refine((id) => !RESERVED_IDS.includes(id))
      .meta({
        description:
          'Name for programs, unique in the family: letters, digits and . _ : - (at most 100, the first a letter or digit).',
        not: { enum: RESERVED_IDS },
      }),
    kind: z.enum(['opening', 'blank', 'tool']).meta({
      description:
        'opening: a keyway, as seen from the front. blank: the section of an uncut key, as seen from the bow. tool: any other thing that goes in.',
    }),
    section: shownText
      .optional()
      .meta({ description: 'The section that the profile belongs to, where it belongs to one.' }),
    name: shownText.meta({ description: 'Name for people.' }),
    chambers: chambers
      .optional()
      .meta({ description: 'Number of pin positions the blank is long enough for. No influence on fit.' }),
    inBetween: z.boolean().optional().meta({
      description:
        'true, of an opening: its section was squeezed in later, between its neighbours in the order of the file; a chart raises it. No influence on fit.',
    }),
    tolerance: tolerance.meta({
      description:
        "Greatest deviation of the outline as made, to either side, in the file's units; at most 1 mm (0.03937 in). The family's where not given.",
    }),
    note: z.string().optional().meta({ description: 'A remark for people.' }),
    outline: z
      .array(point)
      .min(3)
      .max(MAX_OUTLINE_POINTS + 1)
      .optional()
      .meta({
        description:
          'A simple polygon, in order, either way round; the first point may be repeated at the end. Edges may not cross or touch each other. Exactly one of outline and milled is given.',
      }),
    milled: milled.optional(),
    planned: z.boolean().optional().meta({
      description: 'true: made from the plan of the family, and made anew when that is taken again.',
    }),
    picture: picture.optional(),
  })
  .meta({
    id: 'profile',
    description: 'One section, drawn by its outline or described as it is milled. Fields not named here are kept.',
    oneOf: [{ required: ['outline'] }, { required: ['milled'] }],
  });

const family = z
  .looseObject({
    format: z.literal(FORMAT).meta({ description: 'Name of the format.' }),
    version: z.literal(VERSION).meta({ description: 'Version of the format.' }),
    name: shownText.meta({ description: 'Name of the family.' }),
    note: z.string().optional().meta({ description: 'A remark for people.' }),
    units: z.enum(['mm', 'in']).meta({ description: 'The unit of every length in the file: millimetres or inches.' }),
    runningClearance: z.number().min(0).meta({
      description: "The uniform gap, in the file's units, below which a fit is tight.",
    }),
    tolerance: tolerance.meta({
      description:
        "Greatest deviation of an outline as made, to either side, in the file's units, for every profile that states none; at most 1 mm (0.03937 in). 0 where not given: parts exactly as drawn.",
    }),
    tiltLimitDeg: z
      .number()
      .min(0)
      .max(MAX_TILT_DEG)
      .optional()
      .meta({
        description: `Greatest tilt of a blank in a keyway, either way, in degrees, where tilt is looked at. ${DEFAULT_TILT_DEG} where not given.`,
      }),
    leastWeb: lengthAbove0.optional().meta({
      description:
        "The thinnest web that a blade of the family should have, in the file's units: milling warns below it. No influence on fit.",
    }),
    profiles: z.array(profile).max(MAX_PROFILES).meta({
      description: 'The sections in chart order. Ids must be unique, which this schema cannot say.',
    }),
    names: z
      .array(nameEntry)
      .max(MAX_NAMES)
      .optional()
      .meta({ description: 'The register of names: what a name stands for, in which scheme. In any order.' }),
    claims: z
      .array(claim)
      .max(MAX_CLAIMS)
      .optional()
      .meta({ description: 'What charts, catalogues and colleagues say of the family. In any order.' }),
    lesson: lesson.optional(),
    plan: plan.optional(),
  })
  .meta({
    $id: 'urn:sectionary:family:1',
    title: 'Sectionary family file',
    description:
      'A family of keyway sections: openings, blanks and tools. Lengths must stay within 47.45 mm (1.868 in) of the origin. Fields not named here are kept on a round trip.',
  });

/** The parts of a family file that say something of it in words. */
const records = family.pick({ names: true, claims: true, lesson: true, plan: true });

/** The family file without a look into its profiles and its records. */
const frame = family.extend({
  profiles: z.array(z.unknown()).max(MAX_PROFILES),
  names: z.unknown().optional(),
  claims: z.unknown().optional(),
  lesson: z.unknown().optional(),
  plan: z.unknown().optional(),
});

/** The records of a family file by name. */
export type RecordName = keyof typeof records.shape;

/** The names of {@link RecordName}. */
export const RECORD_NAMES = Object.keys(records.shape) as RecordName[];

/** A family file as it stands in the JSON text, in the file's units, fields unknown to us included. */
export type FamilyFile = z.infer<typeof family>;

/** One profile of a file. */
export type ProfileFile = FamilyFile['profiles'][number];

/** The milled description of a profile of a file. */
export type MilledFile = NonNullable<ProfileFile['milled']>;

/** The picture of a profile of a file. */
export type PictureFile = NonNullable<ProfileFile['picture']>;

/** A name of a file's register. */
export type NameFile = NonNullable<FamilyFile['names']>[number];

/** A claim of a file. */
export type ClaimFile = NonNullable<FamilyFile['claims']>[number];

/** The lesson of a file. */
export type LessonFile = NonNullable<FamilyFile['lesson']>;

/** The plan of a file. */
export type PlanFile = NonNullable<FamilyFile['plan']>;

/** A place where a value does not have the shape of the format. */
export interface ShapeFault {
  readonly path: FilePath;
  /** What the format asks for there, in words: "must be a number". */
  readonly wanted: string;
}

/** Every place where a record of a family file has not the shape of the format. Paths start in the record. */
export function recordFaults(name: RecordName, value: unknown): ShapeFault[] {
  return faultsAgainst(records.shape[name], value);
}

/**
 * Every place where the frame of a family file (all but what stands inside the profiles and the records) has not the
 * shape of the format. They are looked at apart, so that a reader may stop at the first many faults.
 *
 * @check tests/outside/schema.test.ts compares with an independent validator of the published schema
 */
export function frameFaults(value: unknown): ShapeFault[] {
  return faultsAgainst(frame, value);
}

/** Every place where a profile has not the shape of the format; says nothing about geometry. Paths start in the profile. */
export function profileFaults(value: unknown): ShapeFault[] {
  return faultsAgainst(profile, value);
}

function faultsAgainst(schema: z.ZodType, value: unknown): ShapeFault[] {
  const result = schema.safeParse(value);
  if (result.success) return [];
  return result.error.issues.map((issue) => ({
    path: issue.path.filter((key) => typeof key !== 'symbol'),
    wanted: wantedBy(issue),
  }));
}

/** The JSON Schema (2020-12) of the family file, as kept in shared/family.schema.json. */
export function familyJsonSchema(): unknown {
  return z.toJSONSchema(family, { target: 'draft-2020-12' });
}

/** What an issue of the schema library asks for, in words. */
function wantedBy(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case 'invalid_type':
      return `must be ${TYPE_WORDS[issue.expected] ?? issue.expected}`;
    case 'invalid_value':
      return `must be ${issue.values.map((v) => JSON.stringify(v)).join(' or ')}`;
    case 'too_small':
      return limit(issue.origin, issue.inclusive ? 'at least' : 'more than', issue.minimum);
    case 'too_big':
      return limit(issue.origin, issue.inclusive ? 'at most' : 'less than', issue.maximum);
    case 'invalid_format':
      return patternWords(issue.pattern ?? '');
    default:
      return 'a word that programs reserve';
  }
}

function patternWords(pattern: string): string {
  if (pattern === String(/\S/)) return 'must not be blank';
  return pattern.includes('base64')
    ? 'must be a PNG, JPEG or WebP picture, data:image/png;base64,…'
    : 'must be letters, digits and . _ : - only';
}

const TYPE_WORDS: Readonly<Record<string, string>> = {
  string: 'a text in quotes',
  number: 'a number',
  int: 'a whole number',
  object: 'an object { … }',
  boolean: 'true or false',
  array: 'a list [ … ]',
  tuple: 'a pair of numbers [x, y], or three with the bulge of the edge that follows',
};

/** A bound in words; `origin` tells what is counted. */
function limit(origin: string, relation: string, bound: number | bigint): string {
  if (origin === 'array') return `must have ${relation} ${bound} ${Number(bound) === 1 ? 'entry' : 'entries'}`;
  if (origin === 'string') return `must have ${relation} ${bound} characters`;
  return `must be ${relation} ${bound}`;
}
