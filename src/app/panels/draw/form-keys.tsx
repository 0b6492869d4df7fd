import styles from './outline-actions.module.css';

interface FormKeysProps {
  /** What the first key does, in words. */
  readonly doIt: string;
  readonly ready: boolean;
  onClose(): void;
}

/** The two keys under the form of an operation. */
export function FormKeys({ doIt, ready, onClose }: FormKeysProps) {
  return (
    <div className={styles.formKeys}>
      <button type="submit" className="key" disabled={!ready}>
        {doIt}
      </button>
      <button type="button" className="key" onClick={onClose}>
        Cancel
      </button>
    </div>
  );
}
