import { BARS, type BarNumber, type CoverCase, concreteCover, largestCage } from "../../ground/rebar.ts";
import type { Pier } from "../../model/model.ts";
import { defineCheck } from "../check.ts";
import { fineLength, steps } from "../formula-words.ts";
import type { Say } from "../say.ts";
import { nextSize, padFix, tubeFix, WIDEST_FOOTING, WIDEST_TUBE } from "./pier-sizes.ts";

interface Data {
  readonly pier: Pier;
  readonly count: number;
  readonly bar: BarNumber;
  readonly where: CoverCase;
  /** what a ring of bars with enough concrete outside leaves between two, inches; of a single bar, what its cage is too small by */
  readonly clear: number;
  readonly least: number;
}

/** Least clear distance between upright bars: 1 1/2 in and 1 1/2 bar diameters (ACI 318-19 25.2.3; memory). */
const LEAST_CLEAR = 1.5;

const isBar = (size: number): size is BarNumber => Object.hasOwn(BARS, size);

/** A tube is formed, a pad is poured against earth. */
const caseOf = ({ entry }: Pier): CoverCase => (entry.kind === "pad" ? "against-earth" : "exposed");

/** Between two bars of a ring as wide as the cover allows: its chord less a bar; a square's sides less a bar. */
function clearOf(pier: Pier, width: number, count: number, bar: BarNumber): number {
  const { diameter } = BARS[bar];
  const ring = largestCage(width, caseOf(pier), bar) - diameter;
  if (count === 1 || ring < 0) return ring;
  const apart =
    pier.entry.kind === "pad" ? (4 * ring) / Math.max(4, count) : ring * Math.sin(Math.PI / count);
  return apart - diameter;
}

const leastOf = (count: number, bar: BarNumber): number =>
  count === 1 ? 0 : LEAST_CLEAR * Math.max(1, BARS[bar].diameter);

function widthThatHolds({ pier, count, bar, least }: Data, say: Say): number | undefined {
  const most = pier.entry.kind === "pad" ? WIDEST_FOOTING : WIDEST_TUBE;
  return nextSize(pier.diameter, most, say, (width) => clearOf(pier, width, count, bar) >= least - 1e-6);
}

export const barsCrowded = defineCheck<"model", Data>({
  meta: {
    id: "bars-crowded",
    title: "Bars with too little concrete around them",
    level: "warning",
    area: "ground",
    source: {
      text: "ACI 318-19 Table 20.5.1.3.1 (cover; published) and 25.2.3 (1 1/2 in and 1 1/2 bars between upright bars; memory)",
      status: "memory",
    },
    explanation: {
      what: "The bars of a pier, set in as far as concrete must cover them, come nearer each other than concrete flows between, or do not fit at all.",
      why: "Bars near the face rust and burst the concrete; stones jam between crowded bars and leave voids, in a pier that nobody sees again.",
      formula:
        "ring = diameter − 2 × cover − bar; in a tube ring × sin(180° ÷ bars) − bar, in a pad 4 × ring ÷ bars − bar, for a single bar the ring itself (≥ 0) ≥ 1 1/2 in and 1 1/2 bar diameters; cover 1 1/2 in in a tube, 2 in from No.6 on, 3 in against earth",
      remedy: "Take a wider pier, fewer bars or thinner ones.",
    },
  },
  input: "model",
  *find({ piers }) {
    for (const pier of piers) {
      const { rebar } = pier.entry;
      if (!rebar || !isBar(rebar.size)) continue;
      const { count, size: bar } = rebar;
      const clear = clearOf(pier, pier.diameter, count, bar);
      const least = leastOf(count, bar);
      if (clear >= least - 1e-6) continue;
      yield {
        path: rebar.path,
        onKey: true,
        place: pier.id,
        data: { pier, count, bar, where: caseOf(pier), clear, least },
        value: clear,
        limit: least,
        unit: "in",
        severity: least - clear,
      };
    }
  },
  words: (d, say) => {
    const values = {
      pier: d.pier.id,
      width: say.length(d.pier.diameter),
      count: d.count,
      bar: String(d.bar),
      cover: say.length(concreteCover(d.where, d.bar).value),
      clear: fineLength(d.clear, say),
      least: say.length(d.least),
      help: helpWords(d, say),
    };
    if (d.clear < 0)
      return say.text(
        "{pier} is {width} across, which has no room for its bars ({count} of No.{bar}) with {cover} of concrete outside them: nearer the face they rust and burst it. {help}",
        values,
      );
    return say.text(
      "{pier} is {width} across: with {cover} of concrete outside them its {count} bars No.{bar} stand {clear} apart, less than {least}; stones jam between them and leave voids. {help}",
      values,
    );
  },
  worked: (d, say) => {
    const bar = fineLength(BARS[d.bar].diameter, say);
    const cover = say.length(concreteCover(d.where, d.bar).value);
    const size = largestCage(d.pier.diameter, d.where, d.bar) - BARS[d.bar].diameter;
    const ring = `${say.length(d.pier.diameter)} − 2 × ${cover} − ${bar} = ${fineLength(size, say)}`;
    const compared = `${fineLength(d.clear, say)} < ${say.length(d.least)}`;
    if (d.clear === size) return `${ring} < ${say.length(d.least)}`;
    const apart =
      d.pier.entry.kind === "pad"
        ? `4 × ${fineLength(size, say)} ÷ ${Math.max(4, d.count)}`
        : `${fineLength(size, say)} × sin (180° ÷ ${d.count})`;
    return steps(ring, `${apart} − ${bar} = ${compared}`);
  },
  fixes: (d, say) => {
    const width = widthThatHolds(d, say);
    return d.pier.entry.kind === "pad" ? padFix(d.pier, width, say) : tubeFix(d.pier, width, say);
  },
});

function helpWords(d: Data, say: Say): string {
  const width = widthThatHolds(d, say);
  return width === undefined
    ? say.text("Take fewer bars or thinner ones.")
    : say.text("Take {width}, or fewer bars or thinner ones.", { width: say.length(width) });
}
