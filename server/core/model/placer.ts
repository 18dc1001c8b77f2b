/**
 * Places members lazily: an entry is placed when something first asks for its sticks, so the order of keys in the file
 * never matters; an entry that waits for itself is a problem, not a loop.
 */
import {
  type Frame,
  type GridPlace,
  type Height,
  isWhole,
  MEMBER_KINDS,
  type Member,
  type Pointer,
  type Ref,
  type Section,
  type TimberClass,
} from "../frame/frame.ts";
import { inches, type Length } from "../quantity/length.ts";
import { parseLength } from "../quantity/quantity.ts";
import { dressedSection } from "../quantity/section.ts";
import { halfExtent, type Interval, middleOf } from "./box.ts";
import { type GridLines, gridLines, type Line } from "./grid.ts";
import type { EndPlane, Timber } from "./model.ts";
import { placeMember } from "./place-member.ts";
import type { IdSort, ModelProblem } from "./problems.ts";
import { type RoofPlanes, roofPlanes } from "./roof-planes.ts";
import { type Solid, solidOf } from "./solid.ts";
import { along, dot, scale, type Vec3 } from "./vec.ts";

/** What a name in the file stands for. */
export type Meaning =
  | { readonly sort: "wall" | "bent"; readonly line: Line }
  | { readonly sort: "level"; readonly z: number }
  | { readonly sort: "member"; readonly name: string }
  | { readonly sort: "stick"; readonly stick: Timber }
  | { readonly sort: "length"; readonly length: number };

/** Least of a post’s end that a timber must take to be under or over it, inches. */
const LEAST_BEARING = 1;

/** A key of the entry itself; other needs name what stands elsewhere in the file. */
const OWN_KEY = /^(?:top|bottom|from|to|at|between|walls|bents|legs?)$/;

/** Where a name of each sort could have been defined. */
const DEFINED_IN: Readonly<Partial<Record<IdSort, readonly Pointer[]>>> = {
  wall: ["/grid/walls"],
  bent: ["/grid/bents"],
  place: ["/grid/walls", "/grid/bents"],
  level: ["/grid/levels"],
  member: ["/members"],
  stick: ["/members"],
  "timber-class": ["/timber"],
  reference: ["/grid/walls", "/grid/bents", "/grid/levels", "/members"],
};

export class Placer {
  readonly grid: GridLines;
  readonly members: ReadonlyMap<string, Member>;
  readonly #levels: ReadonlyMap<string, Length>;
  readonly #placed = new Map<string, readonly Timber[]>();
  readonly #waiting: string[] = [];
  readonly #problems: ModelProblem[] = [];
  readonly #reported = new Set<string>();
  #planes: RoofPlanes | undefined | "open" | "waiting" = "open";

  constructor(readonly frame: Frame) {
    this.grid = gridLines(frame);
    this.members = new Map(frame.members.map((m) => [m.name, m]));
    this.#levels = new Map(frame.grid.levels.map((l) => [l.id, l.height]));
  }

  get problems(): readonly ModelProblem[] {
    return this.#problems;
  }

