// npm run pictures: takes the README's and the guide's pictures anew, from the built app, with invented boatyard data.
import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";
import { runnerImport } from "vite";
import { chromiumFlags, needChromium } from "./need.mjs";

const mostBytes = 200_000;
const phone = { width: 390, height: 844 };
const desk = { width: 1440, height: 900 };

const root = fileURLToPath(new URL("..", import.meta.url));
const pictures = `${root}docs/pictures/`;
mkdirSync(pictures, { recursive: true });

const folder = mkdtempSync(join(tmpdir(), "captray-pictures-"));
const build = spawnSync(process.execPath, [`${root}scripts/build.mjs`, "--outDir", folder, "--emptyOutDir"], {
  stdio: ["ignore", 2, 2],
});
if (build.status !== 0) process.exit(build.status ?? 1);
const { module } = await runnerImport(`${root}apps/server/src/serving/index.ts`);
const served = await module.serve({ folder, port: 0 });
const browser = await chromium.launch({ executablePath: needChromium(), args: chromiumFlags });
try {
  await phonePictures();
  await redPictures();
  await deskPictures();
  await demoPictures();
  await trayPictures();
} finally {
  await browser.close();
  await served.close();
  rmSync(folder, { recursive: true, force: true });
}

async function phonePictures() {
  const page = await open({ viewport: phone, touch: true });
  await take(page, "first-visit-phone");

  await page.getByRole("button", { name: /I have a reading now/ }).click();
  await page.getByLabel("Time the meter shows").click();
  await page.getByRole("heading", { name: "I have a reading now" }).waitFor();
  await type(page, "Time the meter shows", "1/15");
  await page.waitForTimeout(300);
  await take(page, "number-board-phone");

  await readTheLight(page);
  await page.evaluate(() => scrollTo(0, 0));
  await take(page, "reading-now-phone");

  await page.getByRole("button", { name: "Open the ledger, line by line" }).click();
  const ledger = page.getByRole("table", { name: /Ledger/ });
  await ledger.getByRole("button", { name: /Extension/ }).click();
  await page.getByRole("heading", { name: "Ledger" }).scrollIntoViewIfNeeded();
  await page.getByRole("heading", { name: "Ledger" }).evaluate((head) => {
    scrollTo(0, head.getBoundingClientRect().top + scrollY - 12);
  });
  await take(page, "ledger-phone");

  await page.getByRole("button", { name: "To the cap" }).click();
  await page.getByRole("button", { name: /Press to count in/ }).click();
  // Nine seconds into the exposure, the cap off.
  await page.waitForFunction(() => document.querySelector("[role=timer]")?.textContent?.trim() === "9");
  await take(page, "cap-phone");
  await page.getByRole("button", { name: /Cap on, wait/ }).click();
  await take(page, "cap-wait-phone");
  await page.getByRole("button", { name: /End here/ }).click();
  await page.getByRole("heading", { name: "Kept as given" }).waitFor();
  await take(page, "cap-after-phone");
  await page.context().close();
}

async function redPictures() {
  const page = await open({ viewport: phone, touch: true, light: "red", at: "#/camera/now" });
  await readTheLight(page);
  await page.evaluate(() => scrollTo(0, 0));
  await take(page, "red-light-phone");
  await page.context().close();
}

async function deskPictures() {
  const page = await open({ viewport: desk });
  await page.getByRole("button", { name: "Open the demo notebook" }).click();
  await page.getByRole("heading", { name: /An empty notebook/ }).waitFor({ state: "detached" });
  await page.getByRole("link", { name: "Camera" }).click();
  await page.getByRole("link", { name: /Upturned skiff before the shed/ }).click();
  await page.getByRole("table", { name: /Ledger/ }).waitFor();
  await page
    .getByRole("img", { name: /^Curve of/ })
    .first()
    .waitFor();
  await page.setViewportSize({ width: 1240, height: 780 }); // full of hatching: larger, it would pass the size a picture may have
  await take(page, "camera-desk");
  await page.setViewportSize(desk);
  await page.getByRole("link", { name: "Field card" }).click();
  await page.getByRole("button", { name: "Print the card" }).waitFor();
  await take(page, "field-card-desk");
  await page.getByRole("link", { name: "Shelf" }).click();
  await page.locator("main h1").waitFor();
  await take(page, "shelf-desk");
  await page.getByRole("link", { name: "Logbook" }).click();
  await page.getByRole("link", { name: /W30/ }).first().click();
  await page.locator("main h1").waitFor();
  await take(page, "logbook-desk");
  await page.context().close();
}

