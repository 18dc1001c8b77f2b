import type { Placer } from "./placer.ts";

/** Reports sticks that an entry measures and does not have; entries that cannot be placed have their finding already. */
export function reportMeasured(p: Placer): void {
  for (const member of p.members.values()) {
    const ids = p.sticks(member.name).map((stick) => stick.id);
    if (ids.length === 0) continue;
    const named = (member.measured ?? []).flatMap(({ stick }) => stick ?? []);
    // one that is measured already is not the one that was meant
    const free = ids.filter((id) => named.every(({ text }) => text !== id));
    for (const stick of named) if (!ids.includes(stick.text)) p.unknown(stick, "stick", free);
  }
}
