import { expect, test } from 'vitest';
import { commandHelp } from '../../../src/cli/command-help.ts';
import { HELP } from '../../../src/cli/help-text.ts';
import { GRAMMAR } from '../../../src/cli/parse-command.ts';

test('tells the usage, the options and the exit codes of one command, and of no other', () => {
  const told = commandHelp('gauge');
  expect(told).toMatch(/^ {2}gauge FAMILY\.json --height MM \[options\]/);
  expect(told).toContain('\n\nOptions of gauge\n  --height LENGTH');
  expect(told).toContain('\n\nExit codes\n');
  expect(told.match(/^Options of/gm)).toHaveLength(1);
  expect(told.split('\n').length).toBeLessThan(30);
  expect(commandHelp('plan').match(/^ {2}plan /gm)).toHaveLength(2);
});

test('explains verdicts and JSON with fit, where they are printed', () => {
  for (const title of ['Verdicts', 'All parts within their tolerance', 'JSON']) {
    expect(commandHelp('fit')).toContain(`\n\n${title}\n`);
    expect(commandHelp('publish')).not.toContain(`\n\n${title}\n`);
  }
});

test('has a part for every command that the help lists, and no options get lost', () => {
  const names = new Set([...HELP.split('\n\n')[1].matchAll(/^ {2}([a-z]\S*) /gm)].map(([, name]) => name));
  expect(names.size).toBe(17);
  for (const name of names) expect(commandHelp(name), name).toMatch(/Exit codes\n[\s\S]*no certificate/);
  const titled = [...HELP.matchAll(/^Options of (\S+)$/gm)].map(([, name]) => name);
  for (const name of titled) expect(names).toContain(name);
});

const optionsIn = (text: string) => [...text.matchAll(/--([a-z][a-z0-9-]*)/g)].map(([, option]) => option);

test.each(Object.entries(GRAMMAR).filter(([name]) => name !== 'help'))(
  'tells every option that %s takes, and none that it does not',
  (name, { options }) => {
    // What follows the options speaks of all commands.
    const [own] = commandHelp(name).split(/\n\n(?:Verdicts|Exit codes)\n/);
    expect([...new Set(optionsIn(own))].sort()).toEqual([...new Set(options)].sort());
  },
);

test('tells all where the command is none', () => {
  expect(commandHelp('judge')).toBe(HELP);
});
