// Opens the engine in a page and edits a yard in it, then hands what was measured back, as JSON.
import { engineFrom } from "./engine.js";

const EDITS = 120;
const job = await (await fetch("job.json")).json();
const from = performance.now();
const engine = await engineFrom(fetch("engine.wasm"));
const opened = performance.now();
engine.design(JSON.stringify(job));
const answered = performance.now();

const shots = job.ground.shots.filter((shot) => shot.elevation);
const edits = [];
const drawings = [];
for (let i = 0; i < EDITS; i++) {
    if (i % 2 && shots.length) shots[i % shots.length].elevation = `${-10 - (i % 7)}-${1 + 2 * (i % 8)}/16"`;
    else job.gates[0].station = `${18 + (i % 3)}' ${i % 12}"`;
    const text = JSON.stringify(job);
    const start = performance.now();
    engine.design(text);
    const designed = performance.now();
    engine.drawings(text);
    edits.push(designed - start);
    drawings.push(performance.now() - designed);
}
await fetch("said", { method: "POST", body: JSON.stringify({ open: opened - from, first: answered - opened, edits, drawings }) });
