import styles from './menu-row.module.css';

interface MenuRowProps {
  readonly name: string;
  readonly hint: string;
  close(): void;
  onPress(): void;
}

/** A row of a hanging menu: its name, and what it does; the menu is put away first. */
export function MenuRow({ name, hint, close, onPress }: MenuRowProps) {
  return (
    <li>
      <button
        type="button"
        className={styles.row}
        onClick={() => {
          close();
          onPress();
        }}
      >
        <b>{name}</b>
        <span>{hint}</span>
      </button>
    </li>
  );
}
