/** The browser that shows the editor's window. */
import { type Browser, chromium } from "playwright-core";
import { BROWSER } from "./installed.ts";

export function startBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: BROWSER,
    args: [
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
}
