/** Small Markdown tables that also read well as plain text. */

/** @returns a table with padded columns; cells are escaped */
export function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const cells = [head, ...rows].map((row) => row.map(cell));
  const wide = head.map((_, column) => Math.max(3, ...cells.map((row) => [...(row[column] ?? "")].length)));
  const line = (row: readonly string[]): string =>
    `| ${wide.map((width, column) => padded(row[column] ?? "", width)).join(" | ")} |`;
  const [first = [], ...others] = cells;
  return [line(first), line(wide.map((width) => "-".repeat(width))), ...others.map(line)].join("\n");
}

function padded(text: string, width: number): string {
  return text + " ".repeat(Math.max(0, width - [...text].length));
}

function cell(text: string): string {
  return escapeMarkdown(text.replace(/\s+/g, " ").trim());
}

/** Names from the file stand in Markdown as they are written. */
export function escapeMarkdown(text: string): string {
  return text.replace(/[\\`*_[\]<>|#]/g, "\\$&");
}

/** A few words between backquotes, whatever they hold. */
export function code(text: string): string {
  const plain = text.replace(/\s+/g, " ").trim();
  const longest = Math.max(0, ...[...plain.matchAll(/`+/g)].map(([run]) => run.length));
  const fence = "`".repeat(longest + 1);
  return longest > 0 ? `${fence} ${plain} ${fence}` : `${fence}${plain}${fence}`;
}
