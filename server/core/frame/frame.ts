/**
 * The frame as it is written: values and paths, no text ranges, nothing derived.
 * `document/` makes it from text; `model/` places it in space.
 * Lengths are whole nanometres; loads psf; speeds mph; weights lb; angles degrees.
 */
import type { Length } from "../quantity/length.ts";
import type { AnchorSpec } from "./anchor.ts";
import type { Fasteners } from "./fasteners.ts";
import type { Measured } from "./measured.ts";
import type { Roof } from "./roof.ts";
import type { Basis, Site } from "./site.ts";

/** JSON Pointer (RFC 6901) into the file, keys as they are written. `''` is the whole file. */
export type Pointer = string;

/** A name as it stands in the file, not yet looked up. */
export interface Ref {
  readonly text: string;
  readonly path: Pointer;
}

export type Units = "inch" | "mm";

/** A closed side of the building. */
export interface Siding {
  /** the wall (`A`) or bent (`1`) it stands on */
  readonly line: string;
  readonly path: Pointer;
  /** ft² that stay open to the wind; goes before `open` */
  readonly openings: number | undefined;
  /** share of the side that stays open, 0 to 1 */
  readonly open: number | undefined;
  /** psf of its own face */
  readonly weight: number | undefined;
}

export interface Frame {
  readonly name: string;
  readonly units: Units;
  readonly basis: Basis;
  readonly site: Site;
  readonly classes: readonly TimberClass[];
  readonly mill: Mill;
  readonly grid: Grid;
  readonly members: readonly Member[];
  readonly joints: readonly JointEntry[];
  readonly roof: Roof | undefined;
  readonly piers: readonly PierEntry[];
  readonly siding: readonly Siding[];
  readonly floors: readonly Floor[];
  readonly crew: Crew | undefined;
  readonly prices: readonly Price[];
  readonly accepted: readonly Accepted[];
  readonly questions: readonly Question[];
  /**
   * Names that the file defines but whose entry cannot be read (a half-typed line): whoever refers to them
   * stays silent instead of adding a second finding.
   */
  readonly unread: ReadonlySet<string>;
  /**
   * Sections that the file has lost as a whole (misspelt, half typed, unreadable) or in an unknown part: names that
   * only they could define are not called unknown, and what they lack is not called missing.
   */
  readonly lost: ReadonlySet<Pointer>;
  /** Keys by which the file says something of a load (snow, wind, weights) and that cannot be read. */
  readonly unreadLoads: readonly Pointer[];
  /** Every joint and every member is written to its end: what names no joint now is not about to name one. */
  readonly joinsWhole: boolean;
}

export interface TimberClass {
  readonly name: string;
  readonly path: Pointer;
  readonly species: Ref | undefined;
  /** undefined = not stated: an own-sawn timber without a stamp counts as No.2 */
  readonly grade: Ref | undefined;
  readonly seasoning: "green" | "dry";
  readonly surface: "rough" | "planed";
  /** reference design values (psi) that the file gives itself, with the reason */
  readonly values: ReadonlyMap<DesignValueKey, number>;
  /** one of them is written and cannot be read: the table's must not stand in its place, so the wood has none at all */
  readonly unreadValues?: true;
  readonly because: string | undefined;
  /** weight in lb/ft³ that the file gives itself */
  readonly weight: number | undefined;
}

export type DesignValueKey = "Fb" | "Ft" | "Fv" | "Fc-perp" | "Fc" | "E" | "E-min" | "G";

export interface Mill {
  readonly path: Pointer;
  readonly longestCut: Length | undefined;
  readonly kerf: Length | undefined;
  readonly logs: readonly {
    readonly path: Pointer;
    readonly species: Ref | undefined;
    readonly smallEnd: Length;
    readonly length: Length;
    readonly count: number;
  }[];
}

/** Which face of a timber lies on its grid line; undefined = by the rule (outer lines outward, inner ones center). */
export type GridReference = "center" | "outward" | "toward-1" | "toward-a" | undefined;

export interface GridLine {
  readonly id: string;
  readonly path: Pointer;
  readonly at: Length;
  readonly reference: GridReference;
}

export interface Level {
  readonly id: string;
  readonly path: Pointer;
  readonly height: Length;
}

