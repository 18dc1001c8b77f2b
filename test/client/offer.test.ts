import { describe, expect, it } from "vitest";
import { HEAD_LINES, shouldOffer } from "../../client/offer.ts";

const ASKED = { language: "yaml", text: "frame: Shed\n", isFrame: false, offered: false, never: false };

describe("the offer to read a YAML file as a frame", () => {
  it.each([
    "frame: Shed",
    "frame:",
    "frame:\n  x: 1",
    "\uFEFFframe: Shed\n",
    "# a 🪵 comment\r\n\r\n  # another\r\nframe: Shed\r\nformat: 1\r\n",
    "# old\rframe: Shed\r",
    "%YAML 1.2\n---\nframe: Shed",
    "--- # one\nframe: Shed",
    "--- frame: Shed",
    '"frame": Shed',
    "'frame' : Shed",
  ])("is made for %j", (text) => expect(shouldOffer({ ...ASKED, text })).toBe(true));

  it.each([
    "",
    "# only a comment",
    "name: x\nframe: Shed",
    "  frame: Shed",
    "frames: Shed",
    "frame:Shed",
    "frame",
    "- frame: Shed",
    "{frame: Shed}",
    "#frame: Shed",
    `${"#\n".repeat(HEAD_LINES)}frame: Shed`,
  ])("is not made for %j", (text) => expect(shouldOffer({ ...ASKED, text })).toBe(false));

  it.each([
    { language: "bentwright-frame" },
    { language: "plaintext" },
    { isFrame: true },
    { offered: true },
    { never: true },
  ])("is not made with %j", (other) => expect(shouldOffer({ ...ASKED, ...other })).toBe(false));
});
