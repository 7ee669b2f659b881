import { useSyncExternalStore } from "react";

export type Light = "day" | "red";

const listeners = new Set<() => void>();
const sheet = makeSheet();

/** The light the app is drawn for: red while the page is black, from its first byte on. */
function currentLight(): Light {
  return document.documentElement.dataset.light === "day" ? "day" : "red";
}

/** The light the app is drawn for, followed. */
export function useLight(): Light {
  return useSyncExternalStore(follow, currentLight);
}

/** Draws the app for another light, at once and without a fade, and remembers it for the next start. */
export function turnLight({ to }: { readonly to: Light }): void {
  document.documentElement.dataset.light = to;
  setMeta("color-scheme", to === "day" ? "light" : "dark");
  setMeta("theme-color", to === "day" ? "#F6F2E7" : "#000000");
  if (to === "red") layOnTop();
  else liftSheet();
  try {
    localStorage.setItem("light", to);
  } catch {
    // Without storage the light lasts as long as the page.
  }
  for (const listener of listeners) listener();
}

/** Takes up the light of the last time, red while a run goes on, or daylight on a first visit; to be called before anything is drawn. */
export function takeUpLight(): void {
  let kept: string | null = null;
  try {
    kept = localStorage.getItem("light");
  } catch {
    // Storage is closed to us: a first visit.
  }
  turnLight({ to: kept === "red" || runGoing() !== null ? "red" : "day" });
  // Whatever enters the top layer later would lie above the sheet, so the sheet goes on top again.
  document.addEventListener(
    "toggle",
    (event) => event.target !== sheet && currentLight() === "red" && layOnTop(),
    true,
  );
  document.addEventListener("fullscreenchange", () => currentLight() === "red" && layOnTop());
  // A context menu is drawn by the system, in its own colours.
  document.addEventListener("contextmenu", (event) => currentLight() === "red" && event.preventDefault());
}

const runName = "captray-run-going";

/** The run that goes on on this device, or null: until it is over every page comes back in red, from its first frame on. */
export function runGoing(): string | null {
  try {
    return localStorage.getItem(runName);
  } catch {
    return null;
  }
}

/** Says which run goes on on this device; null when it is over. The first frame of the next start reads it. */
export function markRun({ id }: { readonly id: string | null }): void {
  try {
    if (id === null) localStorage.removeItem(runName);
    else localStorage.setItem(runName, id);
  } catch {
    // Without storage there is no next start to speak of.
  }
}

function follow(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

function makeSheet(): HTMLElement {
  const made = document.createElement("div");
  made.className = "Look-RedSheet";
  made.setAttribute("popover", "manual");
  made.setAttribute("aria-hidden", "true");
  return made;
}

function layOnTop(): void {
  if (!sheet.isConnected) document.body.append(sheet);
  if (typeof sheet.showPopover !== "function") return; // then its z-index has to do
  if (sheet.matches(":popover-open")) sheet.hidePopover();
  sheet.showPopover();
}

function liftSheet(): void {
  sheet.remove();
}

function setMeta(name: string, content: string): void {
  document.querySelector(`meta[name="${name}"]`)?.setAttribute("content", content);
}
