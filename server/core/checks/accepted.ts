/**
 * Entries of `accept` themselves: one that covers nothing any more, or names a check that does not exist. They are
 * judged after all other checks have run, so they stand beside the registry, with the same metadata.
 */
import type { Accepted } from "../frame/frame.ts";
import { nearest } from "../text/nearest.ts";
import type { CheckMeta, Finding, Fix } from "./check.ts";
import type { Say } from "./say.ts";
import { LOADS_UNANSWERED } from "./unanswered.ts";

export const ACCEPT_IDLE: CheckMeta = {
  id: "accept-idle",
  title: "An accepted finding that is not there",
  level: "note",
  area: "file",
  source: { text: "the frame language of this program", status: "file-format" },
  explanation: {
    what: "An entry of accept covers no finding: what it accepted is mended, or its check or place is misspelt.",
    why: "A forgotten entry would hide the same trouble when it comes back.",
    remedy: "Remove the entry, or correct its check and place.",
  },
};

export const CHECK_FAILED: CheckMeta = {
  id: "check-failed",
  title: "A part of the program broke on this file",
  level: "error",
  area: "file",
  source: { text: "this program", status: "file-format" },
  explanation: {
    what: "A check, or the reading of the file, ended with a fault of the program.",
    why: "Nothing is known of what it looks for; its silence is no pass.",
    remedy: "Report it together with the file. The other checks went on.",
  },
};

/** What is judged after the checks of the registry, when it is known what the file accepts: none of it can be accepted. */
export const BESIDE_CHECKS: readonly CheckMeta[] = [LOADS_UNANSWERED, ACCEPT_IDLE, CHECK_FAILED];

/** @param idle entries that covered nothing; @param known ids of all checks */
export function idleFindings(idle: readonly Accepted[], known: readonly string[], say: Say): Finding[] {
  return idle.map((a) => {
    if (BESIDE_CHECKS.some(({ id }) => id === a.check))
      return finding(
        a.path,
        true,
        say.text("A finding of {check} cannot be accepted. Remove this entry.", { check: a.check }),
      );
    const exists = known.includes(a.check);
    const meant = exists ? undefined : nearest(a.check, known);
    const path = exists ? a.path : `${a.path}/check`;
    const message = exists
      ? a.at === undefined
        ? say.text(
            "There is no finding of {check} any more. Remove this entry, so that it cannot hide the next one.",
            { check: a.check },
          )
        : say.text("There is no finding of {check} at {at}. Remove this entry, or correct its place.", {
            check: a.check,
            at: a.at,
          })
      : meant === undefined
        ? say.text("There is no check called {check}, so this entry accepts nothing.", { check: a.check })
        : say.text("There is no check called {check}, so this entry accepts nothing. Did you mean {meant}?", {
            check: a.check,
            meant,
          });
    return finding(
      path,
      exists,
      message,
      meant === undefined
        ? []
        : [
            {
              title: say.text("Change to “{nearest}”", { nearest: meant }),
              edits: [{ kind: "replace", path, text: meant }],
            },
          ],
    );
  });
}

function finding(path: string, onKey: boolean, message: string, fixes: readonly Fix[] = []): Finding {
  return {
    check: ACCEPT_IDLE.id,
    level: ACCEPT_IDLE.level,
    path,
    onKey,
    message,
    places: [],
    related: [],
    fixes: () => fixes,
  };
}
