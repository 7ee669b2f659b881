// Tools for our own packages: they keep positions, because they run in the innermost loops.
export { chiSquared } from "./chiSquared.ts";
export { cholesky } from "./cholesky.ts";
export { exponentialIntegrals } from "./exponentialIntegrals.ts";
export { gaussLegendre, type Nodes } from "./gaussLegendre.ts";
export { quantile } from "./quantile.ts";
export { type RandomNumbers, randomNumbers } from "./randomNumbers.ts";
export { studentT } from "./studentT.ts";
