/** First the stuff or the act, then the rule. */
const heads: Readonly<Record<string, string>> = {
  "ox-eye5": "Peroxide.",
  "ox-eye8": "Strong peroxide.",
  "ox-12": "Peroxide over 12 %.",
  "ox-35": "Peroxide over 35 %.",
  "ox-vent": "Mixed bleach.",
  "ox-back": "The peroxide bottle.",
  "ox-metal": "Peroxide and metal.",
  "ox-solvent": "Solvents.",
  "ox-acetic": "Peroxide and vinegar.",
  "cl-acid": "Chlorine bleach.",
  "ac-10": "Acetic acid.",
  "ac-25": "Strong acetic acid.",
  ci: "Citric acid.",
  "dev-skin": "Developer.",
  "dev-powder": "Developer powder.",
  "dev-drain": "Used developer.",
  so2: "Choking gas.",
  "clear-hot": "Heat.",
  "fix-am": "Alkali in the fixer.",
  "ag-nh3": "Silver and ammonia.",
  "ag-waste": "Silver in the waste.",
  "waste-apart": "Used fixer and used bleach.",
  mains: "Mains and wet hands.",
  cr6: "Dichromate.",
  mn7: "Permanganate.",
  h2so4: "Sulfuric acid.",
  food: "Food and children.",
  air: "Air.",
  help: "If it happens.",
};

/** What a caution is about, in bold before its text. */
export function cautionHead(id: string): string {
  return heads[id] ?? "Take care.";
}
