// Opens the engine in a page and edits a yard in it, then hands what was measured back, as JSON.
import { engineFrom } from "./engine.js";

const EDITS = 120;
const job = await (await fetch("job.json")).json();
const from = performance.now();
const engine = await engineFrom(fetch("engine.packed"));
const opened = performance.now();
await engineFrom(fetch("engine.packed"));
const again = performance.now() - opened;
const began = performance.now();
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
// A line post that follows the finger: the layout and what it changes in the drawing, the page's own drawing too.
const text = JSON.stringify(job);
const post = JSON.parse(engine.design(text)).posts.find((one) => one.role === "line");
const moves = [];
let known = [];
for (let i = 0; i < EDITS; i++) {
    const start = performance.now();
    const { strips } = JSON.parse(engine.moved(post.run, post.id, `${Math.round(post.stationIn) + (i % 12)}"`, known.join(" ")));
    known = strips.map((one) => one.key);
    document.body.innerHTML = strips.map((one) => one.svg ?? "").join("");
    document.body.getBoundingClientRect();
    moves.push(performance.now() - start);
}
await fetch("said", { method: "POST", body: JSON.stringify({ open: opened - from, again, first: answered - began, edits, drawings, moves }) });
