/** JSON for programs that people look into too: the outer levels in lines, what is small on one line. */

/** Levels that get a line for each of their members. */
const OUTER = 3;

export function jsonText(value: unknown): string {
  return `${write(value, 0)}\n`;
}

function write(value: unknown, level: number): string {
  if (level >= OUTER || typeof value !== "object" || value === null) return JSON.stringify(value);
  const indent = "  ".repeat(level + 1);
  const parts = Array.isArray(value)
    ? value.map((item: unknown) => write(item, level + 1))
    : Object.entries(value).flatMap(([key, item]) =>
        item === undefined ? [] : [`${JSON.stringify(key)}: ${write(item, level + 1)}`],
      );
  const [open, close] = Array.isArray(value) ? "[]" : "{}";
  if (parts.length === 0) return `${open}${close}`;
  return `${open}\n${indent}${parts.join(`,\n${indent}`)}\n${"  ".repeat(level)}${close}`;
}
