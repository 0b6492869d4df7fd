import { useEffect, useRef } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Point } from '../../../geom/point.ts';
import { grooveByKey, leaveMilling } from '../../panels/mill/mill-keys.ts';
import { useSession } from '../../panels/use-store.ts';
import {
  chooseAll,
  chooseVertices,
  chosenNow,
  deleteVertices,
  insertVertex,
  nudgeChosen,
  profileInHand,
  verticesInHand,
  walkVertices,
} from '../../state/draw/draw-editing.ts';
import { isPreviewed } from '../../state/draw/outline-preview.ts';
import { closePen, putPenAway, setPenVertex, takeBackPenVertex, takePen } from '../../state/draw/pen-editing.ts';
import { walkEntrants, walkOpenings } from '../../state/selection-state.ts';
import type { Session } from '../../state/session.ts';
import { nudgeOf } from '../../tools/draw/nudging.ts';
import { crossStep } from '../../tools/draw/pen.ts';
import { placeText } from '../../tools/draw/read-out.ts';
import { GRID_STEPS, gridStep } from '../../tools/draw/snap-targets.ts';
import { penText } from './draw-hand.ts';

interface DrawKeys {
  readonly family: Family;
  /** The pen's cross; null while the pointer leads the pen. */
  readonly cross: Point | null;
  setCross(cross: Point | null): void;
  /** Where a cross begins that was not there before: the middle of what is seen. */
  middle(): Point;
  zoom(factor: number): void;
  fit(): void;
  /** Gives up what the pointer holds; returns whether it held something. */
  giveUp(): boolean;
  tell(words: string): void;
}

/**
 * The keys of the Draw view. With vertices in hand: arrows nudge, brackets walk, Delete removes, Insert adds, Ctrl+A
 * chooses all. With the pen: arrows move its cross, Space sets, Enter closes, Backspace takes back. Plus, minus and 0
 * zoom, P takes the pen, V puts it away, Page keys walk the sections. Escape gives up, step by step.
 */
export function useDrawKeys(given: DrawKeys): void {
  const session = useSession();
  const latest = useRef(given);
  useEffect(() => {
    latest.current = given;
  });
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (!isOwnKey(event)) return;
      const { tool } = session.draw.getState();
      const known =
        sheetKey(session, latest.current, event) ||
        (tool === 'pen' ? penKey : vertexKey)(session, latest.current, event);
      if (known) event.preventDefault();
    };
    addEventListener('keydown', onKeyDown);
    return () => removeEventListener('keydown', onKeyDown);
  }, [session]);
}

type OwnKey = KeyboardEvent & { readonly target: Element };

/** A key press that no field, list, table or hanging panel has a use for. */
function isOwnKey(event: KeyboardEvent): event is OwnKey {
  if (event.defaultPrevented || document.querySelector(':popover-open, dialog[open]')) return false;
  return event.target instanceof Element && !event.target.closest('input, select, textarea, [popover]');
}

function sheetKey(session: Session, keys: DrawKeys, { key, ctrlKey, metaKey, altKey }: OwnKey): boolean {
  if (ctrlKey || metaKey || altKey) return false;
  if (key === '+' || key === '=') keys.zoom(1.25);
  else if (key === '-') keys.zoom(0.8);
  else if (key === '0') keys.fit();
  else if (key === 'p' || key === 'P') takePen(session);
  else if (key === 'v' || key === 'V') putPenAway(session);
  else if (key === 'PageDown' || key === 'PageUp') walkProfiles(session, keys.family, key === 'PageDown' ? 1 : -1);
  else return false;
  return true;
}

/** Picks the next profile of the kind in hand. */
function walkProfiles(session: Session, family: Family, steps: number): void {
  const walk = profileInHand(session)?.kind === 'opening' ? walkOpenings : walkEntrants;
  walk(session.selection, family, steps);
}

function vertexKey(session: Session, keys: DrawKeys, event: OwnKey): boolean {
  const { key, shiftKey, altKey, ctrlKey, metaKey, target } = event;
  const outline = session.draw.getState().form === 'outline';
  if (ctrlKey || metaKey) {
    if (key.toLowerCase() !== 'a' || !outline || isPreviewed(session)) return false;
    chooseAll(session);
    return true;
  }
  if (key === 'Escape') return escapeFrom(session, keys);
  // Space pans with the pointer; on the sheet it must not press anything.
  if (key === ' ') return target.matches('[data-drawing]');
  if (isPreviewed(session)) return false;
  if (!outline) return grooveKey(session, keys, event);
  const nudge = nudgeOf(key, shiftKey, altKey, session.settings.getState().units);
  if (nudge) return nudgeAndTell(session, keys, nudge);
  if (altKey) return false;
  if (key === '[' || key === ']') walkAndTell(session, keys, key === ']' ? 1 : -1);
  else if (key === 'Delete' || key === 'Backspace') deleteAndTell(session, keys);
  else if (key === 'Insert') insertVertex(session, chosenNow(session).at(-1) ?? 0);
  else return false;
  return true;
}

