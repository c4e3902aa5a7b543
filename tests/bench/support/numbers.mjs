// Figures of several runs.
export const median = (all) => {
  const known = all.filter(Number.isFinite).toSorted((a, b) => a - b);
  return known.length ? known[Math.floor(known.length / 2)] : NaN;
};

/** A table for a reader and for DEVELOPERS.md. */
export function table(head, rows) {
  const line = (cells) => `| ${cells.join(' | ')} |`;
  console.log([line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n'));
}
