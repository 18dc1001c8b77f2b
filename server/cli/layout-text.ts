/** The layout for people: each stick with its ends in words and its cuts as a table; equal sticks once. */
import type { Say } from "../core/checks/say.ts";
import { groupBy } from "../core/collect.ts";
import type { Model } from "../core/model/model.ts";
import type { Corner } from "../core/shop/layout/cuts.ts";
import { type EndMarks, isSquare, type TenonMarks } from "../core/shop/layout/ends.ts";
import { opposite } from "../core/shop/layout/faces.ts";
import type { JointMarks, PegHole, ScrewMark, StickCut, StickLayout } from "../core/shop/layout/layout.ts";
import { toMark } from "../core/shop/layout/rounded.ts";
import { footWords, referenceWords } from "../language/face-words.ts";
import { textTable } from "./text-table.ts";

/** How joints and timbers are called: in full, or by their entries where several sticks share a table. */
type Name = (id: string) => string;

const inFull: Name = (id) => id;
const byEntry: Name = (id) => id.split("@")[0] ?? id;

const mark = (inches: number, say: Say): string => say.length(toMark(inches, say.metric));

/** @returns the whole text, without a caution */
export function layoutText(sticks: readonly StickLayout[], model: Model, say: Say): string {
  const groups = groupBy(sticks, (stick) => `${stick.timber.member}\n${bodyOf(stick, model, byEntry, say)}`);
  return [
    say.text(
      "Along: from the end that is named, parallel to the arris where faces 1 and 2 meet. Across: from face 2 on faces 1 and 3, from face 1 on faces 2 and 4. Face 3 lies opposite 1, and 4 opposite 2. Depths on faces 3 and 4 go down to the perfect timber: add what a stick has over that is not measured.",
    ),
    ...[...groups.values()].map((group) => groupText(group, model, say)),
  ].join("\n\n");
}

function groupText(group: readonly StickLayout[], model: Model, say: Say): string {
  const [first] = group;
  if (!first) return "";
  const ids = group.map(({ timber }) => timber.id);
  const head = group.length === 1 ? "" : say.text(" ({count} sticks alike)", { count: group.length });
  return `${ids.join(", ")}${head}\n${bodyOf(first, model, group.length === 1 ? inFull : byEntry, say)}`;
}

