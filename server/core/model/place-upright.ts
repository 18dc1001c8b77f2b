/** Posts on grid places, king-posts under the ridge. */
import type { GridPlace, Member, PierEntry, Ref } from "../frame/frame.ts";
import { inches } from "../quantity/length.ts";
import { baseOf, boxTimber, type Interval } from "./box.ts";
import { placeLines, referenceSign, spanAcross } from "./grid.ts";
import type { EndPlane, Timber } from "./model.ts";
import type { FaceAt, Placer } from "./placer.ts";
import { scale } from "./vec.ts";

/** Stand-off of an anchor when the file names none: an exposed post is held about an inch above the concrete. */
const DEFAULT_STAND_OFF = 1;

/** The pier entry under a member at a place. */
function pierUnder(p: Placer, member: Member, place: GridPlace): PierEntry | undefined {
  const { name } = member;
  const named = p.frame.piers.filter(
    (e) => e.under?.text === name || e.under?.text === `${name}@${place.text}`,
  );
  const ofKind = p.frame.piers.filter((e) => e.under && p.entriesNamed(e.under.text).includes(member));
  const under = [...named, ...ofKind];
  return under.find((e) => e.at?.some((a) => a.text === place.text)) ?? under.find((e) => e.at === undefined);
}

/** How far the timber stands above the pier's top. */
export function standOffOf(pier: PierEntry): number {
  const given = pier.anchor?.standOff;
  return given === undefined ? DEFAULT_STAND_OFF : inches(given);
}

/** Level of the foot: the pier's top plus its stand-off, a level, or the top of a timber. */
function footLevel(
  p: Placer,
  member: Member,
  place: GridPlace,
  x: Interval,
  y: Interval,
): FaceAt | undefined {
  const pier = pierUnder(p, member, place);
  const from = member.from && p.meaning(member.from);
  if (member.from && !from) return undefined;
  const lift = pier ? standOffOf(pier) : 0;
  const top = p.height(pier?.top);
  if (from && (from.sort === "level" || from.sort === "length")) {
    const height = from.sort === "level" ? from.z : from.length;
    if (pier && top !== undefined && Math.abs(top - height) > 1 / 16)
      p.report({
        kind: "derived-differs",
        path: `${pier.path}/top`,
        what: "pier-top",
        typed: top,
        derived: height,
      });
    return level(height + lift);
  }
  if (from) return timberFace(p, member, member.from as Ref, x, y, "top");
  if (top !== undefined) return level(top + lift);
  return p.missing(member.path, member.name, ["from"]);
}

/** The near face of a timber, over or under a plan position. */
function timberFace(
  p: Placer,
  member: Member,
  ref: Ref,
  x: Interval,
  y: Interval,
  side: "underside" | "top",
): FaceAt | undefined {
  const sticks = p.sticksNamed(ref);
  const found = p.faceAt(sticks, x, y, side);
  return found ?? (sticks.length > 0 ? p.missing(ref.path, member.name, [`${ref.text} here`]) : undefined);
}

const level = (z: number): FaceAt => ({ z, normal: undefined });

function headLevel(p: Placer, member: Member, x: Interval, y: Interval): FaceAt | undefined {
  if (!member.to) return p.missing(member.path, member.name, ["to"]);
  const to = p.meaning(member.to);
  if (!to) return undefined;
  if (to.sort === "level") return level(to.z);
  if (to.sort === "length") return level(to.length);
  return timberFace(p, member, member.to, x, y, "underside");
}

/** The stick with its ends cut to the slopes that they stand against. */
function withSlopes(stick: Timber, foot: FaceAt, head: FaceAt): Timber {
  const end = (plane: EndPlane, { normal }: FaceAt): EndPlane =>
    normal ? { point: plane.point, normal: scale(normal, -1) } : plane;
  return { ...stick, foot: end(stick.foot, foot), head: end(stick.head, head) };
}

/** Posts and upright struts: one at each place of `at`. */
export function placePosts(p: Placer, member: Member): Timber[] {
  const timberClass = p.classOf(member.timber, member.kind);
  const section = p.section(member.section, member.turned, timberClass);
  if (!member.at) return p.missing(member.path, member.name, ["at"]) ?? [];
  if (!section) return [];
  return member.at.flatMap((place) => {
    const lines = placeLines(p.grid, place);
    if (!lines) {
      p.unknownPlace(place);
      return [];
    }
    const x: Interval = lines.bent
      ? spanAcross(lines.bent, section.width)
      : [(lines.x ?? 0) - section.width / 2, (lines.x ?? 0) + section.width / 2];
    const y = spanAcross(lines.wall, section.depth);
    const foot = footLevel(p, member, place, x, y);
    const head = headLevel(p, member, x, y);
    if (foot === undefined || head === undefined) return [];
    const stick = boxTimber(
      baseOf(member, timberClass),
      {
        id: `${member.name}@${place.text.replace(/\s+/g, "-")}`,
        rule: "post-on-grid",
        reference: { width: referenceSign(lines.bent), depth: referenceSign(lines.wall) },
        walls: [lines.wall.id],
        bents: lines.bent ? [lines.bent.id] : [],
      },
      "up",
      x,
      y,
      [foot.z, head.z],
    );
    return [withSlopes(stick, foot, head)];
  });
}

/** King-posts: one in each bent, centered under the ridge (midway between the outer walls). */
export function placeKingPosts(p: Placer, member: Member): Timber[] {
  const timberClass = p.classOf(member.timber, member.kind);
  const section = p.section(member.section, member.turned, timberClass);
  const bents = member.bents;
  if (!bents) return p.missing(member.path, member.name, ["bents"]) ?? [];
  if (!section) return [];
  const first = p.grid.walls[0];
  const last = p.grid.walls.at(-1);
  const middle = p.roof()?.ridgeY ?? (first && last ? (first.at + last.at) / 2 : 0);
  const y: Interval = [middle - section.depth / 2, middle + section.depth / 2];
  return bents.flatMap((ref) => {
    const line = p.line(ref, "bent");
    if (!line) return [];
    const x = spanAcross(line, section.width);
    if (!member.from) return p.missing(member.path, member.name, ["from"]) ?? [];
    const from = p.meaning(member.from);
    if (!from) return [];
    const foot =
      from.sort === "level"
        ? level(from.z)
        : from.sort === "length"
          ? level(from.length)
          : timberFace(p, member, member.from, x, y, "top");
    const head = headLevel(p, member, x, y);
    if (foot === undefined || head === undefined) return [];
    return [
      withSlopes(
        boxTimber(
          baseOf(member, timberClass),
          {
            id: `${member.name}@${line.id}`,
            rule: "king-post-under-ridge",
            reference: { width: referenceSign(line), depth: -1 },
            walls: [],
            bents: [line.id],
          },
          "up",
          x,
          y,
          [foot.z, head.z],
        ),
        foot,
        head,
      ),
    ];
  });
}
