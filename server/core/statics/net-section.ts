/**
 * What is left of a timber's cross-section where joints are cut into it: mortises, housings, laps, seats, the hollow of a
 * curved brace, and for tension the peg holes. Every cut is taken out of the section as a rectangle along the section's
 * own axes; area, centroid and moments of inertia of the rest are exact (parallel axis theorem). A cut that lies askew in
 * the section counts with the rectangle around it.
 *
 * Section axes: y along the timber's depth, z square to it (axis × depth), both from the middle of the whole section.
 */
import { groupBy } from "../collect.ts";
import type { Joint, Peg, Prism } from "../joinery/joint.ts";
import type { Model, Timber } from "../model/model.ts";
import { along, dot, sub, type Vec3 } from "../model/vec.ts";
import { localZ } from "./skeleton.ts";

/** Inches, from the middle of the section. */
export interface Rectangle {
  readonly y: readonly [number, number];
  readonly z: readonly [number, number];
}

export interface NetSection {
  /** in² */
  readonly A: number;
  /** centroid of what is left, in */
  readonly y: number;
  readonly z: number;
  /** about the centroid of what is left: Iz bends in the plane of the depth, in⁴ */
  readonly Iz: number;
  readonly Iy: number;
  /** I ÷ distance to the furthest fiber that is left, in³ */
  readonly Sz: number;
  readonly Sy: number;
}

/**
 * Wood thinner than this is none, in (common practice, no source): no tool leaves such a strip, but rounding does, and
 * its far fiber would be taken for that of the section.
 */
const NO_STRIP = 1e-3;

/**
 * @param width and @param depth of the whole section, in
 * @param cuts may overlap each other and reach past the edges
 * @returns all zero where nothing is left; strips thinner than a thousandth of an inch count with what lies beside them
 */
export function sectionLeft(width: number, depth: number, cuts: readonly Rectangle[]): NetSection {
  const ys = edges(depth, cuts, "y");
  const zs = edges(width, cuts, "z");
  // four numbers for each part: y and z from and to
  const left: number[] = [];
  let y0 = -depth / 2;
  for (const y1 of ys) {
    let z0 = -width / 2;
    for (const z1 of zs) {
      const my = (y0 + y1) / 2;
      const mz = (z0 + z1) / 2;
      if (!cuts.some((c) => my > c.y[0] && my < c.y[1] && mz > c.z[0] && mz < c.z[1]))
        left.push(y0, y1, z0, z1);
      z0 = z1;
    }
    y0 = y1;
  }
  return propertiesOf(left);
}

/**
 * Where the section is divided, above its lower edge, in order; the upper edge last. Edges of cuts nearer than `NO_STRIP`
 * to each other or to an edge of the section are one with it, so that every strip has a width.
 */
function edges(side: number, cuts: readonly Rectangle[], way: "y" | "z"): number[] {
  const half = side / 2;
  const found: number[] = [];
  let last = -half;
  for (const v of Float64Array.from(cuts.flatMap((c) => c[way])).sort()) {
    if (v - last <= NO_STRIP || half - v <= NO_STRIP) continue;
    found.push(v);
    last = v;
  }
  found.push(half);
  return found;
}

const at = (numbers: readonly number[], n: number): number => numbers[n] as number;

const NOTHING: NetSection = { A: 0, y: 0, z: 0, Iz: 0, Iy: 0, Sz: 0, Sy: 0 };

