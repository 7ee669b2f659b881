export { databaseName, type OpenBrowserStorageInput, openBrowserStorage } from "./openBrowserStorage.ts";
export { removeBrowserStorage } from "./removeBrowserStorage.ts";
