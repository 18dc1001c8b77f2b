/** The page of the preview panel before anything is drawn. */
import { randomUUID } from "node:crypto";
import { l10n, Uri, type Webview } from "vscode";

/**
 * Nothing is allowed but our script and our style sheet: no network, no inline code.
 * @param document the frame's uri, which the page keeps so that it is found again after a reload
 */
export function pageHtml(webview: Webview, extension: Uri, document: Uri): string {
  const script = webview.asWebviewUri(Uri.joinPath(extension, "dist/preview.js"));
  const styles = webview.asWebviewUri(Uri.joinPath(extension, "dist/preview.css"));
  const nonce = randomUUID();
  const policy = `default-src 'none'; style-src ${webview.cspSource}; script-src 'nonce-${nonce}'`;
  return `<!DOCTYPE html>
<html>
<head>
  <meta charset="utf-8">
  <meta http-equiv="Content-Security-Policy" content="${policy}">
  <meta name="viewport" content="width=device-width">
  <link rel="stylesheet" href="${styles}">
  <title>${escapeHtml(l10n.t("Elevation"))}</title>
</head>
<body data-document="${escapeHtml(document.toString())}">
  <header>
    <label>${escapeHtml(l10n.t("View"))} <select id="views"></select></label>
    <label>${escapeHtml(l10n.t("Layer"))} <select id="layers"></select></label>
    <label id="case">${escapeHtml(l10n.t("Loads"))} <select id="cases"></select></label>
    <span class="buttons">
      <button id="zoom-out" title="${escapeHtml(l10n.t("Zoom out (-)"))}" aria-label="${escapeHtml(l10n.t("Zoom out"))}">−</button>
      <button id="zoom-in" title="${escapeHtml(l10n.t("Zoom in (+)"))}" aria-label="${escapeHtml(l10n.t("Zoom in"))}">+</button>
      <button id="fit" title="${escapeHtml(l10n.t("Show all of it (0)"))}">${escapeHtml(l10n.t("Fit"))}</button>
    </span>
    <span id="stale" role="status"></span>
  </header>
  <main id="viewport" tabindex="0" aria-label="${escapeHtml(l10n.t("Elevation; arrow keys move it, plus and minus zoom"))}">
    <svg id="sheet" xmlns="http://www.w3.org/2000/svg"><g id="drawing"></g></svg>
    <p id="nothing">${escapeHtml(l10n.t("Nothing is drawn yet."))}</p>
  </main>
  <section id="joint" aria-labelledby="joint-title" hidden>
    <header>
      <h2 id="joint-title"></h2>
      <button id="joint-close" title="${escapeHtml(l10n.t("Close the joint (Escape)"))}" aria-label="${escapeHtml(l10n.t("Close the joint"))}">×</button>
    </header>
    <div id="joint-view" tabindex="0" aria-label="${escapeHtml(l10n.t("Drawing of the joint"))}"></div>
  </section>
  <script nonce="${nonce}" src="${script}"></script>
</body>
</html>`;
}

function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
