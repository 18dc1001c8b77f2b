import type { Measured } from "../frame/measured.ts";
import type { Placer } from "./placer.ts";

/**
 * Reports sticks that an entry measures and does not have; entries that cannot be placed have their finding already.
 * @param rafters ids of the roof's own rafters
 */
export function reportMeasured(p: Placer, rafters: readonly string[]): void {
  for (const { name, measured } of p.members.values())
    report(p, measured, () => p.sticks(name).map((stick) => stick.id));
  report(p, p.frame.roof?.rafters?.measured, () => rafters);
}

function report(p: Placer, measured: readonly Measured[] | undefined, sticks: () => readonly string[]): void {
  const named = (measured ?? []).flatMap(({ stick }) => stick ?? []);
  if (named.length === 0) return;
  const ids = sticks();
  if (ids.length === 0) return;
  // one that is measured already is not the one that was meant
  const free = ids.filter((id) => named.every(({ text }) => text !== id));
  for (const stick of named) if (!ids.includes(stick.text)) p.unknown(stick, "stick", free);
}
