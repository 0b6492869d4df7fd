import { MOST_RESERVE } from '../../family/plan.ts';
import { z } from './shape-library.ts';

/** Most profiles in one family. */
export const MAX_PROFILES = 2_000;

/** Most names in the register. */
export const MAX_NAMES = 5_000;

/** Most claims in one family: a whole matrix of 200 by 200 and as many again. */
export const MAX_CLAIMS = 80_000;

/** Most steps of one lesson. */
const MAX_LESSON_STEPS = 500;

/** Most areas in one plan. */
export const MAX_AREAS = 1_000;

/** Most holders in one plan. */
export const MAX_HOLDERS = 5_000;

/** A text that people read. */
export const shownText = z.string().min(1).max(200).regex(/\S/);

/** A length that something has. */
export const lengthAbove0 = z.number().gt(0);

/** A number of pin positions. */
export const chambers = z.int().min(1).max(12);

/** One name of the register. */
export const nameEntry = z
  .looseObject({
    text: shownText.meta({ description: 'The name as it is written, digits and signs included.' }),
    kind: z.enum(['keyway', 'section', 'blank', 'tool', 'series']).meta({
      description:
        'What kind of thing it names. series: several blanks under one name that differ in something else, their length for example.',
    }),
    section: shownText.optional().meta({ description: 'The section that it stands for, as profiles name it.' }),
    profile: z
      .string()
      .min(1)
      .max(100)
      .optional()
      .meta({ description: 'Id of the one profile that it stands for, where the section does not say it.' }),
    scheme: shownText.optional().meta({ description: 'The naming scheme, list or catalogue that uses the name.' }),
    chambers: chambers
      .optional()
      .meta({ description: 'Number of pin positions that the named blank is long enough for.' }),
    supersededBy: shownText.optional().meta({ description: 'The name that is used instead now.' }),
    note: z.string().optional().meta({ description: 'A remark for people.' }),
  })
  .meta({
    id: 'name',
    description: 'One name of the register. No influence on fit. Fields not named here are kept.',
  });

/** What somebody says of a blank and a keyway. */
export const claim = z
  .looseObject({
    blank: shownText.meta({ description: 'The blank or tool, by whatever name the source uses.' }),
    opening: shownText.meta({ description: 'The keyway, by whatever name the source uses.' }),
    enters: z.boolean().meta({ description: 'What is said: that it goes in, or that it does not.' }),
    by: shownText.optional().meta({ description: 'Who says so: a chart, a catalogue, a colleague.' }),
    note: z.string().optional().meta({ description: 'A remark for people.' }),
  })
  .meta({
    id: 'claim',
    description: 'What somebody says of a blank and a keyway, to be checked against the outlines. No influence on fit.',
  });

const lessonStep = z
  .looseObject({
    show: z.enum(['words', 'pair', 'wall', 'tiers', 'passage', 'question']).meta({
      description:
        'words: title and words alone. pair: one blank in one keyway. wall: one blank in every keyway. tiers: the tiers up to a blank. passage: what several keyways have in common. question: one blank and one keyway, the answer hidden at first.',
    }),
    title: shownText.meta({ description: 'What stands large over the picture.' }),
    words: z.string().max(2_000).optional().meta({ description: 'What is said of it, a sentence or two.' }),
    blank: z.string().min(1).max(100).optional().meta({ description: 'Id of the blank or tool.' }),
    opening: z.string().min(1).max(100).optional().meta({ description: 'Id of the keyway.' }),
    openings: z
      .array(z.string().min(1).max(100))
      .max(MAX_PROFILES)
      .optional()
      .meta({ description: 'Ids of the keyways, where several are shown; all where not given.' }),
    push: z.boolean().optional().meta({ description: 'true: the blank is pushed in from the front before the eyes.' }),
  })
  .meta({ id: 'lessonStep', description: 'One step of the lesson. Fields not named here are kept.' });

/** A script to show a room. */
export const lesson = z
  .looseObject({
    title: shownText.meta({ description: 'Title of the lesson.' }),
    steps: z.array(lessonStep).max(MAX_LESSON_STEPS).meta({ description: 'The steps, in order.' }),
  })
  .meta({ id: 'lesson', description: 'A script to show a room, step by step. No influence on fit.' });

