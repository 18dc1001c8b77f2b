import { LEAST_WALL, type NearJoints } from "../../joinery/near-joints.ts";
import { defineCheck } from "../check.ts";
import { laterFirst, nearEachOther, nearWorked, placeWords, roomWords, shortenFix } from "./near-joints.ts";

interface Data {
  readonly near: NearJoints;
}

/** Less wood than this is none: what a chisel takes with one cut, in. */
const NO_WOOD = 1 / 64;

export const mortisesCollide = defineCheck<"model", Data>({
  meta: {
    id: "mortises-collide",
    title: "Two joints that want the same wood",
    level: "warning",
    area: "joinery",
    source: {
      text: "two timbers cannot take the same space (plane geometry); common practice, no source: at least 1/2 in (13 mm) of wood between two mortises",
      status: "common-practice",
    },
    explanation: {
      what: "Two joints meet inside one timber: their tenons or housed ends stand in the same place, or hardly any wood is left between two mortises that lie side by side. Each joint alone is sound.",
      why: "Two tenons in one place cannot both be driven home, and this shows when both are cut. A thin wall between two mortises breaks out under the chisel or the first peg, and then neither tenon has a cheek there.",
      formula:
        "wood that both joints fill: none, else an error; wood left between two mortises that face each other over 1/2 in or more in height and in breadth ≥ 1/2 in, else a warning. Tenons from opposite sides may meet end to end in one through mortise; laps and scarfs have a check of their own",
      remedy: "Shorten a tenon, or move one joint along the timber.",
    },
  },
  input: "model",
  *find(model) {
    for (const near of nearEachOther(model, false)) {
      const { crossing, depth, joints } = near;
      if (crossing !== undefined && crossing !== "filled") continue;
      const [blamed, other] = laterFirst(model, joints);
      yield {
        path: blamed.path,
        onKey: true,
        apart: other.path,
        place: blamed.id,
        ...(crossing ? { level: "error" as const } : {}),
        data: { near },
        value: Math.max(0, depth),
        limit: crossing ? 0 : LEAST_WALL,
        unit: "in",
        severity: crossing ? depth : LEAST_WALL - depth,
        related:
          other.path === blamed.path
            ? []
            : [{ path: other.path, message: (say) => say.text("{joint} is there too", { joint: other.id }) }],
      };
    }
  },
  words: ({ near }, say) => {
    const { joints, timber, at, crossing, depth } = near;
    const values = {
      a: joints[0].id,
      b: joints[1].id,
      timber: timber.id,
      at: placeWords(at, say),
      depth: say.length(Math.abs(depth)),
      least: say.length(LEAST_WALL),
    };
    const what =
      crossing === "filled"
        ? say.text(
            "{a} and {b} want the same wood in {timber}, {at} along it: they stand {depth} deep in each other, so only one of them can be put together.",
            values,
          )
        : depth > NO_WOOD
          ? say.text(
              "Only {depth} of wood is left between the mortises of {a} and {b} in {timber}, {at} along it, less than {least}: that wall breaks out when they are cut or pegged.",
              values,
            )
          : depth > -NO_WOOD
            ? say.text(
                "The mortises of {a} and {b} touch in {timber}, {at} along it: no wood is left between them, so neither tenon has a cheek there.",
                values,
              )
            : say.text(
                "The mortises of {a} and {b} run {depth} into each other in {timber}, {at} along it: no wood is left between them, so neither tenon has a cheek there.",
                values,
              );
    return `${what} ${roomWords(near, say)}`;
  },
  worked: ({ near }, say) => nearWorked(near, say),
  fixes: ({ near }, say) => shortenFix(near, say),
});
