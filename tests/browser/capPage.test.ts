import type { BrowserContext, Page } from "playwright-core";
import { describe, expect, test } from "vitest";
import { axe, type OpenInput, open, pixels, screens, smallBoxes } from "./helpers.ts";
import { readTheLight } from "./readTheLight.ts";

/**
 * Reads the light and goes to the cap: 47 s by this reading, so that a busy machine does not reach the end before the test does.
 */
async function atTheCap({
  without,
  reading = "1/8",
  ...more
}: OpenInput & { readonly without?: () => void; readonly reading?: string } = {}): Promise<{
  page: Page;
  context: BrowserContext;
  complaints: string[];
}> {
  const opened = await open({ light: "day", at: "#/camera/now", ...more });
  // When keys and clicks reached the page, by its own clock: this test's own may be seconds behind on a busy machine.
  await opened.context.addInitScript(() => {
    const note = (event: Event) => {
      const held = JSON.parse(localStorage.getItem("test-presses") ?? "[]") as number[];
      localStorage.setItem("test-presses", JSON.stringify([...held, performance.timeOrigin + event.timeStamp]));
    };
    addEventListener("click", note, true);
    addEventListener("keydown", note, true);
  });
  if (without !== undefined) await opened.context.addInitScript(without);
  await opened.page.reload();
  await readTheLight(opened.page, { time: reading });
  await opened.page.getByRole("button", { name: "To the cap" }).first().click();
  await opened.page.getByRole("heading", { name: "Cap on" }).waitFor();
  return opened;
}

/** Seconds between the last two clicks or keys that the page saw. */
async function betweenPresses(page: Page): Promise<number> {
  const presses = JSON.parse(await page.evaluate(() => localStorage.getItem("test-presses") ?? "[]")) as number[];
  return ((presses.at(-1) ?? 0) - (presses.at(-2) ?? 0)) / 1000;
}

const big = (page: Page, name: string | RegExp) => page.getByRole("button", { name }).first();
const given = async (page: Page) =>
  Number.parseFloat((await page.locator(".Camera-CapAfter-figure").textContent()) ?? "");
const timer = async (page: Page) => (await page.getByRole("timer").textContent()) ?? "";

/** Without a count-in the cap comes off at the press. */
async function beginAtAPress(page: Page): Promise<void> {
  await big(page, /How it is given/).click();
  await page.getByRole("radio", { name: /at a press/ }).check({ force: true });
  await big(page, /Back to the cap/).click();
}

