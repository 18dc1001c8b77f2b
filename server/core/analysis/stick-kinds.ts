/**
 * Sticks that are alike but for where they stand: the rafters of a roof, the posts of a wall. What follows from length,
 * section and joints alone is made once for all of a kind.
 */
import { type Flexibility, flexibilityOf } from "./curves.ts";
import { ENDS, localStiffness } from "./element-stiffness.ts";
import { at } from "./numbers.ts";
import { once } from "./once.ts";
import { deformations, type Jointed, joinEnds } from "./releases.ts";
import type { FrameElement, Motion, PerMotion } from "./structure.ts";
import type { Stick } from "./system.ts";
import type { UnitPlaces } from "./unit-loads.ts";

export interface StickKind {
  readonly flexibility: Flexibility;
  /** Local stiffness with the ends fast. */
  readonly fast: Float64Array;
  readonly joint: Jointed;
  /** Deformations at the nodes' side of the joints, local axes. */
  readonly localModes: () => readonly Float64Array[];
  /** What unit loads do to it, as far as it was asked. */
  readonly unitPlaces: UnitPlaces;
}

/** Lengths that differ by a smaller share are rounded apart. */
export const SAME_LENGTH = 1e-11;

interface Known {
  readonly element: FrameElement;
  readonly length: number;
  readonly kind: StickKind;
}

export class StickKinds {
  readonly #known = new Map<number, Known[]>();

  /**
   * @param length of the stick; one that is the same but for rounding gets the very same kind
   * @param before kinds of another structure, those of the very same length serve here too
   */
  of(element: FrameElement, length: number, before?: StickKinds): StickKind {
    const known = this.#find(element, length, SAME_LENGTH);
    if (known) return known;
    const kept = before ? before.#find(element, length, 0) : undefined;
    const kind = kept ?? kindOf(element, length);
    const bucket = bucketOf(length);
    const alike = this.#known.get(bucket) ?? [];
    alike.push({ element, length, kind });
    this.#known.set(bucket, alike);
    return kind;
  }

  #find(element: FrameElement, length: number, share: number): StickKind | undefined {
    const alike = this.#known.get(bucketOf(length));
    return alike?.find((k) => Math.abs(k.length - length) <= share * length && isLike(k.element, element))
      ?.kind;
  }
}

/** Lengths that rounding parts here are two kinds, which costs time only. */
const bucketOf = (length: number): number => Math.round(length * 64);

function kindOf(element: FrameElement, length: number): StickKind {
  const fast = localStiffness(element, length);
  const joint = joinEnds(element, fast);
  return {
    flexibility: flexibilityOf(element),
    fast,
    joint,
    localModes: once(() => deformations(joint.k)),
    unitPlaces: { spreads: [], points: [] },
  };
}

function isLike(a: FrameElement, b: FrameElement): boolean {
  return (
    a.E === b.E &&
    a.G === b.G &&
    a.A === b.A &&
    a.Iy === b.Iy &&
    a.Iz === b.Iz &&
    a.J === b.J &&
    a.Asy === b.Asy &&
    a.Asz === b.Asz &&
    a.axialOnly === b.axialOnly &&
    a.oneWay === b.oneWay &&
    freesLike(a.releaseI, b.releaseI) &&
    freesLike(a.releaseJ, b.releaseJ) &&
    springsLike(a.endSpringI, b.endSpringI) &&
    springsLike(a.endSpringJ, b.endSpringJ)
  );
}

function freesLike(a: readonly Motion[] | undefined, b: readonly Motion[] | undefined): boolean {
  if (a === b) return true;
  return a !== undefined && b?.length === a.length && a.every((motion, n) => motion === b[n]);
}

function springsLike(a: PerMotion | undefined, b: PerMotion | undefined): boolean {
  if (a === b) return true;
  if (!a || !b) return false;
  const [own, other] = [Object.entries(a), Object.entries(b)];
  return own.length === other.length && own.every(([motion, value]) => b[motion as Motion] === value);
}

/** Of all sticks, side by side. */
export interface EndMatrices {
  /** 12 × 12 a stick: end forces (local) from the motions of its two nodes */
  readonly k: Float64Array;
  /** 6 × 6 an end: local motions from those of the node */
  readonly to: Float64Array;
  /** two a stick: where the motions of its nodes begin */
  readonly nodes: Int32Array;
}

export function endMatrices(sticks: readonly Stick[]): EndMatrices {
  const all = new Float64Array(sticks.length * ENDS * ENDS);
  const to = new Float64Array(sticks.length * 72);
  const nodes = new Int32Array(sticks.length * 2);
  sticks.forEach((stick, n) => {
    nodes[2 * n] = 6 * stick.i;
    nodes[2 * n + 1] = 6 * stick.j;
    to.set(stick.toI, 72 * n);
    to.set(stick.toJ, 72 * n + 36);
    const { k } = stick.joint;
    for (let r = 0; r < ENDS; r++)
      for (let end = 0; end < 2; end++) {
        const turn = end === 0 ? stick.toI : stick.toJ;
        for (let c = 0; c < 6; c++) {
          let sum = 0;
          for (let m = 0; m < 6; m++) sum += at(k, r * ENDS + 6 * end + m) * at(turn, 6 * m + c);
          all[ENDS * ENDS * n + r * ENDS + 6 * end + c] = sum;
        }
      }
  });
  return { k: all, to, nodes };
}
