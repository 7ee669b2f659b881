const types: Readonly<Record<string, string>> = {
  css: "text/css; charset=utf-8",
  html: "text/html; charset=utf-8",
  ico: "image/x-icon",
  jpg: "image/jpeg",
  js: "text/javascript; charset=utf-8",
  json: "application/json; charset=utf-8",
  map: "application/json; charset=utf-8",
  mjs: "text/javascript; charset=utf-8",
  png: "image/png",
  svg: "image/svg+xml",
  txt: "text/plain; charset=utf-8",
  wasm: "application/wasm",
  webmanifest: "application/manifest+json; charset=utf-8",
  woff2: "font/woff2",
};

/**
 * The media type a file is sent with, from the ending of its name; bytes without a meaning where the ending is unknown.
 *
 * @source ietf-http, RFC 9239 section 6: text/javascript (from memory); w3c-appmanifest: application/manifest+json (from memory)
 */
export function typeOf({ path }: { readonly path: string }): string {
  const ending = /\.([a-z0-9]+)$/i.exec(path)?.[1]?.toLowerCase() ?? "";
  return types[ending] ?? "application/octet-stream";
}
