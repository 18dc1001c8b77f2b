/** Which logs of the file a timber may be sawn from. */
import type { Mill } from "../frame/frame.ts";
import type { Model, Timber } from "../model/model.ts";

/** @returns undefined where the timber is not sawn from logs of the file: none are listed, or none of its species */
export function logsFor(model: Model, timber: Timber): Mill["logs"] | undefined {
  const species = timber.class?.species?.text;
  if (species === undefined) return undefined;
  const own = model.frame.mill.logs.filter(
    (log) => log.species === undefined || log.species.text === species,
  );
  return own.length === 0 ? undefined : own;
}
