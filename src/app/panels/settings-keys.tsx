import type { Units } from '../../family/length-text.ts';
import { useSession, useStore } from './use-store.ts';

/** Millimetres or inches, everywhere at once. */
export function UnitsKeys() {
  const { settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const key = (value: Units, label: string, title: string) => (
    <button
      type="button"
      className="key"
      aria-pressed={units === value}
      title={title}
      onClick={() => settings.setState({ units: value })}
    >
      {label}
    </button>
  );
  return (
    <fieldset className="key-row bare" aria-label="Units">
      {key('mm', 'mm', 'Millimetres')}
      {key('in', 'inch', 'Inches; gaps in thousandths of an inch (thou)')}
    </fieldset>
  );
}

/** Turns the sheet from light to dark and back. */
export function ThemeKey({ dark }: { dark: boolean }) {
  const { settings } = useSession();
  return (
    <button
      type="button"
      className="key"
      title={dark ? 'Light sheet' : 'Dark sheet'}
      aria-label={dark ? 'Light sheet' : 'Dark sheet'}
      onClick={() => settings.setState({ theme: dark ? 'light' : 'dark' })}
    >
      <svg width="20" height="20" viewBox="0 0 20 20" aria-hidden="true">
        <circle cx="10" cy="10" r="7.5" fill="none" stroke="currentColor" strokeWidth="2" />
        <path d="M10 2.5a7.5 7.5 0 0 1 0 15z" fill="currentColor" />
      </svg>
    </button>
  );
}
