export { notebookFile, type OpenDiskStorageInput, openDiskStorage } from "./openDiskStorage.ts";
