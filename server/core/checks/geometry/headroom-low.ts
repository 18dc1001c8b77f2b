import type { MemberKind } from "../../frame/frame.ts";
import { floorDeck } from "../../loads/floor-deck.ts";
import { halfExtent, type Interval } from "../../model/box.ts";
import type { Model, Timber } from "../../model/model.ts";
import { along, type Vec3 } from "../../model/vec.ts";
import { defineCheck } from "../check.ts";
import { fineLength } from "../formula-words.ts";
import type { Say } from "../say.ts";

interface Data {
  readonly stick: string;
  /** the floor that one stands on; undefined for the ground */
  readonly floor: string | undefined;
  /** heights of the timber's underside and of what one stands on, inches */
  readonly under: number;
  readonly stand: number;
  /** somebody lives or gathers there */
  readonly peopled: boolean;
}

/** What a beam may come down to, inches. */
const LEAST = 76;
/** Nobody walks where there is less: it is a floor near the ground, or wood that one steps over. Common practice, no source. */
const NO_WAY = 48;
/** Rounding of heights, inches. */
const SLACK = 1e-3;
const UP: Vec3 = [0, 0, 1];

/** What crosses a way; girts and sills stand in a side, ridge, purlins and rafters lie in the roof. */
const CROSSING: ReadonlySet<MemberKind> = new Set<MemberKind>(["tie", "plate", "beam", "joist"]);

export const headroomLow = defineCheck<"model", Data>({
  meta: {
    id: "headroom-low",
    title: "A timber so low that one strikes one’s head",
    level: "note",
    area: "geometry",
    source: {
      text: "IRC 2021 R305.1.1, as remembered: basements where nobody lives have 6 ft 8 in, and 6 ft 4 in under beams; taken over to beams of every frame, and to open ground",
      status: "memory",
    },
    explanation: {
      what: "Between the underside of a tie, plate, beam or joist and the ground or floor below it there is less than 6 ft 4 in (1930 mm). With risk category ii, iii or iv, where people live or gather, that is a warning. Timbers in a side with siding are left out, what lies on piers, and those with less than 4 ft (1219 mm) below them, where nobody walks.",
      why: "Who walks under it upright strikes the head, and a timber does not give way.",
      formula: "underside of the timber − ground or floor below it ≥ 6 ft 4 in (1930 mm)",
      remedy:
        "Set the timber higher, or make it less deep where its section allows. Where nobody walks it does no harm. Braces are not measured: their feet come lower still, beside the posts.",
    },
  },
  input: "model",
  *find(model) {
    const { riskCategory } = model.frame.basis;
    const peopled = riskCategory !== undefined && riskCategory !== "i";
    const closed = new Set(model.frame.siding.map(({ line }) => line));
    const floors = floorsOf(model);
    // nobody walks under what lies on piers
    const lying = new Set(model.piers.map(({ timber }) => timber?.id));
    for (const timber of model.timbers) {
      if (lying.has(timber.id)) continue;
      if (!CROSSING.has(timber.kind) || Math.abs(timber.axis[2]) > SLACK || inSide(timber, closed)) continue;
      const under = timber.origin[2] - halfExtent(timber, UP);
      const below = lowestWay(model, floors, timber, under);
      if (!below) continue;
      const clear = under - below.stand;
      const member = model.members.get(timber.member);
      const height = member?.top ?? member?.bottom;
      yield {
        path: height?.path ?? timber.path,
        ...(height ? {} : { onKey: true }),
        place: timber.id,
        level: peopled ? "warning" : "note",
        data: { stick: timber.id, under, ...below, peopled },
        value: clear,
        limit: LEAST,
        unit: "in",
        severity: LEAST - clear,
      };
    }
  },
  words: (d, say) =>
    say.text(
      d.peopled
        ? "There is {clear} under {stick} above {below}, less than {limit}: who walks there strikes the head. Set it {more} higher."
        : "There is {clear} under {stick} above {below}, less than {limit}: where people walk, set it {more} higher, or they strike their heads.",
      {
        stick: d.stick,
        ...compared(d.under - d.stand, say),
        below:
          d.floor === undefined ? say.text("the ground") : say.text("the floor {floor}", { floor: d.floor }),
        more: raised(LEAST - d.under + d.stand, say),
      },
    ),
  worked: (d, say) =>
    say.text("{under} − {stand} = {clear} < {limit}", {
      under: say.length(d.under),
      stand: say.length(d.stand),
      ...compared(d.under - d.stand, say),
    }),
});

