import type { BrowserContext, Page } from "playwright-core";
import { describe, expect, inject, test } from "vitest";
import { howManyKills } from "../endurance/writing/howManyKills.ts";
import { evening } from "./evening.ts";
import { axe, open, pixels, screens, smallBoxes } from "./helpers.ts";
import { entriesOf, putIn } from "./seed.ts";

const heading = (page: Page) => page.getByRole("heading", { level: 1 });
const headed = async (page: Page) => (await heading(page).first().textContent()) ?? "";
/** The heading once what was pressed is drawn: a key reaches the page before its drawing does. */
async function drawn(page: Page): Promise<string> {
  await page.evaluate(async () => {
    for (let turn = 0; turn < 4; turn++) {
      await new Promise<void>((done) => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => done();
        port2.postMessage("");
      });
    }
  });
  return headed(page);
}
const timer = async (page: Page) => (await page.getByRole("timer").textContent()) ?? "";

/** The trays' door with an evening's sheets waiting, on a clock the test moves. */
async function atTheTrays(screen: "phone" | "desk" = "phone") {
  const opened = await open({ screen, light: "day", at: "#/trays" });
  const { page } = opened;
  await page.clock.install({ time: 1_764_957_600_000 });
  await page.reload();
  await page.getByText(/A sheet stands here once/).waitFor();
  await putIn({ page, entries: await entriesOf(evening) });
  await page.getByText("W41").first().waitFor();
  return opened;
}

/** No point of what is on the screen has green or blue. */
async function expectRed(page: Page, eye: Page): Promise<void> {
  const { greenOrBlue, lit } = await pixels({ page: eye, png: await page.screenshot() });
  expect(greenOrBlue).toBe(0);
  expect(lit).toBeGreaterThan(1000);
}

