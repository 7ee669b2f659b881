import { cp, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { describe, expect, inject, test } from "vitest";
import { serve } from "../../apps/server/src/serving/index.ts";
import { browser, open } from "./helpers.ts";
import { readTheLight } from "./readTheLight.ts";

const dist = inject("dist");

describe("without a network", () => {
  test("after one visit the app opens, goes to every room and still reckons", async () => {
    const { page, context, complaints } = await open({ keepsItself: true });
    await keptOffline(page);
    await context.setOffline(true);
    await page.reload();
    await page.getByRole("heading", { name: /An empty notebook/ }).waitFor();
    for (const room of ["Shelf", "Logbook", "Camera"]) {
      await page.getByRole("navigation", { name: "Rooms" }).getByRole("link", { name: room }).click();
      await page.locator("main h1").waitFor();
      expect(await page.getByText("This page has stopped").count()).toBe(0);
    }
    // −4 (1/15 is 1/16) + 1 (f/8 to f/11) + 0.480 (248 on 210 mm) + 7.158 (ISO 100 to 0.7) = 4.638 stops: 24.9 s [by hand].
    await page.goto(`${inject("address")}#/camera/now`);
    await readTheLight(page);
    expect(await page.getByRole("region", { name: "Exposure" }).textContent()).toMatch(/^25 s/);
    expect(complaints).toEqual([]);
    await context.close();
  });

  test("every built file is in the list that is kept, and nothing else", async () => {
    const text = await readFile(join(dist, "sw.js"), "utf8");
    const listed = new Set(JSON.parse(/FILES = (\[.*\])/.exec(text)?.[1] ?? "[]") as string[]);
    const built = (await readdir(dist, { recursive: true, withFileTypes: true }))
      .filter((entry) => entry.isFile())
      .map(
        (entry) =>
          `./${join(entry.parentPath, entry.name)
            .slice(dist.length + 1)
            .replaceAll("\\", "/")}`,
      )
      .filter((file) => !file.endsWith(".map") && !file.startsWith("./.vite/") && file !== "./sw.js");
    expect([...listed].sort()).toEqual(built.sort());
  });

  test("a newer build waits until somebody takes it, and then stands alone", async () => {
    const folder = await mkdtemp(join(tmpdir(), "invented-build-"));
    await cp(dist, folder, { recursive: true });
    const served = await serve({ folder, port: 0 });
    const context = await (await browser()).newContext({ viewport: { width: 390, height: 844 } });
    const page = await context.newPage();
    await page.goto(served.address);
    await keptOffline(page);

    const worker = await readFile(join(folder, "sw.js"), "utf8");
    await writeFile(join(folder, "sw.js"), worker.replace(/NAME = "shell-\w+"/, 'NAME = "shell-newer"'));
    await page.reload();
    await page.getByText("A newer Cap & Tray is here").waitFor();
    const stores = () => page.evaluate(() => caches.keys());
    expect(await stores()).toContain("shell-newer");
    expect((await stores()).length).toBe(2); // the old one still serves this page
    await Promise.all([page.waitForEvent("load"), page.getByRole("button", { name: "Take it" }).click()]);
    await expect.poll(stores).toEqual(["shell-newer"]);

    await context.setOffline(true);
    await page.reload();
    await page.locator("main h1").waitFor();
    await context.close();
    await served.close();
    await rm(folder, { recursive: true, force: true });
  });

  test("the same holds under a path of a host, and nothing is asked of the host's top", async () => {
    const context = await (await browser()).newContext({ viewport: { width: 390, height: 844 } });
    const page = await context.newPage();
    const astray: string[] = [];
    page.on("response", (answer) => {
      if (answer.status() >= 400) astray.push(answer.url());
    });
    const below = inject("addressBelow");
    await page.goto(below);
    await page.locator("main h1").waitFor();
    await keptOffline(page);
    await context.setOffline(true);
    await page.goto(`${below}#/camera/now`);
    await page.reload();
    await page.locator("main h1").waitFor();
    expect(astray).toEqual([]);
    await context.close();
  });
});

/** Until the service worker has every file and answers for the page. */
async function keptOffline(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller === null) {
      await new Promise((resolve) =>
        navigator.serviceWorker.addEventListener("controllerchange", resolve, { once: true }),
      );
    }
  });
}