describe("one sheet at the cap", () => {
  test("counted in, given to the ticks, ended by a press: what lies between is kept, put right, and taken back", async () => {
    const { page, context, complaints } = await atTheCap();
    const wanted = Number.parseInt(await timer(page), 10);
    expect(wanted).toBeGreaterThan(2);
    await big(page, /Press to count in/).click();
    expect(["3", "2"]).toContain(await timer(page));
    await page.getByRole("heading", { name: "Cap off" }).waitFor();
    await page.waitForFunction(() => Number(document.querySelector("[role=timer]")?.textContent) >= 2);
    await page.keyboard.press("b");
    await page.getByRole("heading", { name: "Kept as given" }).waitFor();
    // The count-in takes 3 s. ±0.06 s: a piece is kept to the nearest tenth.
    expect(Math.abs((await given(page)) - ((await betweenPresses(page)) - 3))).toBeLessThan(0.06);

    const first = await given(page);
    await big(page, /\+0/).click();
    expect(await given(page)).toBeGreaterThan(first);
    await page.getByRole("heading", { name: "Kept as corrected" }).waitFor();
    await big(page, "Take back").click();
    expect(await given(page)).toBe(first);
    await big(page, "Something went wrong").click();
    await page.getByRole("checkbox", { name: "Knocked" }).check();
    await page.getByText("Knocked: noted").waitFor();

    await page.getByRole("link", { name: /The page of/ }).click();
    await page.getByRole("heading", { level: 1, name: "A1" }).waitFor();
    await page.getByText("knocked").first().waitFor();
    await page.getByText(`${first} s, to the ticks`).first().waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  });

  test("a gust: the piece is kept, what is still to give is said, and open times add up", async () => {
    const { page, context } = await atTheCap();
    await beginAtAPress(page);
    const wanted = Number.parseInt(await timer(page), 10);
    await big(page, /Press as the cap comes off/).click();
    await page.waitForTimeout(1500);
    await big(page, /Cap on, wait/).click();
    await page.getByText("still to give").first().waitFor();
    const still = Number.parseFloat(await timer(page));
    expect(still).toBeLessThan(wanted - 1);
    await page.waitForTimeout(1200);
    expect(Number.parseFloat(await timer(page))).toBe(still);
    await page.waitForTimeout(450);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Cap off" }).waitFor();
    await page.waitForTimeout(1200);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Kept as given" }).waitFor();
    await page
      .getByText(/two openings/)
      .first()
      .waitFor();
    const total = await given(page);
    expect(total).toBeGreaterThan(2.5);
    expect(total).toBeLessThan(4);
    await context.close();
  });

  test("nobody presses: it can be kept as planned, and the sheet says so", async () => {
    const { page, context } = await atTheCap({ reading: "1/60" });
    await beginAtAPress(page);
    const wanted = Number.parseInt(await timer(page), 10);
    await big(page, /Press as the cap comes off/).click();
    await big(page, /It went on at the/).click({ timeout: 30_000 });
    await page.getByRole("heading", { name: "Taken as planned" }).waitFor();
    expect(await given(page)).toBe(wanted);
    await page.getByRole("link", { name: /The page of/ }).click();
    await page.getByText(`${wanted} s, taken as planned`).first().waitFor();
    await context.close();
  });

  test("reloaded in mid-exposure it goes on where the clock stands, and says so", async () => {
    const { page, context } = await atTheCap();
    await beginAtAPress(page);
    await big(page, /Press as the cap comes off/).click();
    await page.waitForTimeout(800);
    await page.goto("about:blank");
    await page.waitForTimeout(1800);
    await page.goBack();
    await page.getByText(/The page was away for/).waitFor();
    await page.getByRole("heading", { name: /Cap o(ff|n now)/ }).waitFor();
    await page.keyboard.press("b");
    await page.getByRole("heading", { name: "Kept as given" }).waitFor();
    // ±0.2 s: two loads of the page tie their time to the wall clock apart.
    expect(Math.abs((await given(page)) - (await betweenPresses(page)))).toBeLessThan(0.2);
    await context.close();
  });

  test("a killed tab loses nothing, and without its small store the sheet alone brings the page back", async () => {
    const { page, context } = await atTheCap();
    await beginAtAPress(page);
    const address = page.url();
    await big(page, /Press as the cap comes off/).click();
    await page.waitForTimeout(600);
    await page.close({ runBeforeUnload: false });
    const second = await context.newPage();
    await second.goto(address);
    await second.getByRole("heading", { name: /Cap o(ff|n now)/ }).waitFor();
    await second.evaluate(() => {
      for (const name of Object.keys(localStorage)) if (name.startsWith("captray-cap-")) localStorage.removeItem(name);
    });
    // The page itself writes the store again each second: take it away between two looks.
    await second.addInitScript(() => {
      for (const name of Object.keys(localStorage)) if (name.startsWith("captray-cap-0")) localStorage.removeItem(name);
    });
    await second.reload();
    await second.getByRole("heading", { name: /Cap o(ff|n now)/ }).waitFor();
    await second.keyboard.press("b");
    await second.getByRole("heading", { name: "Kept as given" }).waitFor();
    expect(Math.abs((await given(second)) - (await betweenPresses(second)))).toBeLessThan(0.2);
    await second.reload();
    await second.getByRole("heading", { name: "Kept as given" }).waitFor();
    await context.close();
  });

  test("two tabs at one sheet show the same, and no piece is lost", async () => {
    const { page, context } = await atTheCap();
    await beginAtAPress(page);
    const second = await context.newPage();
    await second.goto(page.url());
    await second.getByRole("heading", { name: "Cap on" }).waitFor();
    await page.bringToFront();
    await big(page, /Press as the cap comes off/).click();
    await page.waitForTimeout(1000);
    await big(page, /Cap on, wait/).click();
    await second.bringToFront();
    await second.getByText("still to give").first().waitFor();
    expect(await timer(second)).toBe(await timer(page));
    await second.waitForTimeout(450);
    await second.keyboard.press("b");
    await second.getByRole("heading", { name: "Cap off" }).waitFor();
    await second.waitForTimeout(1000);
    await second.keyboard.press("b");
    await second
      .getByText(/two openings/)
      .first()
      .waitFor();
    await page.bringToFront();
    await page
      .getByText(/two openings/)
      .first()
      .waitFor();
    expect(await given(page)).toBe(await given(second));
    await context.close();
  });

  test("a key held down, or a finger that bounces, is one press", async () => {
    const { page, context } = await atTheCap();
    await beginAtAPress(page);
    await page.keyboard.down("b");
    await page.keyboard.down("b");
    await page.keyboard.down("b");
    await page.waitForTimeout(500);
    await page.keyboard.down("b");
    await page.keyboard.up("b");
    expect(await page.getByRole("heading", { name: "Cap off" }).count()).toBe(1);
    await context.close();
  });

  test("by keyboard alone: to the foot and back, settings, press, wait, end", async () => {
    const { page, context } = await atTheCap();
    const focusOn = async (name: RegExp) => {
      for (let i = 0; i < 12; i++) {
        await page.keyboard.press("Tab");
        const words = await page.evaluate(() => document.activeElement?.textContent ?? "");
        if (name.test(words)) return;
      }
      throw new Error(`the keyboard does not reach ${name}`);
    };
    await focusOn(/How it is given/);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "How it is given" }).waitFor();
    await focusOn(/counted in/);
    await page.keyboard.press("ArrowRight");
    await focusOn(/Back to the cap/);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Cap on" }).waitFor();
    await page.keyboard.press("Space");
    await page.getByRole("heading", { name: "Cap off" }).waitFor();
    await page.waitForTimeout(900);
    await focusOn(/Cap on, wait/);
    await page.keyboard.press("Enter");
    await page.getByText("still to give").first().waitFor();
    // The foot now says “End here”: Enter again must not end it. (Within 0.35 s it would be a bounce.)
    await page.waitForTimeout(450);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Cap off" }).waitFor();
    await page.waitForTimeout(500);
    await page.keyboard.press("PageDown");
    await page.getByRole("heading", { name: "Kept as given" }).waitFor();
    expect(await page.evaluate(() => document.activeElement?.tagName)).toBe("H1");
    // Held for two seconds, Backspace takes the exposure back.
    await page.keyboard.down("Backspace");
    await page.getByRole("heading", { name: "Cap on" }).waitFor();
    await page.keyboard.up("Backspace");
    await context.close();
  });

  test("counted in the head nothing on the page counts along", async () => {
    const { page, context } = await atTheCap();
    await beginAtAPress(page);
    await big(page, /How it is given/).click();
    await page.getByRole("radio", { name: /counted in your head/ }).check({ force: true });
    await big(page, /Back to the cap/).click();
    await big(page, /Press as the cap comes off/).click();
    const drawn = () => page.locator(".Camera-Cap").innerHTML();
    const before = await drawn();
    await page.waitForTimeout(2300);
    expect(await drawn()).toBe(before);
    await page.keyboard.press("b");
    await page
      .getByText(/counted in your head/)
      .first()
      .waitFor();
    await context.close();
  });
});

