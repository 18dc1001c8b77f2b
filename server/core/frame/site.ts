/** What the place and the rules give a frame: the edition of the loads, snow, wind, frost and soil. */
import type { Length } from "../quantity/length.ts";
import type { Pointer } from "./frame.ts";

export interface Basis {
  readonly path: Pointer;
  readonly loads: "asce-7-16" | "asce-7-22" | undefined;
  readonly riskCategory: "i" | "ii" | "iii" | "iv" | undefined;
}

export type SnowExposure = "fully-exposed" | "partially-exposed" | "sheltered";
export type Thermal = "heated" | "cold-ventilated" | "open" | "unheated" | "freezer" | "greenhouse";
export type WindExposure = "B" | "C" | "D";
export type Soil = "bedrock" | "sedimentary-rock" | "gravel" | "sand" | "clay";

export interface Site {
  readonly path: Pointer;
  readonly snow:
    | {
        readonly path: Pointer;
        /** psf; at service level in ASCE 7-16, at strength level in ASCE 7-22 */
        readonly ground: number | undefined;
        readonly exposure: SnowExposure | undefined;
        readonly thermal: Thermal | undefined;
        /** the covering sheds snow and nothing at the eaves stops it */
        readonly slides: boolean;
        /** W_2 of ASCE 7-22: share of the winter with wind over 10 mph, 0 to 1 */
        readonly winterWind?: number;
      }
    | undefined;
  readonly wind:
    | {
        readonly path: Pointer;
        /** mph, three-second gust of the risk category's map */
        readonly speed: number | undefined;
        readonly exposure: WindExposure | undefined;
        readonly flow: "clear" | "obstructed" | undefined;
        /** K_zt */
        readonly topography: number | undefined;
      }
    | undefined;
  /** above the sea */
  readonly elevation?: Length | undefined;
  readonly frostDepth: Length | undefined;
  readonly soil: Soil | undefined;
  /** Height of the ground by bent (`2`), by wall (`B`) or at a place (`A3`), in file order. */
  readonly ground: readonly { readonly key: string; readonly height: Length; readonly path: Pointer }[];
}
