/**
 * Reads single values of a tree leniently: what cannot be read is a fact and `undefined`, and never stops the rest.
 * Wrong shapes, words and unknown keys are the schema's business and bring no second fact here.
 */
import type { SourceFact } from "../core/checks/source-facts.ts";
import type { GridPlace, Height, Pointer, Ref, Section, Units } from "../core/frame/frame.ts";
import { fromInches, type Length } from "../core/quantity/length.ts";
import { type Dimension, examplesOf, parseQuantity, type QuantityValues } from "../core/quantity/quantity.ts";
import { numberValue } from "./plain.ts";
import { child, entryOf, type ScalarNode, type Tree } from "./tree.ts";

/** What the readers of one file share. */
export interface Context {
  readonly units: Units;
  readonly facts: SourceFact[];
  /** names whose entry cannot be read */
  readonly unread: Set<string>;
  /** maps and lists that lost a part */
  readonly incomplete: ReadonlySet<Tree>;
}

/** Least and most that make sense: lengths in nanometres, all else as computed in; `least` itself does not count when `above`. */
interface Bounds {
  readonly least: number;
  readonly most: number;
  readonly above: boolean;
}

/** No timber, wall or frame of this trade is longer. */
const MOST = fromInches(300 * 12);
/** No timber is thicker than the thickest log. */
const MOST_SECTION = fromInches(60);
/** No timber is thinner than the thinnest board. */
const LEAST_SECTION = fromInches(0.5);
/** A timber thinner than this in a millimetre file was meant in inches. */
const THINNEST_MM = 30;

const SIZE: Bounds = { least: 0, most: MOST, above: true };
const GAP: Bounds = { least: 0, most: MOST, above: false };
const PLACE: Bounds = { least: -MOST, most: MOST, above: false };

/** 60:12; what is steeper is a wall */
const STEEPEST_ROOF = 5;

type Amount = Exclude<Dimension, "length" | "section" | "pitch" | "angle">;

/** What lies outside is a slip of the pen (common practice), and would pass or fail everything. */
const AMOUNTS: Readonly<Record<Amount, Bounds>> = {
  // ft²; no wall of this trade is larger
  area: { least: 0, most: 20_000, above: false },
  // psf; the heaviest mapped snow is a few hundred, and no floor of this trade carries more
  pressure: { least: 0, most: 2000, above: false },
  // psi; the stiffest woods have an E of about 3 million
  stress: { least: 0, most: 5_000_000, above: true },
  // lb/ft³; the heaviest woods weigh about 80 (Wood Handbook; memory)
  density: { least: 0, most: 100, above: true },
  // lb
  force: { least: 0, most: 1_000_000, above: true },
  // mph; maps of design winds begin near 85 and end near 200
  speed: { least: 50, most: 400, above: false },
};

/** As the schema has it. */
const NAME = /^\p{L}[\p{L}\p{N}_-]*$/u;

export class Cursor {
  readonly context: Context;
  readonly path: Pointer;
  readonly node: Tree | undefined;

  constructor(context: Context, path: Pointer, node: Tree | undefined) {
    this.context = context;
    this.path = path;
    this.node = node;
  }

  at(key: string): Cursor {
    return new Cursor(this.context, child(this.path, key), entryOf(this.node, key)?.value);
  }

  /** Something is written under this key, readable or not. */
  has(key: string): boolean {
    return entryOf(this.node, key) !== undefined;
  }

  /** Something stands there, or stood there and is lost. */
  get isWritten(): boolean {
    return this.node !== undefined && (this.node.kind !== "blank" || this.node.lost);
  }

  /** It is a map, with or without keys. */
  get isMap(): boolean {
    return this.node?.kind === "map";
  }

  /** It lost a part of its own: keys that it lacks may be what was lost. */
  get isCutItself(): boolean {
    return this.node !== undefined && this.context.incomplete.has(this.node);
  }

  /** It is written in braces or brackets. */
  get isFlow(): boolean {
    return (this.node?.kind === "map" || this.node?.kind === "list") && this.node.flow;
  }

  /** It lost a part, or something in it did: what it says is not all that is meant. */
  get isCut(): boolean {
    return this.context.incomplete.size > 0 && cutIn(this.node, this.context.incomplete);
  }

