import styles from './sheet-keys.module.css';

interface SheetKeysProps<Sheet extends string> {
  /** What the keys choose between, for those who cannot see them. */
  readonly label: string;
  readonly sheets: readonly { readonly sheet: Sheet; readonly label: string; readonly title: string }[];
  readonly shown: Sheet;
  onShow(sheet: Sheet): void;
}

/** The keys along the top of a view that has several sheets. */
export function SheetKeys<Sheet extends string>({ label, sheets, shown, onShow }: SheetKeysProps<Sheet>) {
  return (
    <nav className={`key-row ${styles.keys}`} aria-label={label}>
      {sheets.map(({ sheet, label: words, title }) => (
        <button
          key={sheet}
          type="button"
          className="key"
          title={title}
          aria-current={sheet === shown ? 'page' : undefined}
          data-first={sheet === shown || undefined}
          onClick={() => onShow(sheet)}
        >
          {words}
        </button>
      ))}
    </nav>
  );
}