/** Chooses sheets, goes through the list of the dark, and holds the frame for two seconds. */
async function lightsOut(page: Page, codes: readonly string[], eye: Page): Promise<void> {
  await page.getByRole("button", { name: "To the trays" }).click();
  for (const code of codes) await page.getByRole("checkbox", { name: new RegExp(code) }).check();
  await page.getByRole("button", { name: "Before the lights go out" }).click();
  await page.getByRole("heading", { name: "Before the lights go out" }).waitFor();
  await page.getByRole("checkbox", { name: /Do not disturb/ }).check();
  await expectRed(page, eye);
  const hold = page.getByRole("button", { name: /Lights are out/ });
  await hold.scrollIntoViewIfNeeded();
  const box = await hold.boundingBox();
  if (box === null) throw new Error("no frame to hold");
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  // Held still meanwhile; and from here on the page's clock is another than that of the browser's stamps.
  await page.clock.pauseAt((await page.evaluate(() => Date.now())) + 10_000);
  await page.mouse.down();
  await page.clock.runFor(1900);
  await expectRed(page, eye);
  expect(await headed(page)).toBe("Before the lights go out");
  await page.clock.runFor(200);
  await page.mouse.up();
  await page.clock.resume();
  await page.waitForURL(/trays\/run\//);
  await page.getByRole("timer").waitFor();
}

/** Seconds until the next move is due; below 0 when it is overdue. */
async function dueInS(page: Page): Promise<number> {
  const text = await timer(page);
  const parts = text.replace("+", "").split(":").map(Number);
  const seconds = parts.reduce((sum, part) => sum * 60 + part, 0);
  return text.startsWith("+") ? -seconds : seconds;
}

/** Lets the clock come to the next move, and makes it: clear after the second bleach round. */
async function nextMove(page: Page, rounds: Map<string, number>): Promise<void> {
  const untilS = await dueInS(page);
  if (untilS > 0) {
    if (untilS > 2) await page.clock.fastForward((untilS - 1) * 1000);
    await page.clock.runFor(1200);
  } else await page.clock.runFor(1000);
  const move = await headed(page);
  const looks = move.startsWith("Is dark silver");
  if (!looks) return void (await page.keyboard.press("PageDown"));
  const who = /^(\w+)/.exec((await page.locator(".Trays-Round-keys").textContent()) ?? "")?.[1] ?? "";
  const seen = (rounds.get(who) ?? 0) + 1;
  rounds.set(who, seen);
  await page.keyboard.press(seen < 2 ? "PageDown" : "c");
}

async function toTheEnd(
  page: Page,
  { every = async () => undefined }: { readonly every?: (moves: number) => Promise<Page | undefined> } = {},
) {
  const rounds = new Map<string, number>();
  let on = page;
  for (let moves = 0; moves < 150; moves++) {
    if (/out of the trays|Which is which/.test(await headed(on))) return { page: on, moves };
    await nextMove(on, rounds);
    on = (await every(moves)) ?? on;
  }
  throw new Error(`the run does not end: ${await headed(on)}`);
}

/** Kills the page's own process, and opens the app anew where it starts. */
async function killAndReopen(context: BrowserContext, page: Page): Promise<Page> {
  const session = await context.newCDPSession(page);
  const crashed = page.waitForEvent("crash");
  session.send("Page.crash").catch(() => undefined);
  await crashed;
  await page.close().catch(() => undefined);
  const again = await context.newPage();
  await again.goto(inject("address"));
  await again.getByRole("timer").waitFor();
  return again;
}

/** A chance that is the same every time. */
function chanceFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

describe.concurrent("an evening at the trays", () => {
  test("two negatives in red light: splashes, take back, late, trouble; which is which; and they hang", async () => {
    const { page, context, complaints } = await atTheTrays();
    const { page: eye, context: apart } = await open({ light: "day" });
    await lightsOut(page, ["W41", "W42"], eye);
    expect(await headed(page)).toBe("W41: into the developer");
    await expectRed(page, eye);

    // A drop is no press, and two fingers are none; one finger is.
    await page.locator("[data-press]").evaluate((target) => {
      const touch = (kind: string, pointerId: number) =>
        target.dispatchEvent(new PointerEvent(kind, { pointerId, bubbles: true, button: 0 }));
      touch("pointerdown", 7);
      touch("pointerup", 7);
      touch("pointerdown", 8);
      touch("pointerdown", 9);
    });
    await page.clock.runFor(400);
    await page.locator("[data-press]").evaluate((target) => {
      for (const pointerId of [8, 9]) {
        target.dispatchEvent(new PointerEvent("pointerup", { pointerId, bubbles: true, button: 0 }));
      }
    });
    expect(await headed(page)).toBe("W41: into the developer");
    const { width, height } = screens.phone;
    await page.mouse.move(width / 2, height / 2);
    await page.mouse.down();
    await page.clock.runFor(150);
    await page.mouse.up();
    await page.getByRole("heading", { name: "W41: developer to stop" }).waitFor();
    await expectRed(page, eye);

    // Taken back behind the foot by a hold of two seconds; then again by a key.
    await page.clock.runFor(3000);
    const foot = page.getByRole("button", { name: /Hold for 2 s/ });
    await foot.focus();
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: /^Late/ }).waitFor();
    await expectRed(page, eye);
    await page.getByRole("button", { name: /take back W41/ }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "W41: into the developer" }).waitFor();
    await page.clock.runFor(2500);
    await page.keyboard.press("b");
    await page.getByRole("heading", { name: "W41: developer to stop" }).waitFor();
    expect(await axe({ page })).toEqual([]);
    expect(await smallBoxes({ page, least: 96 })).toEqual([]);

    // Trouble, and the way into daylight names who would be fogged.
    await foot.focus();
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: /^Trouble/ }).focus();
    await page.keyboard.press("Enter");
    await page.getByRole("button", { name: "dropped or scratched" }).waitFor();
    await expectRed(page, eye);
    await page.getByRole("button", { name: "Out of red light" }).click();
    await page.getByText(/W41: not where white light is allowed yet/).waitFor();
    await page.getByRole("button", { name: "Stay in red light" }).click();
    await page.getByRole("button", { name: "dropped or scratched" }).click();

    const { page: last } = await toTheEnd(page);
    await last.getByRole("heading", { name: /Which is which|out of the trays/ }).waitFor();
    await expectRed(last, eye);
    const told = last.getByRole("button", { name: /Told apart/ });
    if (await told.isVisible()) await told.click();
    await last.getByRole("button", { name: "What was done" }).waitFor();
    await last.getByRole("button", { name: "Out of red light" }).click();
    await last.getByRole("button", { name: "All shut: daylight" }).click();
    await last.getByRole("link", { name: "To the door of the room" }).click();
    await last.getByText(/2 sheets drying/).waitFor();
    expect(complaints).toEqual([]);
    await context.close();
    await apart.close();
  });

  test(
    "three positives, and the tab killed ten times at random: nothing is lost, and it comes back in red where it was",
    async () => {
      const { page, context, complaints } = await atTheTrays();
      const { page: eye, context: apart } = await open({ light: "day" });
      await lightsOut(page, ["W43", "W44", "W45"], eye);
      // Whatever light is kept, no page begins by day while the run goes on.
      await context.addInitScript(() => {
        const look = () => {
          if (document.documentElement.dataset.light === "day") localStorage.setItem("test-began-by-day", "yes");
        };
        addEventListener("DOMContentLoaded", look);
        requestAnimationFrame(look);
      });
      const chance = chanceFrom(20_261_125);
      // Ten in the usual run; a long one, CAPTRAY_KILLS=200, kills several times in each bath.
      const wanted = howManyKills(10);
      const atOnce = Math.ceil(wanted / 40);
      let kills = 0;
      let before = "";
      let on = page;
      const { page: last, moves } = await toTheEnd(page, {
        every: async (made) => {
          if (kills >= wanted || (wanted <= 10 && made > 0 && chance() < 0.75)) return undefined;
          for (let more = 0; more < atOnce && kills < wanted; more++) {
            kills++;
            // At once after a press, or some seconds into the bath.
            if (chance() < 0.5) await on.clock.runFor(Math.round(chance() * 4000));
            else await on.getByRole("timer").waitFor();
            before = await drawn(on);
            on = await killAndReopen(context, on);
            await expectRed(on, eye);
            // The bath goes on while nobody looks: what has changed by itself meanwhile is said.
            const after = await headed(on);
            if (after !== before && after !== "Is dark silver left in it?") {
              await on.getByText(/The page was gone for/).waitFor();
            }
          }
          return on;
        },
      });
      expect(kills).toBe(wanted);
      expect(await last.evaluate(() => localStorage.getItem("test-began-by-day"))).toBeNull();
      expect(moves).toBeGreaterThan(40);
      const told = last.getByRole("button", { name: /Told apart/ });
      if (await told.isVisible()) await told.click();
      await last.getByRole("button", { name: "What was done" }).click();
      await last.getByRole("heading", { level: 1 }).waitFor();
      await expectRed(last, eye);
      expect(complaints).toEqual([]);
      await context.close();
      await apart.close();
    },
    240_000 + howManyKills(10) * 6_000,
  );
});
