import { isComplete } from "../../model/grounded.ts";
import type { Timber } from "../../model/model.ts";
import { type FloorGap, floorPlans } from "../../statics/floor-loads.ts";
import { areaWords } from "../amount-words.ts";
import { defineCheck, type Level } from "../check.ts";
import type { Say } from "../say.ts";

type Data =
  | {
      readonly what: "no-row";
      readonly floor: string;
      readonly on: string;
      readonly kinds: readonly Timber["kind"][];
    }
  | { readonly what: "alone"; readonly floor: string; readonly stick: string; readonly width: number }
  | {
      readonly what: "opening";
      readonly floor: string;
      readonly sticks: readonly string[];
      readonly apart: number;
    }
  | {
      readonly what: "not-level";
      readonly floor: string;
      readonly last: string;
      readonly beside: string;
      readonly step: number;
    }
  | { readonly what: "twice"; readonly floor: string; readonly other: string; readonly area: number };

/** Where boards surely lie on nothing a warning, where they may end as they should a note. */
const LEVEL: Readonly<Record<FloorGap["what"], Level>> = {
  "no-row": "warning",
  alone: "warning",
  opening: "note",
  "not-level": "note",
  twice: "warning",
};

function dataOf(gap: FloorGap): Data {
  const floor = gap.floor.name;
  switch (gap.what) {
    case "no-row":
      return { what: "no-row", floor, on: gap.floor.on?.text ?? "", kinds: gap.kinds };
    case "alone":
      return { what: "alone", floor, stick: gap.timber.id, width: gap.timber.width };
    case "opening":
      return { what: "opening", floor, sticks: gap.between.map((t) => t.id), apart: gap.apart };
    case "not-level":
      return { what: "not-level", floor, last: gap.last.id, beside: gap.beside.id, step: gap.step };
    case "twice":
      return { what: "twice", floor, other: gap.other.name, area: gap.area };
  }
}

function wordsOf(d: Data, say: Say): string {
  switch (d.what) {
    case "no-row":
      return say.text(
        "Floor {floor} lies on “{on}”, a {kinds}, and boards need a row of level joists or beams: its load is on no timber and in no check. Name under “on” the joists, beams, girts or ties that carry it.",
        { floor: d.floor, on: d.on, kinds: say.list(d.kinds) },
      );
    case "alone":
      return say.text(
        "Floor {floor} has nothing beside {stick} that its boards could lie on as well, so the timber is loaded over its own width of {width} alone. Add joists, or set what stands beside it level with its top.",
        { floor: d.floor, stick: d.stick, width: say.length(d.width) },
      );
    case "opening":
      return say.text(
        "Between {sticks}, {apart} apart, floor {floor} is taken as open: that is more than one and a half times the usual spacing. If boards lie there, add a joist.",
        { floor: d.floor, sticks: say.list(d.sticks), apart: say.length(d.apart) },
      );
    case "not-level":
      return say.text(
        "The boards of floor {floor} end at the outer edge of {last}: the top of {beside} beside it lies {step} {way}, so it is taken to carry none of them.",
        {
          floor: d.floor,
          last: d.last,
          beside: d.beside,
          step: say.length(Math.abs(d.step)),
          way: d.step < 0 ? say.text("lower") : say.text("higher"),
        },
      );
    case "twice":
      return d.floor === d.other
        ? say.text(
            "Two rows of floor {floor} lie over each other on {area}, at the same height: the load of that place is counted twice. Let each row carry a floor of its own place.",
            { floor: d.floor, area: areaWords(d.area / 144, say) },
          )
        : say.text(
            "Floor {floor} lies over floor {other} on {area}, at the same height: the load of that place is counted twice. Name each timber, and each place, in one of the two only.",
            { floor: d.floor, other: d.other, area: areaWords(d.area / 144, say) },
          );
  }
}

export const floorUncarried = defineCheck<"model", Data>({
  meta: {
    id: "floor-uncarried",
    title: "A floor, or an edge of it, that no timber carries, or that lies over another",
    level: "warning",
    area: "loads",
    source: { text: "statics: a load needs a timber that carries it", status: "derived" },
    explanation: {
      what: "A floor is laid on something that is no row of level joists or beams, on a single timber, or its boards end where another timber lies close by but not level (within 1/4 in), or where two stand more than one and a half times the usual spacing apart (both limits common practice). Or two floors lie over each other on more than a square foot: both are counted there.",
      why: "Boards span from timber to timber. Where there is no second one, the weight of people and goods is in no timber's check: silence about it is no pass.",
      remedy:
        "Name the joists, beams, girts or ties that carry the floor; set what is to carry its edge level with the joists' tops.",
    },
  },
  input: "model",
  ofTheWhole: true,
  *find(model) {
    if (model.frame.floors.length === 0 || !isComplete(model)) return;
    for (const { gaps } of floorPlans(model))
      for (const gap of gaps)
        yield {
          path: gap.floor.on?.path ?? gap.floor.path,
          level: LEVEL[gap.what],
          apart: gap.what,
          data: dataOf(gap),
        };
  },
  words: wordsOf,
});
