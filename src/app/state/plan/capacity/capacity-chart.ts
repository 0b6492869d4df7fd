import type { Capacity, Variant } from '../../../../capacity/capacity.ts';

/** A chart of keys on a scale where each line is ten times the one before. */
export interface CapacityChart {
  readonly rows: readonly { readonly variant: Variant; readonly share: number }[];
  /** Powers of ten within the chart, with their place from 0 to 1. */
  readonly lines: readonly { readonly power: number; readonly share: number }[];
}

/** Digits before the point, with a fraction, of a number of any size. */
function log10(value: bigint): number {
  const text = String(value);
  const head = text.slice(0, 15);
  return Math.log10(Number(head)) + text.length - head.length;
}

/**
 * The places of the variants: those with keys on a logarithmic scale between powers of ten.
 *
 * @check tests/unit/app/capacity-words.test.ts
 */
export function capacityChart({ variants }: Capacity): CapacityChart {
  const shown = variants.filter(({ keys }) => keys > 0n);
  if (shown.length === 0) return { rows: [], lines: [] };
  const logs = shown.map(({ keys }) => log10(keys));
  const low = Math.floor(Math.min(...logs) - 0.05);
  const high = Math.max(low + 1, Math.ceil(Math.max(...logs) + 0.05));
  const share = (log: number) => (log - low) / (high - low);
  const step = Math.ceil((high - low) / 8);
  const lines = Array.from({ length: Math.floor((high - low) / step) + 1 }, (_, i) => low + i * step);
  return {
    rows: shown.map((variant, i) => ({ variant, share: share(logs[i]) })),
    lines: lines.map((power) => ({ power, share: share(power) })),
  };
}
