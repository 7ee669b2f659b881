import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import type { TestProject } from "vitest/node";
import { serve } from "../../apps/server/src/serving/index.ts";
import { chromiumFlags, needChromium } from "../../scripts/need.mjs";

declare module "vitest" {
  export interface ProvidedContext {
    /** Where the built app is served. */
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
  const build = spawnSync(process.execPath, [`${root}scripts/build.mjs`], { cwd: root, encoding: "utf8" });
  if (build.status !== 0) throw new Error(`The app does not build:\n${build.stdout}${build.stderr}`);
  const folder = `${root}apps/web/dist`;
  const atTheTop = await serve({ folder, port: 0 });
  const below = await serve({ folder, port: 0, base: "/yard/cap/" });
  const browser = await chromium.launchServer({ executablePath: needChromium(), args: chromiumFlags });
  project.provide("address", atTheTop.address);
  project.provide("addressBelow", below.address);
  project.provide("ws", browser.wsEndpoint());
  return async () => {
    await browser.close();
    await atTheTop.close();
    await below.close();
  };
}
