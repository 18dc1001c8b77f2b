/**
 * What YAML accepts inside braces and nobody means: `{2:-4 in}`, `{at: A1, A2}`, `{b: 1,000 psi}`. Each is reported once
 * with ways to write what was meant, and the parts of it are no keys.
 */
import type { SourceFact } from "../core/checks/source-facts.ts";
import { withoutColon } from "./repair-separator.ts";
import { BOOLEAN_KEYS, KNOWN_KEYS, LIST_KEYS, TEXT_KEYS } from "./schema.ts";
import { child, type Entry, type MapNode, type Range, type ScalarNode } from "./tree.ts";

export type Trap = Extract<SourceFact, { kind: "missing-separator" }>;

/** An entry of an inline map as YAML reads it; `bare` when it has no colon. */
export interface RawEntry {
  readonly entry: Entry;
  readonly bare: boolean;
}

interface Untrapped {
  readonly entries: readonly Entry[];
  readonly traps: readonly Trap[];
}

/**
 * @param text the user's text
 * @param pointer of the inline map
 * @returns the entries without the trapped parts; a value that took part in a trap is lost
 */
export function untrap(raw: readonly RawEntry[], text: string, pointer: string): Untrapped {
  if (!raw.some((each) => each.bare)) return { entries: raw.map((each) => each.entry), traps: [] };
  const entries: Entry[] = [];
  const traps: Trap[] = [];
  let trapped: Entry | undefined;
  for (let i = 0; i < raw.length; i++) {
    const each = raw[i];
    if (each === undefined) continue;
    if (!each.bare) {
      entries.push(each.entry);
      trapped = undefined;
      continue;
    }
    let last = i;
    while (raw[last + 1]?.bare && !isKeyTrap(text, raw[last + 1]?.entry, entries.at(-1), pointer)) last++;
    const run = raw.slice(i, last + 1).map((bare) => bare.entry);
    const spaced =
      spaceTrap(each.entry, text, pointer) ?? colonTrap(each.entry, text, pointer, entries.at(-1));
    if (spaced !== undefined) {
      entries.push(spaced.entry);
      traps.push(spaced.trap);
      trapped = spaced.entry;
      continue;
    }
    // `{b:1,000 psi}`: the thousands belong to the value that already has its finding.
    if (trapped !== undefined && /^\d{3}/.test(each.entry.key)) continue;
    const owner = entries.at(-1);
    const { trap, takesOwner } = runTrap(owner, run, text, pointer);
    traps.push(trap);
    if (takesOwner && owner !== undefined)
      entries[entries.length - 1] = { ...owner, value: lost(owner.value.range) };
    i = last;
  }
  return { entries, traps };
}

function lost(range: Range): Entry["value"] {
  return { kind: "blank", range, lost: true };
}

const JOINED = /^([\w-]+):(\S.*)$/;

function isKeyTrap(
  text: string,
  entry: Entry | undefined,
  owner: Entry | undefined,
  pointer: string,
): boolean {
  if (entry === undefined) return false;
  return JOINED.test(slice(text, entry.keyRange)) || colonTrap(entry, text, pointer, owner) !== undefined;
}

function slice(text: string, { start, end }: Range): string {
  return text.slice(start, end);
}

/** `2:-4 in` is one word to YAML: a colon separates only with a blank behind it. */
function spaceTrap(entry: Entry, text: string, pointer: string): { entry: Entry; trap: Trap } | undefined {
  const written = slice(text, entry.keyRange);
  const match = JOINED.exec(written);
  const key = match?.[1];
  if (match === null || key === undefined) return undefined;
  const { start, end } = entry.keyRange;
  const colon = start + key.length;
  return {
    entry: { key, keyRange: { start, end: colon }, value: lost({ start: colon + 1, end }) },
    trap: {
      kind: "missing-separator",
      path: child(pointer, key),
      start,
      end,
      written,
      reason: "space",
      proposals: [`${key}: ${match[2] ?? ""}`],
    },
  };
}