/** What there is and what there should be, in decimals where the two would else read the same. */
function compared(clear: number, say: Say): { readonly clear: string; readonly limit: string } {
  const [there, limit] = [say.length(clear), say.length(LEAST)];
  if (there !== limit) return { clear: there, limit };
  const step = say.metric ? 0.1 / 25.4 : 0.01;
  return {
    clear: fineLength(Math.floor(clear / step + 1e-6) * step, say),
    limit: fineLength(LEAST, say),
  };
}

/** @returns what to raise it by: no less than `more`, inches, to the next 1/16 in or whole millimetre */
function raised(more: number, say: Say): string {
  const step = say.metric ? 1 / 25.4 : 1 / 16;
  return say.length(Math.ceil(more / step - 1e-6) * step);
}

/** It stands in the plane of a wall or bent that is closed. */
function inSide({ kind, walls, bents }: Timber, closed: ReadonlySet<string>): boolean {
  const lines = kind === "tie" ? bents : kind === "plate" ? walls : [...walls, ...bents];
  return lines.length === 1 && lines.some((line) => closed.has(line));
}

interface FloorArea {
  readonly name: string;
  readonly x: Interval;
  readonly y: Interval;
  /** top of its boards, inches */
  readonly top: number;
}

function floorsOf(model: Model): FloorArea[] {
  return model.frame.floors.flatMap((floor) => {
    const row = model.sticks.get(floor.on?.text ?? "") ?? [];
    if (row.length === 0) return [];
    const spans = (way: 0 | 1): Interval => {
      const ends = row.flatMap((t) => [t.foot.point[way], t.head.point[way]]);
      return [Math.min(...ends), Math.max(...ends)];
    };
    const tops = row.map((t) => t.origin[2] + halfExtent(t, UP));
    const boards = floorDeck(floor)?.thickness ?? 0;
    return [{ name: floor.name, x: spans(0), y: spans(1), top: Math.max(...tops) + boards }];
  });
}

/** How finely the ground is looked at under a timber, inches; between bents or walls it is straight. */
const GROUND_STEP = 6;

/** The highest place of all on which one walks under the timber and has to bend. */
function lowestWay(
  model: Model,
  floors: readonly FloorArea[],
  timber: Timber,
  under: number,
): { readonly stand: number; readonly floor: string | undefined } | undefined {
  const below = floors
    .filter(({ top }) => top < under - SLACK)
    .map((floor) => ({ floor, over: stretchOver(timber, floor) }))
    .filter(({ over: [from, to] }) => to - from > SLACK)
    .sort((a, b) => b.floor.top - a.floor.top);
  const ways = [
    ...below
      // another floor may lie over it all along
      .filter(({ over }, i) => bare(over, below.slice(0, i)).length > 0)
      .map(({ floor }) => ({ stand: floor.top, floor: floor.name })),
    ...bare([0, timber.span], below)
      .flatMap(([from, to]) => placesIn(from, to))
      .map((at) => {
        const [x, y] = along(timber.origin, timber.axis, at);
        return { stand: model.ground(x, y) ?? 0, floor: undefined };
      }),
  ];
  return ways
    .filter(({ stand }) => under - stand >= NO_WAY - SLACK && under - stand < LEAST - SLACK)
    .sort((a, b) => b.stand - a.stand)[0];
}

/** From where to where of its length a timber lies over a floor, inches from its origin; empty where it does not. */
function stretchOver({ origin, axis, span }: Timber, { x, y }: FloorArea): Interval {
  let [from, to] = [0, span];
  for (const [start, per, [least, most]] of [
    [origin[0], axis[0], x],
    [origin[1], axis[1], y],
  ] as const) {
    // one that runs along an edge of the floor lies beside it
    if (Math.abs(per) < 1e-9) {
      if (start < least + SLACK || start > most - SLACK) return [0, 0];
      continue;
    }
    const [a, b] = [(least - start) / per, (most - start) / per];
    from = Math.max(from, Math.min(a, b));
    to = Math.min(to, Math.max(a, b));
  }
  return [from, to];
}

/** What of a stretch no floor of these lies under. */
function bare(whole: Interval, floors: readonly { readonly over: Interval }[]): Interval[] {
  return floors.reduce<Interval[]>(
    (left, { over }) =>
      left.flatMap(([from, to]) =>
        (
          [
            [from, Math.min(to, over[0])],
            [Math.max(from, over[1]), to],
          ] as const
        ).filter(([a, b]) => b - a > SLACK),
      ),
    [whole],
  );
}

/** Places along a stretch, its ends too. */
function placesIn(from: number, to: number): number[] {
  const parts = Math.max(1, Math.ceil((to - from) / GROUND_STEP));
  return Array.from({ length: parts + 1 }, (_, i) => from + ((to - from) * i) / parts);
}
