// Generated from schemas/frame.schema.json by `npm run generate`. Do not edit.
"use strict";
export const validate = validate52;

const schema19 = {"$schema":"https://json-schema.org/draft/2020-12/schema","$id":"frame.schema.json","title":"Timber frame","$comment":"x-quantity: what a value measures. x-ref: what its words name. x-default-source: why the default is what it is.","description":"A small timber frame. Bents are numbered, walls lettered; x runs along the walls, y across the bents, z up.","type":"object","additionalProperties":false,"properties":{"frame":{"description":"What the frame is called, on every drawing.","type":"string","examples":["Cider-press pavilion"]},"format":{"description":"The version of this format.","type":"integer","const":1,"default":1,"x-default-source":"the only one so far","examples":[1]},"units":{"description":"What a bare number means. Any length may name its own unit.","type":"string","enum":["inch","mm"],"examples":["inch"],"default":"inch","x-default-source":"common practice"},"basis":{"description":"The rules it is judged by.","type":"object","additionalProperties":false,"properties":{"loads":{"description":"The load standard. The ground snow of 7-22 is at strength level and must not be mixed with 7-16.","type":"string","enum":["asce-7-16","asce-7-22"],"examples":["asce-7-16"]},"risk-category":{"description":"How much depends on it: i for farm and small storage buildings, ii for most others.","type":"string","enum":["i","ii","iii","iv"],"examples":["i"]}},"examples":["{loads: asce-7-16, risk-category: i}"]},"site":{"description":"What only the place can give.","type":"object","additionalProperties":false,"properties":{"snow":{"description":"The snow that the roof carries.","type":"object","additionalProperties":false,"properties":{"ground":{"description":"Ground snow load from the map of the load standard or the building office.","type":["string","number"],"x-quantity":"pressure","examples":["45 psf","2.2 kPa"]},"exposure":{"description":"How freely the wind blows over the roof.","type":"string","enum":["fully-exposed","partially-exposed","sheltered"],"examples":["fully-exposed"]},"thermal":{"description":"How warm the roof is below the snow: open to the air, closed but unheated, heated, over a cold ventilated loft, a freezer or a heated greenhouse.","type":"string","enum":["open","unheated","heated","cold-ventilated","freezer","greenhouse"],"examples":["open"]},"slides":{"description":"The covering sheds snow and nothing at the eaves holds it.","type":"boolean","examples":[true],"default":false,"x-default-source":"common practice"},"winter-wind":{"description":"Winter wind parameter W2 of the site, from the map of ASCE 7-22: the share of the winter in which the wind blows over 10 mph. Needed with asce-7-22 where snow drifts over the ridge: purlins, propped rafters, or over 20 ft from eave to ridge.","type":"number","exclusiveMinimum":0,"maximum":1,"examples":[0.45]}},"examples":["{ground: 45 psf, exposure: partially-exposed, thermal: open}"]},"wind":{"description":"The wind that the frame stands against.","type":"object","additionalProperties":false,"properties":{"speed":{"description":"Basic wind speed from the map for the risk category, three-second gust.","type":["string","number"],"x-quantity":"speed","examples":["107 mph"]},"exposure":{"description":"B: among trees and houses. C: open country. D: by open water.","type":"string","enum":["B","C","D"],"examples":["B"]},"flow":{"description":"Under an open roof, or between two open sides: clear, or obstructed when goods are stacked over half of the opening.","type":"string","enum":["clear","obstructed"],"examples":["clear"]},"topography":{"description":"K_zt: how much a hill, ridge or bluff under the site speeds the wind up (ASCE 7 section 26.8); 1 on level or gently rolling ground.","type":"number","minimum":1,"maximum":4,"examples":[1.3],"default":1,"x-default-source":"level ground, common practice"}},"examples":["{speed: 107 mph, exposure: C, flow: clear}"]},"elevation":{"description":"How high the place lies above the sea: thin air pushes less (K_e, ASCE 7 section 26.9). Without it sea level is taken, which is never too little.","type":["string","number"],"x-quantity":"length","examples":["5200 ft"]},"frost-depth":{"description":"How deep the ground freezes.","type":["string","number"],"x-quantity":"length","examples":["32 in"]},"soil":{"description":"What the piers stand on.","type":"string","enum":["sand","gravel","clay","sedimentary-rock","bedrock"],"examples":["sand"]},"ground":{"description":"The height of the ground above the datum, by bent (2), by wall (B) or at a place (A3). A place's own key wins.","type":"object","additionalProperties":false,"patternProperties":{"^(?:[1-9][0-9]*|[A-Z](?:[1-9][0-9]*)?)$":{"description":"The height of the ground here.","type":["string","number"],"x-quantity":"length","examples":["-4 in"]}},"x-ref":["wall","bent","place"],"examples":["{1: 0, 2: -4 in, 3: -11 in}"]}}},"timber":{"description":"The classes of timber, each under a name of your own.","type":"object","propertyNames":{"pattern":"^[\\p{L}][\\p{L}\\p{N}_-]*$"},"additionalProperties":{"description":"A class of timber.","type":"object","additionalProperties":false,"properties":{"species":{"$ref":"#/$defs/species"},"grade":{"description":"The grade. Own-sawn timber without a stamp counts as No. 2.","type":"string","x-ref":["grade"],"examples":["no-1","no-2","select-structural"]},"seasoning":{"description":"green: cut and joined wet. dry: 19 percent moisture or less.","type":"string","enum":["green","dry"],"examples":["green"],"default":"green","x-default-source":"common practice"},"surface":{"description":"rough: as sawn, sections are actual sizes. planed: `2x8` names the planed size, 1 1/2 in × 7 1/4 in; a size like that itself is actual.","type":"string","enum":["rough","planed"],"examples":["rough"],"default":"rough","x-default-source":"common practice"},"values":{"description":"Reference design values of your own, instead of the tabled ones.","type":"object","additionalProperties":false,"properties":{"Fb":{"description":"Bending stress (Fb).","type":["string","number"],"x-quantity":"stress","examples":["875 psi"]},"Ft":{"description":"Tension along the grain.","type":["string","number"],"x-quantity":"stress","examples":["450 psi"]},"Fv":{"description":"Shear along the grain.","type":["string","number"],"x-quantity":"stress","examples":["135 psi"]},"Fc-perp":{"description":"Compression across the grain.","type":["string","number"],"x-quantity":"stress","examples":["335 psi"]},"Fc":{"description":"Compression along the grain.","type":["string","number"],"x-quantity":"stress","examples":["900 psi"]},"E":{"description":"Modulus of elasticity.","type":["string","number"],"x-quantity":"stress","examples":["1100000 psi"]},"E-min":{"description":"Modulus of elasticity for stability.","type":["string","number"],"x-quantity":"stress","examples":["400000 psi"]},"G":{"description":"Specific gravity, ovendry.","type":"number","minimum":0.05,"maximum":1.5,"examples":[0.36]}},"examples":["{Fb: 875 psi}"],"minProperties":1},"because":{"description":"Where your own values come from.","type":"string","examples":["graded by a licensed grader, May 2027"]},"weight":{"description":"Weight of your own, instead of the usual one.","type":["string","number"],"x-quantity":"density","examples":["35 pcf"]}},"required":["species"],"examples":["{species: eastern-white-pine, grade: no-1, seasoning: green, surface: rough}"],"dependentRequired":{"values":["because"]}},"examples":["{frame: {species: eastern-white-pine, grade: no-1}}"],"minProperties":1},"mill":{"description":"What the saw and the logs can give.","type":"object","additionalProperties":false,"properties":{"longest-cut":{"description":"The longest timber the mill can saw.","type":["string","number"],"x-quantity":"length","examples":["21 ft"]},"kerf":{"description":"What the blade takes.","type":["string","number"],"x-quantity":"length","examples":["3/32 in"]},"logs":{"description":"The logs at hand.","type":"array","items":{"description":"Logs of one kind.","type":"object","additionalProperties":false,"properties":{"species":{"$ref":"#/$defs/species"},"small-end":{"description":"Diameter at the small end, inside the bark.","type":["string","number"],"x-quantity":"length","examples":["19 in"]},"length":{"description":"How long the logs are.","type":["string","number"],"x-quantity":"length","examples":["22 ft"]},"count":{"description":"How many logs of this kind.","type":"integer","minimum":1,"maximum":1000,"examples":[9]}},"required":["small-end","length","count"],"examples":["{species: eastern-white-pine, small-end: 19 in, length: 22 ft, count: 9}"]},"examples":["[{species: eastern-white-pine, small-end: 19 in, length: 22 ft, count: 9}]"]}}},"grid":{"description":"The lines everything is placed by.","type":"object","additionalProperties":false,"properties":{"walls":{"description":"The walls, lettered, each with its distance from the first.","type":"object","additionalProperties":false,"patternProperties":{"^[A-Z]$":{"$ref":"#/$defs/wallLine"}},"minProperties":1,"examples":["{A: 0, B: 13 ft}"]},"bents":{"description":"The bents, numbered, each with its distance from the first.","type":"object","additionalProperties":false,"patternProperties":{"^[1-9][0-9]*$":{"$ref":"#/$defs/bentLine"}},"minProperties":1,"examples":["{1: 0, 2: 9 ft, 3: 18 ft}"]},"levels":{"description":"Heights above the datum, each under a name of your own.","type":"object","propertyNames":{"pattern":"^[\\p{L}][\\p{L}\\p{N}_-]*$"},"additionalProperties":{"description":"This height above the datum.","type":["string","number"],"x-quantity":"length","examples":["7 ft 10 in"]},"examples":["{pier-top: 8 in, tie-top: 7 ft 10 in, eave: 9 ft 4 in}"]}},"required":["walls","bents"],"examples":["{walls: {A: 0, B: 13 ft}, bents: {1: 0, 2: 9 ft}}"]},"members":{"description":"The timbers, each entry under a name of your own.","type":"object","propertyNames":{"pattern":"^[\\p{L}][\\p{L}\\p{N}_-]*$"},"additionalProperties":{"$ref":"#/$defs/member"},"examples":["{post: {kind: post, section: 8x8, at: [A1, A2, B1, B2]}}"],"minProperties":1},"joints":{"description":"The joints, each entry under a name of your own.","type":"object","propertyNames":{"pattern":"^[\\p{L}][\\p{L}\\p{N}_-]*$"},"additionalProperties":{"$ref":"#/$defs/joint"},"examples":["{post-head: {kind: mortise-and-tenon, of: post, into: plate}}"]},"roof":{"description":"The roof and what lies on it.","type":"object","required":["kind"],"discriminator":{"propertyName":"kind"},"oneOf":[{"$ref":"#/$defs/roof-gable"},{"$ref":"#/$defs/roof-shed"}]},"piers":{"description":"The piers, each entry under a name of your own.","type":"object","propertyNames":{"pattern":"^[\\p{L}][\\p{L}\\p{N}_-]*$"},"additionalProperties":{"$ref":"#/$defs/pier"},"examples":["{all: {under: post, kind: tube, diameter: 16 in, depth: 50 in}}"]},"siding":{"description":"The walls that are closed, by the outer wall (A) or end bent (1) they stand on. A side that is not named is open. From the openings of each side follow the enclosure class of the load standard and the wind on walls and roof; the whole face of a named side catches wind, its openings too.","type":"object","additionalProperties":false,"patternProperties":{"^(?:[1-9][0-9]*|[A-Z])$":{"description":"One closed side. Without openings it is closed all over.","type":"object","additionalProperties":false,"properties":{"openings":{"description":"What stays open to the wind in a storm; doors and windows that will be shut do not count.","type":["string","number"],"x-quantity":"area","examples":["40 ft²","3.7 m²"]},"open":{"description":"The same as a share of the whole side, from 0 to 1, where no area is given.","type":"number","minimum":0,"maximum":1,"examples":[0.2]},"weight":{"description":"Weight of the siding, of its own face.","type":["string","number"],"x-quantity":"pressure","examples":["3 psf"],"default":"3 psf","x-default-source":"boards 1 in thick, ASCE 7 Table C3.1-1, from memory"}},"examples":["{openings: 40 ft²}"]}},"x-ref":["wall","bent"],"examples":["{A: {}, B: {openings: 40 ft²}, 1: {}}"]},"floors":{"description":"Floors, each under a name of your own.","type":"object","propertyNames":{"pattern":"^[\\p{L}][\\p{L}\\p{N}_-]*$"},"additionalProperties":{"description":"A floor and what it carries.","type":"object","additionalProperties":false,"properties":{"on":{"description":"The row of joists or beams that carries it. Its boards run from edge to edge, over level timbers beside them too.","type":"string","x-ref":["member"],"examples":["joist"]},"live":{"description":"What people and goods weigh on it. ASCE 7 Table 4.3-1, from memory: sleeping rooms 30 psf, other rooms 40, an attic with little storage 20, light storage 125. It is taken without the reduction that large areas may have.","type":["string","number"],"x-quantity":"pressure","examples":["30 psf","40 psf"]},"deck":{"description":"What is walked on. Without it boards of 1 in are taken for the weight; that it holds the joists' upper edges and shares load among them counts only where it is named.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"boards, or structural panels.","type":"string","enum":["boards","panels"],"examples":["boards"]},"thickness":{"description":"How thick it is.","type":["string","number"],"x-quantity":"length","examples":["1 1/2 in"]}},"required":["kind"],"examples":["{kind: boards, thickness: 1 1/2 in}"]},"dead":{"description":"What everything that lies on the joists weighs, in place of the deck's own weight: with a ceiling or a second layer.","type":["string","number"],"x-quantity":"pressure","examples":["8 psf"]}},"required":["on","live"],"examples":["{on: joist, live: 30 psf}"]},"examples":["{loft: {on: joist, live: 30 psf}}"]},"crew":{"description":"Who and what lifts the timbers.","type":"object","additionalProperties":false,"properties":{"people":{"description":"How many people.","type":"integer","minimum":1,"maximum":200,"examples":[2]},"each":{"description":"What one person lifts.","type":["string","number"],"x-quantity":"force","examples":["80 lb"]},"machine":{"description":"A machine that helps.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"What kind of machine it is.","type":"string","enum":["forks","crane","hoist","gin-pole"],"examples":["forks"]},"limit":{"description":"The most it lifts.","type":["string","number"],"x-quantity":"force","examples":["1500 lb"]}},"required":["kind"],"examples":["{kind: forks, limit: 1500 lb}"]}},"examples":["{people: 2, each: 80 lb}"]},"prices":{"description":"What one of each costs, in your own money.","type":"object","additionalProperties":{"description":"The price of one.","type":"number","minimum":0,"examples":[7.1]},"examples":["{concrete-bag: 7.10, peg: 1.80}"]},"ask":{"description":"What you do not know yet. Something is assumed in its place; each entry is a warning until you remove it.","type":"array","items":{"description":"One open question.","type":"object","additionalProperties":false,"properties":{"what":{"description":"What is not known.","type":"string","pattern":"\\S","examples":["which wood the mill will saw"]},"whom":{"description":"Who knows it.","type":"string","pattern":"\\S","examples":["the sawyer"]}},"required":["what","whom"],"examples":["{what: which wood the mill will saw, whom: the sawyer}"]},"examples":["[{what: which wood the mill will saw, whom: the sawyer}]"]},"accept":{"description":"Findings that you accept, each with its reason. They stay listed in every report.","type":"array","items":{"description":"An accepted finding.","type":"object","additionalProperties":false,"properties":{"check":{"description":"The name of the check.","type":"string","x-ref":["check"],"examples":["post-slender"]},"at":{"description":"The stick, joint or pier it holds for. Without it: everywhere.","type":"string","x-ref":["stick"],"examples":["post@A2"]},"because":{"description":"Why it is acceptable.","type":"string","pattern":"\\S","examples":["reviewed by the engineer, May 2027"]}},"required":["check","because"]},"examples":["[{check: post-slender, at: post@A2, because: \"reviewed by the engineer, May 2027\"}]"]}},"required":["grid","timber","members"],"$defs":{"fasteners":{"description":"Screws or nails.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Screws or nails.","type":"string","enum":["screws","nails"],"examples":["screws"]},"count":{"description":"For each rafter or purlin, at each place.","type":"integer","minimum":1,"maximum":24,"examples":[2]},"diameter":{"description":"How thick they are.","type":["string","number"],"x-quantity":"length","examples":["5/16 in"]},"length":{"description":"How long they are.","type":["string","number"],"x-quantity":"length","examples":["10 in"]}},"required":["kind","count"],"examples":["{kind: screws, count: 2, diameter: 5/16 in, length: 8 in}"]},"place":{"description":"A place of the grid: a wall and a bent (A1), or so far along a wall from bent 1 (B@4 ft 9 in).","type":"string","pattern":"^[A-Z](?:[1-9][0-9]*|@.+)$","x-quantity":"grid-place","x-ref":["place"],"examples":["A1","B@4 ft 9 in"]},"places":{"description":"Where it stands: one place of the grid or a list of them.","type":["string","array"],"pattern":"^[A-Z](?:[1-9][0-9]*|@.+)$","items":{"$ref":"#/$defs/place"},"minItems":1,"x-quantity":"grid-place","x-ref":["place"],"examples":["[A1, A2, B1, B2]"]},"walls":{"description":"The walls it runs along: one letter or a list.","type":["string","array"],"pattern":"^[A-Z]$","items":{"description":"A wall of the grid.","type":"string","pattern":"^[A-Z]$","x-ref":["wall"],"examples":["A"]},"minItems":1,"x-ref":["wall"],"examples":["[A, B]"]},"bents":{"description":"The bents it stands in: one number or a list.","type":["string","integer","array"],"pattern":"^[1-9][0-9]*$","minimum":1,"items":{"description":"A bent of the grid.","type":["string","integer"],"pattern":"^[1-9][0-9]*$","minimum":1,"x-ref":["bent"],"examples":[1]},"minItems":1,"x-ref":["bent"],"examples":["[1, 2, 3]"]},"timbers":{"description":"One timber or a list: the name of an entry (post), a kind, or a single stick (post@A1).","type":["string","array"],"items":{"description":"An entry, a kind or a single stick.","type":"string","x-ref":["member","stick","kind"],"examples":["post","post@A1"]},"minItems":1,"x-ref":["member","stick","kind"],"examples":["post","[knee, tie-knee]"]},"height":{"description":"A height: the name of a level, or a length above the datum.","type":["string","number"],"x-quantity":"height","examples":["eave","9 ft 4 in"],"x-ref":["level"]},"section":{"description":"Width by depth, actual sizes: 8x9 is 8 in wide and 9 in deep. Depth stands upright in a lying timber, lies across the bent in a post, and in their plane in braces and rafters. `2x8 nominal` names planed lumber, 1 1/2 in × 7 1/4 in; so does `2x8` in a class that is `surface: planed`.","type":["string","number"],"x-quantity":"section","examples":["8x9","5 1/2 x 7 1/4","2x8 nominal"]},"timberName":{"description":"The class of timber it is cut from, a name under `timber`. Without it, the first class that fits.","type":"string","x-ref":["class"],"examples":["frame"]},"species":{"description":"The wood: a species (white-oak) or a group of the lumber grades (eastern-hemlock-tamarack).","type":"string","x-ref":["species"],"examples":["eastern-white-pine","white-oak"]},"wallLine":{"description":"How far the wall stands from the first wall, across the bents.","type":["string","number","object"],"x-quantity":"length","additionalProperties":false,"properties":{"at":{"description":"How far it stands from the first line of the grid.","type":["string","number"],"x-quantity":"length","examples":["13 ft","9 ft"]},"reference":{"description":"Which face of the timbers lies on this line. Without it: the outside face in outer lines, the center in inner ones.","type":"string","enum":["center","outward","toward-1","toward-a"],"examples":["center"]}},"required":["at"],"examples":["13 ft","{at: 13 ft, reference: center}"]},"bentLine":{"description":"How far the bent stands from the first bent, along the walls.","type":["string","number","object"],"x-quantity":"length","additionalProperties":false,"properties":{"at":{"description":"How far it stands from the first line of the grid.","type":["string","number"],"x-quantity":"length","examples":["13 ft","9 ft"]},"reference":{"description":"Which face of the timbers lies on this line. Without it: the outside face in outer lines, the center in inner ones.","type":"string","enum":["center","outward","toward-1","toward-a"],"examples":["center"]}},"required":["at"],"examples":["9 ft","{at: 9 ft, reference: toward-1}"]},"from":{"description":"Where it starts: a wall or bent, a place, a level, or a timber by entry or kind (then at that timber's near face).","type":["string","integer"],"x-ref":["wall","bent","place","level","member","kind","pier-top"],"examples":["A","1","pier-top"]},"to":{"description":"Where it ends: a wall or bent, a place, a level, or a timber by entry or kind (then at that timber's near face).","type":["string","integer"],"x-ref":["wall","bent","place","level","member","kind"],"examples":["B","3","plate"]},"measured":{"description":"What a rough stick really measures: for every stick of the entry, or by stick (post@A1: …, rafter@A.4: …); at one place or a list of places along it. Housings reach down to the perfect timber inside it.","type":["object","array"],"additionalProperties":false,"properties":{"width":{"$ref":"#/$defs/measuredWidth"},"depth":{"$ref":"#/$defs/measuredDepth"},"at":{"$ref":"#/$defs/measuredAt"}},"patternProperties":{"^[\\p{L}][\\p{L}\\p{N}_-]*@.+$":{"$ref":"#/$defs/measuredStick"}},"dependentRequired":{"width":["depth"],"depth":["width"],"at":["width","depth"]},"items":{"$ref":"#/$defs/measuredPlace"},"x-ref":["stick"],"examples":["{width: 8 3/16 in, depth: 8 1/8 in}"]},"measuredStick":{"description":"What this stick really measures, at one place or a list of places along it.","type":["object","array"],"additionalProperties":false,"properties":{"width":{"$ref":"#/$defs/measuredWidth"},"depth":{"$ref":"#/$defs/measuredDepth"},"at":{"$ref":"#/$defs/measuredAt"}},"dependentRequired":{"width":["depth"],"depth":["width"],"at":["width","depth"]},"items":{"$ref":"#/$defs/measuredPlace"},"examples":["{width: 8 3/16 in, depth: 8 1/8 in}"]},"measuredPlace":{"description":"What the stick measures at one place.","type":"object","additionalProperties":false,"properties":{"width":{"$ref":"#/$defs/measuredWidth"},"depth":{"$ref":"#/$defs/measuredDepth"},"at":{"$ref":"#/$defs/measuredAt"}},"required":["width","depth","at"],"examples":["{width: 8 3/16 in, depth: 8 1/8 in, at: 4 ft}"]},"measuredWidth":{"description":"Its real width, as `section` counts it.","type":["string","number"],"x-quantity":"length","examples":["8 3/16 in"]},"measuredDepth":{"description":"Its real depth, as `section` counts it.","type":["string","number"],"x-quantity":"length","examples":["9 15/16 in"]},"measuredAt":{"description":"How far from the foot, or from the end at bent 1 or wall A, it was measured; between two places the size runs straight. Without it: all along.","type":["string","number"],"x-quantity":"length","examples":["4 ft"]},"splice":{"description":"Divides a long timber in two, joined end to end.","type":"object","additionalProperties":false,"properties":{"at":{"description":"The grid line or place where the joint sits.","type":["string","integer"],"x-ref":["bent","wall","place"],"examples":["2"]},"kind":{"description":"The joint that holds the two lengths together.","type":"string","enum":["half-lap-scarf","bladed-scarf","stop-splayed-scarf"],"examples":["half-lap-scarf"],"default":"half-lap-scarf","x-default-source":"common practice"}},"required":["at"],"examples":["{at: 2, kind: half-lap-scarf}"]},"memberOverhang":{"description":"How far it runs past its first and its last grid line.","type":["string","number","object"],"x-quantity":"length","additionalProperties":false,"properties":{"from":{"description":"Past its first grid line.","type":["string","number"],"x-quantity":"length","examples":["12 in"]},"to":{"description":"Past its last grid line.","type":["string","number"],"x-quantity":"length","examples":["12 in"]}},"examples":["12 in","{from: 12 in, to: 0}"]},"spacing":{"description":"The most allowed from center to center.","type":["string","number"],"x-quantity":"length","examples":["24 in","30 in"]},"count":{"description":"How many, instead of a spacing.","type":"integer","minimum":1,"maximum":500,"examples":[7]},"layout":{"description":"even: the same spacing throughout. fixed: exactly the spacing, the remainder in the last bay.","type":"string","enum":["even","fixed"],"examples":["even"],"default":"even","x-default-source":"common practice"},"face":{"description":"Across the thickness: flush with the reference faces of its timbers, or in the middle of them.","type":"string","enum":["reference","center"],"examples":["reference"],"default":"reference","x-default-source":"common practice"},"between":{"description":"The two timbers it stands between, by entry, kind or single stick.","type":"array","minItems":2,"maxItems":2,"items":{"description":"One of the two timbers.","type":"string","x-ref":["member","stick","kind"],"examples":["post"]},"x-ref":["member","stick","kind"],"examples":["[post, plate]"]},"leg":{"description":"Along each of the two timbers, from the inner corner of their housed faces to the far end of the brace's bearing.","type":["string","number"],"x-quantity":"length","examples":["36 in"]},"legs":{"description":"Unequal legs, each by the name of the timber it lies along.","type":"object","additionalProperties":{"description":"The leg along this timber.","type":["string","number"],"x-quantity":"length","examples":["54 in"]},"minProperties":2,"maxProperties":2,"x-ref":["member","kind"],"examples":["{post: 54 in, plate: 36 in}"]},"curve":{"description":"Hollows the long edge, the one away from the corner. What is left there is the depth less the rise.","type":"object","additionalProperties":false,"properties":{"radius":{"description":"The radius of the hollow edge.","type":["string","number"],"x-quantity":"length","examples":["100 in"]},"rise":{"description":"How deep the hollow is in its middle.","type":["string","number"],"x-quantity":"length","examples":["2 in"]}},"examples":["{radius: 100 in}"],"minProperties":1,"maxProperties":1},"above":{"description":"It sits above its upper timber instead of below.","type":"boolean","examples":[true],"default":false,"x-default-source":"common practice"},"turned":{"description":"Swaps width and depth: the timber is turned a quarter about its own axis.","type":"boolean","examples":[true],"default":false,"x-default-source":"common practice"},"ends":{"description":"Both ends placed by hand, for what the grid cannot say; `kind` then only says what the timber does.","type":"array","minItems":2,"maxItems":2,"items":{"$ref":"#/$defs/endPlace"},"examples":["[{at: A1, level: tie-top}, {at: A2, level: tie-top, offset: [0, 4 in, 0]}]"]},"hungOn":{"description":"The post that carries it like a gate leaf: the name of a single stick.","type":"string","x-ref":["stick"],"examples":["post@A1"]},"endPlace":{"description":"One end, placed by hand.","type":"object","additionalProperties":false,"properties":{"at":{"$ref":"#/$defs/place"},"level":{"$ref":"#/$defs/height"},"offset":{"description":"From there, along the walls, across the bents and upwards.","type":"array","minItems":3,"maxItems":3,"items":{"description":"An offset, negative the other way.","type":["string","number"],"x-quantity":"length","examples":["4 in","0"]},"examples":["[0, 4 in, 0]"]}},"examples":["{at: A1, level: tie-top}"]},"member-post":{"description":"An upright timber from the ground or a floor to what it carries.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"An upright timber from the ground or a floor to what it carries.","const":"post","examples":["post"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"at":{"$ref":"#/$defs/places"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]},"member-plate":{"description":"A lying timber on top of the posts that carries the rafters.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A lying timber on top of the posts that carries the rafters.","const":"plate","examples":["plate"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"walls":{"$ref":"#/$defs/walls"},"bents":{"$ref":"#/$defs/bents"},"between":{"$ref":"#/$defs/between"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"top":{"$ref":"#/$defs/height","description":"The height of its top face: a level or a length above the datum.","examples":["eave","7 ft 10 in"]},"bottom":{"$ref":"#/$defs/height","description":"The height of its bottom face: a level or a length above the datum.","examples":["7 ft"]},"overhang":{"$ref":"#/$defs/memberOverhang"},"spacing":{"$ref":"#/$defs/spacing"},"count":{"$ref":"#/$defs/count"},"layout":{"$ref":"#/$defs/layout"},"splice":{"$ref":"#/$defs/splice"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]},"member-sill":{"description":"A lying timber at the foot of the posts.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A lying timber at the foot of the posts.","const":"sill","examples":["sill"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"walls":{"$ref":"#/$defs/walls"},"bents":{"$ref":"#/$defs/bents"},"between":{"$ref":"#/$defs/between"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"top":{"$ref":"#/$defs/height","description":"The height of its top face: a level or a length above the datum.","examples":["eave","7 ft 10 in"]},"bottom":{"$ref":"#/$defs/height","description":"The height of its bottom face: a level or a length above the datum.","examples":["7 ft"]},"overhang":{"$ref":"#/$defs/memberOverhang"},"spacing":{"$ref":"#/$defs/spacing"},"count":{"$ref":"#/$defs/count"},"layout":{"$ref":"#/$defs/layout"},"splice":{"$ref":"#/$defs/splice"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]},"member-girt":{"description":"A lying timber between posts, below the plate.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A lying timber between posts, below the plate.","const":"girt","examples":["girt"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"walls":{"$ref":"#/$defs/walls"},"bents":{"$ref":"#/$defs/bents"},"between":{"$ref":"#/$defs/between"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"top":{"$ref":"#/$defs/height","description":"The height of its top face: a level or a length above the datum.","examples":["eave","7 ft 10 in"]},"bottom":{"$ref":"#/$defs/height","description":"The height of its bottom face: a level or a length above the datum.","examples":["7 ft"]},"overhang":{"$ref":"#/$defs/memberOverhang"},"spacing":{"$ref":"#/$defs/spacing"},"count":{"$ref":"#/$defs/count"},"layout":{"$ref":"#/$defs/layout"},"splice":{"$ref":"#/$defs/splice"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]},"member-tie":{"description":"A lying timber across a bent that holds the walls together.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A lying timber across a bent that holds the walls together.","const":"tie","examples":["tie"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"walls":{"$ref":"#/$defs/walls"},"bents":{"$ref":"#/$defs/bents"},"between":{"$ref":"#/$defs/between"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"top":{"$ref":"#/$defs/height","description":"The height of its top face: a level or a length above the datum.","examples":["eave","7 ft 10 in"]},"bottom":{"$ref":"#/$defs/height","description":"The height of its bottom face: a level or a length above the datum.","examples":["7 ft"]},"overhang":{"$ref":"#/$defs/memberOverhang"},"spacing":{"$ref":"#/$defs/spacing"},"count":{"$ref":"#/$defs/count"},"layout":{"$ref":"#/$defs/layout"},"splice":{"$ref":"#/$defs/splice"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]},"member-beam":{"description":"A lying timber that carries others.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A lying timber that carries others.","const":"beam","examples":["beam"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"walls":{"$ref":"#/$defs/walls"},"bents":{"$ref":"#/$defs/bents"},"between":{"$ref":"#/$defs/between"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"top":{"$ref":"#/$defs/height","description":"The height of its top face: a level or a length above the datum.","examples":["eave","7 ft 10 in"]},"bottom":{"$ref":"#/$defs/height","description":"The height of its bottom face: a level or a length above the datum.","examples":["7 ft"]},"overhang":{"$ref":"#/$defs/memberOverhang"},"spacing":{"$ref":"#/$defs/spacing"},"count":{"$ref":"#/$defs/count"},"layout":{"$ref":"#/$defs/layout"},"splice":{"$ref":"#/$defs/splice"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]},"member-joist":{"description":"One of a row of timbers that carry a floor.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"One of a row of timbers that carry a floor.","const":"joist","examples":["joist"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"walls":{"$ref":"#/$defs/walls"},"bents":{"$ref":"#/$defs/bents"},"between":{"$ref":"#/$defs/between"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"top":{"$ref":"#/$defs/height","description":"The height of its top face: a level or a length above the datum.","examples":["eave","7 ft 10 in"]},"bottom":{"$ref":"#/$defs/height","description":"The height of its bottom face: a level or a length above the datum.","examples":["7 ft"]},"overhang":{"$ref":"#/$defs/memberOverhang"},"spacing":{"$ref":"#/$defs/spacing"},"count":{"$ref":"#/$defs/count"},"layout":{"$ref":"#/$defs/layout"},"splice":{"$ref":"#/$defs/splice"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]},"member-purlin":{"description":"One of a row of timbers along the roof that carry the deck or the covering.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"One of a row of timbers along the roof that carry the deck or the covering.","const":"purlin","examples":["purlin"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"walls":{"$ref":"#/$defs/walls"},"bents":{"$ref":"#/$defs/bents"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"top":{"$ref":"#/$defs/height","description":"The height of its top face: a level or a length above the datum.","examples":["eave","7 ft 10 in"]},"bottom":{"$ref":"#/$defs/height","description":"The height of its bottom face: a level or a length above the datum.","examples":["7 ft"]},"overhang":{"$ref":"#/$defs/memberOverhang"},"spacing":{"$ref":"#/$defs/spacing"},"count":{"$ref":"#/$defs/count"},"layout":{"$ref":"#/$defs/layout"},"splice":{"$ref":"#/$defs/splice"},"ends":{"$ref":"#/$defs/ends"},"fasten":{"$ref":"#/$defs/fasteners","description":"What holds each purlin down on each rafter or other timber that carries it.","examples":["{kind: screws, count: 2, diameter: 5/16 in, length: 10 in}"]},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]},"member-king-post":{"description":"The upright in the middle of a bent, from the tie to the ridge.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"The upright in the middle of a bent, from the tie to the ridge.","const":"king-post","examples":["king-post"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"bents":{"$ref":"#/$defs/bents"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]},"member-strut":{"description":"A timber that props one timber from another: upright at a place of the grid, or slanting between two timbers.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A timber that props one timber from another: upright at a place of the grid, or slanting between two timbers.","const":"strut","examples":["strut"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"at":{"$ref":"#/$defs/places"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"between":{"$ref":"#/$defs/between"},"leg":{"$ref":"#/$defs/leg"},"legs":{"$ref":"#/$defs/legs"},"curve":{"$ref":"#/$defs/curve"},"above":{"$ref":"#/$defs/above"},"face":{"$ref":"#/$defs/face"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]},"member-brace":{"description":"A slanting timber in the corner of two others. One entry makes a brace at every corner where it fits.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A slanting timber in the corner of two others. One entry makes a brace at every corner where it fits.","const":"brace","examples":["brace"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"between":{"$ref":"#/$defs/between"},"leg":{"$ref":"#/$defs/leg"},"legs":{"$ref":"#/$defs/legs"},"curve":{"$ref":"#/$defs/curve"},"above":{"$ref":"#/$defs/above"},"face":{"$ref":"#/$defs/face"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section","between"]},"member-ridge":{"description":"The lying timber at the top, midway between the plates, that the rafters head into.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"The lying timber at the top, midway between the plates, that the rafters head into.","const":"ridge","examples":["ridge"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"overhang":{"$ref":"#/$defs/memberOverhang"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]},"member-rafter":{"description":"A rafter that is a timber of its own, such as a principal rafter. Common rafters stand under `roof`.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A rafter that is a timber of its own, such as a principal rafter. Common rafters stand under `roof`.","const":"rafter","examples":["rafter"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"bents":{"$ref":"#/$defs/bents"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"overhang":{"$ref":"#/$defs/memberOverhang"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]},"member":{"description":"A kind of timber. One entry may stand for many sticks.","type":"object","required":["kind"],"discriminator":{"propertyName":"kind"},"oneOf":[{"$ref":"#/$defs/member-post"},{"$ref":"#/$defs/member-plate"},{"$ref":"#/$defs/member-sill"},{"$ref":"#/$defs/member-girt"},{"$ref":"#/$defs/member-tie"},{"$ref":"#/$defs/member-beam"},{"$ref":"#/$defs/member-joist"},{"$ref":"#/$defs/member-purlin"},{"$ref":"#/$defs/member-king-post"},{"$ref":"#/$defs/member-strut"},{"$ref":"#/$defs/member-brace"},{"$ref":"#/$defs/member-ridge"},{"$ref":"#/$defs/member-rafter"}]},"rule":{"description":"square: laid out from the reference faces, without seeing the other timber. scribe: left long and marked from the other timber in its place.","type":"string","enum":["square","scribe"],"examples":["scribe"],"default":"square","x-default-source":"common practice"},"tenon":{"description":"The tenon. It lies along the grain of the timber it enters.","type":"object","additionalProperties":false,"properties":{"thickness":{"description":"Between its cheeks.","type":["string","number"],"x-quantity":"length","examples":["2 in","1 1/2 in"]},"length":{"description":"From the shoulder to its end.","type":["string","number"],"x-quantity":"length","examples":["6 1/2 in"]},"width":{"description":"Across the grain of the mortised timber. Without it: full width, less 1 in at a timber's free end.","type":["string","number"],"x-quantity":"length","examples":["7 in"]},"set-in":{"description":"From the reference face of the mortised timber to the near cheek. Without it: 2 in, braces 1 1/2 in.","type":["string","number"],"x-quantity":"length","examples":["2 in"]},"through":{"description":"It goes right through and ends flush, or past it by `tail`.","type":"boolean","examples":[true],"default":false,"x-default-source":"common practice"}},"examples":["{thickness: 2 in, length: 6 1/2 in}"]},"housing":{"description":"How deep the whole end is let into the other timber.","type":["string","number"],"x-quantity":"length","examples":["1/2 in","3/4 in"]},"dropWedge":{"description":"The wedge above the tenon that locks the joint.","type":"object","additionalProperties":false,"properties":{"species":{"$ref":"#/$defs/species"},"slope":{"description":"Its slope, which is that of the mortise's roof. Without it: 1 in 10.","type":["string","number"],"x-quantity":"pitch","examples":["1:10","1:12"]},"length":{"description":"Its length from the thin to the thick end. Without it: through the mortise, and as much more as it will be driven on while the timber dries, at least 1 in.","type":["string","number"],"x-quantity":"length","examples":["11 in","280 mm"]}},"examples":["{species: white-oak}","{species: white-oak, slope: 1:10, length: 11 in}"]},"wedge":{"description":"The wedge that locks the joint.","type":"object","additionalProperties":false,"properties":{"species":{"$ref":"#/$defs/species"},"slope":{"description":"Its slope. Without it: 1 in 10.","type":["string","number"],"x-quantity":"pitch","examples":["1:10"]}},"examples":["{species: white-oak}"]},"tail":{"description":"How far a through tenon stands out past the far face.","type":["string","number"],"x-quantity":"length","examples":["4 in"]},"lap":{"description":"The length of the lap along the grain.","type":["string","number"],"x-quantity":"length","examples":["16 in"]},"onePeg":{"description":"The pegs that hold the tenon.","type":"object","additionalProperties":false,"properties":{"count":{"description":"How many pegs each joint has; 0 for a joint without pegs.","type":"integer","minimum":0,"maximum":24,"examples":[2],"default":1,"x-default-source":"common practice"},"diameter":{"description":"How thick the pegs are.","type":["string","number"],"x-quantity":"length","examples":["3/4 in","1 in"]},"draw":{"description":"How far the hole in the tenon is set toward the shoulder, so that the peg pulls the joint tight.","type":["string","number"],"x-quantity":"length","examples":["1/8 in","3/32 in"]}},"examples":["{count: 2, diameter: 3/4 in}"]},"twoPegs":{"description":"The pegs that hold the tenon.","type":"object","additionalProperties":false,"properties":{"count":{"description":"How many pegs each joint has; 0 for a joint without pegs.","type":"integer","minimum":0,"maximum":24,"examples":[2],"default":2,"x-default-source":"common practice"},"diameter":{"description":"How thick the pegs are.","type":["string","number"],"x-quantity":"length","examples":["3/4 in","1 in"]},"draw":{"description":"How far the hole in the tenon is set toward the shoulder, so that the peg pulls the joint tight.","type":["string","number"],"x-quantity":"length","examples":["1/8 in","3/32 in"]}},"examples":["{count: 2, diameter: 3/4 in}"]},"fourPegs":{"description":"The pegs that hold the tenon.","type":"object","additionalProperties":false,"properties":{"count":{"description":"How many pegs each joint has; 0 for a joint without pegs.","type":"integer","minimum":0,"maximum":24,"examples":[2],"default":4,"x-default-source":"common practice"},"diameter":{"description":"How thick the pegs are.","type":["string","number"],"x-quantity":"length","examples":["3/4 in","1 in"]},"draw":{"description":"How far the hole in the tenon is set toward the shoulder, so that the peg pulls the joint tight.","type":["string","number"],"x-quantity":"length","examples":["1/8 in","3/32 in"]}},"examples":["{count: 2, diameter: 3/4 in}"]},"joint-mortise-and-tenon":{"description":"A tenon in a mortise, held by pegs.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A tenon in a mortise, held by pegs.","const":"mortise-and-tenon","examples":["mortise-and-tenon"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"housing":{"$ref":"#/$defs/housing"},"tenon":{"$ref":"#/$defs/tenon"},"pegs":{"$ref":"#/$defs/twoPegs"},"tail":{"$ref":"#/$defs/tail"}},"required":["kind","of","into"]},"joint-wedged-half-dovetail":{"description":"A through tenon, level on top and cut up below, that drops into its mortise and is locked by a wedge above.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A through tenon, level on top and cut up below, that drops into its mortise and is locked by a wedge above.","const":"wedged-half-dovetail","examples":["wedged-half-dovetail"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"housing":{"$ref":"#/$defs/housing"},"tenon":{"$ref":"#/$defs/tenon"},"drop":{"description":"How far the lower edge is cut up at the shoulder, and how far the timber drops as it goes in.","type":["string","number"],"x-quantity":"length","examples":["1 1/4 in"]},"wedge":{"$ref":"#/$defs/dropWedge"},"pegs":{"$ref":"#/$defs/twoPegs"},"tail":{"$ref":"#/$defs/tail"}},"required":["kind","of","into"]},"joint-brace-tenon":{"description":"The tenon at each end of a brace.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"The tenon at each end of a brace.","const":"brace-tenon","examples":["brace-tenon"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"housing":{"$ref":"#/$defs/housing"},"tenon":{"$ref":"#/$defs/tenon"},"pegs":{"$ref":"#/$defs/onePeg"}},"required":["kind","of","into"]},"joint-birds-mouth":{"description":"A notch in a rafter that sits on the plate.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A notch in a rafter that sits on the plate.","const":"birds-mouth","examples":["birds-mouth"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"seat":{"description":"The level cut of the notch.","type":["string","number"],"x-quantity":"length","examples":["3 1/2 in"]},"fasten":{"$ref":"#/$defs/fasteners","description":"What holds each rafter down on its seat."}},"required":["kind","of","into"]},"seat":{"description":"How the rafters sit on the plate.","type":"object","required":["kind"],"discriminator":{"propertyName":"kind"},"oneOf":[{"$ref":"#/$defs/seat-birds-mouth"},{"$ref":"#/$defs/seat-step-lap"}],"examples":["{kind: birds-mouth}","{kind: step-lap}"]},"seat-birds-mouth":{"description":"A bird's mouth: a level seat and a plumb cut on the plate's outside face.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A bird's mouth: a level seat and a plumb cut on the plate's outside face.","const":"birds-mouth","examples":["birds-mouth"]},"length":{"description":"The level seat. Without it: the largest quarter inch that stays within a quarter of the rafter's depth.","type":["string","number"],"x-quantity":"length","examples":["3 1/2 in"]},"rule":{"$ref":"#/$defs/rule"}},"required":["kind"]},"seat-step-lap":{"description":"A step-lap seat: the rafter stands in a housing across the plate's upper outer arris and pushes against a step there; its tail laps over the rim that is left outside of it.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A step-lap seat: the rafter stands in a housing across the plate's upper outer arris and pushes against a step there; its tail laps over the rim that is left outside of it.","const":"step-lap","examples":["step-lap"]},"length":{"description":"Level, from the plate's outside face to where the rafter's underside meets the plate's top: lap and housing together. Without it: 4 in (100 mm), less where that leaves the tail under half of the rafter's depth or is wider than the plate.","type":["string","number"],"x-quantity":"length","examples":["4 in"]},"form":{"$ref":"#/$defs/stepForm"},"housing":{"$ref":"#/$defs/stepDepth"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind"]},"stepForm":{"description":"How the step stands that takes the thrust. plumb: upright, before it a level sole. square: square to the rafter, before it a sole along the rafter's underside.","type":"string","enum":["plumb","square"],"examples":["plumb","square"],"default":"plumb","x-default-source":"common practice"},"stepDepth":{"description":"How deep the step goes into the plate, plumb below its top. Without it: plumb, half of what the rafter reaches into the plate there; square, so deep that the housing runs as far in as the tail laps over the plate.","type":["string","number"],"x-quantity":"length","examples":["1/2 in","3/4 in"]},"joint-step-lap":{"description":"A rafter that stands in a housing of the plate and pushes against a step there; its tail laps over the plate's rim.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A rafter that stands in a housing of the plate and pushes against a step there; its tail laps over the plate's rim.","const":"step-lap","examples":["step-lap"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["principal"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"form":{"$ref":"#/$defs/stepForm"},"housing":{"$ref":"#/$defs/stepDepth"},"rule":{"$ref":"#/$defs/rule"},"fasten":{"$ref":"#/$defs/fasteners","description":"What holds each rafter down on its seat."}},"required":["kind","of","into"]},"joint-housed":{"description":"The whole end let into the other timber.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"The whole end let into the other timber.","const":"housed","examples":["housed"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"housing":{"$ref":"#/$defs/housing"},"fasten":{"$ref":"#/$defs/fasteners","description":"What holds each rafter in the ridge: screws from its top edge, slanting at 45° across the ridge's grain, or toe-nails."}},"required":["kind","of","into"]},"joint-housed-dovetail":{"description":"A dovetail at the end of a joist that drops into a housing.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A dovetail at the end of a joist that drops into a housing.","const":"housed-dovetail","examples":["housed-dovetail"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"housing":{"$ref":"#/$defs/housing"},"dovetail":{"description":"The dovetail.","type":"object","additionalProperties":false,"properties":{"length":{"description":"How far it reaches into the beam.","type":["string","number"],"x-quantity":"length","examples":["3 in"]},"depth":{"description":"How deep the dovetail is cut.","type":["string","number"],"x-quantity":"length","examples":["3 in"]},"flare":{"description":"How much it widens on each side.","type":["string","number"],"x-quantity":"length","examples":["1/2 in"]}},"examples":["{length: 3 in, depth: 3 in, flare: 1/2 in}"]}},"required":["kind","of","into"]},"joint-pocket":{"description":"A joist's end that drops into a pocket open at the top.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A joist's end that drops into a pocket open at the top.","const":"pocket","examples":["pocket"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"housing":{"$ref":"#/$defs/housing"}},"required":["kind","of","into"]},"joint-corner-half-lap":{"description":"Two timbers that cross at a corner, each cut away by half.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Two timbers that cross at a corner, each cut away by half.","const":"corner-half-lap","examples":["corner-half-lap"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"pegs":{"$ref":"#/$defs/onePeg"}},"required":["kind","of","into"]},"joint-half-lap-scarf":{"description":"Two lengths of a timber lapped end to end.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Two lengths of a timber lapped end to end.","const":"half-lap-scarf","examples":["half-lap-scarf"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"lap":{"$ref":"#/$defs/lap"},"pegs":{"$ref":"#/$defs/fourPegs"}},"required":["kind","of","into"]},"stubTenon":{"description":"The tenon. It lies along the grain of the timber it enters.","type":"object","additionalProperties":false,"properties":{"thickness":{"description":"Between its cheeks.","type":["string","number"],"x-quantity":"length","examples":["2 in","1 1/2 in"]},"length":{"description":"From the shoulder to its end. Without it: 1 1/2 in.","type":["string","number"],"x-quantity":"length","examples":["1 1/2 in"]},"width":{"description":"Across the grain of the mortised timber. Without it: full width, less 1 in at a timber's free end.","type":["string","number"],"x-quantity":"length","examples":["7 in"]},"set-in":{"description":"From the reference face of the mortised timber to the near cheek. Without it: 2 in.","type":["string","number"],"x-quantity":"length","examples":["2 in"]}},"examples":["{thickness: 2 in, length: 1 1/2 in}"]},"tongue":{"description":"The tongue. It reaches through the other timber to its far face.","type":"object","additionalProperties":false,"properties":{"thickness":{"description":"Between its cheeks. Without it: a third of the timber.","type":["string","number"],"x-quantity":"length","examples":["2 3/4 in"]},"set-in":{"description":"From the reference face of the other timber to the near cheek. Without it: in the middle of the joined timber.","type":["string","number"],"x-quantity":"length","examples":["2 in"]}},"examples":["{thickness: 2 3/4 in}"]},"blade":{"description":"The blade at the end of each half, in the middle of its width; it stands in a slot of the other timber.","type":"object","additionalProperties":false,"properties":{"thickness":{"description":"Across its width. Without it: 2 in in timbers of 7 in and wider, else 1 1/2 in.","type":["string","number"],"x-quantity":"length","examples":["2 in"]},"length":{"description":"Along the grain. Without it: half the depth of the timber.","type":["string","number"],"x-quantity":"length","examples":["4 in"]}},"examples":["{thickness: 2 in, length: 4 in}"]},"butt":{"description":"The depth of the butt in which each half ends. Without it: a quarter of the depth.","type":["string","number"],"x-quantity":"length","examples":["2 in"]},"screws":{"description":"The screws through each end, square to the face of the other timber, driven from the brace's long edge.","type":"object","additionalProperties":false,"properties":{"count":{"description":"How many at each end.","type":"integer","minimum":1,"maximum":24,"examples":[2],"default":2,"x-default-source":"common practice"},"diameter":{"description":"How thick they are.","type":["string","number"],"x-quantity":"length","examples":["5/16 in"]},"length":{"description":"How long they are, under the head. Without it: as long as the two timbers need.","type":["string","number"],"x-quantity":"length","examples":["10 in"]}},"examples":["{count: 2, diameter: 5/16 in, length: 10 in}"]},"dovetail":{"description":"The dovetail.","type":"object","additionalProperties":false,"properties":{"length":{"description":"How far it reaches into the other timber. Without it: to its far face.","type":["string","number"],"x-quantity":"length","examples":["8 in"]},"depth":{"description":"How deep it is let in, from the side it comes from. Without it: half of what the two timbers have in common.","type":["string","number"],"x-quantity":"length","examples":["4 in"]},"flare":{"description":"How much it widens on each side. Without it: one in six of its length, at most a fifth of its width.","type":["string","number"],"x-quantity":"length","examples":["1 in"]}},"examples":["{length: 8 in, depth: 4 in, flare: 1 in}"]},"joint-stub-tenon":{"description":"A short tenon without pegs, which keeps a timber in its place; it only bears.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A short tenon without pegs, which keeps a timber in its place; it only bears.","const":"stub-tenon","examples":["stub-tenon"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"housing":{"$ref":"#/$defs/housing"},"tenon":{"$ref":"#/$defs/stubTenon"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]},"joint-corner-bridle":{"description":"A tongue in a fork, where two timbers meet at their ends.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A tongue in a fork, where two timbers meet at their ends.","const":"corner-bridle","examples":["corner-bridle"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"tenon":{"$ref":"#/$defs/tongue"},"pegs":{"$ref":"#/$defs/onePeg"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]},"joint-dovetail-lap":{"description":"The half of a timber's end, cut as a dovetail, lapped into the side of another.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"The half of a timber's end, cut as a dovetail, lapped into the side of another.","const":"dovetail-lap","examples":["dovetail-lap"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"dovetail":{"$ref":"#/$defs/dovetail"},"pegs":{"$ref":"#/$defs/onePeg"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]},"joint-bladed-scarf":{"description":"Two lengths of a timber lapped end to end, with a blade at each end that stands in a slot of the other.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Two lengths of a timber lapped end to end, with a blade at each end that stands in a slot of the other.","const":"bladed-scarf","examples":["bladed-scarf"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"lap":{"$ref":"#/$defs/lap"},"blade":{"$ref":"#/$defs/blade"},"pegs":{"$ref":"#/$defs/fourPegs"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]},"joint-stop-splayed-scarf":{"description":"Two lengths of a timber joined end to end on a slope, between under-squinted butts, tightened by folding wedges in the middle.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Two lengths of a timber joined end to end on a slope, between under-squinted butts, tightened by folding wedges in the middle.","const":"stop-splayed-scarf","examples":["stop-splayed-scarf"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"lap":{"$ref":"#/$defs/lap"},"butt":{"$ref":"#/$defs/butt"},"wedge":{"$ref":"#/$defs/wedge"},"pegs":{"$ref":"#/$defs/fourPegs"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]},"joint-screwed-brace":{"description":"The end of a brace held by structural screws.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"The end of a brace held by structural screws.","const":"screwed-brace","examples":["screwed-brace"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"housing":{"$ref":"#/$defs/housing"},"screws":{"$ref":"#/$defs/screws"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]},"joint":{"description":"A joint, at every place where its timbers meet.","type":"object","required":["kind"],"discriminator":{"propertyName":"kind"},"oneOf":[{"$ref":"#/$defs/joint-mortise-and-tenon"},{"$ref":"#/$defs/joint-wedged-half-dovetail"},{"$ref":"#/$defs/joint-brace-tenon"},{"$ref":"#/$defs/joint-birds-mouth"},{"$ref":"#/$defs/joint-step-lap"},{"$ref":"#/$defs/joint-housed"},{"$ref":"#/$defs/joint-housed-dovetail"},{"$ref":"#/$defs/joint-pocket"},{"$ref":"#/$defs/joint-corner-half-lap"},{"$ref":"#/$defs/joint-half-lap-scarf"},{"$ref":"#/$defs/joint-bladed-scarf"},{"$ref":"#/$defs/joint-stop-splayed-scarf"},{"$ref":"#/$defs/joint-corner-bridle"},{"$ref":"#/$defs/joint-dovetail-lap"},{"$ref":"#/$defs/joint-stub-tenon"},{"$ref":"#/$defs/joint-screwed-brace"},{"$ref":"#/$defs/joint-rafter-heel"},{"$ref":"#/$defs/joint-rafter-pair"}]},"rafters":{"description":"The common rafters of the roof.","type":"object","additionalProperties":false,"properties":{"section":{"$ref":"#/$defs/section"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"spacing":{"description":"The most allowed from center to center; divided evenly between the rake rafters.","type":["string","number"],"x-quantity":"length","examples":["30 in","24 in"]},"count":{"description":"How many on each slope, instead of a spacing.","type":"integer","minimum":2,"maximum":500,"examples":[8]},"layout":{"description":"even: the same spacing throughout. fixed: exactly the spacing, the remainder in the last bay.","type":"string","enum":["even","fixed"],"examples":["even"],"default":"even","x-default-source":"common practice"},"seat":{"$ref":"#/$defs/seat"},"head":{"description":"How the rafters meet the ridge or the high plate.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"housed: let into the ridge, open on top. birds-mouth: on the high plate of a shed roof, cut as their seat on the low one. bridle: head to head without a ridge timber, a tongue in a fork. lapped: head to head, each halved.","type":"string","enum":["housed","birds-mouth","bridle","lapped"],"examples":["housed","bridle"]},"into":{"description":"The timber that receives them.","type":"string","x-ref":["member"],"examples":["ridge"]},"housing":{"description":"How deep they are let in.","type":["string","number"],"x-quantity":"length","examples":["1/2 in"],"default":"1/2 in","x-default-source":"common practice"},"rule":{"$ref":"#/$defs/rule"},"fasten":{"$ref":"#/$defs/fasteners","description":"What holds each rafter in the ridge: screws from its top edge into the ridge, slanting at 45° across the ridge's grain, or toe-nails."},"pegs":{"$ref":"#/$defs/onePeg","description":"What holds the two halves of a bridle or lap together."}},"required":["kind"],"examples":["{kind: housed, into: ridge}"]},"overhang":{"description":"How far the roof stands out.","type":"object","additionalProperties":false,"properties":{"eave":{"description":"Level, from the plate's outside face to the rafter's outer tip.","type":["string","number"],"x-quantity":"length","examples":["18 in"]},"rake":{"description":"From the end bent's outer face to the deck's edge.","type":["string","number"],"x-quantity":"length","examples":["12 in"]},"high":{"description":"At the high side of a shed roof.","type":["string","number"],"x-quantity":"length","examples":["12 in"]}},"examples":["{eave: 18 in, rake: 12 in}"]},"fasten":{"$ref":"#/$defs/fasteners","description":"What holds each rafter down on the plate.","examples":["{kind: screws, count: 2, diameter: 5/16 in, length: 10 in}"]}},"required":["section"],"examples":["{section: 3x7, spacing: 30 in}"]},"deck":{"description":"What lies on the rafters.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"boards across the rafters, structural panels, or purlins with gaps between.","type":"string","enum":["boards","panels","purlins"],"examples":["boards"]},"thickness":{"description":"How thick it is.","type":["string","number"],"x-quantity":"length","examples":["1 in"]},"spacing":{"description":"Of purlins, from center to center.","type":["string","number"],"x-quantity":"length","examples":["24 in"]},"laid":{"description":"How boards lie: straight across the rafters, or diagonally at 45°. Diagonal boards, like structural panels, brace the plane of the roof.","type":"string","enum":["across","diagonal"],"default":"across","x-default-source":"common practice","examples":["diagonal"]}},"required":["kind"],"examples":["{kind: boards, thickness: 1 in}"]},"covering":{"description":"What keeps the rain out.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Which covering it is.","type":"string","enum":["standing-seam","ribbed-steel","corrugated-steel","asphalt-shingles","wood-shingles","wood-shakes","slate","clay-tile","roll-roofing"],"examples":["standing-seam"]},"coverage":{"description":"The width that one sheet covers.","type":["string","number"],"x-quantity":"length","examples":["16 in","36 in"]},"weight":{"description":"Its weight on the slope, where yours differs from the usual one.","type":["string","number"],"x-quantity":"pressure","examples":["1.5 psf"]}},"required":["kind"],"examples":["{kind: standing-seam, coverage: 16 in}"]},"ceiling":{"description":"What lines the rafters below: it hangs on them, and decides how far they may bend. Without it, a roof over a heated or cooled room counts as lined with something other than plaster, any other as bare.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Plaster, which cracks first; plasterboard (gypsum board); boards; or none, where rafters and deck stay bare.","type":"string","enum":["plaster","plasterboard","boards","none"],"examples":["boards"]},"weight":{"description":"Its weight on the slope, with what lies on it, where yours differs from the usual one.","type":["string","number"],"x-quantity":"pressure","examples":["4 psf"]}},"required":["kind"],"examples":["{kind: boards}"]},"pitch":{"description":"Rise over run, or an angle.","type":["string","number"],"x-quantity":"pitch","examples":["7:12","30 deg"]},"roof-gable":{"description":"Two slopes that meet at a ridge.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Two slopes that meet at a ridge.","const":"gable","examples":["gable"]},"pitch":{"$ref":"#/$defs/pitch"},"rafters":{"$ref":"#/$defs/rafters"},"deck":{"$ref":"#/$defs/deck"},"covering":{"$ref":"#/$defs/covering"},"ceiling":{"$ref":"#/$defs/ceiling"}},"required":["kind","pitch"]},"roof-shed":{"description":"One slope, from a high wall to a low one.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"One slope, from a high wall to a low one.","const":"shed","examples":["shed"]},"pitch":{"$ref":"#/$defs/pitch"},"high":{"description":"The wall whose plate is higher.","type":"string","pattern":"^[A-Z]$","x-ref":["wall"],"examples":["A"]},"rafters":{"$ref":"#/$defs/rafters"},"deck":{"$ref":"#/$defs/deck"},"covering":{"$ref":"#/$defs/covering"},"ceiling":{"$ref":"#/$defs/ceiling"}},"required":["kind","high"]},"under":{"description":"The timber it carries: an entry, a kind or a single stick, or a list of them. Without it: the one that lies at its `top`, if any.","type":["string","array"],"items":{"description":"One of the timbers.","type":"string","x-ref":["member","stick","kind"],"examples":["post"]},"minItems":1,"x-ref":["member","stick","kind"],"examples":["post"]},"pierDepth":{"description":"From the lowest ground that touches it to its own bottom; a footing lies below that.","type":["string","number"],"x-quantity":"length","examples":["50 in"]},"lateral":{"description":"Soil resistance sideways: the tabled value, or the doubled one where half an inch of movement at the ground does no harm (IBC 1806.3.4).","type":"string","enum":["single","doubled"],"examples":["single"],"default":"single","x-default-source":"common practice"},"anchor":{"description":"What ties the post to the pier.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A strap cast into the concrete, a post base bolted to it, or a dowel.","type":"string","enum":["embedded-strap","post-base","dowel"],"examples":["embedded-strap"]},"stand-off":{"description":"The gap between concrete and end grain.","type":["string","number"],"x-quantity":"length","examples":["1 in"]},"runs":{"description":"Which way the bolts run through the post: along the wall or along the bent. The straps lie on the faces where they come out.","type":"string","enum":["along-wall","along-bent"],"examples":["along-wall"],"default":"along-bent","x-default-source":"common practice"},"strap":{"description":"The steel that stands up beside the post or inside it.","type":"object","additionalProperties":false,"properties":{"place":{"description":"On both faces, on one, or as a knife plate in a kerf in the middle.","type":"string","enum":["both-faces","one-face","in-kerf"],"examples":["in-kerf"],"default":"both-faces","x-default-source":"common practice"},"thickness":{"description":"How thick the steel is.","type":["string","number"],"x-quantity":"length","examples":["3/16 in"]},"width":{"description":"How wide it is.","type":["string","number"],"x-quantity":"length","examples":["2 1/2 in"]},"height":{"description":"From the end of the post up to the top of the steel.","type":["string","number"],"x-quantity":"length","examples":["8 in"]},"let-in":{"description":"How deep each strap is let into the face of the post, so that it fits between them.","type":["string","number"],"x-quantity":"length","examples":["3/16 in"]}},"required":["thickness","width"],"examples":["{thickness: 3/16 in, width: 2 1/2 in, height: 8 in}"]},"bolts":{"description":"The bolts through steel and post, one above the other. Under a lying timber they are not judged.","type":"object","additionalProperties":false,"properties":{"count":{"description":"How many.","type":"integer","minimum":1,"maximum":8,"examples":[2]},"diameter":{"description":"How thick they are.","type":["string","number"],"x-quantity":"length","examples":["1/2 in"]},"up":{"description":"From the end of the post up to the center of the lowest. Without it: 7 diameters (NDS Table 12.5.1A, tension along the grain of softwood).","type":["string","number"],"x-quantity":"length","examples":["4 in"]},"spacing":{"description":"From center to center along the grain. Without it: 5 diameters (NDS Table 12.5.1D).","type":["string","number"],"x-quantity":"length","examples":["3 in"]}},"required":["count","diameter"],"examples":["{count: 2, diameter: 1/2 in}"]},"screws":{"description":"The screws through each strap into the post, one above the other. Where there are bolts too, only the bolts count. Under a lying timber they are not judged.","type":"object","additionalProperties":false,"properties":{"count":{"description":"How many through each strap.","type":"integer","minimum":1,"maximum":24,"examples":[3]},"diameter":{"description":"How thick they are.","type":["string","number"],"x-quantity":"length","examples":["1/4 in"]},"length":{"description":"How long they are, under the head.","type":["string","number"],"x-quantity":"length","examples":["3 in"]},"up":{"description":"From the end of the post up to the center of the lowest. Without it: 7 diameters (NDS Table 12.5.1A, tension along the grain of softwood).","type":["string","number"],"x-quantity":"length","examples":["4 in"]},"spacing":{"description":"From center to center along the grain. Without it: 5 diameters (NDS Table 12.5.1D).","type":["string","number"],"x-quantity":"length","examples":["2 in"]}},"required":["count","diameter","length"],"examples":["{count: 3, diameter: 1/4 in, length: 3 in}"]},"plate":{"description":"Side of the square plate that the end grain stands on. Without it: as large as the post, on straps that carry it over the stand-off; over a plate in a kerf the bolts carry the post.","type":["string","number"],"x-quantity":"length","examples":["5 in"]},"capacity":{"description":"What the anchor holds at the foot of a post by its maker’s sheet or by an engineer, each way alone. It goes before what is reckoned here.","type":"object","additionalProperties":false,"properties":{"down":{"description":"What presses down.","type":["string","number"],"x-quantity":"force","examples":["9000 lb"]},"uplift":{"description":"What lifts.","type":["string","number"],"x-quantity":"force","examples":["2400 lb"]},"sideways":{"description":"What pushes sideways as a whole, whichever way it goes: the figure of the weaker way.","type":["string","number"],"x-quantity":"force","examples":["900 lb"]},"because":{"description":"Where the figures come from.","type":"string","pattern":"\\S","examples":["the maker’s sheet, post 8x8, May 2027"]}},"required":["because"],"examples":["{uplift: 2400 lb, sideways: 900 lb, because: the maker’s sheet}"]}},"required":["kind"],"examples":["{kind: embedded-strap, stand-off: 1 in}"]},"rebar":{"description":"Upright bars in the pier.","type":"object","additionalProperties":false,"properties":{"count":{"description":"How many bars stand in the pier.","type":"integer","minimum":1,"maximum":24,"examples":[3]},"size":{"description":"Bar number, in eighths of an inch.","type":"integer","minimum":3,"examples":[4],"maximum":11}},"required":["count","size"],"examples":["{count: 3, size: 4}"]},"pier-tube":{"description":"A round concrete pier cast in a tube.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A round concrete pier cast in a tube.","const":"tube","examples":["tube"]},"diameter":{"description":"Inside diameter of the tube.","type":["string","number"],"x-quantity":"length","examples":["16 in"]},"under":{"$ref":"#/$defs/under"},"at":{"$ref":"#/$defs/places"},"depth":{"$ref":"#/$defs/pierDepth"},"top":{"$ref":"#/$defs/height","description":"The height of its top: a level or a length above the datum.","examples":["pier-top"]},"lateral":{"$ref":"#/$defs/lateral"},"anchor":{"$ref":"#/$defs/anchor"},"rebar":{"$ref":"#/$defs/rebar"},"footing":{"description":"A wider footing below.","type":"object","additionalProperties":false,"properties":{"diameter":{"description":"How wide it is.","type":["string","number"],"x-quantity":"length","examples":["24 in"]},"thickness":{"description":"How thick it is.","type":["string","number"],"x-quantity":"length","examples":["12 in"]}},"required":["diameter","thickness"],"examples":["{diameter: 24 in, thickness: 12 in}"]}},"required":["kind","diameter"]},"pier-pad":{"description":"A square concrete pad.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A square concrete pad.","const":"pad","examples":["pad"]},"width":{"description":"The side of the square.","type":["string","number"],"x-quantity":"length","examples":["24 in"]},"under":{"$ref":"#/$defs/under"},"at":{"$ref":"#/$defs/places"},"depth":{"$ref":"#/$defs/pierDepth"},"top":{"$ref":"#/$defs/height","description":"The height of its top: a level or a length above the datum.","examples":["pier-top"]},"lateral":{"$ref":"#/$defs/lateral"},"anchor":{"$ref":"#/$defs/anchor"},"rebar":{"$ref":"#/$defs/rebar"}},"required":["kind","width"]},"pier":{"description":"A pier under a post or a beam.","type":"object","required":["kind"],"discriminator":{"propertyName":"kind"},"oneOf":[{"$ref":"#/$defs/pier-tube"},{"$ref":"#/$defs/pier-pad"}]},"joint-rafter-heel":{"description":"The foot of a principal rafter, stepped into a tie and tenoned.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"The foot of a principal rafter, stepped into a tie and tenoned.","const":"rafter-heel","examples":["rafter-heel"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["principal"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["tie"]},"form":{"description":"How the abutment that takes the thrust stands. bisecting: it halves the blunt angle between the rafter's upper edge and the tie. square: square to the rafter.","type":"string","enum":["bisecting","square"],"examples":["bisecting"],"default":"bisecting","x-default-source":"common practice"},"housing":{"description":"How deep the toe is stepped into the tie, square to its face. Without it: a sixth of the tie, at least 1 in.","type":["string","number"],"x-quantity":"length","examples":["1 1/2 in"]},"tenon":{"$ref":"#/$defs/tenon"},"pegs":{"$ref":"#/$defs/twoPegs"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]},"joint-rafter-pair":{"description":"Two rafters head to head at the ridge, without a ridge timber.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Two rafters head to head at the ridge, without a ridge timber.","const":"rafter-pair","examples":["rafter-pair"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["principal"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["principal"]},"form":{"description":"bridle: a tongue on the one in a fork of the other, a third of the thickness each. lapped: each gives half its thickness.","type":"string","enum":["bridle","lapped"],"examples":["bridle"],"default":"bridle","x-default-source":"common practice"},"pegs":{"$ref":"#/$defs/onePeg"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]}}};
const func1 = Object.prototype.hasOwnProperty;
const pattern3 = new RegExp("^(?:[1-9][0-9]*|[A-Z](?:[1-9][0-9]*)?)$", "u");
const pattern5 = new RegExp("^[\\p{L}][\\p{L}\\p{N}_-]*$", "u");
const pattern6 = new RegExp("^[A-Z]$", "u");
const pattern8 = new RegExp("^[1-9][0-9]*$", "u");
const pattern24 = new RegExp("^(?:[1-9][0-9]*|[A-Z])$", "u");
const pattern23 = new RegExp("\\S", "u");
const schema20 = {"description":"The wood: a species (white-oak) or a group of the lumber grades (eastern-hemlock-tamarack).","type":"string","x-ref":["species"],"examples":["eastern-white-pine","white-oak"]};

function validate53(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate53.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(typeof data !== "string"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate53.errors = vErrors;
return errors === 0;
}
validate53.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema21 = {"description":"How far the wall stands from the first wall, across the bents.","type":["string","number","object"],"x-quantity":"length","additionalProperties":false,"properties":{"at":{"description":"How far it stands from the first line of the grid.","type":["string","number"],"x-quantity":"length","examples":["13 ft","9 ft"]},"reference":{"description":"Which face of the timbers lies on this line. Without it: the outside face in outer lines, the center in inner ones.","type":"string","enum":["center","outward","toward-1","toward-a"],"examples":["center"]}},"required":["at"],"examples":["13 ft","{at: 13 ft, reference: center}"]};

function validate56(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate56.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))) && (!(data && typeof data == "object" && !Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema21.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.at === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "at"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((key0 === "at") || (key0 === "reference"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.at !== undefined){
let data0 = data.at;
if((typeof data0 !== "string") && (!((typeof data0 == "number") && (isFinite(data0))))){
const err3 = {instancePath:instancePath+"/at",schemaPath:"#/properties/at/type",keyword:"type",params:{type: schema21.properties.at.type}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.reference !== undefined){
let data1 = data.reference;
if(typeof data1 !== "string"){
const err4 = {instancePath:instancePath+"/reference",schemaPath:"#/properties/reference/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(!((((data1 === "center") || (data1 === "outward")) || (data1 === "toward-1")) || (data1 === "toward-a"))){
const err5 = {instancePath:instancePath+"/reference",schemaPath:"#/properties/reference/enum",keyword:"enum",params:{allowedValues: schema21.properties.reference.enum}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
validate56.errors = vErrors;
return errors === 0;
}
validate56.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema22 = {"description":"How far the bent stands from the first bent, along the walls.","type":["string","number","object"],"x-quantity":"length","additionalProperties":false,"properties":{"at":{"description":"How far it stands from the first line of the grid.","type":["string","number"],"x-quantity":"length","examples":["13 ft","9 ft"]},"reference":{"description":"Which face of the timbers lies on this line. Without it: the outside face in outer lines, the center in inner ones.","type":"string","enum":["center","outward","toward-1","toward-a"],"examples":["center"]}},"required":["at"],"examples":["9 ft","{at: 9 ft, reference: toward-1}"]};

function validate58(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate58.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))) && (!(data && typeof data == "object" && !Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema22.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.at === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "at"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((key0 === "at") || (key0 === "reference"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.at !== undefined){
let data0 = data.at;
if((typeof data0 !== "string") && (!((typeof data0 == "number") && (isFinite(data0))))){
const err3 = {instancePath:instancePath+"/at",schemaPath:"#/properties/at/type",keyword:"type",params:{type: schema22.properties.at.type}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.reference !== undefined){
let data1 = data.reference;
if(typeof data1 !== "string"){
const err4 = {instancePath:instancePath+"/reference",schemaPath:"#/properties/reference/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(!((((data1 === "center") || (data1 === "outward")) || (data1 === "toward-1")) || (data1 === "toward-a"))){
const err5 = {instancePath:instancePath+"/reference",schemaPath:"#/properties/reference/enum",keyword:"enum",params:{allowedValues: schema22.properties.reference.enum}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
validate58.errors = vErrors;
return errors === 0;
}
validate58.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema23 = {"description":"A kind of timber. One entry may stand for many sticks.","type":"object","required":["kind"],"discriminator":{"propertyName":"kind"},"oneOf":[{"$ref":"#/$defs/member-post"},{"$ref":"#/$defs/member-plate"},{"$ref":"#/$defs/member-sill"},{"$ref":"#/$defs/member-girt"},{"$ref":"#/$defs/member-tie"},{"$ref":"#/$defs/member-beam"},{"$ref":"#/$defs/member-joist"},{"$ref":"#/$defs/member-purlin"},{"$ref":"#/$defs/member-king-post"},{"$ref":"#/$defs/member-strut"},{"$ref":"#/$defs/member-brace"},{"$ref":"#/$defs/member-ridge"},{"$ref":"#/$defs/member-rafter"}]};
const schema24 = {"description":"An upright timber from the ground or a floor to what it carries.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"An upright timber from the ground or a floor to what it carries.","const":"post","examples":["post"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"at":{"$ref":"#/$defs/places"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]};
const schema25 = {"description":"Width by depth, actual sizes: 8x9 is 8 in wide and 9 in deep. Depth stands upright in a lying timber, lies across the bent in a post, and in their plane in braces and rafters. `2x8 nominal` names planed lumber, 1 1/2 in × 7 1/4 in; so does `2x8` in a class that is `surface: planed`.","type":["string","number"],"x-quantity":"section","examples":["8x9","5 1/2 x 7 1/4","2x8 nominal"]};

function validate62(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate62.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema25.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate62.errors = vErrors;
return errors === 0;
}
validate62.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema26 = {"description":"Swaps width and depth: the timber is turned a quarter about its own axis.","type":"boolean","examples":[true],"default":false,"x-default-source":"common practice"};

function validate64(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate64.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(typeof data !== "boolean"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "boolean"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate64.errors = vErrors;
return errors === 0;
}
validate64.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema27 = {"description":"The class of timber it is cut from, a name under `timber`. Without it, the first class that fits.","type":"string","x-ref":["class"],"examples":["frame"]};

function validate66(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate66.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(typeof data !== "string"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate66.errors = vErrors;
return errors === 0;
}
validate66.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema28 = {"description":"What a rough stick really measures: for every stick of the entry, or by stick (post@A1: …, rafter@A.4: …); at one place or a list of places along it. Housings reach down to the perfect timber inside it.","type":["object","array"],"additionalProperties":false,"properties":{"width":{"$ref":"#/$defs/measuredWidth"},"depth":{"$ref":"#/$defs/measuredDepth"},"at":{"$ref":"#/$defs/measuredAt"}},"patternProperties":{"^[\\p{L}][\\p{L}\\p{N}_-]*@.+$":{"$ref":"#/$defs/measuredStick"}},"dependentRequired":{"width":["depth"],"depth":["width"],"at":["width","depth"]},"items":{"$ref":"#/$defs/measuredPlace"},"x-ref":["stick"],"examples":["{width: 8 3/16 in, depth: 8 1/8 in}"]};
const schema29 = {"description":"What the stick measures at one place.","type":"object","additionalProperties":false,"properties":{"width":{"$ref":"#/$defs/measuredWidth"},"depth":{"$ref":"#/$defs/measuredDepth"},"at":{"$ref":"#/$defs/measuredAt"}},"required":["width","depth","at"],"examples":["{width: 8 3/16 in, depth: 8 1/8 in, at: 4 ft}"]};
const schema30 = {"description":"Its real width, as `section` counts it.","type":["string","number"],"x-quantity":"length","examples":["8 3/16 in"]};

function validate70(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate70.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema30.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate70.errors = vErrors;
return errors === 0;
}
validate70.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema31 = {"description":"Its real depth, as `section` counts it.","type":["string","number"],"x-quantity":"length","examples":["9 15/16 in"]};

function validate72(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate72.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema31.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate72.errors = vErrors;
return errors === 0;
}
validate72.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema32 = {"description":"How far from the foot, or from the end at bent 1 or wall A, it was measured; between two places the size runs straight. Without it: all along.","type":["string","number"],"x-quantity":"length","examples":["4 ft"]};

function validate74(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate74.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema32.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate74.errors = vErrors;
return errors === 0;
}
validate74.evaluated = {"dynamicProps":false,"dynamicItems":false};


function validate69(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate69.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.width === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "width"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.depth === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "depth"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.at === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "at"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(((key0 === "width") || (key0 === "depth")) || (key0 === "at"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.width !== undefined){
if(!(validate70(data.width, {instancePath:instancePath+"/width",parentData:data,parentDataProperty:"width",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
errors = vErrors.length;
}
}
if(data.depth !== undefined){
if(!(validate72(data.depth, {instancePath:instancePath+"/depth",parentData:data,parentDataProperty:"depth",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.at !== undefined){
if(!(validate74(data.at, {instancePath:instancePath+"/at",parentData:data,parentDataProperty:"at",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate69.errors = vErrors;
return errors === 0;
}
validate69.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema33 = {"description":"What this stick really measures, at one place or a list of places along it.","type":["object","array"],"additionalProperties":false,"properties":{"width":{"$ref":"#/$defs/measuredWidth"},"depth":{"$ref":"#/$defs/measuredDepth"},"at":{"$ref":"#/$defs/measuredAt"}},"dependentRequired":{"width":["depth"],"depth":["width"],"at":["width","depth"]},"items":{"$ref":"#/$defs/measuredPlace"},"examples":["{width: 8 3/16 in, depth: 8 1/8 in}"]};

function validate80(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate80.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!data || typeof data != "object"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema33.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(Array.isArray(data)){
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
if(!(validate69(data[i0], {instancePath:instancePath+"/" + i0,parentData:data,parentDataProperty:i0,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
errors = vErrors.length;
}
}
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((key0 === "width") || (key0 === "depth")) || (key0 === "at"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.width !== undefined){
if(!(validate70(data.width, {instancePath:instancePath+"/width",parentData:data,parentDataProperty:"width",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
errors = vErrors.length;
}
}
if(data.depth !== undefined){
if(!(validate72(data.depth, {instancePath:instancePath+"/depth",parentData:data,parentDataProperty:"depth",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.at !== undefined){
if(!(validate74(data.at, {instancePath:instancePath+"/at",parentData:data,parentDataProperty:"at",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
if(data.width !== undefined){
if(data.depth === undefined){
const err2 = {instancePath,schemaPath:"#/dependentRequired",keyword:"dependentRequired",params:{property: "width",
    missingProperty: "depth",
    depsCount: 1,
    deps: "depth"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.depth !== undefined){
if(data.width === undefined){
const err3 = {instancePath,schemaPath:"#/dependentRequired",keyword:"dependentRequired",params:{property: "depth",
    missingProperty: "width",
    depsCount: 1,
    deps: "width"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.at !== undefined){
if(data.width === undefined){
const err4 = {instancePath,schemaPath:"#/dependentRequired",keyword:"dependentRequired",params:{property: "at",
    missingProperty: "width",
    depsCount: 2,
    deps: "width, depth"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(data.depth === undefined){
const err5 = {instancePath,schemaPath:"#/dependentRequired",keyword:"dependentRequired",params:{property: "at",
    missingProperty: "depth",
    depsCount: 2,
    deps: "width, depth"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
validate80.errors = vErrors;
return errors === 0;
}
validate80.evaluated = {"props":true,"items":true,"dynamicProps":false,"dynamicItems":false};

const pattern12 = new RegExp("^[\\p{L}][\\p{L}\\p{N}_-]*@.+$", "u");

function validate68(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate68.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!data || typeof data != "object"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema28.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(Array.isArray(data)){
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
if(!(validate69(data[i0], {instancePath:instancePath+"/" + i0,parentData:data,parentDataProperty:i0,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate69.errors : vErrors.concat(validate69.errors);
errors = vErrors.length;
}
}
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((((key0 === "width") || (key0 === "depth")) || (key0 === "at")) || (pattern12.test(key0)))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.width !== undefined){
if(!(validate70(data.width, {instancePath:instancePath+"/width",parentData:data,parentDataProperty:"width",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate70.errors : vErrors.concat(validate70.errors);
errors = vErrors.length;
}
}
if(data.depth !== undefined){
if(!(validate72(data.depth, {instancePath:instancePath+"/depth",parentData:data,parentDataProperty:"depth",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate72.errors : vErrors.concat(validate72.errors);
errors = vErrors.length;
}
}
if(data.at !== undefined){
if(!(validate74(data.at, {instancePath:instancePath+"/at",parentData:data,parentDataProperty:"at",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate74.errors : vErrors.concat(validate74.errors);
errors = vErrors.length;
}
}
for(const key1 in data){
if(pattern12.test(key1)){
if(!(validate80(data[key1], {instancePath:instancePath+"/" + key1.replace(/~/g, "~0").replace(/\//g, "~1"),parentData:data,parentDataProperty:key1,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate80.errors : vErrors.concat(validate80.errors);
errors = vErrors.length;
}
}
}
if(data.width !== undefined){
if(data.depth === undefined){
const err2 = {instancePath,schemaPath:"#/dependentRequired",keyword:"dependentRequired",params:{property: "width",
    missingProperty: "depth",
    depsCount: 1,
    deps: "depth"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.depth !== undefined){
if(data.width === undefined){
const err3 = {instancePath,schemaPath:"#/dependentRequired",keyword:"dependentRequired",params:{property: "depth",
    missingProperty: "width",
    depsCount: 1,
    deps: "width"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.at !== undefined){
if(data.width === undefined){
const err4 = {instancePath,schemaPath:"#/dependentRequired",keyword:"dependentRequired",params:{property: "at",
    missingProperty: "width",
    depsCount: 2,
    deps: "width, depth"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(data.depth === undefined){
const err5 = {instancePath,schemaPath:"#/dependentRequired",keyword:"dependentRequired",params:{property: "at",
    missingProperty: "depth",
    depsCount: 2,
    deps: "width, depth"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
validate68.errors = vErrors;
return errors === 0;
}
validate68.evaluated = {"props":true,"items":true,"dynamicProps":false,"dynamicItems":false};

const schema34 = {"description":"Where it stands: one place of the grid or a list of them.","type":["string","array"],"pattern":"^[A-Z](?:[1-9][0-9]*|@.+)$","items":{"$ref":"#/$defs/place"},"minItems":1,"x-quantity":"grid-place","x-ref":["place"],"examples":["[A1, A2, B1, B2]"]};
const pattern14 = new RegExp("^[A-Z](?:[1-9][0-9]*|@.+)$", "u");
const schema35 = {"description":"A place of the grid: a wall and a bent (A1), or so far along a wall from bent 1 (B@4 ft 9 in).","type":"string","pattern":"^[A-Z](?:[1-9][0-9]*|@.+)$","x-quantity":"grid-place","x-ref":["place"],"examples":["A1","B@4 ft 9 in"]};

function validate88(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate88.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(typeof data === "string"){
if(!pattern14.test(data)){
const err0 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^[A-Z](?:[1-9][0-9]*|@.+)$"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
else {
const err1 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate88.errors = vErrors;
return errors === 0;
}
validate88.evaluated = {"dynamicProps":false,"dynamicItems":false};


function validate87(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate87.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema34.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(typeof data === "string"){
if(!pattern14.test(data)){
const err1 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^[A-Z](?:[1-9][0-9]*|@.+)$"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(Array.isArray(data)){
if(data.length < 1){
const err2 = {instancePath,schemaPath:"#/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
if(!(validate88(data[i0], {instancePath:instancePath+"/" + i0,parentData:data,parentDataProperty:i0,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate88.errors : vErrors.concat(validate88.errors);
errors = vErrors.length;
}
}
}
validate87.errors = vErrors;
return errors === 0;
}
validate87.evaluated = {"items":true,"dynamicProps":false,"dynamicItems":false};

const schema36 = {"description":"Where it starts: a wall or bent, a place, a level, or a timber by entry or kind (then at that timber's near face).","type":["string","integer"],"x-ref":["wall","bent","place","level","member","kind","pier-top"],"examples":["A","1","pier-top"]};

function validate91(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate91.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(((typeof data == "number") && (!(data % 1) && !isNaN(data))) && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema36.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate91.errors = vErrors;
return errors === 0;
}
validate91.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema37 = {"description":"Where it ends: a wall or bent, a place, a level, or a timber by entry or kind (then at that timber's near face).","type":["string","integer"],"x-ref":["wall","bent","place","level","member","kind"],"examples":["B","3","plate"]};

function validate93(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate93.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(((typeof data == "number") && (!(data % 1) && !isNaN(data))) && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema37.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate93.errors = vErrors;
return errors === 0;
}
validate93.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema38 = {"description":"Both ends placed by hand, for what the grid cannot say; `kind` then only says what the timber does.","type":"array","minItems":2,"maxItems":2,"items":{"$ref":"#/$defs/endPlace"},"examples":["[{at: A1, level: tie-top}, {at: A2, level: tie-top, offset: [0, 4 in, 0]}]"]};
const schema39 = {"description":"One end, placed by hand.","type":"object","additionalProperties":false,"properties":{"at":{"$ref":"#/$defs/place"},"level":{"$ref":"#/$defs/height"},"offset":{"description":"From there, along the walls, across the bents and upwards.","type":"array","minItems":3,"maxItems":3,"items":{"description":"An offset, negative the other way.","type":["string","number"],"x-quantity":"length","examples":["4 in","0"]},"examples":["[0, 4 in, 0]"]}},"examples":["{at: A1, level: tie-top}"]};
const schema40 = {"description":"A height: the name of a level, or a length above the datum.","type":["string","number"],"x-quantity":"height","examples":["eave","9 ft 4 in"],"x-ref":["level"]};

function validate98(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate98.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema40.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate98.errors = vErrors;
return errors === 0;
}
validate98.evaluated = {"dynamicProps":false,"dynamicItems":false};


function validate96(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate96.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((key0 === "at") || (key0 === "level")) || (key0 === "offset"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.at !== undefined){
if(!(validate88(data.at, {instancePath:instancePath+"/at",parentData:data,parentDataProperty:"at",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate88.errors : vErrors.concat(validate88.errors);
errors = vErrors.length;
}
}
if(data.level !== undefined){
if(!(validate98(data.level, {instancePath:instancePath+"/level",parentData:data,parentDataProperty:"level",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.offset !== undefined){
let data2 = data.offset;
if(Array.isArray(data2)){
if(data2.length > 3){
const err1 = {instancePath:instancePath+"/offset",schemaPath:"#/properties/offset/maxItems",keyword:"maxItems",params:{limit: 3}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data2.length < 3){
const err2 = {instancePath:instancePath+"/offset",schemaPath:"#/properties/offset/minItems",keyword:"minItems",params:{limit: 3}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data2.length;
for(let i0=0; i0<len0; i0++){
let data3 = data2[i0];
if((typeof data3 !== "string") && (!((typeof data3 == "number") && (isFinite(data3))))){
const err3 = {instancePath:instancePath+"/offset/" + i0,schemaPath:"#/properties/offset/items/type",keyword:"type",params:{type: schema39.properties.offset.items.type}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
else {
const err4 = {instancePath:instancePath+"/offset",schemaPath:"#/properties/offset/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate96.errors = vErrors;
return errors === 0;
}
validate96.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate95(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate95.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(Array.isArray(data)){
if(data.length > 2){
const err0 = {instancePath,schemaPath:"#/maxItems",keyword:"maxItems",params:{limit: 2}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.length < 2){
const err1 = {instancePath,schemaPath:"#/minItems",keyword:"minItems",params:{limit: 2}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
if(!(validate96(data[i0], {instancePath:instancePath+"/" + i0,parentData:data,parentDataProperty:i0,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate96.errors : vErrors.concat(validate96.errors);
errors = vErrors.length;
}
}
}
else {
const err2 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
validate95.errors = vErrors;
return errors === 0;
}
validate95.evaluated = {"items":true,"dynamicProps":false,"dynamicItems":false};

const schema41 = {"description":"The post that carries it like a gate leaf: the name of a single stick.","type":"string","x-ref":["stick"],"examples":["post@A1"]};

function validate102(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate102.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(typeof data !== "string"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate102.errors = vErrors;
return errors === 0;
}
validate102.evaluated = {"dynamicProps":false,"dynamicItems":false};


function validate61(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate61.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.section === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "section"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema24.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("post" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "post"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.section !== undefined){
if(!(validate62(data.section, {instancePath:instancePath+"/section",parentData:data,parentDataProperty:"section",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
errors = vErrors.length;
}
}
if(data.turned !== undefined){
if(!(validate64(data.turned, {instancePath:instancePath+"/turned",parentData:data,parentDataProperty:"turned",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
errors = vErrors.length;
}
}
if(data.timber !== undefined){
if(!(validate66(data.timber, {instancePath:instancePath+"/timber",parentData:data,parentDataProperty:"timber",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate66.errors : vErrors.concat(validate66.errors);
errors = vErrors.length;
}
}
if(data.measured !== undefined){
if(!(validate68(data.measured, {instancePath:instancePath+"/measured",parentData:data,parentDataProperty:"measured",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
errors = vErrors.length;
}
}
if(data.at !== undefined){
if(!(validate87(data.at, {instancePath:instancePath+"/at",parentData:data,parentDataProperty:"at",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate87.errors : vErrors.concat(validate87.errors);
errors = vErrors.length;
}
}
if(data.from !== undefined){
if(!(validate91(data.from, {instancePath:instancePath+"/from",parentData:data,parentDataProperty:"from",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data.to !== undefined){
if(!(validate93(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate93.errors : vErrors.concat(validate93.errors);
errors = vErrors.length;
}
}
if(data.ends !== undefined){
if(!(validate95(data.ends, {instancePath:instancePath+"/ends",parentData:data,parentDataProperty:"ends",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data["hung-on"] !== undefined){
if(!(validate102(data["hung-on"], {instancePath:instancePath+"/hung-on",parentData:data,parentDataProperty:"hung-on",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate61.errors = vErrors;
return errors === 0;
}
validate61.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema42 = {"description":"A lying timber on top of the posts that carries the rafters.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A lying timber on top of the posts that carries the rafters.","const":"plate","examples":["plate"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"walls":{"$ref":"#/$defs/walls"},"bents":{"$ref":"#/$defs/bents"},"between":{"$ref":"#/$defs/between"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"top":{"$ref":"#/$defs/height","description":"The height of its top face: a level or a length above the datum.","examples":["eave","7 ft 10 in"]},"bottom":{"$ref":"#/$defs/height","description":"The height of its bottom face: a level or a length above the datum.","examples":["7 ft"]},"overhang":{"$ref":"#/$defs/memberOverhang"},"spacing":{"$ref":"#/$defs/spacing"},"count":{"$ref":"#/$defs/count"},"layout":{"$ref":"#/$defs/layout"},"splice":{"$ref":"#/$defs/splice"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]};
const schema43 = {"description":"The walls it runs along: one letter or a list.","type":["string","array"],"pattern":"^[A-Z]$","items":{"description":"A wall of the grid.","type":"string","pattern":"^[A-Z]$","x-ref":["wall"],"examples":["A"]},"minItems":1,"x-ref":["wall"],"examples":["[A, B]"]};

function validate109(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate109.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema43.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(typeof data === "string"){
if(!pattern6.test(data)){
const err1 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^[A-Z]$"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(Array.isArray(data)){
if(data.length < 1){
const err2 = {instancePath,schemaPath:"#/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
let data0 = data[i0];
if(typeof data0 === "string"){
if(!pattern6.test(data0)){
const err3 = {instancePath:instancePath+"/" + i0,schemaPath:"#/items/pattern",keyword:"pattern",params:{pattern: "^[A-Z]$"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
else {
const err4 = {instancePath:instancePath+"/" + i0,schemaPath:"#/items/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
validate109.errors = vErrors;
return errors === 0;
}
validate109.evaluated = {"items":true,"dynamicProps":false,"dynamicItems":false};

const schema44 = {"description":"The bents it stands in: one number or a list.","type":["string","integer","array"],"pattern":"^[1-9][0-9]*$","minimum":1,"items":{"description":"A bent of the grid.","type":["string","integer"],"pattern":"^[1-9][0-9]*$","minimum":1,"x-ref":["bent"],"examples":[1]},"minItems":1,"x-ref":["bent"],"examples":["[1, 2, 3]"]};

function validate111(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate111.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(((typeof data !== "string") && (!(((typeof data == "number") && (!(data % 1) && !isNaN(data))) && (isFinite(data))))) && (!(Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema44.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if((typeof data == "number") && (isFinite(data))){
if(data < 1 || isNaN(data)){
const err1 = {instancePath,schemaPath:"#/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(typeof data === "string"){
if(!pattern8.test(data)){
const err2 = {instancePath,schemaPath:"#/pattern",keyword:"pattern",params:{pattern: "^[1-9][0-9]*$"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(Array.isArray(data)){
if(data.length < 1){
const err3 = {instancePath,schemaPath:"#/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
let data0 = data[i0];
if((typeof data0 !== "string") && (!(((typeof data0 == "number") && (!(data0 % 1) && !isNaN(data0))) && (isFinite(data0))))){
const err4 = {instancePath:instancePath+"/" + i0,schemaPath:"#/items/type",keyword:"type",params:{type: schema44.items.type}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if((typeof data0 == "number") && (isFinite(data0))){
if(data0 < 1 || isNaN(data0)){
const err5 = {instancePath:instancePath+"/" + i0,schemaPath:"#/items/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(typeof data0 === "string"){
if(!pattern8.test(data0)){
const err6 = {instancePath:instancePath+"/" + i0,schemaPath:"#/items/pattern",keyword:"pattern",params:{pattern: "^[1-9][0-9]*$"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
}
}
validate111.errors = vErrors;
return errors === 0;
}
validate111.evaluated = {"items":true,"dynamicProps":false,"dynamicItems":false};

const schema45 = {"description":"The two timbers it stands between, by entry, kind or single stick.","type":"array","minItems":2,"maxItems":2,"items":{"description":"One of the two timbers.","type":"string","x-ref":["member","stick","kind"],"examples":["post"]},"x-ref":["member","stick","kind"],"examples":["[post, plate]"]};

function validate113(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate113.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(Array.isArray(data)){
if(data.length > 2){
const err0 = {instancePath,schemaPath:"#/maxItems",keyword:"maxItems",params:{limit: 2}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.length < 2){
const err1 = {instancePath,schemaPath:"#/minItems",keyword:"minItems",params:{limit: 2}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
if(typeof data[i0] !== "string"){
const err2 = {instancePath:instancePath+"/" + i0,schemaPath:"#/items/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate113.errors = vErrors;
return errors === 0;
}
validate113.evaluated = {"items":true,"dynamicProps":false,"dynamicItems":false};

const schema46 = {"description":"How far it runs past its first and its last grid line.","type":["string","number","object"],"x-quantity":"length","additionalProperties":false,"properties":{"from":{"description":"Past its first grid line.","type":["string","number"],"x-quantity":"length","examples":["12 in"]},"to":{"description":"Past its last grid line.","type":["string","number"],"x-quantity":"length","examples":["12 in"]}},"examples":["12 in","{from: 12 in, to: 0}"]};

function validate119(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate119.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))) && (!(data && typeof data == "object" && !Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema46.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((key0 === "from") || (key0 === "to"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.from !== undefined){
let data0 = data.from;
if((typeof data0 !== "string") && (!((typeof data0 == "number") && (isFinite(data0))))){
const err2 = {instancePath:instancePath+"/from",schemaPath:"#/properties/from/type",keyword:"type",params:{type: schema46.properties.from.type}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.to !== undefined){
let data1 = data.to;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err3 = {instancePath:instancePath+"/to",schemaPath:"#/properties/to/type",keyword:"type",params:{type: schema46.properties.to.type}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
validate119.errors = vErrors;
return errors === 0;
}
validate119.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema47 = {"description":"The most allowed from center to center.","type":["string","number"],"x-quantity":"length","examples":["24 in","30 in"]};

function validate121(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate121.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema47.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate121.errors = vErrors;
return errors === 0;
}
validate121.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema48 = {"description":"How many, instead of a spacing.","type":"integer","minimum":1,"maximum":500,"examples":[7]};

function validate123(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate123.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(!(((typeof data == "number") && (!(data % 1) && !isNaN(data))) && (isFinite(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if((typeof data == "number") && (isFinite(data))){
if(data > 500 || isNaN(data)){
const err1 = {instancePath,schemaPath:"#/maximum",keyword:"maximum",params:{comparison: "<=", limit: 500}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data < 1 || isNaN(data)){
const err2 = {instancePath,schemaPath:"#/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
validate123.errors = vErrors;
return errors === 0;
}
validate123.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema49 = {"description":"even: the same spacing throughout. fixed: exactly the spacing, the remainder in the last bay.","type":"string","enum":["even","fixed"],"examples":["even"],"default":"even","x-default-source":"common practice"};

function validate125(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate125.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(typeof data !== "string"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(!((data === "even") || (data === "fixed"))){
const err1 = {instancePath,schemaPath:"#/enum",keyword:"enum",params:{allowedValues: schema49.enum}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate125.errors = vErrors;
return errors === 0;
}
validate125.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema50 = {"description":"Divides a long timber in two, joined end to end.","type":"object","additionalProperties":false,"properties":{"at":{"description":"The grid line or place where the joint sits.","type":["string","integer"],"x-ref":["bent","wall","place"],"examples":["2"]},"kind":{"description":"The joint that holds the two lengths together.","type":"string","enum":["half-lap-scarf","bladed-scarf","stop-splayed-scarf"],"examples":["half-lap-scarf"],"default":"half-lap-scarf","x-default-source":"common practice"}},"required":["at"],"examples":["{at: 2, kind: half-lap-scarf}"]};

function validate127(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate127.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.at === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "at"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!((key0 === "at") || (key0 === "kind"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.at !== undefined){
let data0 = data.at;
if((typeof data0 !== "string") && (!(((typeof data0 == "number") && (!(data0 % 1) && !isNaN(data0))) && (isFinite(data0))))){
const err2 = {instancePath:instancePath+"/at",schemaPath:"#/properties/at/type",keyword:"type",params:{type: schema50.properties.at.type}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
let data1 = data.kind;
if(typeof data1 !== "string"){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
if(!(((data1 === "half-lap-scarf") || (data1 === "bladed-scarf")) || (data1 === "stop-splayed-scarf"))){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/enum",keyword:"enum",params:{allowedValues: schema50.properties.kind.enum}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate127.errors = vErrors;
return errors === 0;
}
validate127.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate104(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate104.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.section === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "section"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema42.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("plate" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "plate"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.section !== undefined){
if(!(validate62(data.section, {instancePath:instancePath+"/section",parentData:data,parentDataProperty:"section",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
errors = vErrors.length;
}
}
if(data.turned !== undefined){
if(!(validate64(data.turned, {instancePath:instancePath+"/turned",parentData:data,parentDataProperty:"turned",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
errors = vErrors.length;
}
}
if(data.timber !== undefined){
if(!(validate66(data.timber, {instancePath:instancePath+"/timber",parentData:data,parentDataProperty:"timber",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate66.errors : vErrors.concat(validate66.errors);
errors = vErrors.length;
}
}
if(data.measured !== undefined){
if(!(validate68(data.measured, {instancePath:instancePath+"/measured",parentData:data,parentDataProperty:"measured",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
errors = vErrors.length;
}
}
if(data.walls !== undefined){
if(!(validate109(data.walls, {instancePath:instancePath+"/walls",parentData:data,parentDataProperty:"walls",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate109.errors : vErrors.concat(validate109.errors);
errors = vErrors.length;
}
}
if(data.bents !== undefined){
if(!(validate111(data.bents, {instancePath:instancePath+"/bents",parentData:data,parentDataProperty:"bents",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate111.errors : vErrors.concat(validate111.errors);
errors = vErrors.length;
}
}
if(data.between !== undefined){
if(!(validate113(data.between, {instancePath:instancePath+"/between",parentData:data,parentDataProperty:"between",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate113.errors : vErrors.concat(validate113.errors);
errors = vErrors.length;
}
}
if(data.from !== undefined){
if(!(validate91(data.from, {instancePath:instancePath+"/from",parentData:data,parentDataProperty:"from",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data.to !== undefined){
if(!(validate93(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate93.errors : vErrors.concat(validate93.errors);
errors = vErrors.length;
}
}
if(data.top !== undefined){
if(!(validate98(data.top, {instancePath:instancePath+"/top",parentData:data,parentDataProperty:"top",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.bottom !== undefined){
if(!(validate98(data.bottom, {instancePath:instancePath+"/bottom",parentData:data,parentDataProperty:"bottom",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.overhang !== undefined){
if(!(validate119(data.overhang, {instancePath:instancePath+"/overhang",parentData:data,parentDataProperty:"overhang",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate119.errors : vErrors.concat(validate119.errors);
errors = vErrors.length;
}
}
if(data.spacing !== undefined){
if(!(validate121(data.spacing, {instancePath:instancePath+"/spacing",parentData:data,parentDataProperty:"spacing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate121.errors : vErrors.concat(validate121.errors);
errors = vErrors.length;
}
}
if(data.count !== undefined){
if(!(validate123(data.count, {instancePath:instancePath+"/count",parentData:data,parentDataProperty:"count",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate123.errors : vErrors.concat(validate123.errors);
errors = vErrors.length;
}
}
if(data.layout !== undefined){
if(!(validate125(data.layout, {instancePath:instancePath+"/layout",parentData:data,parentDataProperty:"layout",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate125.errors : vErrors.concat(validate125.errors);
errors = vErrors.length;
}
}
if(data.splice !== undefined){
if(!(validate127(data.splice, {instancePath:instancePath+"/splice",parentData:data,parentDataProperty:"splice",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.ends !== undefined){
if(!(validate95(data.ends, {instancePath:instancePath+"/ends",parentData:data,parentDataProperty:"ends",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data["hung-on"] !== undefined){
if(!(validate102(data["hung-on"], {instancePath:instancePath+"/hung-on",parentData:data,parentDataProperty:"hung-on",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate104.errors = vErrors;
return errors === 0;
}
validate104.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema51 = {"description":"A lying timber at the foot of the posts.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A lying timber at the foot of the posts.","const":"sill","examples":["sill"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"walls":{"$ref":"#/$defs/walls"},"bents":{"$ref":"#/$defs/bents"},"between":{"$ref":"#/$defs/between"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"top":{"$ref":"#/$defs/height","description":"The height of its top face: a level or a length above the datum.","examples":["eave","7 ft 10 in"]},"bottom":{"$ref":"#/$defs/height","description":"The height of its bottom face: a level or a length above the datum.","examples":["7 ft"]},"overhang":{"$ref":"#/$defs/memberOverhang"},"spacing":{"$ref":"#/$defs/spacing"},"count":{"$ref":"#/$defs/count"},"layout":{"$ref":"#/$defs/layout"},"splice":{"$ref":"#/$defs/splice"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]};

function validate131(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate131.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.section === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "section"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema51.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("sill" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "sill"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.section !== undefined){
if(!(validate62(data.section, {instancePath:instancePath+"/section",parentData:data,parentDataProperty:"section",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
errors = vErrors.length;
}
}
if(data.turned !== undefined){
if(!(validate64(data.turned, {instancePath:instancePath+"/turned",parentData:data,parentDataProperty:"turned",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
errors = vErrors.length;
}
}
if(data.timber !== undefined){
if(!(validate66(data.timber, {instancePath:instancePath+"/timber",parentData:data,parentDataProperty:"timber",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate66.errors : vErrors.concat(validate66.errors);
errors = vErrors.length;
}
}
if(data.measured !== undefined){
if(!(validate68(data.measured, {instancePath:instancePath+"/measured",parentData:data,parentDataProperty:"measured",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
errors = vErrors.length;
}
}
if(data.walls !== undefined){
if(!(validate109(data.walls, {instancePath:instancePath+"/walls",parentData:data,parentDataProperty:"walls",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate109.errors : vErrors.concat(validate109.errors);
errors = vErrors.length;
}
}
if(data.bents !== undefined){
if(!(validate111(data.bents, {instancePath:instancePath+"/bents",parentData:data,parentDataProperty:"bents",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate111.errors : vErrors.concat(validate111.errors);
errors = vErrors.length;
}
}
if(data.between !== undefined){
if(!(validate113(data.between, {instancePath:instancePath+"/between",parentData:data,parentDataProperty:"between",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate113.errors : vErrors.concat(validate113.errors);
errors = vErrors.length;
}
}
if(data.from !== undefined){
if(!(validate91(data.from, {instancePath:instancePath+"/from",parentData:data,parentDataProperty:"from",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data.to !== undefined){
if(!(validate93(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate93.errors : vErrors.concat(validate93.errors);
errors = vErrors.length;
}
}
if(data.top !== undefined){
if(!(validate98(data.top, {instancePath:instancePath+"/top",parentData:data,parentDataProperty:"top",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.bottom !== undefined){
if(!(validate98(data.bottom, {instancePath:instancePath+"/bottom",parentData:data,parentDataProperty:"bottom",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.overhang !== undefined){
if(!(validate119(data.overhang, {instancePath:instancePath+"/overhang",parentData:data,parentDataProperty:"overhang",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate119.errors : vErrors.concat(validate119.errors);
errors = vErrors.length;
}
}
if(data.spacing !== undefined){
if(!(validate121(data.spacing, {instancePath:instancePath+"/spacing",parentData:data,parentDataProperty:"spacing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate121.errors : vErrors.concat(validate121.errors);
errors = vErrors.length;
}
}
if(data.count !== undefined){
if(!(validate123(data.count, {instancePath:instancePath+"/count",parentData:data,parentDataProperty:"count",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate123.errors : vErrors.concat(validate123.errors);
errors = vErrors.length;
}
}
if(data.layout !== undefined){
if(!(validate125(data.layout, {instancePath:instancePath+"/layout",parentData:data,parentDataProperty:"layout",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate125.errors : vErrors.concat(validate125.errors);
errors = vErrors.length;
}
}
if(data.splice !== undefined){
if(!(validate127(data.splice, {instancePath:instancePath+"/splice",parentData:data,parentDataProperty:"splice",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.ends !== undefined){
if(!(validate95(data.ends, {instancePath:instancePath+"/ends",parentData:data,parentDataProperty:"ends",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data["hung-on"] !== undefined){
if(!(validate102(data["hung-on"], {instancePath:instancePath+"/hung-on",parentData:data,parentDataProperty:"hung-on",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate131.errors = vErrors;
return errors === 0;
}
validate131.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema52 = {"description":"A lying timber between posts, below the plate.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A lying timber between posts, below the plate.","const":"girt","examples":["girt"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"walls":{"$ref":"#/$defs/walls"},"bents":{"$ref":"#/$defs/bents"},"between":{"$ref":"#/$defs/between"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"top":{"$ref":"#/$defs/height","description":"The height of its top face: a level or a length above the datum.","examples":["eave","7 ft 10 in"]},"bottom":{"$ref":"#/$defs/height","description":"The height of its bottom face: a level or a length above the datum.","examples":["7 ft"]},"overhang":{"$ref":"#/$defs/memberOverhang"},"spacing":{"$ref":"#/$defs/spacing"},"count":{"$ref":"#/$defs/count"},"layout":{"$ref":"#/$defs/layout"},"splice":{"$ref":"#/$defs/splice"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]};

function validate150(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate150.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.section === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "section"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema52.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("girt" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "girt"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.section !== undefined){
if(!(validate62(data.section, {instancePath:instancePath+"/section",parentData:data,parentDataProperty:"section",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
errors = vErrors.length;
}
}
if(data.turned !== undefined){
if(!(validate64(data.turned, {instancePath:instancePath+"/turned",parentData:data,parentDataProperty:"turned",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
errors = vErrors.length;
}
}
if(data.timber !== undefined){
if(!(validate66(data.timber, {instancePath:instancePath+"/timber",parentData:data,parentDataProperty:"timber",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate66.errors : vErrors.concat(validate66.errors);
errors = vErrors.length;
}
}
if(data.measured !== undefined){
if(!(validate68(data.measured, {instancePath:instancePath+"/measured",parentData:data,parentDataProperty:"measured",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
errors = vErrors.length;
}
}
if(data.walls !== undefined){
if(!(validate109(data.walls, {instancePath:instancePath+"/walls",parentData:data,parentDataProperty:"walls",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate109.errors : vErrors.concat(validate109.errors);
errors = vErrors.length;
}
}
if(data.bents !== undefined){
if(!(validate111(data.bents, {instancePath:instancePath+"/bents",parentData:data,parentDataProperty:"bents",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate111.errors : vErrors.concat(validate111.errors);
errors = vErrors.length;
}
}
if(data.between !== undefined){
if(!(validate113(data.between, {instancePath:instancePath+"/between",parentData:data,parentDataProperty:"between",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate113.errors : vErrors.concat(validate113.errors);
errors = vErrors.length;
}
}
if(data.from !== undefined){
if(!(validate91(data.from, {instancePath:instancePath+"/from",parentData:data,parentDataProperty:"from",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data.to !== undefined){
if(!(validate93(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate93.errors : vErrors.concat(validate93.errors);
errors = vErrors.length;
}
}
if(data.top !== undefined){
if(!(validate98(data.top, {instancePath:instancePath+"/top",parentData:data,parentDataProperty:"top",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.bottom !== undefined){
if(!(validate98(data.bottom, {instancePath:instancePath+"/bottom",parentData:data,parentDataProperty:"bottom",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.overhang !== undefined){
if(!(validate119(data.overhang, {instancePath:instancePath+"/overhang",parentData:data,parentDataProperty:"overhang",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate119.errors : vErrors.concat(validate119.errors);
errors = vErrors.length;
}
}
if(data.spacing !== undefined){
if(!(validate121(data.spacing, {instancePath:instancePath+"/spacing",parentData:data,parentDataProperty:"spacing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate121.errors : vErrors.concat(validate121.errors);
errors = vErrors.length;
}
}
if(data.count !== undefined){
if(!(validate123(data.count, {instancePath:instancePath+"/count",parentData:data,parentDataProperty:"count",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate123.errors : vErrors.concat(validate123.errors);
errors = vErrors.length;
}
}
if(data.layout !== undefined){
if(!(validate125(data.layout, {instancePath:instancePath+"/layout",parentData:data,parentDataProperty:"layout",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate125.errors : vErrors.concat(validate125.errors);
errors = vErrors.length;
}
}
if(data.splice !== undefined){
if(!(validate127(data.splice, {instancePath:instancePath+"/splice",parentData:data,parentDataProperty:"splice",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.ends !== undefined){
if(!(validate95(data.ends, {instancePath:instancePath+"/ends",parentData:data,parentDataProperty:"ends",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data["hung-on"] !== undefined){
if(!(validate102(data["hung-on"], {instancePath:instancePath+"/hung-on",parentData:data,parentDataProperty:"hung-on",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate150.errors = vErrors;
return errors === 0;
}
validate150.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema53 = {"description":"A lying timber across a bent that holds the walls together.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A lying timber across a bent that holds the walls together.","const":"tie","examples":["tie"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"walls":{"$ref":"#/$defs/walls"},"bents":{"$ref":"#/$defs/bents"},"between":{"$ref":"#/$defs/between"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"top":{"$ref":"#/$defs/height","description":"The height of its top face: a level or a length above the datum.","examples":["eave","7 ft 10 in"]},"bottom":{"$ref":"#/$defs/height","description":"The height of its bottom face: a level or a length above the datum.","examples":["7 ft"]},"overhang":{"$ref":"#/$defs/memberOverhang"},"spacing":{"$ref":"#/$defs/spacing"},"count":{"$ref":"#/$defs/count"},"layout":{"$ref":"#/$defs/layout"},"splice":{"$ref":"#/$defs/splice"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]};

function validate169(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate169.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.section === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "section"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema53.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("tie" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "tie"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.section !== undefined){
if(!(validate62(data.section, {instancePath:instancePath+"/section",parentData:data,parentDataProperty:"section",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
errors = vErrors.length;
}
}
if(data.turned !== undefined){
if(!(validate64(data.turned, {instancePath:instancePath+"/turned",parentData:data,parentDataProperty:"turned",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
errors = vErrors.length;
}
}
if(data.timber !== undefined){
if(!(validate66(data.timber, {instancePath:instancePath+"/timber",parentData:data,parentDataProperty:"timber",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate66.errors : vErrors.concat(validate66.errors);
errors = vErrors.length;
}
}
if(data.measured !== undefined){
if(!(validate68(data.measured, {instancePath:instancePath+"/measured",parentData:data,parentDataProperty:"measured",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
errors = vErrors.length;
}
}
if(data.walls !== undefined){
if(!(validate109(data.walls, {instancePath:instancePath+"/walls",parentData:data,parentDataProperty:"walls",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate109.errors : vErrors.concat(validate109.errors);
errors = vErrors.length;
}
}
if(data.bents !== undefined){
if(!(validate111(data.bents, {instancePath:instancePath+"/bents",parentData:data,parentDataProperty:"bents",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate111.errors : vErrors.concat(validate111.errors);
errors = vErrors.length;
}
}
if(data.between !== undefined){
if(!(validate113(data.between, {instancePath:instancePath+"/between",parentData:data,parentDataProperty:"between",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate113.errors : vErrors.concat(validate113.errors);
errors = vErrors.length;
}
}
if(data.from !== undefined){
if(!(validate91(data.from, {instancePath:instancePath+"/from",parentData:data,parentDataProperty:"from",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data.to !== undefined){
if(!(validate93(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate93.errors : vErrors.concat(validate93.errors);
errors = vErrors.length;
}
}
if(data.top !== undefined){
if(!(validate98(data.top, {instancePath:instancePath+"/top",parentData:data,parentDataProperty:"top",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.bottom !== undefined){
if(!(validate98(data.bottom, {instancePath:instancePath+"/bottom",parentData:data,parentDataProperty:"bottom",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.overhang !== undefined){
if(!(validate119(data.overhang, {instancePath:instancePath+"/overhang",parentData:data,parentDataProperty:"overhang",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate119.errors : vErrors.concat(validate119.errors);
errors = vErrors.length;
}
}
if(data.spacing !== undefined){
if(!(validate121(data.spacing, {instancePath:instancePath+"/spacing",parentData:data,parentDataProperty:"spacing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate121.errors : vErrors.concat(validate121.errors);
errors = vErrors.length;
}
}
if(data.count !== undefined){
if(!(validate123(data.count, {instancePath:instancePath+"/count",parentData:data,parentDataProperty:"count",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate123.errors : vErrors.concat(validate123.errors);
errors = vErrors.length;
}
}
if(data.layout !== undefined){
if(!(validate125(data.layout, {instancePath:instancePath+"/layout",parentData:data,parentDataProperty:"layout",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate125.errors : vErrors.concat(validate125.errors);
errors = vErrors.length;
}
}
if(data.splice !== undefined){
if(!(validate127(data.splice, {instancePath:instancePath+"/splice",parentData:data,parentDataProperty:"splice",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.ends !== undefined){
if(!(validate95(data.ends, {instancePath:instancePath+"/ends",parentData:data,parentDataProperty:"ends",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data["hung-on"] !== undefined){
if(!(validate102(data["hung-on"], {instancePath:instancePath+"/hung-on",parentData:data,parentDataProperty:"hung-on",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate169.errors = vErrors;
return errors === 0;
}
validate169.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema54 = {"description":"A lying timber that carries others.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A lying timber that carries others.","const":"beam","examples":["beam"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"walls":{"$ref":"#/$defs/walls"},"bents":{"$ref":"#/$defs/bents"},"between":{"$ref":"#/$defs/between"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"top":{"$ref":"#/$defs/height","description":"The height of its top face: a level or a length above the datum.","examples":["eave","7 ft 10 in"]},"bottom":{"$ref":"#/$defs/height","description":"The height of its bottom face: a level or a length above the datum.","examples":["7 ft"]},"overhang":{"$ref":"#/$defs/memberOverhang"},"spacing":{"$ref":"#/$defs/spacing"},"count":{"$ref":"#/$defs/count"},"layout":{"$ref":"#/$defs/layout"},"splice":{"$ref":"#/$defs/splice"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]};

function validate188(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate188.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.section === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "section"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema54.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("beam" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "beam"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.section !== undefined){
if(!(validate62(data.section, {instancePath:instancePath+"/section",parentData:data,parentDataProperty:"section",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
errors = vErrors.length;
}
}
if(data.turned !== undefined){
if(!(validate64(data.turned, {instancePath:instancePath+"/turned",parentData:data,parentDataProperty:"turned",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
errors = vErrors.length;
}
}
if(data.timber !== undefined){
if(!(validate66(data.timber, {instancePath:instancePath+"/timber",parentData:data,parentDataProperty:"timber",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate66.errors : vErrors.concat(validate66.errors);
errors = vErrors.length;
}
}
if(data.measured !== undefined){
if(!(validate68(data.measured, {instancePath:instancePath+"/measured",parentData:data,parentDataProperty:"measured",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
errors = vErrors.length;
}
}
if(data.walls !== undefined){
if(!(validate109(data.walls, {instancePath:instancePath+"/walls",parentData:data,parentDataProperty:"walls",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate109.errors : vErrors.concat(validate109.errors);
errors = vErrors.length;
}
}
if(data.bents !== undefined){
if(!(validate111(data.bents, {instancePath:instancePath+"/bents",parentData:data,parentDataProperty:"bents",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate111.errors : vErrors.concat(validate111.errors);
errors = vErrors.length;
}
}
if(data.between !== undefined){
if(!(validate113(data.between, {instancePath:instancePath+"/between",parentData:data,parentDataProperty:"between",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate113.errors : vErrors.concat(validate113.errors);
errors = vErrors.length;
}
}
if(data.from !== undefined){
if(!(validate91(data.from, {instancePath:instancePath+"/from",parentData:data,parentDataProperty:"from",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data.to !== undefined){
if(!(validate93(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate93.errors : vErrors.concat(validate93.errors);
errors = vErrors.length;
}
}
if(data.top !== undefined){
if(!(validate98(data.top, {instancePath:instancePath+"/top",parentData:data,parentDataProperty:"top",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.bottom !== undefined){
if(!(validate98(data.bottom, {instancePath:instancePath+"/bottom",parentData:data,parentDataProperty:"bottom",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.overhang !== undefined){
if(!(validate119(data.overhang, {instancePath:instancePath+"/overhang",parentData:data,parentDataProperty:"overhang",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate119.errors : vErrors.concat(validate119.errors);
errors = vErrors.length;
}
}
if(data.spacing !== undefined){
if(!(validate121(data.spacing, {instancePath:instancePath+"/spacing",parentData:data,parentDataProperty:"spacing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate121.errors : vErrors.concat(validate121.errors);
errors = vErrors.length;
}
}
if(data.count !== undefined){
if(!(validate123(data.count, {instancePath:instancePath+"/count",parentData:data,parentDataProperty:"count",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate123.errors : vErrors.concat(validate123.errors);
errors = vErrors.length;
}
}
if(data.layout !== undefined){
if(!(validate125(data.layout, {instancePath:instancePath+"/layout",parentData:data,parentDataProperty:"layout",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate125.errors : vErrors.concat(validate125.errors);
errors = vErrors.length;
}
}
if(data.splice !== undefined){
if(!(validate127(data.splice, {instancePath:instancePath+"/splice",parentData:data,parentDataProperty:"splice",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.ends !== undefined){
if(!(validate95(data.ends, {instancePath:instancePath+"/ends",parentData:data,parentDataProperty:"ends",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data["hung-on"] !== undefined){
if(!(validate102(data["hung-on"], {instancePath:instancePath+"/hung-on",parentData:data,parentDataProperty:"hung-on",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate188.errors = vErrors;
return errors === 0;
}
validate188.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema55 = {"description":"One of a row of timbers that carry a floor.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"One of a row of timbers that carry a floor.","const":"joist","examples":["joist"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"walls":{"$ref":"#/$defs/walls"},"bents":{"$ref":"#/$defs/bents"},"between":{"$ref":"#/$defs/between"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"top":{"$ref":"#/$defs/height","description":"The height of its top face: a level or a length above the datum.","examples":["eave","7 ft 10 in"]},"bottom":{"$ref":"#/$defs/height","description":"The height of its bottom face: a level or a length above the datum.","examples":["7 ft"]},"overhang":{"$ref":"#/$defs/memberOverhang"},"spacing":{"$ref":"#/$defs/spacing"},"count":{"$ref":"#/$defs/count"},"layout":{"$ref":"#/$defs/layout"},"splice":{"$ref":"#/$defs/splice"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]};

function validate207(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate207.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.section === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "section"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema55.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("joist" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "joist"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.section !== undefined){
if(!(validate62(data.section, {instancePath:instancePath+"/section",parentData:data,parentDataProperty:"section",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
errors = vErrors.length;
}
}
if(data.turned !== undefined){
if(!(validate64(data.turned, {instancePath:instancePath+"/turned",parentData:data,parentDataProperty:"turned",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
errors = vErrors.length;
}
}
if(data.timber !== undefined){
if(!(validate66(data.timber, {instancePath:instancePath+"/timber",parentData:data,parentDataProperty:"timber",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate66.errors : vErrors.concat(validate66.errors);
errors = vErrors.length;
}
}
if(data.measured !== undefined){
if(!(validate68(data.measured, {instancePath:instancePath+"/measured",parentData:data,parentDataProperty:"measured",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
errors = vErrors.length;
}
}
if(data.walls !== undefined){
if(!(validate109(data.walls, {instancePath:instancePath+"/walls",parentData:data,parentDataProperty:"walls",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate109.errors : vErrors.concat(validate109.errors);
errors = vErrors.length;
}
}
if(data.bents !== undefined){
if(!(validate111(data.bents, {instancePath:instancePath+"/bents",parentData:data,parentDataProperty:"bents",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate111.errors : vErrors.concat(validate111.errors);
errors = vErrors.length;
}
}
if(data.between !== undefined){
if(!(validate113(data.between, {instancePath:instancePath+"/between",parentData:data,parentDataProperty:"between",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate113.errors : vErrors.concat(validate113.errors);
errors = vErrors.length;
}
}
if(data.from !== undefined){
if(!(validate91(data.from, {instancePath:instancePath+"/from",parentData:data,parentDataProperty:"from",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data.to !== undefined){
if(!(validate93(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate93.errors : vErrors.concat(validate93.errors);
errors = vErrors.length;
}
}
if(data.top !== undefined){
if(!(validate98(data.top, {instancePath:instancePath+"/top",parentData:data,parentDataProperty:"top",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.bottom !== undefined){
if(!(validate98(data.bottom, {instancePath:instancePath+"/bottom",parentData:data,parentDataProperty:"bottom",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.overhang !== undefined){
if(!(validate119(data.overhang, {instancePath:instancePath+"/overhang",parentData:data,parentDataProperty:"overhang",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate119.errors : vErrors.concat(validate119.errors);
errors = vErrors.length;
}
}
if(data.spacing !== undefined){
if(!(validate121(data.spacing, {instancePath:instancePath+"/spacing",parentData:data,parentDataProperty:"spacing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate121.errors : vErrors.concat(validate121.errors);
errors = vErrors.length;
}
}
if(data.count !== undefined){
if(!(validate123(data.count, {instancePath:instancePath+"/count",parentData:data,parentDataProperty:"count",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate123.errors : vErrors.concat(validate123.errors);
errors = vErrors.length;
}
}
if(data.layout !== undefined){
if(!(validate125(data.layout, {instancePath:instancePath+"/layout",parentData:data,parentDataProperty:"layout",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate125.errors : vErrors.concat(validate125.errors);
errors = vErrors.length;
}
}
if(data.splice !== undefined){
if(!(validate127(data.splice, {instancePath:instancePath+"/splice",parentData:data,parentDataProperty:"splice",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.ends !== undefined){
if(!(validate95(data.ends, {instancePath:instancePath+"/ends",parentData:data,parentDataProperty:"ends",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data["hung-on"] !== undefined){
if(!(validate102(data["hung-on"], {instancePath:instancePath+"/hung-on",parentData:data,parentDataProperty:"hung-on",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate207.errors = vErrors;
return errors === 0;
}
validate207.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema56 = {"description":"One of a row of timbers along the roof that carry the deck or the covering.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"One of a row of timbers along the roof that carry the deck or the covering.","const":"purlin","examples":["purlin"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"walls":{"$ref":"#/$defs/walls"},"bents":{"$ref":"#/$defs/bents"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"top":{"$ref":"#/$defs/height","description":"The height of its top face: a level or a length above the datum.","examples":["eave","7 ft 10 in"]},"bottom":{"$ref":"#/$defs/height","description":"The height of its bottom face: a level or a length above the datum.","examples":["7 ft"]},"overhang":{"$ref":"#/$defs/memberOverhang"},"spacing":{"$ref":"#/$defs/spacing"},"count":{"$ref":"#/$defs/count"},"layout":{"$ref":"#/$defs/layout"},"splice":{"$ref":"#/$defs/splice"},"ends":{"$ref":"#/$defs/ends"},"fasten":{"$ref":"#/$defs/fasteners","description":"What holds each purlin down on each rafter or other timber that carries it.","examples":["{kind: screws, count: 2, diameter: 5/16 in, length: 10 in}"]},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]};
const schema57 = {"description":"Screws or nails.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Screws or nails.","type":"string","enum":["screws","nails"],"examples":["screws"]},"count":{"description":"For each rafter or purlin, at each place.","type":"integer","minimum":1,"maximum":24,"examples":[2]},"diameter":{"description":"How thick they are.","type":["string","number"],"x-quantity":"length","examples":["5/16 in"]},"length":{"description":"How long they are.","type":["string","number"],"x-quantity":"length","examples":["10 in"]}},"required":["kind","count"],"examples":["{kind: screws, count: 2, diameter: 5/16 in, length: 8 in}"]};

function validate243(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate243.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.count === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "count"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((((key0 === "kind") || (key0 === "count")) || (key0 === "diameter")) || (key0 === "length"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
let data0 = data.kind;
if(typeof data0 !== "string"){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
if(!((data0 === "screws") || (data0 === "nails"))){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/enum",keyword:"enum",params:{allowedValues: schema57.properties.kind.enum}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.count !== undefined){
let data1 = data.count;
if(!(((typeof data1 == "number") && (!(data1 % 1) && !isNaN(data1))) && (isFinite(data1)))){
const err5 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
if((typeof data1 == "number") && (isFinite(data1))){
if(data1 > 24 || isNaN(data1)){
const err6 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/maximum",keyword:"maximum",params:{comparison: "<=", limit: 24}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
if(data1 < 1 || isNaN(data1)){
const err7 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
}
if(data.diameter !== undefined){
let data2 = data.diameter;
if((typeof data2 !== "string") && (!((typeof data2 == "number") && (isFinite(data2))))){
const err8 = {instancePath:instancePath+"/diameter",schemaPath:"#/properties/diameter/type",keyword:"type",params:{type: schema57.properties.diameter.type}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.length !== undefined){
let data3 = data.length;
if((typeof data3 !== "string") && (!((typeof data3 == "number") && (isFinite(data3))))){
const err9 = {instancePath:instancePath+"/length",schemaPath:"#/properties/length/type",keyword:"type",params:{type: schema57.properties.length.type}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
}
else {
const err10 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
validate243.errors = vErrors;
return errors === 0;
}
validate243.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate226(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate226.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.section === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "section"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema56.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("purlin" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "purlin"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.section !== undefined){
if(!(validate62(data.section, {instancePath:instancePath+"/section",parentData:data,parentDataProperty:"section",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
errors = vErrors.length;
}
}
if(data.turned !== undefined){
if(!(validate64(data.turned, {instancePath:instancePath+"/turned",parentData:data,parentDataProperty:"turned",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
errors = vErrors.length;
}
}
if(data.timber !== undefined){
if(!(validate66(data.timber, {instancePath:instancePath+"/timber",parentData:data,parentDataProperty:"timber",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate66.errors : vErrors.concat(validate66.errors);
errors = vErrors.length;
}
}
if(data.measured !== undefined){
if(!(validate68(data.measured, {instancePath:instancePath+"/measured",parentData:data,parentDataProperty:"measured",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
errors = vErrors.length;
}
}
if(data.walls !== undefined){
if(!(validate109(data.walls, {instancePath:instancePath+"/walls",parentData:data,parentDataProperty:"walls",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate109.errors : vErrors.concat(validate109.errors);
errors = vErrors.length;
}
}
if(data.bents !== undefined){
if(!(validate111(data.bents, {instancePath:instancePath+"/bents",parentData:data,parentDataProperty:"bents",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate111.errors : vErrors.concat(validate111.errors);
errors = vErrors.length;
}
}
if(data.from !== undefined){
if(!(validate91(data.from, {instancePath:instancePath+"/from",parentData:data,parentDataProperty:"from",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data.to !== undefined){
if(!(validate93(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate93.errors : vErrors.concat(validate93.errors);
errors = vErrors.length;
}
}
if(data.top !== undefined){
if(!(validate98(data.top, {instancePath:instancePath+"/top",parentData:data,parentDataProperty:"top",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.bottom !== undefined){
if(!(validate98(data.bottom, {instancePath:instancePath+"/bottom",parentData:data,parentDataProperty:"bottom",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.overhang !== undefined){
if(!(validate119(data.overhang, {instancePath:instancePath+"/overhang",parentData:data,parentDataProperty:"overhang",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate119.errors : vErrors.concat(validate119.errors);
errors = vErrors.length;
}
}
if(data.spacing !== undefined){
if(!(validate121(data.spacing, {instancePath:instancePath+"/spacing",parentData:data,parentDataProperty:"spacing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate121.errors : vErrors.concat(validate121.errors);
errors = vErrors.length;
}
}
if(data.count !== undefined){
if(!(validate123(data.count, {instancePath:instancePath+"/count",parentData:data,parentDataProperty:"count",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate123.errors : vErrors.concat(validate123.errors);
errors = vErrors.length;
}
}
if(data.layout !== undefined){
if(!(validate125(data.layout, {instancePath:instancePath+"/layout",parentData:data,parentDataProperty:"layout",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate125.errors : vErrors.concat(validate125.errors);
errors = vErrors.length;
}
}
if(data.splice !== undefined){
if(!(validate127(data.splice, {instancePath:instancePath+"/splice",parentData:data,parentDataProperty:"splice",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate127.errors : vErrors.concat(validate127.errors);
errors = vErrors.length;
}
}
if(data.ends !== undefined){
if(!(validate95(data.ends, {instancePath:instancePath+"/ends",parentData:data,parentDataProperty:"ends",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data.fasten !== undefined){
if(!(validate243(data.fasten, {instancePath:instancePath+"/fasten",parentData:data,parentDataProperty:"fasten",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate243.errors : vErrors.concat(validate243.errors);
errors = vErrors.length;
}
}
if(data["hung-on"] !== undefined){
if(!(validate102(data["hung-on"], {instancePath:instancePath+"/hung-on",parentData:data,parentDataProperty:"hung-on",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate226.errors = vErrors;
return errors === 0;
}
validate226.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema58 = {"description":"The upright in the middle of a bent, from the tie to the ridge.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"The upright in the middle of a bent, from the tie to the ridge.","const":"king-post","examples":["king-post"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"bents":{"$ref":"#/$defs/bents"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]};

function validate246(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate246.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.section === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "section"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema58.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("king-post" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "king-post"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.section !== undefined){
if(!(validate62(data.section, {instancePath:instancePath+"/section",parentData:data,parentDataProperty:"section",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
errors = vErrors.length;
}
}
if(data.turned !== undefined){
if(!(validate64(data.turned, {instancePath:instancePath+"/turned",parentData:data,parentDataProperty:"turned",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
errors = vErrors.length;
}
}
if(data.timber !== undefined){
if(!(validate66(data.timber, {instancePath:instancePath+"/timber",parentData:data,parentDataProperty:"timber",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate66.errors : vErrors.concat(validate66.errors);
errors = vErrors.length;
}
}
if(data.measured !== undefined){
if(!(validate68(data.measured, {instancePath:instancePath+"/measured",parentData:data,parentDataProperty:"measured",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
errors = vErrors.length;
}
}
if(data.bents !== undefined){
if(!(validate111(data.bents, {instancePath:instancePath+"/bents",parentData:data,parentDataProperty:"bents",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate111.errors : vErrors.concat(validate111.errors);
errors = vErrors.length;
}
}
if(data.from !== undefined){
if(!(validate91(data.from, {instancePath:instancePath+"/from",parentData:data,parentDataProperty:"from",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data.to !== undefined){
if(!(validate93(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate93.errors : vErrors.concat(validate93.errors);
errors = vErrors.length;
}
}
if(data.ends !== undefined){
if(!(validate95(data.ends, {instancePath:instancePath+"/ends",parentData:data,parentDataProperty:"ends",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data["hung-on"] !== undefined){
if(!(validate102(data["hung-on"], {instancePath:instancePath+"/hung-on",parentData:data,parentDataProperty:"hung-on",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate246.errors = vErrors;
return errors === 0;
}
validate246.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema59 = {"description":"A timber that props one timber from another: upright at a place of the grid, or slanting between two timbers.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A timber that props one timber from another: upright at a place of the grid, or slanting between two timbers.","const":"strut","examples":["strut"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"at":{"$ref":"#/$defs/places"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"between":{"$ref":"#/$defs/between"},"leg":{"$ref":"#/$defs/leg"},"legs":{"$ref":"#/$defs/legs"},"curve":{"$ref":"#/$defs/curve"},"above":{"$ref":"#/$defs/above"},"face":{"$ref":"#/$defs/face"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]};
const schema60 = {"description":"Along each of the two timbers, from the inner corner of their housed faces to the far end of the brace's bearing.","type":["string","number"],"x-quantity":"length","examples":["36 in"]};

function validate265(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate265.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema60.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate265.errors = vErrors;
return errors === 0;
}
validate265.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema61 = {"description":"Unequal legs, each by the name of the timber it lies along.","type":"object","additionalProperties":{"description":"The leg along this timber.","type":["string","number"],"x-quantity":"length","examples":["54 in"]},"minProperties":2,"maxProperties":2,"x-ref":["member","kind"],"examples":["{post: 54 in, plate: 36 in}"]};

function validate267(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate267.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(Object.keys(data).length > 2){
const err0 = {instancePath,schemaPath:"#/maxProperties",keyword:"maxProperties",params:{limit: 2}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(Object.keys(data).length < 2){
const err1 = {instancePath,schemaPath:"#/minProperties",keyword:"minProperties",params:{limit: 2}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
let data0 = data[key0];
if((typeof data0 !== "string") && (!((typeof data0 == "number") && (isFinite(data0))))){
const err2 = {instancePath:instancePath+"/" + key0.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/additionalProperties/type",keyword:"type",params:{type: schema61.additionalProperties.type}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate267.errors = vErrors;
return errors === 0;
}
validate267.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema62 = {"description":"Hollows the long edge, the one away from the corner. What is left there is the depth less the rise.","type":"object","additionalProperties":false,"properties":{"radius":{"description":"The radius of the hollow edge.","type":["string","number"],"x-quantity":"length","examples":["100 in"]},"rise":{"description":"How deep the hollow is in its middle.","type":["string","number"],"x-quantity":"length","examples":["2 in"]}},"examples":["{radius: 100 in}"],"minProperties":1,"maxProperties":1};

function validate269(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate269.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(Object.keys(data).length > 1){
const err0 = {instancePath,schemaPath:"#/maxProperties",keyword:"maxProperties",params:{limit: 1}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(Object.keys(data).length < 1){
const err1 = {instancePath,schemaPath:"#/minProperties",keyword:"minProperties",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((key0 === "radius") || (key0 === "rise"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.radius !== undefined){
let data0 = data.radius;
if((typeof data0 !== "string") && (!((typeof data0 == "number") && (isFinite(data0))))){
const err3 = {instancePath:instancePath+"/radius",schemaPath:"#/properties/radius/type",keyword:"type",params:{type: schema62.properties.radius.type}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.rise !== undefined){
let data1 = data.rise;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err4 = {instancePath:instancePath+"/rise",schemaPath:"#/properties/rise/type",keyword:"type",params:{type: schema62.properties.rise.type}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate269.errors = vErrors;
return errors === 0;
}
validate269.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema63 = {"description":"It sits above its upper timber instead of below.","type":"boolean","examples":[true],"default":false,"x-default-source":"common practice"};

function validate271(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate271.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(typeof data !== "boolean"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "boolean"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate271.errors = vErrors;
return errors === 0;
}
validate271.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema64 = {"description":"Across the thickness: flush with the reference faces of its timbers, or in the middle of them.","type":"string","enum":["reference","center"],"examples":["reference"],"default":"reference","x-default-source":"common practice"};

function validate273(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate273.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(typeof data !== "string"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(!((data === "reference") || (data === "center"))){
const err1 = {instancePath,schemaPath:"#/enum",keyword:"enum",params:{allowedValues: schema64.enum}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate273.errors = vErrors;
return errors === 0;
}
validate273.evaluated = {"dynamicProps":false,"dynamicItems":false};


function validate256(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate256.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.section === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "section"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema59.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("strut" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "strut"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.section !== undefined){
if(!(validate62(data.section, {instancePath:instancePath+"/section",parentData:data,parentDataProperty:"section",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
errors = vErrors.length;
}
}
if(data.turned !== undefined){
if(!(validate64(data.turned, {instancePath:instancePath+"/turned",parentData:data,parentDataProperty:"turned",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
errors = vErrors.length;
}
}
if(data.timber !== undefined){
if(!(validate66(data.timber, {instancePath:instancePath+"/timber",parentData:data,parentDataProperty:"timber",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate66.errors : vErrors.concat(validate66.errors);
errors = vErrors.length;
}
}
if(data.measured !== undefined){
if(!(validate68(data.measured, {instancePath:instancePath+"/measured",parentData:data,parentDataProperty:"measured",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
errors = vErrors.length;
}
}
if(data.at !== undefined){
if(!(validate87(data.at, {instancePath:instancePath+"/at",parentData:data,parentDataProperty:"at",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate87.errors : vErrors.concat(validate87.errors);
errors = vErrors.length;
}
}
if(data.from !== undefined){
if(!(validate91(data.from, {instancePath:instancePath+"/from",parentData:data,parentDataProperty:"from",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data.to !== undefined){
if(!(validate93(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate93.errors : vErrors.concat(validate93.errors);
errors = vErrors.length;
}
}
if(data.between !== undefined){
if(!(validate113(data.between, {instancePath:instancePath+"/between",parentData:data,parentDataProperty:"between",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate113.errors : vErrors.concat(validate113.errors);
errors = vErrors.length;
}
}
if(data.leg !== undefined){
if(!(validate265(data.leg, {instancePath:instancePath+"/leg",parentData:data,parentDataProperty:"leg",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate265.errors : vErrors.concat(validate265.errors);
errors = vErrors.length;
}
}
if(data.legs !== undefined){
if(!(validate267(data.legs, {instancePath:instancePath+"/legs",parentData:data,parentDataProperty:"legs",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate267.errors : vErrors.concat(validate267.errors);
errors = vErrors.length;
}
}
if(data.curve !== undefined){
if(!(validate269(data.curve, {instancePath:instancePath+"/curve",parentData:data,parentDataProperty:"curve",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate269.errors : vErrors.concat(validate269.errors);
errors = vErrors.length;
}
}
if(data.above !== undefined){
if(!(validate271(data.above, {instancePath:instancePath+"/above",parentData:data,parentDataProperty:"above",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate271.errors : vErrors.concat(validate271.errors);
errors = vErrors.length;
}
}
if(data.face !== undefined){
if(!(validate273(data.face, {instancePath:instancePath+"/face",parentData:data,parentDataProperty:"face",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate273.errors : vErrors.concat(validate273.errors);
errors = vErrors.length;
}
}
if(data.ends !== undefined){
if(!(validate95(data.ends, {instancePath:instancePath+"/ends",parentData:data,parentDataProperty:"ends",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data["hung-on"] !== undefined){
if(!(validate102(data["hung-on"], {instancePath:instancePath+"/hung-on",parentData:data,parentDataProperty:"hung-on",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate256.errors = vErrors;
return errors === 0;
}
validate256.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema65 = {"description":"A slanting timber in the corner of two others. One entry makes a brace at every corner where it fits.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A slanting timber in the corner of two others. One entry makes a brace at every corner where it fits.","const":"brace","examples":["brace"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"between":{"$ref":"#/$defs/between"},"leg":{"$ref":"#/$defs/leg"},"legs":{"$ref":"#/$defs/legs"},"curve":{"$ref":"#/$defs/curve"},"above":{"$ref":"#/$defs/above"},"face":{"$ref":"#/$defs/face"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section","between"]};

function validate277(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate277.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.section === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "section"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.between === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "between"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema65.properties, key0))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("brace" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "brace"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.section !== undefined){
if(!(validate62(data.section, {instancePath:instancePath+"/section",parentData:data,parentDataProperty:"section",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
errors = vErrors.length;
}
}
if(data.turned !== undefined){
if(!(validate64(data.turned, {instancePath:instancePath+"/turned",parentData:data,parentDataProperty:"turned",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
errors = vErrors.length;
}
}
if(data.timber !== undefined){
if(!(validate66(data.timber, {instancePath:instancePath+"/timber",parentData:data,parentDataProperty:"timber",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate66.errors : vErrors.concat(validate66.errors);
errors = vErrors.length;
}
}
if(data.measured !== undefined){
if(!(validate68(data.measured, {instancePath:instancePath+"/measured",parentData:data,parentDataProperty:"measured",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
errors = vErrors.length;
}
}
if(data.between !== undefined){
if(!(validate113(data.between, {instancePath:instancePath+"/between",parentData:data,parentDataProperty:"between",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate113.errors : vErrors.concat(validate113.errors);
errors = vErrors.length;
}
}
if(data.leg !== undefined){
if(!(validate265(data.leg, {instancePath:instancePath+"/leg",parentData:data,parentDataProperty:"leg",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate265.errors : vErrors.concat(validate265.errors);
errors = vErrors.length;
}
}
if(data.legs !== undefined){
if(!(validate267(data.legs, {instancePath:instancePath+"/legs",parentData:data,parentDataProperty:"legs",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate267.errors : vErrors.concat(validate267.errors);
errors = vErrors.length;
}
}
if(data.curve !== undefined){
if(!(validate269(data.curve, {instancePath:instancePath+"/curve",parentData:data,parentDataProperty:"curve",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate269.errors : vErrors.concat(validate269.errors);
errors = vErrors.length;
}
}
if(data.above !== undefined){
if(!(validate271(data.above, {instancePath:instancePath+"/above",parentData:data,parentDataProperty:"above",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate271.errors : vErrors.concat(validate271.errors);
errors = vErrors.length;
}
}
if(data.face !== undefined){
if(!(validate273(data.face, {instancePath:instancePath+"/face",parentData:data,parentDataProperty:"face",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate273.errors : vErrors.concat(validate273.errors);
errors = vErrors.length;
}
}
if(data.ends !== undefined){
if(!(validate95(data.ends, {instancePath:instancePath+"/ends",parentData:data,parentDataProperty:"ends",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data["hung-on"] !== undefined){
if(!(validate102(data["hung-on"], {instancePath:instancePath+"/hung-on",parentData:data,parentDataProperty:"hung-on",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate277.errors = vErrors;
return errors === 0;
}
validate277.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema66 = {"description":"The lying timber at the top, midway between the plates, that the rafters head into.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"The lying timber at the top, midway between the plates, that the rafters head into.","const":"ridge","examples":["ridge"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"overhang":{"$ref":"#/$defs/memberOverhang"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]};

function validate290(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate290.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.section === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "section"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema66.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("ridge" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "ridge"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.section !== undefined){
if(!(validate62(data.section, {instancePath:instancePath+"/section",parentData:data,parentDataProperty:"section",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
errors = vErrors.length;
}
}
if(data.turned !== undefined){
if(!(validate64(data.turned, {instancePath:instancePath+"/turned",parentData:data,parentDataProperty:"turned",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
errors = vErrors.length;
}
}
if(data.timber !== undefined){
if(!(validate66(data.timber, {instancePath:instancePath+"/timber",parentData:data,parentDataProperty:"timber",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate66.errors : vErrors.concat(validate66.errors);
errors = vErrors.length;
}
}
if(data.measured !== undefined){
if(!(validate68(data.measured, {instancePath:instancePath+"/measured",parentData:data,parentDataProperty:"measured",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
errors = vErrors.length;
}
}
if(data.from !== undefined){
if(!(validate91(data.from, {instancePath:instancePath+"/from",parentData:data,parentDataProperty:"from",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data.to !== undefined){
if(!(validate93(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate93.errors : vErrors.concat(validate93.errors);
errors = vErrors.length;
}
}
if(data.overhang !== undefined){
if(!(validate119(data.overhang, {instancePath:instancePath+"/overhang",parentData:data,parentDataProperty:"overhang",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate119.errors : vErrors.concat(validate119.errors);
errors = vErrors.length;
}
}
if(data.ends !== undefined){
if(!(validate95(data.ends, {instancePath:instancePath+"/ends",parentData:data,parentDataProperty:"ends",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data["hung-on"] !== undefined){
if(!(validate102(data["hung-on"], {instancePath:instancePath+"/hung-on",parentData:data,parentDataProperty:"hung-on",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate290.errors = vErrors;
return errors === 0;
}
validate290.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema67 = {"description":"A rafter that is a timber of its own, such as a principal rafter. Common rafters stand under `roof`.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A rafter that is a timber of its own, such as a principal rafter. Common rafters stand under `roof`.","const":"rafter","examples":["rafter"]},"section":{"$ref":"#/$defs/section"},"turned":{"$ref":"#/$defs/turned"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"bents":{"$ref":"#/$defs/bents"},"from":{"$ref":"#/$defs/from"},"to":{"$ref":"#/$defs/to"},"overhang":{"$ref":"#/$defs/memberOverhang"},"ends":{"$ref":"#/$defs/ends"},"hung-on":{"$ref":"#/$defs/hungOn"}},"required":["kind","section"]};

function validate300(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate300.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.section === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "section"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema67.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("rafter" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "rafter"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.section !== undefined){
if(!(validate62(data.section, {instancePath:instancePath+"/section",parentData:data,parentDataProperty:"section",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
errors = vErrors.length;
}
}
if(data.turned !== undefined){
if(!(validate64(data.turned, {instancePath:instancePath+"/turned",parentData:data,parentDataProperty:"turned",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate64.errors : vErrors.concat(validate64.errors);
errors = vErrors.length;
}
}
if(data.timber !== undefined){
if(!(validate66(data.timber, {instancePath:instancePath+"/timber",parentData:data,parentDataProperty:"timber",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate66.errors : vErrors.concat(validate66.errors);
errors = vErrors.length;
}
}
if(data.measured !== undefined){
if(!(validate68(data.measured, {instancePath:instancePath+"/measured",parentData:data,parentDataProperty:"measured",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
errors = vErrors.length;
}
}
if(data.bents !== undefined){
if(!(validate111(data.bents, {instancePath:instancePath+"/bents",parentData:data,parentDataProperty:"bents",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate111.errors : vErrors.concat(validate111.errors);
errors = vErrors.length;
}
}
if(data.from !== undefined){
if(!(validate91(data.from, {instancePath:instancePath+"/from",parentData:data,parentDataProperty:"from",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate91.errors : vErrors.concat(validate91.errors);
errors = vErrors.length;
}
}
if(data.to !== undefined){
if(!(validate93(data.to, {instancePath:instancePath+"/to",parentData:data,parentDataProperty:"to",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate93.errors : vErrors.concat(validate93.errors);
errors = vErrors.length;
}
}
if(data.overhang !== undefined){
if(!(validate119(data.overhang, {instancePath:instancePath+"/overhang",parentData:data,parentDataProperty:"overhang",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate119.errors : vErrors.concat(validate119.errors);
errors = vErrors.length;
}
}
if(data.ends !== undefined){
if(!(validate95(data.ends, {instancePath:instancePath+"/ends",parentData:data,parentDataProperty:"ends",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate95.errors : vErrors.concat(validate95.errors);
errors = vErrors.length;
}
}
if(data["hung-on"] !== undefined){
if(!(validate102(data["hung-on"], {instancePath:instancePath+"/hung-on",parentData:data,parentDataProperty:"hung-on",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate102.errors : vErrors.concat(validate102.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate300.errors = vErrors;
return errors === 0;
}
validate300.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate60(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate60.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
const tag0 = data.kind;
if(typeof tag0 == "string"){
if(tag0 === "post"){
if(!(validate61(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate61.errors : vErrors.concat(validate61.errors);
errors = vErrors.length;
}
var props0 = true;
}
else if(tag0 === "plate"){
if(!(validate104(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate104.errors : vErrors.concat(validate104.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "sill"){
if(!(validate131(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate131.errors : vErrors.concat(validate131.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "girt"){
if(!(validate150(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate150.errors : vErrors.concat(validate150.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "tie"){
if(!(validate169(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate169.errors : vErrors.concat(validate169.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "beam"){
if(!(validate188(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate188.errors : vErrors.concat(validate188.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "joist"){
if(!(validate207(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate207.errors : vErrors.concat(validate207.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "purlin"){
if(!(validate226(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate226.errors : vErrors.concat(validate226.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "king-post"){
if(!(validate246(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate246.errors : vErrors.concat(validate246.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "strut"){
if(!(validate256(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate256.errors : vErrors.concat(validate256.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "brace"){
if(!(validate277(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate277.errors : vErrors.concat(validate277.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "ridge"){
if(!(validate290(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate290.errors : vErrors.concat(validate290.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "rafter"){
if(!(validate300(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate300.errors : vErrors.concat(validate300.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else {
const err1 = {instancePath,schemaPath:"#/discriminator",keyword:"discriminator",params:{error: "mapping", tag: "kind", tagValue: tag0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
else {
const err2 = {instancePath,schemaPath:"#/discriminator",keyword:"discriminator",params:{error: "tag", tag: "kind", tagValue: tag0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate60.errors = vErrors;
evaluated0.props = props0;
return errors === 0;
}
validate60.evaluated = {"dynamicProps":true,"dynamicItems":false};

const schema68 = {"description":"A joint, at every place where its timbers meet.","type":"object","required":["kind"],"discriminator":{"propertyName":"kind"},"oneOf":[{"$ref":"#/$defs/joint-mortise-and-tenon"},{"$ref":"#/$defs/joint-wedged-half-dovetail"},{"$ref":"#/$defs/joint-brace-tenon"},{"$ref":"#/$defs/joint-birds-mouth"},{"$ref":"#/$defs/joint-step-lap"},{"$ref":"#/$defs/joint-housed"},{"$ref":"#/$defs/joint-housed-dovetail"},{"$ref":"#/$defs/joint-pocket"},{"$ref":"#/$defs/joint-corner-half-lap"},{"$ref":"#/$defs/joint-half-lap-scarf"},{"$ref":"#/$defs/joint-bladed-scarf"},{"$ref":"#/$defs/joint-stop-splayed-scarf"},{"$ref":"#/$defs/joint-corner-bridle"},{"$ref":"#/$defs/joint-dovetail-lap"},{"$ref":"#/$defs/joint-stub-tenon"},{"$ref":"#/$defs/joint-screwed-brace"},{"$ref":"#/$defs/joint-rafter-heel"},{"$ref":"#/$defs/joint-rafter-pair"}]};
const schema69 = {"description":"A tenon in a mortise, held by pegs.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A tenon in a mortise, held by pegs.","const":"mortise-and-tenon","examples":["mortise-and-tenon"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"housing":{"$ref":"#/$defs/housing"},"tenon":{"$ref":"#/$defs/tenon"},"pegs":{"$ref":"#/$defs/twoPegs"},"tail":{"$ref":"#/$defs/tail"}},"required":["kind","of","into"]};
const schema70 = {"description":"One timber or a list: the name of an entry (post), a kind, or a single stick (post@A1).","type":["string","array"],"items":{"description":"An entry, a kind or a single stick.","type":"string","x-ref":["member","stick","kind"],"examples":["post","post@A1"]},"minItems":1,"x-ref":["member","stick","kind"],"examples":["post","[knee, tie-knee]"]};

function validate327(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate327.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema70.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(Array.isArray(data)){
if(data.length < 1){
const err1 = {instancePath,schemaPath:"#/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
if(typeof data[i0] !== "string"){
const err2 = {instancePath:instancePath+"/" + i0,schemaPath:"#/items/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
}
validate327.errors = vErrors;
return errors === 0;
}
validate327.evaluated = {"items":true,"dynamicProps":false,"dynamicItems":false};

const schema71 = {"description":"square: laid out from the reference faces, without seeing the other timber. scribe: left long and marked from the other timber in its place.","type":"string","enum":["square","scribe"],"examples":["scribe"],"default":"square","x-default-source":"common practice"};

function validate330(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate330.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(typeof data !== "string"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(!((data === "square") || (data === "scribe"))){
const err1 = {instancePath,schemaPath:"#/enum",keyword:"enum",params:{allowedValues: schema71.enum}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate330.errors = vErrors;
return errors === 0;
}
validate330.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema72 = {"description":"How deep the whole end is let into the other timber.","type":["string","number"],"x-quantity":"length","examples":["1/2 in","3/4 in"]};

function validate332(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate332.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema72.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate332.errors = vErrors;
return errors === 0;
}
validate332.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema73 = {"description":"The tenon. It lies along the grain of the timber it enters.","type":"object","additionalProperties":false,"properties":{"thickness":{"description":"Between its cheeks.","type":["string","number"],"x-quantity":"length","examples":["2 in","1 1/2 in"]},"length":{"description":"From the shoulder to its end.","type":["string","number"],"x-quantity":"length","examples":["6 1/2 in"]},"width":{"description":"Across the grain of the mortised timber. Without it: full width, less 1 in at a timber's free end.","type":["string","number"],"x-quantity":"length","examples":["7 in"]},"set-in":{"description":"From the reference face of the mortised timber to the near cheek. Without it: 2 in, braces 1 1/2 in.","type":["string","number"],"x-quantity":"length","examples":["2 in"]},"through":{"description":"It goes right through and ends flush, or past it by `tail`.","type":"boolean","examples":[true],"default":false,"x-default-source":"common practice"}},"examples":["{thickness: 2 in, length: 6 1/2 in}"]};

function validate334(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate334.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((((key0 === "thickness") || (key0 === "length")) || (key0 === "width")) || (key0 === "set-in")) || (key0 === "through"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.thickness !== undefined){
let data0 = data.thickness;
if((typeof data0 !== "string") && (!((typeof data0 == "number") && (isFinite(data0))))){
const err1 = {instancePath:instancePath+"/thickness",schemaPath:"#/properties/thickness/type",keyword:"type",params:{type: schema73.properties.thickness.type}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.length !== undefined){
let data1 = data.length;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err2 = {instancePath:instancePath+"/length",schemaPath:"#/properties/length/type",keyword:"type",params:{type: schema73.properties.length.type}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.width !== undefined){
let data2 = data.width;
if((typeof data2 !== "string") && (!((typeof data2 == "number") && (isFinite(data2))))){
const err3 = {instancePath:instancePath+"/width",schemaPath:"#/properties/width/type",keyword:"type",params:{type: schema73.properties.width.type}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data["set-in"] !== undefined){
let data3 = data["set-in"];
if((typeof data3 !== "string") && (!((typeof data3 == "number") && (isFinite(data3))))){
const err4 = {instancePath:instancePath+"/set-in",schemaPath:"#/properties/set-in/type",keyword:"type",params:{type: schema73.properties["set-in"].type}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.through !== undefined){
if(typeof data.through !== "boolean"){
const err5 = {instancePath:instancePath+"/through",schemaPath:"#/properties/through/type",keyword:"type",params:{type: "boolean"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate334.errors = vErrors;
return errors === 0;
}
validate334.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema74 = {"description":"The pegs that hold the tenon.","type":"object","additionalProperties":false,"properties":{"count":{"description":"How many pegs each joint has; 0 for a joint without pegs.","type":"integer","minimum":0,"maximum":24,"examples":[2],"default":2,"x-default-source":"common practice"},"diameter":{"description":"How thick the pegs are.","type":["string","number"],"x-quantity":"length","examples":["3/4 in","1 in"]},"draw":{"description":"How far the hole in the tenon is set toward the shoulder, so that the peg pulls the joint tight.","type":["string","number"],"x-quantity":"length","examples":["1/8 in","3/32 in"]}},"examples":["{count: 2, diameter: 3/4 in}"]};

function validate336(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate336.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((key0 === "count") || (key0 === "diameter")) || (key0 === "draw"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.count !== undefined){
let data0 = data.count;
if(!(((typeof data0 == "number") && (!(data0 % 1) && !isNaN(data0))) && (isFinite(data0)))){
const err1 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if((typeof data0 == "number") && (isFinite(data0))){
if(data0 > 24 || isNaN(data0)){
const err2 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/maximum",keyword:"maximum",params:{comparison: "<=", limit: 24}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(data0 < 0 || isNaN(data0)){
const err3 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
if(data.diameter !== undefined){
let data1 = data.diameter;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err4 = {instancePath:instancePath+"/diameter",schemaPath:"#/properties/diameter/type",keyword:"type",params:{type: schema74.properties.diameter.type}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.draw !== undefined){
let data2 = data.draw;
if((typeof data2 !== "string") && (!((typeof data2 == "number") && (isFinite(data2))))){
const err5 = {instancePath:instancePath+"/draw",schemaPath:"#/properties/draw/type",keyword:"type",params:{type: schema74.properties.draw.type}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate336.errors = vErrors;
return errors === 0;
}
validate336.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema75 = {"description":"How far a through tenon stands out past the far face.","type":["string","number"],"x-quantity":"length","examples":["4 in"]};

function validate338(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate338.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema75.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate338.errors = vErrors;
return errors === 0;
}
validate338.evaluated = {"dynamicProps":false,"dynamicItems":false};


function validate326(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate326.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!((((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "rule")) || (key0 === "housing")) || (key0 === "tenon")) || (key0 === "pegs")) || (key0 === "tail"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("mortise-and-tenon" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "mortise-and-tenon"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
if(data.housing !== undefined){
if(!(validate332(data.housing, {instancePath:instancePath+"/housing",parentData:data,parentDataProperty:"housing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate332.errors : vErrors.concat(validate332.errors);
errors = vErrors.length;
}
}
if(data.tenon !== undefined){
if(!(validate334(data.tenon, {instancePath:instancePath+"/tenon",parentData:data,parentDataProperty:"tenon",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate334.errors : vErrors.concat(validate334.errors);
errors = vErrors.length;
}
}
if(data.pegs !== undefined){
if(!(validate336(data.pegs, {instancePath:instancePath+"/pegs",parentData:data,parentDataProperty:"pegs",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate336.errors : vErrors.concat(validate336.errors);
errors = vErrors.length;
}
}
if(data.tail !== undefined){
if(!(validate338(data.tail, {instancePath:instancePath+"/tail",parentData:data,parentDataProperty:"tail",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate338.errors : vErrors.concat(validate338.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate326.errors = vErrors;
return errors === 0;
}
validate326.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema76 = {"description":"A through tenon, level on top and cut up below, that drops into its mortise and is locked by a wedge above.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A through tenon, level on top and cut up below, that drops into its mortise and is locked by a wedge above.","const":"wedged-half-dovetail","examples":["wedged-half-dovetail"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"housing":{"$ref":"#/$defs/housing"},"tenon":{"$ref":"#/$defs/tenon"},"drop":{"description":"How far the lower edge is cut up at the shoulder, and how far the timber drops as it goes in.","type":["string","number"],"x-quantity":"length","examples":["1 1/4 in"]},"wedge":{"$ref":"#/$defs/dropWedge"},"pegs":{"$ref":"#/$defs/twoPegs"},"tail":{"$ref":"#/$defs/tail"}},"required":["kind","of","into"]};
const schema77 = {"description":"The wedge above the tenon that locks the joint.","type":"object","additionalProperties":false,"properties":{"species":{"$ref":"#/$defs/species"},"slope":{"description":"Its slope, which is that of the mortise's roof. Without it: 1 in 10.","type":["string","number"],"x-quantity":"pitch","examples":["1:10","1:12"]},"length":{"description":"Its length from the thin to the thick end. Without it: through the mortise, and as much more as it will be driven on while the timber dries, at least 1 in.","type":["string","number"],"x-quantity":"length","examples":["11 in","280 mm"]}},"examples":["{species: white-oak}","{species: white-oak, slope: 1:10, length: 11 in}"]};

function validate346(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate346.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((key0 === "species") || (key0 === "slope")) || (key0 === "length"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.species !== undefined){
if(!(validate53(data.species, {instancePath:instancePath+"/species",parentData:data,parentDataProperty:"species",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
if(data.slope !== undefined){
let data1 = data.slope;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err1 = {instancePath:instancePath+"/slope",schemaPath:"#/properties/slope/type",keyword:"type",params:{type: schema77.properties.slope.type}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.length !== undefined){
let data2 = data.length;
if((typeof data2 !== "string") && (!((typeof data2 == "number") && (isFinite(data2))))){
const err2 = {instancePath:instancePath+"/length",schemaPath:"#/properties/length/type",keyword:"type",params:{type: schema77.properties.length.type}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate346.errors = vErrors;
return errors === 0;
}
validate346.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate340(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate340.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema76.properties, key0))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("wedged-half-dovetail" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "wedged-half-dovetail"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
if(data.housing !== undefined){
if(!(validate332(data.housing, {instancePath:instancePath+"/housing",parentData:data,parentDataProperty:"housing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate332.errors : vErrors.concat(validate332.errors);
errors = vErrors.length;
}
}
if(data.tenon !== undefined){
if(!(validate334(data.tenon, {instancePath:instancePath+"/tenon",parentData:data,parentDataProperty:"tenon",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate334.errors : vErrors.concat(validate334.errors);
errors = vErrors.length;
}
}
if(data.drop !== undefined){
let data6 = data.drop;
if((typeof data6 !== "string") && (!((typeof data6 == "number") && (isFinite(data6))))){
const err5 = {instancePath:instancePath+"/drop",schemaPath:"#/properties/drop/type",keyword:"type",params:{type: schema76.properties.drop.type}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.wedge !== undefined){
if(!(validate346(data.wedge, {instancePath:instancePath+"/wedge",parentData:data,parentDataProperty:"wedge",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate346.errors : vErrors.concat(validate346.errors);
errors = vErrors.length;
}
}
if(data.pegs !== undefined){
if(!(validate336(data.pegs, {instancePath:instancePath+"/pegs",parentData:data,parentDataProperty:"pegs",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate336.errors : vErrors.concat(validate336.errors);
errors = vErrors.length;
}
}
if(data.tail !== undefined){
if(!(validate338(data.tail, {instancePath:instancePath+"/tail",parentData:data,parentDataProperty:"tail",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate338.errors : vErrors.concat(validate338.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate340.errors = vErrors;
return errors === 0;
}
validate340.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema78 = {"description":"The tenon at each end of a brace.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"The tenon at each end of a brace.","const":"brace-tenon","examples":["brace-tenon"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"housing":{"$ref":"#/$defs/housing"},"tenon":{"$ref":"#/$defs/tenon"},"pegs":{"$ref":"#/$defs/onePeg"}},"required":["kind","of","into"]};
const schema79 = {"description":"The pegs that hold the tenon.","type":"object","additionalProperties":false,"properties":{"count":{"description":"How many pegs each joint has; 0 for a joint without pegs.","type":"integer","minimum":0,"maximum":24,"examples":[2],"default":1,"x-default-source":"common practice"},"diameter":{"description":"How thick the pegs are.","type":["string","number"],"x-quantity":"length","examples":["3/4 in","1 in"]},"draw":{"description":"How far the hole in the tenon is set toward the shoulder, so that the peg pulls the joint tight.","type":["string","number"],"x-quantity":"length","examples":["1/8 in","3/32 in"]}},"examples":["{count: 2, diameter: 3/4 in}"]};

function validate357(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate357.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((key0 === "count") || (key0 === "diameter")) || (key0 === "draw"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.count !== undefined){
let data0 = data.count;
if(!(((typeof data0 == "number") && (!(data0 % 1) && !isNaN(data0))) && (isFinite(data0)))){
const err1 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if((typeof data0 == "number") && (isFinite(data0))){
if(data0 > 24 || isNaN(data0)){
const err2 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/maximum",keyword:"maximum",params:{comparison: "<=", limit: 24}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(data0 < 0 || isNaN(data0)){
const err3 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
if(data.diameter !== undefined){
let data1 = data.diameter;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err4 = {instancePath:instancePath+"/diameter",schemaPath:"#/properties/diameter/type",keyword:"type",params:{type: schema79.properties.diameter.type}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.draw !== undefined){
let data2 = data.draw;
if((typeof data2 !== "string") && (!((typeof data2 == "number") && (isFinite(data2))))){
const err5 = {instancePath:instancePath+"/draw",schemaPath:"#/properties/draw/type",keyword:"type",params:{type: schema79.properties.draw.type}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate357.errors = vErrors;
return errors === 0;
}
validate357.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate351(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate351.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "rule")) || (key0 === "housing")) || (key0 === "tenon")) || (key0 === "pegs"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("brace-tenon" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "brace-tenon"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
if(data.housing !== undefined){
if(!(validate332(data.housing, {instancePath:instancePath+"/housing",parentData:data,parentDataProperty:"housing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate332.errors : vErrors.concat(validate332.errors);
errors = vErrors.length;
}
}
if(data.tenon !== undefined){
if(!(validate334(data.tenon, {instancePath:instancePath+"/tenon",parentData:data,parentDataProperty:"tenon",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate334.errors : vErrors.concat(validate334.errors);
errors = vErrors.length;
}
}
if(data.pegs !== undefined){
if(!(validate357(data.pegs, {instancePath:instancePath+"/pegs",parentData:data,parentDataProperty:"pegs",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate357.errors : vErrors.concat(validate357.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate351.errors = vErrors;
return errors === 0;
}
validate351.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema80 = {"description":"A notch in a rafter that sits on the plate.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A notch in a rafter that sits on the plate.","const":"birds-mouth","examples":["birds-mouth"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"seat":{"description":"The level cut of the notch.","type":["string","number"],"x-quantity":"length","examples":["3 1/2 in"]},"fasten":{"$ref":"#/$defs/fasteners","description":"What holds each rafter down on its seat."}},"required":["kind","of","into"]};

function validate359(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate359.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "rule")) || (key0 === "seat")) || (key0 === "fasten"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("birds-mouth" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "birds-mouth"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
if(data.seat !== undefined){
let data4 = data.seat;
if((typeof data4 !== "string") && (!((typeof data4 == "number") && (isFinite(data4))))){
const err5 = {instancePath:instancePath+"/seat",schemaPath:"#/properties/seat/type",keyword:"type",params:{type: schema80.properties.seat.type}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.fasten !== undefined){
if(!(validate243(data.fasten, {instancePath:instancePath+"/fasten",parentData:data,parentDataProperty:"fasten",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate243.errors : vErrors.concat(validate243.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate359.errors = vErrors;
return errors === 0;
}
validate359.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema81 = {"description":"A rafter that stands in a housing of the plate and pushes against a step there; its tail laps over the plate's rim.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A rafter that stands in a housing of the plate and pushes against a step there; its tail laps over the plate's rim.","const":"step-lap","examples":["step-lap"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["principal"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"form":{"$ref":"#/$defs/stepForm"},"housing":{"$ref":"#/$defs/stepDepth"},"rule":{"$ref":"#/$defs/rule"},"fasten":{"$ref":"#/$defs/fasteners","description":"What holds each rafter down on its seat."}},"required":["kind","of","into"]};
const schema82 = {"description":"How the step stands that takes the thrust. plumb: upright, before it a level sole. square: square to the rafter, before it a sole along the rafter's underside.","type":"string","enum":["plumb","square"],"examples":["plumb","square"],"default":"plumb","x-default-source":"common practice"};

function validate367(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate367.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(typeof data !== "string"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(!((data === "plumb") || (data === "square"))){
const err1 = {instancePath,schemaPath:"#/enum",keyword:"enum",params:{allowedValues: schema82.enum}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate367.errors = vErrors;
return errors === 0;
}
validate367.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema83 = {"description":"How deep the step goes into the plate, plumb below its top. Without it: plumb, half of what the rafter reaches into the plate there; square, so deep that the housing runs as far in as the tail laps over the plate.","type":["string","number"],"x-quantity":"length","examples":["1/2 in","3/4 in"]};

function validate369(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate369.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema83.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate369.errors = vErrors;
return errors === 0;
}
validate369.evaluated = {"dynamicProps":false,"dynamicItems":false};


function validate364(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate364.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "form")) || (key0 === "housing")) || (key0 === "rule")) || (key0 === "fasten"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("step-lap" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "step-lap"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.form !== undefined){
if(!(validate367(data.form, {instancePath:instancePath+"/form",parentData:data,parentDataProperty:"form",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate367.errors : vErrors.concat(validate367.errors);
errors = vErrors.length;
}
}
if(data.housing !== undefined){
if(!(validate369(data.housing, {instancePath:instancePath+"/housing",parentData:data,parentDataProperty:"housing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate369.errors : vErrors.concat(validate369.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
if(data.fasten !== undefined){
if(!(validate243(data.fasten, {instancePath:instancePath+"/fasten",parentData:data,parentDataProperty:"fasten",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate243.errors : vErrors.concat(validate243.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate364.errors = vErrors;
return errors === 0;
}
validate364.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema84 = {"description":"The whole end let into the other timber.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"The whole end let into the other timber.","const":"housed","examples":["housed"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"housing":{"$ref":"#/$defs/housing"},"fasten":{"$ref":"#/$defs/fasteners","description":"What holds each rafter in the ridge: screws from its top edge, slanting at 45° across the ridge's grain, or toe-nails."}},"required":["kind","of","into"]};

function validate373(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate373.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "rule")) || (key0 === "housing")) || (key0 === "fasten"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("housed" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "housed"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
if(data.housing !== undefined){
if(!(validate332(data.housing, {instancePath:instancePath+"/housing",parentData:data,parentDataProperty:"housing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate332.errors : vErrors.concat(validate332.errors);
errors = vErrors.length;
}
}
if(data.fasten !== undefined){
if(!(validate243(data.fasten, {instancePath:instancePath+"/fasten",parentData:data,parentDataProperty:"fasten",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate243.errors : vErrors.concat(validate243.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate373.errors = vErrors;
return errors === 0;
}
validate373.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema85 = {"description":"A dovetail at the end of a joist that drops into a housing.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A dovetail at the end of a joist that drops into a housing.","const":"housed-dovetail","examples":["housed-dovetail"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"housing":{"$ref":"#/$defs/housing"},"dovetail":{"description":"The dovetail.","type":"object","additionalProperties":false,"properties":{"length":{"description":"How far it reaches into the beam.","type":["string","number"],"x-quantity":"length","examples":["3 in"]},"depth":{"description":"How deep the dovetail is cut.","type":["string","number"],"x-quantity":"length","examples":["3 in"]},"flare":{"description":"How much it widens on each side.","type":["string","number"],"x-quantity":"length","examples":["1/2 in"]}},"examples":["{length: 3 in, depth: 3 in, flare: 1/2 in}"]}},"required":["kind","of","into"]};

function validate379(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate379.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "rule")) || (key0 === "housing")) || (key0 === "dovetail"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("housed-dovetail" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "housed-dovetail"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
if(data.housing !== undefined){
if(!(validate332(data.housing, {instancePath:instancePath+"/housing",parentData:data,parentDataProperty:"housing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate332.errors : vErrors.concat(validate332.errors);
errors = vErrors.length;
}
}
if(data.dovetail !== undefined){
let data5 = data.dovetail;
if(data5 && typeof data5 == "object" && !Array.isArray(data5)){
for(const key1 in data5){
if(!(((key1 === "length") || (key1 === "depth")) || (key1 === "flare"))){
const err5 = {instancePath:instancePath+"/dovetail",schemaPath:"#/properties/dovetail/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data5.length !== undefined){
let data6 = data5.length;
if((typeof data6 !== "string") && (!((typeof data6 == "number") && (isFinite(data6))))){
const err6 = {instancePath:instancePath+"/dovetail/length",schemaPath:"#/properties/dovetail/properties/length/type",keyword:"type",params:{type: schema85.properties.dovetail.properties.length.type}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data5.depth !== undefined){
let data7 = data5.depth;
if((typeof data7 !== "string") && (!((typeof data7 == "number") && (isFinite(data7))))){
const err7 = {instancePath:instancePath+"/dovetail/depth",schemaPath:"#/properties/dovetail/properties/depth/type",keyword:"type",params:{type: schema85.properties.dovetail.properties.depth.type}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data5.flare !== undefined){
let data8 = data5.flare;
if((typeof data8 !== "string") && (!((typeof data8 == "number") && (isFinite(data8))))){
const err8 = {instancePath:instancePath+"/dovetail/flare",schemaPath:"#/properties/dovetail/properties/flare/type",keyword:"type",params:{type: schema85.properties.dovetail.properties.flare.type}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
}
else {
const err9 = {instancePath:instancePath+"/dovetail",schemaPath:"#/properties/dovetail/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
}
else {
const err10 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
validate379.errors = vErrors;
return errors === 0;
}
validate379.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema86 = {"description":"A joist's end that drops into a pocket open at the top.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A joist's end that drops into a pocket open at the top.","const":"pocket","examples":["pocket"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"housing":{"$ref":"#/$defs/housing"}},"required":["kind","of","into"]};

function validate384(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate384.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "rule")) || (key0 === "housing"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("pocket" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "pocket"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
if(data.housing !== undefined){
if(!(validate332(data.housing, {instancePath:instancePath+"/housing",parentData:data,parentDataProperty:"housing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate332.errors : vErrors.concat(validate332.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate384.errors = vErrors;
return errors === 0;
}
validate384.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema87 = {"description":"Two timbers that cross at a corner, each cut away by half.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Two timbers that cross at a corner, each cut away by half.","const":"corner-half-lap","examples":["corner-half-lap"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"pegs":{"$ref":"#/$defs/onePeg"}},"required":["kind","of","into"]};

function validate389(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate389.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "rule")) || (key0 === "pegs"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("corner-half-lap" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "corner-half-lap"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
if(data.pegs !== undefined){
if(!(validate357(data.pegs, {instancePath:instancePath+"/pegs",parentData:data,parentDataProperty:"pegs",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate357.errors : vErrors.concat(validate357.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate389.errors = vErrors;
return errors === 0;
}
validate389.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema88 = {"description":"Two lengths of a timber lapped end to end.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Two lengths of a timber lapped end to end.","const":"half-lap-scarf","examples":["half-lap-scarf"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"rule":{"$ref":"#/$defs/rule"},"lap":{"$ref":"#/$defs/lap"},"pegs":{"$ref":"#/$defs/fourPegs"}},"required":["kind","of","into"]};
const schema89 = {"description":"The length of the lap along the grain.","type":["string","number"],"x-quantity":"length","examples":["16 in"]};

function validate398(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate398.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema89.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate398.errors = vErrors;
return errors === 0;
}
validate398.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema90 = {"description":"The pegs that hold the tenon.","type":"object","additionalProperties":false,"properties":{"count":{"description":"How many pegs each joint has; 0 for a joint without pegs.","type":"integer","minimum":0,"maximum":24,"examples":[2],"default":4,"x-default-source":"common practice"},"diameter":{"description":"How thick the pegs are.","type":["string","number"],"x-quantity":"length","examples":["3/4 in","1 in"]},"draw":{"description":"How far the hole in the tenon is set toward the shoulder, so that the peg pulls the joint tight.","type":["string","number"],"x-quantity":"length","examples":["1/8 in","3/32 in"]}},"examples":["{count: 2, diameter: 3/4 in}"]};

function validate400(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate400.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((key0 === "count") || (key0 === "diameter")) || (key0 === "draw"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.count !== undefined){
let data0 = data.count;
if(!(((typeof data0 == "number") && (!(data0 % 1) && !isNaN(data0))) && (isFinite(data0)))){
const err1 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if((typeof data0 == "number") && (isFinite(data0))){
if(data0 > 24 || isNaN(data0)){
const err2 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/maximum",keyword:"maximum",params:{comparison: "<=", limit: 24}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(data0 < 0 || isNaN(data0)){
const err3 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
if(data.diameter !== undefined){
let data1 = data.diameter;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err4 = {instancePath:instancePath+"/diameter",schemaPath:"#/properties/diameter/type",keyword:"type",params:{type: schema90.properties.diameter.type}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.draw !== undefined){
let data2 = data.draw;
if((typeof data2 !== "string") && (!((typeof data2 == "number") && (isFinite(data2))))){
const err5 = {instancePath:instancePath+"/draw",schemaPath:"#/properties/draw/type",keyword:"type",params:{type: schema90.properties.draw.type}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate400.errors = vErrors;
return errors === 0;
}
validate400.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate394(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate394.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "rule")) || (key0 === "lap")) || (key0 === "pegs"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("half-lap-scarf" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "half-lap-scarf"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
if(data.lap !== undefined){
if(!(validate398(data.lap, {instancePath:instancePath+"/lap",parentData:data,parentDataProperty:"lap",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate398.errors : vErrors.concat(validate398.errors);
errors = vErrors.length;
}
}
if(data.pegs !== undefined){
if(!(validate400(data.pegs, {instancePath:instancePath+"/pegs",parentData:data,parentDataProperty:"pegs",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate400.errors : vErrors.concat(validate400.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate394.errors = vErrors;
return errors === 0;
}
validate394.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema91 = {"description":"Two lengths of a timber lapped end to end, with a blade at each end that stands in a slot of the other.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Two lengths of a timber lapped end to end, with a blade at each end that stands in a slot of the other.","const":"bladed-scarf","examples":["bladed-scarf"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"lap":{"$ref":"#/$defs/lap"},"blade":{"$ref":"#/$defs/blade"},"pegs":{"$ref":"#/$defs/fourPegs"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]};
const schema92 = {"description":"The blade at the end of each half, in the middle of its width; it stands in a slot of the other timber.","type":"object","additionalProperties":false,"properties":{"thickness":{"description":"Across its width. Without it: 2 in in timbers of 7 in and wider, else 1 1/2 in.","type":["string","number"],"x-quantity":"length","examples":["2 in"]},"length":{"description":"Along the grain. Without it: half the depth of the timber.","type":["string","number"],"x-quantity":"length","examples":["4 in"]}},"examples":["{thickness: 2 in, length: 4 in}"]};

function validate406(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate406.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((key0 === "thickness") || (key0 === "length"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.thickness !== undefined){
let data0 = data.thickness;
if((typeof data0 !== "string") && (!((typeof data0 == "number") && (isFinite(data0))))){
const err1 = {instancePath:instancePath+"/thickness",schemaPath:"#/properties/thickness/type",keyword:"type",params:{type: schema92.properties.thickness.type}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.length !== undefined){
let data1 = data.length;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err2 = {instancePath:instancePath+"/length",schemaPath:"#/properties/length/type",keyword:"type",params:{type: schema92.properties.length.type}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate406.errors = vErrors;
return errors === 0;
}
validate406.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate402(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate402.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "lap")) || (key0 === "blade")) || (key0 === "pegs")) || (key0 === "rule"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("bladed-scarf" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "bladed-scarf"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.lap !== undefined){
if(!(validate398(data.lap, {instancePath:instancePath+"/lap",parentData:data,parentDataProperty:"lap",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate398.errors : vErrors.concat(validate398.errors);
errors = vErrors.length;
}
}
if(data.blade !== undefined){
if(!(validate406(data.blade, {instancePath:instancePath+"/blade",parentData:data,parentDataProperty:"blade",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate406.errors : vErrors.concat(validate406.errors);
errors = vErrors.length;
}
}
if(data.pegs !== undefined){
if(!(validate400(data.pegs, {instancePath:instancePath+"/pegs",parentData:data,parentDataProperty:"pegs",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate400.errors : vErrors.concat(validate400.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate402.errors = vErrors;
return errors === 0;
}
validate402.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema93 = {"description":"Two lengths of a timber joined end to end on a slope, between under-squinted butts, tightened by folding wedges in the middle.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Two lengths of a timber joined end to end on a slope, between under-squinted butts, tightened by folding wedges in the middle.","const":"stop-splayed-scarf","examples":["stop-splayed-scarf"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"lap":{"$ref":"#/$defs/lap"},"butt":{"$ref":"#/$defs/butt"},"wedge":{"$ref":"#/$defs/wedge"},"pegs":{"$ref":"#/$defs/fourPegs"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]};
const schema94 = {"description":"The depth of the butt in which each half ends. Without it: a quarter of the depth.","type":["string","number"],"x-quantity":"length","examples":["2 in"]};

function validate414(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate414.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema94.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate414.errors = vErrors;
return errors === 0;
}
validate414.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema95 = {"description":"The wedge that locks the joint.","type":"object","additionalProperties":false,"properties":{"species":{"$ref":"#/$defs/species"},"slope":{"description":"Its slope. Without it: 1 in 10.","type":["string","number"],"x-quantity":"pitch","examples":["1:10"]}},"examples":["{species: white-oak}"]};

function validate416(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate416.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((key0 === "species") || (key0 === "slope"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.species !== undefined){
if(!(validate53(data.species, {instancePath:instancePath+"/species",parentData:data,parentDataProperty:"species",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
if(data.slope !== undefined){
let data1 = data.slope;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err1 = {instancePath:instancePath+"/slope",schemaPath:"#/properties/slope/type",keyword:"type",params:{type: schema95.properties.slope.type}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
}
else {
const err2 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
validate416.errors = vErrors;
return errors === 0;
}
validate416.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate410(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate410.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!((((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "lap")) || (key0 === "butt")) || (key0 === "wedge")) || (key0 === "pegs")) || (key0 === "rule"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("stop-splayed-scarf" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "stop-splayed-scarf"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.lap !== undefined){
if(!(validate398(data.lap, {instancePath:instancePath+"/lap",parentData:data,parentDataProperty:"lap",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate398.errors : vErrors.concat(validate398.errors);
errors = vErrors.length;
}
}
if(data.butt !== undefined){
if(!(validate414(data.butt, {instancePath:instancePath+"/butt",parentData:data,parentDataProperty:"butt",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate414.errors : vErrors.concat(validate414.errors);
errors = vErrors.length;
}
}
if(data.wedge !== undefined){
if(!(validate416(data.wedge, {instancePath:instancePath+"/wedge",parentData:data,parentDataProperty:"wedge",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate416.errors : vErrors.concat(validate416.errors);
errors = vErrors.length;
}
}
if(data.pegs !== undefined){
if(!(validate400(data.pegs, {instancePath:instancePath+"/pegs",parentData:data,parentDataProperty:"pegs",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate400.errors : vErrors.concat(validate400.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate410.errors = vErrors;
return errors === 0;
}
validate410.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema96 = {"description":"A tongue in a fork, where two timbers meet at their ends.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A tongue in a fork, where two timbers meet at their ends.","const":"corner-bridle","examples":["corner-bridle"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"tenon":{"$ref":"#/$defs/tongue"},"pegs":{"$ref":"#/$defs/onePeg"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]};
const schema97 = {"description":"The tongue. It reaches through the other timber to its far face.","type":"object","additionalProperties":false,"properties":{"thickness":{"description":"Between its cheeks. Without it: a third of the timber.","type":["string","number"],"x-quantity":"length","examples":["2 3/4 in"]},"set-in":{"description":"From the reference face of the other timber to the near cheek. Without it: in the middle of the joined timber.","type":["string","number"],"x-quantity":"length","examples":["2 in"]}},"examples":["{thickness: 2 3/4 in}"]};

function validate424(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate424.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((key0 === "thickness") || (key0 === "set-in"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.thickness !== undefined){
let data0 = data.thickness;
if((typeof data0 !== "string") && (!((typeof data0 == "number") && (isFinite(data0))))){
const err1 = {instancePath:instancePath+"/thickness",schemaPath:"#/properties/thickness/type",keyword:"type",params:{type: schema97.properties.thickness.type}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data["set-in"] !== undefined){
let data1 = data["set-in"];
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err2 = {instancePath:instancePath+"/set-in",schemaPath:"#/properties/set-in/type",keyword:"type",params:{type: schema97.properties["set-in"].type}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate424.errors = vErrors;
return errors === 0;
}
validate424.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate421(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate421.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "tenon")) || (key0 === "pegs")) || (key0 === "rule"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("corner-bridle" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "corner-bridle"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.tenon !== undefined){
if(!(validate424(data.tenon, {instancePath:instancePath+"/tenon",parentData:data,parentDataProperty:"tenon",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate424.errors : vErrors.concat(validate424.errors);
errors = vErrors.length;
}
}
if(data.pegs !== undefined){
if(!(validate357(data.pegs, {instancePath:instancePath+"/pegs",parentData:data,parentDataProperty:"pegs",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate357.errors : vErrors.concat(validate357.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate421.errors = vErrors;
return errors === 0;
}
validate421.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema98 = {"description":"The half of a timber's end, cut as a dovetail, lapped into the side of another.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"The half of a timber's end, cut as a dovetail, lapped into the side of another.","const":"dovetail-lap","examples":["dovetail-lap"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"dovetail":{"$ref":"#/$defs/dovetail"},"pegs":{"$ref":"#/$defs/onePeg"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]};
const schema99 = {"description":"The dovetail.","type":"object","additionalProperties":false,"properties":{"length":{"description":"How far it reaches into the other timber. Without it: to its far face.","type":["string","number"],"x-quantity":"length","examples":["8 in"]},"depth":{"description":"How deep it is let in, from the side it comes from. Without it: half of what the two timbers have in common.","type":["string","number"],"x-quantity":"length","examples":["4 in"]},"flare":{"description":"How much it widens on each side. Without it: one in six of its length, at most a fifth of its width.","type":["string","number"],"x-quantity":"length","examples":["1 in"]}},"examples":["{length: 8 in, depth: 4 in, flare: 1 in}"]};

function validate431(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate431.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((key0 === "length") || (key0 === "depth")) || (key0 === "flare"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.length !== undefined){
let data0 = data.length;
if((typeof data0 !== "string") && (!((typeof data0 == "number") && (isFinite(data0))))){
const err1 = {instancePath:instancePath+"/length",schemaPath:"#/properties/length/type",keyword:"type",params:{type: schema99.properties.length.type}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.depth !== undefined){
let data1 = data.depth;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err2 = {instancePath:instancePath+"/depth",schemaPath:"#/properties/depth/type",keyword:"type",params:{type: schema99.properties.depth.type}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.flare !== undefined){
let data2 = data.flare;
if((typeof data2 !== "string") && (!((typeof data2 == "number") && (isFinite(data2))))){
const err3 = {instancePath:instancePath+"/flare",schemaPath:"#/properties/flare/type",keyword:"type",params:{type: schema99.properties.flare.type}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate431.errors = vErrors;
return errors === 0;
}
validate431.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate428(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate428.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "dovetail")) || (key0 === "pegs")) || (key0 === "rule"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("dovetail-lap" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "dovetail-lap"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.dovetail !== undefined){
if(!(validate431(data.dovetail, {instancePath:instancePath+"/dovetail",parentData:data,parentDataProperty:"dovetail",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate431.errors : vErrors.concat(validate431.errors);
errors = vErrors.length;
}
}
if(data.pegs !== undefined){
if(!(validate357(data.pegs, {instancePath:instancePath+"/pegs",parentData:data,parentDataProperty:"pegs",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate357.errors : vErrors.concat(validate357.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate428.errors = vErrors;
return errors === 0;
}
validate428.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema100 = {"description":"A short tenon without pegs, which keeps a timber in its place; it only bears.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A short tenon without pegs, which keeps a timber in its place; it only bears.","const":"stub-tenon","examples":["stub-tenon"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"housing":{"$ref":"#/$defs/housing"},"tenon":{"$ref":"#/$defs/stubTenon"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]};
const schema101 = {"description":"The tenon. It lies along the grain of the timber it enters.","type":"object","additionalProperties":false,"properties":{"thickness":{"description":"Between its cheeks.","type":["string","number"],"x-quantity":"length","examples":["2 in","1 1/2 in"]},"length":{"description":"From the shoulder to its end. Without it: 1 1/2 in.","type":["string","number"],"x-quantity":"length","examples":["1 1/2 in"]},"width":{"description":"Across the grain of the mortised timber. Without it: full width, less 1 in at a timber's free end.","type":["string","number"],"x-quantity":"length","examples":["7 in"]},"set-in":{"description":"From the reference face of the mortised timber to the near cheek. Without it: 2 in.","type":["string","number"],"x-quantity":"length","examples":["2 in"]}},"examples":["{thickness: 2 in, length: 1 1/2 in}"]};

function validate439(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate439.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!((((key0 === "thickness") || (key0 === "length")) || (key0 === "width")) || (key0 === "set-in"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.thickness !== undefined){
let data0 = data.thickness;
if((typeof data0 !== "string") && (!((typeof data0 == "number") && (isFinite(data0))))){
const err1 = {instancePath:instancePath+"/thickness",schemaPath:"#/properties/thickness/type",keyword:"type",params:{type: schema101.properties.thickness.type}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.length !== undefined){
let data1 = data.length;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err2 = {instancePath:instancePath+"/length",schemaPath:"#/properties/length/type",keyword:"type",params:{type: schema101.properties.length.type}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.width !== undefined){
let data2 = data.width;
if((typeof data2 !== "string") && (!((typeof data2 == "number") && (isFinite(data2))))){
const err3 = {instancePath:instancePath+"/width",schemaPath:"#/properties/width/type",keyword:"type",params:{type: schema101.properties.width.type}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data["set-in"] !== undefined){
let data3 = data["set-in"];
if((typeof data3 !== "string") && (!((typeof data3 == "number") && (isFinite(data3))))){
const err4 = {instancePath:instancePath+"/set-in",schemaPath:"#/properties/set-in/type",keyword:"type",params:{type: schema101.properties["set-in"].type}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate439.errors = vErrors;
return errors === 0;
}
validate439.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate435(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate435.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "housing")) || (key0 === "tenon")) || (key0 === "rule"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("stub-tenon" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "stub-tenon"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.housing !== undefined){
if(!(validate332(data.housing, {instancePath:instancePath+"/housing",parentData:data,parentDataProperty:"housing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate332.errors : vErrors.concat(validate332.errors);
errors = vErrors.length;
}
}
if(data.tenon !== undefined){
if(!(validate439(data.tenon, {instancePath:instancePath+"/tenon",parentData:data,parentDataProperty:"tenon",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate439.errors : vErrors.concat(validate439.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate435.errors = vErrors;
return errors === 0;
}
validate435.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema102 = {"description":"The end of a brace held by structural screws.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"The end of a brace held by structural screws.","const":"screwed-brace","examples":["screwed-brace"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["post"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["plate"]},"housing":{"$ref":"#/$defs/housing"},"screws":{"$ref":"#/$defs/screws"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]};
const schema103 = {"description":"The screws through each end, square to the face of the other timber, driven from the brace's long edge.","type":"object","additionalProperties":false,"properties":{"count":{"description":"How many at each end.","type":"integer","minimum":1,"maximum":24,"examples":[2],"default":2,"x-default-source":"common practice"},"diameter":{"description":"How thick they are.","type":["string","number"],"x-quantity":"length","examples":["5/16 in"]},"length":{"description":"How long they are, under the head. Without it: as long as the two timbers need.","type":["string","number"],"x-quantity":"length","examples":["10 in"]}},"examples":["{count: 2, diameter: 5/16 in, length: 10 in}"]};

function validate446(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate446.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
for(const key0 in data){
if(!(((key0 === "count") || (key0 === "diameter")) || (key0 === "length"))){
const err0 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
}
if(data.count !== undefined){
let data0 = data.count;
if(!(((typeof data0 == "number") && (!(data0 % 1) && !isNaN(data0))) && (isFinite(data0)))){
const err1 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if((typeof data0 == "number") && (isFinite(data0))){
if(data0 > 24 || isNaN(data0)){
const err2 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/maximum",keyword:"maximum",params:{comparison: "<=", limit: 24}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(data0 < 1 || isNaN(data0)){
const err3 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
}
if(data.diameter !== undefined){
let data1 = data.diameter;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err4 = {instancePath:instancePath+"/diameter",schemaPath:"#/properties/diameter/type",keyword:"type",params:{type: schema103.properties.diameter.type}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.length !== undefined){
let data2 = data.length;
if((typeof data2 !== "string") && (!((typeof data2 == "number") && (isFinite(data2))))){
const err5 = {instancePath:instancePath+"/length",schemaPath:"#/properties/length/type",keyword:"type",params:{type: schema103.properties.length.type}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate446.errors = vErrors;
return errors === 0;
}
validate446.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate442(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate442.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "housing")) || (key0 === "screws")) || (key0 === "rule"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("screwed-brace" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "screwed-brace"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.housing !== undefined){
if(!(validate332(data.housing, {instancePath:instancePath+"/housing",parentData:data,parentDataProperty:"housing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate332.errors : vErrors.concat(validate332.errors);
errors = vErrors.length;
}
}
if(data.screws !== undefined){
if(!(validate446(data.screws, {instancePath:instancePath+"/screws",parentData:data,parentDataProperty:"screws",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate446.errors : vErrors.concat(validate446.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate442.errors = vErrors;
return errors === 0;
}
validate442.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema104 = {"description":"The foot of a principal rafter, stepped into a tie and tenoned.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"The foot of a principal rafter, stepped into a tie and tenoned.","const":"rafter-heel","examples":["rafter-heel"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["principal"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["tie"]},"form":{"description":"How the abutment that takes the thrust stands. bisecting: it halves the blunt angle between the rafter's upper edge and the tie. square: square to the rafter.","type":"string","enum":["bisecting","square"],"examples":["bisecting"],"default":"bisecting","x-default-source":"common practice"},"housing":{"description":"How deep the toe is stepped into the tie, square to its face. Without it: a sixth of the tie, at least 1 in.","type":["string","number"],"x-quantity":"length","examples":["1 1/2 in"]},"tenon":{"$ref":"#/$defs/tenon"},"pegs":{"$ref":"#/$defs/twoPegs"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]};

function validate449(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate449.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!((((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "form")) || (key0 === "housing")) || (key0 === "tenon")) || (key0 === "pegs")) || (key0 === "rule"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("rafter-heel" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "rafter-heel"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.form !== undefined){
let data3 = data.form;
if(typeof data3 !== "string"){
const err5 = {instancePath:instancePath+"/form",schemaPath:"#/properties/form/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
if(!((data3 === "bisecting") || (data3 === "square"))){
const err6 = {instancePath:instancePath+"/form",schemaPath:"#/properties/form/enum",keyword:"enum",params:{allowedValues: schema104.properties.form.enum}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.housing !== undefined){
let data4 = data.housing;
if((typeof data4 !== "string") && (!((typeof data4 == "number") && (isFinite(data4))))){
const err7 = {instancePath:instancePath+"/housing",schemaPath:"#/properties/housing/type",keyword:"type",params:{type: schema104.properties.housing.type}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.tenon !== undefined){
if(!(validate334(data.tenon, {instancePath:instancePath+"/tenon",parentData:data,parentDataProperty:"tenon",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate334.errors : vErrors.concat(validate334.errors);
errors = vErrors.length;
}
}
if(data.pegs !== undefined){
if(!(validate336(data.pegs, {instancePath:instancePath+"/pegs",parentData:data,parentDataProperty:"pegs",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate336.errors : vErrors.concat(validate336.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
}
else {
const err8 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
validate449.errors = vErrors;
return errors === 0;
}
validate449.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema105 = {"description":"Two rafters head to head at the ridge, without a ridge timber.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Two rafters head to head at the ridge, without a ridge timber.","const":"rafter-pair","examples":["rafter-pair"]},"of":{"$ref":"#/$defs/timbers","description":"The timber that is let in: an entry, a kind, a single stick, or a list.","examples":["principal"]},"into":{"$ref":"#/$defs/timbers","description":"The timber that receives it: an entry, a kind, a single stick, or a list.","examples":["principal"]},"form":{"description":"bridle: a tongue on the one in a fork of the other, a third of the thickness each. lapped: each gives half its thickness.","type":"string","enum":["bridle","lapped"],"examples":["bridle"],"default":"bridle","x-default-source":"common practice"},"pegs":{"$ref":"#/$defs/onePeg"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind","of","into"]};

function validate455(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate455.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.of === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "of"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.into === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "into"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "kind") || (key0 === "of")) || (key0 === "into")) || (key0 === "form")) || (key0 === "pegs")) || (key0 === "rule"))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.kind !== undefined){
if("rafter-pair" !== data.kind){
const err4 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "rafter-pair"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.of !== undefined){
if(!(validate327(data.of, {instancePath:instancePath+"/of",parentData:data,parentDataProperty:"of",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.into !== undefined){
if(!(validate327(data.into, {instancePath:instancePath+"/into",parentData:data,parentDataProperty:"into",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate327.errors : vErrors.concat(validate327.errors);
errors = vErrors.length;
}
}
if(data.form !== undefined){
let data3 = data.form;
if(typeof data3 !== "string"){
const err5 = {instancePath:instancePath+"/form",schemaPath:"#/properties/form/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
if(!((data3 === "bridle") || (data3 === "lapped"))){
const err6 = {instancePath:instancePath+"/form",schemaPath:"#/properties/form/enum",keyword:"enum",params:{allowedValues: schema105.properties.form.enum}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.pegs !== undefined){
if(!(validate357(data.pegs, {instancePath:instancePath+"/pegs",parentData:data,parentDataProperty:"pegs",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate357.errors : vErrors.concat(validate357.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
}
else {
const err7 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
validate455.errors = vErrors;
return errors === 0;
}
validate455.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate325(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate325.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
const tag0 = data.kind;
if(typeof tag0 == "string"){
if(tag0 === "mortise-and-tenon"){
if(!(validate326(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate326.errors : vErrors.concat(validate326.errors);
errors = vErrors.length;
}
var props0 = true;
}
else if(tag0 === "wedged-half-dovetail"){
if(!(validate340(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate340.errors : vErrors.concat(validate340.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "brace-tenon"){
if(!(validate351(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate351.errors : vErrors.concat(validate351.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "birds-mouth"){
if(!(validate359(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate359.errors : vErrors.concat(validate359.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "step-lap"){
if(!(validate364(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate364.errors : vErrors.concat(validate364.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "housed"){
if(!(validate373(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate373.errors : vErrors.concat(validate373.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "housed-dovetail"){
if(!(validate379(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate379.errors : vErrors.concat(validate379.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "pocket"){
if(!(validate384(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate384.errors : vErrors.concat(validate384.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "corner-half-lap"){
if(!(validate389(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate389.errors : vErrors.concat(validate389.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "half-lap-scarf"){
if(!(validate394(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate394.errors : vErrors.concat(validate394.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "bladed-scarf"){
if(!(validate402(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate402.errors : vErrors.concat(validate402.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "stop-splayed-scarf"){
if(!(validate410(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate410.errors : vErrors.concat(validate410.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "corner-bridle"){
if(!(validate421(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate421.errors : vErrors.concat(validate421.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "dovetail-lap"){
if(!(validate428(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate428.errors : vErrors.concat(validate428.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "stub-tenon"){
if(!(validate435(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate435.errors : vErrors.concat(validate435.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "screwed-brace"){
if(!(validate442(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate442.errors : vErrors.concat(validate442.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "rafter-heel"){
if(!(validate449(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate449.errors : vErrors.concat(validate449.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else if(tag0 === "rafter-pair"){
if(!(validate455(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate455.errors : vErrors.concat(validate455.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else {
const err1 = {instancePath,schemaPath:"#/discriminator",keyword:"discriminator",params:{error: "mapping", tag: "kind", tagValue: tag0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
else {
const err2 = {instancePath,schemaPath:"#/discriminator",keyword:"discriminator",params:{error: "tag", tag: "kind", tagValue: tag0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate325.errors = vErrors;
evaluated0.props = props0;
return errors === 0;
}
validate325.evaluated = {"dynamicProps":true,"dynamicItems":false};

const schema106 = {"description":"Two slopes that meet at a ridge.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Two slopes that meet at a ridge.","const":"gable","examples":["gable"]},"pitch":{"$ref":"#/$defs/pitch"},"rafters":{"$ref":"#/$defs/rafters"},"deck":{"$ref":"#/$defs/deck"},"covering":{"$ref":"#/$defs/covering"},"ceiling":{"$ref":"#/$defs/ceiling"}},"required":["kind","pitch"]};
const schema107 = {"description":"Rise over run, or an angle.","type":["string","number"],"x-quantity":"pitch","examples":["7:12","30 deg"]};

function validate480(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate480.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema107.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate480.errors = vErrors;
return errors === 0;
}
validate480.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema108 = {"description":"The common rafters of the roof.","type":"object","additionalProperties":false,"properties":{"section":{"$ref":"#/$defs/section"},"timber":{"$ref":"#/$defs/timberName"},"measured":{"$ref":"#/$defs/measured"},"spacing":{"description":"The most allowed from center to center; divided evenly between the rake rafters.","type":["string","number"],"x-quantity":"length","examples":["30 in","24 in"]},"count":{"description":"How many on each slope, instead of a spacing.","type":"integer","minimum":2,"maximum":500,"examples":[8]},"layout":{"description":"even: the same spacing throughout. fixed: exactly the spacing, the remainder in the last bay.","type":"string","enum":["even","fixed"],"examples":["even"],"default":"even","x-default-source":"common practice"},"seat":{"$ref":"#/$defs/seat"},"head":{"description":"How the rafters meet the ridge or the high plate.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"housed: let into the ridge, open on top. birds-mouth: on the high plate of a shed roof, cut as their seat on the low one. bridle: head to head without a ridge timber, a tongue in a fork. lapped: head to head, each halved.","type":"string","enum":["housed","birds-mouth","bridle","lapped"],"examples":["housed","bridle"]},"into":{"description":"The timber that receives them.","type":"string","x-ref":["member"],"examples":["ridge"]},"housing":{"description":"How deep they are let in.","type":["string","number"],"x-quantity":"length","examples":["1/2 in"],"default":"1/2 in","x-default-source":"common practice"},"rule":{"$ref":"#/$defs/rule"},"fasten":{"$ref":"#/$defs/fasteners","description":"What holds each rafter in the ridge: screws from its top edge into the ridge, slanting at 45° across the ridge's grain, or toe-nails."},"pegs":{"$ref":"#/$defs/onePeg","description":"What holds the two halves of a bridle or lap together."}},"required":["kind"],"examples":["{kind: housed, into: ridge}"]},"overhang":{"description":"How far the roof stands out.","type":"object","additionalProperties":false,"properties":{"eave":{"description":"Level, from the plate's outside face to the rafter's outer tip.","type":["string","number"],"x-quantity":"length","examples":["18 in"]},"rake":{"description":"From the end bent's outer face to the deck's edge.","type":["string","number"],"x-quantity":"length","examples":["12 in"]},"high":{"description":"At the high side of a shed roof.","type":["string","number"],"x-quantity":"length","examples":["12 in"]}},"examples":["{eave: 18 in, rake: 12 in}"]},"fasten":{"$ref":"#/$defs/fasteners","description":"What holds each rafter down on the plate.","examples":["{kind: screws, count: 2, diameter: 5/16 in, length: 10 in}"]}},"required":["section"],"examples":["{section: 3x7, spacing: 30 in}"]};
const schema109 = {"description":"How the rafters sit on the plate.","type":"object","required":["kind"],"discriminator":{"propertyName":"kind"},"oneOf":[{"$ref":"#/$defs/seat-birds-mouth"},{"$ref":"#/$defs/seat-step-lap"}],"examples":["{kind: birds-mouth}","{kind: step-lap}"]};
const schema110 = {"description":"A bird's mouth: a level seat and a plumb cut on the plate's outside face.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A bird's mouth: a level seat and a plumb cut on the plate's outside face.","const":"birds-mouth","examples":["birds-mouth"]},"length":{"description":"The level seat. Without it: the largest quarter inch that stays within a quarter of the rafter's depth.","type":["string","number"],"x-quantity":"length","examples":["3 1/2 in"]},"rule":{"$ref":"#/$defs/rule"}},"required":["kind"]};

function validate487(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate487.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(((key0 === "kind") || (key0 === "length")) || (key0 === "rule"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.kind !== undefined){
if("birds-mouth" !== data.kind){
const err2 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "birds-mouth"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.length !== undefined){
let data1 = data.length;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err3 = {instancePath:instancePath+"/length",schemaPath:"#/properties/length/type",keyword:"type",params:{type: schema110.properties.length.type}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate487.errors = vErrors;
return errors === 0;
}
validate487.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema111 = {"description":"A step-lap seat: the rafter stands in a housing across the plate's upper outer arris and pushes against a step there; its tail laps over the rim that is left outside of it.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A step-lap seat: the rafter stands in a housing across the plate's upper outer arris and pushes against a step there; its tail laps over the rim that is left outside of it.","const":"step-lap","examples":["step-lap"]},"length":{"description":"Level, from the plate's outside face to where the rafter's underside meets the plate's top: lap and housing together. Without it: 4 in (100 mm), less where that leaves the tail under half of the rafter's depth or is wider than the plate.","type":["string","number"],"x-quantity":"length","examples":["4 in"]},"form":{"$ref":"#/$defs/stepForm"},"housing":{"$ref":"#/$defs/stepDepth"},"rule":{"$ref":"#/$defs/rule"}},"required":["kind"]};

function validate489(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate489.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(((((key0 === "kind") || (key0 === "length")) || (key0 === "form")) || (key0 === "housing")) || (key0 === "rule"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.kind !== undefined){
if("step-lap" !== data.kind){
const err2 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "step-lap"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.length !== undefined){
let data1 = data.length;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err3 = {instancePath:instancePath+"/length",schemaPath:"#/properties/length/type",keyword:"type",params:{type: schema111.properties.length.type}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.form !== undefined){
if(!(validate367(data.form, {instancePath:instancePath+"/form",parentData:data,parentDataProperty:"form",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate367.errors : vErrors.concat(validate367.errors);
errors = vErrors.length;
}
}
if(data.housing !== undefined){
if(!(validate369(data.housing, {instancePath:instancePath+"/housing",parentData:data,parentDataProperty:"housing",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate369.errors : vErrors.concat(validate369.errors);
errors = vErrors.length;
}
}
if(data.rule !== undefined){
if(!(validate330(data.rule, {instancePath:instancePath+"/rule",parentData:data,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate489.errors = vErrors;
return errors === 0;
}
validate489.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate486(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate486.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
const tag0 = data.kind;
if(typeof tag0 == "string"){
if(tag0 === "birds-mouth"){
if(!(validate487(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate487.errors : vErrors.concat(validate487.errors);
errors = vErrors.length;
}
var props0 = true;
}
else if(tag0 === "step-lap"){
if(!(validate489(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate489.errors : vErrors.concat(validate489.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else {
const err1 = {instancePath,schemaPath:"#/discriminator",keyword:"discriminator",params:{error: "mapping", tag: "kind", tagValue: tag0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
else {
const err2 = {instancePath,schemaPath:"#/discriminator",keyword:"discriminator",params:{error: "tag", tag: "kind", tagValue: tag0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate486.errors = vErrors;
evaluated0.props = props0;
return errors === 0;
}
validate486.evaluated = {"dynamicProps":true,"dynamicItems":false};


function validate482(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate482.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.section === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "section"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema108.properties, key0))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.section !== undefined){
if(!(validate62(data.section, {instancePath:instancePath+"/section",parentData:data,parentDataProperty:"section",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate62.errors : vErrors.concat(validate62.errors);
errors = vErrors.length;
}
}
if(data.timber !== undefined){
if(!(validate66(data.timber, {instancePath:instancePath+"/timber",parentData:data,parentDataProperty:"timber",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate66.errors : vErrors.concat(validate66.errors);
errors = vErrors.length;
}
}
if(data.measured !== undefined){
if(!(validate68(data.measured, {instancePath:instancePath+"/measured",parentData:data,parentDataProperty:"measured",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate68.errors : vErrors.concat(validate68.errors);
errors = vErrors.length;
}
}
if(data.spacing !== undefined){
let data3 = data.spacing;
if((typeof data3 !== "string") && (!((typeof data3 == "number") && (isFinite(data3))))){
const err2 = {instancePath:instancePath+"/spacing",schemaPath:"#/properties/spacing/type",keyword:"type",params:{type: schema108.properties.spacing.type}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.count !== undefined){
let data4 = data.count;
if(!(((typeof data4 == "number") && (!(data4 % 1) && !isNaN(data4))) && (isFinite(data4)))){
const err3 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
if((typeof data4 == "number") && (isFinite(data4))){
if(data4 > 500 || isNaN(data4)){
const err4 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/maximum",keyword:"maximum",params:{comparison: "<=", limit: 500}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(data4 < 2 || isNaN(data4)){
const err5 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/minimum",keyword:"minimum",params:{comparison: ">=", limit: 2}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
if(data.layout !== undefined){
let data5 = data.layout;
if(typeof data5 !== "string"){
const err6 = {instancePath:instancePath+"/layout",schemaPath:"#/properties/layout/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
if(!((data5 === "even") || (data5 === "fixed"))){
const err7 = {instancePath:instancePath+"/layout",schemaPath:"#/properties/layout/enum",keyword:"enum",params:{allowedValues: schema108.properties.layout.enum}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data.seat !== undefined){
if(!(validate486(data.seat, {instancePath:instancePath+"/seat",parentData:data,parentDataProperty:"seat",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate486.errors : vErrors.concat(validate486.errors);
errors = vErrors.length;
}
}
if(data.head !== undefined){
let data7 = data.head;
if(data7 && typeof data7 == "object" && !Array.isArray(data7)){
if(data7.kind === undefined){
const err8 = {instancePath:instancePath+"/head",schemaPath:"#/properties/head/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
for(const key1 in data7){
if(!((((((key1 === "kind") || (key1 === "into")) || (key1 === "housing")) || (key1 === "rule")) || (key1 === "fasten")) || (key1 === "pegs"))){
const err9 = {instancePath:instancePath+"/head",schemaPath:"#/properties/head/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data7.kind !== undefined){
let data8 = data7.kind;
if(typeof data8 !== "string"){
const err10 = {instancePath:instancePath+"/head/kind",schemaPath:"#/properties/head/properties/kind/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
if(!((((data8 === "housed") || (data8 === "birds-mouth")) || (data8 === "bridle")) || (data8 === "lapped"))){
const err11 = {instancePath:instancePath+"/head/kind",schemaPath:"#/properties/head/properties/kind/enum",keyword:"enum",params:{allowedValues: schema108.properties.head.properties.kind.enum}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
if(data7.into !== undefined){
if(typeof data7.into !== "string"){
const err12 = {instancePath:instancePath+"/head/into",schemaPath:"#/properties/head/properties/into/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data7.housing !== undefined){
let data10 = data7.housing;
if((typeof data10 !== "string") && (!((typeof data10 == "number") && (isFinite(data10))))){
const err13 = {instancePath:instancePath+"/head/housing",schemaPath:"#/properties/head/properties/housing/type",keyword:"type",params:{type: schema108.properties.head.properties.housing.type}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data7.rule !== undefined){
if(!(validate330(data7.rule, {instancePath:instancePath+"/head/rule",parentData:data7,parentDataProperty:"rule",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate330.errors : vErrors.concat(validate330.errors);
errors = vErrors.length;
}
}
if(data7.fasten !== undefined){
if(!(validate243(data7.fasten, {instancePath:instancePath+"/head/fasten",parentData:data7,parentDataProperty:"fasten",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate243.errors : vErrors.concat(validate243.errors);
errors = vErrors.length;
}
}
if(data7.pegs !== undefined){
if(!(validate357(data7.pegs, {instancePath:instancePath+"/head/pegs",parentData:data7,parentDataProperty:"pegs",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate357.errors : vErrors.concat(validate357.errors);
errors = vErrors.length;
}
}
}
else {
const err14 = {instancePath:instancePath+"/head",schemaPath:"#/properties/head/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data.overhang !== undefined){
let data14 = data.overhang;
if(data14 && typeof data14 == "object" && !Array.isArray(data14)){
for(const key2 in data14){
if(!(((key2 === "eave") || (key2 === "rake")) || (key2 === "high"))){
const err15 = {instancePath:instancePath+"/overhang",schemaPath:"#/properties/overhang/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key2}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data14.eave !== undefined){
let data15 = data14.eave;
if((typeof data15 !== "string") && (!((typeof data15 == "number") && (isFinite(data15))))){
const err16 = {instancePath:instancePath+"/overhang/eave",schemaPath:"#/properties/overhang/properties/eave/type",keyword:"type",params:{type: schema108.properties.overhang.properties.eave.type}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data14.rake !== undefined){
let data16 = data14.rake;
if((typeof data16 !== "string") && (!((typeof data16 == "number") && (isFinite(data16))))){
const err17 = {instancePath:instancePath+"/overhang/rake",schemaPath:"#/properties/overhang/properties/rake/type",keyword:"type",params:{type: schema108.properties.overhang.properties.rake.type}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data14.high !== undefined){
let data17 = data14.high;
if((typeof data17 !== "string") && (!((typeof data17 == "number") && (isFinite(data17))))){
const err18 = {instancePath:instancePath+"/overhang/high",schemaPath:"#/properties/overhang/properties/high/type",keyword:"type",params:{type: schema108.properties.overhang.properties.high.type}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
}
}
else {
const err19 = {instancePath:instancePath+"/overhang",schemaPath:"#/properties/overhang/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data.fasten !== undefined){
if(!(validate243(data.fasten, {instancePath:instancePath+"/fasten",parentData:data,parentDataProperty:"fasten",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate243.errors : vErrors.concat(validate243.errors);
errors = vErrors.length;
}
}
}
else {
const err20 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
validate482.errors = vErrors;
return errors === 0;
}
validate482.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema112 = {"description":"What lies on the rafters.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"boards across the rafters, structural panels, or purlins with gaps between.","type":"string","enum":["boards","panels","purlins"],"examples":["boards"]},"thickness":{"description":"How thick it is.","type":["string","number"],"x-quantity":"length","examples":["1 in"]},"spacing":{"description":"Of purlins, from center to center.","type":["string","number"],"x-quantity":"length","examples":["24 in"]},"laid":{"description":"How boards lie: straight across the rafters, or diagonally at 45°. Diagonal boards, like structural panels, brace the plane of the roof.","type":"string","enum":["across","diagonal"],"default":"across","x-default-source":"common practice","examples":["diagonal"]}},"required":["kind"],"examples":["{kind: boards, thickness: 1 in}"]};

function validate501(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate501.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!((((key0 === "kind") || (key0 === "thickness")) || (key0 === "spacing")) || (key0 === "laid"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.kind !== undefined){
let data0 = data.kind;
if(typeof data0 !== "string"){
const err2 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(!(((data0 === "boards") || (data0 === "panels")) || (data0 === "purlins"))){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/enum",keyword:"enum",params:{allowedValues: schema112.properties.kind.enum}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.thickness !== undefined){
let data1 = data.thickness;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err4 = {instancePath:instancePath+"/thickness",schemaPath:"#/properties/thickness/type",keyword:"type",params:{type: schema112.properties.thickness.type}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.spacing !== undefined){
let data2 = data.spacing;
if((typeof data2 !== "string") && (!((typeof data2 == "number") && (isFinite(data2))))){
const err5 = {instancePath:instancePath+"/spacing",schemaPath:"#/properties/spacing/type",keyword:"type",params:{type: schema112.properties.spacing.type}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.laid !== undefined){
let data3 = data.laid;
if(typeof data3 !== "string"){
const err6 = {instancePath:instancePath+"/laid",schemaPath:"#/properties/laid/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
if(!((data3 === "across") || (data3 === "diagonal"))){
const err7 = {instancePath:instancePath+"/laid",schemaPath:"#/properties/laid/enum",keyword:"enum",params:{allowedValues: schema112.properties.laid.enum}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
}
else {
const err8 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
validate501.errors = vErrors;
return errors === 0;
}
validate501.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema113 = {"description":"What keeps the rain out.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Which covering it is.","type":"string","enum":["standing-seam","ribbed-steel","corrugated-steel","asphalt-shingles","wood-shingles","wood-shakes","slate","clay-tile","roll-roofing"],"examples":["standing-seam"]},"coverage":{"description":"The width that one sheet covers.","type":["string","number"],"x-quantity":"length","examples":["16 in","36 in"]},"weight":{"description":"Its weight on the slope, where yours differs from the usual one.","type":["string","number"],"x-quantity":"pressure","examples":["1.5 psf"]}},"required":["kind"],"examples":["{kind: standing-seam, coverage: 16 in}"]};

function validate503(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate503.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!(((key0 === "kind") || (key0 === "coverage")) || (key0 === "weight"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.kind !== undefined){
let data0 = data.kind;
if(typeof data0 !== "string"){
const err2 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(!(((((((((data0 === "standing-seam") || (data0 === "ribbed-steel")) || (data0 === "corrugated-steel")) || (data0 === "asphalt-shingles")) || (data0 === "wood-shingles")) || (data0 === "wood-shakes")) || (data0 === "slate")) || (data0 === "clay-tile")) || (data0 === "roll-roofing"))){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/enum",keyword:"enum",params:{allowedValues: schema113.properties.kind.enum}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.coverage !== undefined){
let data1 = data.coverage;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err4 = {instancePath:instancePath+"/coverage",schemaPath:"#/properties/coverage/type",keyword:"type",params:{type: schema113.properties.coverage.type}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.weight !== undefined){
let data2 = data.weight;
if((typeof data2 !== "string") && (!((typeof data2 == "number") && (isFinite(data2))))){
const err5 = {instancePath:instancePath+"/weight",schemaPath:"#/properties/weight/type",keyword:"type",params:{type: schema113.properties.weight.type}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate503.errors = vErrors;
return errors === 0;
}
validate503.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema114 = {"description":"What lines the rafters below: it hangs on them, and decides how far they may bend. Without it, a roof over a heated or cooled room counts as lined with something other than plaster, any other as bare.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"Plaster, which cracks first; plasterboard (gypsum board); boards; or none, where rafters and deck stay bare.","type":"string","enum":["plaster","plasterboard","boards","none"],"examples":["boards"]},"weight":{"description":"Its weight on the slope, with what lies on it, where yours differs from the usual one.","type":["string","number"],"x-quantity":"pressure","examples":["4 psf"]}},"required":["kind"],"examples":["{kind: boards}"]};

function validate505(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate505.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!((key0 === "kind") || (key0 === "weight"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.kind !== undefined){
let data0 = data.kind;
if(typeof data0 !== "string"){
const err2 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(!((((data0 === "plaster") || (data0 === "plasterboard")) || (data0 === "boards")) || (data0 === "none"))){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/enum",keyword:"enum",params:{allowedValues: schema114.properties.kind.enum}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.weight !== undefined){
let data1 = data.weight;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err4 = {instancePath:instancePath+"/weight",schemaPath:"#/properties/weight/type",keyword:"type",params:{type: schema114.properties.weight.type}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate505.errors = vErrors;
return errors === 0;
}
validate505.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate479(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate479.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.pitch === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "pitch"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((((((key0 === "kind") || (key0 === "pitch")) || (key0 === "rafters")) || (key0 === "deck")) || (key0 === "covering")) || (key0 === "ceiling"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("gable" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "gable"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.pitch !== undefined){
if(!(validate480(data.pitch, {instancePath:instancePath+"/pitch",parentData:data,parentDataProperty:"pitch",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate480.errors : vErrors.concat(validate480.errors);
errors = vErrors.length;
}
}
if(data.rafters !== undefined){
if(!(validate482(data.rafters, {instancePath:instancePath+"/rafters",parentData:data,parentDataProperty:"rafters",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate482.errors : vErrors.concat(validate482.errors);
errors = vErrors.length;
}
}
if(data.deck !== undefined){
if(!(validate501(data.deck, {instancePath:instancePath+"/deck",parentData:data,parentDataProperty:"deck",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate501.errors : vErrors.concat(validate501.errors);
errors = vErrors.length;
}
}
if(data.covering !== undefined){
if(!(validate503(data.covering, {instancePath:instancePath+"/covering",parentData:data,parentDataProperty:"covering",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate503.errors : vErrors.concat(validate503.errors);
errors = vErrors.length;
}
}
if(data.ceiling !== undefined){
if(!(validate505(data.ceiling, {instancePath:instancePath+"/ceiling",parentData:data,parentDataProperty:"ceiling",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate505.errors : vErrors.concat(validate505.errors);
errors = vErrors.length;
}
}
}
else {
const err4 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
validate479.errors = vErrors;
return errors === 0;
}
validate479.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema115 = {"description":"One slope, from a high wall to a low one.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"One slope, from a high wall to a low one.","const":"shed","examples":["shed"]},"pitch":{"$ref":"#/$defs/pitch"},"high":{"description":"The wall whose plate is higher.","type":"string","pattern":"^[A-Z]$","x-ref":["wall"],"examples":["A"]},"rafters":{"$ref":"#/$defs/rafters"},"deck":{"$ref":"#/$defs/deck"},"covering":{"$ref":"#/$defs/covering"},"ceiling":{"$ref":"#/$defs/ceiling"}},"required":["kind","high"]};

function validate507(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate507.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.high === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "high"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(((((((key0 === "kind") || (key0 === "pitch")) || (key0 === "high")) || (key0 === "rafters")) || (key0 === "deck")) || (key0 === "covering")) || (key0 === "ceiling"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("shed" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "shed"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.pitch !== undefined){
if(!(validate480(data.pitch, {instancePath:instancePath+"/pitch",parentData:data,parentDataProperty:"pitch",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate480.errors : vErrors.concat(validate480.errors);
errors = vErrors.length;
}
}
if(data.high !== undefined){
let data2 = data.high;
if(typeof data2 === "string"){
if(!pattern6.test(data2)){
const err4 = {instancePath:instancePath+"/high",schemaPath:"#/properties/high/pattern",keyword:"pattern",params:{pattern: "^[A-Z]$"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
else {
const err5 = {instancePath:instancePath+"/high",schemaPath:"#/properties/high/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
if(data.rafters !== undefined){
if(!(validate482(data.rafters, {instancePath:instancePath+"/rafters",parentData:data,parentDataProperty:"rafters",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate482.errors : vErrors.concat(validate482.errors);
errors = vErrors.length;
}
}
if(data.deck !== undefined){
if(!(validate501(data.deck, {instancePath:instancePath+"/deck",parentData:data,parentDataProperty:"deck",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate501.errors : vErrors.concat(validate501.errors);
errors = vErrors.length;
}
}
if(data.covering !== undefined){
if(!(validate503(data.covering, {instancePath:instancePath+"/covering",parentData:data,parentDataProperty:"covering",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate503.errors : vErrors.concat(validate503.errors);
errors = vErrors.length;
}
}
if(data.ceiling !== undefined){
if(!(validate505(data.ceiling, {instancePath:instancePath+"/ceiling",parentData:data,parentDataProperty:"ceiling",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate505.errors : vErrors.concat(validate505.errors);
errors = vErrors.length;
}
}
}
else {
const err6 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
validate507.errors = vErrors;
return errors === 0;
}
validate507.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema116 = {"description":"A pier under a post or a beam.","type":"object","required":["kind"],"discriminator":{"propertyName":"kind"},"oneOf":[{"$ref":"#/$defs/pier-tube"},{"$ref":"#/$defs/pier-pad"}]};
const schema117 = {"description":"A round concrete pier cast in a tube.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A round concrete pier cast in a tube.","const":"tube","examples":["tube"]},"diameter":{"description":"Inside diameter of the tube.","type":["string","number"],"x-quantity":"length","examples":["16 in"]},"under":{"$ref":"#/$defs/under"},"at":{"$ref":"#/$defs/places"},"depth":{"$ref":"#/$defs/pierDepth"},"top":{"$ref":"#/$defs/height","description":"The height of its top: a level or a length above the datum.","examples":["pier-top"]},"lateral":{"$ref":"#/$defs/lateral"},"anchor":{"$ref":"#/$defs/anchor"},"rebar":{"$ref":"#/$defs/rebar"},"footing":{"description":"A wider footing below.","type":"object","additionalProperties":false,"properties":{"diameter":{"description":"How wide it is.","type":["string","number"],"x-quantity":"length","examples":["24 in"]},"thickness":{"description":"How thick it is.","type":["string","number"],"x-quantity":"length","examples":["12 in"]}},"required":["diameter","thickness"],"examples":["{diameter: 24 in, thickness: 12 in}"]}},"required":["kind","diameter"]};
const schema118 = {"description":"The timber it carries: an entry, a kind or a single stick, or a list of them. Without it: the one that lies at its `top`, if any.","type":["string","array"],"items":{"description":"One of the timbers.","type":"string","x-ref":["member","stick","kind"],"examples":["post"]},"minItems":1,"x-ref":["member","stick","kind"],"examples":["post"]};

function validate517(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate517.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!(Array.isArray(data)))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema118.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(Array.isArray(data)){
if(data.length < 1){
const err1 = {instancePath,schemaPath:"#/minItems",keyword:"minItems",params:{limit: 1}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
const len0 = data.length;
for(let i0=0; i0<len0; i0++){
if(typeof data[i0] !== "string"){
const err2 = {instancePath:instancePath+"/" + i0,schemaPath:"#/items/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
}
validate517.errors = vErrors;
return errors === 0;
}
validate517.evaluated = {"items":true,"dynamicProps":false,"dynamicItems":false};

const schema119 = {"description":"From the lowest ground that touches it to its own bottom; a footing lies below that.","type":["string","number"],"x-quantity":"length","examples":["50 in"]};

function validate520(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate520.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if((typeof data !== "string") && (!((typeof data == "number") && (isFinite(data))))){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: schema119.type}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
validate520.errors = vErrors;
return errors === 0;
}
validate520.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema120 = {"description":"Soil resistance sideways: the tabled value, or the doubled one where half an inch of movement at the ground does no harm (IBC 1806.3.4).","type":"string","enum":["single","doubled"],"examples":["single"],"default":"single","x-default-source":"common practice"};

function validate523(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate523.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(typeof data !== "string"){
const err0 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(!((data === "single") || (data === "doubled"))){
const err1 = {instancePath,schemaPath:"#/enum",keyword:"enum",params:{allowedValues: schema120.enum}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
validate523.errors = vErrors;
return errors === 0;
}
validate523.evaluated = {"dynamicProps":false,"dynamicItems":false};

const schema121 = {"description":"What ties the post to the pier.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A strap cast into the concrete, a post base bolted to it, or a dowel.","type":"string","enum":["embedded-strap","post-base","dowel"],"examples":["embedded-strap"]},"stand-off":{"description":"The gap between concrete and end grain.","type":["string","number"],"x-quantity":"length","examples":["1 in"]},"runs":{"description":"Which way the bolts run through the post: along the wall or along the bent. The straps lie on the faces where they come out.","type":"string","enum":["along-wall","along-bent"],"examples":["along-wall"],"default":"along-bent","x-default-source":"common practice"},"strap":{"description":"The steel that stands up beside the post or inside it.","type":"object","additionalProperties":false,"properties":{"place":{"description":"On both faces, on one, or as a knife plate in a kerf in the middle.","type":"string","enum":["both-faces","one-face","in-kerf"],"examples":["in-kerf"],"default":"both-faces","x-default-source":"common practice"},"thickness":{"description":"How thick the steel is.","type":["string","number"],"x-quantity":"length","examples":["3/16 in"]},"width":{"description":"How wide it is.","type":["string","number"],"x-quantity":"length","examples":["2 1/2 in"]},"height":{"description":"From the end of the post up to the top of the steel.","type":["string","number"],"x-quantity":"length","examples":["8 in"]},"let-in":{"description":"How deep each strap is let into the face of the post, so that it fits between them.","type":["string","number"],"x-quantity":"length","examples":["3/16 in"]}},"required":["thickness","width"],"examples":["{thickness: 3/16 in, width: 2 1/2 in, height: 8 in}"]},"bolts":{"description":"The bolts through steel and post, one above the other. Under a lying timber they are not judged.","type":"object","additionalProperties":false,"properties":{"count":{"description":"How many.","type":"integer","minimum":1,"maximum":8,"examples":[2]},"diameter":{"description":"How thick they are.","type":["string","number"],"x-quantity":"length","examples":["1/2 in"]},"up":{"description":"From the end of the post up to the center of the lowest. Without it: 7 diameters (NDS Table 12.5.1A, tension along the grain of softwood).","type":["string","number"],"x-quantity":"length","examples":["4 in"]},"spacing":{"description":"From center to center along the grain. Without it: 5 diameters (NDS Table 12.5.1D).","type":["string","number"],"x-quantity":"length","examples":["3 in"]}},"required":["count","diameter"],"examples":["{count: 2, diameter: 1/2 in}"]},"screws":{"description":"The screws through each strap into the post, one above the other. Where there are bolts too, only the bolts count. Under a lying timber they are not judged.","type":"object","additionalProperties":false,"properties":{"count":{"description":"How many through each strap.","type":"integer","minimum":1,"maximum":24,"examples":[3]},"diameter":{"description":"How thick they are.","type":["string","number"],"x-quantity":"length","examples":["1/4 in"]},"length":{"description":"How long they are, under the head.","type":["string","number"],"x-quantity":"length","examples":["3 in"]},"up":{"description":"From the end of the post up to the center of the lowest. Without it: 7 diameters (NDS Table 12.5.1A, tension along the grain of softwood).","type":["string","number"],"x-quantity":"length","examples":["4 in"]},"spacing":{"description":"From center to center along the grain. Without it: 5 diameters (NDS Table 12.5.1D).","type":["string","number"],"x-quantity":"length","examples":["2 in"]}},"required":["count","diameter","length"],"examples":["{count: 3, diameter: 1/4 in, length: 3 in}"]},"plate":{"description":"Side of the square plate that the end grain stands on. Without it: as large as the post, on straps that carry it over the stand-off; over a plate in a kerf the bolts carry the post.","type":["string","number"],"x-quantity":"length","examples":["5 in"]},"capacity":{"description":"What the anchor holds at the foot of a post by its maker’s sheet or by an engineer, each way alone. It goes before what is reckoned here.","type":"object","additionalProperties":false,"properties":{"down":{"description":"What presses down.","type":["string","number"],"x-quantity":"force","examples":["9000 lb"]},"uplift":{"description":"What lifts.","type":["string","number"],"x-quantity":"force","examples":["2400 lb"]},"sideways":{"description":"What pushes sideways as a whole, whichever way it goes: the figure of the weaker way.","type":["string","number"],"x-quantity":"force","examples":["900 lb"]},"because":{"description":"Where the figures come from.","type":"string","pattern":"\\S","examples":["the maker’s sheet, post 8x8, May 2027"]}},"required":["because"],"examples":["{uplift: 2400 lb, sideways: 900 lb, because: the maker’s sheet}"]}},"required":["kind"],"examples":["{kind: embedded-strap, stand-off: 1 in}"]};

function validate525(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate525.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
for(const key0 in data){
if(!((((((((key0 === "kind") || (key0 === "stand-off")) || (key0 === "runs")) || (key0 === "strap")) || (key0 === "bolts")) || (key0 === "screws")) || (key0 === "plate")) || (key0 === "capacity"))){
const err1 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
if(data.kind !== undefined){
let data0 = data.kind;
if(typeof data0 !== "string"){
const err2 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
if(!(((data0 === "embedded-strap") || (data0 === "post-base")) || (data0 === "dowel"))){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/enum",keyword:"enum",params:{allowedValues: schema121.properties.kind.enum}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data["stand-off"] !== undefined){
let data1 = data["stand-off"];
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err4 = {instancePath:instancePath+"/stand-off",schemaPath:"#/properties/stand-off/type",keyword:"type",params:{type: schema121.properties["stand-off"].type}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.runs !== undefined){
let data2 = data.runs;
if(typeof data2 !== "string"){
const err5 = {instancePath:instancePath+"/runs",schemaPath:"#/properties/runs/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
if(!((data2 === "along-wall") || (data2 === "along-bent"))){
const err6 = {instancePath:instancePath+"/runs",schemaPath:"#/properties/runs/enum",keyword:"enum",params:{allowedValues: schema121.properties.runs.enum}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.strap !== undefined){
let data3 = data.strap;
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
if(data3.thickness === undefined){
const err7 = {instancePath:instancePath+"/strap",schemaPath:"#/properties/strap/required",keyword:"required",params:{missingProperty: "thickness"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
if(data3.width === undefined){
const err8 = {instancePath:instancePath+"/strap",schemaPath:"#/properties/strap/required",keyword:"required",params:{missingProperty: "width"}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
for(const key1 in data3){
if(!(((((key1 === "place") || (key1 === "thickness")) || (key1 === "width")) || (key1 === "height")) || (key1 === "let-in"))){
const err9 = {instancePath:instancePath+"/strap",schemaPath:"#/properties/strap/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data3.place !== undefined){
let data4 = data3.place;
if(typeof data4 !== "string"){
const err10 = {instancePath:instancePath+"/strap/place",schemaPath:"#/properties/strap/properties/place/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
if(!(((data4 === "both-faces") || (data4 === "one-face")) || (data4 === "in-kerf"))){
const err11 = {instancePath:instancePath+"/strap/place",schemaPath:"#/properties/strap/properties/place/enum",keyword:"enum",params:{allowedValues: schema121.properties.strap.properties.place.enum}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
if(data3.thickness !== undefined){
let data5 = data3.thickness;
if((typeof data5 !== "string") && (!((typeof data5 == "number") && (isFinite(data5))))){
const err12 = {instancePath:instancePath+"/strap/thickness",schemaPath:"#/properties/strap/properties/thickness/type",keyword:"type",params:{type: schema121.properties.strap.properties.thickness.type}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
}
if(data3.width !== undefined){
let data6 = data3.width;
if((typeof data6 !== "string") && (!((typeof data6 == "number") && (isFinite(data6))))){
const err13 = {instancePath:instancePath+"/strap/width",schemaPath:"#/properties/strap/properties/width/type",keyword:"type",params:{type: schema121.properties.strap.properties.width.type}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
if(data3.height !== undefined){
let data7 = data3.height;
if((typeof data7 !== "string") && (!((typeof data7 == "number") && (isFinite(data7))))){
const err14 = {instancePath:instancePath+"/strap/height",schemaPath:"#/properties/strap/properties/height/type",keyword:"type",params:{type: schema121.properties.strap.properties.height.type}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data3["let-in"] !== undefined){
let data8 = data3["let-in"];
if((typeof data8 !== "string") && (!((typeof data8 == "number") && (isFinite(data8))))){
const err15 = {instancePath:instancePath+"/strap/let-in",schemaPath:"#/properties/strap/properties/let-in/type",keyword:"type",params:{type: schema121.properties.strap.properties["let-in"].type}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
}
else {
const err16 = {instancePath:instancePath+"/strap",schemaPath:"#/properties/strap/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data.bolts !== undefined){
let data9 = data.bolts;
if(data9 && typeof data9 == "object" && !Array.isArray(data9)){
if(data9.count === undefined){
const err17 = {instancePath:instancePath+"/bolts",schemaPath:"#/properties/bolts/required",keyword:"required",params:{missingProperty: "count"}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
if(data9.diameter === undefined){
const err18 = {instancePath:instancePath+"/bolts",schemaPath:"#/properties/bolts/required",keyword:"required",params:{missingProperty: "diameter"}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
for(const key2 in data9){
if(!((((key2 === "count") || (key2 === "diameter")) || (key2 === "up")) || (key2 === "spacing"))){
const err19 = {instancePath:instancePath+"/bolts",schemaPath:"#/properties/bolts/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key2}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data9.count !== undefined){
let data10 = data9.count;
if(!(((typeof data10 == "number") && (!(data10 % 1) && !isNaN(data10))) && (isFinite(data10)))){
const err20 = {instancePath:instancePath+"/bolts/count",schemaPath:"#/properties/bolts/properties/count/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
if((typeof data10 == "number") && (isFinite(data10))){
if(data10 > 8 || isNaN(data10)){
const err21 = {instancePath:instancePath+"/bolts/count",schemaPath:"#/properties/bolts/properties/count/maximum",keyword:"maximum",params:{comparison: "<=", limit: 8}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
if(data10 < 1 || isNaN(data10)){
const err22 = {instancePath:instancePath+"/bolts/count",schemaPath:"#/properties/bolts/properties/count/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
}
}
if(data9.diameter !== undefined){
let data11 = data9.diameter;
if((typeof data11 !== "string") && (!((typeof data11 == "number") && (isFinite(data11))))){
const err23 = {instancePath:instancePath+"/bolts/diameter",schemaPath:"#/properties/bolts/properties/diameter/type",keyword:"type",params:{type: schema121.properties.bolts.properties.diameter.type}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
}
if(data9.up !== undefined){
let data12 = data9.up;
if((typeof data12 !== "string") && (!((typeof data12 == "number") && (isFinite(data12))))){
const err24 = {instancePath:instancePath+"/bolts/up",schemaPath:"#/properties/bolts/properties/up/type",keyword:"type",params:{type: schema121.properties.bolts.properties.up.type}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
}
if(data9.spacing !== undefined){
let data13 = data9.spacing;
if((typeof data13 !== "string") && (!((typeof data13 == "number") && (isFinite(data13))))){
const err25 = {instancePath:instancePath+"/bolts/spacing",schemaPath:"#/properties/bolts/properties/spacing/type",keyword:"type",params:{type: schema121.properties.bolts.properties.spacing.type}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
}
else {
const err26 = {instancePath:instancePath+"/bolts",schemaPath:"#/properties/bolts/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
}
if(data.screws !== undefined){
let data14 = data.screws;
if(data14 && typeof data14 == "object" && !Array.isArray(data14)){
if(data14.count === undefined){
const err27 = {instancePath:instancePath+"/screws",schemaPath:"#/properties/screws/required",keyword:"required",params:{missingProperty: "count"}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
if(data14.diameter === undefined){
const err28 = {instancePath:instancePath+"/screws",schemaPath:"#/properties/screws/required",keyword:"required",params:{missingProperty: "diameter"}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
if(data14.length === undefined){
const err29 = {instancePath:instancePath+"/screws",schemaPath:"#/properties/screws/required",keyword:"required",params:{missingProperty: "length"}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
for(const key3 in data14){
if(!(((((key3 === "count") || (key3 === "diameter")) || (key3 === "length")) || (key3 === "up")) || (key3 === "spacing"))){
const err30 = {instancePath:instancePath+"/screws",schemaPath:"#/properties/screws/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key3}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
}
if(data14.count !== undefined){
let data15 = data14.count;
if(!(((typeof data15 == "number") && (!(data15 % 1) && !isNaN(data15))) && (isFinite(data15)))){
const err31 = {instancePath:instancePath+"/screws/count",schemaPath:"#/properties/screws/properties/count/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
if((typeof data15 == "number") && (isFinite(data15))){
if(data15 > 24 || isNaN(data15)){
const err32 = {instancePath:instancePath+"/screws/count",schemaPath:"#/properties/screws/properties/count/maximum",keyword:"maximum",params:{comparison: "<=", limit: 24}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
if(data15 < 1 || isNaN(data15)){
const err33 = {instancePath:instancePath+"/screws/count",schemaPath:"#/properties/screws/properties/count/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1}};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
}
}
if(data14.diameter !== undefined){
let data16 = data14.diameter;
if((typeof data16 !== "string") && (!((typeof data16 == "number") && (isFinite(data16))))){
const err34 = {instancePath:instancePath+"/screws/diameter",schemaPath:"#/properties/screws/properties/diameter/type",keyword:"type",params:{type: schema121.properties.screws.properties.diameter.type}};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
}
if(data14.length !== undefined){
let data17 = data14.length;
if((typeof data17 !== "string") && (!((typeof data17 == "number") && (isFinite(data17))))){
const err35 = {instancePath:instancePath+"/screws/length",schemaPath:"#/properties/screws/properties/length/type",keyword:"type",params:{type: schema121.properties.screws.properties.length.type}};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
if(data14.up !== undefined){
let data18 = data14.up;
if((typeof data18 !== "string") && (!((typeof data18 == "number") && (isFinite(data18))))){
const err36 = {instancePath:instancePath+"/screws/up",schemaPath:"#/properties/screws/properties/up/type",keyword:"type",params:{type: schema121.properties.screws.properties.up.type}};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
}
if(data14.spacing !== undefined){
let data19 = data14.spacing;
if((typeof data19 !== "string") && (!((typeof data19 == "number") && (isFinite(data19))))){
const err37 = {instancePath:instancePath+"/screws/spacing",schemaPath:"#/properties/screws/properties/spacing/type",keyword:"type",params:{type: schema121.properties.screws.properties.spacing.type}};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
}
else {
const err38 = {instancePath:instancePath+"/screws",schemaPath:"#/properties/screws/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
}
if(data.plate !== undefined){
let data20 = data.plate;
if((typeof data20 !== "string") && (!((typeof data20 == "number") && (isFinite(data20))))){
const err39 = {instancePath:instancePath+"/plate",schemaPath:"#/properties/plate/type",keyword:"type",params:{type: schema121.properties.plate.type}};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
}
if(data.capacity !== undefined){
let data21 = data.capacity;
if(data21 && typeof data21 == "object" && !Array.isArray(data21)){
if(data21.because === undefined){
const err40 = {instancePath:instancePath+"/capacity",schemaPath:"#/properties/capacity/required",keyword:"required",params:{missingProperty: "because"}};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
for(const key4 in data21){
if(!((((key4 === "down") || (key4 === "uplift")) || (key4 === "sideways")) || (key4 === "because"))){
const err41 = {instancePath:instancePath+"/capacity",schemaPath:"#/properties/capacity/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key4}};
if(vErrors === null){
vErrors = [err41];
}
else {
vErrors.push(err41);
}
errors++;
}
}
if(data21.down !== undefined){
let data22 = data21.down;
if((typeof data22 !== "string") && (!((typeof data22 == "number") && (isFinite(data22))))){
const err42 = {instancePath:instancePath+"/capacity/down",schemaPath:"#/properties/capacity/properties/down/type",keyword:"type",params:{type: schema121.properties.capacity.properties.down.type}};
if(vErrors === null){
vErrors = [err42];
}
else {
vErrors.push(err42);
}
errors++;
}
}
if(data21.uplift !== undefined){
let data23 = data21.uplift;
if((typeof data23 !== "string") && (!((typeof data23 == "number") && (isFinite(data23))))){
const err43 = {instancePath:instancePath+"/capacity/uplift",schemaPath:"#/properties/capacity/properties/uplift/type",keyword:"type",params:{type: schema121.properties.capacity.properties.uplift.type}};
if(vErrors === null){
vErrors = [err43];
}
else {
vErrors.push(err43);
}
errors++;
}
}
if(data21.sideways !== undefined){
let data24 = data21.sideways;
if((typeof data24 !== "string") && (!((typeof data24 == "number") && (isFinite(data24))))){
const err44 = {instancePath:instancePath+"/capacity/sideways",schemaPath:"#/properties/capacity/properties/sideways/type",keyword:"type",params:{type: schema121.properties.capacity.properties.sideways.type}};
if(vErrors === null){
vErrors = [err44];
}
else {
vErrors.push(err44);
}
errors++;
}
}
if(data21.because !== undefined){
let data25 = data21.because;
if(typeof data25 === "string"){
if(!pattern23.test(data25)){
const err45 = {instancePath:instancePath+"/capacity/because",schemaPath:"#/properties/capacity/properties/because/pattern",keyword:"pattern",params:{pattern: "\\S"}};
if(vErrors === null){
vErrors = [err45];
}
else {
vErrors.push(err45);
}
errors++;
}
}
else {
const err46 = {instancePath:instancePath+"/capacity/because",schemaPath:"#/properties/capacity/properties/because/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err46];
}
else {
vErrors.push(err46);
}
errors++;
}
}
}
else {
const err47 = {instancePath:instancePath+"/capacity",schemaPath:"#/properties/capacity/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err47];
}
else {
vErrors.push(err47);
}
errors++;
}
}
}
else {
const err48 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err48];
}
else {
vErrors.push(err48);
}
errors++;
}
validate525.errors = vErrors;
return errors === 0;
}
validate525.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema122 = {"description":"Upright bars in the pier.","type":"object","additionalProperties":false,"properties":{"count":{"description":"How many bars stand in the pier.","type":"integer","minimum":1,"maximum":24,"examples":[3]},"size":{"description":"Bar number, in eighths of an inch.","type":"integer","minimum":3,"examples":[4],"maximum":11}},"required":["count","size"],"examples":["{count: 3, size: 4}"]};

function validate527(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate527.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.count === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "count"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.size === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "size"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!((key0 === "count") || (key0 === "size"))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.count !== undefined){
let data0 = data.count;
if(!(((typeof data0 == "number") && (!(data0 % 1) && !isNaN(data0))) && (isFinite(data0)))){
const err3 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
if((typeof data0 == "number") && (isFinite(data0))){
if(data0 > 24 || isNaN(data0)){
const err4 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/maximum",keyword:"maximum",params:{comparison: "<=", limit: 24}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
if(data0 < 1 || isNaN(data0)){
const err5 = {instancePath:instancePath+"/count",schemaPath:"#/properties/count/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
}
}
if(data.size !== undefined){
let data1 = data.size;
if(!(((typeof data1 == "number") && (!(data1 % 1) && !isNaN(data1))) && (isFinite(data1)))){
const err6 = {instancePath:instancePath+"/size",schemaPath:"#/properties/size/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
if((typeof data1 == "number") && (isFinite(data1))){
if(data1 > 11 || isNaN(data1)){
const err7 = {instancePath:instancePath+"/size",schemaPath:"#/properties/size/maximum",keyword:"maximum",params:{comparison: "<=", limit: 11}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
if(data1 < 3 || isNaN(data1)){
const err8 = {instancePath:instancePath+"/size",schemaPath:"#/properties/size/minimum",keyword:"minimum",params:{comparison: ">=", limit: 3}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
}
}
else {
const err9 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
validate527.errors = vErrors;
return errors === 0;
}
validate527.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate516(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate516.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.diameter === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "diameter"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema117.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("tube" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "tube"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.diameter !== undefined){
let data1 = data.diameter;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err4 = {instancePath:instancePath+"/diameter",schemaPath:"#/properties/diameter/type",keyword:"type",params:{type: schema117.properties.diameter.type}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.under !== undefined){
if(!(validate517(data.under, {instancePath:instancePath+"/under",parentData:data,parentDataProperty:"under",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate517.errors : vErrors.concat(validate517.errors);
errors = vErrors.length;
}
}
if(data.at !== undefined){
if(!(validate87(data.at, {instancePath:instancePath+"/at",parentData:data,parentDataProperty:"at",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate87.errors : vErrors.concat(validate87.errors);
errors = vErrors.length;
}
}
if(data.depth !== undefined){
if(!(validate520(data.depth, {instancePath:instancePath+"/depth",parentData:data,parentDataProperty:"depth",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate520.errors : vErrors.concat(validate520.errors);
errors = vErrors.length;
}
}
if(data.top !== undefined){
if(!(validate98(data.top, {instancePath:instancePath+"/top",parentData:data,parentDataProperty:"top",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.lateral !== undefined){
if(!(validate523(data.lateral, {instancePath:instancePath+"/lateral",parentData:data,parentDataProperty:"lateral",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate523.errors : vErrors.concat(validate523.errors);
errors = vErrors.length;
}
}
if(data.anchor !== undefined){
if(!(validate525(data.anchor, {instancePath:instancePath+"/anchor",parentData:data,parentDataProperty:"anchor",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate525.errors : vErrors.concat(validate525.errors);
errors = vErrors.length;
}
}
if(data.rebar !== undefined){
if(!(validate527(data.rebar, {instancePath:instancePath+"/rebar",parentData:data,parentDataProperty:"rebar",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate527.errors : vErrors.concat(validate527.errors);
errors = vErrors.length;
}
}
if(data.footing !== undefined){
let data9 = data.footing;
if(data9 && typeof data9 == "object" && !Array.isArray(data9)){
if(data9.diameter === undefined){
const err5 = {instancePath:instancePath+"/footing",schemaPath:"#/properties/footing/required",keyword:"required",params:{missingProperty: "diameter"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
if(data9.thickness === undefined){
const err6 = {instancePath:instancePath+"/footing",schemaPath:"#/properties/footing/required",keyword:"required",params:{missingProperty: "thickness"}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
for(const key1 in data9){
if(!((key1 === "diameter") || (key1 === "thickness"))){
const err7 = {instancePath:instancePath+"/footing",schemaPath:"#/properties/footing/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key1}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
}
if(data9.diameter !== undefined){
let data10 = data9.diameter;
if((typeof data10 !== "string") && (!((typeof data10 == "number") && (isFinite(data10))))){
const err8 = {instancePath:instancePath+"/footing/diameter",schemaPath:"#/properties/footing/properties/diameter/type",keyword:"type",params:{type: schema117.properties.footing.properties.diameter.type}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data9.thickness !== undefined){
let data11 = data9.thickness;
if((typeof data11 !== "string") && (!((typeof data11 == "number") && (isFinite(data11))))){
const err9 = {instancePath:instancePath+"/footing/thickness",schemaPath:"#/properties/footing/properties/thickness/type",keyword:"type",params:{type: schema117.properties.footing.properties.thickness.type}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
}
else {
const err10 = {instancePath:instancePath+"/footing",schemaPath:"#/properties/footing/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
}
}
else {
const err11 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
validate516.errors = vErrors;
return errors === 0;
}
validate516.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

const schema123 = {"description":"A square concrete pad.","type":"object","additionalProperties":false,"properties":{"kind":{"description":"A square concrete pad.","const":"pad","examples":["pad"]},"width":{"description":"The side of the square.","type":["string","number"],"x-quantity":"length","examples":["24 in"]},"under":{"$ref":"#/$defs/under"},"at":{"$ref":"#/$defs/places"},"depth":{"$ref":"#/$defs/pierDepth"},"top":{"$ref":"#/$defs/height","description":"The height of its top: a level or a length above the datum.","examples":["pier-top"]},"lateral":{"$ref":"#/$defs/lateral"},"anchor":{"$ref":"#/$defs/anchor"},"rebar":{"$ref":"#/$defs/rebar"}},"required":["kind","width"]};

function validate529(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate529.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.width === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "width"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema123.properties, key0))){
const err2 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
if(data.kind !== undefined){
if("pad" !== data.kind){
const err3 = {instancePath:instancePath+"/kind",schemaPath:"#/properties/kind/const",keyword:"const",params:{allowedValue: "pad"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.width !== undefined){
let data1 = data.width;
if((typeof data1 !== "string") && (!((typeof data1 == "number") && (isFinite(data1))))){
const err4 = {instancePath:instancePath+"/width",schemaPath:"#/properties/width/type",keyword:"type",params:{type: schema123.properties.width.type}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.under !== undefined){
if(!(validate517(data.under, {instancePath:instancePath+"/under",parentData:data,parentDataProperty:"under",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate517.errors : vErrors.concat(validate517.errors);
errors = vErrors.length;
}
}
if(data.at !== undefined){
if(!(validate87(data.at, {instancePath:instancePath+"/at",parentData:data,parentDataProperty:"at",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate87.errors : vErrors.concat(validate87.errors);
errors = vErrors.length;
}
}
if(data.depth !== undefined){
if(!(validate520(data.depth, {instancePath:instancePath+"/depth",parentData:data,parentDataProperty:"depth",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate520.errors : vErrors.concat(validate520.errors);
errors = vErrors.length;
}
}
if(data.top !== undefined){
if(!(validate98(data.top, {instancePath:instancePath+"/top",parentData:data,parentDataProperty:"top",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate98.errors : vErrors.concat(validate98.errors);
errors = vErrors.length;
}
}
if(data.lateral !== undefined){
if(!(validate523(data.lateral, {instancePath:instancePath+"/lateral",parentData:data,parentDataProperty:"lateral",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate523.errors : vErrors.concat(validate523.errors);
errors = vErrors.length;
}
}
if(data.anchor !== undefined){
if(!(validate525(data.anchor, {instancePath:instancePath+"/anchor",parentData:data,parentDataProperty:"anchor",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate525.errors : vErrors.concat(validate525.errors);
errors = vErrors.length;
}
}
if(data.rebar !== undefined){
if(!(validate527(data.rebar, {instancePath:instancePath+"/rebar",parentData:data,parentDataProperty:"rebar",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate527.errors : vErrors.concat(validate527.errors);
errors = vErrors.length;
}
}
}
else {
const err5 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
validate529.errors = vErrors;
return errors === 0;
}
validate529.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};


function validate515(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
let vErrors = null;
let errors = 0;
const evaluated0 = validate515.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.kind === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
const tag0 = data.kind;
if(typeof tag0 == "string"){
if(tag0 === "tube"){
if(!(validate516(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate516.errors : vErrors.concat(validate516.errors);
errors = vErrors.length;
}
var props0 = true;
}
else if(tag0 === "pad"){
if(!(validate529(data, {instancePath,parentData,parentDataProperty,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate529.errors : vErrors.concat(validate529.errors);
errors = vErrors.length;
}
if(props0 !== true){
props0 = true;
}
}
else {
const err1 = {instancePath,schemaPath:"#/discriminator",keyword:"discriminator",params:{error: "mapping", tag: "kind", tagValue: tag0}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
}
else {
const err2 = {instancePath,schemaPath:"#/discriminator",keyword:"discriminator",params:{error: "tag", tag: "kind", tagValue: tag0}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
}
else {
const err3 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
validate515.errors = vErrors;
evaluated0.props = props0;
return errors === 0;
}
validate515.evaluated = {"dynamicProps":true,"dynamicItems":false};


function validate52(data, {instancePath="", parentData, parentDataProperty, rootData=data, dynamicAnchors={}}={}){
/*# sourceURL="frame.schema.json" */;
let vErrors = null;
let errors = 0;
const evaluated0 = validate52.evaluated;
if(evaluated0.dynamicProps){
evaluated0.props = undefined;
}
if(evaluated0.dynamicItems){
evaluated0.items = undefined;
}
if(data && typeof data == "object" && !Array.isArray(data)){
if(data.grid === undefined){
const err0 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "grid"}};
if(vErrors === null){
vErrors = [err0];
}
else {
vErrors.push(err0);
}
errors++;
}
if(data.timber === undefined){
const err1 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "timber"}};
if(vErrors === null){
vErrors = [err1];
}
else {
vErrors.push(err1);
}
errors++;
}
if(data.members === undefined){
const err2 = {instancePath,schemaPath:"#/required",keyword:"required",params:{missingProperty: "members"}};
if(vErrors === null){
vErrors = [err2];
}
else {
vErrors.push(err2);
}
errors++;
}
for(const key0 in data){
if(!(func1.call(schema19.properties, key0))){
const err3 = {instancePath,schemaPath:"#/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key0}};
if(vErrors === null){
vErrors = [err3];
}
else {
vErrors.push(err3);
}
errors++;
}
}
if(data.frame !== undefined){
if(typeof data.frame !== "string"){
const err4 = {instancePath:instancePath+"/frame",schemaPath:"#/properties/frame/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err4];
}
else {
vErrors.push(err4);
}
errors++;
}
}
if(data.format !== undefined){
let data1 = data.format;
if(!(((typeof data1 == "number") && (!(data1 % 1) && !isNaN(data1))) && (isFinite(data1)))){
const err5 = {instancePath:instancePath+"/format",schemaPath:"#/properties/format/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err5];
}
else {
vErrors.push(err5);
}
errors++;
}
if(1 !== data1){
const err6 = {instancePath:instancePath+"/format",schemaPath:"#/properties/format/const",keyword:"const",params:{allowedValue: 1}};
if(vErrors === null){
vErrors = [err6];
}
else {
vErrors.push(err6);
}
errors++;
}
}
if(data.units !== undefined){
let data2 = data.units;
if(typeof data2 !== "string"){
const err7 = {instancePath:instancePath+"/units",schemaPath:"#/properties/units/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err7];
}
else {
vErrors.push(err7);
}
errors++;
}
if(!((data2 === "inch") || (data2 === "mm"))){
const err8 = {instancePath:instancePath+"/units",schemaPath:"#/properties/units/enum",keyword:"enum",params:{allowedValues: schema19.properties.units.enum}};
if(vErrors === null){
vErrors = [err8];
}
else {
vErrors.push(err8);
}
errors++;
}
}
if(data.basis !== undefined){
let data3 = data.basis;
if(data3 && typeof data3 == "object" && !Array.isArray(data3)){
for(const key1 in data3){
if(!((key1 === "loads") || (key1 === "risk-category"))){
const err9 = {instancePath:instancePath+"/basis",schemaPath:"#/properties/basis/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key1}};
if(vErrors === null){
vErrors = [err9];
}
else {
vErrors.push(err9);
}
errors++;
}
}
if(data3.loads !== undefined){
let data4 = data3.loads;
if(typeof data4 !== "string"){
const err10 = {instancePath:instancePath+"/basis/loads",schemaPath:"#/properties/basis/properties/loads/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err10];
}
else {
vErrors.push(err10);
}
errors++;
}
if(!((data4 === "asce-7-16") || (data4 === "asce-7-22"))){
const err11 = {instancePath:instancePath+"/basis/loads",schemaPath:"#/properties/basis/properties/loads/enum",keyword:"enum",params:{allowedValues: schema19.properties.basis.properties.loads.enum}};
if(vErrors === null){
vErrors = [err11];
}
else {
vErrors.push(err11);
}
errors++;
}
}
if(data3["risk-category"] !== undefined){
let data5 = data3["risk-category"];
if(typeof data5 !== "string"){
const err12 = {instancePath:instancePath+"/basis/risk-category",schemaPath:"#/properties/basis/properties/risk-category/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err12];
}
else {
vErrors.push(err12);
}
errors++;
}
if(!((((data5 === "i") || (data5 === "ii")) || (data5 === "iii")) || (data5 === "iv"))){
const err13 = {instancePath:instancePath+"/basis/risk-category",schemaPath:"#/properties/basis/properties/risk-category/enum",keyword:"enum",params:{allowedValues: schema19.properties.basis.properties["risk-category"].enum}};
if(vErrors === null){
vErrors = [err13];
}
else {
vErrors.push(err13);
}
errors++;
}
}
}
else {
const err14 = {instancePath:instancePath+"/basis",schemaPath:"#/properties/basis/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err14];
}
else {
vErrors.push(err14);
}
errors++;
}
}
if(data.site !== undefined){
let data6 = data.site;
if(data6 && typeof data6 == "object" && !Array.isArray(data6)){
for(const key2 in data6){
if(!((((((key2 === "snow") || (key2 === "wind")) || (key2 === "elevation")) || (key2 === "frost-depth")) || (key2 === "soil")) || (key2 === "ground"))){
const err15 = {instancePath:instancePath+"/site",schemaPath:"#/properties/site/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key2}};
if(vErrors === null){
vErrors = [err15];
}
else {
vErrors.push(err15);
}
errors++;
}
}
if(data6.snow !== undefined){
let data7 = data6.snow;
if(data7 && typeof data7 == "object" && !Array.isArray(data7)){
for(const key3 in data7){
if(!(((((key3 === "ground") || (key3 === "exposure")) || (key3 === "thermal")) || (key3 === "slides")) || (key3 === "winter-wind"))){
const err16 = {instancePath:instancePath+"/site/snow",schemaPath:"#/properties/site/properties/snow/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key3}};
if(vErrors === null){
vErrors = [err16];
}
else {
vErrors.push(err16);
}
errors++;
}
}
if(data7.ground !== undefined){
let data8 = data7.ground;
if((typeof data8 !== "string") && (!((typeof data8 == "number") && (isFinite(data8))))){
const err17 = {instancePath:instancePath+"/site/snow/ground",schemaPath:"#/properties/site/properties/snow/properties/ground/type",keyword:"type",params:{type: schema19.properties.site.properties.snow.properties.ground.type}};
if(vErrors === null){
vErrors = [err17];
}
else {
vErrors.push(err17);
}
errors++;
}
}
if(data7.exposure !== undefined){
let data9 = data7.exposure;
if(typeof data9 !== "string"){
const err18 = {instancePath:instancePath+"/site/snow/exposure",schemaPath:"#/properties/site/properties/snow/properties/exposure/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err18];
}
else {
vErrors.push(err18);
}
errors++;
}
if(!(((data9 === "fully-exposed") || (data9 === "partially-exposed")) || (data9 === "sheltered"))){
const err19 = {instancePath:instancePath+"/site/snow/exposure",schemaPath:"#/properties/site/properties/snow/properties/exposure/enum",keyword:"enum",params:{allowedValues: schema19.properties.site.properties.snow.properties.exposure.enum}};
if(vErrors === null){
vErrors = [err19];
}
else {
vErrors.push(err19);
}
errors++;
}
}
if(data7.thermal !== undefined){
let data10 = data7.thermal;
if(typeof data10 !== "string"){
const err20 = {instancePath:instancePath+"/site/snow/thermal",schemaPath:"#/properties/site/properties/snow/properties/thermal/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err20];
}
else {
vErrors.push(err20);
}
errors++;
}
if(!((((((data10 === "open") || (data10 === "unheated")) || (data10 === "heated")) || (data10 === "cold-ventilated")) || (data10 === "freezer")) || (data10 === "greenhouse"))){
const err21 = {instancePath:instancePath+"/site/snow/thermal",schemaPath:"#/properties/site/properties/snow/properties/thermal/enum",keyword:"enum",params:{allowedValues: schema19.properties.site.properties.snow.properties.thermal.enum}};
if(vErrors === null){
vErrors = [err21];
}
else {
vErrors.push(err21);
}
errors++;
}
}
if(data7.slides !== undefined){
if(typeof data7.slides !== "boolean"){
const err22 = {instancePath:instancePath+"/site/snow/slides",schemaPath:"#/properties/site/properties/snow/properties/slides/type",keyword:"type",params:{type: "boolean"}};
if(vErrors === null){
vErrors = [err22];
}
else {
vErrors.push(err22);
}
errors++;
}
}
if(data7["winter-wind"] !== undefined){
let data12 = data7["winter-wind"];
if((typeof data12 == "number") && (isFinite(data12))){
if(data12 > 1 || isNaN(data12)){
const err23 = {instancePath:instancePath+"/site/snow/winter-wind",schemaPath:"#/properties/site/properties/snow/properties/winter-wind/maximum",keyword:"maximum",params:{comparison: "<=", limit: 1}};
if(vErrors === null){
vErrors = [err23];
}
else {
vErrors.push(err23);
}
errors++;
}
if(data12 <= 0 || isNaN(data12)){
const err24 = {instancePath:instancePath+"/site/snow/winter-wind",schemaPath:"#/properties/site/properties/snow/properties/winter-wind/exclusiveMinimum",keyword:"exclusiveMinimum",params:{comparison: ">", limit: 0}};
if(vErrors === null){
vErrors = [err24];
}
else {
vErrors.push(err24);
}
errors++;
}
}
else {
const err25 = {instancePath:instancePath+"/site/snow/winter-wind",schemaPath:"#/properties/site/properties/snow/properties/winter-wind/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err25];
}
else {
vErrors.push(err25);
}
errors++;
}
}
}
else {
const err26 = {instancePath:instancePath+"/site/snow",schemaPath:"#/properties/site/properties/snow/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err26];
}
else {
vErrors.push(err26);
}
errors++;
}
}
if(data6.wind !== undefined){
let data13 = data6.wind;
if(data13 && typeof data13 == "object" && !Array.isArray(data13)){
for(const key4 in data13){
if(!((((key4 === "speed") || (key4 === "exposure")) || (key4 === "flow")) || (key4 === "topography"))){
const err27 = {instancePath:instancePath+"/site/wind",schemaPath:"#/properties/site/properties/wind/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key4}};
if(vErrors === null){
vErrors = [err27];
}
else {
vErrors.push(err27);
}
errors++;
}
}
if(data13.speed !== undefined){
let data14 = data13.speed;
if((typeof data14 !== "string") && (!((typeof data14 == "number") && (isFinite(data14))))){
const err28 = {instancePath:instancePath+"/site/wind/speed",schemaPath:"#/properties/site/properties/wind/properties/speed/type",keyword:"type",params:{type: schema19.properties.site.properties.wind.properties.speed.type}};
if(vErrors === null){
vErrors = [err28];
}
else {
vErrors.push(err28);
}
errors++;
}
}
if(data13.exposure !== undefined){
let data15 = data13.exposure;
if(typeof data15 !== "string"){
const err29 = {instancePath:instancePath+"/site/wind/exposure",schemaPath:"#/properties/site/properties/wind/properties/exposure/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err29];
}
else {
vErrors.push(err29);
}
errors++;
}
if(!(((data15 === "B") || (data15 === "C")) || (data15 === "D"))){
const err30 = {instancePath:instancePath+"/site/wind/exposure",schemaPath:"#/properties/site/properties/wind/properties/exposure/enum",keyword:"enum",params:{allowedValues: schema19.properties.site.properties.wind.properties.exposure.enum}};
if(vErrors === null){
vErrors = [err30];
}
else {
vErrors.push(err30);
}
errors++;
}
}
if(data13.flow !== undefined){
let data16 = data13.flow;
if(typeof data16 !== "string"){
const err31 = {instancePath:instancePath+"/site/wind/flow",schemaPath:"#/properties/site/properties/wind/properties/flow/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err31];
}
else {
vErrors.push(err31);
}
errors++;
}
if(!((data16 === "clear") || (data16 === "obstructed"))){
const err32 = {instancePath:instancePath+"/site/wind/flow",schemaPath:"#/properties/site/properties/wind/properties/flow/enum",keyword:"enum",params:{allowedValues: schema19.properties.site.properties.wind.properties.flow.enum}};
if(vErrors === null){
vErrors = [err32];
}
else {
vErrors.push(err32);
}
errors++;
}
}
if(data13.topography !== undefined){
let data17 = data13.topography;
if((typeof data17 == "number") && (isFinite(data17))){
if(data17 > 4 || isNaN(data17)){
const err33 = {instancePath:instancePath+"/site/wind/topography",schemaPath:"#/properties/site/properties/wind/properties/topography/maximum",keyword:"maximum",params:{comparison: "<=", limit: 4}};
if(vErrors === null){
vErrors = [err33];
}
else {
vErrors.push(err33);
}
errors++;
}
if(data17 < 1 || isNaN(data17)){
const err34 = {instancePath:instancePath+"/site/wind/topography",schemaPath:"#/properties/site/properties/wind/properties/topography/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1}};
if(vErrors === null){
vErrors = [err34];
}
else {
vErrors.push(err34);
}
errors++;
}
}
else {
const err35 = {instancePath:instancePath+"/site/wind/topography",schemaPath:"#/properties/site/properties/wind/properties/topography/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err35];
}
else {
vErrors.push(err35);
}
errors++;
}
}
}
else {
const err36 = {instancePath:instancePath+"/site/wind",schemaPath:"#/properties/site/properties/wind/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err36];
}
else {
vErrors.push(err36);
}
errors++;
}
}
if(data6.elevation !== undefined){
let data18 = data6.elevation;
if((typeof data18 !== "string") && (!((typeof data18 == "number") && (isFinite(data18))))){
const err37 = {instancePath:instancePath+"/site/elevation",schemaPath:"#/properties/site/properties/elevation/type",keyword:"type",params:{type: schema19.properties.site.properties.elevation.type}};
if(vErrors === null){
vErrors = [err37];
}
else {
vErrors.push(err37);
}
errors++;
}
}
if(data6["frost-depth"] !== undefined){
let data19 = data6["frost-depth"];
if((typeof data19 !== "string") && (!((typeof data19 == "number") && (isFinite(data19))))){
const err38 = {instancePath:instancePath+"/site/frost-depth",schemaPath:"#/properties/site/properties/frost-depth/type",keyword:"type",params:{type: schema19.properties.site.properties["frost-depth"].type}};
if(vErrors === null){
vErrors = [err38];
}
else {
vErrors.push(err38);
}
errors++;
}
}
if(data6.soil !== undefined){
let data20 = data6.soil;
if(typeof data20 !== "string"){
const err39 = {instancePath:instancePath+"/site/soil",schemaPath:"#/properties/site/properties/soil/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err39];
}
else {
vErrors.push(err39);
}
errors++;
}
if(!(((((data20 === "sand") || (data20 === "gravel")) || (data20 === "clay")) || (data20 === "sedimentary-rock")) || (data20 === "bedrock"))){
const err40 = {instancePath:instancePath+"/site/soil",schemaPath:"#/properties/site/properties/soil/enum",keyword:"enum",params:{allowedValues: schema19.properties.site.properties.soil.enum}};
if(vErrors === null){
vErrors = [err40];
}
else {
vErrors.push(err40);
}
errors++;
}
}
if(data6.ground !== undefined){
let data21 = data6.ground;
if(data21 && typeof data21 == "object" && !Array.isArray(data21)){
for(const key5 in data21){
if(!(pattern3.test(key5))){
const err41 = {instancePath:instancePath+"/site/ground",schemaPath:"#/properties/site/properties/ground/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key5}};
if(vErrors === null){
vErrors = [err41];
}
else {
vErrors.push(err41);
}
errors++;
}
}
for(const key6 in data21){
if(pattern3.test(key6)){
let data22 = data21[key6];
if((typeof data22 !== "string") && (!((typeof data22 == "number") && (isFinite(data22))))){
const err42 = {instancePath:instancePath+"/site/ground/" + key6.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/site/properties/ground/patternProperties/%5E(%3F%3A%5B1-9%5D%5B0-9%5D*%7C%5BA-Z%5D(%3F%3A%5B1-9%5D%5B0-9%5D*)%3F)%24/type",keyword:"type",params:{type: schema19.properties.site.properties.ground.patternProperties["^(?:[1-9][0-9]*|[A-Z](?:[1-9][0-9]*)?)$"].type}};
if(vErrors === null){
vErrors = [err42];
}
else {
vErrors.push(err42);
}
errors++;
}
}
}
}
else {
const err43 = {instancePath:instancePath+"/site/ground",schemaPath:"#/properties/site/properties/ground/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err43];
}
else {
vErrors.push(err43);
}
errors++;
}
}
}
else {
const err44 = {instancePath:instancePath+"/site",schemaPath:"#/properties/site/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err44];
}
else {
vErrors.push(err44);
}
errors++;
}
}
if(data.timber !== undefined){
let data23 = data.timber;
if(data23 && typeof data23 == "object" && !Array.isArray(data23)){
if(Object.keys(data23).length < 1){
const err45 = {instancePath:instancePath+"/timber",schemaPath:"#/properties/timber/minProperties",keyword:"minProperties",params:{limit: 1}};
if(vErrors === null){
vErrors = [err45];
}
else {
vErrors.push(err45);
}
errors++;
}
for(const key7 in data23){
const _errs56 = errors;
if(typeof key7 === "string"){
if(!pattern5.test(key7)){
const err46 = {instancePath:instancePath+"/timber",schemaPath:"#/properties/timber/propertyNames/pattern",keyword:"pattern",params:{pattern: "^[\\p{L}][\\p{L}\\p{N}_-]*$"},propertyName:key7};
if(vErrors === null){
vErrors = [err46];
}
else {
vErrors.push(err46);
}
errors++;
}
}
var valid6 = _errs56 === errors;
if(!valid6){
const err47 = {instancePath:instancePath+"/timber",schemaPath:"#/properties/timber/propertyNames",keyword:"propertyNames",params:{propertyName: key7}};
if(vErrors === null){
vErrors = [err47];
}
else {
vErrors.push(err47);
}
errors++;
}
}
for(const key8 in data23){
let data24 = data23[key8];
if(data24 && typeof data24 == "object" && !Array.isArray(data24)){
if(data24.species === undefined){
const err48 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/timber/additionalProperties/required",keyword:"required",params:{missingProperty: "species"}};
if(vErrors === null){
vErrors = [err48];
}
else {
vErrors.push(err48);
}
errors++;
}
for(const key9 in data24){
if(!(((((((key9 === "species") || (key9 === "grade")) || (key9 === "seasoning")) || (key9 === "surface")) || (key9 === "values")) || (key9 === "because")) || (key9 === "weight"))){
const err49 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/timber/additionalProperties/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key9}};
if(vErrors === null){
vErrors = [err49];
}
else {
vErrors.push(err49);
}
errors++;
}
}
if(data24.species !== undefined){
if(!(validate53(data24.species, {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/species",parentData:data24,parentDataProperty:"species",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
if(data24.grade !== undefined){
if(typeof data24.grade !== "string"){
const err50 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/grade",schemaPath:"#/properties/timber/additionalProperties/properties/grade/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err50];
}
else {
vErrors.push(err50);
}
errors++;
}
}
if(data24.seasoning !== undefined){
let data27 = data24.seasoning;
if(typeof data27 !== "string"){
const err51 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/seasoning",schemaPath:"#/properties/timber/additionalProperties/properties/seasoning/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err51];
}
else {
vErrors.push(err51);
}
errors++;
}
if(!((data27 === "green") || (data27 === "dry"))){
const err52 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/seasoning",schemaPath:"#/properties/timber/additionalProperties/properties/seasoning/enum",keyword:"enum",params:{allowedValues: schema19.properties.timber.additionalProperties.properties.seasoning.enum}};
if(vErrors === null){
vErrors = [err52];
}
else {
vErrors.push(err52);
}
errors++;
}
}
if(data24.surface !== undefined){
let data28 = data24.surface;
if(typeof data28 !== "string"){
const err53 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/surface",schemaPath:"#/properties/timber/additionalProperties/properties/surface/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err53];
}
else {
vErrors.push(err53);
}
errors++;
}
if(!((data28 === "rough") || (data28 === "planed"))){
const err54 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/surface",schemaPath:"#/properties/timber/additionalProperties/properties/surface/enum",keyword:"enum",params:{allowedValues: schema19.properties.timber.additionalProperties.properties.surface.enum}};
if(vErrors === null){
vErrors = [err54];
}
else {
vErrors.push(err54);
}
errors++;
}
}
if(data24.values !== undefined){
let data29 = data24.values;
if(data29 && typeof data29 == "object" && !Array.isArray(data29)){
if(Object.keys(data29).length < 1){
const err55 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/values",schemaPath:"#/properties/timber/additionalProperties/properties/values/minProperties",keyword:"minProperties",params:{limit: 1}};
if(vErrors === null){
vErrors = [err55];
}
else {
vErrors.push(err55);
}
errors++;
}
for(const key10 in data29){
if(!((((((((key10 === "Fb") || (key10 === "Ft")) || (key10 === "Fv")) || (key10 === "Fc-perp")) || (key10 === "Fc")) || (key10 === "E")) || (key10 === "E-min")) || (key10 === "G"))){
const err56 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/values",schemaPath:"#/properties/timber/additionalProperties/properties/values/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key10}};
if(vErrors === null){
vErrors = [err56];
}
else {
vErrors.push(err56);
}
errors++;
}
}
if(data29.Fb !== undefined){
let data30 = data29.Fb;
if((typeof data30 !== "string") && (!((typeof data30 == "number") && (isFinite(data30))))){
const err57 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/values/Fb",schemaPath:"#/properties/timber/additionalProperties/properties/values/properties/Fb/type",keyword:"type",params:{type: schema19.properties.timber.additionalProperties.properties.values.properties.Fb.type}};
if(vErrors === null){
vErrors = [err57];
}
else {
vErrors.push(err57);
}
errors++;
}
}
if(data29.Ft !== undefined){
let data31 = data29.Ft;
if((typeof data31 !== "string") && (!((typeof data31 == "number") && (isFinite(data31))))){
const err58 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/values/Ft",schemaPath:"#/properties/timber/additionalProperties/properties/values/properties/Ft/type",keyword:"type",params:{type: schema19.properties.timber.additionalProperties.properties.values.properties.Ft.type}};
if(vErrors === null){
vErrors = [err58];
}
else {
vErrors.push(err58);
}
errors++;
}
}
if(data29.Fv !== undefined){
let data32 = data29.Fv;
if((typeof data32 !== "string") && (!((typeof data32 == "number") && (isFinite(data32))))){
const err59 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/values/Fv",schemaPath:"#/properties/timber/additionalProperties/properties/values/properties/Fv/type",keyword:"type",params:{type: schema19.properties.timber.additionalProperties.properties.values.properties.Fv.type}};
if(vErrors === null){
vErrors = [err59];
}
else {
vErrors.push(err59);
}
errors++;
}
}
if(data29["Fc-perp"] !== undefined){
let data33 = data29["Fc-perp"];
if((typeof data33 !== "string") && (!((typeof data33 == "number") && (isFinite(data33))))){
const err60 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/values/Fc-perp",schemaPath:"#/properties/timber/additionalProperties/properties/values/properties/Fc-perp/type",keyword:"type",params:{type: schema19.properties.timber.additionalProperties.properties.values.properties["Fc-perp"].type}};
if(vErrors === null){
vErrors = [err60];
}
else {
vErrors.push(err60);
}
errors++;
}
}
if(data29.Fc !== undefined){
let data34 = data29.Fc;
if((typeof data34 !== "string") && (!((typeof data34 == "number") && (isFinite(data34))))){
const err61 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/values/Fc",schemaPath:"#/properties/timber/additionalProperties/properties/values/properties/Fc/type",keyword:"type",params:{type: schema19.properties.timber.additionalProperties.properties.values.properties.Fc.type}};
if(vErrors === null){
vErrors = [err61];
}
else {
vErrors.push(err61);
}
errors++;
}
}
if(data29.E !== undefined){
let data35 = data29.E;
if((typeof data35 !== "string") && (!((typeof data35 == "number") && (isFinite(data35))))){
const err62 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/values/E",schemaPath:"#/properties/timber/additionalProperties/properties/values/properties/E/type",keyword:"type",params:{type: schema19.properties.timber.additionalProperties.properties.values.properties.E.type}};
if(vErrors === null){
vErrors = [err62];
}
else {
vErrors.push(err62);
}
errors++;
}
}
if(data29["E-min"] !== undefined){
let data36 = data29["E-min"];
if((typeof data36 !== "string") && (!((typeof data36 == "number") && (isFinite(data36))))){
const err63 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/values/E-min",schemaPath:"#/properties/timber/additionalProperties/properties/values/properties/E-min/type",keyword:"type",params:{type: schema19.properties.timber.additionalProperties.properties.values.properties["E-min"].type}};
if(vErrors === null){
vErrors = [err63];
}
else {
vErrors.push(err63);
}
errors++;
}
}
if(data29.G !== undefined){
let data37 = data29.G;
if((typeof data37 == "number") && (isFinite(data37))){
if(data37 > 1.5 || isNaN(data37)){
const err64 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/values/G",schemaPath:"#/properties/timber/additionalProperties/properties/values/properties/G/maximum",keyword:"maximum",params:{comparison: "<=", limit: 1.5}};
if(vErrors === null){
vErrors = [err64];
}
else {
vErrors.push(err64);
}
errors++;
}
if(data37 < 0.05 || isNaN(data37)){
const err65 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/values/G",schemaPath:"#/properties/timber/additionalProperties/properties/values/properties/G/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0.05}};
if(vErrors === null){
vErrors = [err65];
}
else {
vErrors.push(err65);
}
errors++;
}
}
else {
const err66 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/values/G",schemaPath:"#/properties/timber/additionalProperties/properties/values/properties/G/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err66];
}
else {
vErrors.push(err66);
}
errors++;
}
}
}
else {
const err67 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/values",schemaPath:"#/properties/timber/additionalProperties/properties/values/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err67];
}
else {
vErrors.push(err67);
}
errors++;
}
}
if(data24.because !== undefined){
if(typeof data24.because !== "string"){
const err68 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/because",schemaPath:"#/properties/timber/additionalProperties/properties/because/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err68];
}
else {
vErrors.push(err68);
}
errors++;
}
}
if(data24.weight !== undefined){
let data39 = data24.weight;
if((typeof data39 !== "string") && (!((typeof data39 == "number") && (isFinite(data39))))){
const err69 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1")+"/weight",schemaPath:"#/properties/timber/additionalProperties/properties/weight/type",keyword:"type",params:{type: schema19.properties.timber.additionalProperties.properties.weight.type}};
if(vErrors === null){
vErrors = [err69];
}
else {
vErrors.push(err69);
}
errors++;
}
}
if(data24.values !== undefined){
if(data24.because === undefined){
const err70 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/timber/additionalProperties/dependentRequired",keyword:"dependentRequired",params:{property: "values",
    missingProperty: "because",
    depsCount: 1,
    deps: "because"}};
if(vErrors === null){
vErrors = [err70];
}
else {
vErrors.push(err70);
}
errors++;
}
}
}
else {
const err71 = {instancePath:instancePath+"/timber/" + key8.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/timber/additionalProperties/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err71];
}
else {
vErrors.push(err71);
}
errors++;
}
}
}
else {
const err72 = {instancePath:instancePath+"/timber",schemaPath:"#/properties/timber/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err72];
}
else {
vErrors.push(err72);
}
errors++;
}
}
if(data.mill !== undefined){
let data40 = data.mill;
if(data40 && typeof data40 == "object" && !Array.isArray(data40)){
for(const key11 in data40){
if(!(((key11 === "longest-cut") || (key11 === "kerf")) || (key11 === "logs"))){
const err73 = {instancePath:instancePath+"/mill",schemaPath:"#/properties/mill/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key11}};
if(vErrors === null){
vErrors = [err73];
}
else {
vErrors.push(err73);
}
errors++;
}
}
if(data40["longest-cut"] !== undefined){
let data41 = data40["longest-cut"];
if((typeof data41 !== "string") && (!((typeof data41 == "number") && (isFinite(data41))))){
const err74 = {instancePath:instancePath+"/mill/longest-cut",schemaPath:"#/properties/mill/properties/longest-cut/type",keyword:"type",params:{type: schema19.properties.mill.properties["longest-cut"].type}};
if(vErrors === null){
vErrors = [err74];
}
else {
vErrors.push(err74);
}
errors++;
}
}
if(data40.kerf !== undefined){
let data42 = data40.kerf;
if((typeof data42 !== "string") && (!((typeof data42 == "number") && (isFinite(data42))))){
const err75 = {instancePath:instancePath+"/mill/kerf",schemaPath:"#/properties/mill/properties/kerf/type",keyword:"type",params:{type: schema19.properties.mill.properties.kerf.type}};
if(vErrors === null){
vErrors = [err75];
}
else {
vErrors.push(err75);
}
errors++;
}
}
if(data40.logs !== undefined){
let data43 = data40.logs;
if(Array.isArray(data43)){
const len0 = data43.length;
for(let i0=0; i0<len0; i0++){
let data44 = data43[i0];
if(data44 && typeof data44 == "object" && !Array.isArray(data44)){
if(data44["small-end"] === undefined){
const err76 = {instancePath:instancePath+"/mill/logs/" + i0,schemaPath:"#/properties/mill/properties/logs/items/required",keyword:"required",params:{missingProperty: "small-end"}};
if(vErrors === null){
vErrors = [err76];
}
else {
vErrors.push(err76);
}
errors++;
}
if(data44.length === undefined){
const err77 = {instancePath:instancePath+"/mill/logs/" + i0,schemaPath:"#/properties/mill/properties/logs/items/required",keyword:"required",params:{missingProperty: "length"}};
if(vErrors === null){
vErrors = [err77];
}
else {
vErrors.push(err77);
}
errors++;
}
if(data44.count === undefined){
const err78 = {instancePath:instancePath+"/mill/logs/" + i0,schemaPath:"#/properties/mill/properties/logs/items/required",keyword:"required",params:{missingProperty: "count"}};
if(vErrors === null){
vErrors = [err78];
}
else {
vErrors.push(err78);
}
errors++;
}
for(const key12 in data44){
if(!((((key12 === "species") || (key12 === "small-end")) || (key12 === "length")) || (key12 === "count"))){
const err79 = {instancePath:instancePath+"/mill/logs/" + i0,schemaPath:"#/properties/mill/properties/logs/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key12}};
if(vErrors === null){
vErrors = [err79];
}
else {
vErrors.push(err79);
}
errors++;
}
}
if(data44.species !== undefined){
if(!(validate53(data44.species, {instancePath:instancePath+"/mill/logs/" + i0+"/species",parentData:data44,parentDataProperty:"species",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate53.errors : vErrors.concat(validate53.errors);
errors = vErrors.length;
}
}
if(data44["small-end"] !== undefined){
let data46 = data44["small-end"];
if((typeof data46 !== "string") && (!((typeof data46 == "number") && (isFinite(data46))))){
const err80 = {instancePath:instancePath+"/mill/logs/" + i0+"/small-end",schemaPath:"#/properties/mill/properties/logs/items/properties/small-end/type",keyword:"type",params:{type: schema19.properties.mill.properties.logs.items.properties["small-end"].type}};
if(vErrors === null){
vErrors = [err80];
}
else {
vErrors.push(err80);
}
errors++;
}
}
if(data44.length !== undefined){
let data47 = data44.length;
if((typeof data47 !== "string") && (!((typeof data47 == "number") && (isFinite(data47))))){
const err81 = {instancePath:instancePath+"/mill/logs/" + i0+"/length",schemaPath:"#/properties/mill/properties/logs/items/properties/length/type",keyword:"type",params:{type: schema19.properties.mill.properties.logs.items.properties.length.type}};
if(vErrors === null){
vErrors = [err81];
}
else {
vErrors.push(err81);
}
errors++;
}
}
if(data44.count !== undefined){
let data48 = data44.count;
if(!(((typeof data48 == "number") && (!(data48 % 1) && !isNaN(data48))) && (isFinite(data48)))){
const err82 = {instancePath:instancePath+"/mill/logs/" + i0+"/count",schemaPath:"#/properties/mill/properties/logs/items/properties/count/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err82];
}
else {
vErrors.push(err82);
}
errors++;
}
if((typeof data48 == "number") && (isFinite(data48))){
if(data48 > 1000 || isNaN(data48)){
const err83 = {instancePath:instancePath+"/mill/logs/" + i0+"/count",schemaPath:"#/properties/mill/properties/logs/items/properties/count/maximum",keyword:"maximum",params:{comparison: "<=", limit: 1000}};
if(vErrors === null){
vErrors = [err83];
}
else {
vErrors.push(err83);
}
errors++;
}
if(data48 < 1 || isNaN(data48)){
const err84 = {instancePath:instancePath+"/mill/logs/" + i0+"/count",schemaPath:"#/properties/mill/properties/logs/items/properties/count/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1}};
if(vErrors === null){
vErrors = [err84];
}
else {
vErrors.push(err84);
}
errors++;
}
}
}
}
else {
const err85 = {instancePath:instancePath+"/mill/logs/" + i0,schemaPath:"#/properties/mill/properties/logs/items/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err85];
}
else {
vErrors.push(err85);
}
errors++;
}
}
}
else {
const err86 = {instancePath:instancePath+"/mill/logs",schemaPath:"#/properties/mill/properties/logs/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err86];
}
else {
vErrors.push(err86);
}
errors++;
}
}
}
else {
const err87 = {instancePath:instancePath+"/mill",schemaPath:"#/properties/mill/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err87];
}
else {
vErrors.push(err87);
}
errors++;
}
}
if(data.grid !== undefined){
let data49 = data.grid;
if(data49 && typeof data49 == "object" && !Array.isArray(data49)){
if(data49.walls === undefined){
const err88 = {instancePath:instancePath+"/grid",schemaPath:"#/properties/grid/required",keyword:"required",params:{missingProperty: "walls"}};
if(vErrors === null){
vErrors = [err88];
}
else {
vErrors.push(err88);
}
errors++;
}
if(data49.bents === undefined){
const err89 = {instancePath:instancePath+"/grid",schemaPath:"#/properties/grid/required",keyword:"required",params:{missingProperty: "bents"}};
if(vErrors === null){
vErrors = [err89];
}
else {
vErrors.push(err89);
}
errors++;
}
for(const key13 in data49){
if(!(((key13 === "walls") || (key13 === "bents")) || (key13 === "levels"))){
const err90 = {instancePath:instancePath+"/grid",schemaPath:"#/properties/grid/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key13}};
if(vErrors === null){
vErrors = [err90];
}
else {
vErrors.push(err90);
}
errors++;
}
}
if(data49.walls !== undefined){
let data50 = data49.walls;
if(data50 && typeof data50 == "object" && !Array.isArray(data50)){
if(Object.keys(data50).length < 1){
const err91 = {instancePath:instancePath+"/grid/walls",schemaPath:"#/properties/grid/properties/walls/minProperties",keyword:"minProperties",params:{limit: 1}};
if(vErrors === null){
vErrors = [err91];
}
else {
vErrors.push(err91);
}
errors++;
}
for(const key14 in data50){
if(!(pattern6.test(key14))){
const err92 = {instancePath:instancePath+"/grid/walls",schemaPath:"#/properties/grid/properties/walls/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key14}};
if(vErrors === null){
vErrors = [err92];
}
else {
vErrors.push(err92);
}
errors++;
}
}
for(const key15 in data50){
if(pattern6.test(key15)){
if(!(validate56(data50[key15], {instancePath:instancePath+"/grid/walls/" + key15.replace(/~/g, "~0").replace(/\//g, "~1"),parentData:data50,parentDataProperty:key15,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate56.errors : vErrors.concat(validate56.errors);
errors = vErrors.length;
}
}
}
}
else {
const err93 = {instancePath:instancePath+"/grid/walls",schemaPath:"#/properties/grid/properties/walls/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err93];
}
else {
vErrors.push(err93);
}
errors++;
}
}
if(data49.bents !== undefined){
let data52 = data49.bents;
if(data52 && typeof data52 == "object" && !Array.isArray(data52)){
if(Object.keys(data52).length < 1){
const err94 = {instancePath:instancePath+"/grid/bents",schemaPath:"#/properties/grid/properties/bents/minProperties",keyword:"minProperties",params:{limit: 1}};
if(vErrors === null){
vErrors = [err94];
}
else {
vErrors.push(err94);
}
errors++;
}
for(const key16 in data52){
if(!(pattern8.test(key16))){
const err95 = {instancePath:instancePath+"/grid/bents",schemaPath:"#/properties/grid/properties/bents/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key16}};
if(vErrors === null){
vErrors = [err95];
}
else {
vErrors.push(err95);
}
errors++;
}
}
for(const key17 in data52){
if(pattern8.test(key17)){
if(!(validate58(data52[key17], {instancePath:instancePath+"/grid/bents/" + key17.replace(/~/g, "~0").replace(/\//g, "~1"),parentData:data52,parentDataProperty:key17,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate58.errors : vErrors.concat(validate58.errors);
errors = vErrors.length;
}
}
}
}
else {
const err96 = {instancePath:instancePath+"/grid/bents",schemaPath:"#/properties/grid/properties/bents/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err96];
}
else {
vErrors.push(err96);
}
errors++;
}
}
if(data49.levels !== undefined){
let data54 = data49.levels;
if(data54 && typeof data54 == "object" && !Array.isArray(data54)){
for(const key18 in data54){
const _errs123 = errors;
if(typeof key18 === "string"){
if(!pattern5.test(key18)){
const err97 = {instancePath:instancePath+"/grid/levels",schemaPath:"#/properties/grid/properties/levels/propertyNames/pattern",keyword:"pattern",params:{pattern: "^[\\p{L}][\\p{L}\\p{N}_-]*$"},propertyName:key18};
if(vErrors === null){
vErrors = [err97];
}
else {
vErrors.push(err97);
}
errors++;
}
}
var valid17 = _errs123 === errors;
if(!valid17){
const err98 = {instancePath:instancePath+"/grid/levels",schemaPath:"#/properties/grid/properties/levels/propertyNames",keyword:"propertyNames",params:{propertyName: key18}};
if(vErrors === null){
vErrors = [err98];
}
else {
vErrors.push(err98);
}
errors++;
}
}
for(const key19 in data54){
let data55 = data54[key19];
if((typeof data55 !== "string") && (!((typeof data55 == "number") && (isFinite(data55))))){
const err99 = {instancePath:instancePath+"/grid/levels/" + key19.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/grid/properties/levels/additionalProperties/type",keyword:"type",params:{type: schema19.properties.grid.properties.levels.additionalProperties.type}};
if(vErrors === null){
vErrors = [err99];
}
else {
vErrors.push(err99);
}
errors++;
}
}
}
else {
const err100 = {instancePath:instancePath+"/grid/levels",schemaPath:"#/properties/grid/properties/levels/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err100];
}
else {
vErrors.push(err100);
}
errors++;
}
}
}
else {
const err101 = {instancePath:instancePath+"/grid",schemaPath:"#/properties/grid/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err101];
}
else {
vErrors.push(err101);
}
errors++;
}
}
if(data.members !== undefined){
let data56 = data.members;
if(data56 && typeof data56 == "object" && !Array.isArray(data56)){
if(Object.keys(data56).length < 1){
const err102 = {instancePath:instancePath+"/members",schemaPath:"#/properties/members/minProperties",keyword:"minProperties",params:{limit: 1}};
if(vErrors === null){
vErrors = [err102];
}
else {
vErrors.push(err102);
}
errors++;
}
for(const key20 in data56){
const _errs129 = errors;
if(typeof key20 === "string"){
if(!pattern5.test(key20)){
const err103 = {instancePath:instancePath+"/members",schemaPath:"#/properties/members/propertyNames/pattern",keyword:"pattern",params:{pattern: "^[\\p{L}][\\p{L}\\p{N}_-]*$"},propertyName:key20};
if(vErrors === null){
vErrors = [err103];
}
else {
vErrors.push(err103);
}
errors++;
}
}
var valid19 = _errs129 === errors;
if(!valid19){
const err104 = {instancePath:instancePath+"/members",schemaPath:"#/properties/members/propertyNames",keyword:"propertyNames",params:{propertyName: key20}};
if(vErrors === null){
vErrors = [err104];
}
else {
vErrors.push(err104);
}
errors++;
}
}
for(const key21 in data56){
if(!(validate60(data56[key21], {instancePath:instancePath+"/members/" + key21.replace(/~/g, "~0").replace(/\//g, "~1"),parentData:data56,parentDataProperty:key21,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate60.errors : vErrors.concat(validate60.errors);
errors = vErrors.length;
}
}
}
else {
const err105 = {instancePath:instancePath+"/members",schemaPath:"#/properties/members/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err105];
}
else {
vErrors.push(err105);
}
errors++;
}
}
if(data.joints !== undefined){
let data58 = data.joints;
if(data58 && typeof data58 == "object" && !Array.isArray(data58)){
for(const key22 in data58){
const _errs134 = errors;
if(typeof key22 === "string"){
if(!pattern5.test(key22)){
const err106 = {instancePath:instancePath+"/joints",schemaPath:"#/properties/joints/propertyNames/pattern",keyword:"pattern",params:{pattern: "^[\\p{L}][\\p{L}\\p{N}_-]*$"},propertyName:key22};
if(vErrors === null){
vErrors = [err106];
}
else {
vErrors.push(err106);
}
errors++;
}
}
var valid21 = _errs134 === errors;
if(!valid21){
const err107 = {instancePath:instancePath+"/joints",schemaPath:"#/properties/joints/propertyNames",keyword:"propertyNames",params:{propertyName: key22}};
if(vErrors === null){
vErrors = [err107];
}
else {
vErrors.push(err107);
}
errors++;
}
}
for(const key23 in data58){
if(!(validate325(data58[key23], {instancePath:instancePath+"/joints/" + key23.replace(/~/g, "~0").replace(/\//g, "~1"),parentData:data58,parentDataProperty:key23,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate325.errors : vErrors.concat(validate325.errors);
errors = vErrors.length;
}
}
}
else {
const err108 = {instancePath:instancePath+"/joints",schemaPath:"#/properties/joints/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err108];
}
else {
vErrors.push(err108);
}
errors++;
}
}
if(data.roof !== undefined){
let data60 = data.roof;
if(data60 && typeof data60 == "object" && !Array.isArray(data60)){
if(data60.kind === undefined){
const err109 = {instancePath:instancePath+"/roof",schemaPath:"#/properties/roof/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err109];
}
else {
vErrors.push(err109);
}
errors++;
}
const tag0 = data60.kind;
if(typeof tag0 == "string"){
if(tag0 === "gable"){
if(!(validate479(data60, {instancePath:instancePath+"/roof",parentData:data,parentDataProperty:"roof",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate479.errors : vErrors.concat(validate479.errors);
errors = vErrors.length;
}
var props2 = true;
}
else if(tag0 === "shed"){
if(!(validate507(data60, {instancePath:instancePath+"/roof",parentData:data,parentDataProperty:"roof",rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate507.errors : vErrors.concat(validate507.errors);
errors = vErrors.length;
}
if(props2 !== true){
props2 = true;
}
}
else {
const err110 = {instancePath:instancePath+"/roof",schemaPath:"#/properties/roof/discriminator",keyword:"discriminator",params:{error: "mapping", tag: "kind", tagValue: tag0}};
if(vErrors === null){
vErrors = [err110];
}
else {
vErrors.push(err110);
}
errors++;
}
}
else {
const err111 = {instancePath:instancePath+"/roof",schemaPath:"#/properties/roof/discriminator",keyword:"discriminator",params:{error: "tag", tag: "kind", tagValue: tag0}};
if(vErrors === null){
vErrors = [err111];
}
else {
vErrors.push(err111);
}
errors++;
}
}
else {
const err112 = {instancePath:instancePath+"/roof",schemaPath:"#/properties/roof/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err112];
}
else {
vErrors.push(err112);
}
errors++;
}
}
if(data.piers !== undefined){
let data61 = data.piers;
if(data61 && typeof data61 == "object" && !Array.isArray(data61)){
for(const key24 in data61){
const _errs144 = errors;
if(typeof key24 === "string"){
if(!pattern5.test(key24)){
const err113 = {instancePath:instancePath+"/piers",schemaPath:"#/properties/piers/propertyNames/pattern",keyword:"pattern",params:{pattern: "^[\\p{L}][\\p{L}\\p{N}_-]*$"},propertyName:key24};
if(vErrors === null){
vErrors = [err113];
}
else {
vErrors.push(err113);
}
errors++;
}
}
var valid26 = _errs144 === errors;
if(!valid26){
const err114 = {instancePath:instancePath+"/piers",schemaPath:"#/properties/piers/propertyNames",keyword:"propertyNames",params:{propertyName: key24}};
if(vErrors === null){
vErrors = [err114];
}
else {
vErrors.push(err114);
}
errors++;
}
}
for(const key25 in data61){
if(!(validate515(data61[key25], {instancePath:instancePath+"/piers/" + key25.replace(/~/g, "~0").replace(/\//g, "~1"),parentData:data61,parentDataProperty:key25,rootData,dynamicAnchors}))){
vErrors = vErrors === null ? validate515.errors : vErrors.concat(validate515.errors);
errors = vErrors.length;
}
}
}
else {
const err115 = {instancePath:instancePath+"/piers",schemaPath:"#/properties/piers/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err115];
}
else {
vErrors.push(err115);
}
errors++;
}
}
if(data.siding !== undefined){
let data63 = data.siding;
if(data63 && typeof data63 == "object" && !Array.isArray(data63)){
for(const key26 in data63){
if(!(pattern24.test(key26))){
const err116 = {instancePath:instancePath+"/siding",schemaPath:"#/properties/siding/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key26}};
if(vErrors === null){
vErrors = [err116];
}
else {
vErrors.push(err116);
}
errors++;
}
}
for(const key27 in data63){
if(pattern24.test(key27)){
let data64 = data63[key27];
if(data64 && typeof data64 == "object" && !Array.isArray(data64)){
for(const key28 in data64){
if(!(((key28 === "openings") || (key28 === "open")) || (key28 === "weight"))){
const err117 = {instancePath:instancePath+"/siding/" + key27.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/siding/patternProperties/%5E(%3F%3A%5B1-9%5D%5B0-9%5D*%7C%5BA-Z%5D)%24/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key28}};
if(vErrors === null){
vErrors = [err117];
}
else {
vErrors.push(err117);
}
errors++;
}
}
if(data64.openings !== undefined){
let data65 = data64.openings;
if((typeof data65 !== "string") && (!((typeof data65 == "number") && (isFinite(data65))))){
const err118 = {instancePath:instancePath+"/siding/" + key27.replace(/~/g, "~0").replace(/\//g, "~1")+"/openings",schemaPath:"#/properties/siding/patternProperties/%5E(%3F%3A%5B1-9%5D%5B0-9%5D*%7C%5BA-Z%5D)%24/properties/openings/type",keyword:"type",params:{type: schema19.properties.siding.patternProperties["^(?:[1-9][0-9]*|[A-Z])$"].properties.openings.type}};
if(vErrors === null){
vErrors = [err118];
}
else {
vErrors.push(err118);
}
errors++;
}
}
if(data64.open !== undefined){
let data66 = data64.open;
if((typeof data66 == "number") && (isFinite(data66))){
if(data66 > 1 || isNaN(data66)){
const err119 = {instancePath:instancePath+"/siding/" + key27.replace(/~/g, "~0").replace(/\//g, "~1")+"/open",schemaPath:"#/properties/siding/patternProperties/%5E(%3F%3A%5B1-9%5D%5B0-9%5D*%7C%5BA-Z%5D)%24/properties/open/maximum",keyword:"maximum",params:{comparison: "<=", limit: 1}};
if(vErrors === null){
vErrors = [err119];
}
else {
vErrors.push(err119);
}
errors++;
}
if(data66 < 0 || isNaN(data66)){
const err120 = {instancePath:instancePath+"/siding/" + key27.replace(/~/g, "~0").replace(/\//g, "~1")+"/open",schemaPath:"#/properties/siding/patternProperties/%5E(%3F%3A%5B1-9%5D%5B0-9%5D*%7C%5BA-Z%5D)%24/properties/open/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0}};
if(vErrors === null){
vErrors = [err120];
}
else {
vErrors.push(err120);
}
errors++;
}
}
else {
const err121 = {instancePath:instancePath+"/siding/" + key27.replace(/~/g, "~0").replace(/\//g, "~1")+"/open",schemaPath:"#/properties/siding/patternProperties/%5E(%3F%3A%5B1-9%5D%5B0-9%5D*%7C%5BA-Z%5D)%24/properties/open/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err121];
}
else {
vErrors.push(err121);
}
errors++;
}
}
if(data64.weight !== undefined){
let data67 = data64.weight;
if((typeof data67 !== "string") && (!((typeof data67 == "number") && (isFinite(data67))))){
const err122 = {instancePath:instancePath+"/siding/" + key27.replace(/~/g, "~0").replace(/\//g, "~1")+"/weight",schemaPath:"#/properties/siding/patternProperties/%5E(%3F%3A%5B1-9%5D%5B0-9%5D*%7C%5BA-Z%5D)%24/properties/weight/type",keyword:"type",params:{type: schema19.properties.siding.patternProperties["^(?:[1-9][0-9]*|[A-Z])$"].properties.weight.type}};
if(vErrors === null){
vErrors = [err122];
}
else {
vErrors.push(err122);
}
errors++;
}
}
}
else {
const err123 = {instancePath:instancePath+"/siding/" + key27.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/siding/patternProperties/%5E(%3F%3A%5B1-9%5D%5B0-9%5D*%7C%5BA-Z%5D)%24/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err123];
}
else {
vErrors.push(err123);
}
errors++;
}
}
}
}
else {
const err124 = {instancePath:instancePath+"/siding",schemaPath:"#/properties/siding/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err124];
}
else {
vErrors.push(err124);
}
errors++;
}
}
if(data.floors !== undefined){
let data68 = data.floors;
if(data68 && typeof data68 == "object" && !Array.isArray(data68)){
for(const key29 in data68){
const _errs161 = errors;
if(typeof key29 === "string"){
if(!pattern5.test(key29)){
const err125 = {instancePath:instancePath+"/floors",schemaPath:"#/properties/floors/propertyNames/pattern",keyword:"pattern",params:{pattern: "^[\\p{L}][\\p{L}\\p{N}_-]*$"},propertyName:key29};
if(vErrors === null){
vErrors = [err125];
}
else {
vErrors.push(err125);
}
errors++;
}
}
var valid30 = _errs161 === errors;
if(!valid30){
const err126 = {instancePath:instancePath+"/floors",schemaPath:"#/properties/floors/propertyNames",keyword:"propertyNames",params:{propertyName: key29}};
if(vErrors === null){
vErrors = [err126];
}
else {
vErrors.push(err126);
}
errors++;
}
}
for(const key30 in data68){
let data69 = data68[key30];
if(data69 && typeof data69 == "object" && !Array.isArray(data69)){
if(data69.on === undefined){
const err127 = {instancePath:instancePath+"/floors/" + key30.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/floors/additionalProperties/required",keyword:"required",params:{missingProperty: "on"}};
if(vErrors === null){
vErrors = [err127];
}
else {
vErrors.push(err127);
}
errors++;
}
if(data69.live === undefined){
const err128 = {instancePath:instancePath+"/floors/" + key30.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/floors/additionalProperties/required",keyword:"required",params:{missingProperty: "live"}};
if(vErrors === null){
vErrors = [err128];
}
else {
vErrors.push(err128);
}
errors++;
}
for(const key31 in data69){
if(!((((key31 === "on") || (key31 === "live")) || (key31 === "deck")) || (key31 === "dead"))){
const err129 = {instancePath:instancePath+"/floors/" + key30.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/floors/additionalProperties/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key31}};
if(vErrors === null){
vErrors = [err129];
}
else {
vErrors.push(err129);
}
errors++;
}
}
if(data69.on !== undefined){
if(typeof data69.on !== "string"){
const err130 = {instancePath:instancePath+"/floors/" + key30.replace(/~/g, "~0").replace(/\//g, "~1")+"/on",schemaPath:"#/properties/floors/additionalProperties/properties/on/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err130];
}
else {
vErrors.push(err130);
}
errors++;
}
}
if(data69.live !== undefined){
let data71 = data69.live;
if((typeof data71 !== "string") && (!((typeof data71 == "number") && (isFinite(data71))))){
const err131 = {instancePath:instancePath+"/floors/" + key30.replace(/~/g, "~0").replace(/\//g, "~1")+"/live",schemaPath:"#/properties/floors/additionalProperties/properties/live/type",keyword:"type",params:{type: schema19.properties.floors.additionalProperties.properties.live.type}};
if(vErrors === null){
vErrors = [err131];
}
else {
vErrors.push(err131);
}
errors++;
}
}
if(data69.deck !== undefined){
let data72 = data69.deck;
if(data72 && typeof data72 == "object" && !Array.isArray(data72)){
if(data72.kind === undefined){
const err132 = {instancePath:instancePath+"/floors/" + key30.replace(/~/g, "~0").replace(/\//g, "~1")+"/deck",schemaPath:"#/properties/floors/additionalProperties/properties/deck/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err132];
}
else {
vErrors.push(err132);
}
errors++;
}
for(const key32 in data72){
if(!((key32 === "kind") || (key32 === "thickness"))){
const err133 = {instancePath:instancePath+"/floors/" + key30.replace(/~/g, "~0").replace(/\//g, "~1")+"/deck",schemaPath:"#/properties/floors/additionalProperties/properties/deck/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key32}};
if(vErrors === null){
vErrors = [err133];
}
else {
vErrors.push(err133);
}
errors++;
}
}
if(data72.kind !== undefined){
let data73 = data72.kind;
if(typeof data73 !== "string"){
const err134 = {instancePath:instancePath+"/floors/" + key30.replace(/~/g, "~0").replace(/\//g, "~1")+"/deck/kind",schemaPath:"#/properties/floors/additionalProperties/properties/deck/properties/kind/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err134];
}
else {
vErrors.push(err134);
}
errors++;
}
if(!((data73 === "boards") || (data73 === "panels"))){
const err135 = {instancePath:instancePath+"/floors/" + key30.replace(/~/g, "~0").replace(/\//g, "~1")+"/deck/kind",schemaPath:"#/properties/floors/additionalProperties/properties/deck/properties/kind/enum",keyword:"enum",params:{allowedValues: schema19.properties.floors.additionalProperties.properties.deck.properties.kind.enum}};
if(vErrors === null){
vErrors = [err135];
}
else {
vErrors.push(err135);
}
errors++;
}
}
if(data72.thickness !== undefined){
let data74 = data72.thickness;
if((typeof data74 !== "string") && (!((typeof data74 == "number") && (isFinite(data74))))){
const err136 = {instancePath:instancePath+"/floors/" + key30.replace(/~/g, "~0").replace(/\//g, "~1")+"/deck/thickness",schemaPath:"#/properties/floors/additionalProperties/properties/deck/properties/thickness/type",keyword:"type",params:{type: schema19.properties.floors.additionalProperties.properties.deck.properties.thickness.type}};
if(vErrors === null){
vErrors = [err136];
}
else {
vErrors.push(err136);
}
errors++;
}
}
}
else {
const err137 = {instancePath:instancePath+"/floors/" + key30.replace(/~/g, "~0").replace(/\//g, "~1")+"/deck",schemaPath:"#/properties/floors/additionalProperties/properties/deck/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err137];
}
else {
vErrors.push(err137);
}
errors++;
}
}
if(data69.dead !== undefined){
let data75 = data69.dead;
if((typeof data75 !== "string") && (!((typeof data75 == "number") && (isFinite(data75))))){
const err138 = {instancePath:instancePath+"/floors/" + key30.replace(/~/g, "~0").replace(/\//g, "~1")+"/dead",schemaPath:"#/properties/floors/additionalProperties/properties/dead/type",keyword:"type",params:{type: schema19.properties.floors.additionalProperties.properties.dead.type}};
if(vErrors === null){
vErrors = [err138];
}
else {
vErrors.push(err138);
}
errors++;
}
}
}
else {
const err139 = {instancePath:instancePath+"/floors/" + key30.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/floors/additionalProperties/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err139];
}
else {
vErrors.push(err139);
}
errors++;
}
}
}
else {
const err140 = {instancePath:instancePath+"/floors",schemaPath:"#/properties/floors/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err140];
}
else {
vErrors.push(err140);
}
errors++;
}
}
if(data.crew !== undefined){
let data76 = data.crew;
if(data76 && typeof data76 == "object" && !Array.isArray(data76)){
for(const key33 in data76){
if(!(((key33 === "people") || (key33 === "each")) || (key33 === "machine"))){
const err141 = {instancePath:instancePath+"/crew",schemaPath:"#/properties/crew/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key33}};
if(vErrors === null){
vErrors = [err141];
}
else {
vErrors.push(err141);
}
errors++;
}
}
if(data76.people !== undefined){
let data77 = data76.people;
if(!(((typeof data77 == "number") && (!(data77 % 1) && !isNaN(data77))) && (isFinite(data77)))){
const err142 = {instancePath:instancePath+"/crew/people",schemaPath:"#/properties/crew/properties/people/type",keyword:"type",params:{type: "integer"}};
if(vErrors === null){
vErrors = [err142];
}
else {
vErrors.push(err142);
}
errors++;
}
if((typeof data77 == "number") && (isFinite(data77))){
if(data77 > 200 || isNaN(data77)){
const err143 = {instancePath:instancePath+"/crew/people",schemaPath:"#/properties/crew/properties/people/maximum",keyword:"maximum",params:{comparison: "<=", limit: 200}};
if(vErrors === null){
vErrors = [err143];
}
else {
vErrors.push(err143);
}
errors++;
}
if(data77 < 1 || isNaN(data77)){
const err144 = {instancePath:instancePath+"/crew/people",schemaPath:"#/properties/crew/properties/people/minimum",keyword:"minimum",params:{comparison: ">=", limit: 1}};
if(vErrors === null){
vErrors = [err144];
}
else {
vErrors.push(err144);
}
errors++;
}
}
}
if(data76.each !== undefined){
let data78 = data76.each;
if((typeof data78 !== "string") && (!((typeof data78 == "number") && (isFinite(data78))))){
const err145 = {instancePath:instancePath+"/crew/each",schemaPath:"#/properties/crew/properties/each/type",keyword:"type",params:{type: schema19.properties.crew.properties.each.type}};
if(vErrors === null){
vErrors = [err145];
}
else {
vErrors.push(err145);
}
errors++;
}
}
if(data76.machine !== undefined){
let data79 = data76.machine;
if(data79 && typeof data79 == "object" && !Array.isArray(data79)){
if(data79.kind === undefined){
const err146 = {instancePath:instancePath+"/crew/machine",schemaPath:"#/properties/crew/properties/machine/required",keyword:"required",params:{missingProperty: "kind"}};
if(vErrors === null){
vErrors = [err146];
}
else {
vErrors.push(err146);
}
errors++;
}
for(const key34 in data79){
if(!((key34 === "kind") || (key34 === "limit"))){
const err147 = {instancePath:instancePath+"/crew/machine",schemaPath:"#/properties/crew/properties/machine/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key34}};
if(vErrors === null){
vErrors = [err147];
}
else {
vErrors.push(err147);
}
errors++;
}
}
if(data79.kind !== undefined){
let data80 = data79.kind;
if(typeof data80 !== "string"){
const err148 = {instancePath:instancePath+"/crew/machine/kind",schemaPath:"#/properties/crew/properties/machine/properties/kind/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err148];
}
else {
vErrors.push(err148);
}
errors++;
}
if(!((((data80 === "forks") || (data80 === "crane")) || (data80 === "hoist")) || (data80 === "gin-pole"))){
const err149 = {instancePath:instancePath+"/crew/machine/kind",schemaPath:"#/properties/crew/properties/machine/properties/kind/enum",keyword:"enum",params:{allowedValues: schema19.properties.crew.properties.machine.properties.kind.enum}};
if(vErrors === null){
vErrors = [err149];
}
else {
vErrors.push(err149);
}
errors++;
}
}
if(data79.limit !== undefined){
let data81 = data79.limit;
if((typeof data81 !== "string") && (!((typeof data81 == "number") && (isFinite(data81))))){
const err150 = {instancePath:instancePath+"/crew/machine/limit",schemaPath:"#/properties/crew/properties/machine/properties/limit/type",keyword:"type",params:{type: schema19.properties.crew.properties.machine.properties.limit.type}};
if(vErrors === null){
vErrors = [err150];
}
else {
vErrors.push(err150);
}
errors++;
}
}
}
else {
const err151 = {instancePath:instancePath+"/crew/machine",schemaPath:"#/properties/crew/properties/machine/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err151];
}
else {
vErrors.push(err151);
}
errors++;
}
}
}
else {
const err152 = {instancePath:instancePath+"/crew",schemaPath:"#/properties/crew/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err152];
}
else {
vErrors.push(err152);
}
errors++;
}
}
if(data.prices !== undefined){
let data82 = data.prices;
if(data82 && typeof data82 == "object" && !Array.isArray(data82)){
for(const key35 in data82){
let data83 = data82[key35];
if((typeof data83 == "number") && (isFinite(data83))){
if(data83 < 0 || isNaN(data83)){
const err153 = {instancePath:instancePath+"/prices/" + key35.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/prices/additionalProperties/minimum",keyword:"minimum",params:{comparison: ">=", limit: 0}};
if(vErrors === null){
vErrors = [err153];
}
else {
vErrors.push(err153);
}
errors++;
}
}
else {
const err154 = {instancePath:instancePath+"/prices/" + key35.replace(/~/g, "~0").replace(/\//g, "~1"),schemaPath:"#/properties/prices/additionalProperties/type",keyword:"type",params:{type: "number"}};
if(vErrors === null){
vErrors = [err154];
}
else {
vErrors.push(err154);
}
errors++;
}
}
}
else {
const err155 = {instancePath:instancePath+"/prices",schemaPath:"#/properties/prices/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err155];
}
else {
vErrors.push(err155);
}
errors++;
}
}
if(data.ask !== undefined){
let data84 = data.ask;
if(Array.isArray(data84)){
const len1 = data84.length;
for(let i1=0; i1<len1; i1++){
let data85 = data84[i1];
if(data85 && typeof data85 == "object" && !Array.isArray(data85)){
if(data85.what === undefined){
const err156 = {instancePath:instancePath+"/ask/" + i1,schemaPath:"#/properties/ask/items/required",keyword:"required",params:{missingProperty: "what"}};
if(vErrors === null){
vErrors = [err156];
}
else {
vErrors.push(err156);
}
errors++;
}
if(data85.whom === undefined){
const err157 = {instancePath:instancePath+"/ask/" + i1,schemaPath:"#/properties/ask/items/required",keyword:"required",params:{missingProperty: "whom"}};
if(vErrors === null){
vErrors = [err157];
}
else {
vErrors.push(err157);
}
errors++;
}
for(const key36 in data85){
if(!((key36 === "what") || (key36 === "whom"))){
const err158 = {instancePath:instancePath+"/ask/" + i1,schemaPath:"#/properties/ask/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key36}};
if(vErrors === null){
vErrors = [err158];
}
else {
vErrors.push(err158);
}
errors++;
}
}
if(data85.what !== undefined){
let data86 = data85.what;
if(typeof data86 === "string"){
if(!pattern23.test(data86)){
const err159 = {instancePath:instancePath+"/ask/" + i1+"/what",schemaPath:"#/properties/ask/items/properties/what/pattern",keyword:"pattern",params:{pattern: "\\S"}};
if(vErrors === null){
vErrors = [err159];
}
else {
vErrors.push(err159);
}
errors++;
}
}
else {
const err160 = {instancePath:instancePath+"/ask/" + i1+"/what",schemaPath:"#/properties/ask/items/properties/what/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err160];
}
else {
vErrors.push(err160);
}
errors++;
}
}
if(data85.whom !== undefined){
let data87 = data85.whom;
if(typeof data87 === "string"){
if(!pattern23.test(data87)){
const err161 = {instancePath:instancePath+"/ask/" + i1+"/whom",schemaPath:"#/properties/ask/items/properties/whom/pattern",keyword:"pattern",params:{pattern: "\\S"}};
if(vErrors === null){
vErrors = [err161];
}
else {
vErrors.push(err161);
}
errors++;
}
}
else {
const err162 = {instancePath:instancePath+"/ask/" + i1+"/whom",schemaPath:"#/properties/ask/items/properties/whom/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err162];
}
else {
vErrors.push(err162);
}
errors++;
}
}
}
else {
const err163 = {instancePath:instancePath+"/ask/" + i1,schemaPath:"#/properties/ask/items/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err163];
}
else {
vErrors.push(err163);
}
errors++;
}
}
}
else {
const err164 = {instancePath:instancePath+"/ask",schemaPath:"#/properties/ask/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err164];
}
else {
vErrors.push(err164);
}
errors++;
}
}
if(data.accept !== undefined){
let data88 = data.accept;
if(Array.isArray(data88)){
const len2 = data88.length;
for(let i2=0; i2<len2; i2++){
let data89 = data88[i2];
if(data89 && typeof data89 == "object" && !Array.isArray(data89)){
if(data89.check === undefined){
const err165 = {instancePath:instancePath+"/accept/" + i2,schemaPath:"#/properties/accept/items/required",keyword:"required",params:{missingProperty: "check"}};
if(vErrors === null){
vErrors = [err165];
}
else {
vErrors.push(err165);
}
errors++;
}
if(data89.because === undefined){
const err166 = {instancePath:instancePath+"/accept/" + i2,schemaPath:"#/properties/accept/items/required",keyword:"required",params:{missingProperty: "because"}};
if(vErrors === null){
vErrors = [err166];
}
else {
vErrors.push(err166);
}
errors++;
}
for(const key37 in data89){
if(!(((key37 === "check") || (key37 === "at")) || (key37 === "because"))){
const err167 = {instancePath:instancePath+"/accept/" + i2,schemaPath:"#/properties/accept/items/additionalProperties",keyword:"additionalProperties",params:{additionalProperty: key37}};
if(vErrors === null){
vErrors = [err167];
}
else {
vErrors.push(err167);
}
errors++;
}
}
if(data89.check !== undefined){
if(typeof data89.check !== "string"){
const err168 = {instancePath:instancePath+"/accept/" + i2+"/check",schemaPath:"#/properties/accept/items/properties/check/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err168];
}
else {
vErrors.push(err168);
}
errors++;
}
}
if(data89.at !== undefined){
if(typeof data89.at !== "string"){
const err169 = {instancePath:instancePath+"/accept/" + i2+"/at",schemaPath:"#/properties/accept/items/properties/at/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err169];
}
else {
vErrors.push(err169);
}
errors++;
}
}
if(data89.because !== undefined){
let data92 = data89.because;
if(typeof data92 === "string"){
if(!pattern23.test(data92)){
const err170 = {instancePath:instancePath+"/accept/" + i2+"/because",schemaPath:"#/properties/accept/items/properties/because/pattern",keyword:"pattern",params:{pattern: "\\S"}};
if(vErrors === null){
vErrors = [err170];
}
else {
vErrors.push(err170);
}
errors++;
}
}
else {
const err171 = {instancePath:instancePath+"/accept/" + i2+"/because",schemaPath:"#/properties/accept/items/properties/because/type",keyword:"type",params:{type: "string"}};
if(vErrors === null){
vErrors = [err171];
}
else {
vErrors.push(err171);
}
errors++;
}
}
}
else {
const err172 = {instancePath:instancePath+"/accept/" + i2,schemaPath:"#/properties/accept/items/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err172];
}
else {
vErrors.push(err172);
}
errors++;
}
}
}
else {
const err173 = {instancePath:instancePath+"/accept",schemaPath:"#/properties/accept/type",keyword:"type",params:{type: "array"}};
if(vErrors === null){
vErrors = [err173];
}
else {
vErrors.push(err173);
}
errors++;
}
}
}
else {
const err174 = {instancePath,schemaPath:"#/type",keyword:"type",params:{type: "object"}};
if(vErrors === null){
vErrors = [err174];
}
else {
vErrors.push(err174);
}
errors++;
}
validate52.errors = vErrors;
return errors === 0;
}
validate52.evaluated = {"props":true,"dynamicProps":false,"dynamicItems":false};

