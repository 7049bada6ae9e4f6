import { test } from "vitest";
import { linesToShortlist } from "./lines-to-shortlist.ts";
import { plainWalkOf } from "./plain-walk-of.ts";
test("x", async ()=>{
 const { steps, state } = await plainWalkOf(linesToShortlist);
 steps.forEach((s,i)=>console.log(">>>", linesToShortlist[i], "\n", s.slice(0,1500)));
 console.log(JSON.stringify(Object.fromEntries(Object.entries(state.answers).map(([k,v])=>[k,v.value]))));
});
