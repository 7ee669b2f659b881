export { databaseName, type OpenBrowserStorageInput, openBrowserStorage } from "./openBrowserStorage.ts";
export { openTextStore, type TextStore } from "./openTextStore.ts";
export { removeBrowserStorage } from "./removeBrowserStorage.ts";
