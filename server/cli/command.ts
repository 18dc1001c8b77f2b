/** What a command of the command line is, and what it may touch. */
import { type ParseArgsConfig, parseArgs } from "node:util";
import type { FrameService } from "../language/frame-service.ts";

/** Files and terminal. `read` and `write` throw as Node does; `-` names standard input. */
export interface Surroundings {
  readonly read: (file: string) => Uint8Array;
  /** @param fresh nothing may be there under that name yet */
  readonly write: (file: string, text: string, fresh?: boolean) => void;
  /** asks whoever sits at the terminal; undefined at the end of what they type. Left out where nobody does */
  readonly ask?: ((question: string) => string | undefined) | undefined;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** whether `out` shows colours */
  readonly color: boolean;
}

export interface Command {
  readonly name: string;
  /** one line for the list of commands */
  readonly summary: string;
  /** text of `--help` */
  readonly help: string;
  /** @throws WrongCall; @returns the exit code */
  readonly run: (args: readonly string[], around: Surroundings, service: FrameService) => number;
}

/** 0: no error in the frame; 1: at least one; 2: called wrongly, or a file cannot be opened. */
export const EXIT = { fine: 0, errors: 1, wrongCall: 2 } as const;

/** The call cannot be carried out as it is written; the message says why and what would do. */
export class WrongCall extends Error {}

type Options = NonNullable<ParseArgsConfig["options"]>;

/**
 * Reads options and the rest of the arguments.
 * @throws WrongCall for an option that does not exist or lacks its value
 */
export function readArguments<const O extends Options>(
  args: readonly string[],
  options: O,
): ReturnType<typeof parseArgs<{ args: string[]; options: O; allowPositionals: true }>> {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true });
  } catch (error) {
    throw new WrongCall(firstSentence(error));
  }
}

function firstSentence(error: unknown): string {
  const text = error instanceof Error ? error.message : String(error);
  return (text.split(/\. (?=To specify)|\n/, 1)[0] ?? text).replace(/\.?$/, ".");
}

/**
 * The text of a file: UTF-8 with or without a byte order mark, or UTF-16 with one. Bytes that are no text become
 * replacement characters, for the reading to report.
 * @throws WrongCall when it cannot be opened
 */
export function readText(file: string, around: Surroundings): string {
  let bytes: Uint8Array;
  try {
    bytes = around.read(file);
  } catch (error) {
    throw new WrongCall(`${nameOf(file)} cannot be opened: ${whyNot(error)}.`);
  }
  const [first, second] = bytes;
  const encoding =
    first === 0xff && second === 0xfe ? "utf-16le" : first === 0xfe && second === 0xff ? "utf-16be" : "utf-8";
  return new TextDecoder(encoding).decode(bytes);
}

/** How a file is called in messages. */
export function nameOf(file: string): string {
  return file === "-" ? "Standard input" : file;
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: "there is no such file or folder",
  EEXIST: "it is there already, and nothing is written over it",
  EISDIR: "it is a folder",
  EACCES: "you have no permission",
  EPERM: "you have no permission",
  ENOTDIR: "a part of its path is not a folder",
  ENAMETOOLONG: "its name is too long",
  ENOSPC: "the disk is full",
  EROFS: "the disk cannot be written to",
  EAGAIN: "nothing is piped into it",
};

/**
 * Writes to a file; `-` is standard output.
 * @param fresh nothing may be there under that name yet
 * @throws WrongCall when it cannot be written
 */
export function writeTo(file: string, text: string, around: Surroundings, fresh = false): void {
  if (file === "-") {
    around.out(text);
    return;
  }
  try {
    around.write(file, text, fresh);
  } catch (error) {
    const why = whyNot(error);
    throw new WrongCall(
      `${file} cannot be written: ${why === REASONS.ENOENT ? "its folder is not there" : why}.`,
    );
  }
}

/** In words why a file could not be read or written. */
function whyNot(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  return REASONS[code] ?? (error instanceof Error ? error.message : String(error));
}
