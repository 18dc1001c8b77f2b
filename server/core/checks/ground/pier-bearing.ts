import { type BearingUse, bearingUse, padFor, soilBearing } from "../../ground/bearing.ts";
import type { PadContact } from "../../ground/pad-pressure.ts";
import type { Pier } from "../../model/model.ts";
import { caseWords } from "../../statics/case-words.ts";
import { areaWords } from "../amount-words.ts";
import { defineCheck, type Fix } from "../check.ts";
import { fineLength, steps } from "../formula-words.ts";
import type { Say } from "../say.ts";
import { type OnSoil, onSoil } from "./on-soil.ts";
import {
  castSize,
  LEAST_PROJECTION,
  LEAST_THICKNESS,
  nextSize,
  padFix,
  pierStep,
  WIDEST_FOOTING,
} from "./pier-sizes.ts";

interface Data extends Pick<OnSoil, "soil" | "solution"> {
  readonly use: BearingUse;
  /** every pier of the entry: a size that is proposed stands at all of them */
  readonly alike: readonly OnSoil[];
}

interface Footing {
  readonly diameter: number;
  readonly thickness: number;
}

const isPad = ({ entry }: Pier): boolean => entry.kind === "pad";

/** A load nearer to the middle of a pad stands on it, in: less than is told in 1/16 in. */
const OFF_MIDDLE = 1 / 32;

const isOff = ({ off }: BearingUse): boolean => Math.max(...off) > OFF_MIDDLE;

/** @returns `13 7/8 in off its middle along the walls and 2 in along the bents` */
function offWords({ off: [x, y] }: BearingUse, say: Say): string {
  const values = { x: say.length(x), y: say.length(y) };
  if (y <= OFF_MIDDLE) return say.text("{x} off its middle along the walls", values);
  if (x <= OFF_MIDDLE) return say.text("{y} off its middle along the bents", values);
  return say.text("{x} off its middle along the walls and {y} along the bents", values);
}

/** The load stands over the edge of the pad. */
const tips = ({ pressure }: BearingUse): boolean => !Number.isFinite(pressure);

/** No thinner than it reaches past the tube (IRC R403.1.1; published), in usual steps. */
function thicknessFor(diameter: number, pier: Pier, say: Say): number {
  const least = Math.max(LEAST_THICKNESS, (diameter - pier.diameter) / 2);
  return Math.max(pier.footing?.thickness ?? 0, castSize(least, say));
}

function withFooting(pier: Pier, footing: Footing): Pier {
  return { ...pier, footing, bottom: pier.tubeBottom - footing.thickness };
}

/** Whether the soil carries every pier of the entry, each changed alike. */
const carries = ({ alike, soil }: Data, changed: (pier: Pier) => Pier): boolean =>
  alike.every(({ pier, cases }) => (bearingUse(changed(pier), cases, soil)?.ratio ?? 2) <= 1);

/** The smallest usual footing under a tube that does. */
function footingFor(d: Data, say: Say): Footing | undefined {
  const { use } = d;
  const { pier } = use;
  const made = (diameter: number): Footing => ({ diameter, thickness: thicknessFor(diameter, pier, say) });
  const least = padFor(use.down + use.weight, use.allowed.value).round;
  // footings of that size and more, each past the tube as the code asks; a heavier one may need the next
  const from = Math.max(
    least - pierStep(say),
    pier.footing?.diameter ?? 0,
    pier.diameter + 2 * LEAST_PROJECTION - 1e-3,
  );
  const diameter = nextSize(from, WIDEST_FOOTING, say, (size) =>
    carries(d, (each) => withFooting(each, made(size))),
  );
  return diameter === undefined ? undefined : made(diameter);
}

/** The smallest usual side of a pad that does. */
function padSide(d: Data, say: Say): number | undefined {
  return nextSize(d.use.pier.diameter, WIDEST_FOOTING, say, (diameter) =>
    carries(d, (pier) => ({ ...pier, diameter })),
  );
}

function remedyWords(d: Data, say: Say): string {
  if (isPad(d.use.pier)) {
    const side = padSide(d, say);
    if (side !== undefined) return say.text("A pad of {side} does.", { side: say.length(side) });
  } else {
    const footing = footingFor(d, say);
    if (footing)
      return say.text("A footing {diameter} across and {thickness} thick does.", {
        diameter: say.length(footing.diameter),
        thickness: say.length(footing.thickness),
      });
  }
  return say.text("No usual footing does: set more posts on piers of their own, or have the soil tested.");
}

