/** What the JSON of `bentwright model` holds, as far as a solver needs it. */
export type V3 = readonly [number, number, number];

export interface OutsideElement {
  readonly id: string;
  readonly i: string;
  readonly j: string;
  readonly offsetI?: V3;
  readonly offsetJ?: V3;
  readonly A: number;
  readonly Iy: number;
  readonly Iz: number;
  readonly J: number;
  readonly E: number;
  readonly G: number;
  readonly ydir: V3;
  readonly releaseI?: readonly string[];
  readonly releaseJ?: readonly string[];
  readonly endSpringI?: Readonly<Record<string, number>>;
  readonly endSpringJ?: Readonly<Record<string, number>>;
  readonly axialOnly?: true;
}

export interface OutsideLoad {
  readonly element: string;
  readonly kind: "point" | "spread";
  readonly at: number;
  readonly force: V3;
  readonly from: number;
  readonly to: number;
  readonly start: V3;
  readonly end: V3;
}

export interface OutsideCombination {
  readonly id: string;
  readonly seats: "hold" | "slide";
  readonly bracesBothWays: boolean;
  readonly loads: {
    readonly elements: readonly OutsideLoad[];
    readonly nodes: readonly { readonly node: string; readonly force: V3; readonly moment: V3 }[];
  };
  readonly answer: {
    readonly status: string;
    readonly dropped: readonly string[];
    readonly reactions: readonly { readonly node: string; readonly force: readonly number[] }[];
    readonly endForces: readonly {
      readonly element: string;
      readonly i: readonly number[];
      readonly j: readonly number[];
    }[];
    readonly displacements: readonly { readonly node: string; readonly motion: readonly number[] }[];
  };
}

export interface OutsideModel {
  readonly nodes: readonly { readonly id: string; readonly at: V3 }[];
  readonly elements: readonly OutsideElement[];
  readonly seats: readonly {
    readonly seats: "hold" | "slide";
    readonly links: readonly {
      readonly i: string;
      readonly j: string;
      readonly offsetI?: V3;
      readonly offsetJ?: V3;
      readonly direction: V3;
      readonly stiffness: number;
    }[];
    readonly supports: readonly { readonly node: string; readonly fixed: readonly string[] }[];
  }[];
  readonly combinations: readonly OutsideCombination[];
}