/** What the demo notebook shows on a phone: the expected print of the skiff, holders with what lies in their sides, a tested lamp. */
async function demoPictures() {
  const page = await open({ viewport: phone, touch: true });
  await page.getByRole("button", { name: "Open the demo notebook" }).click();
  await page.getByText("Demo notebook, invented.").waitFor();
  await page.getByRole("link", { name: "Camera" }).click();
  await page.getByRole("link", { name: /Upturned skiff before the shed/ }).click();
  await page
    .getByRole("img", { name: /^Curve of/ })
    .first()
    .waitFor();
  await headAtTop(page, /Expected print/);
  await take(page, "expected-print-phone");
  await page.getByRole("link", { name: "Shelf" }).click();
  await headAtTop(page, "Holders");
  await take(page, "holders-phone");
  await page.goto(`${served.address}#/camera/flash`);
  await page.locator("main h1").waitFor();
  await page.evaluate(() => scrollTo(0, 0));
  await take(page, "flash-phone");
  await page.context().close();
}

/** The demo notebook at the trays: the list before the lights go out and a sheet in the acid, in red; a bath to be mixed, by day. */
async function trayPictures() {
  const page = await open({ viewport: phone, touch: true, light: "red" });
  await page.getByRole("button", { name: "Open the demo notebook" }).click();
  await page.getByText("Demo notebook, invented.").waitFor();
  await page.goto(`${served.address}#/trays/ready`);
  await page.getByRole("checkbox", { name: /W30/ }).check();
  await page.getByRole("radio", { name: /recipe 4/ }).check({ force: true });
  await page.getByRole("button", { name: "Before the lights go out" }).click();
  await page.getByRole("checkbox", { name: /Do not disturb/ }).check();
  await take(page, "ready-phone");
  const hold = page.getByRole("button", { name: /Lights are out/ });
  await hold.scrollIntoViewIfNeeded();
  const box = await hold.boundingBox();
  if (box === null) throw new Error("There is no frame to hold.");
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.waitForURL(/trays\/run\//);
  await page.mouse.up();
  await page.getByRole("timer").waitFor();
  for (let press = 0; press < 4; press++) {
    await page.waitForTimeout(2400); // a press sooner after the last would be a splash
    await page.keyboard.press("Enter");
  }
  await page.waitForTimeout(4000);
  await take(page, "run-phone");
  await page.context().close();

  const mixing = await open({ viewport: desk });
  await mixing.getByRole("button", { name: "Open the demo notebook" }).click();
  await mixing.getByText("Demo notebook, invented.").waitFor();
  await mixing.goto(`${served.address}#/trays/mixing`);
  await mixing.getByRole("heading", { name: "Weigh and pour" }).waitFor();
  await take(mixing, "mixing-desk");
  await mixing.context().close();
}

/** @param {import("playwright-core").Page} page @param {string | RegExp} name */
async function headAtTop(page, name) {
  const head = page.getByRole("heading", { name }).first();
  await head.waitFor();
  await page.waitForTimeout(500); // the part under it has been drawn
  await head.evaluate((element) => scrollTo(0, element.getBoundingClientRect().top + scrollY - 12));
}

/**
 * A fresh notebook, its faces loaded.
 * @param {{ viewport: { width: number, height: number }, touch?: boolean, light?: "day" | "red", at?: string }} input
 */
async function open({ viewport, touch = false, light = "day", at = "" }) {
  const context = await browser.newContext({
    viewport,
    deviceScaleFactor: touch ? 1.5 : 1,
    hasTouch: touch,
    isMobile: touch,
    reducedMotion: "reduce",
    locale: "en-GB",
    timezoneId: "Europe/Amsterdam",
  });
  await context.addInitScript((kept) => localStorage.setItem("light", kept), light);
  const page = await context.newPage();
  await page.goto(served.address + at);
  await page.locator("main h1").first().waitFor();
  return page;
}

/** @param {import("playwright-core").Page} page @param {string} label @param {string} text */
async function type(page, label, text) {
  await page.getByRole("textbox", { name: label, exact: true }).fill(text);
}

/** The upturned skiff on the slip, overcast. @param {import("playwright-core").Page} page */
async function readTheLight(page) {
  await type(page, "Time the meter shows", "1/15");
  await type(page, "f-number on the meter", "8");
  await type(page, "ISO on the meter", "100");
  await type(page, "Focal length", "210");
  await type(page, "f-number of the lens", "11");
  await type(page, "Board to ground glass", "248");
  await page.getByRole("radio", { name: /direct positive/ }).check({ force: true });
  await page.evaluate(() => /** @type {HTMLElement | null} */ (document.activeElement)?.blur());
  await page.waitForFunction(() => /25/.test(document.querySelector('[aria-label="Exposure"]')?.textContent ?? ""));
}

/** @param {import("playwright-core").Page} page @param {string} name */
async function take(page, name) {
  await page.evaluate(() => document.fonts.ready);
  const path = `${pictures}${name}.png`;
  await page.screenshot({ path });
  const { size } = statSync(path);
  console.log(`${name}.png ${Math.round(size / 1000)} kB`);
  if (size > mostBytes) throw new Error(`${name}.png is larger than ${mostBytes / 1000} kB.`);
}
