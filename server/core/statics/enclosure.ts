/** Which enclosure class the openings of a building's sides make it, with what it was found from. */
import type { DeadEnd } from "../loads/dead.ts";
import type { Passage } from "../loads/wind-cases.ts";
import { dominantWall, type Enclosure, enclosureOf, isOpenWall, type Side } from "../loads/wind-enclosed.ts";
import type { Model } from "../model/model.ts";
import type { LineLoad } from "./line-loads.ts";
import { sidingWeight, type WallFace, wallFaces } from "./wall-faces.ts";

export interface FrameEnclosure {
  readonly class: Enclosure;
  /** some side is open over at least 80 percent, or nothing stands there */
  readonly openSide: boolean;
  /** whether both sides are so open, for wind along the ridge (x) and across it (y) */
  readonly passage: Passage;
  readonly faces: readonly WallFace[];
  /** ft² of the roof, along its slope; it has no openings */
  readonly roof: number;
  /** ft² of openings and of the whole: of the side that is open by more than the rest, and of that rest */
  readonly dominant?: { readonly line: string; readonly own: Side; readonly others: Side };
}

/** Four sides make a building; a side where nothing stands is open all over. */
const SIDES = 4;

/** @returns `open` for every frame without siding or without a roof */
export function enclosureOfFrame(model: Model): FrameEnclosure {
  // most frames have no siding, and nothing about their sides is asked
  const faces = model.frame.siding.length > 0 ? wallFaces(model) : [];
  const slopes = model.roof?.slopes ?? [];
  if (slopes.length === 0 || faces.every((face) => !face.siding))
    return { class: "open", openSide: true, passage: { x: true, y: true }, faces, roof: 0 };
  const roof = slopes.reduce(
    (sum, s) => sum + ((s.deckTo - s.deckFrom) * (s.peakRun + s.eaveOverhang)) / Math.cos(s.angle) / 144,
    0,
  );
  const missing = Array.from({ length: SIDES - faces.length }, () => ({ gross: 1, openings: 1 }));
  const sides = [...faces, ...missing];
  const over = { gross: roof, openings: 0 };
  const dominant = dominantWall(sides, over);
  return {
    class: enclosureOf(sides, over),
    openSide: sides.some(isOpenWall),
    passage: { x: isPassage(faces, 0), y: isPassage(faces, 1) },
    faces,
    roof,
    ...(dominant && {
      dominant: {
        line: "line" in dominant.wall ? dominant.wall.line : "",
        own: dominant.wall,
        others: dominant.others,
      },
    }),
  };
}

/** Whether the pressures depend on what stands under the roof: all around open sides, or where wind passes between two. */
export function goesByFlow({ class: kind, passage }: FrameEnclosure): boolean {
  return kind === "open" || (kind === "partially-open" && (passage.x || passage.y));
}

/** Whether no closed side faces the wind along an axis, neither where it comes in nor where it goes out. */
function isPassage(faces: readonly WallFace[], axis: 0 | 1): boolean {
  return faces.every((face) => Math.abs(face.outward[axis]) < 0.5 || isOpenWall(face));
}

/** Weight of the siding on the timbers that carry it. */
export function sideLoads({ faces }: FrameEnclosure, end: DeadEnd): readonly LineLoad[] {
  return sidingWeight(faces, end);
}
