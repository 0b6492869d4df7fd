import type { FileUnits } from '../family/family.ts';
import type { FormatBand, FormatLength } from '../fit/fit-sentence.ts';

const NM_PER_THOU = 25_400;

/** Writes gaps and depths where nothing else is asked for: "0.055 mm", or thousandths of an inch, "2.2 thou". */
export function lengthIn(units: FileUnits): FormatLength {
  return (nm) => {
    const { value, decimals, unit } =
      units === 'in'
        ? { value: nm / NM_PER_THOU, decimals: 1, unit: 'thou' }
        : { value: nm / 1e6, decimals: 3, unit: 'mm' };
    const size = Math.abs(value);
    const least = 10 ** -decimals;
    return size > 0 && size < least / 2 ? `under ${least} ${unit}` : `${size.toFixed(decimals)} ${unit}`;
  };
}

/** Writes height bands: "3.1-4.0 mm", "0.122-0.157 in". */
export function bandIn(units: FileUnits): FormatBand {
  const [per, decimals] = units === 'in' ? [NM_PER_THOU * 1000, 3] : [1e6, 1];
  const text = (nm: number) => {
    const written = (nm / per).toFixed(decimals);
    return Number(written) === 0 ? written.replace('-', '') : written;
  };
  return (from, to) => `${text(from)}-${text(to)} ${units}`;
}
