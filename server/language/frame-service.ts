/**
 * The frame of every open document, from text to findings that know their place. All editor features and the command
 * line stand on this: one object, made by one factory, with one cache for each document.
 */

import same from "fast-deep-equal/es6/index.js";
import { TextDocument } from "vscode-languageserver-textdocument";
import type { Range } from "vscode-languageserver-types";
import type { Finding } from "../core/checks/check.ts";
import type { Say } from "../core/checks/say.ts";
import type { SourceFact } from "../core/checks/source-facts.ts";
import { makeSay, type Translate } from "../core/checks/speak.ts";
import { type Evaluation, evaluate } from "../core/evaluate.ts";
import { isWhole, type Pointer } from "../core/frame/frame.ts";
import type { Model } from "../core/model/model.ts";
import type { Results } from "../core/results.ts";
import { type Reading, readFrame } from "../document/read.ts";
import { type Fault, faultFinding } from "./fault.ts";
import { placeOfFinding, placeOfPath } from "./place.ts";

/** A finding and where it stands in the text. */
export interface LocatedFinding {
  readonly finding: Finding;
  /** within one line */
  readonly range: Range;
  readonly related: readonly { readonly path: Pointer; readonly message: string; readonly range: Range }[];
}

/** Everything that is known of one version of a document. */
export interface Snapshot {
  readonly uri: string;
  readonly version: number;
  readonly document: TextDocument;
  /** undefined only when reading itself broke down; `faults` says so */
  readonly reading: Reading | undefined;
  readonly evaluation: Evaluation | undefined;
  /** in the order of the text; accepted ones among them */
  readonly findings: readonly LocatedFinding[];
  /** words numbers in the units of this file */
  readonly say: Say;
  /** what broke down inside the program; each is among the findings too */
  readonly faults: readonly Fault[];
  /** from text to findings */
  readonly milliseconds: number;
}

/** What one version of a document says, before it is judged. */
export type ReadText = Pick<Snapshot, "uri" | "version" | "document" | "reading" | "say">;

/** A model worth drawing, and whether the text has moved on since. */
interface Drawable {
  readonly model: Model;
  /** what was computed from this model */
  readonly results: Results;
  readonly version: number;
  readonly stale: boolean;
  readonly say: Say;
  /** of the newest version that was checked, in the order of the text */
  readonly findings: readonly LocatedFinding[];
}

export interface FrameService {
  /** Checks a text at once. The same uri, version and text give the same snapshot again. Never throws. */
  open(uri: string, version: number, text: string): Snapshot;
  /**
   * Checks a text in stages and lets other work in between them.
   * @param wanted asked between stages; the work is dropped once it says no
   * @returns undefined when dropped
   */
  openInStages(
    uri: string,
    version: number,
    text: string,
    wanted: () => boolean,
  ): Promise<Snapshot | undefined>;
  /** Reads a text without checking it: quick enough for every move of the cursor. Never throws. */
  read(uri: string, version: number, text: string): ReadText;
  /** The newest frame of a document that can be drawn; undefined while there was none. */
  drawable(uri: string): Drawable | undefined;
  /** Forgets a document. */
  close(uri: string): void;
}

/** What the service calls; tests put a part in its place that breaks down. */
export interface Stages {
  readonly read: typeof readFrame;
  readonly evaluate: typeof evaluate;
  /** milliseconds, from any moment on */
  readonly now: () => number;
}

interface Kept {
  readonly snapshot: Snapshot;
  readonly drawn: Omit<Drawable, "stale" | "findings"> | undefined;
}

