/** Keys and what they do, under the place where they do it. */
export interface KeyGroup {
  readonly place: string;
  readonly keys: readonly (readonly [keys: string, what: string])[];
}

/** Every shortcut of the app. Fields, lists and tables have the usual keys besides. */
export const KEYS: readonly KeyGroup[] = [
  {
    place: 'Everywhere',
    keys: [
      ['?', 'this sheet'],
      ['Ctrl+Z', 'undo'],
      ['Ctrl+Shift+Z, Ctrl+Y', 'redo'],
      ['Ctrl+S', 'save the family'],
      ['Ctrl+V', 'bring in a drawing, points or a picture'],
      ['Tab, Shift+Tab', 'the next and the previous control'],
    ],
  },
  {
    place: 'Wall',
    keys: [
      ['↑ ↓', 'the next blank or tool'],
      ['← →', 'the next keyway, on a cell'],
      ['Enter', 'the pair large'],
    ],
  },
  {
    place: 'Compare',
    keys: [
      ['↑ ↓ ← →', 'nudge the blank; with Shift further'],
      ['Home', 'its best placement'],
      ['M', 'centred as in its own keyway'],
      ['I', 'push it in'],
      ['C', 'corners; [ and ] choose one'],
      ['Page Up, Page Down', 'the next blank'],
      ['+ − 0', 'nearer, farther, all of it'],
      ['Escape', 'give up, then back to the wall'],
    ],
  },
  {
    place: 'Draw',
    keys: [
      ['[ ]', 'the next vertex or groove'],
      ['↑ ↓ ← →', 'move it; with Shift further, with Alt finer'],
      ['Insert, Delete', 'a vertex more, a vertex less'],
      ['Ctrl+A', 'all vertices'],
      ['P, V', 'take the pen, put it away'],
      ['Space, Enter, Backspace', 'pen: set a vertex, close, take back'],
      ['Page Up, Page Down', 'the next section'],
      ['+ − 0', 'nearer, farther, all of it'],
    ],
  },
  {
    place: 'Tiers',
    keys: [
      ['↑ ↓ ← →', 'along cells, or along the lines of the diagram'],
      ['Home, End', 'ends of the row; with Ctrl of the whole'],
      ['Page Up, Page Down', 'a windowful; with Alt sideways'],
      ['Enter', 'the pair large'],
      ['Space, F2, Delete', 'claims: tick, change, take out'],
    ],
  },
  {
    place: 'Plan',
    keys: [
      ['Space', 'areas and holders: the next mark of a cell'],
      ['Enter, F2, Delete', 'a new area or holder, its name, take it out'],
      ['Alt with ↑ ↓ ← →', 'move an area, in and out of groups'],
    ],
  },
  {
    place: 'Teach',
    keys: [
      ['P, F5', 'present'],
      ['→ Space, ←', 'presenting: on, back'],
      ['digits and Enter', 'presenting: go to that step'],
      ['B, L, I, F', 'presenting: blank the screen, pointer, push in again, whole screen'],
      ['D, Alt with ↑ ↓', 'steps: double, move'],
    ],
  },
  {
    place: 'Gauge',
    keys: [
      ['← →', 'thickness: another height; with Shift by 1 mm'],
      ['↑ ↓', 'the next wider or tighter keyway'],
      ['Home, End', 'thickness: the least and the greatest height'],
      ['Space', 'tools: tick a keyway, in its head'],
    ],
  },
  {
    place: 'Names',
    keys: [
      ['Enter', 'ask; ↑ ↓ bring back what was asked'],
      ['F2, Delete', 'register: change a name, take it out'],
    ],
  },
  {
    place: 'Publish, sheets and slides',
    keys: [
      ['Page Up, Page Down', 'the next page or slide'],
      ['F, 1', 'the whole page, its true size'],
      ['↑ ↓, Home, End', 'on the small pictures: along the pages'],
    ],
  },
  {
    place: 'Publish, display block',
    keys: [
      ['↑ ↓ ← →', 'turn it; with Shift move it'],
      ['1, 2, 3', 'from a corner, the front, above'],
      ['+ − Home', 'nearer, farther, all of it'],
      ['N, P', 'the next part, the one before'],
      ['Space; I, O', 'try it: slide the coupon; in, out by steps'],
    ],
  },
];
