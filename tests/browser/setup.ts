import { spawnSync } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import type { TestProject } from "vitest/node";
import { serve } from "../../apps/server/src/serving/index.ts";
import { chromiumFlags, needHeadlessChromium } from "../../scripts/need.mjs";

declare module "vitest" {
  export interface ProvidedContext {
    /** The folder the app was built into. */
    dist: string;
    /** Where it is served. */
    address: string;
    /** The same app under a path of a host. */
    addressBelow: string;
    /** The test browser. */
    ws: string;
  }
}

const root = fileURLToPath(new URL("../..", import.meta.url));

/** Builds the app in a process of its own, serves it, and starts one browser for all journeys. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  // In a folder of its own: a build beside this run would take the files away from under it.
  const folder = await mkdtemp(join(tmpdir(), "captray-journeys-"));
  const words = [`${root}scripts/build.mjs`, "--outDir", folder, "--emptyOutDir"];
  const build = spawnSync(process.execPath, words, { cwd: root, encoding: "utf8" });
  if (build.status !== 0) throw new Error(`The app does not build:\n${build.stdout}${build.stderr}`);
  const atTheTop = await serve({ folder, port: 0 });
  const below = await serve({ folder, port: 0, base: "/yard/cap/" });
  const browser = await chromium.launchServer({ executablePath: needHeadlessChromium(), args: chromiumFlags });
  project.provide("dist", folder);
  project.provide("address", atTheTop.address);
  project.provide("addressBelow", below.address);
  project.provide("ws", browser.wsEndpoint());
  return async () => {
    await browser.close();
    await atTheTop.close();
    await below.close();
    await rm(folder, { recursive: true, force: true });
  };
}