/** A corner that lifts over less than is told in figures lifts nowhere: the pressure is the same in six figures. */
function toldContact({ contact }: BearingUse): PadContact | undefined {
  return contact?.kind === "corner-off" && Math.min(...contact.legs) < OFF_MIDDLE
    ? { kind: "whole" }
    : contact;
}

/** The formula of a pad by where it presses; `e` and `g` are how far the load stands off its middle along walls and bents. */
function padWorked(use: BearingUse, load: string, across: string, compared: string, say: Say): string {
  const { pier } = use;
  const contact = toldContact(use);
  const fine = (inches: number): string => fineLength(inches, say);
  const height = fine(pier.top[2] - pier.bottom);
  const half = say.length(pier.diameter / 2);
  const offs = [["e", use.force[0], use.off[0]] as const, ["g", use.force[1], use.off[1]] as const].filter(
    ([, , off]) => off > OFF_MIDDLE / 100,
  );
  const told = offs.map(([symbol, push, off]) => {
    const step = `${symbol}: ${say.force(Math.abs(push))} × ${height} ÷ ${load} = ${fine(off)}`;
    return !contact && off >= pier.diameter / 2 ? `${step} > ${across} ÷ 2 = ${half}` : step;
  });
  const even = `${load} ÷ (${across})²`;
  const left = (off: number): string => `(${across} ÷ 2 − ${fine(off)})`;
  // so near to the edge its figures tell no distance any more
  if (contact && pier.diameter / 2 - Math.max(...use.off) < OFF_MIDDLE) return steps(...told, compared);
  switch (contact?.kind) {
    case undefined:
      return steps(...told);
    case "whole": {
      const sum = offs.map(([, , off]) => fine(off)).join(" + ");
      return steps(
        ...told,
        sum === "" ? `${even} = ${compared}` : `${even} × (1 + 6 × (${sum}) ÷ ${across}) = ${compared}`,
      );
    }
    case "corner":
      return steps(...told, `3 × ${load} ÷ (8 × ${left(use.off[0])} × ${left(use.off[1])}) = ${compared}`);
    case "strip": {
      if (offs.length === 1)
        return steps(...told, `2 × ${load} ÷ (3 × ${across} × ${left(Math.max(...use.off))}) = ${compared}`);
      const [near, far] = [fine(contact.near), fine(contact.far)];
      return steps(
        ...told,
        say.text("pressed at one end: {near}", { near }),
        say.text("pressed at the other end: {far}", { far }),
        `6 × ${load} × ${near} ÷ (${across} × ((${near})² + ${near} × ${far} + (${far})²)) = ${compared}`,
      );
    }
    case "corner-off": {
      const [s, t] = contact.legs.map(fine) as [string, string];
      return steps(
        ...told,
        say.text("corner not pressed, along the walls: {s}", { s }),
        say.text("corner not pressed, along the bents: {t}", { t }),
        `${even} × (${across} ÷ ${s} + ${across} ÷ ${t} − 1) ÷ (${across} ÷ (2 × ${s}) + ${across} ÷ (2 × ${t}) − 1 + ${s} × ${t} ÷ (6 × (${across})²)) = ${compared}`,
      );
    }
  }
}

