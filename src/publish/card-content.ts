import { entrantsOf, openingsOf } from '../family/family.ts';
import type { Plan } from '../family/plan.ts';
import type { Fit, Verdict } from '../fit/fit.ts';
import { accessOf } from '../plan/access.ts';
import { areaTree, FREE, leafTicks, MUST, type Tick } from '../plan/area-tree.ts';
import type { PlannedBlank } from '../plan/planned-access.ts';
import type { Profile } from '../profile/profile.ts';
import type { SheetGround } from './sheet-ground.ts';
import type { CardOrder } from './sheet-order.ts';

/** A door on a card: where it is, and whether the blank goes into its keyway. */
export interface CardDoor {
  readonly name: string;
  /** Its section or keyway; '' where the name says it. */
  readonly aside: string;
  /** Its keyway and how the blank stands in it; null where one of them is not drawn. */
  readonly tried: { readonly opening: Profile; readonly fit: Fit } | null;
  readonly verdict: Verdict;
}

/** What stands on one card. */
export interface CardContent {
  /** Who carries it, or the name of the blank. */
  readonly title: string;
  /** "carries the Reed group blank"; '' on the card of a blank. */
  readonly carries: string;
  /** The blank itself; null where it is not drawn. */
  readonly blank: Profile | null;
  /** What it enters, the tight ones too. */
  readonly enters: readonly CardDoor[];
  readonly staysOut: readonly CardDoor[];
  /** What is to be known: not drawn yet, or not as planned. */
  readonly notes: readonly string[];
}

/**
 * The cards of a family: of one blank or one holder of the plan; where none is named, of every holder or every blank. What
 * a blank enters is as judged, not as planned; where the two differ, the card says so.
 *
 * @check tests/unit/publish/card.test.ts
 */
export function cardContents(ground: SheetGround, { of, every }: Pick<CardOrder, 'of' | 'every'> = {}): CardContent[] {
  const { family } = ground;
  const holders = family.plan?.holders ?? [];
  const entrants = entrantsOf(family);
  const one = entrants.find(({ id }) => id === of);
  if (one) return [blankCard(one, ground)];
  if (family.plan && holders.length > 0 && every !== 'blanks') {
    const plan = family.plan;
    const wanted = holders.some(({ id }) => id === of) ? holders.filter(({ id }) => id === of) : holders;
    return wanted.map((holder) => holderCard(holder, plan, ground));
  }
  const blanks = entrants.filter(({ kind }) => kind === 'blank');
  return (blanks.length > 0 ? blanks : entrants).map((blank) => blankCard(blank, ground));
}

/** A card by itself: a blank and every keyway, told by the areas that have it where there is a plan. */
function blankCard(blank: Profile, ground: SheetGround): CardContent {
  const { family } = ground;
  const areas = areasBySection(family.plan);
  const doors = openingsOf(family).map((opening): CardDoor => {
    const fit = fitOf(ground, blank, opening);
    const names = opening.section === undefined ? [] : (areas.get(opening.section) ?? []);
    const tried = fit ? { opening, fit } : null;
    const verdict = fit?.verdict ?? 'blocked';
    if (names.length === 0) return { name: opening.name, aside: '', tried, verdict };
    return { name: names.join(', '), aside: opening.name, tried, verdict };
  });
  return { title: blank.name, carries: '', blank, ...parted(doors), notes: [] };
}

function areasBySection(plan: Plan | undefined): ReadonlyMap<string, string[]> {
  if (!plan) return new Map();
  const names = new Map(plan.areas.map(({ id, name }) => [id, name]));
  return new Map(accessOf(plan).sections.map(({ name, areas }) => [name, areas.map((id) => names.get(id) ?? id)]));
}

