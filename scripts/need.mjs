// Finds a program that a test needs, or installs it from the distribution's packages; else says so in one sentence.
import { execFileSync, spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

const chromiumPlaces = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/usr/bin/google-chrome-stable",
  "/usr/bin/microsoft-edge",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

/** Flags every test browser starts with: no sandbox as root, and no talk with the outside. */
export const chromiumFlags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
  "--autoplay-policy=no-user-gesture-required",
];

/**
 * The path of a Chromium, installed from Debian's packages where there is none.
 * @returns {string}
 */
export function needChromium() {
  const found = [process.env.CHROMIUM_PATH, ...chromiumPlaces].find((place) => place && existsSync(place));
  if (found) return found;
  installDebian("chromium");
  const installed = chromiumPlaces.find((place) => existsSync(place));
  if (installed) return installed;
  throw new Error("The browser tests need Chromium: install it, or say where it is in CHROMIUM_PATH.");
}

/**
 * The path of the Chromium without windows that journeys run in: two thirds of the work of a whole one, which stands in
 * where there is none.
 * @returns {string}
 */
export function needHeadlessChromium() {
  const place = "/usr/bin/chromium-headless-shell";
  if (process.env.CHROMIUM_PATH) return needChromium();
  if (!existsSync(place)) installDebian("chromium-headless-shell");
  return existsSync(place) ? place : needChromium();
}

/**
 * Runs apt-get as root or by sudo without a password; does nothing where neither works.
 * @param {...string} names
 */
export function installDebian(...names) {
  const asRoot = process.getuid?.() === 0 ? [] : ["sudo", "-n"];
  for (const words of [["update"], ["install", "-y", "--no-install-recommends", ...names]]) {
    const [program, ...rest] = [...asRoot, "apt-get", ...words];
    spawnSync(/** @type {string} */ (program), rest, {
      stdio: ["ignore", 2, 2],
      env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
    });
  }
}

/**
 * The path of a program on PATH, its Debian package installed where it is missing.
 * @param {string} program @param {string} debianPackage
 */
export function needProgram(program, debianPackage) {
  const find = () => {
    try {
      return execFileSync("which", [program], { encoding: "utf8" }).trim();
    } catch {
      return "";
    }
  };
  let place = find();
  if (!place) {
    installDebian(debianPackage);
    place = find();
  }
  if (!place) throw new Error(`This test needs ${program}: install the package ${debianPackage}.`);
  return place;
}
