import { type ReactNode, type RefObject, useEffect, useRef, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import type { DisplaySet } from '../../../print3d/display-set.ts';
import type { SolidPicture } from '../../canvas/solid/solid-picture.ts';
import type { SolidScene } from '../../canvas/solid/solid-scene.ts';
import { SolidStage, type SolidTrouble } from '../../canvas/solid/solid-stage.tsx';
import { keyedView, type TurnedView, type ViewName, viewWords } from '../../canvas/solid/turned-view.ts';
import { useSize } from '../../panels/use-size.ts';
import styles from './block-sheet.module.css';
import { useSolidColours } from './block-sheet-colours.ts';
import { useSolidPointer } from './block-sheet-pointer.ts';
import { ViewKeys } from './block-sheet-view-keys.tsx';

/** What takes a still picture of what is shown. */
export type StillOf = (scene: SolidScene, width: number, height: number) => Promise<Blob | null>;

/** What a stage shows, and where it leaves what takes its picture. */
export interface StageProps {
  readonly family: Family;
  readonly set: DisplaySet | null;
  readonly scene: RefObject<SolidScene | null>;
  readonly stillOf: RefObject<StillOf | null>;
}

interface BlockStageProps {
  readonly picture: SolidPicture;
  /** What is seen, for those who cannot see it. */
  readonly label: string;
  /** What happens, under the picture. */
  readonly caption?: ReactNode;
  /** A name that stands at a solid; null for none. */
  readonly plate: { readonly id: string; readonly words: string } | null;
  readonly scene: RefObject<SolidScene | null>;
  readonly view: TurnedView;
  /** The view that it begins with, and comes back to. */
  readonly home: ViewName;
  setView(view: TurnedView): void;
  /** A click on a solid, or beside all of them. */
  onPick(id: string | null): void;
  /** What a press on a solid takes hold of, told each move in pixels; null where the whole is turned. */
  hold(id: string | null): ((dx: number, dy: number) => void) | null;
  /** A key that turns nothing; returns whether it did something. */
  onKey(key: string): boolean;
  /** Shown in place of the picture where the browser draws no solids. */
  readonly instead: ReactNode;
  /** Keys under the picture, beside those that turn it. */
  readonly children?: ReactNode;
}

/** The picture of solids with its keys: pointer and keyboard turn, move and enlarge it. */
export function BlockStage(props: BlockStageProps) {
  const { caption, view, home, setView, instead, children } = props;
  const [trouble, setTrouble] = useState<SolidTrouble>('none');
  if (trouble === 'no-webgl') return <div className={styles.instead}>{instead}</div>;
  return (
    <div className={styles.stage}>
      <SolidFrame {...props} trouble={trouble} onTrouble={setTrouble} />
      {caption && (
        <p className={styles.caption} aria-hidden="true">
          {caption}
        </p>
      )}
      <div className={styles.foot}>
        {children}
        <ViewKeys {...{ view, home, setView }} />
      </div>
    </div>
  );
}

interface SolidFrameProps extends BlockStageProps {
  readonly trouble: SolidTrouble;
  onTrouble(trouble: SolidTrouble): void;
}

/** The solids, what the pointer and the keys do to them, and what stands over them. */
function SolidFrame(props: SolidFrameProps) {
  const { picture, label, plate, scene, view, home, setView, onPick, hold, onKey, trouble, onTrouble } = props;
  const [frame, size] = useSize<HTMLDivElement>();
  const colours = useSolidColours();
  const plateAt = useRef<HTMLParagraphElement>(null);
  useSolidPointer(frame, {
    view,
    setView,
    onClick: ({ px, py }) => onPick(scene.current?.solidAt(px, py) ?? null),
    hold: ({ px, py }) => hold(scene.current?.solidAt(px, py) ?? null),
  });
  useFrameKeys(frame, { view, home, setView, onKey });
  const placePlate = () => {
    const at = plate && scene.current?.placeOf(plate.id);
    if (plateAt.current && at) plateAt.current.style.translate = `${Math.round(at.x)}px ${Math.round(at.y)}px`;
  };
  return (
    <div
      ref={frame}
      role="application"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: the picture takes the arrow keys, as its label says
      tabIndex={0}
      className={styles.frame}
      data-solids
      aria-label={`${label}, ${viewWords(view)}. The arrow keys turn it, with shift they move it, plus and minus enlarge it, Home shows all.`}
    >
      {size && colours && (
        <SolidStage {...{ picture, view, colours, scene, ...size, onTrouble }} onDrawn={placePlate} />
      )}
      {plate && (
        <p ref={plateAt} className={styles.plate} aria-hidden="true">
          <span>{plate.words}</span>
        </p>
      )}
      {trouble === 'lost' && <Lost />}
    </div>
  );
}

function Lost() {
  return (
    <p className={styles.lost} role="alert">
      The browser took the graphics away for a moment. The picture comes back by itself; saving works meanwhile.
    </p>
  );
}

/** Leaves what takes the picture as it stands. */
export function useStill(stillOf: RefObject<StillOf | null>, picture: SolidPicture, view: TurnedView): void {
  useEffect(() => {
    stillOf.current = (scene, width, height) => scene.still(picture, view, width, height);
  }, [stillOf, picture, view]);
}

/** The keys of the frame, while it has the focus. */
function useFrameKeys(
  frame: RefObject<HTMLElement | null>,
  given: Pick<BlockStageProps, 'view' | 'home' | 'setView' | 'onKey'>,
): void {
  const latest = useRef(given);
  useEffect(() => {
    latest.current = given;
  });
  useEffect(() => {
    const element = frame.current;
    if (!element) return;
    const press = (event: KeyboardEvent) => {
      if (event.defaultPrevented || event.ctrlKey || event.altKey || event.metaKey || event.target !== element) return;
      const { view, home, setView, onKey } = latest.current;
      const next = keyedView(view, event.key, event.shiftKey, home);
      if (next) setView(next);
      if (next || onKey(event.key)) event.preventDefault();
    };
    element.addEventListener('keydown', press);
    return () => element.removeEventListener('keydown', press);
  }, [frame]);
}
