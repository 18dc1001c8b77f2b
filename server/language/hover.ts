/** What shows when the mouse rests: one file under `hover/` for each thing that can be there. */
import type { Position, Range } from "vscode-languageserver-types";
import type { DeckResult } from "../core/roof/deck-strip.ts";
import { schemaAt } from "../document/schema.ts";
import { keysOf } from "../document/tree.ts";
import { CAUTION } from "./caution.ts";
import type { Snapshot } from "./frame-service.ts";
import { gapWords } from "./gap-words.ts";
import { deckHover } from "./hover/deck.ts";
import { footHover } from "./hover/foot.ts";
import { jointHover } from "./hover/joint.ts";
import { jointForceTable } from "./hover/joint-forces.ts";
import { keyHover } from "./hover/key.ts";
import { levelHover, quantityHover } from "./hover/length.ts";
import { loadHover } from "./hover/loads.ts";
import { pierHover } from "./hover/pier.ts";
import { pierForceTable } from "./hover/pier-forces.ts";
import { speciesHover } from "./hover/species.ts";
import { timberHover } from "./hover/timber.ts";
import { timberForces } from "./hover/timber-forces.ts";
import { jointPicture } from "./joint-picture.ts";
import { type Spot, spotAt } from "./spot.ts";
import { entrySubject, referredSubject, type Subject } from "./subject.ts";

export interface FrameHover {
  readonly contents: { readonly kind: "markdown"; readonly value: string };
  readonly range: Range;
}

/** A part of a hover; engineering parts bring the caution with them. */
interface Part {
  readonly text: string;
  readonly engineering: boolean;
}

const plain = (text: string | undefined): Part[] => (text ? [{ text, engineering: false }] : []);
const engineering = (text: string | undefined): Part[] => (text ? [{ text, engineering: true }] : []);

/** What the reader of a hover can show. */
export interface HoverAbilities {
  /** pictures as data in the Markdown; left out: they stay out */
  readonly pictures?: boolean;
}

interface Asked extends Snapshot {
  readonly able: HoverAbilities;
}

/** @returns what there is to say about a place of the file; undefined for nothing */
export function hoverAt(
  snapshot: Snapshot,
  position: Position,
  able: HoverAbilities = {},
): FrameHover | undefined {
  const spot = spotAt(snapshot, position);
  if (!spot) return undefined;
  const asked: Asked = { ...snapshot, able };
  const parts = spot.onKey ? aboutKey(asked, spot) : aboutValue(asked, spot);
  if (parts.length === 0) return undefined;
  const texts = parts.map(({ text }) => text);
  if (parts.some((part) => part.engineering)) texts.push(`_${snapshot.say.text(CAUTION)}_`);
  const { document } = snapshot;
  return {
    contents: { kind: "markdown", value: texts.join("\n\n") },
    range: { start: document.positionAt(spot.place.start), end: document.positionAt(spot.place.end) },
  };
}

/** An entry's name shows what it stands for; a key inside a joint shows its meaning and the cut sizes. */
function aboutKey(snapshot: Asked, spot: Spot): Part[] {
  const keys = keysOf(spot.path);
  const entry = isEntry(keys) ? subjectText(snapshot, entrySubjectOf(snapshot, spot)) : [];
  if (entry.length > 0) return entry;
  const schema = schemaAt(snapshot.reading?.index.root, spot.path);
  const key = schema ? plain(keyHover(spot.text, schema, snapshot.say)) : [];
  const [area, name] = keys;
  const wood = area === "timber" && keys.length === 2 ? classText(snapshot, name) : undefined;
  const loads = loadHover(snapshot, spot.path).flatMap(engineering);
  const deck = deckHover(decksOf(snapshot, spot.path), snapshot.say).flatMap(engineering);
  const figures = [...deck, ...loads];
  const without = engineering(missingAt(snapshot, spot.path, figures.length > 0));
  return [...key, ...engineering(wood), ...without, ...figures, ...cutSizes(snapshot, spot)];
}

/** What a part of the file lacks or nobody can read of it: a deck is held against all that the roof weighs. */
function missingAt({ evaluation, say }: Snapshot, path: string, figures: boolean): string | undefined {
  const part = keysOf(path)[0] === "roof" ? "/roof" : path;
  const gaps = evaluation?.results.frame?.solution.loads.gaps ?? [];
  // snow is reckoned by the exposure that stands under the wind: what a load lacks may stand elsewhere
  const own = gaps.filter(
    ({ what, lacks }) =>
      part === `/site/${what}` || lacks.some((key) => key === part || key.startsWith(`${part}/`)),
  );
  return gapWords(own, say, figures)[0];
}

