import type { ReactNode } from 'react';

interface FootKeyProps {
  readonly title: string;
  /** Its name where the sign on it is none. */
  readonly name?: string;
  /** Whether it is held down; absent where it cannot be. */
  readonly pressed?: boolean;
  readonly children: ReactNode;
  press(): void;
}

/** A key at the foot of a drawing. */
export function FootKey({ title, name, pressed, children, press }: FootKeyProps) {
  return (
    <button type="button" className="key" title={title} aria-label={name} aria-pressed={pressed} onClick={press}>
      {children}
    </button>
  );
}
