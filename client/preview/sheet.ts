/** The drawing on the page: replaced in place, moved, zoomed, lit and clicked. */
import type { Place } from "./messages.ts";
import { type Box, panBy, type Size, visible, wholeIn, zoomAt } from "./viewport.ts";

export interface SheetEvents {
  /** something drawn was clicked, or chosen by the Enter key; with its id where it is a joint */
  picked(path: string, joint?: string): void;
  /** the user moved or zoomed; undefined when all of the drawing is shown again */
  moved(place: Place | undefined): void;
}

const ZOOM_STEP = 1.25;
/** CSS pixels an arrow key moves the drawing */
const ARROW_STEP = 40;
/** A press that moves further than this many CSS pixels is a drag, not a click. */
const CLICK_SLACK = 4;
const WHOLE: Box = { x: 0, y: 0, width: 1, height: 1 };

export class Sheet {
  readonly #viewport: HTMLElement;
  readonly #sheet: SVGSVGElement;
  readonly #drawing: SVGGElement;
  readonly #events: SheetEvents;
  /** undefined while all of the drawing is shown */
  #place: Place | undefined;
  /** what the drawing covers, from its own viewBox */
  #box = WHOLE;
  #text = "";

  constructor(viewport: HTMLElement, sheet: SVGSVGElement, drawing: SVGGElement, events: SheetEvents) {
    this.#viewport = viewport;
    this.#sheet = sheet;
    this.#drawing = drawing;
    this.#events = events;
    new ResizeObserver(() => this.#layOut()).observe(viewport);
    viewport.addEventListener("wheel", (event) => this.#wheel(event), { passive: false });
    viewport.addEventListener("pointerdown", (event) => this.#press(event));
    viewport.addEventListener("keydown", (event) => this.#key(event));
  }

  /** Where the next drawing is shown; undefined for all of it. */
  set place(place: Place | undefined) {
    this.#place = place;
  }

  /** Replaces what is drawn; zoom, place and keyboard focus stay. */
  show(svg: Element): void {
    const text = svg.outerHTML;
    if (text !== this.#text) {
      this.#text = text;
      this.#box = boxOf(svg.getAttribute("viewBox")) ?? WHOLE;
      this.#replace(svg);
    }
    this.#layOut();
  }

  /** Marks the elements of these ids, and no others, as what the cursor stands on. */
  light(ids: ReadonlySet<string>): void {
    for (const element of this.#drawing.querySelectorAll("[data-id]")) {
      element.classList.toggle("selected", ids.has(element.getAttribute("data-id") ?? ""));
    }
  }

  zoomIn(): void {
    this.#zoom(ZOOM_STEP, this.#middle());
  }

  zoomOut(): void {
    this.#zoom(1 / ZOOM_STEP, this.#middle());
  }

  /** Shows all of the drawing, and keeps doing so when it or the page changes size. */
  fit(): void {
    this.#moveTo(undefined);
  }

  #replace(svg: Element): void {
    const focused = document.activeElement?.closest("[data-path]")?.getAttribute("data-id");
    for (const name of this.#drawing.getAttributeNames()) {
      if (name !== "id") this.#drawing.removeAttribute(name);
    }
    for (const { name, value } of svg.attributes) {
      if (!ROOT_ONLY.has(name) && !name.startsWith("xmlns")) this.#drawing.setAttribute(name, value);
    }
    // The drawing's own title would hang over the whole page as a tooltip.
    for (const child of [...svg.children]) if (child.localName === "title") child.remove();
    this.#drawing.replaceChildren(...svg.childNodes);
    for (const element of this.#drawing.querySelectorAll("[data-path]")) makeButton(element);
    if (focused === undefined || focused === null) return;
    const again = this.#drawing.querySelector(`[data-path][data-id="${CSS.escape(focused)}"]`);
    if (again instanceof SVGElement) again.focus({ preventScroll: true });
  }

  #size(): Size {
    return {
      width: Math.max(1, this.#viewport.clientWidth),
      height: Math.max(1, this.#viewport.clientHeight),
    };
  }

  #middle(): { x: number; y: number } {
    const { width, height } = this.#size();
    return { x: width / 2, y: height / 2 };
  }

  #current(): Place {
    return this.#place ?? wholeIn(this.#box, this.#size());
  }

  #layOut(): void {
    const { x, y, width, height } = visible(this.#current(), this.#size());
    this.#sheet.setAttribute("viewBox", `${x} ${y} ${width} ${height}`);
  }

  #moveTo(place: Place | undefined): void {
    this.#place = place;
    this.#layOut();
    this.#events.moved(place);
  }

  #zoom(factor: number, at: { x: number; y: number }): void {
    this.#moveTo(zoomAt(this.#current(), factor, at, this.#box, this.#size()));
  }

  #pan(dx: number, dy: number): void {
    this.#moveTo(panBy(this.#current(), dx, dy, this.#box));
  }

