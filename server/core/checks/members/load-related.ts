/** Where the load of an overtaxed timber is from, as related information of its finding: the roof over it, what rests on it. */
import type { Timber } from "../../model/model.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { FrameResults, MemberUse } from "../../statics/frame-results.ts";
import { broughtTo, roofAreas } from "../../statics/load-path.ts";
import { areaWords } from "../amount-words.ts";
import type { Found } from "../check.ts";

type Related = NonNullable<Found<never>["related"]>;

/** Load from above is what these are made of; pull and sideways bending have other causes. */
const FROM_ABOVE: ReadonlySet<MemberUse["what"]> = new Set([
  "bending",
  "shear",
  "notched-shear",
  "compression",
  "compression-and-bending",
  "live-deflection",
  "total-deflection",
]);
/** givers named, and the share of the load from which one is worth naming */
const MOST_GIVERS = 2;
const WORTH_NAMING = 0.1;
/** lb */
const NOTHING = 1;

/** What presses where wood is crushed: the other timber of the joint, with its force there. */
function pressing({ model, solution }: FrameResults, timber: Timber, use: MemberUse): Related {
  const joint = model.joints.find(({ id }) => id === use.place);
  const other = joint && (joint.of.id === timber.id ? joint.into : joint.of);
  if (!other || !use.area) return [];
  const force = use.value * use.area.value;
  return [
    {
      path: other.path,
      message: (say) =>
        say.text("{other} presses {stick} there with {force} under {combination}.", {
          other: other.id,
          stick: timber.id,
          force: say.force(force),
          combination: caseWords(solution, use.caseId, say),
        }),
    },
  ];
}

/** @returns tells of a timber and the check that it fails what brings its load, in at most three lines */
export function loadRelated(frame: FrameResults): (timber: Timber, use: MemberUse) => Related {
  const { model, solution } = frame;
  let areas: ReadonlyMap<string, number> | undefined;
  return (timber, use) => {
    if (use.what === "bearing") return pressing(frame, timber, use);
    const cases = solution.cases.filter(({ frameCase }) => frameCase.id === use.caseId);
    // under wind the load from above is not what overtaxes it
    const fromAbove = FROM_ABOVE.has(use.what) && cases.every(({ frameCase }) => frameCase.vertical);
    if (!fromAbove || use.bends === "width") return [];
    areas ??= roofAreas(model, solution.loads.strips);
    const area = areas.get(timber.id) ?? 0;
    const roof = model.frame.roof;
    const [brought] = broughtTo(cases, [timber]);
    const givers = (brought?.from ?? [])
      .filter(({ force }) => force >= Math.max(NOTHING, WORTH_NAMING * (brought?.total ?? 0)))
      .slice(0, MOST_GIVERS);
    return [
      ...(roof && area > 0
        ? [
            {
              path: roof.path,
              message: (say) =>
                say.text("{stick} carries {area} of roof.", { stick: timber.id, area: areaWords(area, say) }),
            } satisfies Related[number],
          ]
        : []),
      ...givers.flatMap(({ member, force, timbers }): Related => {
        const path = model.sticks.get(member)?.[0]?.path;
        if (path === undefined) return [];
        return [
          {
            path,
            message: (say) =>
              say.text(
                timbers > 1
                  ? "{stick} takes {force} from {count} × {member} under {combination}."
                  : "{stick} takes {force} from {member} under {combination}.",
                {
                  stick: timber.id,
                  force: say.force(force),
                  count: timbers,
                  member,
                  combination: caseWords(solution, use.caseId, say),
                },
              ),
          },
        ];
      }),
    ];
  };
}
