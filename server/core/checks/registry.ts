/** All checks there are, in the order of the job. To add one: write its file and list it here. */
import { duplicateId } from "./file/duplicate-id.ts";
import { lineUnreadable } from "./file/line-unreadable.ts";
import { missingKey } from "./file/missing-key.ts";
import { missingSeparator } from "./file/missing-separator.ts";
import { notAFrame } from "./file/not-a-frame.ts";
import { questionOpen } from "./file/question-open.ts";
import { unclosedBracket } from "./file/unclosed-bracket.ts";
import { unclosedQuote } from "./file/unclosed-quote.ts";
import { unknownId } from "./file/unknown-id.ts";
import { unknownKey } from "./file/unknown-key.ts";
import { unreadableQuantity } from "./file/unreadable-quantity.ts";
import { valueOutOfRange } from "./file/value-out-of-range.ts";
import { wrongShape } from "./file/wrong-shape.ts";
import { wrongValue } from "./file/wrong-value.ts";
import { braceAngle } from "./geometry/brace-angle.ts";
import { braceNowhere } from "./geometry/brace-nowhere.ts";
import { braceShort } from "./geometry/brace-short.ts";
import { derivedDiffers } from "./geometry/derived-differs.ts";
import { endUnsupported } from "./geometry/end-unsupported.ts";
import { gridOrder } from "./geometry/grid-order.ts";
import { headUnderPeak } from "./geometry/head-under-peak.ts";
import { headroomLow } from "./geometry/headroom-low.ts";
import { jointApart } from "./geometry/joint-apart.ts";
import { overhangIgnored } from "./geometry/overhang-ignored.ts";
import { placementMissing } from "./geometry/placement-missing.ts";
import { postMissing } from "./geometry/post-missing.ts";
import { seriesCrowded } from "./geometry/series-crowded.ts";
import { spacingIgnored } from "./geometry/spacing-ignored.ts";
import { timberFloating } from "./geometry/timber-floating.ts";
import { timberNoLength } from "./geometry/timber-no-length.ts";
import { timbersOverlap } from "./geometry/timbers-overlap.ts";
import { twoReadings } from "./geometry/two-readings.ts";
import { anchorBoltsCrowded } from "./ground/anchor-bolts-crowded.ts";
import { anchorUnfit } from "./ground/anchor-unfit.ts";
import { barsCrowded } from "./ground/bars-crowded.ts";
import { footingNarrow } from "./ground/footing-narrow.ts";
import { footingThin } from "./ground/footing-thin.ts";
import { pierAboveFrost } from "./ground/pier-above-frost.ts";
import { pierBearing } from "./ground/pier-bearing.ts";
import { pierDepthMissing } from "./ground/pier-depth-missing.ts";
import { pierLifted } from "./ground/pier-lifted.ts";
import { pierOnRockLoose } from "./ground/pier-on-rock-loose.ts";
import { pierPushedOver } from "./ground/pier-pushed-over.ts";
import { pierTwice } from "./ground/pier-twice.ts";
import { piersMissing } from "./ground/piers-missing.ts";
import { postFootOverloaded } from "./ground/post-foot-overloaded.ts";
import { sideCoverShort } from "./ground/side-cover-short.ts";
import { woodNearEarth } from "./ground/wood-near-earth.ts";
import { dovetailDrawsOut } from "./joinery/dovetail-draws-out.ts";
import { dovetailDrop } from "./joinery/dovetail-drop.ts";
import { dovetailOverloaded } from "./joinery/dovetail-overloaded.ts";
import { dovetailUnfit } from "./joinery/dovetail-unfit.ts";
import { drawboreOutOfRange } from "./joinery/drawbore-out-of-range.ts";
import { fastenersCrowded } from "./joinery/fasteners-crowded.ts";
import { housingDeep } from "./joinery/housing-deep.ts";
import { jointAssumed } from "./joinery/joint-assumed.ts";
import { jointKeyIgnored } from "./joinery/joint-key-ignored.ts";
import { jointPulled } from "./joinery/joint-pulled.ts";
import { jointTwice } from "./joinery/joint-twice.ts";
import { kindUnfit } from "./joinery/kind-unfit.ts";
import { mortiseInLap } from "./joinery/mortise-in-lap.ts";
import { mortiseMeetsAnchor } from "./joinery/mortise-meets-anchor.ts";
import { mortiseWallThin } from "./joinery/mortise-wall-thin.ts";
import { mortisesCollide } from "./joinery/mortises-collide.ts";
import { nailsCrowded } from "./joinery/nails-crowded.ts";
import { nailsReach } from "./joinery/nails-reach.ts";
import { pegDistanceShort } from "./joinery/peg-distance-short.ts";
import { pegInOtherJoint } from "./joinery/peg-in-other-joint.ts";
import { pegOverloaded } from "./joinery/peg-overloaded.ts";
import { pegSize } from "./joinery/peg-size.ts";
import { pegsCrowded } from "./joinery/pegs-crowded.ts";
import { pocketFloorThin } from "./joinery/pocket-floor-thin.ts";
import { relishShort } from "./joinery/relish-short.ts";
import { scarfInSpan } from "./joinery/scarf-in-span.ts";
import { scarfUnfit } from "./joinery/scarf-unfit.ts";
import { screwComesOut } from "./joinery/screw-comes-out.ts";
import { screwsOverloaded } from "./joinery/screws-overloaded.ts";
import { screwsShort } from "./joinery/screws-short.ts";
import { sectionCutAway } from "./joinery/section-cut-away.ts";
import { stepDeep } from "./joinery/step-deep.ts";
import { stepRimShort } from "./joinery/step-rim-short.ts";
import { tenonLong } from "./joinery/tenon-long.ts";
import { tenonShort } from "./joinery/tenon-short.ts";
import { tenonThin } from "./joinery/tenon-thin.ts";
import { tenonWide } from "./joinery/tenon-wide.ts";
import { wedgeBlind } from "./joinery/wedge-blind.ts";
import { wedgeLong } from "./joinery/wedge-long.ts";
import { wedgeRelishShort } from "./joinery/wedge-relish-short.ts";
import { wedgeShort } from "./joinery/wedge-short.ts";
import { wedgeSlope } from "./joinery/wedge-slope.ts";
import { enclosureFound } from "./loads/enclosure-found.ts";
import { floorUncarried } from "./loads/floor-uncarried.ts";
import { roofUncarried } from "./loads/roof-uncarried.ts";
import { roofWeightless } from "./loads/roof-weightless.ts";
import { sidingUnplaced } from "./loads/siding-unplaced.ts";
import { siteLoadUnused } from "./loads/site-load-unused.ts";
import { siteValueMissing } from "./loads/site-value-missing.ts";
import { snowHeld } from "./loads/snow-held.ts";
import { timberWeightUnknown } from "./loads/timber-weight-unknown.ts";
import { windBeyondFigures } from "./loads/wind-beyond-figures.ts";
import { bearingCrushed } from "./members/bearing-crushed.ts";
import { braceHollowDeep } from "./members/brace-hollow-deep.ts";
import { frameRacks } from "./members/frame-racks.ts";
import { timberOverstressed } from "./members/timber-overstressed.ts";
import { timberSags } from "./members/timber-sags.ts";
import { timberSlender } from "./members/timber-slender.ts";
import { timberUnchecked } from "./members/timber-unchecked.ts";
import { birdsMouthDeep } from "./roof/birds-mouth-deep.ts";
import { coveringNeedsDeck } from "./roof/covering-needs-deck.ts";
import { coveringTooFlat } from "./roof/covering-too-flat.ts";
import { deckOverloaded } from "./roof/deck-overloaded.ts";
import { deckOverspanned } from "./roof/deck-overspanned.ts";
import { purlinLifted } from "./roof/purlin-lifted.ts";
import { rafterHeadLoose } from "./roof/rafter-head-loose.ts";
import { rafterLifted } from "./roof/rafter-lifted.ts";
import { rafterOverspanned } from "./roof/rafter-overspanned.ts";
import { rakeOverhangLong } from "./roof/rake-overhang-long.ts";
import { shedHighLower } from "./roof/shed-high-lower.ts";
import { sheetsSliver } from "./roof/sheets-sliver.ts";
import { type AnyCheck, anyCheck } from "./run.ts";
import { classUnused } from "./timber/class-unused.ts";
import { gradeAssumed } from "./timber/grade-assumed.ts";
import { largerThanLogs } from "./timber/larger-than-logs.ts";
import { longerThanMill } from "./timber/longer-than-mill.ts";
import { measuredOffStick } from "./timber/measured-off-stick.ts";
import { stickOversize } from "./timber/stick-oversize.ts";
import { stickUndersize } from "./timber/stick-undersize.ts";

