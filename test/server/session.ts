/** An editor's side of the language server, over streams: as a process or in memory. */
import { type ChildProcess, spawn } from "node:child_process";
import { PassThrough, type Readable, type Writable } from "node:stream";
import {
  createConnection,
  createProtocolConnection,
  type InitializeResult,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from "vscode-languageserver/node";
import type { FrameService } from "../../server/language/frame-service.ts";
import { serve } from "../../server/main.ts";
import { CHECKED_NOTIFICATION, type CheckedParams } from "../../server/protocol.ts";

export class Session {
  readonly connection: ProtocolConnection;
  /** everything that was published, in order */
  readonly published: PublishDiagnosticsParams[] = [];
  readonly checked: CheckedParams[] = [];
  readonly log: string[] = [];
  /** what the user is shown */
  readonly shown: string[] = [];
  readonly #waiting = new Set<() => void>();

  constructor(
    readonly output: Readable,
    readonly input: Writable,
  ) {
    this.connection = createProtocolConnection(
      new StreamMessageReader(output),
      new StreamMessageWriter(input),
    );
    const heard =
      <T>(list: T[]) =>
      (item: T): void => {
        list.push(item);
        for (const look of this.#waiting) look();
      };
    this.connection.onNotification("textDocument/publishDiagnostics", heard(this.published));
    this.connection.onNotification(CHECKED_NOTIFICATION, heard(this.checked));
    const logged = heard(this.log);
    this.connection.onNotification("window/logMessage", ({ message }: { message: string }) =>
      logged(message),
    );
    const told = heard(this.shown);
    this.connection.onNotification("window/showMessage", ({ message }: { message: string }) => told(message));
    this.connection.listen();
  }

  /** @param capabilities what this editor can do, as it says itself; @param options what our own client adds */
  async start(capabilities: object = {}, options: object = {}): Promise<InitializeResult> {
    const result = await this.connection.sendRequest<InitializeResult>("initialize", {
      processId: null,
      rootUri: null,
      capabilities,
      initializationOptions: options,
    });
    await this.connection.sendNotification("initialized", {});
    return result;
  }

  open(uri: string, text: string, version = 1, languageId = "yaml"): Promise<void> {
    return this.connection.sendNotification("textDocument/didOpen", {
      textDocument: { uri, languageId, version, text },
    });
  }

  /** Replaces the whole text, or what stands in the range. */
  change(uri: string, version: number, text: string, range?: object): Promise<void> {
    return this.connection.sendNotification("textDocument/didChange", {
      textDocument: { uri, version },
      contentChanges: [range ? { range, text } : { text }],
    });
  }

  save(uri: string): Promise<void> {
    return this.connection.sendNotification("textDocument/didSave", { textDocument: { uri } });
  }

  close(uri: string): Promise<void> {
    return this.connection.sendNotification("textDocument/didClose", { textDocument: { uri } });
  }

  request<T>(method: string, params: unknown): Promise<T> {
    return this.connection.sendRequest<T>(method, params);
  }

  /** The first that matches, among what has come and what will. */
  async until<T>(find: () => T | undefined, what: string, patience = 10_000): Promise<T> {
    const found = find();
    if (found !== undefined) return found;
    return new Promise<T>((resolve, reject) => {
      const stop = (): void => {
        clearTimeout(timer);
        this.#waiting.delete(look);
      };
      const look = (): void => {
        const now = find();
        if (now === undefined) return;
        stop();
        resolve(now);
      };
      const timer = setTimeout(() => {
        stop();
        reject(new Error(`Waited in vain for ${what}; published: ${JSON.stringify(this.published)}`));
      }, patience);
      this.#waiting.add(look);
    });
  }

  diagnosticsOf(uri: string, version: number): Promise<PublishDiagnosticsParams> {
    return this.until(
      () => this.published.find((one) => one.uri === uri && one.version === version),
      `findings of version ${version}`,
    );
  }
}

/** A server in this process. */
export function inMemory(service?: FrameService): Session {
  const up = new PassThrough();
  const down = new PassThrough();
  const connection = createConnection(new StreamMessageReader(up), new StreamMessageWriter(down));
  if (service) serve(connection, () => service);
  else serve(connection);
  return new Session(down, up);
}

/** The same, ready for documents. */
export async function started(...args: Parameters<typeof inMemory>): Promise<Session> {
  const session = inMemory(...args);
  await session.start();
  return session;
}

/** The bundled server as any editor starts it. */
export function asProcess(...args: readonly string[]): {
  readonly session: Session;
  readonly process: ChildProcess;
} {
  const child = spawn(process.execPath, ["dist/server.js", ...args], { stdio: ["pipe", "pipe", "inherit"] });
  return { session: new Session(child.stdout, child.stdin), process: child };
}
