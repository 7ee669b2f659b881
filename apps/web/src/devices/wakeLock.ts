/** Whether the screen stays awake: `refused` by the machine, `missing` where it cannot be asked. */
export type WakeState = "held" | "refused" | "missing" | "released";

interface Sentinel {
  readonly release: () => Promise<void>;
  readonly addEventListener: (name: "release", listener: () => void) => void;
}

interface WakeParts {
  readonly wakeLock?: { readonly request: (kind: "screen") => Promise<Sentinel> } | undefined;
  readonly page?: Pick<Document, "visibilityState" | "addEventListener" | "removeEventListener">;
}

/**
 * Keeps the screen awake until the returned function is called.
 *
 * The machine lets go whenever the page is hidden, so it is asked again each time the page is seen again.
 */
export function holdWakeLock({
  onState,
  parts = {},
}: {
  readonly onState: (state: WakeState) => void;
  readonly parts?: WakeParts;
}): () => void {
  const wakeLock = "wakeLock" in parts ? parts.wakeLock : navigator.wakeLock;
  const page = parts.page ?? document;
  let over = false;
  let held: Sentinel | null = null;
  let asking = false;

  const ask = async () => {
    if (over || held || asking) return;
    if (!wakeLock) return onState("missing");
    if (page.visibilityState !== "visible") return;
    asking = true;
    try {
      const sentinel = await wakeLock.request("screen");
      if (over) return void (await sentinel.release());
      held = sentinel;
      sentinel.addEventListener("release", () => {
        held = null;
        if (!over) onState("released");
      });
      onState("held");
    } catch {
      if (!over) onState("refused");
    } finally {
      asking = false;
    }
  };

  const seenAgain = () => void ask();
  page.addEventListener("visibilitychange", seenAgain);
  void ask();
  return () => {
    over = true;
    page.removeEventListener("visibilitychange", seenAgain);
    held?.release().catch(() => undefined);
    held = null;
  };
}