/** The decks that a key names: those of the roof, or that of a floor. */
function decksOf({ evaluation }: Snapshot, path: string): readonly DeckResult[] {
  const decks = evaluation?.results.decks ?? [];
  if (path === "/roof/deck") return decks.filter(({ on }) => "wall" in on);
  const floor = evaluation?.frame.floors.find((one) => one.path === path || one.deck?.path === path);
  return floor ? decks.filter(({ on }) => "floor" in on && on.floor === floor.name) : [];
}

/** The wood of a timber class. */
function classText({ evaluation, say }: Snapshot, name: string | undefined): string | undefined {
  const timberClass = evaluation?.frame.classes.find((one) => one.name === name);
  const timbers = evaluation?.model.timbers.filter((timber) => timber.class?.name === name) ?? [];
  const species = timberClass?.species?.text;
  return species === undefined ? undefined : speciesHover(species, timberClass, timbers, say);
}

/** A name shows what it names; a wood its values; a quantity both systems; everything else what its key means. */
function aboutValue(snapshot: Asked, spot: Spot): Part[] {
  const { say, reading, evaluation } = snapshot;
  const schema = schemaAt(reading?.index.root, spot.path);
  const model = evaluation?.model;
  const names = schema?.["x-ref"] ?? [];
  if (names.includes("species")) {
    const [area, name] = keysOf(spot.path);
    const wood =
      (area === "timber" ? classText(snapshot, name) : undefined) ??
      speciesHover(spot.text, undefined, [], say);
    if (wood !== undefined) return engineering(wood);
  }
  if (model) {
    const referred = subjectText(snapshot, referredSubject(model, spot.path, spot.text));
    if (referred.length > 0) return referred;
  }
  const quantity = schema && reading && quantityHover(spot.text, schema, reading.frame.units, say);
  const meaning = quantity ?? (schema && keyHover(keyOf(snapshot, spot), schema, say));
  return [...plain(meaning), ...cutSizes(snapshot, spot)];
}

/** Everything that sizes a joint shows what it comes to on the wood. */
function cutSizes(snapshot: Asked, spot: Spot): Part[] {
  const keys = keysOf(spot.path);
  const [area, part, detail] = keys;
  const inJoint = area === "joints" && keys.length > 2 && detail !== "of" && detail !== "into";
  const inSeat = area === "roof" && part === "rafters" && (detail === "seat" || detail === "head");
  const inAnchor = area === "piers" && detail === "anchor";
  return inJoint || inSeat || inAnchor ? subjectText(snapshot, entrySubjectOf(snapshot, spot)) : [];
}

function entrySubjectOf(snapshot: Snapshot, spot: Spot): Subject | undefined {
  const model = snapshot.evaluation?.model;
  return model && entrySubject(model, spot.path);
}

function subjectText(snapshot: Asked, subject: Subject | undefined): Part[] {
  const { say, evaluation, able } = snapshot;
  if (!subject || !evaluation) return [];
  const { model, results } = evaluation;
  const { frame } = results;
  switch (subject.kind) {
    case "timbers":
      return [
        timberHover(subject.name, subject.timbers, model, say),
        ...timberForces(subject.timbers, results, say),
      ].flatMap(engineering);
    case "joints":
      return [
        jointHover(
          subject.name,
          subject.joints,
          say,
          able.pictures ? jointPicture(subject.joints, frame, say) : undefined,
        ),
        ...(frame ? jointForceTable(subject.joints, frame, say) : []),
      ].flatMap(engineering);
    case "piers":
      return [
        pierHover(subject.name, subject.piers, say),
        ...(frame ? pierForceTable(subject.piers, frame, say) : []),
        ...footHover(
          model.feet.filter(({ pier }) => subject.piers.includes(pier)),
          frame,
          say,
          able.pictures === true,
        ),
      ].flatMap(engineering);
    case "line":
      return plain(levelHover(subject.name, model, say));
  }
}

/** `/members/post`, `/roof/rafters`: a key that stands for things of the frame. */
function isEntry(keys: readonly string[]): boolean {
  const [area, name] = keys;
  if (area === "roof") return keys.length === 2 && name === "rafters";
  return keys.length === 2 && (area === "members" || area === "joints" || area === "piers");
}

/** The key of a value; for an item of a list, that of the list. */
function keyOf({ reading }: Snapshot, spot: Spot): string {
  const keys = keysOf(spot.path);
  const own = reading?.index.entry(spot.path) ? keys.at(-1) : keys.at(-2);
  return own ?? "";
}
