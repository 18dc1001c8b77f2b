/** Frames and models made by hand, so that drawing is tested without reading text. */
import type {
  Frame,
  GridLine,
  GridPlace,
  JointEntry,
  Member,
  MemberKind,
  PierEntry,
  Ref,
  Section,
} from "../../server/core/frame/frame.ts";
import type { Model, Timber } from "../../server/core/model/model.ts";
import { fromInches } from "../../server/core/quantity/length.ts";

export const inch = fromInches;
export const ref = (text: string, path = ""): Ref => ({ text, path });
const refs = (...texts: string[]): Ref[] => texts.map((text) => ref(text));
export const section = (width: number, depth: number): Section => ({
  width: inch(width),
  depth: inch(depth),
  nominal: false,
});
export const place = (text: string): GridPlace => ({
  path: "",
  text,
  wall: text.slice(0, 1),
  bent: text.slice(1),
  along: undefined,
});
const places = (...texts: string[]): GridPlace[] => texts.map(place);

export function member(name: string, kind: MemberKind, given: Partial<Member>): Member {
  return {
    name,
    path: `/members/${name}`,
    kind,
    section: undefined,
    turned: false,
    timber: undefined,
    at: undefined,
    walls: undefined,
    bents: undefined,
    from: undefined,
    to: undefined,
    top: undefined,
    bottom: undefined,
    overhang: undefined,
    between: undefined,
    leg: undefined,
    legs: undefined,
    curve: undefined,
    above: false,
    face: "reference",
    spacing: undefined,
    count: undefined,
    layout: "even",
    splice: undefined,
    ends: undefined,
    ...given,
  };
}

function joint(
  name: string,
  kind: JointEntry["kind"],
  of: string[],
  into: string[],
  given: Partial<JointEntry> = {},
): JointEntry {
  return {
    name,
    path: `/joints/${name}`,
    kind,
    of: refs(...of),
    into: refs(...into),
    housing: undefined,
    tenon: undefined,
    pegs: undefined,
    drop: undefined,
    wedge: undefined,
    tail: undefined,
    dovetail: undefined,
    seat: undefined,
    lap: undefined,
    form: undefined,
    ...given,
  };
}

const tenon = (thickness: number, length?: number): NonNullable<JointEntry["tenon"]> => ({
  path: "",
  thickness: inch(thickness),
  length: length === undefined ? undefined : inch(length),
  width: undefined,
  setIn: undefined,
  through: false,
});

const pegs = (count: number): NonNullable<JointEntry["pegs"]> => ({
  path: "",
  count,
  diameter: inch(0.75),
  draw: undefined,
});

export function gridLines(sort: "walls" | "bents", given: Readonly<Record<string, number>>): GridLine[] {
  return Object.entries(given).map(([id, position]) => ({
    id,
    path: `/grid/${sort}/${id}`,
    at: inch(position),
    reference: undefined,
  }));
}

/** A frame with nothing in it but a grid of two walls and two bents. */
export function emptyFrame(given: Partial<Frame> = {}): Frame {
  return {
    name: "Nothing yet",
    units: "inch",
    basis: { path: "/basis", loads: undefined, riskCategory: undefined },
    site: {
      path: "/site",
      snow: undefined,
      wind: undefined,
      frostDepth: undefined,
      soil: undefined,
      ground: [],
    },
    classes: [],
    mill: { path: "/mill", longestCut: undefined, kerf: undefined, logs: [] },
    grid: {
      path: "/grid",
      walls: gridLines("walls", { A: 0, B: 120 }),
      bents: gridLines("bents", { 1: 0, 2: 120 }),
      levels: [],
    },
    members: [],
    joints: [],
    roof: undefined,
    piers: [],
    siding: [],
    floors: [],
    crew: undefined,
    prices: [],
    accepted: [],
    questions: [],
    unread: new Set(),
    unreadLoads: [],
    joinsWhole: true,
    lost: new Set(),
    ...given,
  };
}

const tubes: PierEntry = {
  name: "all",
  path: "/piers/all",
  under: ref("post"),
  at: undefined,
  kind: "tube",
  diameter: inch(16),
  depth: inch(50),
  top: undefined,
  lateral: "doubled",
  footing: { path: "", diameter: inch(24), thickness: inch(12) },
  anchor: { path: "", kind: "embedded-strap", standOff: inch(1) },
  rebar: undefined,
};

