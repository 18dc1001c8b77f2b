/** One question of New Frame in the editor's own input: a list to pick from, or a line to type. */
import {
  type Disposable,
  l10n,
  type QuickInput,
  QuickInputButtons,
  type QuickPickItem,
  ThemeIcon,
  window,
} from "vscode";
import { NEW_FRAME_UNKNOWN, type NewFrameQuestion } from "../../server/protocol.ts";
import type { Reply } from "./course.ts";

/** What is typed for "I don't know yet". */
const TYPED_UNKNOWN = "?";

export interface Step {
  /** the answer to begin with */
  readonly given: string;
  /** from 1 */
  readonly step: number;
  readonly steps: number;
  /** why a typed answer cannot be taken, in words; undefined where it can */
  refusal(answer: string): Promise<string | undefined>;
}

/** Never rejects for what the user does: closing it cancels. */
export function askQuestion(question: NewFrameQuestion, step: Step): Promise<Reply> {
  return question.choices === undefined ? askTyped(question, step) : askChoice(question, step);
}

interface ChoiceItem extends QuickPickItem {
  readonly value: string;
}

function askChoice(
  { title, sentence, choices = [], mayBeUnknown }: NewFrameQuestion,
  step: Step,
): Promise<Reply> {
  const pick = window.createQuickPick<ChoiceItem>();
  const items = choices.map(
    ({ value, label, detail }): ChoiceItem =>
      detail === undefined ? { value, label } : { value, label, detail },
  );
  if (mayBeUnknown) items.push({ value: NEW_FRAME_UNKNOWN, label: l10n.t("I don't know yet") });
  pick.items = items;
  pick.activeItems = items.filter(({ value }) => value === step.given);
  pick.placeholder = sentence;
  pick.matchOnDetail = true;
  return shown(pick, title, step, (reply) => [
    pick.onDidTriggerButton((button) => {
      if (button === QuickInputButtons.Back) reply({ kind: "back" });
    }),
    pick.onDidAccept(() => {
      const [chosen] = pick.selectedItems;
      if (chosen !== undefined) reply({ kind: "answer", value: chosen.value });
    }),
  ]);
}

function askTyped({ title, sentence, mayBeUnknown }: NewFrameQuestion, step: Step): Promise<Reply> {
  const input = window.createInputBox();
  const unknown = { iconPath: new ThemeIcon("question"), tooltip: l10n.t("I don't know yet") };
  input.value = step.given === NEW_FRAME_UNKNOWN ? TYPED_UNKNOWN : step.given;
  input.valueSelection = [0, input.value.length];
  input.prompt = mayBeUnknown ? l10n.t("{0} Type ? if you don't know yet.", sentence) : sentence;
  const isUnknown = (): boolean => mayBeUnknown && input.value.trim() === TYPED_UNKNOWN;
  return shown(
    input,
    title,
    step,
    (reply) => {
      const judge = async (): Promise<boolean> => {
        const judged = input.value;
        const words = isUnknown() ? undefined : await step.refusal(judged);
        // what was typed meanwhile has a judgement of its own
        if (input.value !== judged) return false;
        input.validationMessage = words;
        return words === undefined;
      };
      return [
        input.onDidTriggerButton((button) => {
          if (button === QuickInputButtons.Back) reply({ kind: "back" });
          else if (button === unknown) reply({ kind: "answer", value: NEW_FRAME_UNKNOWN });
        }),
        input.onDidChangeValue(() => void judge()),
        input.onDidAccept(async () => {
          if (await judge())
            reply({ kind: "answer", value: isUnknown() ? NEW_FRAME_UNKNOWN : input.value.trim() });
        }),
      ];
    },
    mayBeUnknown ? [unknown] : [],
  );
}

type Buttons = ReturnType<typeof window.createInputBox>["buttons"];

/** Shows an input until it is answered or closed, and takes it away. */
function shown(
  input: QuickInput & { buttons: Buttons },
  title: string,
  { step, steps }: Step,
  listen: (reply: (reply: Reply) => void) => readonly Disposable[],
  buttons: Buttons = [],
): Promise<Reply> {
  input.title = title;
  input.step = step;
  input.totalSteps = steps;
  // a user looks something up elsewhere and comes back to the question
  input.ignoreFocusOut = true;
  input.buttons = step > 1 ? [QuickInputButtons.Back, ...buttons] : buttons;
  const subscriptions: Disposable[] = [];
  return new Promise<Reply>((resolve) => {
    subscriptions.push(
      ...listen(resolve),
      input.onDidHide(() => resolve({ kind: "cancel" })),
    );
    input.show();
  }).finally(() => {
    for (const one of subscriptions) one.dispose();
    input.dispose();
  });
}
