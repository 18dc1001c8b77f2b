import { halfExtent } from "../../model/box.ts";
import { isComplete } from "../../model/grounded.ts";
import type { Model, Timber } from "../../model/model.ts";
import { isUpright } from "../../model/upright.ts";
import type { Vec3 } from "../../model/vec.ts";
import { defineCheck } from "../check.ts";
import { less } from "../formula-words.ts";

interface Data {
  readonly stick: string;
  /** height of the wood above the ground, inches, negative where it is buried */
  readonly clear: number;
  /** heights of the wood's underside and of the ground there, inches above the file's 0 */
  readonly wood: number;
  readonly ground: number;
  /** the file gives the ground; else it is taken as level at 0 */
  readonly known: boolean;
}

/** Inches of air between wood and earth. */
const LEAST = 6;

const UP: Vec3 = [0, 0, 1];

/** Posts, and what lies: braces and rafters are never nearer the ground than what carries them. */
function reachesDown({ kind, axis }: Timber): boolean {
  return kind === "post" || Math.abs(axis[2]) < 0.3;
}

/** Of the ground under a timber's middle and its edges; without heights it counts as level at 0. Inches. */
function lowestGround(model: Model, timber: Timber, x: number, y: number): number {
  const [dx, dy] = [halfExtent(timber, [1, 0, 0]), halfExtent(timber, [0, 1, 0])];
  return Math.min(
    ...[-1, 0, 1].flatMap((i) => [-1, 0, 1].map((k) => model.ground(x + i * dx, y + k * dy) ?? 0)),
  );
}

/** The end at which a timber's underside is nearest the ground, inches. */
function clearance(model: Model, timber: Timber): { readonly wood: number; readonly ground: number } {
  const pier = model.piers.find((p) => p.timber === timber);
  const upright = isUpright(timber);
  const ends = upright
    ? [timber.axis[2] > 0 ? timber.foot.point : timber.head.point]
    : [timber.foot.point, timber.head.point];
  const heights = ends.map(([x, y, z]) => {
    // what rises beside a pier between the grid lines is cut level round the post
    const ground = upright && pier ? pier.groundLow : lowestGround(model, timber, x, y);
    return { wood: z - (upright ? 0 : halfExtent(timber, UP)), ground };
  });
  return heights.reduce((low, each) => (each.wood - each.ground < low.wood - low.ground ? each : low));
}

export const woodNearEarth = defineCheck<"model", Data>({
  meta: {
    id: "wood-near-earth",
    title: "Wood too near the earth",
    level: "warning",
    area: "ground",
    source: {
      text: "IRC R317.1.4: posts in the weather stand 1 in above concrete and 6 in above earth, or are durable or treated wood",
      status: "memory",
    },
    explanation: {
      what: "A post’s foot or a lying timber’s underside is less than 6 in above the ground; at or below the ground it is an error.",
      why: "Splash and damp earth keep the wood wet, and it rots at the very place that carries the frame; wood in the ground rots within years.",
      formula: "underside of the wood − ground where it stands ≥ 6 in",
      remedy:
        "Raise the pier tops or cut the ground back; for durable or treated wood accept the finding with that reason. Where the file gives no ground, it counts as level at 0, and only wood below that is noted.",
    },
  },
  input: "model",
  *find(model) {
    // a lost entry may be the pier or the ground that makes the difference
    if (!isComplete(model)) return;
    const known = model.frame.site.ground.length > 0;
    for (const timber of model.timbers) {
      if (!reachesDown(timber)) continue;
      const { wood, ground } = clearance(model, timber);
      const clear = wood - ground;
      if (clear >= (known ? LEAST - 1 / 16 : 0)) continue;
      const from = model.members.get(timber.member)?.from;
      yield {
        ...(timber.kind === "post" && from
          ? { path: from.path }
          : { path: timber.path, onKey: true as const }),
        place: timber.id,
        level: known ? (clear <= 0 ? "error" : "warning") : "note",
        data: { stick: timber.id, clear, wood, ground, known },
        value: clear,
        limit: known ? LEAST : 0,
        unit: "in",
        severity: LEAST - clear,
        related: known
          ? [{ path: `${model.frame.site.path}/ground`, message: (say) => say.text("height of the ground") }]
          : [],
      };
    }
  },
  words: (d, say) => {
    const values = {
      stick: d.stick,
      clear: say.length(Math.abs(d.clear)),
      least: say.length(LEAST),
    };
    if (!d.known)
      return say.text(
        "{stick} ends {clear} below height 0, and the file does not say where the ground is (site: ground): taken as level at 0, the wood would stand in the earth. Give the ground’s height.",
        values,
      );
    if (d.clear > 0)
      return say.text(
        "{stick} ends {clear} above the ground, less than {least}: splash and damp earth rot it. Raise what it stands on, or cut the ground back.",
        values,
      );
    return d.clear < -1 / 16
      ? say.text(
          "{stick} ends {clear} below the ground: wood in the earth rots within years, just where it carries the frame. Raise what it stands on to {least} above the ground.",
          values,
        )
      : say.text(
          "{stick} ends at the ground: wood on the earth rots within years, just where it carries the frame. Raise what it stands on to {least} above the ground.",
          values,
        );
  },
  worked: (d, say) =>
    say.text("{height} = {clear} < {least}", {
      height: less(d.wood, d.ground, say),
      clear: say.length(d.clear),
      least: say.length(d.known ? LEAST : 0),
    }),
});
