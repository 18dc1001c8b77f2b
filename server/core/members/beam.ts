/**
 * Statics and elastic line of a beam on two supports with an overhang beyond the first: closed form for any blocks of
 * uniform load and any single loads.
 *
 * x runs from the tip (−overhang) over the first support (0) to the second (span). With ⟨x⟩ = max(x, 0), R the first
 * reaction, blocks w from p to q and single loads P at s, all down:
 *   second reaction = Σ F x_F / span,  R = Σ F − second reaction
 *   V(x) = R⟨x⟩⁰ − Σ w(⟨x−p⟩ − ⟨x−q⟩) − Σ P⟨x−s⟩⁰
 *   M(x) = R⟨x⟩ − Σ w(⟨x−p⟩² − ⟨x−q⟩²)/2 − Σ P⟨x−s⟩          (sagging positive)
 *   EI y″ = M, so EI y = R⟨x⟩³/6 − Σ w(⟨x−p⟩⁴ − ⟨x−q⟩⁴)/24 − Σ P⟨x−s⟩³/6 + C₁x + C₂, y = 0 at both supports.
 * Shear is linear between breakpoints, so the largest moments are at breakpoints or where shear crosses zero.
 * No shear deformation.
 */

/** in and lb/in, down positive */
export interface Block {
  readonly from: number;
  readonly to: number;
  readonly w: number;
}

/** in and lb, down positive */
interface PointLoad {
  readonly at: number;
  readonly load: number;
}

export interface BeamLoads {
  readonly span: number;
  /** 0 = none */
  readonly overhang: number;
  readonly blocks: readonly Block[];
  readonly points: readonly PointLoad[];
}

export interface Beam {
  /** lb, up positive: at the support of the overhang, and at the other */
  readonly reactions: readonly [number, number];
  /** largest sagging moment, in-lb, at least 0, and where */
  readonly sagging: { readonly moment: number; readonly at: number };
  /** largest hogging moment, in-lb, at least 0, and where */
  readonly hogging: { readonly moment: number; readonly at: number };
  /** largest shear between the supports, lb, without sign */
  readonly shear: number;
  /** largest shear in the overhang, lb, without sign */
  readonly overhangShear: number;
  /** in-lb, sagging positive */
  momentAt(x: number): number;
  /** in, down positive. @param EI lb-in² */
  deflectionAt(x: number, EI: number): number;
}

/** Uniform load over a length. @param plf lb per ft */
export function uniform(from: number, to: number, plf: number): Block {
  return { from, to, w: plf / 12 };
}

/** @param loads a span above 0 in */
export function beam(loads: BeamLoads): Beam {
  const { span, overhang, blocks, points } = loads;
  const total = sum(blocks, (b) => b.w * (b.to - b.from)) + sum(points, (p) => p.load);
  const turning =
    sum(blocks, (b) => (b.w * (b.to ** 2 - b.from ** 2)) / 2) + sum(points, (p) => p.load * p.at);
  const second = turning / span;
  const first = total - second;
  const momentAt = (x: number) =>
    first * ramp(x) -
    sum(blocks, (b) => (b.w * (ramp(x - b.from) ** 2 - ramp(x - b.to) ** 2)) / 2) -
    sum(points, (p) => p.load * ramp(x - p.at));
  const shearPast = (x: number) =>
    (x >= 0 ? first : 0) -
    sum(blocks, (b) => b.w * (ramp(x - b.from) - ramp(x - b.to))) -
    sum(points, (p) => (x >= p.at ? p.load : 0));
  const shearBefore = (x: number) =>
    (x > 0 ? first : 0) -
    sum(blocks, (b) => b.w * (ramp(x - b.from) - ramp(x - b.to))) -
    sum(points, (p) => (x > p.at ? p.load : 0));
  const line = (x: number) =>
    (first * ramp(x) ** 3) / 6 -
    sum(blocks, (b) => (b.w * (ramp(x - b.from) ** 4 - ramp(x - b.to) ** 4)) / 24) -
    sum(points, (p) => (p.load * ramp(x - p.at) ** 3) / 6);
  const atFirst = line(0);
  const turn = (atFirst - line(span)) / span;

  const breaks = [
    ...new Set([-overhang, 0, span, ...blocks.flatMap((b) => [b.from, b.to]), ...points.map((p) => p.at)]),
  ]
    .filter((x) => x >= -overhang && x <= span)
    .sort((a, b) => a - b);
  const places = [...breaks];
  let shear = 0;
  let overhangShear = 0;
  breaks.forEach((left, i) => {
    const right = breaks[i + 1];
    if (right === undefined) return;
    const ends = [shearPast(left), shearBefore(right)] as const;
    const most = Math.max(Math.abs(ends[0]), Math.abs(ends[1]));
    if (left >= 0) shear = Math.max(shear, most);
    else overhangShear = Math.max(overhangShear, most);
    if (ends[0] * ends[1] < 0) places.push(left + ((right - left) * ends[0]) / (ends[0] - ends[1]));
  });
  const moments = places.map((at) => ({ at, moment: momentAt(at) }));
  const most = moments.reduce((a, b) => (b.moment > a.moment ? b : a), { at: 0, moment: 0 });
  const least = moments.reduce((a, b) => (b.moment < a.moment ? b : a), { at: 0, moment: 0 });
  return {
    reactions: [first, second],
    sagging: most,
    hogging: { at: least.at, moment: 0 - least.moment },
    shear,
    overhangShear,
    momentAt,
    deflectionAt: (x, EI) => -(line(x) + turn * x - atFirst) / EI,
  };
}

/** Stations along the span at which the deflection is read; mid-span is one of them. */
const STATIONS = 32;

/** Largest deflection between the supports, down, in; at least 0. Read at 32nds of the span: short by under 0.5 %. */
export function spanDeflection(line: Beam, span: number, EI: number): number {
  let most = 0;
  for (let i = 1; i < STATIONS; i++) most = Math.max(most, line.deflectionAt((span * i) / STATIONS, EI));
  return most;
}

/**
 * The loads that count for shear between the supports, NDS 3.4.3.1(a): uniform load within the depth of a support is left
 * out, a single load nearer than the depth counts in proportion. For members that bear on their lower side.
 * @param depth in
 */
export function loadsForShear(loads: BeamLoads, depth: number): BeamLoads {
  const { span, blocks, points } = loads;
  const last = span - depth;
  const between = (b: Block): readonly Block[] => {
    const outer: Block = { ...b, to: Math.min(b.to, 0) };
    const inner: Block = { ...b, from: Math.max(b.from, depth), to: Math.min(b.to, last) };
    return [outer, inner].filter((part) => part.to > part.from);
  };
  const share = (at: number) => (at < 0 ? 1 : Math.min(1, at / depth, (span - at) / depth));
  return {
    ...loads,
    blocks: blocks.flatMap(between),
    points: points.map((p) => ({ ...p, load: p.load * share(p.at) })),
  };
}

function ramp(x: number): number {
  return Math.max(x, 0);
}

function sum<T>(items: readonly T[], of: (item: T) => number): number {
  let total = 0;
  for (const item of items) total += of(item);
  return total;
}
