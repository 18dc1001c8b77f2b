/** New Frame: asks what only the builder knows, lets the server write the frame, keeps it, and shows it with its preview. */
import { homedir } from "node:os";
import { l10n, ProgressLocation, Uri, window, workspace } from "vscode";
import type {
  NewFrameAnswers,
  NewFrameQuestion,
  NewFrameQuestionsParams,
  NewFrameWriteResult,
} from "../../server/protocol.ts";
import type { FrameServer } from "../frame-server.ts";
import type { PreviewPanels } from "../preview/panels.ts";
import { askQuestion } from "./ask.ts";
import { askThrough, type Course } from "./course.ts";
import { frameName, freeName } from "./name.ts";

type Units = NewFrameQuestionsParams["units"];

/** Until the file is kept nothing is left behind, wherever the user gives up. Needs no folder and no open frame. */
export async function newFrame(server: FrameServer, panels: PreviewPanels): Promise<void> {
  await server.start();
  const text = await askForText(server);
  if (text === undefined) return;
  const file = await askForFile();
  if (file === undefined) return;
  await workspace.fs.writeFile(file, new TextEncoder().encode(text));
  await window.showTextDocument(file, { preview: false });
  panels.open(file);
}

async function askForText(server: FrameServer): Promise<string | undefined> {
  let units: Units = "inch";
  for (;;) {
    const questions = await server.newFrameQuestions({ units });
    const chosen = await askUnits(units, questions.length + 1);
    if (chosen === undefined) return undefined;
    units = chosen;
    const written = await askAndWrite(server, units);
    if (written !== "back") return written;
  }
}

async function askUnits(given: Units, steps: number): Promise<Units | undefined> {
  const question: NewFrameQuestion = {
    id: "units",
    title: l10n.t("Units"),
    sentence: l10n.t("How do you measure?"),
    choices: [
      { value: "inch", label: l10n.t("Feet and inches") },
      { value: "mm", label: l10n.t("Millimetres") },
    ],
    default: given,
    mayBeUnknown: false,
  };
  const reply = await askQuestion(question, { given, step: 1, steps, refusal: async () => undefined });
  if (reply.kind !== "answer") return undefined;
  return reply.value === "mm" ? "mm" : "inch";
}

/** @returns undefined where the user gave up; `back` to choose the units again */
async function askAndWrite(server: FrameServer, units: Units): Promise<string | undefined | "back"> {
  const questions = await server.newFrameQuestions({ units });
  let course: Course = { questions, answers: { units }, from: 0, to: questions.length };
  for (;;) {
    const answers = await ask(server, units, course);
    if (answers === "back" || answers === undefined) return answers;
    const written = await write(server, answers);
    if (written === undefined) return undefined;
    if ("text" in written) return written.text;
    // an answer that no frame can be made for is asked for once more, and only that one
    const index = Math.max(
      0,
      questions.findIndex(({ id }) => id === written.question),
    );
    const change = l10n.t("Change the Answer");
    const decided = await window.showWarningMessage(
      written.why,
      { modal: true, detail: written.help },
      change,
    );
    if (decided !== change) return undefined;
    course = { questions, answers, from: index, to: index + 1 };
  }
}

async function ask(
  server: FrameServer,
  units: Units,
  course: Course,
): Promise<NewFrameAnswers | undefined | "back"> {
  const steps = course.questions.length + 1;
  const done = await askThrough(course, async (question, given, index, answers) => {
    // the usual answer may go by those before it
    const usual = (await server.newFrameQuestions({ units, answers })).find(({ id }) => id === question.id);
    return askQuestion(question, {
      given: answers[question.id] ?? usual?.default ?? given,
      step: index + 2,
      steps,
      refusal: (answer) => server.newFrameRefusal({ id: question.id, answer, answers }),
    });
  });
  return done === "cancel" ? undefined : done;
}

/** @returns undefined where the user does not want to wait for it */
async function write(
  server: FrameServer,
  answers: NewFrameAnswers,
): Promise<NewFrameWriteResult | undefined> {
  const title = l10n.t("Working out sections and joints");
  const options = { location: ProgressLocation.Notification, title, cancellable: true };
  return window.withProgress(options, async (_, cancel) => {
    try {
      return await server.newFrameWrite({ answers }, cancel);
    } catch (error) {
      if (cancel.isCancellationRequested) return undefined;
      throw error;
    }
  });
}

/** Where the user wants it; undefined where they gave up. */
async function askForFile(): Promise<Uri | undefined> {
  const folder = workspace.workspaceFolders?.[0]?.uri ?? Uri.file(homedir());
  const files = await workspace.fs.readDirectory(folder).then(
    (entries) => entries.map(([name]) => name),
    // a folder that cannot be listed still takes a name
    () => [],
  );
  const chosen = await window.showSaveDialog({
    defaultUri: Uri.joinPath(folder, freeName("my-frame", new Set(files))),
    // not the whole ending: dialogs know the last part of a name only, and would put it there twice
    filters: { [l10n.t("Timber Frame")]: ["yaml"] },
    title: l10n.t("New Frame: where to keep it"),
    saveLabel: l10n.t("Keep the Frame Here"),
  });
  if (chosen === undefined) return undefined;
  const path = frameName(chosen.path);
  if (path === chosen.path) return chosen;
  // the dialog asked about the name that was typed, not about the one with our ending
  const file = chosen.with({ path });
  const replace = l10n.t("Replace");
  return (await exists(file)) &&
    (await window.showWarningMessage(
      l10n.t("{0} is there already. Replace it?", file.fsPath),
      { modal: true },
      replace,
    )) !== replace
    ? undefined
    : file;
}

async function exists(file: Uri): Promise<boolean> {
  return workspace.fs.stat(file).then(
    () => true,
    () => false,
  );
}
