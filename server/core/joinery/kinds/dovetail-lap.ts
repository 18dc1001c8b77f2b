/**
 * Dovetail lap: the end of a timber is halved, and the half that is left, widening to its tip, is let into the side of
 * another: sills and beams from above, collar ties from the side. It ties, since the flare cannot draw through the neck.
 */
import { halfExtent } from "../../model/box.ts";
import { cross, dot, scale, unit, type Vec2 } from "../../model/vec.ts";
import { opensOnTop } from "../assembly.ts";
import { because, inchRow, pegRows, socketWidthRows } from "../cut-rows.ts";
import { dryingRows } from "../dovetail-drying.ts";
import { cheekPrism, facePoint } from "../face.ts";
import { endInSide } from "../fit.ts";
import type { Joint, JointKind, JointPlace, ReceivingFace, ShapedJoint } from "../joint.ts";
import type { DovetailSizes } from "../joint-sizes.ts";
import { BORED_TOGETHER, pegSizes, sized, toStep, usual } from "../proportions.ts";

/** Flare of each side: one in six of the length, but the neck keeps three fifths of the width (common practice, no source). */
const FLARE = 1 / 6;
const MOST_FLARE = 1 / 5;

/** The side that the joined timber comes from: above, else its own reference face, else the higher edge along `across`. */
function openSide(face: ReceivingFace, of: JointPlace["of"]): 1 | -1 {
  if (opensOnTop(face)) return face.across[2] > 0 ? 1 : -1;
  const looks =
    of.reference.width * dot(of.widthDir, face.across) + of.reference.depth * dot(of.depthDir, face.across);
  return looks < -0.5 ? -1 : 1;
}

function shape(place: JointPlace): ShapedJoint {
  const { face, spec, of, metric } = place;
  const given = spec?.dovetail;
  const side = openSide(face, of);
  const own = halfExtent(of, face.across);
  const low = Math.max(-own, face.edges[0]);
  const high = Math.min(own, face.edges[1]);
  const outer = side * own;
  const depth = sized(given?.depth, Math.abs(outer - (low + high) / 2));
  const floor = outer - side * depth.value;
  const open = side > 0 ? face.edges[1] : face.edges[0];
  // how the timber leans as it goes in, and what its section covers along the face
  const going = place.end === "head" ? 1 : -1;
  const slant = Math.max(0.1, Math.abs(dot(of.axis, face.inward)));
  const lean = (going * dot(of.axis, face.grain)) / slant;
  const tip = (2 * halfExtent(of, unit(cross(face.across, of.axis)))) / slant;
  const length = sized(given?.length, face.thickness);
  const L = length.value;
  const flare = sized(given?.flare, toStep(Math.min(L * FLARE, tip * MOST_FLARE), metric));
  const neck = Math.max(0, tip - 2 * flare.value);
  const outline: Vec2[] = [
    [0, -neck / 2],
    [L, lean * L - tip / 2],
    [L, lean * L + tip / 2],
    [0, neck / 2],
  ];
  const between = (a: number, b: number): [number, number] => [Math.min(a, b), Math.max(a, b)];
  const dovetail: DovetailSizes = { length, depth, flare, neck, tip };
  const pegs = pegSizes(
    place,
    spec?.pegs,
    { count: 1, diameter: usual(metric, 0.75, 19), draw: BORED_TOGETHER },
    { length: L, width: neck, housing: 0 },
  );
  const setback = L / 2;
  return {
    sizes: {
      housing: { value: 0, from: "default" },
      dovetail,
      ...(pegs ? { pegs: { ...pegs, setbacks: [setback] } } : {}),
    },
    solids: {
      tenons: [cheekPrism(face, outline, ...between(floor, outer))],
      mortises: [cheekPrism(face, outline, ...between(floor, open))],
      housings: [],
      wedges: [],
      notches: [],
      pegs: pegs
        ? pegs.alongWidth.map((a) => ({
            from: facePoint(face, setback, lean * setback + a, side > 0 ? face.edges[1] : face.edges[0]),
            to: facePoint(face, setback, lean * setback + a, side > 0 ? face.edges[0] : face.edges[1]),
            diameter: pegs.diameter.value,
          }))
        : [],
    },
    extension: L / slant,
    shoulder: { point: facePoint(face, 0, 0, 0), normal: face.inward },
  };
}

export const dovetailLap: JointKind = {
  kind: "dovetail-lap",
  title: "Dovetail lap",
  unfit: endInSide,
  cut: "lap",
  shape,
  assembly: ({ of, face }) => ({ direction: scale(face.across, -openSide(face, of)) }),
  cutSheet(joint: Joint) {
    const { dovetail, pegs } = joint.sizes;
    const [socket] = joint.solids.mortises;
    if (!dovetail || !socket) return [];
    return [
      inchRow(
        "joined",
        "dovetail length",
        dovetail.length.value,
        because(dovetail.length, "to the far face of the other timber"),
      ),
      inchRow(
        "joined",
        "dovetail thickness",
        dovetail.depth.value,
        because(dovetail.depth, "half of what both timbers have in common"),
      ),
      inchRow("joined", "width at the shoulder", dovetail.neck, "full width less the flare on both sides"),
      inchRow("joined", "width at the tip", dovetail.tip, "the timber’s full width, along the other’s face"),
      inchRow(
        "joined",
        "flare on each side",
        dovetail.flare.value,
        because(dovetail.flare, "one in six of the length, at most a fifth of the width (common practice)"),
      ),
      inchRow("receiving", "socket length", dovetail.length.value, "as the dovetail"),
      ...socketWidthRows(dovetail),
      inchRow(
        "receiving",
        "socket depth",
        socket.to - socket.from,
        "down to half of what both have in common",
      ),
      ...dryingRows(joint),
      ...pegRows(pegs, 0).filter((r) => r.on === "peg"),
    ];
  },
};
