/** Opens another page of the app: `goTo({ path: "/camera/now" })`. With `replace`, the way back skips the present page. */
export function goTo({ path, replace = false }: { readonly path: string; readonly replace?: boolean }): void {
  if (replace) location.replace(`#${path}`);
  else location.hash = path;
}
