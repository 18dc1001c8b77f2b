/**
 * Braces: in the plane of their two timbers, at every corner where the legs fit. A leg runs along its timber from the
 * inner corner of the housed (perfect) faces to the far end of the brace's bearing; so the long edge of the brace
 * joins the ends of the legs, and its depth lies on the corner's side of that line.
 */
import type { Member, Ref } from "../frame/frame.ts";
import { arcRadius, arcRise } from "../joinery/arc.ts";
import { inches } from "../quantity/length.ts";
import { baseOf, halfExtent } from "./box.ts";
import { neighbor } from "./grid.ts";
import { closeness, matches } from "./joint-match.ts";
import { usualBraceHousing } from "./joint-usual.ts";
import type { Timber } from "./model.ts";
import type { Placer } from "./placer.ts";
import { solidOf, touch } from "./solid.ts";
import { add, along, cross, dot, length, scale, sub, unit, type Vec3 } from "./vec.ts";

/** Two timbers near enough to brace: where their center lines pass, and how far along each. */
interface Crossing {
  /** the more upright one: the brace's foot stands on it */
  readonly post: Timber;
  readonly beam: Timber;
  /** axial distance from each timber's origin to the point nearest the other */
  readonly onPost: number;
  readonly onBeam: number;
  readonly point: Vec3;
}

/** Nearest points of the two center lines; undefined when they are parallel or the timbers stay apart. */
function crossing(a: Timber, b: Timber): Crossing | undefined {
  const [post, beam] = Math.abs(a.axis[2]) >= Math.abs(b.axis[2]) ? [a, b] : [b, a];
  const between = sub(beam.origin, post.origin);
  const cos = dot(post.axis, beam.axis);
  const sin2 = 1 - cos * cos;
  if (sin2 < 0.05) return undefined;
  const p = dot(between, post.axis);
  const q = dot(between, beam.axis);
  const onPost = (p - q * cos) / sin2;
  const onBeam = (p * cos - q) / sin2;
  const reachPost = halfExtent(beam, post.axis) + 1 / 16;
  const reachBeam = halfExtent(post, beam.axis) + 1 / 16;
  const onP = along(post.origin, post.axis, onPost);
  const gap = sub(along(beam.origin, beam.axis, onBeam), onP);
  const apart = length(gap);
  const square = unit(cross(post.axis, beam.axis));
  if (apart > halfExtent(post, square) + halfExtent(beam, square) + 1 / 16) return undefined;
  const near =
    onPost >= -reachPost &&
    onPost <= post.span + reachPost &&
    onBeam >= -reachBeam &&
    onBeam <= beam.span + reachBeam;
  // a king-post ends under the ridge, and principals that lie against its sides meet its line above that
  if (!near && !touch(solidOf(a), solidOf(b))) return undefined;
  return { post, beam, onPost, onBeam, point: onP };
}

/** Depth of the housing a brace has in a timber: the joint that holds there, else the usual one. */
function housingIn(p: Placer, brace: Timber, into: Timber): number {
  const entry = matches(p.frame, brace, into)[0]?.entry;
  if (!entry) return usualBraceHousing(p.frame.units === "mm");
  return entry.housing === undefined ? 0 : inches(entry.housing);
}

function legOn(member: Member, timber: Timber): number | undefined {
  const near = (l: { readonly along: Ref }): number => closeness(l.along.text, timber);
  const given = member.legs?.filter((l) => near(l) > 0).sort((a, b) => near(b) - near(a))[0];
  const leg = given?.length ?? member.leg;
  return leg === undefined ? undefined : inches(leg);
}

/** The next grid line from a lying timber's middle that its direction leads to; `out` past the last one. */
function lineToward(p: Placer, c: Crossing, towards: Vec3, past: Timber): string {
  const alongWall = Math.abs(towards[0]) > Math.abs(towards[1]);
  const sign = (alongWall ? towards[0] : towards[1]) > 0 ? 1 : -1;
  const at =
    (alongWall ? c.point[0] : c.point[1]) + sign * halfExtent(past, alongWall ? [1, 0, 0] : [0, 1, 0]);
  return neighbor(alongWall ? p.grid.bents : p.grid.walls, at, sign)?.id ?? "out";
}

/** The corner of two lying timbers: where they cross, and both ways that the brace spreads, `A2-A3-B2`. */
function planName(p: Placer, c: Crossing, down: Vec3, out: Vec3): string {
  const [walls, bents] = Math.abs(c.post.axis[0]) > 0.7 ? [c.post, c.beam] : [c.beam, c.post];
  const wall = walls.walls[0] ?? "";
  const bent = bents.bents[0] ?? "";
  const [along, across] = walls === c.post ? [down, out] : [out, down];
  const bentThere = lineToward(p, c, along, bents);
  const wallThere = lineToward(p, c, across, walls);
  const toBent = bentThere === "out" ? "out" : `${wall}${bentThere}`;
  return `${wall}${bent}-${toBent}-${wallThere === "out" ? "out" : `${wallThere}${bent}`}`;
}

