import { groupBy } from "../../collect.ts";
import type { Joint, Prism } from "../../joinery/joint.ts";
import { isLap, prismReach } from "../../joinery/near-joints.ts";
import type { Timber } from "../../model/model.ts";
import { dot, type Vec3 } from "../../model/vec.ts";
import { cutsInto, NetSections } from "../../statics/net-section.ts";
import { defineCheck } from "../check.ts";
import { square } from "../formula-words.ts";
import { sectionPath } from "../members/member-path.ts";
import { usualHousing } from "./housing-deep.ts";
import { judgedJoints } from "./judged.ts";
import { placeWords, tooLarge } from "./near-joints.ts";

interface Data {
  readonly timber: string;
  readonly joints: readonly string[];
  readonly left: number;
  /** what is left and the whole section, in² */
  readonly area: number;
  readonly whole: number;
  readonly at: number;
}

/** Share of the whole section that joints of several timbers at one place leave. */
const USUAL = 1 / 2;
const LEAST = 1 / 4;

/** Joints that are looked at together; a longer row is looked at in parts that overlap by half. */
const MOST_ABREAST = 60;
/** A row that has more parts is too close to be built, which has a finding of its own. */
const MOST_PARTS = 40;

/** Joints that stand abreast along a timber, place by place: only these can cut one section together. */
function abreast(timber: Timber, joints: readonly Joint[]): Joint[][] {
  const along = joints
    .map((joint) => {
      const at = dot(joint.meeting.point, timber.axis);
      const half = Math.max(joint.of.width, joint.of.depth);
      return { joint, from: at - half, to: at + half };
    })
    .sort((a, b) => a.from - b.from);
  const places: Joint[][] = [];
  let end = Number.NEGATIVE_INFINITY;
  for (const { joint, from, to } of along) {
    if (from < end) places.at(-1)?.push(joint);
    else places.push([joint]);
    end = Math.max(end, to);
  }
  return places.flatMap(partsOf).filter(({ length }) => length > 1);
}

function partsOf(row: Joint[]): Joint[][] {
  const parts: Joint[][] = [];
  for (let from = 0; parts.length < MOST_PARTS; from += MOST_ABREAST / 2) {
    parts.push(row.slice(from, from + MOST_ABREAST));
    if (from + MOST_ABREAST >= row.length) break;
  }
  return parts;
}

/** Boxes count so much wider all round, in: thin strips between cuts count with the cuts. */
const STRIPS = 0.01;

/** A cut with the part of the section, in², that the box around it takes, and from where to where along the timber. */
interface Taken {
  readonly from: number;
  readonly to: number;
  readonly area: number;
}

function takenBy(timber: Timber, prism: Prism): Taken {
  const [from, to] = prismReach(prism, timber.axis);
  const inside = (way: Vec3, side: number): number => {
    const middle = dot(timber.origin, way);
    const [low, high] = prismReach(prism, way);
    return Math.min(high - middle + STRIPS, side / 2) - Math.max(low - middle - STRIPS, -side / 2);
  };
  const deep = Math.max(0, inside(timber.depthDir, timber.depth));
  return { from, to, area: deep * Math.max(0, inside(timber.widthDir, timber.width)) };
}

/**
 * Whether the joints may leave too little anywhere: the boxes around all that is cut at one place take more than half. Most
 * places are far from it, and what is left of their sections need not be worked out.
 */
function mayLeaveLittle(timber: Timber, joints: readonly Joint[]): boolean {
  if (timber.curve) return true;
  const cuts = joints.flatMap(({ solids: { mortises, housings } }) =>
    [...mortises, ...housings].flatMap((prism) => (prism.endCut ? [] : [takenBy(timber, prism)])),
  );
  const most = (1 - USUAL) * timber.width * timber.depth;
  // most is taken where some cut begins
  return cuts.some(({ from: x }) => {
    let sum = 0;
    for (const { from, to, area } of cuts) if (from <= x && x <= to) sum += area;
    return sum >= most;
  });
}

/** The place at which two joints or more leave least of a timber. */
function worstPlace(timber: Timber, joints: readonly Joint[]): Data | undefined {
  if (!mayLeaveLittle(timber, joints)) return undefined;
  const sections = new NetSections(timber, cutsInto(timber, joints, []));
  let worst: Data | undefined;
  for (const { x, section } of sections.places()) {
    const left = section.A / sections.whole.A;
    if (left >= (worst?.left ?? USUAL)) continue;
    // the hollow of a curved brace is a cut too, and of no joint
    const names = sections.jointsAt(x);
    if (names.length > 1)
      worst = { timber: timber.id, joints: names, left, area: section.A, whole: sections.whole.A, at: x };
  }
  return worst;
}

export const sectionCutAway = defineCheck<"model", Data>({
  meta: {
    id: "section-cut-away",
    title: "Joints that leave too little of a timber",
    level: "warning",
    area: "joinery",
    source: {
      text: "common practice, no source: joints at one place leave half the timber; what is left is also checked for its forces",
      status: "common-practice",
    },
    explanation: {
      what: "Mortises and housings of several joints, from two sides of a timber or more, lie at one place and leave less than half of its section there; an error below a quarter. Laps and scarfs take half by design and do not count.",
      why: "The timber breaks there while it is handled or raised, shrinks and splits between the mortises, and has little stiffness at that place. The forces of the finished frame are checked on the section that is left in any case.",
      formula:
        "area left ÷ whole area ≥ 1/2 at the worst place along the timber, exact for square cuts; a cut that lies askew counts with the rectangle around it",
      remedy:
        "Stagger the joints along the timber, make their housings and tenons smaller, or take a larger timber.",
    },
  },
  input: "model",
  *find(model) {
    // what is too large by itself, or wants another joint's wood, has a finding of its own
    const spoken = new Set(model.nearJoints.flatMap(({ crossing, joints }) => (crossing ? joints : [])));
    const receiving = groupBy(
      judgedJoints(model).filter(
        (j) =>
          !isLap(j.kind) &&
          !tooLarge(j) &&
          !spoken.has(j) &&
          j.sizes.housing.value <= usualHousing(j) + 1 / 32,
      ),
      (j) => j.into,
    );
    for (const [timber, joints] of receiving) {
      if (joints.length < 2) continue;
      const worst = abreast(timber, joints)
        .flatMap((place) => worstPlace(timber, place) ?? [])
        .sort((p, q) => p.left - q.left)[0];
      if (!worst) continue;
      const path = sectionPath(model, timber);
      yield {
        path,
        ...(path === timber.path ? { onKey: true as const } : {}),
        place: timber.id,
        ...(worst.left < LEAST ? { level: "error" as const } : {}),
        data: worst,
        value: worst.left,
        limit: worst.left < LEAST ? LEAST : USUAL,
        unit: "ratio",
        severity: 1 - worst.left,
      };
    }
  },
  words: (d, say) =>
    say.text(
      "{joints} leave {left} of the section of {timber}, {at} along it; half of it is the usual least. It breaks there while it is raised, and splits between the cuts. Stagger the joints along it, cut them smaller, or take a larger timber.",
      {
        joints: say.list(d.joints),
        left: say.percent(d.left),
        timber: d.timber,
        at: placeWords(d.at, say),
      },
    ),
  worked: (d, say) =>
    say.text("{area} ÷ {whole} = {left} < {limit}", {
      area: square(d.area, say),
      whole: square(d.whole, say),
      left: say.number(d.left, 3),
      limit: d.left < LEAST ? "1/4" : "1/2",
    }),
});
