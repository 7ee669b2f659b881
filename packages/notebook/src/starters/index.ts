export { type FillDemoInput, fillDemo } from "./demo/fillDemo.ts";
