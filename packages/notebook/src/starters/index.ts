export { type FillDemoInput, fillDemo } from "./demo/fillDemo.ts";
export { sheetFormats } from "./sheetFormats.ts";
