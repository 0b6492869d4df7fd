import { type RefObject, useEffect, useRef, useState } from 'react';
import type { SolidColours, SolidPicture } from './solid-picture.ts';
import type { SolidScene } from './solid-scene.ts';
import type { TurnedView } from './turned-view.ts';

/** Why nothing is seen: the browser draws no solids, or its graphics have stopped. */
export type SolidTrouble = 'none' | 'no-webgl' | 'lost';

interface SolidStageProps {
  readonly picture: SolidPicture;
  readonly view: TurnedView;
  readonly colours: SolidColours;
  /** CSS pixels. */
  readonly width: number;
  readonly height: number;
  /** Given the scene while there is one, for picking and for a still picture. */
  readonly scene: RefObject<SolidScene | null>;
  onTrouble(trouble: SolidTrouble): void;
  /** Told after each drawing, for what stands over it. */
  onDrawn(): void;
}

/** Solids on a canvas, drawn once whenever something of them changes. What is seen is said beside it. */
export function SolidStage({ picture, view, colours, width, height, scene, onTrouble, onDrawn }: SolidStageProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const made = useScene(canvas, scene, onTrouble);
  const told = useRef(onDrawn);
  told.current = onDrawn;
  const painted = useRef<{ width: number; height: number; colours: SolidColours; picture: SolidPicture } | null>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another scene begins with nothing painted
  useEffect(() => {
    painted.current = null;
  }, [made]);
  useEffect(() => {
    if (!made) return;
    const frame = requestAnimationFrame(() => {
      const before = painted.current;
      if (before?.width !== width || before.height !== height) made.resize(width, height);
      if (before?.colours !== colours) made.paint(colours);
      if (before?.picture !== picture) made.show(picture);
      painted.current = { width, height, colours, picture };
      made.draw(picture, view);
      told.current();
    });
    return () => cancelAnimationFrame(frame);
  }, [made, picture, view, colours, width, height]);
  return (
    <div aria-hidden="true">
      <canvas ref={canvas} />
    </div>
  );
}

/** The scene of a canvas, once the library has come; made again where the graphics have stopped and come back. */
function useScene(
  canvas: RefObject<HTMLCanvasElement | null>,
  scene: RefObject<SolidScene | null>,
  onTrouble: (trouble: SolidTrouble) => void,
): SolidScene | null {
  const [made, setMade] = useState<SolidScene | null>(null);
  const [life, setLife] = useState(0);
  const trouble = useRef(onTrouble);
  trouble.current = onTrouble;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another life begins it anew
  useEffect(() => {
    const element = canvas.current;
    if (!element) return;
    let gone = false;
    const begin = async () => {
      const { SolidScene } = await import('./solid-scene.ts');
      if (gone) return;
      scene.current = new SolidScene(element);
      setMade(scene.current);
      trouble.current('none');
    };
    begin().catch(() => {
      if (!gone) trouble.current('no-webgl');
    });
    const lost = (event: Event) => {
      // Only then does the browser give the graphics back.
      event.preventDefault();
      trouble.current('lost');
    };
    const back = () => setLife((n) => n + 1);
    element.addEventListener('webglcontextlost', lost);
    element.addEventListener('webglcontextrestored', back);
    return () => {
      gone = true;
      element.removeEventListener('webglcontextlost', lost);
      element.removeEventListener('webglcontextrestored', back);
      scene.current?.dispose();
      scene.current = null;
      setMade(null);
    };
  }, [life]);
  return made;
}
