/** Rows in columns as wide as their widest cell, two spaces apart, each line after `indent`. */
export const columns = (rows: readonly (readonly string[])[], indent = ""): readonly string[] => {
  const widths: number[] = [];
  for (const row of rows) for (const [at, cell] of row.entries()) widths[at] = Math.max(widths[at] ?? 0, cell.length);
  return rows.map((row) => `${indent}${row.map((cell, at) => cell.padEnd(widths[at]!)).join("  ")}`.trimEnd());
};
