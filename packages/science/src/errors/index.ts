export { furtherMessageOf } from "./furtherWords.ts";
export type {
  ApertureFacts,
  ColourOfLightFacts,
  ExposureIndexFacts,
  ExtensionFacts,
  FiltersFacts,
  HandFacts,
  LedgerFactsOf,
  LedgerLineFacts,
  LedgerLineName,
  LongExposureFacts,
  PlaceFacts,
  ReadingFacts,
  TransmissionFacts,
} from "./ledgerFacts.ts";
export { type LedgerWords, type LedgerWordsInput, type LengthUnit, ledgerWords } from "./ledgerWords.ts";
export { type Facts, OutOfDomain } from "./outOfDomain.ts";
export {
  type Numbers,
  requireFinite,
  requireInteger,
  requireNotNegative,
  requirePositive,
  requireWithin,
} from "./require.ts";
export { type Message, type MessageInput, messageOf, type Sentences, type Speech } from "./words.ts";
