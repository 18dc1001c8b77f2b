/** Every word that a user of the editor reads can be put into another language: ours through l10n, the package's through its keys. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parseAst } from "vitest/node";
import { ROOT } from "../../client/start/installed.ts";
import manifest from "../../package.json" with { type: "json" };
import keys from "../../package.nls.json" with { type: "json" };

/** A piece of the syntax tree, as far as this test looks at it. */
interface Piece {
  readonly type: string;
  readonly [member: string]: unknown;
}

interface Text {
  readonly text: string;
  /** the pieces around it, from the innermost */
  readonly around: readonly Piece[];
}

const isPiece = (value: unknown): value is Piece =>
  typeof value === "object" && value !== null && "type" in value && typeof value.type === "string";

/** Every text of a program; where a value is put into one there stands `{}`. */
function textsIn(piece: Piece, around: readonly Piece[] = []): Text[] {
  const own: Text[] = [];
  if (piece.type === "Literal" && typeof piece.value === "string") own.push({ text: piece.value, around });
  if (piece.type === "TemplateLiteral") {
    const quasis = piece.quasis as readonly { value: { cooked: string } }[];
    own.push({ text: quasis.map(({ value }) => value.cooked).join("{}"), around });
  }
  const inner = Object.values(piece).flat().filter(isPiece);
  return [...own, ...inner.flatMap((one) => textsIn(one, [piece, ...around]))];
}

/** `l10n.t`, `window.showErrorMessage`, `Error`; empty for anything else. */
function called({ type, callee }: Piece): string {
  if (!/^(Call|New)Expression$/.test(type) || !isPiece(callee)) return "";
  if (callee.type === "Identifier") return String(callee.name);
  const { object, property } = callee;
  return isPiece(object) && isPiece(property) ? `${object.name ?? ""}.${property.name ?? ""}` : "";
}

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

const FILES = readdirSync(join(ROOT, "client"), { recursive: true, encoding: "utf8" })
  .filter((file) => file.endsWith(".ts") && !file.startsWith("start/"))
  .sort();
const TEXTS = FILES.map((file) => ({
  file,
  texts: textsIn(
    parseAst(readFileSync(join(ROOT, "client", file), "utf8"), { lang: "ts" }) as unknown as Piece,
  ),
}));

/** The first argument of every `l10n.t`. */
const PATTERNS = TEXTS.flatMap(({ texts }) =>
  texts.filter(({ text, around: [call] }) => {
    const first = call && called(call) === "l10n.t" && (call.arguments as readonly Piece[])[0];
    return first && first.value === text;
  }),
).map(({ text }) => text);

describe("what the extension says", () => {
  it("stands in the bundle for translators, and nothing else does (`-u` writes it)", async () => {
    const said = [...new Set(PATTERNS)].sort();
    expect(said.length).toBeGreaterThan(30);
    const bundle = Object.fromEntries(said.map((text) => [text, text]));
    await expect(`${JSON.stringify(bundle, null, 2)}\n`).toMatchFileSnapshot(
      join(ROOT, "client/l10n/bundle.l10n.json"),
    );
  });

  it("is given to l10n as a plain text, so that it can be looked up", () => {
    const calls = FILES.map(
      (file) => readFileSync(join(ROOT, "client", file), "utf8").match(/\bl10n\.t\(/g)?.length ?? 0,
    );
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