function bodyOf(stick: StickLayout, model: Model, name: Name, say: Say): string {
  const { timber, foot, head } = stick;
  const rows = stick.joints.flatMap((marks) => rowsOf(marks, name, say));
  return [
    `  ${sizeWords(stick, say)}`,
    `  ${say.text("{faces}. Along: from {end}; seen from there, 1, 2, 3, 4 run {turn}.", {
      faces: capital(referenceWords(timber, model, say)),
      turn: say.text(stick.frame.turn),
      end: footWords(timber, foot, model, name, say),
    })}`,
    ...measuredLines(stick, say),
    ...endLines(foot, stick, name, say),
    ...endLines(head, stick, name, say),
    ...(rows.length > 0 ? [textTable([columns(say), ...rows])] : []),
  ].join("\n");
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function sizeWords({ timber, length, leave }: StickLayout, say: Say): string {
  const values = {
    kind: timber.kind,
    width: say.length(timber.width),
    depth: say.length(timber.depth),
    length: mark(length, say),
    cut: mark(timber.length, say),
  };
  return say.text(
    leave.foot + leave.head > 0
      ? "{kind}, perfect size {width} × {depth}, {length} from tip to tip; saw it {cut} long, to scribe"
      : "{kind}, perfect size {width} × {depth}, {length} from tip to tip",
    values,
  );
}

function measuredLines({ measured }: StickLayout, say: Say): string[] {
  return measured.map(({ width, depth, at }) =>
    at === undefined
      ? `  ${say.text("Measured {width} × {depth}.", { width: say.length(width), depth: say.length(depth) })}`
      : `  ${say.text("Measured {width} × {depth} at {at}.", {
          width: say.length(width),
          depth: say.length(depth),
          at: say.length(at),
        })}`,
  );
}

/** One end: where its shoulder or its cut crosses the faces, and the tenon beyond. */
function endLines(end: EndMarks, stick: StickLayout, name: Name, say: Say): string[] {
  const into = end.joints.map((joint) =>
    say.text("{joint} into {timber}", { joint: name(joint.id), timber: name(joint.into) }),
  );
  const what = say.text(end.shoulder ? "shoulder" : "cut");
  const where = end.end === "foot" ? say.text("This end") : say.text("Other end");
  const forWhom = into.length > 0 ? ` (${into.join("; ")})` : "";
  const lines = [`  ${where}: ${what} ${crossWords(end, say)}${forWhom}`];
  for (const tenon of end.tenons) lines.push(`    ${tenonWords(tenon, say)}`);
  if (end.pare)
    lines.push(
      `    ${say.text("Pare it to {first} × {second} over the {length} that go in.", {
        first: mark(stick.timber.width, say),
        second: mark(stick.timber.depth, say),
        length: mark(end.pare, say),
      })}`,
    );
  if (end.leave > 0)
    lines.push(
      `    ${say.text("Scribed: leave {leave} long beyond these marks; mark in place, then cut.", {
        leave: mark(end.leave, say),
      })}`,
    );
  return lines;
}

/** Square: one number. Aslant in one way: one for each of two faces. Else at every long edge. */
function crossWords(end: EndMarks, say: Say): string {
  const [arris, second, third, fourth] = end.crosses.map((at) => mark(at, say));
  if (isSquare(end)) return say.text("square at {at}", { at: arris ?? "" });
  if (arris === second && third === fourth)
    return say.text("aslant, {near} on face 2, {far} on face 4", { near: arris ?? "", far: third ?? "" });
  if (arris === fourth && second === third)
    return say.text("aslant, {near} on face 1, {far} on face 3", { near: arris ?? "", far: second ?? "" });
  return say.text("aslant, {one} at the arris, {two} where 2 meets 3, {three} 3 meets 4, {four} 4 meets 1", {
    one: arris ?? "",
    two: second ?? "",
    three: third ?? "",
    four: fourth ?? "",
  });
}

/** The outline of a tenon, and what a rough stick is over there. */
function tenonWords(tenon: TenonMarks, say: Say): string {
  const outline = tenonOutlineWords(tenon, say);
  return tenon.over > 0
    ? say.text("{outline}; pare off the {over} over", { outline, over: mark(tenon.over, say) })
    : outline;
}

function tenonOutlineWords(tenon: TenonMarks, say: Say): string {
  const { cheeks, cheeksFrom, face, outline, rectangle, full } = tenon;
  const sides = say.text("Tenon: cheeks {near} and {far} from face {face}", {
    near: mark(cheeks[0], say),
    far: mark(cheeks[1], say),
    face: cheeksFrom,
  });
  if (!rectangle) {
    const corners = outline.map((c) => `${mark(c.along, say)} / ${mark(c.across, say)}`);
    return say.text("{sides}; corners on face {face}, along / across: {corners}", {
      sides,
      face,
      corners: corners.join(", "),
    });
  }
  const values = {
    sides,
    from: mark(rectangle.along[0], say),
    to: mark(rectangle.along[1], say),
    low: mark(rectangle.across[0], say),
    high: mark(rectangle.across[1], say),
    face,
  };
  return full
    ? say.text("{sides}; from {from} to {to}, full breadth", values)
    : say.text("{sides}; from {from} to {to}, on face {face} from {low} to {high} across", values);
}

const columns = (say: Say): string[] =>
  ["joint", "with", "cut", "face", "along", "to", "across", "to", "depth", "remarks"].map((word) =>
    say.text(word),
  );

function rowsOf(marks: JointMarks, name: Name, say: Say): string[][] {
  const head = [name(marks.joint), name(marks.other)];
  return [
    ...marks.cuts.map((cut) => [...head, ...cutCells(cut, marks, say)]),
    ...marks.holes.map((hole) => [...head, ...holeCells(hole, marks, say)]),
    ...marks.screws.map((screw) => [...head, ...screwCells(screw, marks, say)]),
  ];
}

const scribedWords = (marks: JointMarks, say: Say): string[] =>
  marks.scribed ? [say.text("scribed: mark in place")] : [];

function cutCells(cut: StickCut, marks: JointMarks, say: Say): string[] {
  const { part, face, opening, corners, bottom, from, depth, through, over } = cut;
  const remarks = [
    ...scribedWords(marks, say),
    ...(from > 1 / 32 ? [say.text("opens {from} below the face", { from: mark(from + over, say) })] : []),
    ...(corners ? [cornerWords(corners, say)] : []),
    ...(bottom ? [bottomWords(cut, bottom, say)] : []),
    ...(!through && face > 2
      ? [
          say.text("floor {floor} from face {face}", {
            floor: mark(cut.floor, say),
            face: opposite(face),
          }),
        ]
      : []),
    ...overWords(over, say),
  ];
  return [
    say.text(part),
    `${face}`,
    mark(opening.along[0], say),
    mark(opening.along[1], say),
    mark(opening.across[0], say),
    mark(opening.across[1], say),
    through ? say.text("through") : mark(depth + over, say),
    remarks.join("; "),
  ];
}

/** What the real face has over the perfect one, or lacks, as it is marked; nothing where the mark shows none. */
function overWords(over: number, say: Say): string[] {
  const size = mark(Math.abs(over), say);
  if (size === mark(0, say)) return [];
  return [
    over > 0
      ? say.text("{over} over", { over: size })
      : say.text("{short} short of the perfect timber", { short: size }),
  ];
}

/** An outline that is no rectangle: by its two edges along the stick where it has such edges only, else by its corners. */
function cornerWords(corners: readonly Corner[], say: Say): string {
  const edges = [...groupBy(corners, ({ across }) => mark(across, say))];
  if (corners.length === 4 && edges.length === 2 && edges.every(([, ends]) => ends.length === 2))
    return edges
      .sort(([, [a]], [, [b]]) => (a?.across ?? 0) - (b?.across ?? 0))
      .map(([across, ends]) => {
        const [low, high] = ends.map(({ along }) => along).sort((a, b) => a - b);
        return say.text("at {across} across from {low} to {high} along", {
          across,
          low: mark(low ?? 0, say),
          high: mark(high ?? 0, say),
        });
      })
      .join(", ");
  return say.text("corners, along / across: {corners}", {
    corners: corners.map((c) => `${mark(c.along, say)} / ${mark(c.across, say)}`).join(", "),
  });
}

function bottomWords({ opening }: StickCut, bottom: StickCut["opening"], say: Say): string {
  const same = (way: "along" | "across"): boolean =>
    ([0, 1] as const).every((i) => Math.abs(opening[way][i] - bottom[way][i]) < 1e-4);
  const range = (way: "along" | "across"): string => {
    const [low, high] = bottom[way].map((at) => mark(at, say));
    return low === high ? (low ?? "") : say.text("{low} to {high}", { low: low ?? "", high: high ?? "" });
  };
  return [
    ...(same("along") ? [] : [say.text("at its deepest {range} along", { range: range("along") })]),
    ...(same("across") ? [] : [say.text("at its deepest {range} across", { range: range("across") })]),
  ].join("; ");
}

function holeCells(hole: PegHole, marks: JointMarks, say: Say): string[] {
  const remarks = [
    ...scribedWords(marks, say),
    ...(hole.draw > 0
      ? [
          say.text("where the cheek’s hole comes, then {draw} toward the shoulder", {
            draw: say.length(hole.draw),
          }),
        ]
      : []),
  ];
  return [
    hole.bolt
      ? say.text("bolt hole {diameter}", { diameter: say.length(hole.diameter) })
      : say.text("peg {diameter}", { diameter: say.length(hole.diameter) }),
    `${hole.face}`,
    mark(hole.along, say),
    "",
    mark(hole.across, say),
    "",
    say.text("through"),
    remarks.join("; "),
  ];
}

function screwCells(screw: ScrewMark, marks: JointMarks, say: Say): string[] {
  const slant = Math.round(screw.angle);
  const remarks = [
    ...scribedWords(marks, say),
    ...(slant < 90 ? [say.text("driven {angle}° to the arris", { angle: slant })] : []),
  ];
  return [
    say.text("screw {diameter} × {length}", {
      diameter: say.length(screw.diameter),
      length: say.length(screw.length),
    }),
    `${screw.face}`,
    mark(screw.along, say),
    "",
    mark(screw.across, say),
    "",
    "",
    remarks.join("; "),
  ];
}