const planId = z.string().min(1).max(100);

const area = z
  .looseObject({
    id: planId.meta({ description: 'Name for programs, unique among the areas.' }),
    name: shownText.meta({ description: 'Name for people.' }),
    parent: planId
      .optional()
      .meta({ description: 'Id of the area that it lies in. An area that holds others is a group.' }),
    section: shownText.optional().meta({
      description: 'Name of its section, where it is not the area’s own name. Areas with one name share the section.',
    }),
  })
  .meta({
    id: 'area',
    description: 'A part of the site: with a keyway of its own, or a group of others. Fields not named here are kept.',
  });

const areaIds = z.array(planId).max(MAX_AREAS);

const holder = z
  .looseObject({
    id: planId.meta({ description: 'Name for programs, unique among the holders.' }),
    name: shownText.meta({ description: 'The person or role.' }),
    enters: areaIds.meta({ description: 'Ids of the areas that the blank must enter; a group stands for all in it.' }),
    free: areaIds.optional().meta({ description: 'Ids of the areas that the blank may enter or not.' }),
  })
  .meta({ id: 'holder', description: 'Who carries a blank, and where it goes in. Fields not named here are kept.' });

const bladeLimits = z
  .looseObject({
    thickness: lengthAbove0.meta({ description: "Thickness of the blade, in the file's units." }),
    height: lengthAbove0.meta({ description: "Height of the blade, in the file's units." }),
    backRadius: z
      .number()
      .min(0)
      .optional()
      .meta({ description: 'Radius of the two corners at the back. 0 if absent.' }),
    cutZone: z.number().min(0).meta({ description: 'Height below the upper edge that is kept free for the cuts.' }),
    backZone: z
      .number()
      .min(0)
      .optional()
      .meta({ description: 'Height above the back kept free of wards. 0 if absent.' }),
    grooveWidth: lengthAbove0.meta({ description: 'Width of a groove on the face of the blade.' }),
    heightStep: lengthAbove0.meta({ description: 'From one possible groove to the next on the same side.' }),
    grooveDepth: lengthAbove0.meta({ description: 'Greatest depth of a groove.' }),
    depthStep: lengthAbove0.optional().meta({ description: 'Difference between two depths at one site.' }),
    flankDeg: z.number().min(0).lt(90).optional().meta({ description: 'Lean of a flank from square. 0 if absent.' }),
    rootRadius: z.number().min(0).optional().meta({ description: 'Radius at the root of a groove. 0 if absent.' }),
    sides: z
      .enum(['left', 'right', 'both'])
      .optional()
      .meta({ description: 'Faces that may be milled. both if absent.' }),
  })
  .meta({ id: 'bladeLimits', description: 'What the blades may be made like. Fields not named here are kept.' });

/** What a family is planned from. */
export const plan = z
  .looseObject({
    areas: z.array(area).max(MAX_AREAS).meta({ description: 'The areas, in chart order; parents in any place.' }),
    holders: z.array(holder).max(MAX_HOLDERS).meta({ description: 'Who carries a blank.' }),
    baseBlanks: z
      .boolean()
      .optional()
      .meta({ description: 'Each section gets a blank that enters it alone. true if absent.' }),
    allSection: z
      .boolean()
      .optional()
      .meta({ description: 'There is a blank that enters every section. true if absent.' }),
    reserve: z
      .int()
      .min(0)
      .max(MOST_RESERVE)
      .optional()
      .meta({ description: 'Further sections that room is kept for.' }),
    stops: z.int().min(1).max(3).optional().meta({
      description: 'By how many wards, each enough by itself, a blank is stopped where it must not go in. 1 if absent.',
    }),
    depths: z
      .int()
      .min(1)
      .max(4)
      .optional()
      .meta({ description: 'Depths that a ward may have at one site. 1 if absent.' }),
    blade: bladeLimits,
  })
  .meta({
    id: 'plan',
    description: 'What a family is planned from: areas, holders, limits of the blade. Fields not named here are kept.',
  });