export const CHECKS: readonly AnyCheck[] = [
  anyCheck(notAFrame),
  anyCheck(lineUnreadable),
  anyCheck(unclosedQuote),
  anyCheck(unclosedBracket),
  anyCheck(missingSeparator),
  anyCheck(unknownKey),
  anyCheck(duplicateId),
  anyCheck(missingKey),
  anyCheck(wrongShape),
  anyCheck(wrongValue),
  anyCheck(unreadableQuantity),
  anyCheck(valueOutOfRange),
  anyCheck(unknownId),
  anyCheck(questionOpen),
  anyCheck(gridOrder),
  anyCheck(twoReadings),
  anyCheck(placementMissing),
  anyCheck(timberNoLength),
  anyCheck(seriesCrowded),
  anyCheck(spacingIgnored),
  anyCheck(overhangIgnored),
  anyCheck(timberFloating),
  anyCheck(endUnsupported),
  anyCheck(postMissing),
  anyCheck(timbersOverlap),
  anyCheck(braceNowhere),
  anyCheck(braceShort),
  anyCheck(braceAngle),
  anyCheck(derivedDiffers),
  anyCheck(headroomLow),
  anyCheck(headUnderPeak),
  anyCheck(jointApart),
  anyCheck(longerThanMill),
  anyCheck(largerThanLogs),
  anyCheck(gradeAssumed),
  anyCheck(classUnused),
  anyCheck(stickUndersize),
  anyCheck(stickOversize),
  anyCheck(measuredOffStick),
  anyCheck(siteValueMissing),
  anyCheck(siteLoadUnused),
  anyCheck(snowHeld),
  anyCheck(sidingUnplaced),
  anyCheck(enclosureFound),
  anyCheck(windBeyondFigures),
  anyCheck(roofUncarried),
  anyCheck(roofWeightless),
  anyCheck(floorUncarried),
  anyCheck(timberWeightUnknown),
  anyCheck(frameRacks),
  anyCheck(timberOverstressed),
  anyCheck(timberSlender),
  anyCheck(bearingCrushed),
  anyCheck(timberSags),
  anyCheck(timberUnchecked),
  anyCheck(braceHollowDeep),
  anyCheck(jointTwice),
  anyCheck(kindUnfit),
  anyCheck(jointAssumed),
  anyCheck(tenonThin),
  anyCheck(pocketFloorThin),
  anyCheck(relishShort),
  anyCheck(stepDeep),
  anyCheck(stepRimShort),
  anyCheck(tenonLong),
  anyCheck(tenonWide),
  anyCheck(jointKeyIgnored),
  anyCheck(wedgeBlind),
  anyCheck(wedgeSlope),
  anyCheck(wedgeShort),
  anyCheck(wedgeLong),
  anyCheck(wedgeRelishShort),
  anyCheck(tenonShort),
  anyCheck(mortiseWallThin),
  anyCheck(mortisesCollide),
  anyCheck(mortiseInLap),
  anyCheck(mortiseMeetsAnchor),
  anyCheck(sectionCutAway),
  anyCheck(housingDeep),
  anyCheck(dovetailDrawsOut),
  anyCheck(dovetailDrop),
  anyCheck(dovetailOverloaded),
  anyCheck(dovetailUnfit),
  anyCheck(pegSize),
  anyCheck(pegsCrowded),
  anyCheck(pegInOtherJoint),
  anyCheck(pegDistanceShort),
  anyCheck(drawboreOutOfRange),
  anyCheck(scarfInSpan),
  anyCheck(scarfUnfit),
  anyCheck(jointPulled),
  anyCheck(pegOverloaded),
  anyCheck(fastenersCrowded),
  anyCheck(screwComesOut),
  anyCheck(screwsShort),
  anyCheck(nailsCrowded),
  anyCheck(nailsReach),
  anyCheck(screwsOverloaded),
  anyCheck(sideCoverShort),
  anyCheck(barsCrowded),
  anyCheck(footingThin),
  anyCheck(footingNarrow),
  anyCheck(pierAboveFrost),
  anyCheck(pierBearing),
  anyCheck(pierDepthMissing),
  anyCheck(pierLifted),
  anyCheck(pierOnRockLoose),
  anyCheck(pierPushedOver),
  anyCheck(postFootOverloaded),
  anyCheck(anchorBoltsCrowded),
  anyCheck(anchorUnfit),
  anyCheck(pierTwice),
  anyCheck(piersMissing),
  anyCheck(woodNearEarth),
  anyCheck(birdsMouthDeep),
  anyCheck(rafterOverspanned),
  anyCheck(rafterLifted),
  anyCheck(purlinLifted),
  anyCheck(rafterHeadLoose),
  anyCheck(deckOverspanned),
  anyCheck(deckOverloaded),
  anyCheck(rakeOverhangLong),
  anyCheck(shedHighLower),
  anyCheck(coveringTooFlat),
  anyCheck(coveringNeedsDeck),
  anyCheck(sheetsSliver),
];
