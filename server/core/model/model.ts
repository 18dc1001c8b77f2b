/**
 * The resolved frame: timbers in space, where they meet, the joints there, roof planes, piers and ground.
 * All lengths are inches (doubles), angles radians unless a name says otherwise.
 */
import type {
  Frame,
  GridPlace,
  Member,
  MemberKind,
  PierEntry,
  Pointer,
  TimberClass,
} from "../frame/frame.ts";
import type { PostFoot } from "../joinery/foot/post-foot.ts";
import type { Joint } from "../joinery/joint.ts";
import type { NearJoints } from "../joinery/near-joints.ts";
import type { ModelProblem } from "./problems.ts";
import type { Vec3 } from "./vec.ts";

/** A plane that ends a timber: the wood lies on the side away from `normal`. */
export interface EndPlane {
  readonly point: Vec3;
  readonly normal: Vec3;
}

/** Which way each of a timber's two reference faces looks: `width` = -1 is the face at -width/2, 1 the other, 0 none. */
export interface ReferenceFaces {
  readonly width: -1 | 0 | 1;
  readonly depth: -1 | 0 | 1;
}

export interface Timber {
  /** `post@A1`, `tie@2`, `knee@A2-A3`, `rafter@A.4` */
  readonly id: string;
  /** the name of its entry: `post`; the roof's rafters: `rafter` */
  readonly member: string;
  readonly kind: MemberKind;
  /** pointer of the entry: `/members/post`, `/roof/rafters` */
  readonly path: Pointer;
  readonly class: TimberClass | undefined;
  /** true size, inches: across `widthDir` and across `depthDir` */
  readonly width: number;
  readonly depth: number;
  /** center of the section at the foot end (axial 0), before end cuts */
  readonly origin: Vec3;
  /** unit vectors: along the grain from foot to head, across the width, across the depth (right-handed) */
  readonly axis: Vec3;
  readonly widthDir: Vec3;
  readonly depthDir: Vec3;
  /** axial distance from foot to head of the center line between the end planes, without tenons */
  readonly span: number;
  readonly foot: EndPlane;
  readonly head: EndPlane;
  /** true length of the stick to cut: from longest point to longest point, tenons and what is left to scribe included */
  readonly length: number;
  readonly reference: ReferenceFaces;
  /** hollow of a curved brace: which long edge (sign on depthDir), radius and rise over the shoulder-to-shoulder chord */
  readonly curve:
    | { readonly side: -1 | 1; readonly radius: number; readonly rise: number; readonly chord: number }
    | undefined;
  /** the placement rule that put it there, in words for the hover */
  readonly rule: PlacementRule;
  /** wall and bent names of where it stands, for views: a post has both, a tie one bent, a plate one wall */
  readonly walls: readonly string[];
  readonly bents: readonly string[];
}

/** Codes of the placement rules of the manual; the hover words them. */
export type PlacementRule =
  | "post-on-grid"
  | "along-wall"
  | "along-bent"
  | "between-timbers"
  | "series"
  | "brace-in-corner"
  | "king-post-under-ridge"
  | "ridge-midway"
  | "roof-rafter"
  | "purlins-up-slope"
  | "free-ends";

/** Where two timbers come within 1/16 in of each other over at least one square inch. */
export interface Meeting {
  readonly a: Timber;
  readonly b: Timber;
  /** center of the contact */
  readonly point: Vec3;
  /** square inches of contact */
  readonly area: number;
  /** which end of each takes part, or its length */
  readonly aEnd: "foot" | "head" | "side";
  readonly bEnd: "foot" | "head" | "side";
}

export interface Pier {
  /** `pier@A1` with the entry's name: `all@A1` */
  readonly id: string;
  readonly entry: PierEntry;
  readonly place: GridPlace;
  readonly timber: Timber | undefined;
  /** center in plan and level of the top */
  readonly top: Vec3;
  /** diameter, or side of a square pad */
  readonly diameter: number;
  /** lowest and highest ground that touches it */
  readonly groundLow: number;
  readonly groundHigh: number;
  readonly tubeBottom: number;
  readonly bottom: number;
  readonly footing: { readonly diameter: number; readonly thickness: number } | undefined;
}

export interface RoofSlope {
  /** the wall its eave stands on */
  readonly wall: string;
  /** the roof's own rafters; none where principal rafters carry it, alone or with purlins */
  readonly rafters: readonly Timber[];
  /** rise over run */
  readonly slope: number;
  /** radians */
  readonly angle: number;
  /** horizontal run from the plate's outside face to the ridge's near face or the high plate's far seat end */
  readonly run: number;
  /** level, from the middle of the seat to the middle of the head's bearing: what the rafter spans */
  readonly span: number;
  readonly eaveOverhang: number;
  /** level, from the plate's outside face to the roof's upper edge: the middle of a gable, the high edge of a shed */
  readonly peakRun: number;
  /** of the roof's own rafters, center to center along the walls; 0 without them */
  readonly spacing: number;
  /** plan position of the seat's inner end and of the head support, along the rafter's run from the outside face */
  readonly seatRun: number;
  /** level, from the plate's outside face to the middle of what bears there */
  readonly bearingRun: number;
  /** level seat length and depth of its cut square to the rafter */
  readonly seat: number;
  readonly seatDepth: number;
  /** outside plane of the rafters' tops: a point and the upward normal */
  readonly plane: EndPlane;
  /** from deck edge to deck edge along the walls */
  readonly deckFrom: number;
  readonly deckTo: number;
}

export interface RoofModel {
  readonly kind: "gable" | "shed";
  readonly slopes: readonly RoofSlope[];
}

export interface Model {
  readonly frame: Frame;
  readonly timbers: readonly Timber[];
  readonly byId: ReadonlyMap<string, Timber>;
  /** a double meets only the timber whose place it takes */
  readonly meetings: readonly Meeting[];
  /** ids of timbers that stand in the very place of another: a slip, of which the structure knows nothing */
  readonly doubles: ReadonlySet<string>;
  readonly joints: readonly Joint[];
  /** joints of one timber that cross or come too near each other */
  readonly nearJoints: readonly NearJoints[];
  readonly piers: readonly Pier[];
  /** uprights on the anchors of their piers */
  readonly feet: readonly PostFoot[];
  readonly roof: RoofModel | undefined;
  /** height of the ground at a plan position, inches; undefined where the file gives none */
  readonly ground: (x: number, y: number) => number | undefined;
  /** sticks of each member entry */
  readonly sticks: ReadonlyMap<string, readonly Timber[]>;
  readonly problems: readonly ModelProblem[];
  readonly members: ReadonlyMap<string, Member>;
}