/** `section 8x10`; behind the words of a sentence it is likelier a part of it that a comma cuts off. */
function colonTrap(
  entry: Entry,
  text: string,
  pointer: string,
  owner: Entry | undefined,
): { entry: Entry; trap: Trap } | undefined {
  const written = slice(text, entry.keyRange);
  const slip = withoutColon(written, pointer);
  const inSentence = owner?.value.kind === "scalar" && TEXT_KEYS.has(owner.key);
  if (slip?.key === undefined || inSentence) return undefined;
  const { start, end } = entry.keyRange;
  const colon = start + slip.key.length;
  return {
    entry: { key: slip.key, keyRange: { start, end: colon }, value: lost({ start: colon + 1, end }) },
    trap: { kind: "missing-separator", path: child(pointer, slip.key), start, end, written, ...slip },
  };
}

/**
 * Lines below a key that all lack the blank behind their colon: one text to YAML, entries to everybody else.
 * @param value a scalar that begins on a line below its key; @returns undefined where it is a text indeed
 */
export function untrapBlock(
  text: string,
  value: ScalarNode,
  pointer: string,
): { readonly map: MapNode; readonly traps: readonly Trap[] } | undefined {
  const entries: Entry[] = [];
  const traps: Trap[] = [];
  const written = slice(text, value.range);
  for (const line of written.matchAll(/\S[^\r\n]*/g)) {
    const start = value.range.start + line.index;
    const range = { start, end: start + line[0].trimEnd().length };
    const spaced = spaceTrap({ key: "", keyRange: range, value }, text, pointer);
    if (spaced === undefined) return undefined;
    entries.push(spaced.entry);
    traps.push(spaced.trap);
  }
  return { map: { kind: "map", entries, range: value.range, flow: false }, traps };
}

/** One or more words without a colon, behind an entry that is complete as YAML reads it. */
function runTrap(
  owner: Entry | undefined,
  run: readonly Entry[],
  text: string,
  pointer: string,
): { readonly trap: Trap; readonly takesOwner: boolean } {
  const first = run[0]?.keyRange ?? { start: 0, end: 0 };
  const end = run.at(-1)?.keyRange.end ?? first.end;
  const value = owner?.value.kind === "scalar" && !owner.value.quoted ? owner.value : undefined;
  const known = run.some((entry) => KNOWN_KEYS.has(entry.key));
  if (owner !== undefined && value !== undefined && !known) {
    const thousands = slice(text, { start: value.range.start, end });
    if (/^[^,]*?\d{1,3}(?:,\d{3})+(?!\d)[^,]*$/.test(thousands)) {
      const plain = thousands.replace(/(?<=\d),(?=\d{3})/g, "");
      return {
        trap: trapOf(text, child(pointer, owner.key), value.range.start, end, "comma-number", [plain]),
        takesOwner: true,
      };
    }
    if (/^[^,]*?\d,\d{1,2}(?!\d)[^,]*$/.test(thousands)) {
      const plain = thousands.replace(/(?<=\d),(?=\d)/, ".");
      return {
        trap: trapOf(text, child(pointer, owner.key), value.range.start, end, "comma-number", [plain]),
        takesOwner: true,
      };
    }
    if (LIST_KEYS.has(owner.key)) {
      const list = [value.text, ...run.map((entry) => entry.key)].join(", ");
      const proposals = [`${slice(text, owner.keyRange)}: [${list}]`];
      return {
        trap: trapOf(text, child(pointer, owner.key), owner.keyRange.start, end, "brackets", proposals),
        takesOwner: true,
      };
    }
    if (/\s/.test(value.text) && !/\d/.test(value.text)) {
      const sentence = thousands.replaceAll("\\", "\\\\").replaceAll('"', '\\"');
      return {
        trap: trapOf(text, child(pointer, owner.key), value.range.start, end, "no-value", [`"${sentence}"`]),
        takesOwner: true,
      };
    }
  }
  const key = run.length === 1 ? run[0]?.key : undefined;
  const proposals = key !== undefined && BOOLEAN_KEYS.has(key) ? [`${key}: true`] : [];
  return { trap: trapOf(text, pointer, first.start, end, "no-value", proposals), takesOwner: false };
}

/** Proposals replace the whole range; on more than one line they would take comments with them. */
function trapOf(
  text: string,
  path: string,
  start: number,
  end: number,
  reason: Trap["reason"],
  proposals: readonly string[],
): Trap {
  const all = text.slice(start, end);
  const line = /^[^\r\n]*/.exec(all)?.[0] ?? "";
  const written = line.trimEnd();
  const whole = written.length === all.length;
  return {
    kind: "missing-separator",
    path,
    start,
    end: start + written.length,
    written,
    reason,
    proposals: whole ? proposals : [],
  };
}
