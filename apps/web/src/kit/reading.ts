/** What a reader of notation made of a field's text: the shape all readers of `science/notation` answer in. */
export type Reading =
  | { readonly kind: "read"; readonly value: number; readonly understood: string }
  | { readonly kind: "unreadable"; readonly message: string; readonly likely?: { readonly text: string } }
  | { readonly kind: "empty" };
