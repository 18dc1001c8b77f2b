import { findingsFixture } from "../../fixtures.ts";
import { gate } from "./gate.ts";

findingsFixture(
  "question-open: every entry, until it is removed; half an entry is told as such",
  `${gate({})}ask:
  - {what: which wood the mill will saw, whom: the sawyer}
#   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ warning question-open: Not known yet: which wood the mill will saw. What stands in its place is assumed, and all checks go by it. Ask the sawyer, correct it, and remove this entry.
  - {what: the soil}
#   ^^^^^^^^^^^^^^^^ error missing-key: whom
`,
);