  /** Adds a problem once: the same kind at the same path is not said twice. */
  report(problem: ModelProblem): void {
    const key = `${problem.kind} ${problem.path}`;
    if (this.#reported.has(key)) return;
    this.#reported.add(key);
    this.#problems.push(problem);
  }

  /** All sticks of an entry; empty when it cannot be placed (the reason is among the problems) or is unknown. */
  sticks(name: string): readonly Timber[] {
    const done = this.#placed.get(name);
    if (done) return done;
    const member = this.members.get(name);
    if (!member) return [];
    const from = this.#waiting.indexOf(name);
    if (from >= 0) {
      this.report({
        kind: "placement-circular",
        path: member.path,
        chain: [...this.#waiting.slice(from), name],
      });
      return [];
    }
    this.#waiting.push(name);
    const ids = new Set<string>();
    // a place that an entry names twice still has one stick
    const placed = placeMember(this, member).filter((stick) => {
      const again = ids.has(stick.id);
      ids.add(stick.id);
      return !again && this.#hasLength(stick);
    });
    this.#waiting.pop();
    this.#placed.set(name, placed);
    return placed;
  }

  #hasLength(stick: Timber): boolean {
    if (stick.span > 1 / 16) return true;
    if (this.frame.lost.has("/grid/walls") || this.frame.lost.has("/grid/bents")) return false;
    this.report({ kind: "no-length", path: stick.path, stick: stick.id, length: stick.span });
    return false;
  }

  /** The planes of the roof; undefined without a roof or while what it rests on is still being placed. */
  roof(): RoofPlanes | undefined {
    if (this.#planes === "waiting") return undefined;
    if (this.#planes === "open") {
      this.#planes = "waiting";
      this.#planes = roofPlanes(this);
    }
    return this.#planes;
  }

  /** Says that a name is unknown, unless its entry is there but cannot be read. */
  unknown(ref: Ref, sort: IdSort, known: readonly string[]): undefined {
    const name = ref.text.split("@")[0] ?? ref.text;
    const parts = sort === "place" ? [name.slice(0, 1), name.slice(1)] : [ref.text, name];
    // a stick of an entry that stands there is missing because its line or its bent is
    if (sort === "stick" && this.members.has(name) && !isWhole(this.frame)) return undefined;
    // nor are timbers of a kind, which one on a line that is lost may be
    const kind = MEMBER_KINDS.some((each) => each === ref.text);
    if ((sort === "member" || sort === "reference") && kind && !isWhole(this.frame)) return undefined;
    const lost = DEFINED_IN[sort]?.some((section) => this.frame.lost.has(section));
    if (!lost && !parts.some((part) => this.frame.unread.has(part)))
      this.report({ kind: "unknown-id", path: ref.path, text: ref.text, sort, known });
    return undefined;
  }

  /** A place on a wall or a bent that the grid does not have. */
  unknownPlace({ text, path }: GridPlace): undefined {
    const { walls, bents } = this.grid;
    return this.unknown(
      { text, path },
      "place",
      walls.flatMap((w) => bents.map((b) => `${w.id}${b.id}`)),
    );
  }

  line(ref: Ref, sort: "wall" | "bent"): Line | undefined {
    const lines = sort === "wall" ? this.grid.wall : this.grid.bent;
    return lines.get(ref.text) ?? this.unknown(ref, sort, [...lines.keys()]);
  }

  /** Height of a level or a typed height, inches above the datum. */
  height(height: Height | undefined): number | undefined {
    if (!height) return undefined;
    if ("length" in height) return inches(height.length);
    const level = this.#levels.get(height.text);
    return level === undefined ? this.unknown(height, "level", [...this.#levels.keys()]) : inches(level);
  }

  /** What a `from`/`to`/`between` name means: a line, a level, an entry, a stick, or a length. */
  meaning(ref: Ref): Meaning | undefined {
    const bent = this.grid.bent.get(ref.text);
    if (bent) return { sort: "bent", line: bent };
    const wall = this.grid.wall.get(ref.text);
    if (wall) return { sort: "wall", line: wall };
    const level = this.#levels.get(ref.text);
    if (level !== undefined) return { sort: "level", z: inches(level) };
    if (this.entriesNamed(ref.text).length > 0) return { sort: "member", name: ref.text };
    const stick = this.stick(ref.text);
    if (stick) return { sort: "stick", stick };
    // a bent whose place cannot be read is no length of two inches
    if (this.frame.unread.has(ref.text)) return undefined;
    if (this.frame.lost.has("/grid/bents") && /^\d+$/.test(ref.text)) return undefined;
    const length = parseLength(ref.text, this.frame.units);
    if (length.ok) return { sort: "length", length: inches(length.value) };
    return this.unknown(ref, "reference", [
      ...this.#levels.keys(),
      ...this.members.keys(),
      ...this.grid.wall.keys(),
      ...this.grid.bent.keys(),
    ]);
  }

  /** A stick by its id, `post@A1`. */
  stick(id: string): Timber | undefined {
    const name = id.split("@")[0] ?? "";
    return id.includes("@") ? this.sticks(name).find((s) => s.id === id) : undefined;
  }

  /** The entries a name stands for: the one that is called so, else every one of that kind, as in joints. */
  entriesNamed(name: string): readonly Member[] {
    const own = this.members.get(name);
    return own ? [own] : this.frame.members.filter((m) => m.kind === name);
  }

  /** The sticks a name stands for: all of an entry or of a kind, or one. Unknown names are reported as `member`. */
  sticksNamed(ref: Ref): readonly Timber[] {
    const entries = this.entriesNamed(ref.text);
    if (entries.length > 0) return entries.flatMap((m) => this.sticks(m.name));
    const stick = this.stick(ref.text);
    if (stick) return [stick];
    this.unknown(ref, ref.text.includes("@") ? "stick" : "member", [...this.members.keys()]);
    return [];
  }

  /** True sizes in inches as they lie: width and depth swapped when turned, dressed when the class is planed. */
  section(
    section: Section | undefined,
    turned: boolean,
    timberClass: TimberClass | undefined,
  ): { width: number; depth: number } | undefined {
    if (!section) return undefined;
    const true_ = timberClass?.surface === "planed" && !section.nominal ? dressedSection(section) : section;
    const [w, d] = [inches(true_.width), inches(true_.depth)];
    return turned ? { width: d, depth: w } : { width: w, depth: d };
  }

  /**
   * The timber class of an entry: as named, else the class called like its kind, else `frame`, else the only one there
   * is besides `pegs`. Of several none is taken, and that is said once: the order of the file decides nothing.
   */
  classOf(named: Ref | undefined, usual: string): TimberClass | undefined {
    const classes = this.frame.classes;
    if (named)
      return (
        classes.find((c) => c.name === named.text) ??
        this.unknown(
          named,
          "timber-class",
          classes.map((c) => c.name),
        )
      );
    const usualOne = classes.find((c) => c.name === usual) ?? classes.find((c) => c.name === "frame");
    if (usualOne) return usualOne;
    const others = classes.filter((c) => c.name !== "pegs");
    const [only, second] = others;
    if (!only || !second) return only;
    return this.#twoClasses(
      only.path,
      others.map((c) => c.name),
    );
  }

  #twoClasses(path: Pointer, readings: readonly string[]): undefined {
    // the line that is lost may be the class they all take
    if (!isWhole(this.frame)) return undefined;
    this.report({
      kind: "two-readings",
      path: path.slice(0, path.lastIndexOf("/")),
      what: "timber-class",
      readings: [...readings].sort(),
    });
    return undefined;
  }

  /** Says what a placement lacks, unless it may be what the file has lost. */
  missing(path: Pointer, member: string, needs: readonly string[]): undefined {
    if (!isWhole(this.frame) && !OWN_KEY.test(needs[0] ?? "")) return undefined;
    if (needs.some((need) => this.#lacksSticks(need.replace(/(?:@.*)? here$/s, "")))) return undefined;
    this.report({ kind: "placement-missing", path, member, needs });
    return undefined;
  }

  /** Whether a line or a level that an entry names is unknown, so that some of its sticks are not there. */
  #lacksSticks(name: string): boolean {
    return this.entriesNamed(name).some(({ path }) =>
      this.#problems.some((p) => p.kind === "unknown-id" && p.path.startsWith(`${path}/`)),
    );
  }

  /**
   * The underside or the top of what stands over or under a stick: of what passes its middle, else of what takes at
   * least an inch of its end (a plate narrower than its posts, flush with their outside). Under a sloping timber the end
   * follows the slope; where slopes meet over it, as at a peak, it stays square below both.
   * @param x the stick's extent in plan, inches; @param y likewise
   * @returns undefined when none of the sticks passes there
   */
  faceAt(sticks: readonly Timber[], x: Interval, y: Interval, side: "underside" | "top"): FaceAt | undefined {
    const solids = sticks.map((stick) => ({ stick, ...solidOf(stick) }));
    const slack = 1 / 16;
    const passes = ({ low, high }: Solid, k: 0 | 1, own: Interval): boolean => {
      const middle = middleOf(own);
      return middle >= low[k] - slack && middle <= high[k] + slack;
    };
    const takes = ({ low, high }: Solid, k: 0 | 1, own: Interval): boolean =>
      Math.min(high[k], own[1]) - Math.max(low[k], own[0]) >= LEAST_BEARING;
    const there = solids.filter((s) => passes(s, 0, x) && passes(s, 1, y));
    const over = there.length > 0 ? there : solids.filter((s) => takes(s, 0, x) && takes(s, 1, y));
    const nearest = (heights: readonly number[]): number =>
      side === "underside" ? Math.min(...heights) : Math.max(...heights);
    const slopes = over.flatMap(({ stick }) => slopeOver(stick, side) ?? []);
    const [slope, ...others] = slopes;
    const level = over.filter(({ stick }) => slopeOver(stick, side) === undefined);
    if (slope && level.length === 0 && others.every((o) => dot(o.normal, slope.normal) > 0.9999)) {
      const z = nearest(slopes.map((one) => heightOf(one, middleOf(x), middleOf(y))));
      return { z, normal: slope.normal };
    }
    const corners = x.flatMap((px) => y.map((py) => [px, py] as const));
    const heights = [
      ...level.map((s) => (side === "underside" ? s.low[2] : s.high[2])),
      ...slopes.flatMap((one) => corners.map(([px, py]) => heightOf(one, px, py))),
    ];
    return heights.length === 0 ? undefined : { z: nearest(heights), normal: undefined };
  }
}

/** Where an upright ends at another timber: at its middle, and the way the other's face looks where it slopes. */
export interface FaceAt {
  /** inches above the datum */
  readonly z: number;
  /** away from the other timber, unit */
  readonly normal: Vec3 | undefined;
}

/** A face that slopes less than this (cosine of its normal to the plumb line) is level. */
const LEVEL = 0.9999;
/** Steeper than this one it is a side and no underside. */
const SIDE = 0.2;

/** The underside or top of a sloping timber; undefined where that is level. */
function slopeOver(stick: Timber, side: "underside" | "top"): EndPlane | undefined {
  const down = side === "underside" ? -1 : 1;
  const { widthDir: w, depthDir: d } = stick;
  const normal = [w, scale(w, -1), d, scale(d, -1)].reduce((best, n) =>
    down * n[2] > down * best[2] ? n : best,
  );
  const upright = Math.abs(normal[2]);
  if (upright > LEVEL || upright < SIDE) return undefined;
  return { point: along(stick.origin, normal, halfExtent(stick, normal)), normal };
}

const heightOf = ({ point, normal }: EndPlane, x: number, y: number): number =>
  point[2] - (normal[0] * (x - point[0]) + normal[1] * (y - point[1])) / normal[2];