/** A pavilion of three bents on a slope, with curved knees, king-posts and a gable roof. */
export function pavilionFrame(): Frame {
  const level = (id: string, height: number) => ({ id, path: `/grid/levels/${id}`, height: inch(height) });
  const ground = (key: string, height: number) => ({
    key,
    height: inch(height),
    path: `/site/ground/${key}`,
  });
  const braced = (name: string, depth: number, between: [string, string], leg: number) =>
    member(name, "brace", { section: section(4, depth), between: refs(...between), leg: inch(leg) });
  return emptyFrame({
    name: "Pavilion",
    site: {
      path: "/site",
      snow: undefined,
      wind: undefined,
      frostDepth: inch(32),
      soil: "sand",
      ground: [ground("1", 0), ground("2", -4), ground("3", -11)],
    },
    grid: {
      path: "/grid",
      walls: gridLines("walls", { A: 0, B: 156 }),
      bents: gridLines("bents", { 1: 0, 2: 108, 3: 216 }),
      levels: [level("pier-top", 8), level("tie-top", 94), level("eave", 112)],
    },
    members: [
      member("post", "post", {
        section: section(8, 8),
        at: places("A1", "A2", "A3", "B1", "B2", "B3"),
        from: ref("pier-top"),
        to: ref("plate"),
      }),
      member("plate", "plate", {
        section: section(8, 9),
        walls: refs("A", "B"),
        from: ref("1"),
        to: ref("3"),
        top: ref("eave"),
        overhang: { from: inch(12), to: inch(12) },
      }),
      member("tie", "tie", {
        section: section(8, 12),
        bents: refs("1", "2", "3"),
        from: ref("A"),
        to: ref("B"),
        top: ref("tie-top"),
      }),
      member("king-post", "king-post", {
        section: section(8, 8),
        bents: refs("1", "2", "3"),
        from: ref("tie"),
        to: ref("ridge"),
      }),
      member("ridge", "ridge", {
        section: section(6, 9),
        from: ref("1"),
        to: ref("3"),
        overhang: { from: inch(12), to: inch(12) },
      }),
      {
        ...braced("knee", 8, ["post", "plate"], 36),
        curve: { path: "/members/knee/curve", radius: inch(100) },
      },
      braced("tie-knee", 6, ["post", "tie"], 27),
      braced("ridge-knee", 6, ["king-post", "ridge"], 24),
    ],
    joints: [
      joint("post-head", "mortise-and-tenon", ["post"], ["plate"], { tenon: tenon(2, 6.5), pegs: pegs(2) }),
      joint("tie-end", "wedged-half-dovetail", ["tie"], ["post"], {
        housing: inch(0.75),
        tenon: tenon(2),
        drop: inch(1.25),
        wedge: { path: "", species: undefined, slope: undefined, length: undefined },
        pegs: pegs(4),
      }),
      joint("king-foot", "mortise-and-tenon", ["king-post"], ["tie"], {
        tenon: tenon(2, 6.5),
        pegs: pegs(2),
      }),
      joint("king-head", "mortise-and-tenon", ["king-post"], ["ridge"], {
        tenon: tenon(1.5, 6.5),
        pegs: pegs(2),
      }),
      joint(
        "brace-ends",
        "brace-tenon",
        ["knee", "tie-knee", "ridge-knee"],
        ["post", "plate", "tie", "king-post", "ridge"],
        {
          housing: inch(0.5),
          tenon: tenon(1.5),
          pegs: pegs(1),
        },
      ),
    ],
    roof: {
      path: "/roof",
      kind: "gable",
      pitch: { rise: 7, run: 12 },
      high: undefined,
      rafters: {
        path: "/roof/rafters",
        section: section(3, 7),
        timber: undefined,
        spacing: inch(30),
        count: undefined,
        layout: "even",
        seat: { path: "/roof/rafters/seat", kind: "birds-mouth", seat: undefined },
        head: {
          path: "/roof/rafters/head",
          kind: "housed",
          into: ref("ridge"),
          housing: undefined,
          pegs: undefined,
          fasten: undefined,
        },
        overhang: { path: "/roof/rafters/overhang", eave: inch(18), rake: inch(12), high: inch(0) },
        fasten: undefined,
      },
      deck: { path: "/roof/deck", kind: "boards", thickness: inch(1), spacing: undefined, laid: "across" },
      covering: { path: "/roof/covering", kind: "standing-seam", coverage: inch(16), weight: undefined },
      unclear: false,
      ceiling: undefined,
    },
    piers: [tubes],
  });
}

/** A model of given sticks and nothing else. */
export function modelOf(timbers: readonly Timber[], frame: Frame = emptyFrame()): Model {
  return {
    frame,
    timbers,
    byId: new Map(timbers.map((timber) => [timber.id, timber])),
    meetings: [],
    doubles: new Set(),
    joints: [],
    nearJoints: [],
    piers: [],
    feet: [],
    roof: undefined,
    ground: () => undefined,
    sticks: new Map(),
    problems: [],
    members: new Map(),
  };
}

/** An upright 8 × 8 in, 96 in long, on grid place A1. */
export function post(given: Partial<Omit<Timber, "length">> = {}): Timber {
  return {
    id: "post@A1",
    member: "post",
    kind: "post",
    path: "/members/post",
    class: undefined,
    width: 8,
    depth: 8,
    origin: [4, 4, 0],
    axis: [0, 0, 1],
    widthDir: [1, 0, 0],
    depthDir: [0, 1, 0],
    span: 96,
    length: 96,
    foot: { point: [4, 4, 0], normal: [0, 0, -1] },
    head: { point: [4, 4, 96], normal: [0, 0, 1] },
    reference: { width: -1, depth: -1 },
    curve: undefined,
    rule: "post-on-grid",
    walls: ["A"],
    bents: ["1"],
    ...given,
  };
}
