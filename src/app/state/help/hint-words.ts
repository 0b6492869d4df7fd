import type { ViewName } from '../selection-state.ts';

/** What to do first in each view, in a sentence or two. */
export const HINTS: Readonly<Record<ViewName, string>> = {
  wall: 'Pick a blank in the tray, or walk through them with ↑ and ↓: it is tried in every keyway at once. Press a cell to see that pair large.',
  compare:
    'Drag the blank and feel where it stops; Home lays it back in its best placement, I pushes it in. What is in the way is hatched and measured.',
  draw: 'Drag a vertex or type its place in the table: every verdict follows. Ctrl+Z takes it back. “Mill” describes a blade by its grooves.',
  tiers:
    'Pick a cell of the matrix or a line of the diagram: both show the same. The tabs tell what keyways share, and check what others claim.',
  plan: 'Write down areas and holders and tick who must enter what; then “Sections” finds the fewest wards that do it.',
  gauge:
    'Type the height of a thin tool: the sentence tells how thick it may be to enter every keyway. “Tools” finds the fewest that do, “Tightness” ranks the keyways.',
  names:
    'Ask in plain words, such as “Does the Heron blank go into the Smew keyway?”, or look up what a name stands for.',
  teach: 'Press Present, or P, for the lesson over the whole screen. The quiz is for the class.',
  publish:
    'Choose a sheet and look at its pages as they will print, then save or print them. Slides and the display block have tabs of their own.',
};
