/**
 * Reads the pieces of a quantity — blanks, signs, numbers, units — from left to right. Each character is looked at
 * a small, fixed number of times, whatever the text holds.
 */
import { add, type Rational, rational } from "./rational.ts";
import { type Unreadable, unreadable } from "./reading.ts";
import { type Unit, unitOf } from "./units.ts";

/** More digits than any quantity needs; keeps the arithmetic small. */
const MOST_DIGITS = 40;

const DASHES = new Set("-\u2010\u2011\u2012\u2013\u2014\u2212");
const SLASHES = new Set("/\u2044\u2215");
const FOOT_MARKS = new Set("'\u2018\u2019\u2032\u02B9");
const INCH_MARKS = new Set('"\u201C\u201D\u201F\u2033\u02BA');
const DEGREE_MARKS = new Set("\u00B0\u00BA");
const NOT_FINITE = new Set(["inf", "infinity", "nan"]);

const VULGAR: ReadonlyMap<string, Rational> = new Map(
  (
    [
      ["½", 1, 2],
      ["⅓", 1, 3],
      ["⅔", 2, 3],
      ["¼", 1, 4],
      ["¾", 3, 4],
      ["⅕", 1, 5],
      ["⅖", 2, 5],
      ["⅗", 3, 5],
      ["⅘", 4, 5],
      ["⅙", 1, 6],
      ["⅚", 5, 6],
      ["⅐", 1, 7],
      ["⅛", 1, 8],
      ["⅜", 3, 8],
      ["⅝", 5, 8],
      ["⅞", 7, 8],
      ["⅑", 1, 9],
      ["⅒", 1, 10],
    ] as const
  ).map(([sign, num, den]) => [sign, rational(BigInt(num), BigInt(den))] as const),
);

/** A number without sign. */
export interface ScannedNumber {
  readonly ok: true;
  readonly value: Rational;
  readonly at: number;
  /** written as one fraction and nothing else: `7/12` */
  readonly parts: { readonly num: Rational; readonly den: Rational } | undefined;
}

export interface ScannedUnit {
  /** undefined: no such unit is known */
  readonly unit: Unit | undefined;
  readonly at: number;
  readonly end: number;
}

export class Scanner {
  readonly text: string;
  at = 0;

  constructor(text: string) {
    this.text = text;
  }

  /** The next character, '' at the end. All that quantities are made of is one UTF-16 unit long. */
  peek(): string {
    return this.text.charAt(this.at);
  }

  get done(): boolean {
    return this.at >= this.text.length;
  }

  skipBlanks(): void {
    while (isBlank(this.peek())) this.at++;
  }

  /** Takes the next character if it is one of `set`. */
  take(set: ReadonlySet<string>): boolean {
    if (!set.has(this.peek())) return false;
    this.at++;
    return true;
  }

  /** Takes a dash of any kind, as a minus or as a joiner. */
  takeDash(): boolean {
    return this.take(DASHES);
  }

  takeSlash(): boolean {
    return this.take(SLASHES);
  }

  takeInchMark(): boolean {
    return this.take(INCH_MARKS);
  }

  /** Takes a sign at the start of a quantity, with the blanks around it. */
  takeSign(): 1 | -1 {
    this.skipBlanks();
    const sign = this.takeDash() ? -1 : 1;
    if (sign === 1 && this.peek() === "+") this.at++;
    this.skipBlanks();
    return sign;
  }

  /** Takes `word` if it stands here, in capitals or not, and no letter follows. */
  takeWord(word: string): boolean {
    const end = this.at + word.length;
    if (this.text.slice(this.at, end).toLowerCase() !== word || isLetter(this.text.charAt(end))) return false;
    this.at = end;
    return true;
  }

  /** @returns whether a number begins here */
  get numberAhead(): boolean {
    return numberStartsAt(this.text, this.at);
  }

