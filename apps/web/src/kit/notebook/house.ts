import { openBrowserStorage, openTextStore, removeBrowserStorage, type TextStore } from "@captray/notebook/browser";
import { type Notebook, NotebookNewer, openNotebook } from "@captray/notebook/journal";
import { openMemoryStorage } from "@captray/notebook/storage";
import { chance, drawName } from "./chance.ts";
import { type DeviceState, readDeviceState, type Settings } from "./deviceState.ts";

/** Which notebook lies open on this page. */
export type House =
  | { readonly kind: "opening" }
  | { readonly kind: "failed"; readonly why: "newer" | "unreadable"; readonly message: string }
  | {
      readonly kind: "open";
      readonly notebook: Notebook;
      readonly isDemo: boolean;
      /** The browser lets nothing be kept: everything is gone with the page. */
      readonly forgets: boolean;
    };

const deviceName = "captray-device";
const demoId = "demo";

const listeners = new Set<() => void>();
let house: House = { kind: "opening" };
let device: DeviceState = readDevice(undefined);
let store: Promise<TextStore | undefined> | undefined;
let started: Promise<void> | undefined;
let channel: BroadcastChannel | undefined;

export function currentHouse(): House {
  return house;
}

export function currentSettings(): Settings {
  return device.settings;
}

export function followHouse(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Opens the notebook of the last time, once however often it is asked. */
export function openHouse(): Promise<void> {
  started ??= start();
  return started;
}

/** Opens the invented notebook, filled by `fill`; it has a database of its own. */
export async function enterDemo({ fill }: { readonly fill: (notebook: Notebook) => Promise<void> }): Promise<void> {
  await openHouse();
  await leave();
  try {
    await removeBrowserStorage({ notebookId: demoId });
  } catch {
    // Where nothing can be kept there is nothing to throw away.
  }
  const opened = await openBrowserNotebook(demoId);
  await fill(opened.notebook);
  await keepDevice({ lastNotebookId: demoId });
  show({ kind: "open", isDemo: true, ...opened });
}

/** Throws the invented notebook away, with whatever was tried in it, and opens the person's own. */
export async function leaveDemo(): Promise<void> {
  await leave();
  await keepDevice({ lastNotebookId: device.ownNotebookId });
  try {
    await removeBrowserStorage({ notebookId: demoId });
  } catch {
    // Another tab still shows it, and throws it away when it leaves.
  }
  show({ kind: "open", isDemo: false, ...(await openBrowserNotebook(device.ownNotebookId)) });
}

/** Changes how this device shows things, on every open page of it. */
export async function changeSettings(settings: Partial<Settings>): Promise<void> {
  await keepDevice({ settings: { ...device.settings, ...settings } });
  channel?.postMessage("changed");
}

async function start(): Promise<void> {
  try {
    await keepDevice({});
    listenToOtherTabs();
    const isDemo = device.lastNotebookId === demoId;
    const opened = await openBrowserNotebook(isDemo ? demoId : device.ownNotebookId);
    if (isDemo && opened.notebook.version() === "") {
      // Thrown away by another tab since.
      await opened.notebook.close();
      return show({ kind: "open", isDemo: false, ...(await openBrowserNotebook(device.ownNotebookId)) });
    }
    show({ kind: "open", isDemo, ...opened });
  } catch (why) {
    show({ kind: "failed", why: why instanceof NotebookNewer ? "newer" : "unreadable", message: String(why) });
  }
}

async function leave(): Promise<void> {
  if (house.kind !== "open") return;
  const { notebook } = house;
  show({ kind: "opening" });
  await notebook.close();
}

async function openBrowserNotebook(notebookId: string): Promise<{ notebook: Notebook; forgets: boolean }> {
  const storage = await openBrowserStorage({ notebookId }).catch(() => undefined);
  const notebook = await openNotebook({
    storage: storage ?? openMemoryStorage(),
    notebookId,
    now: Date.now,
    random: chance,
    device: device.device,
  });
  return { notebook, forgets: storage === undefined };
}

function readDevice(text: string | undefined): DeviceState {
  return readDeviceState({ text, drawDevice: () => drawName(8), drawId: () => drawName(12) });
}

/** Reads the device's own record, changes it and keeps it; where nothing can be kept it lasts as long as the page. */
async function keepDevice(change: Partial<DeviceState>): Promise<void> {
  store ??= openTextStore({ name: deviceName }).catch(() => undefined);
  const kept = await (await store)
    ?.change((text) => JSON.stringify({ ...(text === undefined ? device : readDevice(text)), ...change }))
    .catch(() => undefined);
  device = kept === undefined ? { ...device, ...change } : readDevice(kept);
  say();
}

function listenToOtherTabs(): void {
  channel = new BroadcastChannel(deviceName);
  channel.addEventListener("message", () => void keepDevice({}));
}

function show(next: House): void {
  house = next;
  say();
}

function say(): void {
  for (const listener of [...listeners]) listener();
}
