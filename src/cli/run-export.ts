import type { Family } from '../family/family.ts';
import { unknownIdText } from '../family/unknown-id.ts';
import { exportProfiles } from '../interchange/export-profiles.ts';
import type { Profile } from '../profile/profile.ts';
import { sayNoProfiles } from './no-sections.ts';
import type { ExportCommand } from './parse-command.ts';
import { EXIT, type Shell, sayFault } from './shell.ts';
import { mayWriteOrWarn, writeFiles } from './write-files.ts';

/**
 * Writes the outlines that a command asks for, to its file or to standard output, and returns the exit code.
 *
 * @check tests/unit/cli/run-export.test.ts
 */
export function runExport(family: Family, command: ExportCommand, shell: Shell): number {
  const { profiles, units } = family;
  const { file, format, output } = command;
  const empty = sayNoProfiles(family, file, 'there is nothing to write', shell);
  if (empty !== null) return empty;
  const chosen = choose(profiles, command.only);
  if (typeof chosen === 'string') return sayFault(file, chosen, shell);
  if (output !== undefined && !mayWriteOrWarn(output, file, shell)) return EXIT.badInput;
  const { text } = exportProfiles(chosen, format, units);
  if (output === undefined) {
    shell.print(text);
    return EXIT.done;
  }
  const code = writeFiles([{ name: output, content: text }], file, shell);
  if (code !== EXIT.done) return code;
  shell.warn(`${output}: ${chosen.length} ${chosen.length === 1 ? 'outline' : 'outlines'} written\n`);
  return EXIT.done;
}

/** The profiles with the ids asked for, in that order, or what is wrong with the ids. */
function choose(profiles: readonly Profile[], only: readonly string[] | undefined): readonly Profile[] | string {
  if (!only) return profiles;
  const byId = new Map(profiles.map((profile) => [profile.id, profile]));
  const unknown = only.find((id) => !byId.has(id));
  if (unknown === undefined) return only.flatMap((id) => byId.get(id) ?? []);
  return unknownIdText('profile', unknown, [...byId.keys()]);
}
