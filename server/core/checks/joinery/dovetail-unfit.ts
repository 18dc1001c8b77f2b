import { halfExtent } from "../../model/box.ts";
import { defineCheck } from "../check.ts";
import { judgedJoints } from "./judged.ts";
import { sizeFound, sizePath } from "./size-path.ts";

interface Data {
  readonly joint: string;
  /** the timber whose wood is short */
  readonly stick: string;
  readonly what: "depth" | "length" | "neck";
  readonly size: number;
  readonly wood: number;
  readonly housing: number;
  /** on each side of the neck */
  readonly flare: number;
  readonly level: "error" | "warning";
}

/** The neck keeps at least this share of the timber's width. */
const NECK = 1 / 2;

export const dovetailUnfit = defineCheck<"model", Data>({
  meta: {
    id: "dovetail-unfit",
    title: "A dovetail that does not fit its timbers",
    level: "error",
    area: "joinery",
    source: {
      text: "common practice, no source: the neck keeps half the width of the timber; the rest is geometry",
      status: "common-practice",
    },
    explanation: {
      what: "A housed dovetail is deeper than its timber, longer than the wood behind the housing, or flares so much that little or nothing is left of its neck.",
      why: "It cannot be cut, or its neck breaks when the timber is loaded or pulled.",
      formula:
        "depth ≤ depth of the timber; length < receiving timber − housing; neck = width − 2 × flare ≥ width ÷ 2",
      remedy:
        "Take half the timber’s depth, half the wood behind the housing and a flare of 1 in 6, or leave them out.",
    },
  },
  input: "model",
  *find(model) {
    for (const j of judgedJoints(model)) {
      const { dovetail, housing } = j.sizes;
      if (!dovetail) continue;
      const wood = j.face.thickness - housing.value;
      const { depth, length, flare, neck, tip } = dovetail;
      // a lapped one may reach the far face, and is as thick as its timber is across it
      const lapped = j.kind === "dovetail-lap";
      const deep = 2 * halfExtent(j.of, j.face.across);
      const thin = neck < tip * NECK - 1e-6;
      const wrong = [
        depth.value > deep + 1e-6 &&
          ({
            key: "depth",
            of: depth,
            stick: j.of.id,
            what: "depth",
            size: depth.value,
            wood: deep,
          } as const),
        length.value >= wood + (lapped ? 1 : -1) * 1e-6 &&
          ({
            key: "length",
            of: length,
            stick: j.into.id,
            what: "length",
            size: length.value,
            wood,
          } as const),
        thin && ({ key: "flare", of: flare, stick: j.of.id, what: "neck", size: neck, wood: tip } as const),
      ];
      for (const w of wrong) {
        if (!w) continue;
        const { key, of, what, stick, size, wood: wide } = w;
        const level = what === "neck" && neck > 1e-6 ? "warning" : "error";
        const data: Data = {
          joint: j.id,
          stick,
          what,
          size,
          wood: wide,
          housing: housing.value,
          flare: flare.value,
          level,
        };
        yield {
          ...sizeFound(
            j,
            sizePath(j, `dovetail/${key}`, of),
            size,
            what === "neck" ? wide * NECK : wide,
            data,
          ),
          apart: what,
          level,
          severity: Math.abs(size - wide),
        };
      }
    }
  },
  words: (d, say) => {
    const values = {
      joint: d.joint,
      stick: d.stick,
      size: say.length(d.size),
      wood: say.length(d.wood),
    };
    switch (d.what) {
      case "depth":
        return say.text(
          "The dovetail at {joint} is {size} deep, and {stick} is {wood}: it cannot be cut. Take half the timber’s depth.",
          values,
        );
      case "length":
        return say.text(
          "The dovetail at {joint} is {size} long, and {stick} has {wood} of wood behind the housing: it comes out on the far side. Take half of that.",
          values,
        );
      case "neck":
        return d.level === "error"
          ? say.text(
              "The flare at {joint} takes all of the {wood} of {stick}: no neck is left. Make it a sixth of the dovetail’s length.",
              values,
            )
          : say.text(
              "The flare at {joint} leaves a neck of {size} of the {wood} of {stick}: it breaks when the timber is pulled. Make it a sixth of the dovetail’s length.",
              values,
            );
    }
  },
  worked: (d, say) => {
    const values = {
      size: say.length(d.size),
      wood: say.length(d.wood),
      thickness: say.length(d.wood + d.housing),
      housing: say.length(d.housing),
      flare: say.length(d.flare),
      half: say.length(d.wood * NECK),
    };
    switch (d.what) {
      case "depth":
        return say.text("{size} > {wood}", values);
      case "length":
        return say.text("{size} ≥ {thickness} − {housing} = {wood}", values);
      case "neck":
        return say.text("{wood} − 2 × {flare} = {size} < {wood} ÷ 2 = {half}", values);
    }
  },
});
