/** `bentwright explain`: what a check is about. */

import type { CheckMeta } from "../core/checks/check.ts";
import { allMeta, SOURCE_STATUS } from "../core/checks/reference.ts";
import { nearest } from "../core/text/nearest.ts";
import { type Command, EXIT, readArguments, type Surroundings, WrongCall } from "./command.ts";

const HELP = `Usage: bentwright explain [CHECK]

Says what a check looks at, why it matters, the formula, what to do, and where the rule is
from. Without a name it lists all checks.

Exit code: 0, or 2 when there is no such check.`;

export const explain: Command = {
  name: "explain",
  summary: "say what a check is about",
  help: HELP,
  run(args, around) {
    const { positionals } = readArguments(args, {});
    const [id, ...others] = positionals;
    if (others.length > 0) throw new WrongCall("Name one check.");
    const metas = allMeta();
    if (id === undefined) {
      list(metas, around);
      return EXIT.fine;
    }
    const meta = metas.find((one) => one.id === id);
    if (!meta) {
      const close = nearest(
        id,
        metas.map((one) => one.id),
      );
      const hint = close === undefined ? "" : ` Did you mean \`${close}\`?`;
      throw new WrongCall(`There is no check \`${id}\`.${hint} \`bentwright explain\` lists all.`);
    }
    around.out(text(meta));
    return EXIT.fine;
  },
};

function list(metas: readonly CheckMeta[], around: Surroundings): void {
  const wide = Math.max(...metas.map(({ id }) => id.length));
  const areas = [...new Set(metas.map(({ area }) => area))];
  const parts = areas.map((area) => {
    const lines = metas
      .filter((meta) => meta.area === area)
      .map(({ id, level, title }) => `  ${id.padEnd(wide)}  ${level.padEnd(7)}  ${title}`);
    return `${area}\n${lines.join("\n")}`;
  });
  around.out(`${parts.join("\n\n")}\n`);
}

function text({ id, title, level, area, source, explanation }: CheckMeta): string {
  const { what, why, formula, remedy } = explanation;
  const parts = [
    `${id} (${level}, ${area})\n${title}`,
    `What: ${what}`,
    `Why: ${why}`,
    ...(formula === undefined ? [] : [`Formula: ${formula}`]),
    `What to do: ${remedy}`,
    `Source: ${source.text} (${SOURCE_STATUS[source.status]})`,
  ];
  return `${parts.join("\n\n")}\n`;
}