function propertiesOf(parts: readonly number[]): NetSection {
  let A = 0;
  let y = 0;
  let z = 0;
  for (let n = 0; n < parts.length; n += 4) {
    const [y0, y1, z0, z1] = [at(parts, n), at(parts, n + 1), at(parts, n + 2), at(parts, n + 3)];
    const a = (y1 - y0) * (z1 - z0);
    A += a;
    y += (a * (y0 + y1)) / 2;
    z += (a * (z0 + z1)) / 2;
  }
  if (!(A > 1e-6)) return NOTHING;
  y /= A;
  z /= A;
  let Iz = 0;
  let Iy = 0;
  let cy = 0;
  let cz = 0;
  for (let n = 0; n < parts.length; n += 4) {
    const [y0, y1, z0, z1] = [at(parts, n), at(parts, n + 1), at(parts, n + 2), at(parts, n + 3)];
    // ∫ (v − c)² over an interval = [(v − c)³]/3
    Iz += ((z1 - z0) * ((y1 - y) ** 3 - (y0 - y) ** 3)) / 3;
    Iy += ((y1 - y0) * ((z1 - z) ** 3 - (z0 - z) ** 3)) / 3;
    cy = Math.max(cy, y1 - y, y - y0);
    cz = Math.max(cz, z1 - z, z - z0);
  }
  return { A, y, z, Iz, Iy, Sz: Iz / cy, Sy: Iy / cz };
}

/** Something taken out of a timber: between which axial positions, and what of the section at each. */
export interface Cut {
  readonly joint: string | undefined;
  /** positions at which its shape may change, in order */
  readonly breaks: readonly number[];
  at(x: number): Rectangle | undefined;
}

