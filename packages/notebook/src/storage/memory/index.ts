export { type MemoryBase, newMemoryBase, type OpenMemoryStorageInput, openMemoryStorage } from "./openMemoryStorage.ts";
