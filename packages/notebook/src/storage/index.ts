export { type MemoryBase, newMemoryBase, type OpenMemoryStorageInput, openMemoryStorage } from "./memory/index.ts";
export type { LogEntry, NumberedEntry, Storage, Table, Transaction } from "./storage.ts";
