import { openDB } from "idb";

/** One text that outlives the page: for what belongs to the device and is in no notebook's log. */
export interface TextStore {
  read(): Promise<string | undefined>;
  /** Reads and writes in one transaction, so that two tabs cannot both believe they were first. */
  change(update: (text: string | undefined) => string): Promise<string>;
  close(): void;
}

export async function openTextStore({ name }: { readonly name: string }): Promise<TextStore> {
  const db = await openDB<{ text: { key: string; value: string } }>(name, 1, {
    upgrade(database) {
      database.createObjectStore("text");
    },
    blocking(_current, _wanted, event) {
      (event.target as IDBDatabase).close();
    },
  });
  return {
    read: () => db.get("text", "text"),
    async change(update) {
      const transaction = db.transaction("text", "readwrite", { durability: "strict" });
      const text = update(await transaction.store.get("text"));
      await transaction.store.put(text, "text");
      await transaction.done;
      return text;
    },
    close: () => db.close(),
  };
}
