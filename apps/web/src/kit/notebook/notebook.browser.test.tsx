import { removeBrowserStorage } from "@captray/notebook/browser";
import type { Notebook } from "@captray/notebook/journal";
import type { RecordId } from "@captray/notebook/records";
import { createRoot } from "react-dom/client";
import { afterAll, beforeAll, expect, test } from "vitest";
import { changeSettings, currentHouse, enterDemo, leaveDemo } from "./house.ts";
import { NotebookProvider } from "./NotebookProvider.tsx";
import { useCards } from "./useCards.ts";
import { useNotebook } from "./useNotebook.ts";
import { useRecord } from "./useRecord.ts";
import { useSettings } from "./useSettings.ts";
import { useShelf } from "./useShelf.ts";
import { useTakeBack } from "./useTakeBack.ts";
import { useUnkept } from "./useUnkept.ts";

let notebook: Notebook;
let asked = "";
const place = document.createElement("div");
const root = createRoot(place);

function Screen() {
  notebook = useNotebook();
  const sheet = useRecord(asked);
  const { note } = useTakeBack();
  return (
    <p>
      {useCards("w3")
        .map(({ code, state }) => `${code} ${state}`)
        .join(", ")}
      {" | "}
      {useShelf("lens")
        .map(({ name }) => name)
        .join(", ")}
      {" | "}
      {typeof sheet === "string" ? sheet : sheet.kind === "sheet" && sheet.code}
      {" | "}
      {note ?? "nothing"}
      {" | "}
      {useUnkept() === 0 ? "kept" : "on its way"}
      {" | "}
      {useSettings().lengthUnit}
    </p>
  );
}

function draw() {
  root.render(<NotebookProvider failed={(why) => why}>{<Screen key={asked} />}</NotebookProvider>);
}
const shown = () => place.textContent;

beforeAll(() => {
  document.body.append(place);
  draw();
});
afterAll(async () => {
  root.unmount();
  const house = currentHouse();
  if (house.kind !== "open") return;
  await house.notebook.close();
  await removeBrowserStorage({ notebookId: house.notebook.id });
});

test("screens follow the Shelf, the sheets, the record asked for, what can be taken back and what is kept", async () => {
  await expect.poll(shown).toBe(" |  | absent | nothing | kept | mm");
  const [lens, sheet] = [notebook.newId(), notebook.newId()];
  notebook.change([{ id: lens, kind: "lens", set: { name: "brass 240" } }], "lens");
  notebook.change([{ id: sheet, kind: "sheet", set: { code: "W31", lensId: lens } }], "sheet");
  expect(notebook.unkept()).toBe(2);
  await expect.poll(shown).toBe("W31 blank | brass 240 | absent | sheet | kept | mm");
  asked = sheet;
  draw();
  await expect.poll(shown).toBe("W31 blank | brass 240 | W31 | sheet | kept | mm");
  await notebook.takeBack();
  await expect.poll(shown).toBe(" | brass 240 | absent | lens | kept | mm");
  asked = "";
  draw();
});

test("a setting of the device changes what is shown and touches no notebook", async () => {
  const before = notebook.version();
  await changeSettings({ lengthUnit: "inch" });
  await expect.poll(shown).toMatch(/ inch$/);
  expect(notebook.version()).toBe(before);
  await changeSettings({ lengthUnit: "mm" });
});

test("the demo notebook is another database, and is thrown away on leaving with what was tried in it", async () => {
  const own = notebook;
  const fill = async (demo: Notebook) => {
    await demo.change([{ id: demo.newId(), kind: "sheet", set: { code: "W30" } }], "demo").kept;
  };
  await enterDemo({ fill });
  await expect.poll(shown).toMatch(/^W30 blank \| {2}\|/);
  expect(currentHouse()).toMatchObject({ kind: "open", isDemo: true, forgets: false });
  await notebook.change([{ id: notebook.newId(), kind: "sheet", set: { code: "W39" } }], "tried").kept;
  await leaveDemo();
  await expect.poll(shown).toMatch(/^ \| brass 240 \|/);
  expect(notebook.id).toBe(own.id);
  expect((await indexedDB.databases()).map(({ name }) => name)).not.toContain("captray-demo");
  await enterDemo({ fill });
  await expect.poll(shown).toMatch(/^W30 blank \|/);
  expect(notebook.cards()).toHaveLength(1);
  await leaveDemo();
});

test("a sheet that lies in storage is loading first, then there; an unknown one is absent", async () => {
  const sheet = notebook.newId();
  await notebook.change([{ id: sheet, kind: "sheet", set: { code: "W33" } }], "sheet").kept;
  // Going to the demo and back opens the notebook anew, without any row of a sheet.
  await enterDemo({ fill: async () => {} });
  await leaveDemo();
  await expect.poll(shown).toMatch(/^W33 blank/);
  expect(notebook.peek(sheet)).toBeUndefined();
  asked = sheet;
  draw();
  await expect.poll(shown).toMatch(/\| W33 \|/);
  asked = "0".repeat(26) as RecordId;
  draw();
  await expect.poll(shown).toMatch(/\| absent \|/);
});
