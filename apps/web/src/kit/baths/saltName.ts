const names: Readonly<Record<string, string>> = {
  "C6H8O7.H2O": "monohydrate",
  C6H8O7: "anhydrous",
  Na2SO3: "anhydrous",
  "Na2SO3.7H2O": "crystals, 7 H2O",
};

/** What a jar’s salt is called in the trade; one that is not known by its formula. */
export function saltName(formula: string): string {
  return names[formula] ?? formula;
}
