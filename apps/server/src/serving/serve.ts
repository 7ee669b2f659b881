import { createReadStream } from "node:fs";
import { createServer, type RequestListener, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { pipeline } from "node:stream";
import { answerFor } from "./answerFor.ts";

export interface ServeInput {
  /** The folder to serve: the built app. */
  readonly folder: string;
  /** The first port to try; 0 lets the system choose. */
  readonly port?: number;
  /** Whether the next free port will do where this one is taken; else `PortTaken` is thrown. */
  readonly nextFree?: boolean;
  /** Loopback by default: nobody else on the network reaches it. */
  readonly host?: string;
  /** Where the app stands on its host: "/" or "/club/cap/". */
  readonly base?: string;
}

export interface Served {
  /** Where to open the app: http://127.0.0.1:4870/ */
  readonly address: string;
  readonly port: number;
  readonly close: () => Promise<void>;
}

/** The port asked for is in use, and no other was to be taken. */
export class PortTaken extends Error {
  readonly code = "portTaken";
  readonly port: number;

  constructor(port: number) {
    super(`Port ${port} is in use. Stop what uses it, or choose another port.`);
    this.name = "PortTaken";
    this.port = port;
  }
}

/**
 * Serves the files of a folder over HTTP, to this machine only unless another host is named.
 *
 * @throws {PortTaken} where the port is in use and `nextFree` is not set
 */
export async function serve({
  folder,
  port = 4870,
  nextFree = false,
  host = "127.0.0.1",
  base = "/",
}: ServeInput): Promise<Served> {
  const server = createServer(listenerOf(folder, base));
  const last = nextFree ? Math.min(port + 200, 65_535) : port;
  for (let next = port; ; next++) {
    if (await listens(server, next, host)) break;
    if (next >= last) throw new PortTaken(port);
  }
  const { port: taken } = server.address() as AddressInfo;
  const named = host.includes(":") ? `[${host}]` : host;
  return { address: `http://${named}:${taken}${base}`, port: taken, close: () => closed(server) };
}

function listenerOf(folder: string, base: string): RequestListener {
  return (request, response) => {
    const method = request.method ?? "GET";
    answerFor({ folder, base, method, target: request.url ?? "/" }).then(
      ({ status, headers, file, text }) => {
        response.writeHead(status, headers);
        if (method === "HEAD" || file === undefined) response.end(method === "HEAD" ? undefined : text);
        else pipeline(createReadStream(file), response, () => response.destroy());
      },
      () => response.writeHead(404).end(),
    );
  };
}

function listens(server: Server, port: number, host: string): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const refused = (problem: NodeJS.ErrnoException) => {
      server.off("listening", ready);
      if (problem.code === "EADDRINUSE") resolve(false);
      else reject(problem);
    };
    const ready = () => {
      server.off("error", refused);
      resolve(true);
    };
    server.once("error", refused).once("listening", ready).listen(port, host);
  });
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeAllConnections();
  });
}