  /** Reads `5`, `5.25`, `.5`, `1/2`, `½`, `5 1/2`, `5-1/2`, `5½`, `5 ½`. */
  number(): ScannedNumber | Unreadable {
    const at = this.at;
    const sign = VULGAR.get(this.peek());
    if (sign !== undefined) {
      this.at++;
      return { ok: true, value: sign, at, parts: undefined };
    }
    if (!this.numberAhead) return this.notANumber();

    const whole = this.digits();
    if (this.peek() === ".") return this.decimalPart(whole, at);
    if (whole.length > MOST_DIGITS) return unreadable("too-many-digits", at, this.at);
    const number = rational(BigInt(whole));

    const comma = this.comma();
    if (comma !== undefined) return comma;
    if (this.slashAhead()) return this.denominator(number, at);

    const fraction = this.fractionAfterWhole();
    if (fraction === undefined) return { ok: true, value: number, at, parts: undefined };
    if (!fraction.ok) return fraction;
    if (fraction.value.num >= fraction.value.den) return unreadable("bad-fraction", fraction.at, this.at);
    return { ok: true, value: add(number, fraction.value), at, parts: undefined };
  }

  /** Reads a unit, undefined if none stands here: a mark (' " °) or a word (`ft`, `lb/ft³`), a point may follow. */
  unit(): ScannedUnit | undefined {
    this.skipBlanks();
    const at = this.at;
    const name = this.mark() ?? this.unitWord();
    return name === undefined ? undefined : { unit: unitOf(name), at, end: this.at };
  }

  /** Reads a unit of area, with its square behind the word (`ft²`, `ft2`, `m^2`) or in it (`sqft`); else as `unit`. */
  areaUnit(): ScannedUnit | undefined {
    this.skipBlanks();
    const at = this.at;
    const word = this.letters();
    const mark = this.at;
    if (this.peek() === "^") this.at++;
    if ("2²".includes(this.peek()) && word !== "" && !this.done) {
      this.at++;
      return { unit: unitOf(`${word}2`), at, end: this.at };
    }
    this.at = mark;
    if (word !== "" && this.peek() !== "/") return { unit: unitOf(word), at, end: this.at };
    this.at = at;
    return this.unit();
  }

  /** Says what is wrong with text that is left over; undefined if only blanks are. */
  leftOver(): Unreadable | undefined {
    this.skipBlanks();
    if (this.done) return undefined;
    const at = this.at;
    if (SLASHES.has(this.peek())) return unreadable("bad-fraction", at, at + 1);
    const comma = this.comma();
    if (comma !== undefined) return comma;
    this.takeDash();
    this.skipBlanks();
    return this.numberAhead
      ? unreadable("two-numbers", this.at, this.text.length)
      : unreadable("trailing-text", at, this.text.length);
  }

  private letters(): string {
    const start = this.at;
    while (isLetter(this.peek())) this.at++;
    return this.text.slice(start, this.at);
  }

  private digits(): string {
    const start = this.at;
    while (isDigit(this.peek())) this.at++;
    return this.text.slice(start, this.at);
  }

  private decimalPart(whole: string, at: number): ScannedNumber | Unreadable {
    this.at++;
    const places = this.digits();
    if (whole.length + places.length > MOST_DIGITS) return unreadable("too-many-digits", at, this.at);
    if (this.peek() === ".") return unreadable("not-a-number", this.at, this.at + 1);
    const comma = this.comma();
    if (comma !== undefined) return comma;
    const value = rational(BigInt(whole + places), 10n ** BigInt(places.length));
    return { ok: true, value, at, parts: undefined };
  }

  /** A comma before a digit is either a thousands separator or a decimal comma; both are refused, never guessed. */
  private comma(): Unreadable | undefined {
    if (this.peek() !== "," || !isDigit(this.text.charAt(this.at + 1))) return undefined;
    const three = [1, 2, 3].every((offset) => isDigit(this.text.charAt(this.at + offset)));
    const grouped = three && !isDigit(this.text.charAt(this.at + 4));
    return unreadable(grouped ? "thousands-separator" : "decimal-comma", this.at, this.at + 1);
  }

