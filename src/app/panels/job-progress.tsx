import styles from './job-progress.module.css';

interface JobProgressProps {
  readonly id: string;
  /** What is done, beside the bar. */
  readonly label: string;
  /** How far it has come; a phase that is none of three shows nothing. */
  readonly job: {
    readonly phase: string;
    readonly done: number;
    readonly total: number;
    readonly trouble: string;
  };
  readonly keys: { stop(): void; again(): void };
  /** What the key says that begins it anew. */
  readonly again: string;
  /** A sentence for when somebody stopped it. */
  readonly stopped: string;
  /** What is said before the trouble, without a colon. */
  readonly failed: string;
  readonly className?: string;
}

/** How far a job has come, with a way to stop it; and what to do when it stopped or failed. */
export function JobProgress({ id, label, job, keys, again, stopped, failed, className = '' }: JobProgressProps) {
  const { phase, done, total, trouble } = job;
  if (phase !== 'finding' && phase !== 'stopped' && phase !== 'failed') return null;
  const againKey = (
    <button type="button" className="key" onClick={() => keys.again()}>
      {again}
    </button>
  );
  return (
    <div className={`${styles.line} ${className}`} data-phase={phase}>
      {phase === 'finding' && (
        <>
          <label htmlFor={id}>{label}</label>
          <progress id={id} max={Math.max(1, total)} value={done} />
          <button type="button" className="key" onClick={() => keys.stop()}>
            Stop
          </button>
        </>
      )}
      {phase === 'stopped' && (
        <p>
          {stopped} {againKey}
        </p>
      )}
      {phase === 'failed' && (
        <p role="alert">
          {failed}: {trouble}. {againKey}
        </p>
      )}
    </div>
  );
}
