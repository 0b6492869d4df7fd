import firstLesson from '../../../profiles-demo/first-lesson.json?raw';
import polderwick from '../../../profiles-demo/polderwick.json?raw';
import polderwickPlan from '../../../profiles-demo/polderwick-plan.json?raw';

/** A family that comes with the app. */
export interface SampleFamily {
  readonly id: string;
  /** What the menu calls it. */
  readonly label: string;
  readonly fileName: string;
  readonly text: string;
}

/** The families of the invented Polderwick College; the first is on the wall when the app starts. */
export const SAMPLE_FAMILIES: readonly SampleFamily[] = [
  { id: 'polderwick', label: 'Demo: Polderwick College', fileName: 'polderwick.json', text: polderwick },
  { id: 'first-lesson', label: 'First lesson: three sections', fileName: 'first-lesson.json', text: firstLesson },
  {
    id: 'polderwick-plan',
    label: 'A plan: areas and holders, no section yet',
    fileName: 'polderwick-plan.json',
    text: polderwickPlan,
  },
];
