/** Tables of the command line: columns padded with blanks, numbers to the right. */

/** @param rows the first one names the columns; cells that begin with a figure stand to the right */
export function textTable(rows: readonly (readonly string[])[]): string {
  const widths: number[] = [];
  for (const row of rows)
    row.forEach((cell, column) => {
      widths[column] = Math.max(widths[column] ?? 0, [...cell].length);
    });
  const right = (column: number): boolean =>
    rows.length > 1 && rows.slice(1).every((row) => /^([-\d]|$)/.test(row[column] ?? ""));
  const sides = widths.map((_, column) => right(column));
  return rows
    .map((row) =>
      row
        .map((cell, column) => {
          const space = " ".repeat((widths[column] ?? 0) - [...cell].length);
          return sides[column] ? space + cell : cell + space;
        })
        .join("  ")
        .trimEnd(),
    )
    .map((line) => `  ${line}`)
    .join("\n");
}
