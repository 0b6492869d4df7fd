import type {
  addStep,
  changeStep,
  dropLesson,
  duplicateStep,
  moveStep,
  putLesson,
  removeStep,
  setLessonTitle,
} from '../../../interchange/json/edit-lesson.ts';

/** Edits of the open file that the script editor makes. */
export interface LessonDoors {
  putLesson: typeof putLesson;
  dropLesson: typeof dropLesson;
  setLessonTitle: typeof setLessonTitle;
  addStep: typeof addStep;
  changeStep: typeof changeStep;
  moveStep: typeof moveStep;
  removeStep: typeof removeStep;
  duplicateStep: typeof duplicateStep;
}
