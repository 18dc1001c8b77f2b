/**
 * Renames an entry wherever its name stands. What is refused is refused with the reason: a name that is taken or no name,
 * a file of which a part cannot be read, and whatever would change what any other name stands for.
 */
import type { Position, Range, TextEdit } from "vscode-languageserver-types";
import type { SourceFact } from "../core/checks/source-facts.ts";
import { MEMBER_KINDS, type Pointer } from "../core/frame/frame.ts";
import { type Reading, readFrame } from "../document/read.ts";
import { child, keysOf } from "../document/tree.ts";
import { ROOF_NAMES, SECTIONS, type Sort, TOGETHER } from "./defined-names.ts";
import type { ReadText } from "./frame-service.ts";
import { nameUnder, rangeOf } from "./name-at.ts";
import { type NameUse, namesIn, usesOf } from "./names.ts";

/** Why a name stays as it is, as a sentence for the user. */
export interface Refused {
  readonly reason: string;
}

interface Renamable {
  /** the part of the text that is renamed at the cursor */
  readonly range: Range;
  readonly placeholder: string;
}

interface Target {
  readonly name: NameUse;
  readonly names: readonly NameUse[];
  readonly definition: Pointer;
  readonly sort: Sort;
  readonly reading: Reading;
}

/** Facts that leave all that is written in the tree; any other may hide a name. */
const HIDES_NOTHING: ReadonlySet<SourceFact["kind"]> = new Set([
  "unreadable-quantity",
  "value-out-of-range",
  "inch-section-in-mm",
  "unknown-key",
  "missing-key",
  "wrong-value",
  "wrong-shape",
]);

/** Classes that timbers without a `timber` of their own, and pegs, find by their name. */
const USUAL_CLASSES: ReadonlySet<string> = new Set(["frame", "rafters", "pegs", ...MEMBER_KINDS]);

/** Words that YAML, in this version or the one before, takes for a choice and not for a word. */
const TRUTHS = /^(?:true|false|yes|no|on|off)$/i;

/** Longer names run out of tables and drawings. */
const LONGEST_NAME = 60;

/** What can be renamed at a position. */
export function renamableAt(text: ReadText, position: Position): Renamable | Refused {
  const target = targetAt(text, position);
  return "reason" in target
    ? target
    : { range: rangeOf(text, target.name.range), placeholder: target.name.text };
}

/** @returns the edits in the order of the text; none where the name is the same */
export function renameEdits(
  text: ReadText,
  position: Position,
  name: string,
): { readonly edits: TextEdit[] } | Refused {
  const target = targetAt(text, position);
  if ("reason" in target) return target;
  if (name === target.name.text) return { edits: [] };
  const uses = usesOf(target.names, target.name).filter((use) => use.text === target.name.text);
  const reason = unfit(text, target, name) ?? changesOthers(text, target, uses, name);
  if (reason !== undefined) return { reason };
  return { edits: uses.map((use) => ({ range: rangeOf(text, use.range), newText: name })) };
}

function targetAt(text: ReadText, position: Position): Target | Refused {
  const { say, reading } = text;
  const there = nameUnder(text, position);
  if (!there || !reading)
    return {
      reason: say.text("Here stands no name of this file. Only names that it defines can be renamed."),
    };
  const { name, names } = there;
  const [definition = "", another] = name.definitions;
  const sort = sortOf(definition);
  if (sort === undefined) return { reason: say.text("The roof’s own rafters are called so in every frame.") };
  if (another !== undefined || keysOf(definition).at(-1) !== name.text)
    return {
      reason: say.text("“{name}” is no name of one entry here. Rename the entry where it is defined.", {
        name: name.text,
      }),
    };
  if (reading.source.facts.some(({ kind }) => !HIDES_NOTHING.has(kind)))
    return {
      reason: say.text(
        "A part of this file cannot be read, and the name may stand there too. Mend that first.",
      ),
    };
  return { name, names, definition, sort, reading };
}

