/** Every word that a user of the editor reads can be put into another language: ours through l10n, the package's through its keys. */
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { ROOT } from "../../client/start/installed.ts";
import manifest from "../../package.json" with { type: "json" };
import keys from "../../package.nls.json" with { type: "json" };
import schema from "../../schemas/frame.schema.json" with { type: "json" };
import { allMeta } from "../../server/core/checks/reference.ts";
import { called, isPiece, type Piece, type Text, textsBelow } from "../words-in.ts";

const isTranslated = ({ around }: Text) => around.some((piece) => called(piece) === "l10n.t");
/** For whoever works on this program, or for a machine. */
const isForUs = ({ around: [piece] }: Text) =>
  piece !== undefined && (called(piece) === "Error" || /^(Import|Export)/.test(piece.type));

/** What the editor shows of us: texts given here, or put into members of these names. */
const SHOWS =
  /^(window\.show\w*(Message|Pick|Box)|window\.setStatusBarMessage|\.?MarkdownString|\.append\w*)$/;
const SHOWN = /^(title|text|tooltip|name|label|placeHolder|prompt|detail|description)$/;

function isShown({ around }: Text): boolean {
  // one of two texts is as good as a text
  const piece = around.find(({ type }) => !/^(Conditional|Logical)Expression$/.test(type));
  if (piece === undefined) return false;
  if (SHOWS.test(called(piece))) return true;
  if (piece.type === "AssignmentExpression" && isPiece(piece.left) && isPiece(piece.left.property))
    return SHOWN.test(String(piece.left.property.name));
  return piece.type === "Property" && isPiece(piece.key) && SHOWN.test(String(piece.key.name));
}

/** What a reader would see of a text: of a page, what stands between its tags and in the attributes that are read out. */
function readable(text: string): string {
  if (!text.includes("</")) return text;
  const attributes = [...text.matchAll(/(?:title|aria-label|alt|placeholder)="([^"]*)"/g)].map(
    ([, said]) => said,
  );
  return [text.replace(/<[^>]*>/g, " "), ...attributes].join(" ");
}

const WORDS = /\p{L}{2,}[,.:;]? +\p{L}{2,}|\p{L}\{\}|\p{L} \{\}|\{\} \p{L}/u;
const IN_PAGE = /\p{L}/u;

/** Texts with words in them that no reader sees. */
const FOR_MACHINES: ReadonlySet<string> = new Set([
  "default-src 'none'; style-src {}; script-src 'nonce-{}'", // the page's own rule of what it may load
]);

const TEXTS = textsBelow("client", (file) => !file.startsWith("start/"));

/** The first argument of every `l10n.t`. */
const PATTERNS = TEXTS.flatMap(({ texts }) =>
  texts.filter(({ text, around: [call] }) => {
    const first = call && called(call) === "l10n.t" && (call.arguments as readonly Piece[])[0];
    return first && first.value === text;
  }),
).map(({ text }) => text);

/** Whether a text is what a call of `say.text` looks up, also as one of two. */
function isSaid({ around }: Text): boolean {
  const [piece] = around.filter(({ type }) => !/^(Conditional|Logical)Expression$/.test(type));
  return piece !== undefined && /(^|\.)text$/.test(called(piece));
}

/** Whether a text stands in a table of the module: what is looked up there is said elsewhere. */
const isListed = ({ around }: Text): boolean =>
  around.some(
    ({ type, init }) =>
      type === "VariableDeclarator" && isPiece(init) && /^(Object|Array|New|TS)/.test(init.type),
  ) && !around.some(({ type }) => /Function|Import/.test(type));

const WORDED = /\p{L}{2}/u;
/** Ids, paths, and how well a number is known, which the program reads itself. */
const ID = /^\/|^[a-z\d]+(-[a-z\d]+)+$|^(derived|uncertain)$/;
/** Nobody reads these in the editor; or they are names of woods and units. */
const DATA = /^(cli|document|core\/(wood|quantity|frame)|generate|node)/;
const HOLE = /\{[a-z0-9-]+\}/i;
/** Two words in a row: a sentence, or a part of one. */
const SENTENCE = /\p{L}{2}[^\p{L}]? \p{L}/u;

/** Whether a text is a citation, or for us. */
/** Begins with the name of what is cited. */
const CITATION = /^[A-Z]/;

