/** Prints a heading and rows under column titles: first column to the left, all others to the right. */
export function printTable(heading: string, titles: readonly string[], rows: readonly (readonly string[])[]): void {
  const widths = titles.map((title, i) => Math.max(title.length, ...rows.map((row) => row[i].length)));
  const line = (cells: readonly string[]): string =>
    cells.map((cell, i) => (i === 0 ? cell.padEnd(widths[i]) : cell.padStart(widths[i]))).join('  ');
  const rule = widths.map((width) => '-'.repeat(width)).join('  ');
  process.stdout.write(`\n${heading}\n${[line(titles), rule, ...rows.map(line)].join('\n')}\n`);
}

/** Prints a sentence under a table. */
export function printNote(text: string): void {
  process.stdout.write(`${text}\n`);
}

/** Three significant figures. */
export function figures(value: number): string {
  if (value === 0) return '0';
  const places = Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value))));
  return value.toFixed(Math.min(6, places));
}

/** How many times as long, as `12.3x`. */
export function times(value: number): string {
  return `${figures(value)}x`;
}
