import { describe, expect, test } from 'vitest';
import { parseCommand } from '../../../src/cli/parse-command.ts';

const command = (line: string) => {
  const parsed = parseCommand(line.split(' ').filter(Boolean));
  return parsed.ok ? parsed.command : parsed.fault;
};

const FIT = { name: 'fit', file: 'a.json', json: false, verify: false, margins: false };

describe('the words of a command line', () => {
  test.each([
    ['fit a.json', FIT],
    ['fit --json a.json', { ...FIT, json: true }],
    ['fit a.json --verify --json', { ...FIT, json: true, verify: true }],
    ['fit a.json --margins', { ...FIT, margins: true }],
    ['fit a.json --tilt 2', { ...FIT, tiltDeg: 2 }],
    ['fit --tilt=1.5 a.json --wear-um=12', { ...FIT, tiltDeg: 1.5, wearUm: 12 }],
    ['fit --tolerance-um .5 a.json', { ...FIT, toleranceUm: 0.5 }],
    ['fit a.json --tilt 0 --tolerance-um 0 --wear-um 0', { ...FIT, tiltDeg: 0, toleranceUm: 0, wearUm: 0 }],
    [
      'fit a.json --tilt 15 --tolerance-um 1000 --wear-um 1000.0',
      { ...FIT, tiltDeg: 15, toleranceUm: 1000, wearUm: 1000 },
    ],
    ['fit a.json --json --draws 2000', { ...FIT, json: true, draws: 2000 }],
    ['fit -- --odd.json', { ...FIT, file: '--odd.json' }],
    ['check a.json', { name: 'check', file: 'a.json' }],
    ['export a.json --as svg', { name: 'export', file: 'a.json', format: 'svg' }],
    ['export a.json -o out/b.DXF', { name: 'export', file: 'a.json', format: 'dxf', output: 'out/b.DXF' }],
    ['export a.json -o points.txt --as csv', { name: 'export', file: 'a.json', format: 'csv', output: 'points.txt' }],
    ['export --as=DXF a.json --only b,a --only b', { name: 'export', file: 'a.json', format: 'dxf', only: ['b', 'a'] }],
    ['schema', { name: 'schema' }],
    ['--help', { name: 'help' }],
    ['-h', { name: 'help' }],
    ['help', { name: 'help' }],
    ['help fit', { name: 'help', about: 'fit' }],
    ['help fit --help', { name: 'help', about: 'fit' }],
    ['help help', { name: 'help' }],
    ['export a.json -o -1.svg', { name: 'export', file: 'a.json', format: 'svg', output: '-1.svg' }],
    ['fit --help', { name: 'help', about: 'fit' }],
    ['gauge a.json -h', { name: 'help', about: 'gauge' }],
  ])('%s', (line, expected) => {
    expect(command(line)).toEqual(expected);
  });

  test.each([
    ['', /no command/],
    ['judge a.json', /no command "judge"/],
    ['judge --help', /^there is no command "judge"$/],
    ['help judge', /^there is no command "judge"$/],
    ['help fit a.json', /^"help" takes no "a\.json"$/],
    ['export a.json -o -b.svg', /^--output needs the name of a file$/],
    [
      'fit a.json --json --draws 0.4',
      /^--draws is "0\.4", must be a whole number from 1 to 1000000 \(pairs of parts\)$/,
    ],
    ['fit a.json --json --draws 2.5', /^--draws is "2\.5", must be a whole number/],
    ['fit a.json --json --draws 0', /^--draws is "0", must be a whole number from 1/],
    ['identify a.json b.svg --loop 1.5', /^--loop is "1\.5", must be a whole number from 1 to 500/],
    ['identify a.json b.svg --error-um -1', /^--error-um is "-1", must be a number from 1 to 1000 \(um\)$/],
    ['identify a.json b.svg --error-um 0', /^--error-um is "0", must be a number from 1 to 1000 \(um\)$/],
    ['gauge a.json --height 96', /^--height is "96", must be a length above 0 and up to 95 mm/],
    ['constructor', /no command "constructor"/],
    ['fit', /"fit" needs the name of a family file/],
    ['check', /"check" needs the name/],
    ['fit a.json b.json', /takes no "b.json"/],
    ['check a.json --json', /"check" takes no --json/],
    ['schema --verify', /"schema" takes no --verify/],
    ['schema a.json', /"schema" takes no "a.json"/],
    ['fit a.json --jason', /Unknown option '--jason'/],
    ['fit a.json --json=yes', /does not take an argument/],
    ['check a.json --tilt 2', /"check" takes no --tilt/],
    ['schema --wear-um 2', /"schema" takes no --wear-um/],
    ['export a.json', /^say --as svg, dxf or csv$/],
    ['export --as svg', /"export" needs the name of a family file/],
    ['export a.json --as pdf', /^--as is "pdf", must be svg, dxf or csv$/],
    ['export a.json -o b.pdf', /^"b\.pdf" does not end in \.svg, \.dxf or \.csv: say --as/],
    ['export a.json -o dxf', /^"dxf" does not end in/],
    ['export a.json -o', /^--output needs the name of a file$/],
    ['export a.json --as', /^--as needs svg, dxf or csv$/],
    ['export a.json --only --as svg', /^--only needs ids of profiles parted by commas$/],
    ['export a.json --as svg --only a,,b', /^--only needs ids of profiles parted by commas$/],
    ['export a.json --as svg --as dxf', /^--as is given 2 times, give it once$/],
    ['export a.json -o a.svg -o b.svg', /^--output is given 2 times, give it once$/],
    ['export a.json --as svg --json', /"export" takes no --json/],
    ['check a.json --as svg', /"check" takes no --as/],
    ['fit a.json -o b.svg', /"fit" takes no --output/],
    ['fit a.json --tilt', /^--tilt needs a number after it/],
    ['fit a.json --tilt --json', /^--tilt needs a number after it/],
    ['fit a.json --tolerance-um -5', /^--tolerance-um is "-5", must be a number from 0 to 1000 \(um\)$/],
    ['fit a.json --tilt -.5', /^--tilt is "-\.5", must be a number from 0 to 15 \(degrees\)$/],
    ['plan --table a.csv --seconds -1', /^--seconds is "-1", must be a whole number from 0 to 3600$/],
    ['print3d a.json -o a.3mf --depth -5', /^--depth is "-5", must be a number from 3 to 200 \(mm\)$/],
    ['gauge a.json --height -6', /^--height is "-6", must be a length above 0/],
    ['fit a.json --json -5', /Unknown option '-5'/],
    ['print3d a.json -o a.3mf --depth', /^--depth needs a number after it$/],
    ['fit a.json --tolerance-um=-5', /^--tolerance-um is "-5", must be a number from 0 to 1000 \(um\)$/],
    ['fit a.json --tilt=', /^--tilt is "", must be a number from 0 to 15 \(degrees\)$/],
    ['fit a.json --tilt two', /^--tilt is "two", must be a number from 0 to 15/],
    ['fit a.json --tilt 15.01', /^--tilt is "15\.01", must be a number from 0 to 15/],
    ['fit a.json --draws 10', /^--draws is told by --json only/],
    ['fit a.json --json --draws 10 --tilt 2', /^--draws takes new parts held upright/],
    ['fit a.json --wear-um 1001', /^--wear-um is "1001", must be a number from 0 to 1000/],
    ['fit a.json --wear-um 1e2', /^--wear-um is "1e2"/],
    ['fit a.json --wear-um 0x10', /^--wear-um is "0x10"/],
    ['fit a.json --wear-um 2,5', /^--wear-um is "2,5"/],
    ['fit a.json --wear-um Infinity', /^--wear-um is "Infinity"/],
    ['fit a.json --wear-um NaN', /^--wear-um is "NaN"/],
    ['fit a.json --wear-um 10um', /^--wear-um is "10um"/],
    ['fit a.json --tilt 1 --tilt 2', /^--tilt is given 2 times, give it once$/],
  ])('"%s" is a fault', (line, words) => {
    expect(command(line)).toMatch(words);
  });
});