interface LocalPoint {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** @returns what gives points in the timber's own axes */
function localOf(timber: Timber): (p: Vec3) => LocalPoint {
  const across = localZ(timber);
  return (p) => {
    const d = sub(p, timber.origin);
    return { x: dot(d, timber.axis), y: dot(d, timber.depthDir), z: dot(d, across) };
  };
}

const CLOSE = 1e-6;

/** The cross-section of a prism at x: the rectangle around the points where its edges pass through. */
function prismCut(local: (p: Vec3) => LocalPoint, prism: Prism, joint: string): Cut | undefined {
  const n = prism.outline.length;
  const ends = [prism.from, prism.to].map((w) =>
    prism.outline.map(([u, v]) => local(along(along(along(prism.base, prism.u, u), prism.v, v), prism.w, w))),
  );
  const [low = [], high = []] = ends;
  const lines: (readonly [LocalPoint, LocalPoint])[] = [];
  for (let i = 0; i < n; i++) {
    const [a, b, c, d] = [low[i], low[(i + 1) % n], high[i], high[(i + 1) % n]];
    if (!a || !b || !c || !d) return undefined;
    lines.push([a, b], [c, d], [a, c]);
  }
  const xs = [...low, ...high].map((p) => p.x).sort((a, b) => a - b);
  return {
    joint,
    breaks: xs.filter((x, i) => i === 0 || x - (xs[i - 1] ?? x) > CLOSE),
    at(x) {
      // the rectangle around the points where the edges pass through the section
      let y0 = Number.POSITIVE_INFINITY;
      let y1 = Number.NEGATIVE_INFINITY;
      let z0 = y0;
      let z1 = y1;
      for (const [a, b] of lines) {
        if ((a.x - x) * (b.x - x) > 0) continue;
        const run = b.x - a.x;
        // an edge that lies in the section counts with both its ends
        const flat = Math.abs(run) < CLOSE;
        const t = flat ? 0 : (x - a.x) / run;
        const y = a.y + t * (b.y - a.y);
        const z = a.z + t * (b.z - a.z);
        const [otherY, otherZ] = flat ? [b.y, b.z] : [y, z];
        y0 = Math.min(y0, y, otherY);
        y1 = Math.max(y1, y, otherY);
        z0 = Math.min(z0, z, otherZ);
        z1 = Math.max(z1, z, otherZ);
      }
      return y1 >= y0 ? { y: [y0, y1], z: [z0, z1] } : undefined;
    },
  };
}

/** Holes of one joint nearer than this many diameters along the grain count at one section (NDS 3.1.2.2). */
const STAGGER = 4;

/** A peg hole bored square to the grain, counted over the length in which staggered neighbors join it. */
function pegCut(local: (p: Vec3) => LocalPoint, peg: Peg, joint: string): Cut {
  const a = local(peg.from);
  const b = local(peg.to);
  const r = peg.diameter / 2;
  const middle = (a.x + b.x) / 2;
  const alongY = Math.abs(b.y - a.y) > Math.abs(b.z - a.z);
  const hole: Rectangle = alongY
    ? { y: [Math.min(a.y, b.y), Math.max(a.y, b.y)], z: [(a.z + b.z) / 2 - r, (a.z + b.z) / 2 + r] }
    : { y: [(a.y + b.y) / 2 - r, (a.y + b.y) / 2 + r], z: [Math.min(a.z, b.z), Math.max(a.z, b.z)] };
  const reach = STAGGER * peg.diameter;
  return {
    joint,
    breaks: [middle],
    at: (x) => (Math.abs(x - middle) < reach ? hole : undefined),
  };
}

/** The hollow of a curved brace, as the parabola that has its rise over the length between its shoulders. */
function hollow(timber: Timber): Cut[] {
  const { curve, span, depth, width } = timber;
  if (!curve || !(curve.rise > 0)) return [];
  const middle = span / 2;
  return [
    {
      joint: undefined,
      breaks: [0, middle, span],
      at(x) {
        const deep = curve.rise * (1 - ((2 * (x - middle)) / span) ** 2);
        const edge = (curve.side * depth) / 2;
        const inner = edge - curve.side * Math.max(0, deep);
        return { y: [Math.min(edge, inner), Math.max(edge, inner)], z: [-width / 2, width / 2] };
      },
    },
  ];
}

export interface TimberCuts {
  readonly cuts: readonly Cut[];
  /** counted in tension only: a driven peg fills its hole in compression */
  readonly pegs: readonly Cut[];
}

/**
 * What is cut out of one timber.
 * @param into joints that it receives; @param of joints at its own ends
 */
export function cutsInto(timber: Timber, into: readonly Joint[], of: readonly Joint[]): TimberCuts {
  const local = localOf(timber);
  const prisms = (list: readonly Prism[], joint: Joint): Cut[] =>
    list.flatMap((p) => (p.endCut ? [] : (prismCut(local, p, joint.id) ?? [])));
  return {
    cuts: [
      ...into.flatMap((j) => prisms([...j.solids.mortises, ...j.solids.housings], j)),
      ...of.flatMap((j) => prisms(j.solids.notches, j)),
      ...hollow(timber),
    ],
    pegs: into.flatMap((j) => j.solids.pegs.map((p) => pegCut(local, p, j.id))),
  };
}

/** @returns what is cut out of every timber, by id */
export function timberCuts(model: Model): Map<string, TimberCuts> {
  const receiving = groupBy(model.joints, (j) => j.into.id);
  const joined = groupBy(model.joints, (j) => j.of.id);
  return new Map(
    model.timbers.map((t) => [t.id, cutsInto(t, receiving.get(t.id) ?? [], joined.get(t.id) ?? [])]),
  );
}

/** A place along a timber and what is left of its section there. */
export interface NetPlace {
  /** axial position from the foot, in */
  readonly x: number;
  readonly section: NetSection;
  /** with peg holes taken out as well: for tension, in² */
  readonly tensionArea: number;
  /** whose cut it is, where something is cut */
  readonly joint: string | undefined;
}

/** Stretches shorter than this between two changes of shape are not looked at, in. */
const SHORT = 1 / 16;
/** How far inside a stretch its ends are looked at, in. */
const INSIDE = 1 / 64;

/** The sections along one timber; equal neighbors share one object. */
export class NetSections {
  readonly #timber: Timber;
  readonly #cuts: readonly Cut[];
  readonly #pegs: readonly Cut[];
  readonly whole: NetSection;
  readonly #at = new Map<number, NetPlace>();
  readonly #known: { readonly taken: readonly Rectangle[]; readonly section: NetSection }[] = [];

  constructor(timber: Timber, { cuts, pegs }: TimberCuts) {
    this.#timber = timber;
    this.#cuts = cuts;
    this.#pegs = pegs;
    this.whole = sectionLeft(timber.width, timber.depth, []);
  }

