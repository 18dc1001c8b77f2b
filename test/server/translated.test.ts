/**
 * All that the server says can be said in another language: with a bundle in which every letter of every pattern is
 * another, no English sentence is left over. What stands in the file, names of woods and of standards stay as they are.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import bundle from "../../client/l10n/bundle.l10n.json" with { type: "json" };
import { ROOT } from "../../client/start/installed.ts";
import { allMeta } from "../../server/core/checks/reference.ts";
import {
  NEW_FRAME_QUESTIONS_REQUEST,
  NEW_FRAME_REFUSAL_REQUEST,
  NEW_FRAME_WRITE_REQUEST,
  PAGE_REQUEST,
} from "../../server/protocol.ts";
import { textsBelow } from "../words-in.ts";
import { inMemory, type Session } from "./session.ts";

const STRANGE = "ж";
/** Letters but those of holes and of what stands in code. */
const strange = (pattern: string): string =>
  pattern.replace(/\{[a-z0-9-]+\}|`[^`]*`|\p{L}/giu, (piece) => (piece.length > 1 ? piece : STRANGE));
const WORDS = Object.fromEntries(Object.keys(bundle).map((pattern) => [pattern, strange(pattern)]));

const FILES = ["samples", "test/frames"].flatMap((folder) =>
  readdirSync(join(ROOT, folder))
    .filter((file) => file.endsWith(".frame.yaml"))
    .map((file) => join(folder, file)),
);

/** Citations, and the data of woods and coverings with its sources, stay as they are. */
const DATA = [
  ...allMeta().map(({ source }) => source.text),
  ...textsBelow("server/core", (file) => /^(wood|fasteners|loads|roof|members|ground)\//.test(file)).flatMap(
    ({ texts }) => texts.map(({ text }) => text),
  ),
]
  .join("\n")
  .toLowerCase();

/** Two English words in a row. */
const ENGLISH = /(?<![\w-])[a-z]{3,}(?: [a-z]{2,})+(?![\w-])/gi;

/** Every text in an answer, whatever its shape. */
function textsIn(value: unknown, key = ""): string[] {
  if (typeof value === "string")
    return /^(newText|uri|kind|code|source|href|command|sortText|filterText|id|value)$/.test(key) &&
      key !== "value"
      ? []
      : [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([name, inner]) => textsIn(inner, name));
}

/** @param text of the file, whose own words may be repeated */
function english(value: unknown, text = ""): string[] {
  return textsIn(value).flatMap((said) => {
    const rest = said.replace(/\(data:[^)]*\)|`[^`]*`|“[^”]*”/g, " ");
    return (
      (rest.match(ENGLISH) ?? [])
        .filter((words) => !text.includes(words))
        // a wood and the source of its row stand side by side
        .filter(
          (words) =>
            !words
              .toLowerCase()
              .split(": ")
              .every((part) => DATA.includes(part)),
        )
        .map((words) => `${words}  <- ${said.slice(0, 110)}`)
    );
  });
}

describe("in another language", () => {
  let session: Session;
  beforeAll(async () => {
    session = inMemory();
    await session.start(
      {
        textDocument: {
          codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: ["quickfix"] } } },
          completion: { completionItem: { documentationFormat: ["markdown"] } },
        },
      },
      { words: WORDS, pages: true, accepts: true },
    );
  });
  afterAll(() => session.connection.dispose());

  test.each(FILES)(
    "%s: findings, their pages and fixes, hovers, lenses, hints and completions",
    async (file) => {
      const text = readFileSync(join(ROOT, file), "utf8");
      const uri = `file:///${file}`;
      await session.open(uri, text);
      const { diagnostics } = await session.diagnosticsOf(uri, 1);
      const said: unknown[] = [
        diagnostics.map(({ message, relatedInformation }) => [message, relatedInformation]),
      ];
      const textDocument = { uri };
      const lines = text.split("\n");
      const end = { line: lines.length, character: 0 };
      for (const { codeDescription } of diagnostics) {
        const query = decodeURIComponent(codeDescription?.href.split("?")[1] ?? "");
        said.push((await session.request<{ markdown: string }>(PAGE_REQUEST, { query })).markdown);
      }
      said.push(await session.request("textDocument/codeLens", { textDocument }));
      said.push(
        await session.request("textDocument/inlayHint", {
          textDocument,
          range: { start: { line: 0, character: 0 }, end },
        }),
      );
      for (const { range } of diagnostics)
        said.push(
          await session.request("textDocument/codeAction", { textDocument, range, context: { diagnostics } }),
        );
      for (const [line, words] of lines.entries())
        for (const { index: character } of words.matchAll(/[\w/"-]+/g)) {
          said.push(
            await session.request("textDocument/hover", { textDocument, position: { line, character } }),
          );
          if (character % 3 === 0)
            said.push(
              await session.request("textDocument/completion", {
                textDocument,
                position: { line, character },
              }),
            );
        }
      expect([...new Set(english(said, text))]).toEqual([]);
    },
  );

  test("the questions of New Frame, its refusals and its file", async () => {
    const said: unknown[] = [
      await session.request(NEW_FRAME_QUESTIONS_REQUEST, { units: "inch", answers: {} }),
    ];
    const refused = [
      ["width", "abc"],
      ["length", "-3 ft"],
      ["bays", "0"],
      ["eave", "1e9"],
      ["snow", "7 ft"],
      ["species", "balsa"],
      ["mill", "x, y"],
    ] as const;
    for (const [id, answer] of refused)
      said.push(await session.request(NEW_FRAME_REFUSAL_REQUEST, { id, answer, answers: { units: "inch" } }));
    const answers = { units: "inch", roof: "shed", width: "10 ft", length: "12 ft", bays: "1" };
    said.push(await session.request(NEW_FRAME_WRITE_REQUEST, { answers: { ...answers, mill: "8 ft" } }));
    const { text } = await session.request<{ text: string }>(NEW_FRAME_WRITE_REQUEST, {
      answers: { ...answers, species: "unknown", mill: "unknown" },
    });
    said.push(...(text.match(/#.*/g) ?? []), ...(text.match(/what: .*/g) ?? []));
    expect(said.length).toBeGreaterThan(15);
    expect([...new Set(english(said))]).toEqual([]);
  });
});
