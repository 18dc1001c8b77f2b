import type { MemberKind } from "../../frame/frame.ts";
import { USUAL_THICKNESS } from "../../loads/dead.ts";
import { halfExtent, type Interval } from "../../model/box.ts";
import type { Model, Timber } from "../../model/model.ts";
import { along, type Vec3 } from "../../model/vec.ts";
import { inches } from "../../quantity/length.ts";
import { defineCheck } from "../check.ts";

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
        clear: say.length(d.under - d.stand),
        below:
          d.floor === undefined ? say.text("the ground") : say.text("the floor {floor}", { floor: d.floor }),
        limit: say.length(LEAST),
        more: say.length(Math.ceil((LEAST - d.under + d.stand) * 16 - 1e-6) / 16),
      },
    ),
  worked: (d, say) =>
    say.text("{under} − {stand} = {clear} < {limit}", {
      under: say.length(d.under),
      stand: say.length(d.stand),
      clear: say.length(d.under - d.stand),
      limit: say.length(LEAST),
    }),
});

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
    const { kind, thickness } = floor.deck ?? {};
    const usual = kind === undefined ? 0 : USUAL_THICKNESS[kind];
    const boards = thickness === undefined ? usual : inches(thickness);
    return [{ name: floor.name, x: spans(0), y: spans(1), top: Math.max(...tops) + boards }];
  });
}

/** The lowest place of all on which one walks under the timber and has to bend. */
function lowestWay(
  model: Model,
  floors: readonly FloorArea[],
  timber: Timber,
  under: number,
): { readonly stand: number; readonly floor: string | undefined } | undefined {
  const places = [0, 0.25, 0.5, 0.75, 1].map((share) =>
    along(timber.origin, timber.axis, share * timber.span),
  );
  const ways = places.map(([x, y]) => {
    const [floor] = floors
      .filter((one) => one.top < under - SLACK && within(one.x, x) && within(one.y, y))
      .sort((a, b) => b.top - a.top);
    return { stand: floor?.top ?? model.ground(x, y) ?? 0, floor: floor?.name };
  });
  return ways
    .filter(({ stand }) => under - stand >= NO_WAY - SLACK && under - stand < LEAST - SLACK)
    .sort((a, b) => b.stand - a.stand)[0];
}

function within([least, most]: Interval, at: number): boolean {
  return at > least + SLACK && at < most - SLACK;
}
