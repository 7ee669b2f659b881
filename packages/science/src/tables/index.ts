export { cieObserver1931 } from "./cieObserver1931.ts";
export { daylightComponents } from "./daylightComponents.ts";
export { isoStandardLens } from "./isoStandardLens.ts";
export { type WhiteLedShape, whiteLedShapes } from "./whiteLedShapes.ts";
