/**
 * Frame files as test fixtures, with what is expected written under the line it is about:
 *
 *     section: 8x
 *     #        ^^ unreadable-quantity: second size
 *
 * The carets mark the exact range on the line above, then come the check's id and words that its message holds; a
 * level may stand before the id. Several such lines may follow one another. A range that begins in the first two
 * columns is written `#@0-5 unknown-key: …` (from, to). `$0` marks the cursor.
 */
import { describe, expect, test } from "vitest";
import type { Level } from "../server/core/checks/check.ts";
import { CHECKS } from "../server/core/checks/registry.ts";
import { createFrameService } from "../server/language/frame-service.ts";

interface Marker {
  /** zero-based, in the text without markers */
  readonly line: number;
  readonly from: number;
  readonly to: number;
  readonly check: string;
  readonly level: Level | undefined;
  readonly words: string;
}

interface Fixture {
  /** without markers and cursor, lines ended by LF */
  readonly text: string;
  readonly markers: readonly Marker[];
  readonly cursor: { readonly line: number; readonly character: number } | undefined;
}

/** Checks that judge a frame as a whole. */
export const OF_THE_WHOLE: ReadonlySet<string> = new Set(
  CHECKS.filter((check) => check.ofTheWhole).map((check) => check.meta.id),
);

interface FixtureOptions {
  /**
   * Judge the frame as a whole too. Left out, the checks that do so stay out: most fixtures are a joint or a post, not a
   * building, and would rack.
   */
  readonly whole?: true;
  /** findings of other levels are left out of the comparison */
  readonly only?: readonly Level[];
}

const MARKER = /^(\s*#\s*)(?:(\^+)|@(\d+)-(\d+))\s+(?:(error|warning|note) )?([a-z][a-z0-9-]*):\s*(.*)$/;
const CURSOR = "$0";

/** Takes the indentation that all lines share, and the blank first and last line of a template text. */
export function dedent(text: string): string {
  const lines = text
    .replace(/^[ \t]*\n/, "")
    .replace(/\n[ \t]*$/, "\n")
    .split("\n");
  const indents = lines.filter((line) => line.trim() !== "").map((line) => /^ */.exec(line)?.[0].length ?? 0);
  const shared = indents.length === 0 ? 0 : Math.min(...indents);
  return lines.map((line) => line.slice(shared)).join("\n");
}

/** Takes markers and cursor out of a fixture's text. */
export function readFixture(written: string): Fixture {
  const lines: string[] = [];
  const markers: Marker[] = [];
  let cursor: Fixture["cursor"];
  for (const line of dedent(written).split("\n")) {
    const match = MARKER.exec(line);
    if (!match) {
      const at = line.indexOf(CURSOR);
      if (at >= 0) cursor = { line: lines.length, character: at };
      lines.push(at >= 0 ? line.slice(0, at) + line.slice(at + CURSOR.length) : line);
      continue;
    }
    const [, before = "", carets, low, high, level, check = "", words = ""] = match;
    const from = carets === undefined ? Number(low) : before.length;
    const to = carets === undefined ? Number(high) : before.length + carets.length;
    if (lines.length === 0) throw new Error(`A marker without a line above it: ${line}`);
    markers.push({
      line: lines.length - 1,
      from,
      to,
      check,
      level: level as Level | undefined,
      words: words.trim(),
    });
  }
  return { text: lines.join("\n"), markers, cursor };
}

/** The ways in which one file can reach us; each moves the markers accordingly. */
export const VARIANTS: readonly {
  readonly name: string;
  readonly text: (text: string) => string;
  readonly moved: (marker: Marker) => Marker;
}[] = [
  { name: "LF", text: (text) => text, moved: (marker) => marker },
  { name: "CRLF", text: (text) => text.replaceAll("\n", "\r\n"), moved: (marker) => marker },
  {
    name: "a byte order mark",
    text: (text) => `\uFEFF${text}`,
    moved: (marker) => (marker.line === 0 ? { ...marker, from: marker.from + 1, to: marker.to + 1 } : marker),
  },
  {
    name: "an emoji in a comment above",
    text: (text) => `# 🪵 cut in winter 🪓\n${text}`,
    moved: (marker) => ({ ...marker, line: marker.line + 1 }),
  },
];

const uriOf = (name: string): string => `file:///${encodeURIComponent(name)}.frame.yaml`;

/**
 * Asserts all findings of one text, no more and no fewer, with their exact ranges.
 * @param text as it is read, without markers
 */
function expectMarked(text: string, markers: readonly Marker[], options: FixtureOptions = {}): void {
  const snapshot = createFrameService().open(uriOf("fixture"), 1, text);
  const lines = text.split("\n");
  const show = (m: Marker): string => {
    const marked = lines[m.line]?.slice(m.from, m.to) ?? "";
    return `line ${m.line + 1} @${m.from}-${m.to} «${marked}» ${m.level ?? ""} ${m.check}: ${m.words}`;
  };
  const missing = [...markers];
  const unexpected: string[] = [];
  for (const { finding, range } of snapshot.findings) {
    if (finding.accepted !== undefined || (options.only && !options.only.includes(finding.level))) continue;
    if (!options.whole && OF_THE_WHOLE.has(finding.check)) continue;
    const found = missing.findIndex(
      (m) =>
        m.check === finding.check &&
        m.line === range.start.line &&
        m.line === range.end.line &&
        m.from === range.start.character &&
        m.to === range.end.character &&
        (m.level === undefined || m.level === finding.level) &&
        finding.message.includes(m.words),
    );
    if (found >= 0) missing.splice(found, 1);
    else
      unexpected.push(
        show({
          line: range.start.line,
          from: range.start.character,
          to: range.end.character,
          check: finding.check,
          level: finding.level,
          words: finding.message,
        }),
      );
  }
  expect({ unexpected, missing: missing.map(show) }).toEqual({ unexpected: [], missing: [] });
}

/** Asserts the whole set of findings of a marked text, in every variant of line ends and first characters. */
export function expectFindings(marked: string, options: FixtureOptions = {}): void {
  const { text, markers } = readFixture(marked);
  for (const variant of VARIANTS) expectMarked(variant.text(text), markers.map(variant.moved), options);
}

/** Registers one test for each variant of a marked text. */
export function findingsFixture(name: string, marked: string, options: FixtureOptions = {}): void {
  describe(name, () => {
    const { text, markers } = readFixture(marked);
    test.each(VARIANTS)("with $name", (variant) => {
      expectMarked(variant.text(text), markers.map(variant.moved), options);
    });
  });
}
