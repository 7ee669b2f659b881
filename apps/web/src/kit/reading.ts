/** What a reader made of a field's text. `understood` says it in words; `likely` is what was probably meant. */
export type Reading<Value> =
  | { readonly kind: "read"; readonly value: Value; readonly understood: string; readonly marked?: boolean }
  | { readonly kind: "unreadable"; readonly message: string; readonly likely?: string }
  | { readonly kind: "empty" };
