import { type Enclosure, hardlyOpen, internalPressure } from "../../loads/wind-enclosed.ts";
import type { FrameEnclosure } from "../../statics/enclosure.ts";
import type { WallFace } from "../../statics/wall-faces.ts";
import { areaWords } from "../amount-words.ts";
import { defineCheck } from "../check.ts";
import { steps } from "../formula-words.ts";
import type { Say } from "../say.ts";

interface Data {
  readonly enclosure: FrameEnclosure;
  readonly topography: number | undefined;
  readonly elevation: boolean;
  readonly flow: "clear" | "obstructed" | undefined;
}

const CLASS: Readonly<Record<Enclosure, string>> = {
  open: "an open building (every side open over at least 80 percent)",
  "partially-open": "a partially open building (neither open, nor closed, nor open on one side alone)",
  "partially-enclosed":
    "a partially enclosed building (one side open by more than 1.1 times all else, and all else by at most a fifth)",
  enclosed: "an enclosed building (no side open by more than {small} or 1 percent of it)",
};

function sidesWords({ faces }: FrameEnclosure, say: Say): string {
  return say.list(
    faces.map((f) =>
      say.text("{line}: {open} of {all}", {
        line: f.line,
        open: areaWords(f.openings, say),
        all: areaWords(f.gross, say),
      }),
    ),
  );
}

/** The rule of the class with the areas of its sides; of a partially open building it is that no other rule holds. */
function formula({ class: kind, faces, dominant }: FrameEnclosure, say: Say): string | undefined {
  const small = areaWords(4, say);
  const each = (pattern: string, limit: (face: WallFace) => number): string =>
    steps(
      ...faces.map((face) =>
        say.text(pattern, {
          line: face.line,
          open: areaWords(face.openings, say),
          all: areaWords(face.gross, say),
          small,
          limit: areaWords(limit(face), say),
        }),
      ),
    );
  if (kind === "open") return each("{line}: {open} ≥ 0.8 × {all} = {limit}", ({ gross }) => 0.8 * gross);
  if (kind === "enclosed") return each("{line}: {open} ≤ min({small}, 0.01 × {all}) = {limit}", hardlyOpen);
  if (!dominant) return undefined;
  const { line, own, others } = dominant;
  const values = {
    line,
    open: areaWords(own.openings, say),
    all: areaWords(own.gross, say),
    others: areaWords(others.openings, say),
    gross: areaWords(others.gross, say),
    more: areaWords(1.1 * others.openings, say),
    small,
    least: areaWords(hardlyOpen(own), say),
    most: areaWords(0.2 * others.gross, say),
  };
  return steps(
    say.text("{line}: {open} > 1.1 × {others} = {more}", values),
    say.text("{line}: {open} > min({small}, 0.01 × {all}) = {least}", values),
    say.text("all else: {others} ≤ 0.2 × {gross} = {most}", values),
  );
}

/** What an open side of a partially open building adds. */
function caught({ enclosure: { class: kind, openSide, passage }, flow }: Data, say: Say): string {
  if (kind !== "partially-open" || !openSide) return "";
  const under = say.text(
    " Since one side is open, wind caught under the roof counts too, as under an open one with obstructed flow.",
  );
  if (flow !== "clear" || !(passage.x || passage.y)) return under;
  const through = passage.x
    ? say.text(" Along the ridge both sides are open: there it passes with clear flow, as the site says.")
    : say.text(" Across the ridge both sides are open: there it passes with clear flow, as the site says.");
  return under + through;
}

/** Symbols and what they were taken as, where the file leaves them open. */
function assumed(d: Data, say: Say): string {
  const taken = [
    ...(d.topography === undefined ? [say.text("K_zt = 1 (level ground)")] : []),
    ...(d.elevation ? [] : [say.text("K_e = 1 (sea level)")]),
  ];
  return taken.length > 0 ? say.text(" Taken besides: {what}.", { what: say.list(taken) }) : "";
}

export const enclosureFound = defineCheck<"results", Data>({
  meta: {
    id: "enclosure-found",
    title: "How closed the building is for the wind",
    level: "note",
    area: "loads",
    source: { text: "ASCE 7-16 and 7-22 sections 26.2 and 26.12, Table 26.13-1", status: "memory" },
    explanation: {
      what: "The openings of each side decide whether the building counts as open, partially open, partially enclosed or enclosed, and with that how hard wind presses from inside. This note says which it is.",
      why: "Wind that blows in through one open side lifts a roof far more than wind that finds every side closed.",
      formula:
        "A_o ≥ 0.8 A_g on every side: open; A_o > 1.1 A_oi, A_o > min(4 ft², 0.01 A_g) and A_oi ≤ 0.2 A_gi: partially enclosed; A_o ≤ min(4 ft², 0.01 A_g) on every side: enclosed; else partially open",
      remedy: "Nothing, if the openings are right. A side that “siding” does not name counts as open.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame, model }) {
    const enclosure = frame?.solution.loads.enclosure;
    const { siding, site, roof } = model.frame;
    const [first] = siding;
    if (!enclosure || !first || !roof) return;
    // found from what nobody can read, it is no finding
    if (enclosure.faces.some(({ openingsKnown }) => !openingsKnown)) return;
    yield {
      path: first.path.slice(0, first.path.lastIndexOf("/")),
      onKey: true,
      data: {
        enclosure,
        topography: site.wind?.topography,
        elevation: site.elevation !== undefined,
        flow: site.wind?.flow,
      },
    };
  },
  words: (d, say) => {
    const GCpi = internalPressure(d.enclosure.class).value;
    return say.text(
      "The wind takes this as {class}. Open of each side: {sides}. Pressure inside: {inside}.{caught}{assumed}",
      {
        class: say.text(CLASS[d.enclosure.class], { small: areaWords(4, say) }),
        sides: sidesWords(d.enclosure, say),
        inside: GCpi === 0 ? say.text("none") : `GC_pi = ±${say.number(GCpi)}`,
        caught: caught(d, say),
        assumed: assumed(d, say),
      },
    );
  },
  worked: ({ enclosure }, say) => formula(enclosure, say),
});
