import { expect, test } from "vitest";
import { openForTest } from "../../journal/testing.ts";
import { fillDemo } from "./fillDemo.ts";
test("look", async () => {
  const notebook = await openForTest();
  await fillDemo({ notebook });
  for (const card of notebook.cards()) {
    const s = await notebook.load(card.id) as any;
    console.log(card.code, card.state, card.plannedS, card.givenS, JSON.stringify(s.planned?.ledger?.map((l:any)=>[l.line,l.stops.value.toFixed(3),(1.645*l.stops.sd).toFixed(3)].join(" "))), JSON.stringify(s.planned?.answer?.timeIntervalS), (1.645*(s.planned?.answer?.timeStops?.sd??0)).toFixed(3));
  }
  console.log(notebook.problems(), (await (async()=>{let n=0,b=0;for await (const c of notebook.log()){n++;b+=JSON.stringify(c).length}return [n,b]})()));
});