export interface Grid {
  readonly path: Pointer;
  /** in file order; placement sorts them by `at` */
  readonly walls: readonly GridLine[];
  readonly bents: readonly GridLine[];
  readonly levels: readonly Level[];
}

export const MEMBER_KINDS = [
  "post",
  "plate",
  "sill",
  "girt",
  "tie",
  "beam",
  "joist",
  "purlin",
  "king-post",
  "strut",
  "brace",
  "ridge",
  "rafter",
] as const;

export type MemberKind = (typeof MEMBER_KINDS)[number];

export interface Section {
  readonly width: Length;
  readonly depth: Length;
  /** written as `2x8 nominal`: width and depth are already the dressed sizes */
  readonly nominal: boolean;
}

/** A height: a level's name, or a length above the datum. */
export type Height = Ref | { readonly length: Length; readonly path: Pointer };

/** `A1`, or `B@4 ft 9 in` (so far along wall B from the first bent). */
export interface GridPlace {
  readonly path: Pointer;
  readonly text: string;
  readonly wall: string;
  readonly bent: string | undefined;
  readonly along: Length | undefined;
}

export interface Member {
  readonly name: string;
  readonly path: Pointer;
  readonly kind: MemberKind;
  readonly section: Section | undefined;
  readonly turned: boolean;
  /** name of the timber class, from `timber:`; undefined = the first class that fits its kind */
  readonly timber: Ref | undefined;
  readonly at: readonly GridPlace[] | undefined;
  readonly walls: readonly Ref[] | undefined;
  readonly bents: readonly Ref[] | undefined;
  readonly from: Ref | undefined;
  readonly to: Ref | undefined;
  readonly top: Height | undefined;
  readonly bottom: Height | undefined;
  /** past the first and the last grid line */
  readonly overhang: { readonly from: Length; readonly to: Length } | undefined;
  readonly between: readonly Ref[] | undefined;
  readonly leg: Length | undefined;
  /** legs by the name of the timber each lies along */
  readonly legs: readonly { readonly along: Ref; readonly length: Length }[] | undefined;
  readonly curve: { readonly path: Pointer; readonly radius?: Length; readonly rise?: Length } | undefined;
  readonly above: boolean;
  readonly face: "reference" | "center";
  readonly spacing: Length | undefined;
  readonly count: number | undefined;
  readonly layout: "even" | "fixed";
  readonly splice:
    | { readonly path: Pointer; readonly at: Ref; readonly kind: ScarfKind | undefined }
    | undefined;
  readonly ends: readonly [EndPlace, EndPlace] | undefined;
  /** the stick that carries it like a gate leaf */
  readonly hungOn?: Ref;
  /** of a purlin: what holds it down on each timber that carries it */
  readonly fasten?: Fasteners | "unread";
  /** what its real sticks measure; left out where none is measured */
  readonly measured?: readonly Measured[];
}

export interface EndPlace {
  readonly path: Pointer;
  readonly at: GridPlace | undefined;
  readonly level: Height | undefined;
  readonly offset: readonly [Length, Length, Length];
}

/** Joints of two lengths end to end. */
export const SCARF_KINDS = ["half-lap-scarf", "bladed-scarf", "stop-splayed-scarf"] as const;

export type ScarfKind = (typeof SCARF_KINDS)[number];

export type JointKindName =
  | "mortise-and-tenon"
  | "wedged-half-dovetail"
  | "brace-tenon"
  | "birds-mouth"
  | "step-lap"
  | "housed"
  | "housed-dovetail"
  | "pocket"
  | "corner-half-lap"
  | "corner-bridle"
  | "dovetail-lap"
  | "stub-tenon"
  | "screwed-brace"
  | "rafter-heel"
  | "rafter-pair"
  | ScarfKind;

/** Shapes that one kind of joint may take: of a rafter pair, bridle or lapped; of a heel or step, how its abutment stands. */
export type JointForm = "bridle" | "lapped" | "bisecting" | "square" | "plumb";

export interface PegSpec {
  readonly path: Pointer;
  readonly count: number;
  readonly diameter: Length | undefined;
  /** offset of the hole in the tenon toward the shoulder */
  readonly draw: Length | undefined;
}

export interface TenonSpec {
  readonly path: Pointer;
  readonly thickness: Length | undefined;
  readonly length: Length | undefined;
  readonly width: Length | undefined;
  /** from the reference face of the mortised timber to the near cheek */
  readonly setIn: Length | undefined;
  readonly through: boolean;
}