/** The name of a corner: where the post stands, and toward which line the brace goes. */
function cornerName(p: Placer, c: Crossing, down: Vec3, towards: Vec3): string {
  if (Math.abs(c.post.axis[2]) < 0.5) return planName(p, c, down, towards);
  const wall = c.post.walls[0] ?? "";
  const bent = c.post.bents[0] ?? "";
  const alongWall = Math.abs(towards[0]) > Math.abs(towards[1]);
  const at = alongWall ? c.point[0] : c.point[1];
  const sign = (alongWall ? towards[0] : towards[1]) > 0 ? 1 : -1;
  // the line the post stands on may lie a little off its center, so look past the post's own breadth
  const past = at + sign * halfExtent(c.post, alongWall ? [1, 0, 0] : [0, 1, 0]);
  const next = neighbor(alongWall ? p.grid.bents : p.grid.walls, past, sign)?.id ?? "out";
  // the post's own place: also one between two bents, `B@4-ft-9-in`
  const own = c.post.id.split("@").slice(1).join("@") || c.post.id;
  const there = next === "out" ? "out" : alongWall ? `${wall}${next}` : `${next}${bent}`;
  return `${own}-${there}`;
}

/** Lower face of the brace across its thickness, along `normal`: flush with the reference faces, or centered. */
function acrossCenter(member: Member, c: Crossing, normal: Vec3, thickness: number): number {
  const middle = (t: Timber): number => dot(t.origin, normal);
  const half = (t: Timber): number => halfExtent(t, normal);
  const low = Math.max(middle(c.post) - half(c.post), middle(c.beam) - half(c.beam));
  const high = Math.min(middle(c.post) + half(c.post), middle(c.beam) + half(c.beam));
  const same =
    Math.abs(half(c.post) - half(c.beam)) < 1 / 32 && Math.abs(middle(c.post) - middle(c.beam)) < 1 / 32;
  if (!same || member.face === "center") return (low + high) / 2;
  const sign =
    c.post.reference.width * dot(c.post.widthDir, normal) +
    c.post.reference.depth * dot(c.post.depthDir, normal);
  return sign < 0 ? low + thickness / 2 : high - thickness / 2;
}

interface Corner {
  readonly crossing: Crossing;
  /** directions away from the corner, along the post and along the beam */
  readonly down: Vec3;
  readonly out: Vec3;
}

/** Wood to lay a leg on, from the perfect corner to the timber's end. */
function room(timber: Timber, at: number, direction: Vec3, start: number): number {
  return (dot(direction, timber.axis) > 0 ? timber.span - at : at) - start;
}

/** The corners of a crossing that the member may fill: below an upper timber unless `above`, both ways along it. */
function corners(member: Member, c: Crossing): Corner[] {
  const upright = Math.abs(c.post.axis[2]) > 0.5;
  const up = c.post.axis[2] >= 0 ? c.post.axis : scale(c.post.axis, -1);
  const downs: Vec3[] = upright ? [member.above ? up : scale(up, -1)] : [c.post.axis, scale(c.post.axis, -1)];
  return downs.flatMap((down) => [
    { crossing: c, down, out: scale(c.beam.axis, -1) },
    { crossing: c, down, out: c.beam.axis },
  ]);
}

/** A shape to test joints against before the brace is placed: only its names matter. */
function named(member: Member, id: string, like: Timber): Timber {
  return { ...like, id, member: member.name, kind: member.kind };
}

interface Fitted {
  readonly stick: Timber | undefined;
  /** how much the longer leg lacks; 0 when it fits */
  readonly short: number;
  /** the timber along which no leg is given */
  readonly lacks?: string;
}

