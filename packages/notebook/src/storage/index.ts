export type { LogEntry, NumberedEntry, Storage, Table, Transaction } from "./storage.ts";
