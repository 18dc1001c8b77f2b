/** Outside figures about joints that hold by their wood in joints.yaml; its sources are named at the head of that file. */
import { describe } from "vitest";
import { dovetailFit } from "../../server/core/fasteners/dovetail.ts";
import { relish } from "../../server/core/fasteners/tear-out.ts";
import { bearingAtAngle, housingBearing, strutSeat } from "../../server/core/fasteners/wood-bearing.ts";
import { type Case, casesOf, compareCases } from "./cases.ts";
import { TOPICS } from "./joints-topics.ts";

type Given = Case["given"];
type Figures = Case["expect"];

function tenonRelish(g: Given): Figures {
  const got = relish(g.end_distance, g.tenon, g.Fv, g.D);
  return {
    planes_area: got.area,
    V_uniform: got.even,
    V_two_thirds: got.parabolic,
    row_tear_out_NDS_E: got.rowTearOut.value,
    end_in_D: g.end_distance / g.D,
  };
}

function dovetail(g: Given): Figures {
  const got = dovetailFit({
    tail: g.tail_width,
    length: g.length,
    slope: g.slope,
    slopedSides: g.sloped_sides,
    shrinkage: g.shrinkage_across,
  });
  return { neck: got.neck, angle_deg: got.angle, draw_out: got.drawOut, wedge_takes_up: got.wedgeTakesUp };
}

function notch(g: Given): Figures {
  const got = strutSeat(g.F, g.strut_area, g.angle_deg, [{ Fc: 1000, FcPerp: 500 }]);
  return { f1: got.nose.stress, f2: got.heel.stress };
}

function housing(g: Given): Figures {
  const got = housingBearing(g.R, g.joist_width, g.housing_depth, g.Fc_perp);
  return { capacity: got.capacity, use: got.ratio, depth_needed: got.depthNeeded };
}

/** By what a case's id begins with; the longest that fits. */
const FIGURES: Record<string, (given: Given) => Figures> = {
  "relish-": tenonRelish,
  "dovetail-": dovetail,
  "shoulder-": (g) => ({ F: bearingAtAngle({ Fc: g.Fc, FcPerp: g.Fc_perp }, g.angle_deg).value }),
  "notch-": notch,
  "housing-": housing,
};

describe("relish, dovetails and seats, case by case", () =>
  compareCases(casesOf("joints", ...TOPICS.wood), FIGURES));
