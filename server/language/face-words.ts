/** What a carpenter calls the faces and the ends of a stick: by where they look in the frame. */
import type { Say } from "../core/checks/say.ts";
import { type GridLines, gridLines } from "../core/model/grid.ts";
import type { Model, Timber } from "../core/model/model.ts";
import type { Vec3 } from "../core/model/vec.ts";
import type { EndMarks } from "../core/shop/layout/ends.ts";
import { type ReferenceFrame, referenceFrame, stands } from "../core/shop/layout/faces.ts";

/** Steeper than this, the upper face of a sloping timber is still its top. */
const UP = 0.35;
/** Less steep than this, a side or a timber is level. */
const LEVEL = 0.02;

/** `looks out of wall A`: outward from the outermost line that a timber stands on, else `toward` the outermost line there. */
function levelWords(normal: Vec3, timber: Timber, grid: GridLines, say: Say): string {
  const alongWalls = Math.abs(normal[0]) >= Math.abs(normal[1]);
  const lines = alongWalls ? grid.bents : grid.walls;
  const own = alongWalls ? timber.bents : timber.walls;
  const line = (alongWalls ? normal[0] : normal[1]) < 0 ? lines[0] : lines.at(-1);
  const id = line?.id ?? "";
  const out = own.length === 1 && own[0] === id;
  if (alongWalls)
    return say.text(out ? "looks out of bent {bent}" : "looks toward bent {bent}", { bent: id });
  return say.text(out ? "looks out of wall {wall}" : "looks toward wall {wall}", { wall: id });
}

/** Where a reference face looks. */
function lookWords(i: 0 | 1, frame: ReferenceFrame, timber: Timber, grid: GridLines, say: Say): string {
  const normal = frame.normals[i];
  if (i === 1 && timber.kind === "brace")
    return say.text(timber.curve ? "is the long edge, before it is hollowed" : "is the long edge");
  if (i === 1 && normal[2] > UP) return say.text("is the top");
  if (i === 0 && normal[2] < -LEVEL) return say.text("is the lower side, toward the eave");
  return levelWords(normal, timber, grid, say);
}

/** `face 1 looks out of wall A, face 2 is the top`. */
export function referenceWords(timber: Timber, model: Model, say: Say): string {
  const frame = referenceFrame(timber);
  const grid = gridLines(model.frame);
  return say.text("face 1 {first}, face 2 {second}", {
    first: lookWords(0, frame, timber, grid, say),
    second: lookWords(1, frame, timber, grid, say),
  });
}

/**
 * The end from which a stick is laid out.
 * @param name how the timber at a brace's foot is called, by its id
 */
export function footWords(
  timber: Timber,
  foot: EndMarks,
  model: Model,
  name: (id: string) => string,
  say: Say,
): string {
  const grid = gridLines(model.frame);
  const [x, y, z] = timber.axis;
  if (timber.kind === "brace") {
    const [joint] = foot.joints;
    return joint ? say.text("the end at {timber}", { timber: name(joint.into) }) : say.text("the foot");
  }
  if (stands(timber)) return say.text("the foot");
  if (Math.abs(z) > LEVEL) return say.text(z > 0 ? "the lower end" : "the upper end");
  if (Math.abs(x) >= Math.abs(y)) {
    const line = x > 0 ? grid.bents[0] : grid.bents.at(-1);
    return say.text("the end toward bent {bent}", { bent: line?.id ?? "" });
  }
  const line = y > 0 ? grid.walls[0] : grid.walls.at(-1);
  return say.text("the end toward wall {wall}", { wall: line?.id ?? "" });
}