  /** Moves behind a slash, with blanks before it, if there is one. */
  private slashAhead(): boolean {
    const start = this.at;
    this.skipBlanks();
    if (this.takeSlash()) return true;
    this.at = start;
    return false;
  }

  /** The part of a fraction behind its slash. */
  private denominator(num: Rational, at: number): ScannedNumber | Unreadable {
    this.skipBlanks();
    const below = this.digits();
    if (below.length > MOST_DIGITS) return unreadable("too-many-digits", this.at - below.length, this.at);
    const den = below === "" ? 0n : BigInt(below);
    if (den === 0n || this.peek() === ".") return unreadable("bad-fraction", at, this.at);
    return { ok: true, value: rational(num.num, den), at, parts: { num, den: rational(den) } };
  }

  /** `1/2` or `½` behind a whole number, joined by nothing, blanks or a dash. Stays in place if there is none. */
  private fractionAfterWhole(): ScannedNumber | Unreadable | undefined {
    const start = this.at;
    this.skipBlanks();
    const dashAt = this.at;
    const dash = this.takeDash();
    const afterDash = this.at;
    this.skipBlanks();
    const spaced = dash && (dashAt > start || this.at > afterDash);

    const at = this.at;
    const vulgar = VULGAR.get(this.peek());
    if (vulgar !== undefined) this.at++;
    const above = vulgar === undefined ? this.digits() : "";
    if (vulgar === undefined && (above === "" || !this.slashAhead())) {
      this.at = start;
      return undefined;
    }
    if (spaced) return unreadable("ambiguous-dash", dashAt, afterDash);
    if (vulgar !== undefined) return { ok: true, value: vulgar, at, parts: undefined };
    if (above.length > MOST_DIGITS) return unreadable("too-many-digits", at, this.at);
    return this.denominator(rational(BigInt(above)), at);
  }

  private notANumber(): Unreadable {
    const at = this.at;
    if (this.peek() === ".") this.at++;
    const start = this.at;
    while (isLetter(this.peek())) this.at++;
    const length = this.at - start;
    const word = length <= 8 ? this.text.slice(start, this.at).toLowerCase() : "";
    return unreadable(NOT_FINITE.has(word) ? "not-finite" : "not-a-number", at, Math.max(at, this.at));
  }

  /** Foot, inch and degree marks; two foot marks are an inch mark. */
  private mark(): string | undefined {
    if (this.take(INCH_MARKS)) return "in";
    if (this.take(DEGREE_MARKS)) return "°";
    if (!this.take(FOOT_MARKS)) return undefined;
    return this.take(FOOT_MARKS) ? "in" : "ft";
  }

  private unitWord(): string | undefined {
    const start = this.at;
    let name = this.letters();
    if (name === "") return undefined;
    if (this.peek() === "/" && isLetter(this.text.charAt(this.at + 1))) {
      this.at++;
      while (isLetter(this.peek())) this.at++;
      name = this.text.slice(start, this.at);
      if (this.peek() === "^") this.at++;
      if ("23²³".includes(this.peek()) && !this.done) {
        name += this.peek();
        this.at++;
      }
    }
    if (this.peek() === "." && !isDigit(this.text.charAt(this.at + 1))) this.at++;
    return name;
  }
}

/** Blanks, among them the no-break and the thin ones that word processors write. */
function isBlank(char: string): boolean {
  return (
    char !== "" &&
    (" \t\r\n\u00A0\u202F\u205F\u3000".includes(char) || (char >= "\u2000" && char <= "\u200A"))
  );
}

function isDigit(char: string): boolean {
  return char >= "0" && char <= "9" && char.length === 1;
}

function isLetter(char: string): boolean {
  return (char >= "a" && char <= "z") || (char >= "A" && char <= "Z");
}

function numberStartsAt(text: string, at: number): boolean {
  const char = text.charAt(at);
  return isDigit(char) || VULGAR.has(char) || (char === "." && isDigit(text.charAt(at + 1)));
}
