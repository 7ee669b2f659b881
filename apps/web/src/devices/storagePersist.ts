/** What became of the wish that the browser should not clear our storage. */
export type PersistState = "kept" | "refused" | "missing";

interface StorageParts {
  readonly persist?: () => Promise<boolean>;
  readonly persisted?: () => Promise<boolean>;
}

/** Asks the browser to keep the notebook also when the machine runs short of room: a wish, at the first sheet. */
export async function wishToPersist(storage: StorageParts | undefined = navigator.storage): Promise<PersistState> {
  if (!storage?.persist) return "missing";
  try {
    if (await storage.persisted?.()) return "kept";
    return (await storage.persist()) ? "kept" : "refused";
  } catch {
    return "refused";
  }
}