function fitted(
  p: Placer,
  member: Member,
  corner: Corner,
  section: { width: number; depth: number },
): Fitted {
  const { crossing: c, down, out } = corner;
  const id = `${member.name}@${cornerName(p, c, down, out)}`;
  const legPost = legOn(member, c.post);
  const legBeam = legOn(member, c.beam);
  if (legPost === undefined || legBeam === undefined)
    return { stick: undefined, short: 0, lacks: legPost === undefined ? c.post.member : c.beam.member };
  const probe = named(member, id, c.post);
  const inPost = housingIn(p, probe, c.post);
  const inBeam = housingIn(p, probe, c.beam);
  // the perfect corner: the post's face toward the brace and the beam's face toward it, each housed
  const normal = unit(cross(down, out));
  const postSide = unit(sub(out, scale(down, dot(out, down))));
  const beamSide = unit(sub(down, scale(out, dot(down, out))));
  const postFace = halfExtent(c.post, postSide) - inPost;
  const beamFace = halfExtent(c.beam, beamSide) - inBeam;
  const slant = dot(out, postSide);
  const alongOut = postFace / slant;
  const alongDown = beamFace / dot(down, beamSide);
  const beamMiddle = along(c.beam.origin, c.beam.axis, c.onBeam);
  const flat = add(
    c.point,
    scale(normal, acrossCenter(member, c, normal, section.width) - dot(c.point, normal)),
  );
  // center lines may pass each other across the plane: the corner is taken in the plane of the brace
  const base = along(flat, down, dot(sub(beamMiddle, c.point), down));
  const inner = along(along(base, out, alongOut), down, alongDown);
  const shortPost = legPost - room(c.post, c.onPost, down, alongDown);
  const shortBeam = legBeam - room(c.beam, c.onBeam, out, alongOut);
  const short = Math.max(0, shortPost, shortBeam);
  if (short > 1 / 16) return { stick: undefined, short };
  const footEdge = along(inner, down, legPost);
  const headEdge = along(inner, out, legBeam);
  const axis = unit(sub(headEdge, footEdge));
  const toCorner = unit(sub(sub(inner, footEdge), scale(axis, dot(sub(inner, footEdge), axis))));
  const depthDir = scale(toCorner, -1);
  const middle = along(footEdge, toCorner, section.depth / 2);
  const onFace = (point: Vec3, faceNormal: Vec3): Vec3 =>
    along(middle, axis, dot(sub(point, middle), faceNormal) / dot(axis, faceNormal));
  const origin = onFace(footEdge, postSide);
  const head = onFace(headEdge, beamSide);
  const chord = length(sub(headEdge, footEdge));
  return {
    short: 0,
    stick: {
      ...baseOf(member, p.classOf(member.timber, member.kind)),
      id,
      rule: "brace-in-corner",
      reference: { width: referenceAcross(c, cross(depthDir, axis)), depth: 1 },
      walls: [...new Set([...c.post.walls, ...(Math.abs(out[0]) > 0.7 ? c.beam.walls : [])])],
      bents: Math.abs(out[1]) > 0.7 ? c.post.bents : [],
      width: section.width,
      depth: section.depth,
      origin,
      axis,
      widthDir: cross(depthDir, axis),
      depthDir,
      span: length(sub(head, origin)),
      length: chord,
      foot: { point: origin, normal: scale(postSide, -1) },
      head: { point: head, normal: scale(beamSide, -1) },
      curve: curveOf(member, chord),
    },
  };
}

function referenceAcross(c: Crossing, widthDir: Vec3): -1 | 0 | 1 {
  const sign =
    c.post.reference.width * dot(c.post.widthDir, widthDir) +
    c.post.reference.depth * dot(c.post.depthDir, widthDir);
  return Math.abs(sign) < 0.5 ? 0 : sign > 0 ? 1 : -1;
}

/** Hollow of the long edge: rise from the radius over the shoulder-to-shoulder chord, R − √(R² − c²/4), or the reverse. */
function curveOf(member: Member, chord: number): Timber["curve"] {
  const { curve } = member;
  if (!curve) return undefined;
  if (curve.radius !== undefined) {
    const radius = Math.max(inches(curve.radius), chord / 2);
    return { side: 1, radius, rise: arcRise(chord, radius), chord };
  }
  if (curve.rise === undefined || inches(curve.rise) <= 0) return undefined;
  const rise = inches(curve.rise);
  return { side: 1, radius: arcRadius(chord, rise), rise, chord };
}

/** One brace at every corner where it fits; an entry that fits nowhere is a problem. */
export function placeBraces(p: Placer, member: Member): Timber[] {
  const section = p.section(member.section, member.turned, p.classOf(member.timber, member.kind));
  const between = member.between;
  if (!between || between.length < 2) return p.missing(member.path, member.name, ["between"]) ?? [];
  if (!section) return [];
  const lists = between.map((ref) => p.sticksNamed(ref));
  if (lists.some((l) => l.length === 0)) return [];
  const tried = lists.flatMap((first, i) =>
    lists.slice(i + 1).flatMap((second) =>
      first.flatMap((a) =>
        second.flatMap((b) => {
          const c = a === b ? undefined : crossing(a, b);
          return c ? corners(member, c).map((corner) => fitted(p, member, corner, section)) : [];
        }),
      ),
    ),
  );
  const seen = new Set<string>();
  const sticks = tried.flatMap(({ stick }) => {
    if (!stick || seen.has(stick.id)) return [];
    seen.add(stick.id);
    return [stick];
  });
  if (sticks.length === 0) reportNowhere(p, member, tried);
  return sticks;
}

function reportNowhere(p: Placer, member: Member, tried: readonly Fitted[]): void {
  const lacks = tried.find((t) => t.lacks !== undefined)?.lacks;
  if (member.leg === undefined && (!member.legs || lacks !== undefined)) {
    p.missing(member.path, member.name, lacks && member.legs ? [`legs: ${lacks}`] : ["leg", "legs"]);
    return;
  }
  const leg = Math.max(
    ...(member.legs?.map((l) => inches(l.length)) ?? []),
    member.leg === undefined ? 0 : inches(member.leg),
  );
  const shorts = tried.map((t) => t.short).filter((s) => s > 0);
  p.report({
    kind: "brace-nowhere",
    path: member.path,
    member: member.name,
    leg,
    longest: shorts.length > 0 ? leg - Math.min(...shorts) : undefined,
  });
}