export const pierBearing = defineCheck<"results", Data>({
  meta: {
    id: "pier-bearing",
    title: "A pier that presses too hard on the soil",
    level: "error",
    area: "ground",
    source: {
      text: "IBC 2012 Table 1806.2 (bearing also IRC Table R401.4.1): presumptive values for soil that nobody has tested, against service loads",
      status: "published",
    },
    explanation: {
      what: "Under some load combination the post and the weight of its own concrete press more on the soil than the code allows for soil of that class.",
      why: "The pier settles, each pier by another amount, and the joints above it take what the ground gives.",
      formula:
        "(load of the post + weight of pier and footing) ÷ area ≤ bearing of the soil. The area is that of the footing, or of the tube without one. Displaced soil is not taken off, what sticks to the shaft does not count. What a push does to a tube the soil beside it takes (see pier-pushed-over). Under a pad of side B the pressure is a plane that cannot pull. The load stands e off its middle along the walls and g along the bents, each the push that way × its height ÷ load. Up to e + g = B/6 the corner presses with 1 + 6 (e + g)/B times the even pressure. With e alone beyond that it is 2 × load ÷ (3 B (B/2 − e)). From B/4 on both ways it is 3 × load ÷ (8 (B/2 − e)(B/2 − g)). Between these the plane is found by its balance. A pad tips where e or g is B/2.",
      remedy:
        "Cast a wider footing under the tube, no thinner than it reaches past it; or have the soil tested, since presumptive values are low.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame }) {
    const piers = onSoil(frame);
    for (const { pier, cases, soil, solution } of piers) {
      const use = bearingUse(pier, cases, soil);
      if (!use || use.ratio <= 1 + 1e-9) continue;
      const key = isPad(pier) ? "width" : pier.footing ? "footing/diameter" : "diameter";
      yield {
        path: `${pier.entry.path}/${key}`,
        place: pier.id,
        data: {
          use,
          alike: piers.filter((each) => each.pier.entry.path === pier.entry.path),
          soil,
          solution,
        },
        ...(tips(use)
          ? { value: Math.max(...use.off), limit: pier.diameter / 2, unit: "in" as const }
          : { value: use.pressure, limit: use.allowed.value, unit: "psf" as const }),
        // equal reactions at mirrored places differ in the last digits
        severity: tips(use) ? Number.MAX_VALUE : Math.round(use.pressure),
      };
    }
  },
  words: (d, say) => {
    const { use } = d;
    const values = {
      pier: use.pier.id,
      post: use.pier.timber?.id ?? "",
      combination: caseWords(d.solution, use.caseId, say),
      down: say.force(use.down),
      weight: say.force(use.weight),
      help: remedyWords(d, say),
    };
    if (tips(use))
      return say.text(
        "{pier} tips under {combination}: a push of {push} at its top, with {down} from {post} and {weight} of its own on it, puts the load {off}, and its edge is {half} away. {help}",
        {
          ...values,
          push: say.force(use.push),
          off: offWords(use, say),
          half: say.length(use.pier.diameter / 2),
        },
      );
    // off its middle a pad carries less than its area times the soil's pressure: nothing is "left" to tell
    if (isPad(use.pier) && isOff(use))
      return say.text(
        "{pier} presses the soil at its edge with {pressure} under {combination}: {down} from {post} and {weight} of its own concrete stand {off}, because {push} push at its top, {height} above its base. “soil: {soil}” carries {allowed} by the code’s table; beyond that the pad settles on that side and leans. {help}",
        {
          ...values,
          pressure: say.pressure(use.pressure),
          off: offWords(use, say),
          push: say.force(use.push),
          height: say.length(use.pier.top[2] - use.pier.bottom),
          soil: d.soil,
          allowed: say.pressure(use.allowed.value),
        },
      );
    return say.text(
      "{pier} presses the soil with {pressure} under {combination}: {down} from {post} and {weight} of its own concrete on {area}. “soil: {soil}” carries {allowed} by the code’s table, which leaves {left} for the post; beyond that the pier settles and the joints above it open. {help}",
      {
        ...values,
        pressure: say.pressure(use.pressure),
        area: areaWords(use.area, say),
        soil: d.soil,
        allowed: say.pressure(use.allowed.value),
        left: say.force(Math.max(0, soilBearing(use.area, use.weight, use.allowed.value).net)),
      },
    );
  },
  worked: ({ use }, say) => {
    const load = `(${say.force(use.down)} + ${say.force(use.weight)})`;
    const compared = `${say.pressure(use.pressure)} > ${say.pressure(use.allowed.value)}`;
    const across = say.length(use.pier.footing?.diameter ?? use.pier.diameter);
    return isPad(use.pier)
      ? padWorked(use, load, across, compared, say)
      : `${load} ÷ (π × (${across})² ÷ 4) = ${compared}`;
  },
  fixes: (d, say): Fix[] => {
    const { entry, footing: before } = d.use.pier;
    if (isPad(d.use.pier)) return padFix(d.use.pier, padSide(d, say), say);
    const footing = footingFor(d, say);
    if (!footing) return [];
    const [diameter, thickness] = [say.length(footing.diameter), say.length(footing.thickness)];
    const replaced = (key: string, text: string) =>
      ({ kind: "replace", path: `${entry.path}/footing/${key}`, text }) as const;
    return [
      {
        title: say.text("Take a footing of {diameter}, {thickness} thick", { diameter, thickness }),
        edits: before
          ? [
              replaced("diameter", diameter),
              ...(footing.thickness > before.thickness + 1e-6 ? [replaced("thickness", thickness)] : []),
            ]
          : [
              {
                kind: "add",
                path: entry.path,
                key: "footing",
                text: `{diameter: ${diameter}, thickness: ${thickness}}`,
              },
            ],
      },
    ];
  },
});
