/** The language server inside a web worker. */
import { BrowserMessageReader, BrowserMessageWriter, createConnection } from "vscode-languageserver/browser";
import { serve } from "./main.ts";

// The types of the page are loaded, not those of a worker; both post and receive messages alike.
const port = self as unknown as Worker;

serve(createConnection(new BrowserMessageReader(port), new BrowserMessageWriter(port)));