  #wheel(event: WheelEvent): void {
    event.preventDefault();
    const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
    const edge = this.#viewport.getBoundingClientRect();
    const at = { x: event.clientX - edge.left, y: event.clientY - edge.top };
    this.#zoom(Math.exp((-event.deltaY * lines) / 500), at);
  }

  #press(down: PointerEvent): void {
    if (down.button !== 0) return;
    const target = down.target;
    let last = down;
    let dragged = false;
    const move = (event: PointerEvent) => {
      dragged ||= Math.hypot(event.clientX - down.clientX, event.clientY - down.clientY) > CLICK_SLACK;
      if (!dragged) return;
      this.#viewport.classList.add("is-dragging");
      this.#viewport.setPointerCapture(event.pointerId);
      this.#pan(event.clientX - last.clientX, event.clientY - last.clientY);
      last = event;
    };
    const end = (event: PointerEvent) => {
      this.#viewport.removeEventListener("pointermove", move);
      this.#viewport.removeEventListener("pointerup", end);
      this.#viewport.removeEventListener("pointercancel", end);
      this.#viewport.classList.remove("is-dragging");
      if (!dragged && event.type === "pointerup") this.#pick(target);
    };
    this.#viewport.addEventListener("pointermove", move);
    this.#viewport.addEventListener("pointerup", end);
    this.#viewport.addEventListener("pointercancel", end);
  }

  #key(event: KeyboardEvent): void {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const actions: Readonly<Record<string, () => void>> = {
      "+": () => this.zoomIn(),
      "=": () => this.zoomIn(),
      "-": () => this.zoomOut(),
      _: () => this.zoomOut(),
      0: () => this.fit(),
      ArrowLeft: () => this.#pan(ARROW_STEP, 0),
      ArrowRight: () => this.#pan(-ARROW_STEP, 0),
      ArrowUp: () => this.#pan(0, ARROW_STEP),
      ArrowDown: () => this.#pan(0, -ARROW_STEP),
      Enter: () => this.#pick(event.target),
      " ": () => this.#pick(event.target),
    };
    const action = Object.hasOwn(actions, event.key) ? actions[event.key] : undefined;
    if (action === undefined) return;
    event.preventDefault();
    action();
  }

  #pick(target: EventTarget | null): void {
    const element = target instanceof Element ? target.closest("[data-path]") : null;
    const path = element?.getAttribute("data-path");
    if (!element || path === null || path === undefined) return;
    const joint = element.classList.contains("joint") ? element.getAttribute("data-id") : null;
    if (joint === null) this.#events.picked(path);
    else this.#events.picked(path, joint);
  }
}

/** Attributes of the drawing's root that say where it stands, which is ours to say. */
const ROOT_ONLY = new Set([
  "id",
  "viewBox",
  "width",
  "height",
  "x",
  "y",
  "preserveAspectRatio",
  "role",
  "aria-label",
]);

function boxOf(viewBox: string | null): Box | undefined {
  const [x, y, width, height] = (viewBox ?? "")
    .trim()
    .split(/[\s,]+/)
    .map(Number);
  if (x === undefined || y === undefined || width === undefined || height === undefined) return undefined;
  return [x, y, width, height].every(Number.isFinite) && width > 0 && height > 0
    ? { x, y, width, height }
    : undefined;
}

/** What leads to the text says so to those who do not see it; the drawing says which of these the keyboard reaches. */
function makeButton(element: Element): void {
  element.setAttribute("role", "button");
  const title = [...element.children].find((child) => child.localName === "title")?.textContent;
  element.setAttribute("aria-label", title ?? element.getAttribute("data-id") ?? "");
}
