/** The page of the preview panel: shows the drawing, moves and zooms it, and tells the panel what is clicked. */
import type { FromPage, PageState, Place, ToPage } from "./messages.ts";
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
const stale = byId("stale", HTMLElement);
const nothing = byId("nothing", HTMLElement);

const state = editor.getState();
let uri = document.body.dataset.document ?? "";
/** the view the user asked for */
let wanted = state?.view ?? "";
/** the view that is drawn */
let drawn = "";
let lit: ReadonlySet<string> = new Set();
const places: Record<string, Place> = { ...state?.places };

const sheet = new Sheet(
  byId("viewport", HTMLElement),
  byId("sheet", SVGSVGElement),
  byId("drawing", SVGGElement),
  {
    picked: (path) => editor.postMessage({ kind: "pick", path }),
    moved: (place) => {
      if (place === undefined) delete places[drawn];
      else places[drawn] = place;
      save();
    },
  },
);

function save(): void {
  editor.setState({ uri, view: wanted, places });
}

function showDrawing(message: Extract<ToPage, { kind: "drawing" }>): void {
  uri = message.uri;
  showViews(message);
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

function showViews({ view, views: offered }: Extract<ToPage, { kind: "drawing" }>): void {
  const options = offered.map(({ id, title }) => new Option(title, id, false, id === view));
  const same =
    options.length === views.options.length &&
    options.every(
      (option, i) => option.value === views.options[i]?.value && option.text === views.options[i]?.text,
    );
  // An open list would close if it were filled anew.
  if (!same) views.replaceChildren(...options);
  views.value = view;
  views.disabled = options.length < 2;
}

views.addEventListener("change", () => {
  wanted = views.value;
  save();
  editor.postMessage({ kind: "view", view: wanted });
});
byId("zoom-in", HTMLElement).addEventListener("click", () => sheet.zoomIn());
byId("zoom-out", HTMLElement).addEventListener("click", () => sheet.zoomOut());
byId("fit", HTMLElement).addEventListener("click", () => sheet.fit());

window.addEventListener("message", ({ data }: MessageEvent<ToPage>) => {
  if (data.kind === "drawing") showDrawing(data);
  else if (data.kind === "highlight") {
    lit = new Set(data.ids);
    sheet.light(lit);
  }
});

save();
editor.postMessage({ kind: "ready", view: wanted });