  /** The keys of a map with their values, in file order. */
  entries(): readonly (readonly [string, Cursor])[] {
    if (this.node?.kind !== "map") return [];
    return this.node.entries.map(({ key, value }) => [
      key,
      new Cursor(this.context, child(this.path, key), value),
    ]);
  }

  /** The entries whose keys can be names; the others have their finding and are left out. */
  named(): readonly (readonly [string, Cursor])[] {
    return this.entries().filter(([name]) => {
      const fits = NAME.test(name);
      if (!fits) this.context.unread.add(name);
      return fits;
    });
  }

  /** The items of a list; a single value counts as a list of itself. */
  items(): readonly Cursor[] {
    if (this.node?.kind === "scalar") return [this];
    return this.node?.kind === "list"
      ? this.node.items.map(({ value }, i) => new Cursor(this.context, child(this.path, i), value))
      : [];
  }

  text(): string | undefined {
    return this.node?.kind === "scalar" ? this.node.text : undefined;
  }

  ref(): Ref | undefined {
    const text = this.text();
    return text === undefined || text === "" ? undefined : { text, path: this.path };
  }

  /** @returns undefined when nothing is written; a list that lost items is still a list */
  refs(): readonly Ref[] | undefined {
    if (this.node?.kind !== "scalar" && this.node?.kind !== "list") return undefined;
    return this.items().flatMap((item) => item.ref() ?? []);
  }

  choice<const T extends string>(values: readonly T[]): T | undefined {
    const text = this.text();
    return values.find((value) => value === text);
  }

  flag(): boolean {
    return this.node?.kind === "scalar" && !this.node.quoted && /^(?:true|True|TRUE)$/.test(this.node.text);
  }

  number(): number | undefined {
    return this.node?.kind === "scalar" ? numberValue(this.node.text) : undefined;
  }

  /** A whole number from `least` to `most`: the bounds of the schema, which reports what breaks them. */
  count(least: number, most: number): number | undefined {
    const value = this.number();
    const fits = value !== undefined && Number.isSafeInteger(value) && value >= least && value <= most;
    return fits ? value : undefined;
  }

  /** A length above zero, or from `least` up, at most as long as a building of this trade unless told. */
  size(most: Length = MOST, least?: Length): Length | undefined {
    return this.#length(least === undefined ? { ...SIZE, most } : { least, most, above: false });
  }

  /** A length of zero or more, at most as long as a building of this trade unless told. */
  gap(most: Length = MOST): Length | undefined {
    return this.#length({ ...GAP, most });
  }

  /** A length either way. */
  offset(): Length | undefined {
    return this.#length(PLACE);
  }

  /** A sensible value of another dimension, in the unit the engine computes in: ft², psf, psi, lb/ft³, lb, mph. */
  /** @param narrower bounds that differ from those of its kind */
  amount(dimension: Amount, narrower: Partial<Bounds> = {}): number | undefined {
    const scalar = this.#scalar();
    const value = scalar && this.#quantity(scalar.text, dimension);
    if (scalar === undefined || value === undefined) return undefined;
    return this.#bounded(value, { ...AMOUNTS[dimension], ...narrower }, scalar.text, dimension);
  }

  /** A slope of at most `most`, rise over run. */
  pitch(most = STEEPEST_ROOF, above = false): QuantityValues["pitch"] | undefined {
    const scalar = this.#scalar();
    const pitch = scalar && this.#quantity(scalar.text, "pitch");
    if (scalar === undefined || pitch === undefined) return undefined;
    const slope = this.#bounded(pitch.rise / pitch.run, { least: 0, most, above }, scalar.text, "pitch");
    return slope === undefined ? undefined : pitch;
  }