/** @param translate words the findings in the reader's language; left out: English */
export function createFrameService(translate?: Translate, stages: Partial<Stages> = {}): FrameService {
  const {
    read,
    now,
    evaluate: judge,
  } = { read: readFrame, evaluate, now: () => performance.now(), ...stages };
  const kept = new Map<string, Kept>();
  const readings = new Map<string, Reading>();

  /** A text is read once, whoever asks first. */
  function readingOf(uri: string, text: string): Reading {
    const before = readings.get(uri);
    if (before?.text === text) return before;
    const reading = read(text);
    readings.set(uri, reading);
    return reading;
  }

  /** What is known already of this very version. */
  function known(uri: string, version: number, text: string): Snapshot | undefined {
    const found = kept.get(uri)?.snapshot;
    return found?.version === version && found.document.getText() === text ? found : undefined;
  }

  function* check(uri: string, version: number, text: string): Generator<undefined, Snapshot> {
    const last = kept.get(uri)?.snapshot;
    let busy = 0;
    const faults: Fault[] = [];
    const guarded = <T>(what: string, work: () => T): T | undefined => {
      const start = now();
      try {
        return work();
      } catch (error) {
        faults.push({ what, error });
        return undefined;
      } finally {
        busy += now() - start;
      }
    };

    const document = TextDocument.create(uri, "yaml", version, text);
    const reading = guarded("reading the file", () => readingOf(uri, text));
    yield;
    const say = makeSay(reading?.frame.units ?? "inch", translate);
    const evaluation = reading && guarded("checking the frame", () => judgeAgain(reading, last, say));
    yield;
    const located = guarded("placing the findings", () =>
      locate(document, reading, evaluation?.findings ?? []),
    );
    const broken = locate(
      document,
      reading,
      faults.map((fault) => faultFinding(fault, say)),
    );
    const snapshot: Snapshot = Object.freeze({
      uri,
      version,
      document,
      reading,
      evaluation,
      findings: [...broken, ...(located ?? [])],
      say,
      faults,
      milliseconds: busy,
    });
    return snapshot;
  }

  /** What was found before stands while the frame and the facts are equal; the model stands while the frame is. */
  function judgeAgain(reading: Reading, before: Snapshot | undefined, say: Say): Evaluation {
    const last = before?.evaluation;
    if (!last || !before?.reading || !same(before.reading.frame, reading.frame))
      return judge(reading.frame, reading.source, last, say);
    return same(before.reading.source, reading.source) ? last : judge(last.frame, reading.source, last, say);
  }

  function keep(snapshot: Snapshot): Snapshot {
    const drawn = drawnOf(snapshot, kept.get(snapshot.uri)?.drawn);
    kept.set(snapshot.uri, { snapshot, drawn });
    return snapshot;
  }

  return Object.freeze({
    open(uri: string, version: number, text: string) {
      const done = known(uri, version, text);
      if (done) return done;
      const work = check(uri, version, text);
      let step = work.next();
      while (!step.done) step = work.next();
      return keep(step.value);
    },
    async openInStages(uri: string, version: number, text: string, wanted: () => boolean) {
      const work = check(uri, version, text);
      let step = work.next();
      while (!step.done) {
        await breath();
        if (!wanted()) return undefined;
        const done = known(uri, version, text);
        if (done) return done;
        step = work.next();
      }
      return keep(step.value);
    },
    read(uri: string, version: number, text: string) {
      const done = known(uri, version, text);
      if (done) return done;
      const document = TextDocument.create(uri, "yaml", version, text);
      const reading = unlessBroken(() => readingOf(uri, text));
      return { uri, version, document, reading, say: makeSay(reading?.frame.units ?? "inch", translate) };
    },
    drawable(uri: string) {
      const found = kept.get(uri);
      if (!found?.drawn) return undefined;
      const { drawn, snapshot } = found;
      return { ...drawn, stale: drawn.version !== snapshot.version, findings: snapshot.findings };
    },
    close(uri: string) {
      kept.delete(uri);
      readings.delete(uri);
    },
  });
}

/** What broke down here breaks down again in the check, which reports it. */
function unlessBroken<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}

/** Lets waiting messages in. */
export function breath(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, 0));
}

/**
 * While a line is half typed its timbers are missing; the drawing then stays as it was, marked as old, instead of
 * losing them for a moment.
 */
function drawnOf(snapshot: Snapshot, before: Kept["drawn"]): Kept["drawn"] {
  const { model, results } = snapshot.evaluation ?? {};
  if (!model || !results || model.timbers.length === 0) return before;
  const halfTyped = !isWhole(model.frame) || (snapshot.reading?.source.facts.some(losesWriting) ?? false);
  if (before && halfTyped && model.timbers.length < before.model.timbers.length) return before;
  return { model, results, version: snapshot.version, say: snapshot.say };
}

const LOST: ReadonlySet<SourceFact["kind"]> = new Set([
  "yaml",
  "unclosed-bracket",
  "unclosed-quote",
  "too-large",
  "not-a-frame",
  "empty",
]);

/** Whether a part of the file was left out because of the way it is written. */
function losesWriting(fact: SourceFact): boolean {
  return LOST.has(fact.kind);
}

function locate(
  document: TextDocument,
  reading: Reading | undefined,
  findings: readonly Finding[],
): LocatedFinding[] {
  const rangeOf = (place: { readonly start: number; readonly end: number }): Range => ({
    start: document.positionAt(place.start),
    end: document.positionAt(place.end),
  });
  return findings
    .map((finding) => ({ finding, place: placeOfFinding(document.getText(), reading?.index, finding) }))
    .sort((a, b) => a.place.start - b.place.start)
    .map(({ finding, place }) => ({
      finding,
      range: rangeOf(place),
      related: finding.related.map((other) => ({
        ...other,
        range: rangeOf(placeOfPath(document.getText(), reading?.index, other.path)),
      })),
    }));
}
