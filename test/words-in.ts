/** The texts of our own programs, read from their syntax trees: for tests of what can be translated. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseAst } from "vitest/node";
import { ROOT } from "../client/start/installed.ts";

/** A piece of the syntax tree, as far as these tests look at it. */
export interface Piece {
  readonly type: string;
  readonly [member: string]: unknown;
}

export interface Text {
  readonly text: string;
  /** the pieces around it, from the innermost */
  readonly around: readonly Piece[];
}

export interface FileTexts {
  /** below the folder that was asked for */
  readonly file: string;
  readonly source: string;
  readonly texts: readonly Text[];
}

export const isPiece = (value: unknown): value is Piece =>
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
export function called({ type, callee }: Piece): string {
  if (!/^(Call|New)Expression$/.test(type) || !isPiece(callee)) return "";
  if (callee.type === "Identifier") return String(callee.name);
  const { object, property } = callee;
  return isPiece(object) && isPiece(property) ? `${object.name ?? ""}.${property.name ?? ""}` : "";
}

/** The texts of every program below a folder of the repository. */
export function textsBelow(folder: string, wanted: (file: string) => boolean = () => true): FileTexts[] {
  return readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts") && wanted(file))
    .sort()
    .map((file) => {
      const source = readFileSync(join(ROOT, folder, file), "utf8");
      return { file, source, texts: textsIn(parseAst(source, { lang: "ts" }) as unknown as Piece) };
    });
}
