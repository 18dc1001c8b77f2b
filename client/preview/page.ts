/** The page of the preview panel: shows the drawing, moves and zooms it, and tells the panel what is clicked. */
import type { Choice } from "../../server/protocol.ts";
import { JointPane } from "./joint-pane.ts";
import type { FromPage, PageState, Place, ToPage, Wanted } from "./messages.ts";
import { safeSvg } from "./safe-svg.ts";
import { Sheet } from "./sheet.ts";

declare function acquireVsCodeApi(): {
  postMessage(message: FromPage): void;
  getState(): PageState | undefined;
  setState(state: PageState): void;
};

const editor = acquireVsCodeApi();

function byId<T extends Element>(id: string, kind: new () => T): T {
  const element = document.getElementById(id);
  if (element instanceof kind) return element;
  throw new Error(`The page has no ${id}.`);
}

const views = byId("views", HTMLSelectElement);
const layers = byId("layers", HTMLSelectElement);
const cases = byId("cases", HTMLSelectElement);
const caseLabel = byId("case", HTMLElement);
const stale = byId("stale", HTMLElement);
const nothing = byId("nothing", HTMLElement);

const state = editor.getState();
let uri = document.body.dataset.document ?? "";
let wanted: Wanted = { view: state?.view ?? "", layer: state?.layer ?? "", case: state?.case ?? "" };
/** the view that is drawn */
let drawn = "";
let lit: ReadonlySet<string> = new Set();
const places: Record<string, Place> = { ...state?.places };

const sheet = new Sheet(
  byId("viewport", HTMLElement),
  byId("sheet", SVGSVGElement),
  byId("drawing", SVGGElement),
  {
    picked: (path, joint) =>
      editor.postMessage({ kind: "pick", path, ...(joint === undefined ? {} : { joint }) }),
    moved: (place) => {
      if (place === undefined) delete places[drawn];
      else places[drawn] = place;
      save();
    },
  },
);

const jointPane = new JointPane(
  {
    pane: byId("joint", HTMLElement),
    title: byId("joint-title", HTMLElement),
    close: byId("joint-close", HTMLElement),
    view: byId("joint-view", HTMLElement),
  },
  () => {
    editor.postMessage({ kind: "close-joint" });
    byId("viewport", HTMLElement).focus();
  },
);

function showJoint({ joint }: Extract<ToPage, { kind: "joint" }>): void {
  const svg = joint === null ? undefined : safeSvg(joint.svg, parseSvg);
  if (joint === null || svg === undefined) jointPane.hide();
  else jointPane.show(joint.title, svg);
}

function save(): void {
  editor.setState({ uri, ...wanted, places });
}

function showDrawing(message: Extract<ToPage, { kind: "drawing" }>): void {
  uri = message.uri;
  offer(views, message.views, message.view);
  offer(layers, message.layers, message.layer);
  offer(cases, message.cases, message.case);
  caseLabel.hidden = message.cases.length === 0;
  // Written only when it changes: a screen reader says it each time it is written.
  if (stale.textContent !== message.stale) stale.textContent = message.stale;
  document.body.classList.toggle("is-stale", message.stale !== "");
  const svg = message.svg === null ? undefined : safeSvg(message.svg, parseSvg);
  nothing.hidden = svg !== undefined;
  if (svg !== undefined) {
    if (drawn !== message.view) sheet.place = places[message.view];
    drawn = message.view;
    sheet.show(svg);
    sheet.light(lit);
  }
  save();
}

function parseSvg(text: string): Document {
  return new DOMParser().parseFromString(text, "image/svg+xml");
}

/** Fills a list, with one of its entries chosen. */
function offer(list: HTMLSelectElement, choices: readonly Choice[], chosen: string): void {
  const options = choices.map(({ id, title }) => new Option(title, id, false, id === chosen));
  const same =
    options.length === list.options.length &&
    options.every(
      (option, i) => option.value === list.options[i]?.value && option.text === list.options[i]?.text,
    );
  // An open list would close if it were filled anew.
  if (!same) list.replaceChildren(...options);
  list.value = chosen;
  list.disabled = options.length < 2;
}

function want(changed: Partial<Wanted>): void {
  wanted = { ...wanted, ...changed };
  save();
  editor.postMessage({ kind: "view", ...wanted });
}

views.addEventListener("change", () => want({ view: views.value }));
layers.addEventListener("change", () => want({ layer: layers.value }));
cases.addEventListener("change", () => want({ case: cases.value }));
byId("zoom-in", HTMLElement).addEventListener("click", () => sheet.zoomIn());
byId("zoom-out", HTMLElement).addEventListener("click", () => sheet.zoomOut());
byId("fit", HTMLElement).addEventListener("click", () => sheet.fit());

window.addEventListener("message", ({ data }: MessageEvent<ToPage>) => {
  if (data.kind === "drawing") showDrawing(data);
  else if (data.kind === "joint") showJoint(data);
  else if (data.kind === "highlight") {
    lit = new Set(data.ids);
    sheet.light(lit);
  }
});

save();
editor.postMessage({ kind: "ready", ...wanted });