/** The card of a holder: every area of the plan with a keyway. */
function holderCard(holder: Plan['holders'][number], plan: Plan, ground: SheetGround): CardContent {
  const { family } = ground;
  const access = accessOf(plan);
  const tree = areaTree(plan.areas);
  const ticks = leafTicks(tree, holder);
  const planned = access.blanks.find(({ holders }) => holders.includes(holder.id));
  const blank = planned ? drawnBlank(planned, plan, ground) : null;
  const sectionOf = new Map(access.sections.flatMap(({ name, areas }) => areas.map((id) => [id, name] as const)));
  const openings = openingsOf(family);
  const unlike: string[] = [];
  const open: string[] = [];
  const doors = tree.leaves.flatMap((area, i): CardDoor[] => {
    const section = sectionOf.get(area.id) ?? area.name;
    const opening = openings.find((one) => one.section === section);
    const fit = blank && opening ? fitOf(ground, blank, opening) : null;
    const tick = ticks[i] as Tick;
    if (fit && opening) {
      if (tick !== FREE && (fit.verdict !== 'blocked') !== (tick === MUST)) unlike.push(area.name);
      return [{ name: area.name, aside: asideOf(section, area.name), tried: { opening, fit }, verdict: fit.verdict }];
    }
    if (tick === FREE) {
      open.push(area.name);
      return [];
    }
    const verdict = tick === MUST ? 'enters' : 'blocked';
    return [{ name: area.name, aside: asideOf(section, area.name), tried: null, verdict }];
  });
  const name = blank?.name ?? planned?.name;
  return {
    title: holder.name,
    carries: name === undefined ? 'carries no blank yet' : `carries the ${plainName(name)}`,
    blank,
    ...parted(doors),
    notes: notesOf(blank !== null, doors, { unlike, open }),
  };
}

/** "Reed group blank" as it stands; the name of a section alone gets its noun. */
function plainName(name: string): string {
  return /\b(blank|strip|tool)\b/i.test(name) ? name : `${name} blank`;
}

function asideOf(section: string, name: string): string {
  return section === name ? '' : section;
}

interface NotedAreas {
  /** Areas whose keyways do not do as the plan says. */
  readonly unlike: readonly string[];
  /** Areas that the blank may enter or not, and that nothing is drawn for. */
  readonly open: readonly string[];
}

function notesOf(isDrawn: boolean, doors: readonly CardDoor[], { unlike, open }: NotedAreas): string[] {
  const notes: string[] = [];
  if (!isDrawn) notes.push('As planned: the blank is not drawn yet.');
  else if (doors.some(({ tried }) => tried === null))
    notes.push('Doors without a picture are as planned: no keyway is drawn.');
  if (open.length > 0) notes.push(`The plan leaves open: ${open.join(', ')}.`);
  if (unlike.length > 0) notes.push(`Not as planned: ${unlike.join(', ')}.`);
  return notes;
}

/** The blank of the family that a planned one became: by its id, else the first that enters just what it is to enter. */
function drawnBlank(planned: PlannedBlank, plan: Plan, { family, table }: SheetGround): Profile | null {
  const blanks = entrantsOf(family).filter(({ kind }) => kind === 'blank');
  const numbered = (id: string) => id.startsWith(`${planned.id}-`) && /^\d+$/.test(id.slice(planned.id.length + 1));
  const byId = blanks.find(({ id }) => id === planned.id) ?? blanks.find(({ id }) => numbered(id));
  if (byId) return byId;
  const { sections } = accessOf(plan);
  const must = new Set(planned.sections.map((s) => sections[s].name));
  const free = new Set(planned.free.map((s) => sections[s].name));
  const asked = openingsOf(family).filter(({ section }) => section !== undefined && !free.has(section));
  if (must.size === 0 || [...must].some((name) => !asked.some(({ section }) => section === name))) return null;
  const fits = (blank: Profile) => {
    const row = table.goesIn[table.entrants.indexOf(blank.id)];
    return asked.every(({ id, section }) => row?.[table.openings.indexOf(id)] === must.has(section ?? ''));
  };
  return blanks.find(fits) ?? null;
}

function fitOf({ fits }: SheetGround, blank: Profile, opening: Profile): Fit | null {
  return fits.fits[fits.profiles.indexOf(blank.id)]?.[fits.openings.indexOf(opening.id)] ?? null;
}

function parted(doors: readonly CardDoor[]): Pick<CardContent, 'enters' | 'staysOut'> {
  return {
    enters: doors.filter(({ verdict }) => verdict !== 'blocked'),
    staysOut: doors.filter(({ verdict }) => verdict === 'blocked'),
  };
}

/** How many doors a card tells. */
export function doorCount({ enters, staysOut }: CardContent): number {
  return enters.length + staysOut.length;
}