export interface JointSpec {
  readonly kind: JointKindName;
  readonly housing: Length | undefined;
  readonly tenon: TenonSpec | undefined;
  readonly pegs: PegSpec | undefined;
  readonly drop: Length | undefined;
  readonly wedge:
    | {
        readonly path: Pointer;
        readonly species: Ref | undefined;
        readonly slope: number | undefined;
        /** of the wedge of a half-dovetail, thin end to thick end */
        readonly length: Length | undefined;
      }
    | undefined;
  /** length past the far face of a through tenon */
  readonly tail: Length | undefined;
  /** housed dovetail: depth of the dovetail, its length into the beam, widening on each side */
  readonly dovetail:
    | { readonly path: Pointer; readonly length?: Length; readonly depth?: Length; readonly flare?: Length }
    | undefined;
  /** level seat of a bird's mouth; the roof's own step-lap: level run over the plate */
  readonly seat: Length | undefined;
  /** laps and scarfs: length of the lap along the grain */
  readonly lap: Length | undefined;
  /** undefined = the usual one of its kind */
  readonly form: JointForm | undefined;
  /** laid out from the reference faces unless it says `scribe`: marked from the other timber in its place */
  readonly rule?: "scribe";
  /** bladed scarf: the blade at each end */
  readonly blade?: {
    readonly path: Pointer;
    readonly thickness: Length | undefined;
    readonly length: Length | undefined;
  };
  /** stop-splayed scarf: depth of the butt at each end */
  readonly butt?: Length;
  /** screwed brace: at each end; "unread" where a value of them cannot be read */
  readonly screws?: ScrewSpec | "unread";
  /** seats and housed heads of rafters: what holds each down, or in the ridge */
  readonly fasten?: Fasteners | "unread";
}

export interface ScrewSpec {
  readonly path: Pointer;
  readonly count: number;
  readonly diameter: Length | undefined;
  readonly length: Length | undefined;
}

export interface JointEntry extends JointSpec {
  readonly name: string;
  readonly path: Pointer;
  readonly of: readonly Ref[];
  readonly into: readonly Ref[];
}

export interface PierEntry {
  readonly name: string;
  readonly path: Pointer;
  readonly under: Ref | undefined;
  readonly at: readonly GridPlace[] | undefined;
  readonly kind: "tube" | "pad";
  /** tube diameter, or width of a square pad */
  readonly diameter: Length | undefined;
  /** from the lowest ground that touches it to the tube's bottom */
  readonly depth: Length | undefined;
  readonly top: Height | undefined;
  readonly lateral: "single" | "doubled";
  readonly footing:
    | {
        readonly path: Pointer;
        readonly diameter: Length | undefined;
        readonly thickness: Length | undefined;
      }
    | undefined;
  readonly anchor: AnchorSpec | undefined;
  readonly rebar: { readonly path: Pointer; readonly count: number; readonly size: number } | undefined;
}

export interface Floor {
  readonly name: string;
  readonly path: Pointer;
  readonly on: Ref | undefined;
  /** psf */
  readonly live: number | undefined;
  readonly deck:
    | {
        readonly path: Pointer;
        readonly kind: "boards" | "panels" | undefined;
        readonly thickness: Length | undefined;
      }
    | undefined;
  /** psf of all that lies on its timbers, in place of the deck's weight */
  readonly dead: number | undefined;
}

export interface Crew {
  readonly path: Pointer;
  readonly people: number | undefined;
  /** lb that one person lifts */
  readonly each: number | undefined;
  readonly machine:
    | { readonly path: Pointer; readonly kind: string; readonly limit: number | undefined }
    | undefined;
}

export interface Price {
  readonly item: string;
  readonly path: Pointer;
  readonly each: number;
}

/** What the builder does not know yet; something was assumed in its place. */
export interface Question {
  readonly path: Pointer;
  readonly what: string;
  readonly whom: string;
}

export interface Accepted {
  readonly path: Pointer;
  readonly check: string;
  readonly at: string | undefined;
  readonly because: string;
}

/** Whether all that the file says is in the frame: no entry and no section of it is lost. */
export function isWhole(frame: Frame): boolean {
  return frame.unread.size === 0 && frame.lost.size === 0;
}