function sortOf(definition: Pointer): Sort | undefined {
  return (Object.keys(SECTIONS) as Sort[]).find((sort) => definition.startsWith(`${SECTIONS[sort]}/`));
}

/** Why it is no name for an entry of this sort. */
function unfit(
  { say }: ReadText,
  { names, definition, sort, name: old }: Target,
  name: string,
): string | undefined {
  if (sort === "wall" && !/^[A-Z]$/.test(name)) return say.text("A wall is named by one capital letter.");
  if (sort === "bent" && !/^[1-9][0-9]*$/.test(name))
    return say.text("A bent is named by a whole number from 1 on.");
  if (sort !== "wall" && sort !== "bent" && !/^\p{L}[\p{L}\p{N}_-]*$/u.test(name))
    return say.text("A name begins with a letter; behind it stand letters, figures, - and _.");
  if (/^null$/i.test(name))
    return say.text("“{name}” stands for no value at all in this language.", { name });
  if (TRUTHS.test(name))
    return say.text(
      "“{name}” is read as true or false in files of this kind, not as a name. Add a word to it: “{name}-1”.",
      { name },
    );
  const letters = [...name].length;
  if (letters > LONGEST_NAME)
    return say.text(
      "A name of {letters} letters fits no list and no drawing; it may have {most}. Choose a shorter one.",
      { letters, most: LONGEST_NAME },
    );
  const taken = names
    .filter(({ declares, text }) => declares && text === name)
    .flatMap(({ definitions }) => definitions)
    .find(
      (other) => other !== definition && TOGETHER[sort].some((each) => other === child(SECTIONS[each], name)),
    );
  if (taken !== undefined)
    return say.text("“{name}” is taken already, under {section}.", {
      name,
      section: keysOf(taken).slice(0, -1).join(", "),
    });
  const usual = sort === "class" ? [old.text, name].find((each) => USUAL_CLASSES.has(each)) : undefined;
  if (usual !== undefined)
    return say.text("Timbers that name no class find “{name}” by its name.", { name: usual });
  const roof = (sort === "member" || sort === "joint") && Object.hasOwn(ROOF_NAMES, name);
  return roof && names.some(({ definitions }) => definitions.includes("/roof/rafters"))
    ? say.text("“{name}” is what the roof’s own rafters and their joints are called.", { name })
    : undefined;
}

/** Reads the file as it would be: every name in it must stand for what it stands for now. */
function changesOthers(
  { document, say }: ReadText,
  { names, definition, sort, reading }: Target,
  uses: readonly NameUse[],
  name: string,
): string | undefined {
  let changed = "";
  let from = 0;
  for (const { range } of uses) {
    changed += reading.text.slice(from, range.start) + name;
    from = range.end;
  }
  const after = namesIn(readFrame(changed + reading.text.slice(from)));
  const renamed = child(SECTIONS[sort], name);
  const before = meanings((path) => (path === definition ? renamed : path));
  const now = meanings((path) => path);
  const other = names.find((use, i) => {
    // a kind that one entry is called like stands for that one first
    if (use.byKind && use.text === name) return true;
    return before(use.definitions) !== now(after[i]?.definitions ?? []);
  });
  if (other)
    return say.text("With this name “{name}” in line {line} would stand for something else.", {
      name: other.text,
      line: String(document.positionAt(other.range.start).line + 1),
    });
  return after.length > names.length
    ? say.text("With this name words that stand for nothing now would stand for it.")
    : undefined;
}

/** Tells lists of entries apart, whatever their order; each list is looked at once. */
function meanings(moved: (path: Pointer) => Pointer): (paths: readonly Pointer[]) => string {
  const known = new Map<readonly Pointer[], string>();
  return (paths) => {
    const found = known.get(paths) ?? paths.map(moved).sort().join(" ");
    known.set(paths, found);
    return found;
  };
}
