/** The drawing of one joint beneath the elevation: shown, replaced, closed by its button or the Escape key. */

export interface JointPaneParts {
  /** all of it */
  readonly pane: HTMLElement;
  readonly title: HTMLElement;
  readonly close: HTMLElement;
  /** where the drawing goes */
  readonly view: HTMLElement;
}

export class JointPane {
  readonly #parts: JointPaneParts;

  /** @param closed called when the user closes it */
  constructor(parts: JointPaneParts, closed: () => void) {
    this.#parts = parts;
    const close = (): void => {
      if (parts.pane.hidden) return;
      this.hide();
      closed();
    };
    parts.close.addEventListener("click", close);
    parts.pane.ownerDocument.addEventListener("keydown", (event) => {
      if (event.key === "Escape") close();
    });
  }

  /** @param svg cleaned already; its own title would hang over all of it as a tooltip */
  show(title: string, svg: Element): void {
    const { pane, title: heading, view } = this.#parts;
    for (const child of [...svg.children]) if (child.localName === "title") child.remove();
    heading.textContent = title;
    view.replaceChildren(svg);
    pane.hidden = false;
  }

  hide(): void {
    this.#parts.pane.hidden = true;
    this.#parts.view.replaceChildren();
  }
}
