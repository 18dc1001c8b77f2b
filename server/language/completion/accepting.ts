/** What an entry of `accept` can name: checks and places, first those that this file has findings of. */
import type { Finding } from "../../core/checks/check.ts";
import { CHECKS } from "../../core/checks/registry.ts";
import { keysOf } from "../../document/tree.ts";
import { canBeAccepted } from "../accept.ts";
import { type Name, type Naming, textAt } from "./naming.ts";

/** Checks with findings that wait for an answer, then all others. */
export function checksFirstFound({ findings, say }: Naming): readonly Name[] {
  const counts = new Map<string, number>();
  for (const { check } of findings.filter(canBeAccepted)) counts.set(check, (counts.get(check) ?? 0) + 1);
  const names = CHECKS.map(({ meta: { id, title } }) => {
    const count = counts.get(id) ?? 0;
    const words = say.text(title);
    const detail =
      count === 0
        ? words
        : count === 1
          ? say.text("{title}: one finding here", { title: words })
          : say.text("{title}: {count} findings here", { title: words, count });
    return { text: id, detail };
  });
  return [...names.filter(({ text }) => counts.has(text)), ...names.filter(({ text }) => !counts.has(text))];
}

/** Places and entries that have a finding of the check that is written beside, then every stick, joint and pier. */
export function acceptedPlaces({ findings, map, model, say }: Naming): readonly Name[] {
  const check = textAt(map, "check");
  const open = findings.filter((finding) => canBeAccepted(finding) && (!check || finding.check === check));
  const found = open.flatMap((finding) =>
    placesOf(finding).map((text) => ({
      text,
      detail: say.text("has a finding of {check}", { check: finding.check }),
    })),
  );
  const all = [
    ...(model?.timbers ?? []).map(({ id, kind }) => ({ text: id, detail: say.text(kind) })),
    ...(model?.joints ?? []).map(({ id, kind }) => ({ text: id, detail: say.text(kind) })),
    ...(model?.piers ?? []).map(({ id, entry }) => ({ text: id, detail: say.text(entry.kind) })),
  ];
  return [...found, ...all];
}

const ENTRIES: ReadonlySet<string> = new Set(["members", "joints", "piers"]);

/** The places one by one, and the entry that they all belong to. */
function placesOf({ places, path }: Finding): readonly string[] {
  const [section = "", name] = keysOf(path);
  return name !== undefined && ENTRIES.has(section) ? [...places, name] : places;
}
