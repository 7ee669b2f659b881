import { mkdir, mkdtemp, rm, symlink, writeFile } from "node:fs/promises";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { answerFor } from "./answerFor.ts";
import { PortTaken, type Served, serve } from "./serve.ts";

describe("the app over HTTP", () => {
  let folder = "";
  const running: Served[] = [];

  beforeEach(async () => {
    const outer = await mkdtemp(join(tmpdir(), "invented-app-"));
    folder = join(outer, "dist");
    await mkdir(join(folder, "assets"), { recursive: true });
    await writeFile(join(outer, "secret.txt"), "not for the network");
    await writeFile(join(folder, "index.html"), "<!doctype html><title>The slip in winter</title>");
    await writeFile(join(folder, "sw.js"), "// keeps the slip");
    await writeFile(join(folder, "manifest.webmanifest"), "{}");
    await writeFile(join(folder, "assets", "skiff-a1B2c3D4.js"), "export {};");
    await writeFile(join(folder, "assets", "jug-a1B2c3D4.woff2"), "");
    await symlink(join(outer, "secret.txt"), join(folder, "out.txt"));
  });
  afterEach(async () => {
    for (const served of running.splice(0)) await served.close();
    await rm(join(folder, ".."), { recursive: true, force: true });
  });
  const start = async (more: Partial<Parameters<typeof serve>[0]> = {}) => {
    const served = await serve({ folder, port: 0, ...more });
    running.push(served);
    return served;
  };

  test("a folder's address gives its page, asked for again each time [ietf-http, RFC 9111 section 5.2.2.4, from memory]", async () => {
    const { address } = await start();
    const answer = await fetch(address);
    expect(answer.status).toBe(200);
    expect(answer.headers.get("content-type")).toBe("text/html; charset=utf-8");
    expect(answer.headers.get("cache-control")).toBe("no-cache");
    expect(await answer.text()).toContain("The slip in winter");
  });

  test("the service worker and the manifest are never kept; files with a digest are [ietf-http, RFC 8246, from memory]", async () => {
    const { address } = await start();
    const kept = async (path: string) => (await fetch(address + path)).headers.get("cache-control");
    expect(await kept("sw.js")).toBe("no-cache");
    expect(await kept("manifest.webmanifest")).toBe("no-cache");
    expect(await kept("assets/skiff-a1B2c3D4.js")).toContain("immutable");
  });

  test("scripts, manifest and faces go out as what they are [ietf-http, RFC 9239 and 8081; w3c-appmanifest; from memory]", async () => {
    const { address } = await start();
    const type = async (path: string) => (await fetch(address + path)).headers.get("content-type");
    expect(await type("sw.js")).toBe("text/javascript; charset=utf-8");
    expect(await type("manifest.webmanifest")).toBe("application/manifest+json; charset=utf-8");
    expect(await type("assets/jug-a1B2c3D4.woff2")).toBe("font/woff2");
  });

  test("works below a path, leads to it, and shows nothing beside it", async () => {
    const { address, port } = await start({ base: "/yard/cap/" });
    expect(address).toBe(`http://127.0.0.1:${port}/yard/cap/`);
    expect((await fetch(`${address}sw.js`)).status).toBe(200);
    const without = await fetch(address.slice(0, -1), { redirect: "manual" });
    expect([without.status, without.headers.get("location")]).toEqual([308, "/yard/cap/"]);
    expect((await fetch(`http://127.0.0.1:${port}/sw.js`)).status).toBe(404);
  });

  test.each(["/../secret.txt", "/%2e%2e/secret.txt", "/..%2fsecret.txt", "/assets/../../secret.txt", "/out.txt"])(
    "no way out of the folder: %s is refused",
    async (target) => {
      const { port } = await start();
      expect(await rawStatus(port, `GET ${target}`)).toBe(403);
    },
  );

  test.each(["/%", "/a%00b", "/..\\secret.txt", "secret.txt"])(
    "an address that cannot be read is refused: %s",
    async (target) => {
      expect((await answerFor({ folder, base: "/", method: "GET", target })).status).toBe(400);
    },
  );

  test("only reading is possible [ietf-http, RFC 9110 section 15.5.6, from memory]", async () => {
    const { address } = await start();
    const answer = await fetch(address, { method: "POST", body: "x" });
    expect([answer.status, answer.headers.get("allow")]).toEqual([405, "GET, HEAD"]);
    const head = await fetch(address, { method: "HEAD" });
    expect([head.status, head.headers.get("content-length"), await head.text()]).toEqual([200, "48", ""]);
  });

  test("folders and what is missing: not found", async () => {
    const { address } = await start();
    expect((await fetch(`${address}assets`)).status).toBe(404);
    expect((await fetch(`${address}nothing.js`)).status).toBe(404);
  });

  test("a taken port: the next free one, or a plain refusal", async () => {
    const first = await start();
    const second = await start({ port: first.port, nextFree: true });
    expect(second.port).toBeGreaterThan(first.port);
    await expect(serve({ folder, port: first.port })).rejects.toThrow(PortTaken);
  });

  test("on loopback unless told otherwise", async () => {
    expect((await start()).address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
  });
});

/** Speaks HTTP by hand: fetch tidies `..` out of an address before it is sent. */
function rawStatus(port: number, words: string): Promise<number> {
  return new Promise((resolve, reject) => {
    let answer = "";
    const socket = connect(port, "127.0.0.1", () =>
      socket.write(`${words} HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n`),
    );
    socket.on("data", (bytes) => {
      answer += bytes.toString();
    });
    socket.on("end", () => resolve(Number(answer.split(" ")[1])));
    socket.on("error", reject);
  });
}
