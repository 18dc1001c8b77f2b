/** New Frame as a user answers it, by the keyboard alone. */
import { type EditorWindow, until } from "./editor-window.ts";

/** What the file is called that is offered first. */
export const FILE = "my-frame.frame.yaml";

export const title = (window: EditorWindow) => window.page.locator(".quick-input-title");
export const message = (window: EditorWindow) => window.page.locator(".quick-input-message");
/** A question that is answered by a list shows one. */
export const isList = async (window: EditorWindow) =>
  (await window.page.locator(".quick-input-widget .monaco-list-row").filter({ visible: true }).count()) > 0;

/** How far the questions are, `(3/13)`: from 1, and how many there are. */
export async function progress(window: EditorWindow): Promise<readonly [number, number]> {
  const [, at, of] = /\((\d+)\/(\d+)\)/.exec((await title(window).textContent()) ?? "") ?? [];
  return [Number(at), Number(of)];
}

/** Waits for a question by its number, from 1. */
export const isAt = (window: EditorWindow, step: number) =>
  until(async () => (await progress(window))[0] === step, `question ${step}`);

/** Asks for a new frame; again where a page that was still opening took the keys. */
export async function begin(window: EditorWindow): Promise<void> {
  await until(async () => {
    await window.choose("Bentwright: New Frame");
    const asked = await title(window)
      .waitFor({ timeout: 3000 })
      .then(
        () => true,
        () => false,
      );
    return asked && (await progress(window))[0] === 1;
  }, "the first question");
}

/** Takes the answer that is offered. */
export async function acceptAnswer(window: EditorWindow): Promise<void> {
  const [step, steps] = await progress(window);
  await window.input.press("Enter");
  if (step < steps) await isAt(window, step + 1);
}

/** Takes every answer that is offered, and the file's name. */
export async function keepFile(window: EditorWindow): Promise<void> {
  const [, steps] = await progress(window);
  for (let step = 1; step <= steps; step += 1) await acceptAnswer(window);
  // the editor's own dialog, with a name that is free
  await until(async () => (await window.input.inputValue().catch(() => "")).endsWith(FILE), "the dialog");
  await window.input.press("Enter");
  await window.page.getByRole("tab", { name: FILE }).first().waitFor();
}
