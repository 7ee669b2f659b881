import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { chromiumFlags, needChromium } from "../../scripts/need.mjs";
import { buildWriter } from "./writing/buildWriter.ts";
import { howManyKills } from "./writing/howManyKills.ts";

const kills = howManyKills(3);
const told: { what: string; body: string }[] = [];
let wake = () => {};
let pages = "";
let profiles = "";

const server = createServer((request, response) => {
  const { pathname } = new URL(request.url ?? "/", "http://localhost");
  if (request.method === "POST") {
    let body = "";
    request.setEncoding("utf8").on("data", (text: string) => {
      body += text;
    });
    request.on("end", () => {
      told.push({ what: pathname.replace("/told/", ""), body });
      response.end();
      wake();
    });
    return;
  }
  try {
    const file = pathname === "/" ? "index.html" : pathname.slice(1);
    response.setHeader("content-type", file.endsWith(".js") ? "text/javascript" : "text/html");
    response.end(readFileSync(join(pages, file)));
  } catch {
    response.writeHead(404).end();
  }
});

beforeAll(async () => {
  pages = buildWriter({ writer: new URL("./writing/browserWriter.ts", import.meta.url), forNode: false });
  profiles = mkdtempSync(join(tmpdir(), "captray-profile-"));
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
}, 60_000);
afterAll(() => {
  server.close();
  server.closeAllConnections();
  rmSync(profiles, { recursive: true, force: true, maxRetries: 5 });
});

test(
  `browser: ${kills} times killed with -9 while writing, every acknowledged change is found`,
  async () => {
    const acknowledged: string[] = [];
    for (let kill = 0; kill < kills; kill++) {
      await visit("kills", "?write", () => count("kept") >= 15 + 10 * (kill % 5));
      acknowledged.push(...take("kept"));
      await visit("kills", "?read", () => count("read") > 0);
      const [read = ""] = take("read");
      const { names, record, cards, problems } = JSON.parse(read) as {
        readonly names: readonly string[];
        readonly record: { readonly label: string };
        readonly cards: readonly unknown[];
        readonly problems: readonly unknown[];
      };
      expect(acknowledged.filter((name) => !names.includes(name))).toEqual([]);
      expect(record.label).toMatch(/^count \d+$/);
      expect([cards.length, problems]).toEqual([1, []]);
    }
  },
  60_000 + kills * 30_000,
);

test("browser: two pages change one sheet at once, and lose nothing", async () => {
  await visit("two", "?two", () => count("seen") >= 2);
  expect(take("seen")).toEqual(["100", "100"]);
  await visit("two", "?read", () => count("read") > 0);
  const [read = ""] = take("read");
  const { names, record, cards } = JSON.parse(read) as {
    readonly names: readonly string[];
    readonly record: { readonly mishaps: readonly { readonly what: string }[] };
    readonly cards: readonly { readonly mishaps: readonly string[] }[];
  };
  expect(new Set(names).size).toBe(100);
  expect(record.mishaps.filter(({ what }) => what === "knocked")).toHaveLength(50);
  expect(record.mishaps).toHaveLength(100);
  expect(cards.map(({ mishaps }) => mishaps.length)).toEqual([100]);
}, 90_000);

const count = (what: string) => told.filter((one) => one.what === what).length;

function take(what: string): string[] {
  const taken = told.filter((one) => one.what === what).map(({ body }) => body);
  for (let place = told.length - 1; place >= 0; place--) if (told[place]?.what === what) told.splice(place, 1);
  return taken;
}

/** Opens a page in a browser of its own with a profile that stays, and kills the browser whole as soon as `done`. */
async function visit(profile: string, search: string, done: () => boolean): Promise<void> {
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/${search}`;
  const words = ["--headless=new", `--user-data-dir=${join(profiles, profile)}`, ...chromiumFlags, address];
  const browser = spawn(needChromium(), words, { stdio: "ignore", detached: true });
  const ended = new Promise<void>((gone) => browser.on("close", () => gone()));
  try {
    await new Promise<void>((ready, failed) => {
      const late = setTimeout(() => failed(new Error(`Nothing came of ${search} in time.`)), 60_000);
      wake = () => {
        if (!done()) return;
        clearTimeout(late);
        ready();
      };
      browser.on("error", failed);
    });
  } finally {
    // The whole group: a browser is many processes. A minus means the group.
    if (browser.pid !== undefined) process.kill(-browser.pid, "SIGKILL");
    await ended;
    wake = () => {};
  }
}
