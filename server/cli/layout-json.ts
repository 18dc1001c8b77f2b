/** The layout as plain data: every distance rounded to what is marked, in the unit of the file. */
import type { Say } from "../core/checks/say.ts";
import type { Model } from "../core/model/model.ts";
import type { Corner, Cut, Outline, Range } from "../core/shop/layout/cuts.ts";
import type { EndMarks, TenonMarks } from "../core/shop/layout/ends.ts";
import type { JointMarks, PegHole, ScrewMark, StickCut, StickLayout } from "../core/shop/layout/layout.ts";
import { toMark } from "../core/shop/layout/rounded.ts";
import { footWords, referenceWords } from "../language/face-words.ts";
import { figure } from "./figures-json.ts";

const MM_PER_INCH = 25.4;

type Mark = (inches: number) => number;

/** @returns the members of the report that tell of the sticks */
export function layoutJson(sticks: readonly StickLayout[], model: Model, say: Say) {
  const inUnit: Mark = (inches) => figure(say.metric ? inches * MM_PER_INCH : inches);
  const mark: Mark = (inches) => inUnit(toMark(inches, say.metric));
  return {
    unit: say.metric ? "mm" : "in",
    step: say.metric ? 1 : 1 / 16,
    sticks: sticks.map((stick) => stickJson(stick, model, say, mark, inUnit)),
  };
}

function stickJson(stick: StickLayout, model: Model, say: Say, mark: Mark, exact: Mark) {
  const { timber, frame, length, leave, foot, head, joints, measured } = stick;
  return {
    id: timber.id,
    kind: timber.kind,
    path: timber.path,
    perfect: { width: exact(timber.width), depth: exact(timber.depth) },
    length: mark(length),
    cutLength: mark(timber.length),
    leave: { foot: mark(leave.foot), head: mark(leave.head) },
    faces: referenceWords(timber, model, say),
    turn: frame.turn,
    from: footWords(timber, foot, model, (id) => id, say),
    measured: measured.map(({ width, depth, at }) => ({
      width: exact(width),
      depth: exact(depth),
      ...(at === undefined ? {} : { at: exact(at) }),
    })),
    ends: { foot: endJson(foot, mark), head: endJson(head, mark) },
    joints: joints.map((marks) => jointJson(marks, mark, exact)),
  };
}

const range = ([low, high]: Range, mark: Mark): number[] => [mark(low), mark(high)];

const outlineJson = ({ along, across }: Outline, mark: Mark) => ({
  along: range(along, mark),
  across: range(across, mark),
});

function endJson({ joints, shoulder, crosses, tenons, leave, pare }: EndMarks, mark: Mark) {
  return {
    joints,
    shoulder,
    crosses: crosses.map(mark),
    tenons: tenons.map((tenon) => tenonJson(tenon, mark)),
    leave: mark(leave),
    ...(pare === undefined ? {} : { pare: mark(pare) }),
  };
}

const cornerJson = ({ along, across }: Corner, mark: Mark) => ({ along: mark(along), across: mark(across) });

const tenonJson = ({ cheeks, cheeksFrom, face, outline, over }: TenonMarks, mark: Mark) => ({
  cheeks: range(cheeks, mark),
  cheeksFrom,
  face,
  outline: outline.map((corner) => cornerJson(corner, mark)),
  ...(over > 0 ? { over: mark(over) } : {}),
});

function jointJson(marks: JointMarks, mark: Mark, exact: Mark) {
  const { joint, kind, other, role, scribed, cuts, holes, screws } = marks;
  return {
    joint,
    kind,
    other,
    role,
    scribed,
    cuts: cuts.map((cut) => cutJson(cut, mark)),
    pegs: holes.map((hole) => pegJson(hole, mark, exact)),
    screws: screws.map((screw) => screwJson(screw, mark, exact)),
  };
}

function cutJson(cut: StickCut & Cut, mark: Mark) {
  return {
    part: cut.part,
    face: cut.face,
    ...outlineJson(cut.opening, mark),
    ...(cut.corners ? { corners: cut.corners.map((corner) => cornerJson(corner, mark)) } : {}),
    ...(cut.bottom ? { bottom: outlineJson(cut.bottom, mark) } : {}),
    opens: mark(cut.from + (cut.from > 0 ? cut.over : 0)),
    depth: mark(cut.depth + cut.over),
    floor: mark(cut.floor),
    through: cut.through,
    over: mark(cut.over),
  };
}

const pegJson = ({ face, along, across, diameter, draw, bolt }: PegHole, mark: Mark, exact: Mark) => ({
  face,
  along: mark(along),
  across: mark(across),
  diameter: exact(diameter),
  draw: exact(draw),
  ...(bolt ? { bolt } : {}),
});

const screwJson = ({ face, along, across, diameter, length, angle }: ScrewMark, mark: Mark, exact: Mark) => ({
  face,
  along: mark(along),
  across: mark(across),
  diameter: exact(diameter),
  length: exact(length),
  angle: figure(angle),
});
