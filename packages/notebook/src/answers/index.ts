export type { Kit } from "./kit.ts";
export { type FindsRecords, kitOf } from "./kitOf.ts";
export { type LightMoved, lightMoved } from "./lightMoved.ts";
export { type MissingPart, type PlanInputOf, planInputOf, supposedSource } from "./planInputOf.ts";
export { type PlanOf, planOf } from "./planOf.ts";
export { type WaysOf, waysOf } from "./waysOf.ts";
