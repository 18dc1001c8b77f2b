import type { JointEntry } from "../../frame/frame.ts";
import { inches } from "../../quantity/length.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly name: string;
  /** of the entry */
  readonly path: string;
  /** of the key, in */
  readonly size: number;
  readonly why:
    | { readonly kind: "blind"; readonly lengthGiven: boolean }
    | { readonly kind: "length"; readonly length: number }
    | { readonly kind: "drop" };
}

const TAILED: readonly JointEntry["kind"][] = ["mortise-and-tenon", "wedged-half-dovetail"];

/** A tail is what a tenon without a length of its own is longer than the way through. */
function tailIgnored({ name, path, kind, tail, tenon }: JointEntry): Data | undefined {
  if (tail === undefined || !(tail > 0) || !TAILED.includes(kind)) return undefined;
  const about = { name, path, size: inches(tail) };
  const length = tenon?.length;
  if (kind === "mortise-and-tenon" && !tenon?.through)
    return { ...about, why: { kind: "blind", lengthGiven: length !== undefined } };
  return length === undefined ? undefined : { ...about, why: { kind: "length", length: inches(length) } };
}

export const jointKeyIgnored = defineCheck<"frame", Data>({
  meta: {
    id: "joint-key-ignored",
    title: "A size that the joint does not take",
    level: "warning",
    area: "joinery",
    source: { text: "joint rules of this program", status: "file-format" },
    explanation: {
      what: "A joint gives a tail to a blind tenon, a tail beside the whole length of the tenon, or a width to the tenon of a half-dovetail.",
      why: "The value is not used: nothing of it is cut, drawn, laid out or counted on, though the file seems to say so.",
      remedy:
        "A tail belongs to a through tenon (through: true) whose length is left out; a half-dovetail's tenon is as deep as its timber less the drop. Else leave the value out.",
    },
  },
  input: "frame",
  *find(frame) {
    for (const entry of frame.joints) {
      const { name, path, kind, tenon } = entry;
      const tail = tailIgnored(entry);
      if (tail) yield { path: `${path}/tail`, onKey: true, data: tail };
      if (kind === "wedged-half-dovetail" && tenon?.width !== undefined)
        yield {
          path: `${tenon.path}/width`,
          onKey: true,
          data: { name, path, size: inches(tenon.width), why: { kind: "drop" } },
        };
    }
  },
  words: ({ name, size, why }, say) => {
    const values = { name, size: say.length(size) };
    switch (why.kind) {
      case "blind":
        return say.text(
          "The tail of {size} at {name} is ignored: its tenon is blind, and nothing stands out past the far face. Make it a through tenon (through: true), or leave the tail out.",
          values,
        );
      case "length":
        return say.text(
          "The tail of {size} at {name} is ignored: the tenon's length of {length} stands beside it, and goes from the shoulder to the tip, tail and all. Leave one of the two out.",
          { ...values, length: say.length(why.length) },
        );
      case "drop":
        return say.text(
          "The tenon width of {size} at {name} is ignored: the tenon of a half-dovetail is as deep at the shoulder as its timber less the drop. Give the drop, or leave the width out.",
          values,
        );
    }
  },
  fixes: ({ path, why }, say) =>
    why.kind === "blind" && !why.lengthGiven
      ? [
          {
            title: say.text("Make it a through tenon"),
            edits: [{ kind: "replace", path: `${path}/tenon/through`, text: "true" }],
          },
        ]
      : [],
});
