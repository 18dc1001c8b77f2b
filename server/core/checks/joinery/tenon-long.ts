import { defineCheck } from "../check.ts";
import { replaceFix } from "../replace-fix.ts";
import { judgedJoints } from "./judged.ts";
import { sizeFound, sizePath } from "./size-path.ts";

interface Data {
  readonly joint: string;
  readonly into: string;
  readonly length: number;
  readonly room: number;
  readonly wood: number;
  readonly pierces: boolean;
  readonly housing: number;
  /** a joint from the other side has the other half of the wood */
  readonly shared: boolean;
}

export const tenonLong = defineCheck<"model", Data>({
  meta: {
    id: "tenon-long",
    title: "A tenon too long for its timber",
    level: "warning",
    area: "joinery",
    source: {
      text: "common practice, no source: a blind mortise keeps 1 in of wood behind it; opposite tenons share the wood",
      status: "common-practice",
    },
    explanation: {
      what: "A blind tenon is longer than the timber it enters leaves room for.",
      why: "It would come out on the far side, meet another tenon, or leave a skin of wood that breaks out.",
      formula:
        "length ≤ thickness of the timber − housing − 1 in; with an opposite joint at most half the wood between the housings",
      remedy: "Shorten the tenon, or make it a through tenon (through: true).",
    },
  },
  input: "model",
  *find(model) {
    for (const j of judgedJoints(model)) {
      const { tenon } = j.sizes;
      if (!tenon || tenon.through) continue;
      const { room } = tenon;
      const length = tenon.length.value;
      if (length <= room + 1e-6) continue;
      const wood = j.face.thickness - j.sizes.housing.value;
      const pierces = length >= wood - 1e-6;
      yield {
        ...sizeFound(j, sizePath(j, "tenon/length", tenon.length), length, room, {
          joint: j.id,
          into: j.into.id,
          length,
          room,
          wood,
          pierces,
          housing: j.sizes.housing.value,
          shared: Math.abs(room - (wood - j.sizes.housing.value) / 2) < 1e-6,
        }),
        ...(pierces ? { level: "error" as const } : {}),
      };
    }
  },
  words: (d, say) =>
    say.text(
      d.pierces
        ? d.room > 0
          ? "The tenon at {joint} is {length} long, and {into} has {wood} of wood there: it comes out on the far side. Shorten it to {room}, or make it a through tenon."
          : "The tenon at {joint} is {length} long, and {into} has {wood} of wood there: it comes out on the far side. No blind tenon has room there: make it a through tenon, or take thicker wood for {into}."
        : "The tenon at {joint} is {length} long, and {into} has room for {room}: what is left behind it breaks out or another tenon is in the way. Shorten it to {room}.",
      {
        joint: d.joint,
        into: d.into,
        length: say.length(d.length),
        room: say.length(Math.max(0, d.room)),
        wood: say.length(d.wood),
      },
    ),
  worked: (d, say) => {
    const values = {
      length: say.length(d.length),
      thickness: say.length(d.wood + d.housing),
      housing: say.length(d.housing),
      behind: say.length(d.wood - d.room),
      room: say.length(d.room),
    };
    return d.shared
      ? say.text("{length} > ({thickness} − 2 × {housing}) ÷ 2 = {room}", values)
      : d.housing === 0
        ? say.text("{length} > {thickness} − {behind} = {room}", values)
        : say.text("{length} > {thickness} − {housing} − {behind} = {room}", values);
  },
  fixes: (d, say, model) => {
    const j = model.joints.find((x) => x.id === d.joint);
    const step = say.metric ? 5 / 25.4 : 1 / 2;
    const to = Math.floor(d.room / step + 1e-9) * step;
    if (!j?.entry || to <= 0 || j.sizes.tenon?.length.from !== "file") return [];
    return replaceFix(`${j.path}/tenon/length`, say.length(to), (length) =>
      say.text("Shorten the tenon to {length}", { length }),
    );
  },
});
