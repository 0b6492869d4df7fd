import { cautionLine, cautionsAbout } from '../family/cautions.ts';
import { type Family, openingsOf } from '../family/family.ts';
import { alikeWords } from '../family/guard-margin.ts';
import type { Point } from '../geom/point.ts';
import { catalogue } from '../jobs/catalogue.ts';
import type { GrowPair, GrowProposal, GrowReport, NoRoom } from '../plan/grow.ts';
import { shown } from './fit-table.ts';
import { sayNoOpenings } from './no-sections.ts';
import type { GrowCommand } from './parse-grow.ts';
import { mm, um } from './round-lengths.ts';
import { EXIT, type Shell } from './shell.ts';

/**
 * Says how many sections more a family has room for and proposes the next ones; returns the exit code.
 *
 * @check tests/unit/cli/run-grow.test.ts
 */
export async function runGrow(family: Family, command: GrowCommand, shell: Shell): Promise<number> {
  const empty = sayNoOpenings(family, command.file, 'there is nothing to add sections to', shell);
  if (empty !== null) return empty;
  const fault = unknownId(family, command);
  if (fault) {
    shell.warn(`${command.file}: ${fault}\n`);
    return EXIT.badInput;
  }
  const report = await catalogue.growFamily(
    {
      family,
      allowed: command.allow,
      between: command.between ?? null,
      top: command.passage ? 'passage' : 'blank',
      stops: family.plan?.stops ?? 1,
    },
    shell.jobs,
  );
  const notGroup = command.allow.find((id) => !report.groups.some((group) => group.id === id));
  if (notGroup !== undefined && report.none === null) {
    shell.warn(`${command.file}: --allow names "${notGroup}", which is no group blank\n`);
    return EXIT.badInput;
  }
  shell.print(command.json ? toJson(report) : toText(report, family));
  return EXIT.done;
}

function unknownId(family: Family, { between, allow }: GrowCommand): string | null {
  const openings = openingsOf(family).map(({ id }) => id);
  const opening = between?.find((id) => !openings.includes(id));
  if (opening !== undefined) return `there is no opening with the id "${opening}"`;
  const blank = allow.find((id) => !family.profiles.some((profile) => profile.id === id && profile.kind === 'blank'));
  return blank === undefined ? null : `there is no blank with the id "${blank}"`;
}

const outline = (ring: readonly Point[]) => ring.map(({ x, y }) => [mm(x), mm(y)]);

function toJson({ none, tops, newTop, groups, places, codes, count, proposals, gap }: GrowReport): string {
  const pair = (one: GrowPair | null) => one && { blank: one.blank, opening: one.keyway, lengthUm: um(one.length) };
  const value = {
    none: none && { why: none.why },
    allSectionBlanks: tops,
    newAllSectionBlankMm: newTop && outline(newTop),
    groupBlanks: groups,
    sites: places.map(({ side, from, to, levels, used }) => ({ side, fromMm: mm(from), toMm: mm(to), levels, used })),
    wards: Object.fromEntries(codes.map(({ id, code }) => [id, code])),
    confirmed: count.confirmed,
    atMost: count.atMost,
    provedOverTheseSites: count.confirmed === count.atMost,
    oneAtATime: count.single,
    gapUm: um(gap),
    proposals: proposals.map((proposal) => ({
      wards: proposal.code,
      between: proposal.between,
      guard: pair(proposal.guard),
      smallestClearance: pair(proposal.clearance),
      closest: proposal.closest.map(pair),
      roomAfter: proposal.roomAfter,
      openingMm: outline(proposal.keyway.ring),
      blankMm: outline(proposal.blank.ring),
    })),
    caution: cautionLine('plan'),
  };
  return `${JSON.stringify(value, null, 2)}\n`;
}

function toText(report: GrowReport, family: Family): string {
  const nameOf = (id: string) => shown(family.profiles.find((profile) => profile.id === id)?.name ?? id);
  if (report.none) return `${[noRoomText(report.none), ...reissueText(report, nameOf)].join('\n')}\n`;
  const { count, places, proposals, tops } = report;
  const entered = tops.length > 0 ? tops.map(nameOf).join(', ') : 'the widest blank that passes all openings';
  const lines = [
    `Room for ${countText(count)}, each entered by ${entered}`,
    `  over ${places.length} sites for wards (wards of other shapes or at other places are not looked at); ${count.single === 1 ? 'one' : `${count.single} different ones`} could be added one at a time`,
    ...reissueText(report, nameOf),
    ...(proposals.length > 0 ? ['Next ones, the greatest guard margin first:'] : []),
    ...proposals.map((proposal, i) => proposalText(proposal, i + 1, report, nameOf)),
  ];
  return `${lines.join('\n')}\n${cautionsAbout('plan').join(' ')}\n`;
}

/** "65 sections more, proved the most", or the two bounds. */
function countText({ confirmed, atMost }: GrowReport['count']): string {
  const sections = (n: number) => `${n} ${n === 1 ? 'section' : 'sections'} more`;
  if (confirmed === atMost)
    return confirmed === 0
      ? 'no section more (proved over these sites)'
      : `${sections(atMost)} (proved the most over these sites)`;
  return `at least ${sections(confirmed)}, at most ${atMost}`;
}

/** What would give room where none is left. */
function reissueText({ none, count, tops }: GrowReport, nameOf: (id: string) => string): string[] {
  const full = none === null ? count.atMost === 0 : none.why === 'no-sites';
  if (!full || tops.length === 0) return [];
  return [
    `A ward at a new place needs a thinner all-section blank in place of ${tops.map(nameOf).join(', ')}, changed by everyone who carries it; cylinders and other blanks stay.`,
  ];
}

function noRoomText(none: NoRoom): string {
  switch (none.why) {
    case 'no-keyways':
      return 'The family has no openings.';
    case 'one-keyway':
      return 'The family has one opening: with a second one it can be said what both leave free.';
    case 'no-all-section':
      return none.passage
        ? 'No blank enters every opening. With --passage the widest blank that passes all of them stands for one.'
        : 'No blank enters every opening, and none could: they share no passage with the gap that is asked for.';
    case 'no-sites':
      return 'The all-section blank has no groove in which a ward could keep sections apart.';
  }
}

function proposalText(
  { code, guard, clearance, roomAfter, between }: GrowProposal,
  number: number,
  { places }: GrowReport,
  nameOf: (id: string) => string,
): string {
  const wards = code.flatMap((level, site) => {
    const { side, from, to } = places[site];
    return level > 0 ? [`${side} ${mm(from).toFixed(2)}-${mm(to).toFixed(2)}`] : [];
  });
  const blank = guard && (guard.blank === null ? 'its own blank' : nameOf(guard.blank));
  const into = guard && (guard.keyway === null ? 'it' : nameOf(guard.keyway));
  const lines = [
    `  ${number}. wards ${wards.join(', ')} mm`,
    guard
      ? `     guard margin ${um(guard.length)} um (${blank} into ${into}${alikeWords(guard)}), smallest clearance ${um(clearance.length)} um`
      : `     smallest clearance ${um(clearance.length)} um`,
    ...(between
      ? [
          `     ${between.first} of the first neighbour, ${between.second} of the second, ${wards.length - between.first - between.second - between.neither} where both have one, ${between.neither} of neither`,
        ]
      : []),
    ...(roomAfter === null ? [] : [`     leaves room for at most ${roomAfter}`]),
  ];
  return lines.join('\n');
}
