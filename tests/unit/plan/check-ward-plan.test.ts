import { expect, test } from 'vitest';
import { checkWardPlan } from '../../../src/plan/ward-plan.ts';

/** Two sections with a base blank each and one for both, on two sites. */
const table = [
  [1, 0, 1],
  [0, 1, 1],
] as const;
const sound = {
  sites: 2,
  wards: [
    [1, 0],
    [0, 1],
  ],
  grooves: [
    [1, 0],
    [0, 1],
    [1, 1],
  ],
};

test('a sound plan has nothing wrong', () => {
  expect(checkWardPlan(table, sound, 1)).toBeNull();
});

test.each([
  [
    'a groove that is missing',
    {
      ...sound,
      grooves: [
        [0, 0],
        [0, 1],
        [1, 1],
      ],
    },
    1,
    'blank 1 in section 1 must enter and is stopped at 1 of the sites',
  ],
  [
    'a groove too many',
    {
      ...sound,
      grooves: [
        [1, 1],
        [0, 1],
        [1, 1],
      ],
    },
    1,
    'blank 1 in section 2 must be stopped at 1 sites, is at 0',
  ],
  [
    'a groove too shallow',
    {
      ...sound,
      wards: [
        [2, 0],
        [0, 1],
      ],
    },
    1,
    'blank 1 in section 1 must enter and is stopped at 1 of the sites',
  ],
  ['fewer stops than asked for', sound, 2, 'blank 2 in section 1 must be stopped at 2 sites, is at 1'],
  ['a section too few', { ...sound, wards: [[1, 0]] }, 1, 'has wards for 1 sections, not 2'],
  [
    'a blank too few',
    {
      ...sound,
      grooves: [
        [1, 0],
        [0, 1],
      ],
    },
    1,
    'has grooves for 2 blanks, not 3',
  ],
  ['a site too few in a section', { ...sound, wards: [[1], [0, 1]] }, 1, 'section 1 has 1 sites'],
  [
    'a site too few in a blank',
    { ...sound, grooves: [[1], [0, 1], [1, 1]] },
    1,
    'blank 1 in section 1 has 1 sites, not 2',
  ],
])('%s is found', (_, plan, stops, fault) => {
  expect(checkWardPlan(table, plan, stops)).toBe(fault);
});

test('a free cell may be either', () => {
  const free = [
    [1, null, 1],
    [0, 1, 1],
  ] as const;
  expect(
    checkWardPlan(
      free,
      {
        ...sound,
        wards: [
          [1, 0],
          [0, 1],
        ],
        grooves: [
          [1, 0],
          [1, 1],
          [1, 1],
        ],
      },
      1,
    ),
  ).toBeNull();
});
