import type { Model, Timber } from "../../model/model.ts";

/**
 * Whether a timber comes from the file's own logs: its species is among them. Where no logs are listed, every timber
 * goes through the mill.
 */
export function ownSawn(model: Model, timber: Timber): boolean {
  const { logs } = model.frame.mill;
  if (logs.length === 0) return true;
  const species = timber.class?.species?.text;
  return (
    species !== undefined && logs.some((log) => log.species === undefined || log.species.text === species)
  );
}
