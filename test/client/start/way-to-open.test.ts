/** How `npm start` decides where the sample is opened. */
import { describe, expect, it } from "vitest";
import { findOnPath, type Machine, planToOpen, readWish } from "../../../client/start/way-to-open.ts";

const DESK: Machine = {
  platform: "linux",
  arch: "x64",
  glibc: true,
  terminal: true,
  ci: undefined,
  vsCode: false,
};

const ways = (machine: Partial<Machine>, wish: "any" | "browser" | "no-editor" = "any") =>
  planToOpen({ ...DESK, ...machine }, wish).ways;
const why = (machine: Partial<Machine>, wish: "any" | "browser" | "no-editor" = "any") =>
  planToOpen({ ...DESK, ...machine }, wish).why;

describe("the way to open the sample", () => {
  it("is VS Code where it is installed, on any system", () => {
    for (const platform of ["linux", "darwin", "win32"] as const) {
      expect(ways({ platform, vsCode: true })[0]).toBe("vs-code");
    }
  });

  it("is the served editor on Linux x64 without VS Code, and words when that fails", () => {
    expect(ways({})).toEqual(["browser", "words"]);
    expect(why({})).toBe("");
  });

  it("falls back on the served editor when VS Code does not start", () => {
    expect(ways({ vsCode: true })).toEqual(["vs-code", "browser", "words"]);
  });

  it.each([
    [{ platform: "darwin" }, /darwin/],
    [{ platform: "win32" }, /win32/],
    [{ arch: "arm64" }, /arm64/],
    [{ glibc: false }, /C library/],
  ] satisfies [Partial<Machine>, RegExp][])("is words with a reason on %j", (machine, reason) => {
    expect(ways(machine)).toEqual(["words"]);
    expect(why(machine)).toMatch(reason);
    expect(ways(machine, "browser")).toEqual(["words"]);
    expect(ways({ ...machine, vsCode: true })).toEqual(["vs-code", "words"]);
  });

  it("is none when that was asked for, whatever there is", () => {
    expect(ways({ vsCode: true }, "no-editor")).toEqual([]);
    expect(why({ vsCode: true }, "no-editor")).toContain("--no-editor");
  });

  it("is none in CI, which is said", () => {
    for (const ci of ["true", "1", "yes"]) {
      expect(ways({ ci, vsCode: true })).toEqual([]);
      expect(why({ ci })).toContain("CI");
    }
    for (const ci of ["", "false", "0", "False"]) expect(ways({ ci })).toContain("browser");
  });

  it("stays nowhere without a terminal, where nobody could end it", () => {
    expect(ways({ terminal: false })).toEqual([]);
    expect(why({ terminal: false })).toContain("terminal");
    expect(ways({ terminal: false, vsCode: true })).toEqual(["vs-code"]);
    expect(ways({ terminal: false, platform: "darwin" })).toEqual(["words"]);
  });

  it("is the served editor when that was asked for by name", () => {
    expect(ways({ vsCode: true, terminal: false, ci: "true" }, "browser")).toEqual(["browser", "words"]);
  });
});

describe("the arguments", () => {
  it("are known ones or are named", () => {
    expect(readWish([])).toBe("any");
    expect(readWish(["--no-editor"])).toBe("no-editor");
    expect(readWish(["--browser"])).toBe("browser");
    expect(readWish(["--no-editor", "--fast"])).toEqual({ unknown: "--fast" });
  });
});

describe("a program on the PATH", () => {
  const there =
    (...files: string[]) =>
    (file: string) =>
      files.includes(file);

  it("is the first of its name", () => {
    const env = { PATH: "/usr/bin::/opt/bin:/snap/bin" };
    expect(findOnPath("code", env, "linux", there("/opt/bin/code", "/snap/bin/code"))).toBe("/opt/bin/code");
    expect(findOnPath("code", env, "linux", there("/home/code", "code"))).toBeUndefined();
  });

  it("has one of the endings that Windows runs", () => {
    const env = { PATH: "C:\\Windows;C:\\VS Code\\bin", PATHEXT: ".EXE;.CMD" };
    const file = "C:\\VS Code\\bin\\code.cmd";
    expect(findOnPath("code", env, "win32", there("C:\\VS Code\\bin\\code", file))).toBe(file);
  });

  it("is nowhere without a PATH", () => {
    expect(findOnPath("code", {}, "linux", () => true)).toBeUndefined();
  });
});