const isCited = ({ text, around }: Text): boolean =>
  around.some(
    (piece) =>
      called(piece) === "Error" ||
      (/^(Import|Export)\w*Declaration$/.test(piece.type) &&
        piece.source !== null &&
        piece.source !== undefined) ||
      (piece.type === "Property" && isPiece(piece.key) && piece.key.name === "source" && CITATION.test(text)),
  );

/** Patterns of the server: what it says, what stands in its tables, what its checks and its schema explain. */
function serverPatterns(): string[] {
  const texts = textsBelow("server", (file) => !DATA.test(file)).flatMap((one) => one.texts);
  const said = texts
    .filter((text) => !isCited(text))
    .filter((text) => isSaid(text) || isListed(text) || SENTENCE.test(text.text) || HOLE.test(text.text))
    .map(({ text }) => text);
  const explained = allMeta().flatMap(({ title, level, explanation }) => [
    title,
    level,
    ...Object.values(explanation),
  ]);
  return [...said, ...explained, ...describedIn(schema)].filter(
    (text) => WORDED.test(text) && !ID.test(text) && !text.includes("{}"),
  );
}

/** What the schema says in words: descriptions, where usual values are from, and its own values, read as words. */
function describedIn(value: unknown): string[] {
  if (typeof value !== "object" || value === null) return [];
  const {
    enum: values,
    const: only,
    description,
    "x-default-source": source,
  } = value as Readonly<Record<string, unknown>>;
  const own = [
    description,
    source,
    ...[only, ...(Array.isArray(values) ? values : [])].map((one) =>
      typeof one === "string" ? one.replaceAll("-", " ") : one,
    ),
  ];
  return [...own.filter((text) => typeof text === "string"), ...Object.values(value).flatMap(describedIn)];
}

describe("what the extension says", () => {
  it("stands in the bundle for translators, and nothing else does (`-u` writes it)", async () => {
    const said = [...new Set([...PATTERNS, ...serverPatterns()])].sort();
    expect(said.length).toBeGreaterThan(700);
    const bundle = Object.fromEntries(said.map((text) => [text, text]));
    await expect(`${JSON.stringify(bundle, null, 2)}\n`).toMatchFileSnapshot(
      join(ROOT, "client/l10n/bundle.l10n.json"),
    );
  });

  it("is given to l10n as a plain text, so that it can be looked up", () => {
    const calls = TEXTS.map(({ source }) => source.match(/\bl10n\.t\(/g)?.length ?? 0);
    expect(PATTERNS.length).toBe(calls.reduce((sum, one) => sum + one, 0));
  });

  it.each(TEXTS)("goes through l10n in $file", ({ texts }) => {
    const left = texts
      .filter((text) => !isTranslated(text) && !isForUs(text) && !FOR_MACHINES.has(text.text))
      .filter((one) => {
        const seen = readable(one.text.replaceAll("\n", " "));
        const words = seen === one.text ? WORDS : IN_PAGE;
        return words.test(seen) || (isShown(one) && IN_PAGE.test(seen));
      });
    expect(left.map(({ text }) => text)).toEqual([]);
  });
});

describe("what the package says", () => {
  const KEY = /^%(.*)%$/;
  const SAID = /^(title|\w*[dD]escriptions?|aliases)$/;

  /** Every text under a member that is shown, and every key anywhere. */
  function said(value: unknown, shown = false): string[] {
    if (typeof value === "string") return shown || KEY.test(value) ? [value] : [];
    if (typeof value !== "object" || value === null) return [];
    return Object.entries(value).flatMap(([name, inner]) =>
      said(inner, SAID.test(name) || (Array.isArray(value) && shown)),
    );
  }

  it("is a key into package.nls.json, where each has words and none is left over", () => {
    const used = said(manifest).map((text) => KEY.exec(text)?.[1] ?? `not a key: ${text}`);
    expect([...new Set(used)].sort()).toEqual(Object.keys(keys).sort());
    for (const words of Object.values(keys)) expect(words).toMatch(/\p{L}/u);
  });

  it("goes into the package with its words", () => {
    expect(manifest.l10n).toBe("./client/l10n");
    expect(manifest.files).toEqual(expect.arrayContaining(["client/l10n", "package.nls.json"]));
  });
});
