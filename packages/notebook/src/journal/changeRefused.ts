/** A change that cannot be made: `code` says why, `path` where (`kind/id/field`). */
export class ChangeRefused extends Error {
  readonly code: "unknownKind" | "unknownField" | "unfitValue" | "tooMuch" | "closed";
  readonly path: string;

  constructor(code: ChangeRefused["code"], path: string) {
    super(`${code} at ${path}`);
    this.name = "ChangeRefused";
    this.code = code;
    this.path = path;
  }
}
