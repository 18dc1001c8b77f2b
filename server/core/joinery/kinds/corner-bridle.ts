/**
 * Corner bridle: a tongue of a third of the timber in a fork, where two timbers meet at their ends. The fork is open at
 * the end of the timber that receives, so that the tongue keeps its full width; its pegs stand in double shear as in a
 * tenon.
 */
import { halfExtent } from "../../model/box.ts";
import { squareIn } from "../assembly.ts";
import { because, inchRow, pegRows } from "../cut-rows.ts";
import { cheekPrism, facePoint, pegsThrough, rectangle } from "../face.ts";
import { endsMeet, squareInSide } from "../fit.ts";
import type { Joint, JointKind, JointPlace, ShapedJoint } from "../joint.ts";
import type { TenonSizes } from "../joint-sizes.ts";
import { downToStep, pegDiameter, pegSizes, sized } from "../proportions.ts";
import { centeredSetIn, cheeks } from "./mortise-and-tenon.ts";

/** Tongue: a third of the timber, down to the quarter inch, so that no wall of the fork is thinner (common practice, no source). */
const TONGUE = 1 / 3;

function shape(place: JointPlace): ShapedJoint {
  const { face, spec, of, metric } = place;
  const half = halfExtent(of, face.grain);
  const own = 2 * halfExtent(of, face.across);
  const breadth = face.edges[1] - face.edges[0];
  const thickness = sized(spec?.tenon?.thickness, downToStep(TONGUE * Math.min(own, breadth), metric, 1 / 4));
  const setIn = sized(spec?.tenon?.setIn, centeredSetIn(face, thickness.value));
  const { low, walls } = cheeks(face, thickness.value, setIn.value);
  const w: [number, number] = [low, low + thickness.value];
  const long = face.thickness;
  const tenon: TenonSizes = {
    thickness,
    width: { value: 2 * half, from: "default" },
    length: { value: long, from: "default" },
    setIn,
    through: true,
    walls,
    room: long,
    mortiseDepth: long,
    center: [0, low + thickness.value / 2],
    relishCut: 0,
  };
  const pegs = pegSizes(
    place,
    spec?.pegs,
    { count: 1, diameter: pegDiameter(Math.min(own, 2 * half), metric) },
    { length: long, width: 2 * half, housing: 0 },
  );
  // the fork is cut from the nearer end of the timber, past the tongue
  const open: [number, number] =
    -face.ends[0] <= face.ends[1]
      ? [Math.min(face.ends[0], -half), half]
      : [-half, Math.max(face.ends[1], half)];
  return {
    sizes: { housing: { value: 0, from: "default" }, tenon, ...(pegs ? { pegs } : {}) },
    solids: {
      tenons: [cheekPrism(face, rectangle([0, long], [-half, half]), ...w)],
      mortises: [cheekPrism(face, rectangle([0, long], open), ...w)],
      housings: [],
      wedges: [],
      notches: [],
      pegs: pegsThrough(face, pegs, () => 0),
    },
    extension: long,
    shoulder: { point: facePoint(face, 0, 0, 0), normal: face.inward },
  };
}

export const cornerBridle: JointKind = {
  kind: "corner-bridle",
  title: "Corner bridle",
  unfit: (meet) => endsMeet(meet) ?? squareInSide(meet),
  shape,
  assembly: squareIn,
  cutSheet(joint: Joint) {
    const { tenon, pegs } = joint.sizes;
    if (!tenon) return [];
    const [fork] = joint.solids.mortises;
    const along = fork?.outline.map(([, v]) => v) ?? [];
    const { thickness, setIn } = tenon;
    return [
      inchRow(
        "joined",
        "tongue thickness",
        thickness.value,
        because(thickness, "a third of the timber, to the quarter inch (common practice)"),
      ),
      inchRow("joined", "tongue width", tenon.width.value, "full width of the timber"),
      inchRow("joined", "tongue length", tenon.length.value, "to the far face of the other timber"),
      inchRow("receiving", "fork width", thickness.value, "the tongue’s thickness"),
      inchRow(
        "receiving",
        "fork depth from the end",
        Math.max(...along) - Math.min(...along),
        "past the tongue, open at the end",
      ),
      inchRow(
        "receiving",
        "reference face to near cheek",
        setIn.value,
        because(setIn, "the tongue in the middle of its timber"),
      ),
      inchRow(
        "receiving",
        "reference face to far cheek",
        setIn.value + thickness.value,
        "set-in and thickness",
      ),
      ...pegRows(pegs, 0, "tongue edge"),
    ];
  },
};
