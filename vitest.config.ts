import { playwright } from "@vitest/browser-playwright";
import { defineConfig } from "vitest/config";
import { chromiumFlags, needHeadlessChromium } from "./scripts/need.mjs";

// test:unit promises to need no browser; every other run finds or installs one.
const unitOnly = process.argv.join(" ").includes("--project unit");

export default defineConfig({
  test: {
    // Journeys that mostly wait go side by side where their file says so; more than three at once only wait for one another.
    maxConcurrency: 3,
    projects: [
      {
        test: {
          name: "unit",
          environment: "node",
          include: ["{packages,apps}/**/src/**/*.test.{ts,tsx}"],
          exclude: ["**/node_modules/**", "**/*.browser.test.{ts,tsx}"],
          // What is tested here is pure, and may share one room: a fresh one for each of some two hundred files takes a minute and a half.
          isolate: false,
        },
      },
      ...(unitOnly
        ? []
        : [
            {
              // Named here, else they are found while a test runs and the page is loaded anew under it.
              optimizeDeps: {
                include: ["idb", "zod/mini", "react", "react-dom/client", "react/jsx-dev-runtime"],
              },
              test: {
                name: "inBrowser",
                include: ["{packages,apps}/**/src/**/*.browser.test.{ts,tsx}"],
                browser: {
                  enabled: true,
                  headless: true,
                  screenshotFailures: false,
                  provider: playwright({
                    launchOptions: { executablePath: needHeadlessChromium(), args: chromiumFlags },
                  }),
                  instances: [{ browser: "chromium" as const }],
                },
              },
            },
          ]),
      {
        test: {
          name: "house",
          environment: "node",
          include: ["tests/house/**/*.test.ts"],
          // Compilers side by side on a busy machine: a minute each where nothing else runs.
          testTimeout: 300_000,
          hookTimeout: 120_000,
        },
      },
      {
        test: {
          name: "browser",
          environment: "node",
          include: ["tests/browser/**/*.test.ts"],
          globalSetup: ["tests/browser/setup.ts"],
          // A journey waits for a real browser on a shared machine: one that trips is walked once more, and both times said.
          retry: 1,
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      {
        test: {
          name: "endurance",
          environment: "node",
          include: ["tests/endurance/**/*.test.ts"],
          testTimeout: 120_000,
        },
      },
    ],
  },
});
