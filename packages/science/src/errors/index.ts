export { type Facts, OutOfDomain } from "./outOfDomain.ts";
export { requireFinite, requireInteger, requireNotNegative, requirePositive, requireWithin } from "./require.ts";
export { type Message, type MessageInput, messageOf } from "./words.ts";