  at(x: number): NetPlace {
    const known = this.#at.get(x);
    if (known) return known;
    const place = this.#placeAt(x);
    this.#at.set(x, place);
    return place;
  }

  #placeAt(x: number): NetPlace {
    const taken: Rectangle[] = [];
    let joint: string | undefined;
    for (const cut of this.#cuts) {
      const rectangle = this.#takenBy(cut, x);
      if (!rectangle) continue;
      taken.push(rectangle);
      joint ??= cut.joint;
    }
    const section = this.#left(taken);
    const bored: Rectangle[] = [];
    for (const peg of this.#pegs) {
      const hole = peg.at(x);
      if (!hole) continue;
      bored.push(hole);
      joint ??= peg.joint;
    }
    return {
      x,
      section,
      tensionArea: bored.length > 0 ? this.#left([...taken, ...bored]).A : section.A,
      joint,
    };
  }

  /**
   * @returns every place at which the section may be at its least for the forces there: both ends of each stretch between
   * two changes of shape, and each row of peg holes; none for a timber that nothing is cut from
   */
  places(): NetPlace[] {
    const { span } = this.#timber;
    const within = (x: number): boolean => x >= 0 && x <= span;
    const breaks = [...new Set([0, ...this.#cuts.flatMap((c) => c.breaks), span])]
      .filter(within)
      .sort((a, b) => a - b);
    const xs = new Set(this.#pegs.flatMap((p) => p.breaks).filter(within));
    for (let i = 0; i + 1 < breaks.length; i++) {
      const [a = 0, b = 0] = [breaks[i], breaks[i + 1]];
      const middle = (a + b) / 2;
      if (b - a < SHORT || !this.#cuts.some((c) => isWithin(middle, c))) continue;
      xs.add(a + INSIDE);
      xs.add(b - INSIDE);
    }
    return [...xs].sort((a, b) => a - b).map((x) => this.at(x));
  }

  /** @returns ids of the joints that take wood out of the section at x, pegs aside; a cut that only touches it takes none */
  jointsAt(x: number): string[] {
    const ids = this.#cuts.flatMap((cut) =>
      cut.joint !== undefined && this.#takenBy(cut, x) ? [cut.joint] : [],
    );
    return [...new Set(ids)];
  }

  #takenBy(cut: Cut, x: number): Rectangle | undefined {
    const rectangle = isWithin(x, cut) ? cut.at(x) : undefined;
    return rectangle && reachesInto(rectangle, this.#timber) ? rectangle : undefined;
  }

  /** The same cuts come again all along a mortise: what they leave is worked out once. */
  #left(taken: readonly Rectangle[]): NetSection {
    if (taken.length === 0) return this.whole;
    const known = this.#known.find((k) => sameCuts(k.taken, taken));
    if (known) return known.section;
    const section = sectionLeft(this.#timber.width, this.#timber.depth, taken);
    this.#known.push({ taken, section });
    return section;
  }
}

/** Whether a place along the timber, inches, lies between the ends of a cut. */
function isWithin(x: number, cut: Cut): boolean {
  return x > (cut.breaks[0] ?? 0) && x < (cut.breaks.at(-1) ?? 0);
}

function sameCuts(a: readonly Rectangle[], b: readonly Rectangle[]): boolean {
  const near = (p: readonly [number, number], q: readonly [number, number]): boolean =>
    Math.abs(p[0] - q[0]) < 1e-3 && Math.abs(p[1] - q[1]) < 1e-3;
  return (
    a.length === b.length &&
    a.every((r, i) => {
      const other = b[i];
      return other !== undefined && near(r.y, other.y) && near(r.z, other.z);
    })
  );
}

function reachesInto(r: Rectangle, timber: Timber): boolean {
  const overlap = (span: readonly [number, number], side: number): number =>
    Math.min(span[1], side / 2) - Math.max(span[0], -side / 2);
  return overlap(r.y, timber.depth) > NO_STRIP && overlap(r.z, timber.width) > NO_STRIP;
}