/** The keys of the Mill form: brackets walk the grooves, arrows move the chosen one, Delete takes it out. */
function grooveKey(session: Session, keys: DrawKeys, { key, shiftKey, altKey }: OwnKey): boolean {
  const profile = profileInHand(session);
  if (!profile?.milled) return false;
  const words = grooveByKey(session, profile, key, shiftKey, altKey);
  if (words) keys.tell(words);
  return words !== null;
}

function nudgeAndTell(session: Session, keys: DrawKeys, by: Point): boolean {
  const chosen = chosenNow(session);
  if (chosen.length === 0) return false;
  if (nudgeChosen(session, by)) tellVertex(session, keys);
  return true;
}

function walkAndTell(session: Session, keys: DrawKeys, steps: number): void {
  walkVertices(session, steps);
  tellVertex(session, keys);
}

function tellVertex(session: Session, { tell }: DrawKeys): void {
  const [number] = chosenNow(session);
  const vertices = verticesInHand(session);
  const vertex = vertices[number];
  if (vertex)
    tell(`Vertex ${number + 1} of ${vertices.length}: ${placeText(vertex, session.settings.getState().units)}`);
}

function deleteAndTell(session: Session, { tell }: DrawKeys): void {
  const count = chosenNow(session).length;
  if (deleteVertices(session)) tell(count === 1 ? 'A vertex was removed.' : `${count} vertices were removed.`);
}

/** Gives up what is held, then a refusal, then the choice, then goes back to the wall. */
function escapeFrom(session: Session, { giveUp }: DrawKeys): boolean {
  if (giveUp() || leaveMilling(session)) return true;
  const { refused } = session.draw.getState();
  if (refused) session.draw.setState({ refused: null });
  else if (chosenNow(session).length > 0) chooseVertices(session, []);
  // Whoever presses it twice by habit must not lose the sheet: it leads nowhere else.
  else return false;
  return true;
}

function penKey(session: Session, keys: DrawKeys, event: OwnKey): boolean {
  const { key, shiftKey, ctrlKey, metaKey, altKey, target } = event;
  const { pen } = session.draw.getState();
  if ((ctrlKey || metaKey) && key.toLowerCase() === 'z' && !shiftKey && pen) return takeBack(session, keys);
  if (ctrlKey || metaKey || altKey) return false;
  const onSheet = target.matches('[data-drawing]');
  if (key === 'Escape') {
    keys.giveUp();
    keys.setCross(null);
    putPenAway(session);
  } else if (key === 'Backspace' || key === 'Delete') takeBack(session, keys);
  else if (key === 'Enter' && onSheet) closeByKey(session, keys);
  else if (key === ' ' && onSheet) setAtCross(session, keys);
  else return moveCross(session, keys, key, shiftKey);
  return true;
}

function takeBack(session: Session, { tell }: DrawKeys): boolean {
  if (takeBackPenVertex(session)) tell(`Taken back. ${penText(session)}`);
  return true;
}

function closeByKey(session: Session, keys: DrawKeys): void {
  if (!closePen(session)) return;
  keys.setCross(null);
  keys.tell('The outline is closed.');
}

/** Space sets a vertex where the cross stands; while the pointer leads the pen it moves the sheet instead. */
function setAtCross(session: Session, { cross, tell }: DrawKeys): void {
  if (!cross) return;
  const pen = session.draw.getState().pen ?? [];
  if (pen.length > 2 && pen[0].x === cross.x && pen[0].y === cross.y)
    tell(closePen(session) ? 'The outline is closed.' : '');
  else if (setPenVertex(session, cross)) tell(penText(session));
}

function moveCross(session: Session, keys: DrawKeys, key: string, shift: boolean): boolean {
  const { units } = session.settings.getState();
  const step = gridStep(session.draw.getState().snap, units) ?? GRID_STEPS[units][1];
  const by = crossStep(key, shift, step);
  if (!by) return false;
  const from = keys.cross ?? session.draw.getState().pen?.at(-1) ?? keys.middle();
  const on = (value: number) => Math.round(Math.round(value / step) * step);
  // The first press shows the cross, where it stands on the grid.
  const to = keys.cross ? { x: on(from.x + by.x), y: on(from.y + by.y) } : { x: on(from.x), y: on(from.y) };
  keys.setCross(to);
  keys.tell(`Cross at ${placeText(to, units)}`);
  return true;
}
