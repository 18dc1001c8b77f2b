/**
 * Log rules: board feet that a log of a small-end diameter inside bark (inches) and a length (feet) is said to hold.
 * Doyle and Scribner by their formulas, Scribner Decimal C by the factors of the U.S. Forest Service, the International
 * 1/4 in rule by its formula for 4 ft sections. Sources: keys DOYLE, SCRIB, DECC and INT14 of test/reference/geometry.yaml.
 */

const rounded = (boardFeet: number): number => Math.max(0, Math.floor(boardFeet + 0.5));

/** Doyle: (D - 4)² L / 16, to the board foot, halves up (published). Nothing below 4 in. */
export function doyle(diameter: number, feet: number): number {
  return diameter <= 4 ? 0 : rounded(((diameter - 4) ** 2 * feet) / 16);
}

/** Scribner to the board foot: (0.79 D² - 2 D - 4) L / 16, the regression of the old diagrams (published, within 1). */
export function scribner(diameter: number, feet: number): number {
  return rounded(((0.79 * diameter ** 2 - 2 * diameter - 4) * feet) / 16);
}

/** Decimal C: tens of board feet for ten feet of log, by whole inches of diameter from 1 (published: Forest Service). */
const FACTORS: readonly number[] = [
  0, 0.143, 0.39, 0.676, 1.07, 1.16, 1.4, 1.501, 2.084, 3.126, 3.749, 4.9, 6.043, 7.14, 8.88, 10, 11.528,
  13.29, 14.99, 17.499, 18.99, 20.88, 23.51, 25.218, 28.677, 31.249, 34.22, 36.376, 38.04, 41.06, 44.376,
  45.975, 48.99, 50, 54.688, 57.66, 64.319, 66.73, 70, 75.24, 79.48, 83.91, 87.19, 92.501, 94.99, 99.075,
  103.501, 107.97, 112.292, 116.99, 121.65, 126.525, 131.51, 136.51, 141.61, 146.912, 152.21, 157.71, 163.288,
  168.99,
];
/** The same for 6 to 11 in logs of 16 to 31 ft, and of 32 to 40 ft. */
const LONGER: readonly number[] = [1.249, 1.608, 1.854, 2.41, 3.542, 4.167];
const LONGEST: readonly number[] = [1.57, 1.8, 2.2, 2.9, 3.815, 4.499];

type Exceptions = ReadonlyMap<number, readonly number[]>;

/** Diameters at which a log of so many feet holds ten board feet more, or less, than the factor gives. */
const TEN_MORE: Exceptions = new Map([
  [5, [19, 21]],
  [6, [20, 21]],
  [7, [9]],
  [8, [24, 29, 38]],
  [9, [29, 43, 51]],
  [10, [9]],
  [11, [9, 58]],
  [13, [52]],
  [15, [45, 51]],
  [17, [46]],
  [19, [13]],
]);
const TEN_LESS: Exceptions = new Map([
  [4, [42, 46, 51, 52, 53, 54, 55, 60]],
  [5, [10, 41, 43, 46, 59]],
  [7, [11]],
  [10, [23]],
  [11, [25]],
  [12, [10]],
  [13, [6, 47]],
  [14, [6, 44]],
  [15, [6, 28]],
  [18, [44]],
  [19, [8, 9]],
  [20, [8, 9]],
]);

function factorOf(diameter: number, feet: number): number | undefined {
  const small = diameter >= 6 && diameter <= 11;
  if (small && feet >= 32) return LONGEST[diameter - 6];
  if (small && feet >= 16) return LONGER[diameter - 6];
  return FACTORS[diameter - 1];
}

/** The few logs that are scaled at half of ten board feet. */
function isHalf(diameter: number, feet: number): boolean {
  return (
    (diameter === 6 && feet >= 4 && feet <= 9) ||
    (diameter === 7 && feet >= 4 && feet <= 6) ||
    (diameter === 8 && feet >= 3 && feet <= 4)
  );
}

/**
 * Scribner Decimal C, in board feet (tens; 5 for the half unit). Parts of an inch and of a foot are dropped.
 * @returns undefined outside of the table: below 1 in or above 60 in, above 40 ft
 */
export function decimalC(diameter: number, feet: number): number | undefined {
  const [d, length] = [Math.floor(diameter), Math.floor(feet)];
  const factor = factorOf(d, length);
  if (factor === undefined || length < 1 || length > 40) return undefined;
  if (isHalf(d, length)) return 5;
  const correction =
    (TEN_MORE.get(length)?.includes(d) ? 1 : 0) - (TEN_LESS.get(length)?.includes(d) ? 1 : 0);
  return 10 * Math.max(0, Math.trunc((length * factor + 5) / 10) + correction);
}

/** From the 1/8 in kerf to the 1/4 in kerf: (1 + 1/8 + 1/16) / (1 + 1/4 + 1/16), as the law prints it (published). */
export const QUARTER_KERF = 0.904762;

/** Board feet of a 4 ft section: 0.904762 (0.22 d² - 0.71 d) (published). */
export function internationalSection(diameter: number): number {
  return QUARTER_KERF * Math.max(0, 0.22 * diameter ** 2 - 0.71 * diameter);
}

/**
 * International 1/4 in rule before rounding: 4 ft sections from the butt, the log 1/2 in thicker every 4 ft; what is left
 * over is a part of a section at the small end.
 */
export function internationalExact(diameter: number, feet: number): number {
  const sections = Math.min(1000, Math.max(0, Math.floor(feet / 4 + 1e-9)));
  const whole = Array.from({ length: sections }, (_, i) => internationalSection(diameter + i / 2));
  const rest = Math.max(0, feet / 4 - sections);
  return whole.reduce((sum, section) => sum + section, 0) + rest * internationalSection(diameter);
}

/** International 1/4 in rule, to the nearest five board feet. */
export function international(diameter: number, feet: number): number {
  return 5 * Math.floor(internationalExact(diameter, feet) / 5 + 0.5);
}