describe("what is taken away", () => {
  test("without sound, shake and wake lock the figure goes on, and the page says what is missing", async () => {
    const { page, context, complaints } = await atTheCap({
      without: () => {
        for (const name of ["AudioContext", "webkitAudioContext"]) Reflect.deleteProperty(window, name);
        Object.defineProperty(Navigator.prototype, "vibrate", { value: undefined });
        Object.defineProperty(Navigator.prototype, "wakeLock", { value: undefined });
      },
    });
    await page.getByText(/This screen may go dark/).waitFor();
    await beginAtAPress(page);
    await big(page, /Press as the cap comes off/).click();
    await page.waitForFunction(() => Number(document.querySelector("[role=timer]")?.textContent) >= 2);
    await page.keyboard.press("b");
    await page.getByRole("heading", { name: "Kept as given" }).waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  });

  test("where the machine lends one, the screen stays awake at the cap", async () => {
    const { page, context } = await atTheCap({ options: { permissions: ["screen-wake-lock"] } });
    await big(page, /How it is given/).click();
    await page.getByText("Screen: stays awake at the cap.").waitFor();
    await context.close();
  });
});

describe("how it is drawn", () => {
  test.each(["day", "red"] as const)(
    "axe finds nothing, before, during, waiting and after, in %s light",
    async (light) => {
      const { page, context } = await atTheCap({ light });
      const rules = async () =>
        (await axe({ page })).filter((found) => !(light === "red" && found.startsWith("color-contrast")));
      await beginAtAPress(page);
      expect(await rules()).toEqual([]);
      await big(page, /Press as the cap comes off/).click();
      await page.waitForTimeout(600);
      expect(await rules()).toEqual([]);
      await big(page, /Cap on, wait/).click();
      expect(await rules()).toEqual([]);
      await big(page, /End here/).click();
      await big(page, "Something went wrong").click();
      expect(await rules()).toEqual([]);
      await context.close();
    },
    120_000,
  );

  test("in red light no point of the cap page has green or blue", async () => {
    const { page, context } = await atTheCap({ light: "red" });
    await beginAtAPress(page);
    const check = async () => {
      const { greenOrBlue, lit } = await pixels({ page, png: await page.screenshot() });
      expect(greenOrBlue).toBe(0);
      expect(lit).toBeGreaterThan(1000);
    };
    await check();
    await big(page, /Press as the cap comes off/).click();
    await page.waitForTimeout(500);
    await check();
    await big(page, /Cap on, wait/).click();
    await check();
    await big(page, /End here/).click();
    await page.getByRole("heading", { name: "Kept as given" }).waitFor();
    await check();
    await context.close();
  });

  test("every press at the cap is 96 px high, and those after it 56 at least", async () => {
    const { page, context } = await atTheCap();
    await beginAtAPress(page);
    await big(page, /Press as the cap comes off/).click();
    await page.waitForTimeout(400);
    expect(await smallBoxes({ page, least: 96 })).toEqual([]);
    await big(page, /Cap on, wait/).click();
    expect(await smallBoxes({ page, least: 96 })).toEqual([]);
    await big(page, /End here/).click();
    await big(page, "Something went wrong").click();
    expect(await smallBoxes({ page, least: 56 })).toEqual([]);
    await context.close();
  });

  test("nothing runs past the edge on phone, tablet and desk, nor with letters twice the size", async () => {
    const { page, context } = await atTheCap();
    for (const screen of Object.values(screens)) {
      await page.setViewportSize(screen);
      for (const size of ["100%", "200%"]) {
        await page.evaluate((wanted) => {
          document.documentElement.style.fontSize = wanted;
        }, size);
        const cut = await page.evaluate(() => {
          const { innerWidth: width } = window;
          return [...document.querySelectorAll(".Camera-Cap-words > *, .Camera-Cap-foot > *")]
            .filter((part) => part.getBoundingClientRect().right > width + 1 || part.scrollWidth > part.clientWidth + 1)
            .map((part) => part.textContent);
        });
        expect(cut).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
      }
    }
    await context.close();
  });
});
