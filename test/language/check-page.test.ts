/** The page of a check in the editor, and the links that lead to it. */
import { describe, expect, test } from "vitest";
import { allMeta } from "../../server/core/checks/reference.ts";
import { linkedFinding, nameOfFinding, pageLink, pageOf } from "../../server/language/check-page.ts";
import { diagnosticsOf } from "../../server/language/diagnostics.ts";
import { createFrameService, type Snapshot } from "../../server/language/frame-service.ts";
import { linksFor } from "../../server/language/page-links.ts";
import { gate } from "../core/checks/gate.ts";

const URI = "file:///home/a%20b/gate%23%201.frame.yaml";
const THIN = gate({
  joints:
    "joints: {head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 1 in, length: 4 in}}}\n",
});
const open = (text: string): Snapshot => createFrameService().open(URI, 1, text);
const thin = (snapshot: Snapshot) => {
  const found = snapshot.findings.find(({ finding }) => finding.check === "tenon-thin");
  if (!found) throw new Error("no finding");
  return found.finding;
};

test.each(allMeta().map(({ id, title }) => [id, title] as const))(
  "%s has a page of its own",
  (check, title) => {
    const page = pageOf({ uri: URI, check, path: "" }, undefined);
    expect(page).toContain(`# ${title}`);
    expect(page).toContain("**Source:**");
  },
);

describe("a link", () => {
  test("leads back to its finding, through whatever the address holds", () => {
    const finding = thin(open(THIN));
    const link = new URL(pageLink(URI, finding));
    expect(link.protocol).toBe("bentwright-page:");
    expect(link.pathname).toBe("/tenon-thin.md");
    expect(linkedFinding(decodeURIComponent(link.search.slice(1)))).toEqual(nameOfFinding(URI, finding));
  });

  test.each(["", "{", "null", "3", '{"uri": 1}', '{"uri": "a", "check": "b"}', "%"])(
    "%j names nothing",
    (query) => expect(linkedFinding(query)).toBeUndefined(),
  );

  test("leads to our page, else to the chapter that is installed, else nowhere", () => {
    const snapshot = open(THIN);
    const href = (links: boolean, pages: boolean, reference?: string): string | undefined =>
      diagnosticsOf(snapshot, linksFor({ links, pages }, reference)).find(({ code }) => code === "tenon-thin")
        ?.codeDescription?.href;
    const reference = "file:///x/check-reference.md";
    expect(href(true, true, reference)).toBe(pageLink(URI, thin(snapshot)));
    expect(href(true, false, reference)).toBe(`${reference}#tenon-thin`);
    expect(href(true, false)).toBeUndefined();
    expect(href(false, true, reference)).toBeUndefined();
  });
});

describe("the page", () => {
  test("has this case with its numbers, then the check", () => {
    const snapshot = open(THIN);
    const page = pageOf(nameOfFinding(URI, thin(snapshot)), snapshot);
    expect(page).toMatch(/^# A tenon too thin/);
    expect(page).toContain("gate\\# 1.frame.yaml, line 13");
    expect(page).toContain("**Warning:** The tenon at head@A1 is 1 in thick");
    expect(page).toContain("**Where:** head@A1 and head@A2");
    const order = ["## Here", "## The check", "**What:**", "**Why:**", "**What to do:**", "**Source:**"];
    expect(order.map((part) => page.indexOf(part)).toSorted((a, b) => a - b)).toEqual(
      order.map((part) => page.indexOf(part)),
    );
    expect(page.indexOf("## Here")).toBeGreaterThan(0);
    expect(page).toContain("earthquake");
  });

  test("says when the finding or the file is gone, and knows no other checks", () => {
    const name = nameOfFinding(URI, thin(open(THIN)));
    expect(pageOf(name, open(THIN.replace("thickness: 1 in", "thickness: 2 in")))).toContain(
      "no longer in the file",
    );
    expect(pageOf(name, undefined)).toContain("The file is closed");
    expect(pageOf({ ...name, check: "<b>" }, undefined)).toBe("There is no check \\<b\\>.\n");
  });

  test("keeps what the file holds from turning into Markdown", () => {
    const text = THIN.replaceAll("post", "p_[x](command:y)");
    const snapshot = open(text);
    for (const { finding } of snapshot.findings)
      expect(pageOf(nameOfFinding(URI, finding), snapshot)).not.toContain("[x](");
    expect(snapshot.findings.length).toBeGreaterThan(0);
  });

  test("of an accepted finding names the reason", () => {
    const snapshot = open(`${THIN}accept: [{check: tenon-thin, because: "small load"}]\n`);
    expect(pageOf(nameOfFinding(URI, thin(snapshot)), snapshot)).toContain(
      "**Accepted because:** small load",
    );
  });
});
