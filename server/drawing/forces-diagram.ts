/** A force along a timber as a hatched shape: the sign shows in the hatching, not in its tone alone. */
import type { Vec2 } from "../core/model/vec.ts";
import type { DrawingElement, Vertex } from "./drawing.ts";
import type { PaperLine } from "./forces-line.ts";
import type { Ordinate } from "./forces-values.ts";

export interface DiagramStyle {
  /** inches on the drawing for one unit of force */
  readonly scale: number;
  /** distance between two lines of the hatching, inches */
  readonly hatch: number;
  /** what would be thinner than this (inches on the drawing) is not drawn */
  readonly thin: number;
  /** the line's own width of force lies half on each side: no side means anything */
  readonly centered: boolean;
  /** values up of the line count as negative: a moment with tension below is positive */
  readonly inverted: boolean;
}

export const offset = (p: Vec2, up: Vec2, by: number): Vec2 => [p[0] + up[0] * by, p[1] + up[1] * by];

/** Stretches of one sign; a change of sign between two ordinates ends one and begins the next. */
function runsOf(ordinates: readonly Ordinate[], least: number): Ordinate[][] {
  const runs: Ordinate[][] = [];
  let run: Ordinate[] = [];
  let sign = 0;
  const close = (): void => {
    if (run.some(({ value }) => Math.abs(value) > least)) runs.push(run);
    run = [];
  };
  ordinates.forEach((next, i) => {
    const last = ordinates[i - 1];
    const own = Math.sign(next.value);
    if (last && own * sign < 0) {
      const share = last.value / (last.value - next.value);
      const zero = { at: last.at + share * (next.at - last.at), value: 0 };
      run.push(zero);
      close();
      run.push(zero);
    }
    if (own !== 0) sign = own;
    run.push(next);
  });
  close();
  return runs;
}

function valueAt(run: readonly Ordinate[], at: number): number {
  const next = run.findIndex((o) => o.at >= at);
  const [a, b] = [run[next - 1], run[next]];
  if (!b) return run.at(-1)?.value ?? 0;
  if (!a || b.at - a.at < 1e-9) return b.value;
  return a.value + ((at - a.at) / (b.at - a.at)) * (b.value - a.value);
}

/** The two edges of a shape at an ordinate. */
function edgesOf(line: PaperLine, { at, value }: Ordinate, style: DiagramStyle): readonly [Vec2, Vec2] {
  const base = line.at(at);
  const by = value * style.scale;
  return style.centered
    ? [offset(base, line.up, -Math.abs(by) / 2), offset(base, line.up, Math.abs(by) / 2)]
    : [base, offset(base, line.up, by)];
}

/** Square strokes, |||, or a zigzag, /\/\: one path, from edge to edge. */
export function strokes(
  first: number,
  last: number,
  step: number,
  positive: boolean,
  edges: (at: number) => readonly [Vec2, Vec2],
): Vertex[] {
  const points: Vertex[] = [];
  for (let k = Math.ceil(first / step), n = 0; k * step <= last && n < 2000; k++, n++) {
    const [low, high] = edges(k * step);
    if (!positive) points.push(n % 2 === 0 ? low : high);
    else if (n % 2 === 0) points.push(low, high);
    else points.push(high, low);
  }
  return points;
}

/** @param elements ordinates of each element of the timber, foot to head */
export function diagram(
  line: PaperLine,
  elements: readonly (readonly Ordinate[])[],
  style: DiagramStyle,
): DrawingElement[] {
  return elements.flatMap((ordinates) =>
    runsOf(ordinates, style.thin / style.scale).flatMap((run): DrawingElement[] => {
      const [first, last] = [run[0], run.at(-1)];
      if (!first || !last) return [];
      const up = run.reduce((sum, { value }) => sum + value, 0) > 0;
      const positive = up !== style.inverted;
      const edges = run.map((ordinate) => edgesOf(line, ordinate, style));
      const shape = [...edges.map(([low]) => low), ...edges.map(([, high]) => high).reverse()];
      const inner = strokes(first.at, last.at, style.hatch, positive, (at) =>
        edgesOf(line, { at, value: valueAt(run, at) }, style),
      );
      const sign = positive ? "positive" : "negative";
      return [
        { type: "poly", points: shape, closed: true, classes: [sign] },
        ...(inner.length > 1
          ? [{ type: "poly", points: inner, closed: false, classes: ["strokes", sign] } as const]
          : []),
      ];
    }),
  );
}
