import { useMemo } from 'react';
import type { Units } from '../../../family/length-text.ts';
import type { Milled, Profile } from '../../../profile/profile.ts';
import { thinnestWeb } from '../../../profile/thinnest-web.ts';
import type { GrooveMarks } from '../../canvas/draw/groove-handles.tsx';
import { chosenGroove, draftOf } from '../../state/draw/mill-editing.ts';
import { type MillState, millFor, millOf } from '../../state/draw/mill-state.ts';
import { grooveName, grooveWord, lengthText } from '../../state/draw/mill-words.ts';
import { millHandles } from '../../tools/draw/groove-under-pointer.ts';
import { useSession, useStore } from '../use-store.ts';

/** What the canvas shows of the Mill form; null where none is shown, or the profile is drawn and not being read. */
export function useMillMarks(profile: Profile | null): GrooveMarks | null {
  const session = useSession();
  const state = useStore(millOf(session), (s) => s);
  const units = useStore(session.settings, (s) => s.units);
  const leastWeb = useStore(session.documents, (s) => s.document?.family.leastWeb);
  return useMemo(() => profile && marksOf(state, profile, units, leastWeb), [state, profile, units, leastWeb]);
}

function marksOf(state: MillState, profile: Profile, units: Units, leastWeb: number | undefined): GrooveMarks | null {
  const { milled } = profile;
  const { preview, drag } = millFor(state, profile.id);
  const read = preview?.ring === profile.ring && preview.reading.ok ? preview.reading : null;
  if (!milled)
    return read && { ...EMPTY, read: { ring: read.ring, unexplained: read.unexplained.map(({ patch }) => patch) } };
  const web = profile.kind === 'opening' ? null : thinnestWeb(milled);
  const isThin = web !== null && leastWeb !== undefined && web.thickness < leastWeb;
  const draft = draftOf(state, profile);
  const handles = millHandles(milled);
  const held = drag && handles.find((h) => h.part === drag.handle.part && h.groove === drag.handle.groove);
  return {
    handles,
    chosen: chosenGroove(state, profile),
    numbers: milled.grooves.map(({ side, bottom, width }) => ({ side, at: bottom + width / 2 })),
    thickness: milled.thickness,
    web: web && {
      left: web.left,
      right: web.right,
      label: webLabel(web.thickness, isThin, units),
      face: milled.thickness,
      isThin,
    },
    readOut: held
      ? { at: held.at, lines: readOutLines(draft?.milled ?? milled, profile, held, units, draft !== null) }
      : null,
    read: null,
  };
}

const EMPTY: GrooveMarks = {
  handles: [],
  chosen: null,
  numbers: [],
  thickness: 0,
  web: null,
  readOut: null,
  read: null,
};

function webLabel(thickness: number, isThin: boolean, units: Units): string {
  return `${isThin ? 'thin web' : 'web'} ${lengthText(Math.round(thickness / 1000) * 1000, units)}`;
}

/** What is read at a held handle: the sizes that it changes as they are wanted, and whether they are followed. */
function readOutLines(
  milled: Milled,
  { kind }: Profile,
  { part, groove }: GrooveMarks['handles'][number],
  units: Units,
  isRefused: boolean,
): string[] {
  const why = isRefused ? ['Not so far: no sound blade'] : [];
  const say = (nm: number) => lengthText(nm, units);
  if (groove === null) {
    const words = { thickness: 'thickness', height: 'height', backRadius: 'back radius' } as const;
    const field = part === 'thickness' || part === 'height' ? part : 'backRadius';
    return [`${words[field]} ${say(milled[field])}`, ...why];
  }
  const held = milled.grooves[groove];
  const name = `${groove + 1} ${grooveName(held, milled.height, grooveWord(kind))}`;
  if (part === 'root') return [name, `depth ${say(held.depth)}`, ...why];
  return [
    name,
    `bottom ${say(held.bottom)}`,
    `top ${say(held.bottom + held.width)}`,
    `width ${say(held.width)}`,
    ...why,
  ];
}
