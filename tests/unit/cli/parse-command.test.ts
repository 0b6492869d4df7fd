import { describe, expect, test } from 'vitest';
import { parseCommand } from '../../../src/cli/parse-command.ts';

const command = (line: string) => {
  const parsed = parseCommand(line.split(' ').filter(Boolean));
  return parsed.ok ? parsed.command : parsed.fault;
};

describe('the words of a command line', () => {
  test.each([
    ['fit a.json', { name: 'fit', file: 'a.json', json: false, verify: false }],
    ['fit --json a.json', { name: 'fit', file: 'a.json', json: true, verify: false }],
    ['fit a.json --verify --json', { name: 'fit', file: 'a.json', json: true, verify: true }],
    ['fit -- --odd.json', { name: 'fit', file: '--odd.json', json: false, verify: false }],
    ['check a.json', { name: 'check', file: 'a.json' }],
    ['schema', { name: 'schema' }],
    ['--help', { name: 'help' }],
    ['-h', { name: 'help' }],
    ['help', { name: 'help' }],
    ['fit --help', { name: 'help' }],
  ])('%s', (line, expected) => {
    expect(command(line)).toEqual(expected);
  });

  test.each([
    ['', /no command/],
    ['judge a.json', /no command "judge"/],
    ['constructor', /no command "constructor"/],
    ['fit', /"fit" needs the name of a family file/],
    ['check', /"check" needs the name/],
    ['fit a.json b.json', /takes no "b.json"/],
    ['check a.json --json', /"check" takes no --json/],
    ['schema --verify', /"schema" takes no --verify/],
    ['schema a.json', /"schema" takes no "a.json"/],
    ['fit a.json --jason', /Unknown option '--jason'/],
    ['fit a.json --json=yes', /does not take an argument/],
  ])('"%s" is a fault', (line, words) => {
    expect(command(line)).toMatch(words);
  });
});