  section(): Section | undefined {
    const scalar = this.#scalar();
    if (scalar === undefined) return undefined;
    const section = this.#quantity(scalar.text, "section");
    if (section === undefined) return undefined;
    const { width, depth } = section;
    const written = parseQuantity(scalar.text, "section", this.context.units);
    const thin = Math.min(width, depth) < THINNEST_MM * 1_000_000;
    if (this.context.units === "mm" && written.ok && written.assumed && thin && width > 0 && depth > 0) {
      const suggestion = `${scalar.text} in`;
      this.context.facts.push({ kind: "inch-section-in-mm", path: this.path, text: scalar.text, suggestion });
      return undefined;
    }
    const fits = (size: number): boolean => size >= LEAST_SECTION && size <= MOST_SECTION;
    if (fits(width) && fits(depth)) return section;
    this.#outside(scalar.text, "section", {
      least: inchesOf(LEAST_SECTION),
      most: inchesOf(MOST_SECTION),
    });
    return undefined;
  }

  /** A level's name, or a length above the datum. A word is a name; what begins like a number is a length. */
  height(): Height | undefined {
    const scalar = this.#scalar();
    if (scalar === undefined || scalar.text === "") return undefined;
    if (/^\p{L}/u.test(scalar.text)) return { text: scalar.text, path: this.path };
    const length = this.#length(PLACE);
    return length === undefined ? undefined : { length, path: this.path };
  }

  /** `A1`, or `B@4 ft 9 in`. */
  place(): GridPlace | undefined {
    const text = this.text();
    const match = text === undefined ? null : /^([A-Z])(?:([1-9][0-9]*)|@(.+))$/su.exec(text);
    const [, wall, bent, along] = match ?? [];
    if (text === undefined || wall === undefined) return undefined;
    if (along === undefined) return { path: this.path, text, wall, bent, along: undefined };
    const length = this.#within(along, PLACE, 2);
    return length === undefined ? undefined : { path: this.path, text, wall, bent: undefined, along: length };
  }

  /** @returns undefined when nothing is written; places that cannot be read are left out */
  places(): readonly GridPlace[] | undefined {
    if (this.node?.kind !== "scalar" && this.node?.kind !== "list") return undefined;
    const seen = new Set<string>();
    return this.items().flatMap((item) => {
      const place = item.place();
      if (place === undefined) return [];
      if (seen.has(place.text)) item.#twice(place.text);
      seen.add(place.text);
      return [place];
    });
  }

  /** A place that its list names already: most likely another one was meant. */
  #twice(text: string): void {
    const fact = { kind: "wrong-value", path: this.path, text, allowed: [], nearest: undefined } as const;
    this.context.facts.push({ ...fact, twice: true });
  }

  #scalar(): ScalarNode | undefined {
    return this.node?.kind === "scalar" ? this.node : undefined;
  }

  #length(bounds: Bounds): Length | undefined {
    const text = this.text();
    return text === undefined ? undefined : this.#within(text, bounds, 0);
  }

  #within(text: string, bounds: Bounds, from: number): Length | undefined {
    const length = this.#quantity(text, "length", from);
    return length === undefined
      ? undefined
      : this.#bounded(length, bounds, this.text() ?? text, "length", inchesOf);
  }

  /** @param said a bound as findings have it */
  #bounded<T extends number>(
    value: T,
    { least, most, above }: Bounds,
    text: string,
    dimension: Dimension,
    said: (bound: number) => number = (bound) => bound,
  ): T | undefined {
    if ((above ? value > least : value >= least) && value <= most) return value;
    // Where zero will do, only the bound that is broken is worth telling.
    const one = value < least ? { least: 0 } : { most: said(most) };
    const bounds = !above && least === 0 ? one : { least: said(least), most: said(most) };
    this.#outside(text, dimension, bounds);
    return undefined;
  }

  /** @param from where `text` begins in the whole scalar */
  #quantity<D extends Dimension>(text: string, dimension: D, from = 0): QuantityValues[D] | undefined {
    const { units, facts } = this.context;
    const reading = parseQuantity(text, dimension, units);
    if (reading.ok) return reading.value;
    facts.push({
      kind: "unreadable-quantity",
      path: this.path,
      text: this.text() ?? text,
      dimension,
      reason: reading.reason,
      at: from + reading.at,
      examples: examplesOf(dimension, units),
    });
    return undefined;
  }

  #outside(
    text: string,
    dimension: Dimension,
    bounds: { readonly least?: number; readonly most?: number },
  ): void {
    this.context.facts.push({ kind: "value-out-of-range", path: this.path, text, dimension, ...bounds });
  }
}

function cutIn(node: Tree | undefined, incomplete: ReadonlySet<Tree>): boolean {
  if (node?.kind !== "map" && node?.kind !== "list") return false;
  if (incomplete.has(node)) return true;
  const parts = node.kind === "map" ? node.entries : node.items;
  return parts.some(({ value }) => cutIn(value, incomplete));
}

function inchesOf(length: number): number {
  return length / fromInches(1);
}
