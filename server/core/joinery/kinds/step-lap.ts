/**
 * Step-lap seat: the rafter stands in a housing across the upper outer arris of its plate and pushes against a step at the
 * housing's outer end; its tail laps level over the rim that is left there and runs on to the overhang. Other than over a
 * bird's mouth, the plate's own wood takes the thrust. On a shed's high plate the rim lies at the inside face.
 * Sizes: `step.ts`. Prisms lie in the plane of the rafter: level uphill from the crossing, and plumb.
 */
import { halfExtent } from "../../model/box.ts";
import { along, dot, type Vec2, type Vec3 } from "../../model/vec.ts";
import { inches } from "../../quantity/length.ts";
import { because, inchRow } from "../cut-rows.ts";
import { seatedOn } from "../fit.ts";
import type { Joint, JointKind, JointPlace, Prism, ShapedJoint } from "../joint.ts";
import { rise } from "../seat.ts";
import { type Step, stepOf } from "../step.ts";
import { seatSizes } from "./birds-mouth.ts";

const UP: Vec3 = [0, 0, 1];

interface Place {
  readonly uphill: Vec3;
  readonly angle: number;
  /** where the rafter's underside meets the plate's top, midway across the rafter */
  readonly crossing: Vec3;
  /** level from there down to the plate's outside face, and across the plate, in */
  readonly seat: number;
  readonly plateWidth: number;
}

function placed({ of, into }: JointPlace): Place {
  const { uphill, angle } = rise(of);
  const top = dot(into.origin, UP) + halfExtent(into, UP);
  const edge = along(of.origin, of.depthDir, -of.depth / 2);
  const crossing = Math.abs(of.axis[2]) > 1e-9 ? along(edge, of.axis, (top - edge[2]) / of.axis[2]) : edge;
  const half = halfExtent(into, uphill);
  return {
    uphill,
    angle,
    crossing: [crossing[0], crossing[1], top],
    seat: Math.max(0, dot(crossing, uphill) - (dot(into.origin, uphill) - half)),
    plateWidth: 2 * half,
  };
}

/** Outline of the housing (uphill, up), from the crossing. */
function housingOf(step: Step, angle: number): Vec2[] {
  const { form, housed, depth } = step;
  return form === "square"
    ? [
        [0, 0],
        [-housed, 0],
        [-housed * Math.cos(angle) ** 2, -depth],
      ]
    : [
        [0, 0],
        [-housed, 0],
        [-housed, -depth],
        [-depth / Math.tan(angle), -depth],
      ];
}

/** Outlines of what the rafter loses: over the rim, and under a level sole. */
function notchesOf(step: Step, seat: number, angle: number): Vec2[][] {
  const { form, housed, depth, notch } = step;
  const deep = (run: number): number => -run * Math.tan(angle);
  if (form === "square")
    return [
      [
        [-housed, 0],
        [-seat, 0],
        [-seat, deep(seat)],
        [-housed * Math.cos(angle) ** 2, -depth],
      ],
    ];
  const rim: Vec2[] = [
    [-housed, 0],
    [-seat, 0],
    [-seat, deep(seat)],
    [-housed, deep(housed)],
  ];
  const sole: Vec2[] = [
    [-depth / Math.tan(angle), -depth],
    [-housed, -depth],
    [-housed, deep(housed)],
  ];
  return notch > 1e-6 ? [rim, sole] : [rim];
}

function shape(place: JointPlace): ShapedJoint {
  const { of, spec, metric } = place;
  const { uphill, angle, crossing, seat, plateWidth } = placed(place);
  const form = spec?.form === "square" ? "square" : "plumb";
  const given = spec?.housing;
  const step = stepOf({
    seat,
    angle,
    form,
    depth: given && inches(given),
    plateWidth,
    metric,
  });
  const prism = (outline: readonly Vec2[]): Prism => ({
    base: crossing,
    u: uphill,
    v: UP,
    w: [uphill[1], -uphill[0], 0],
    outline,
    from: -of.width / 2,
    to: of.width / 2,
  });
  const { depth, ...sizes } = step;
  const cut = depth > 1e-6;
  return {
    sizes: {
      housing: { value: depth, from: given === undefined ? "default" : "file" },
      seat: {
        level: { value: seat, from: spec?.seat === undefined ? "default" : "file" },
        ...seatSizes(of.depth, angle, seat),
      },
      step: sizes,
    },
    solids: {
      tenons: [],
      mortises: [],
      housings: cut ? [prism(housingOf(step, angle))] : [],
      wedges: [],
      notches: cut ? notchesOf(step, seat, angle).map(prism) : [],
      pegs: [],
    },
    extension: 0,
    shoulder: undefined,
  };
}

export const stepLap: JointKind = {
  kind: "step-lap",
  title: "Step-lap seat",
  unfit: seatedOn,
  cut: "seat",
  shape,
  assembly: () => ({ direction: [0, 0, -1] }),
  cutSheet({ sizes, of }: Joint) {
    const { seat, step, housing } = sizes;
    if (!seat || !step) return [];
    const plumb = step.form === "plumb";
    return [
      inchRow(
        "receiving",
        "step, plumb below the plate’s top",
        housing.value,
        because(
          housing,
          plumb
            ? "half of what the rafter reaches into the plate there"
            : "so that the housing runs as far in as the tail laps over",
        ),
      ),
      inchRow(
        "receiving",
        "plate’s outside face to the step, level",
        step.lap,
        plumb ? "half of the level run over the plate" : "level run over the plate less the housing",
      ),
      inchRow(
        "receiving",
        "step to where the rafter’s underside meets the plate’s top, level",
        step.housed,
        plumb ? "half of the level run over the plate" : "depth of the step ÷ (sin × cos of the slope)",
      ),
      inchRow(
        "receiving",
        plumb ? "level sole before the step" : "sole before the step, on the slant",
        step.sole,
        plumb ? "that run less depth of the step ÷ tan of the slope" : "that run × cos of the slope",
      ),
      inchRow("receiving", "width of the housing", of.width, "as wide as the rafter"),
      inchRow(
        "joined",
        plumb ? "step, plumb" : "step, square to the rafter",
        step.abutment,
        plumb ? "as deep as the step in the plate" : "level run of the housing × sin of the slope",
      ),
      inchRow("joined", "level lap over the plate’s rim", step.lap, "as on the plate"),
      inchRow("joined", "plumb (heel) cut", seat.plumb, "level run over the plate × tan of the slope"),
      inchRow(
        "joined",
        "wood left over the heel cut, square to the rafter",
        seat.woodLeft,
        "depth less level run over the plate × sin of the slope",
      ),
      inchRow(
        "joined",
        "height above the plate, plumb",
        seat.heightAbovePlate,
        "plumb depth of the rafter less the plumb cut",
      ),
      { on: "joined", label: "slope", value: seat.angle, unit: "deg", how: "from the pitch" },
    ];
  },
};
