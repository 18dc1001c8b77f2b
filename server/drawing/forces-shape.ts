/** How the frame bends under one combination, many times exaggerated. */
import type { DrawingElement } from "./drawing.ts";
import { type Basis, type DrawnForces, slackIn, slackRow, VALUE } from "./forces-basis.ts";
import { type Moved, mostOf, movedOf } from "./forces-deflected.ts";
import { offset } from "./forces-diagram.ts";
import type { PaperLine } from "./forces-line.ts";
import { amount, roundBelow } from "./forces-words.ts";

/** ems that the largest movement measures at most */
const LARGEST = 3;

/** The way of seating the rafters that moves the frame more in this view. */
export function drawShape(basis: Basis): DrawnForces {
  const { cases, lines, sight, layout } = basis;
  const { say, size } = layout;
  const candidates = cases.map((solved) => {
    const moved = lines.map((line) => ({ line, points: movedOf(sight, line, solved) }));
    return { solved, moved, most: Math.max(0, ...moved.map(({ points }) => mostOf(points))) };
  });
  const chosen = candidates.reduce<(typeof candidates)[number] | undefined>(
    (a, b) => (a && a.most >= b.most ? a : b),
    undefined,
  );
  if (!chosen || !(chosen.most > 1e-6) || !Number.isFinite(chosen.most))
    return { elements: [], legend: [{ text: say.text("No timber in this plane moves.") }] };
  const factor = roundBelow((LARGEST * size) / chosen.most);
  const sheer = (line: PaperLine, { at, by }: Moved) => offset(line.at(at), by, factor);
  const slack = slackIn([chosen.solved]);
  const shapes = chosen.moved.flatMap(({ line, points }): DrawingElement[] => {
    if (points.length < 2) return [];
    const most = amount("deflected", mostOf(points), say);
    return [
      {
        type: "group",
        classes: ["force", "deflected"],
        id: line.timber.id,
        path: line.timber.path,
        title: say.text("{timber} moves {most} at most in this view", { timber: line.timber.id, most }),
        children: [
          {
            type: "poly",
            closed: false,
            points: points.map((point) => sheer(line, point)),
            ...(slack.has(line.timber.id) ? { classes: ["slack"] } : {}),
          },
        ],
      },
    ];
  });
  const furthest = chosen.moved
    .flatMap(({ line, points }) => points.map((point) => ({ line, point, by: Math.hypot(...point.by) })))
    .reduce((a, b) => (b.by > a.by ? b : a));
  const [x, y] = sheer(furthest.line, furthest.point);
  const most = amount("deflected", furthest.by, say);
  const places = [
    { x, y: y - 1.2 * size, anchor: "middle" as const },
    { x, y: y + 0.5 * size, anchor: "middle" as const },
    { x: x + 0.5 * size, y: y - 0.3 * size, anchor: "start" as const },
    { x: x - 0.5 * size, y: y - 0.3 * size, anchor: "end" as const },
  ];
  const dashed = chosen.moved.filter(({ line }) => slack.has(line.timber.id)).length;
  return {
    elements: [...shapes, ...layout.write(most, places, ["value"], VALUE * size)],
    legend: [
      {
        text: say.text("center lines as they move, drawn {factor} times as far", {
          factor: say.number(factor),
        }),
        sample: "deflected",
      },
      ...slackRow(basis, dashed),
      {
        text: say.text("Largest movement in this view: {most}, {timber}. At once, without creep.", {
          most,
          timber: furthest.line.timber.id,
        }),
      },
      ...(chosen.solved.seats === "slide"
        ? [{ text: say.text("Rafter seats taken to slide level, which moves the frame more.") }]
        : []),
    ],
  };
}
