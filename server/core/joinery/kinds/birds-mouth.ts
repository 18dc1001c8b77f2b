/**
 * Bird's mouth: level seat and plumb cut by which a rafter sits on a plate. On the eave plate the plumb cut lies on the
 * plate's outside face, on a shed's high plate on the inside face.
 * Plane trigonometry: plumb cut = seat × tan θ, notch square to the rafter = seat × sin θ, plumb depth = d / cos θ.
 */
import { halfExtent } from "../../model/box.ts";
import { defaultSeat } from "../../model/roof-planes.ts";
import { along, dot, sub, type Vec3 } from "../../model/vec.ts";
import { because, inchRow } from "../cut-rows.ts";
import { seatedOn } from "../fit.ts";
import type { Joint, JointKind, JointPlace, Prism, ShapedJoint } from "../joint.ts";
import type { SeatSizes } from "../joint-sizes.ts";
import { sized } from "../proportions.ts";
import { rise } from "../seat.ts";

/**
 * Sizes of a bird's mouth from its level seat.
 * @param depth of the rafter square to its edges, inches; @param angle radians; @param seat level length, inches
 */
export function seatSizes(depth: number, angle: number, seat: number): Omit<SeatSizes, "level"> {
  const plumb = seat * Math.tan(angle);
  const notch = seat * Math.sin(angle);
  return {
    plumb,
    depth: notch,
    heightAbovePlate: depth / Math.cos(angle) - plumb,
    woodLeft: depth - notch,
    angle: (angle * 180) / Math.PI,
  };
}

function shape(place: JointPlace): ShapedJoint {
  const { of, into, spec, metric } = place;
  const { uphill, angle } = rise(of);
  const top = dot(into.origin, [0, 0, 1]) + halfExtent(into, [0, 0, 1]);
  const half = halfExtent(into, uphill);
  const level = sized(spec?.seat, defaultSeat(of.depth, angle, 2 * half, metric));
  // the underside meets the plate's top at `crossing`; the notch lies downhill of it
  const edge = along(of.origin, of.depthDir, -of.depth / 2);
  const slope = of.axis[2];
  const crossing = Math.abs(slope) > 1e-9 ? along(edge, of.axis, (top - edge[2]) / slope) : edge;
  const seat: SeatSizes = { level, ...seatSizes(of.depth, angle, level.value) };
  const notch: Prism = {
    base: [of.origin[0], crossing[1], top],
    u: uphill,
    v: [0, 0, 1],
    w: [uphill[1], -uphill[0], 0],
    outline: [
      [0, 0],
      [-level.value, 0],
      [-level.value, -seat.plumb],
    ],
    from: -of.width / 2,
    to: of.width / 2,
  };
  const base: Vec3 = Math.abs(uphill[1]) > 0.5 ? notch.base : [crossing[0], of.origin[1], top];
  return {
    sizes: { housing: { value: 0, from: "default" }, seat },
    solids: { tenons: [], mortises: [], housings: [], wedges: [], notches: [{ ...notch, base }], pegs: [] },
    extension: 0,
    shoulder: undefined,
  };
}

export const birdsMouth: JointKind = {
  kind: "birds-mouth",
  title: "Bird’s mouth",
  unfit: seatedOn,
  cut: "seat",
  shape,
  assembly: () => ({ direction: [0, 0, -1] }),
  cutSheet(joint: Joint) {
    const { seat } = joint.sizes;
    if (!seat) return [];
    const [notch] = joint.solids.notches;
    // the tail's plumb cut and the seat's are both upright, so their level distance is the overhang itself
    const plumbCut = notch && along(notch.base, notch.u, -seat.level.value);
    const overhang = notch && plumbCut ? Math.abs(dot(sub(joint.of.foot.point, plumbCut), notch.u)) : 0;
    return [
      inchRow(
        "joined",
        "level seat",
        seat.level.value,
        because(seat.level, "largest quarter inch (5 mm in metric) within a quarter of the depth"),
      ),
      inchRow("joined", "plumb (heel) cut", seat.plumb, "seat × tan of the slope"),
      inchRow("joined", "notch square to the rafter", seat.depth, "seat × sin of the slope"),
      inchRow(
        "joined",
        "height above the plate, plumb",
        seat.heightAbovePlate,
        "plumb depth of the rafter less the plumb cut",
      ),
      inchRow("joined", "wood left square to the rafter", seat.woodLeft, "depth less the notch"),
      { on: "joined", label: "slope", value: seat.angle, unit: "deg", how: "from the pitch" },
      inchRow("joined", "plumb cut to tail, level", overhang, "from the plumb cut to the tail’s plumb end"),
    ];
  },
};
