export { benchDrawing } from "./benchDrawing.ts";
export type { BenchInput, Lying, OpenStation, Station, Visit } from "./benchTypes.ts";
export { type LightTestDrawingInput, type LightTestStage, lightTestDrawing } from "./lightTestDrawing.ts";
export { rockingDrawing } from "./rockingDrawing.ts";
