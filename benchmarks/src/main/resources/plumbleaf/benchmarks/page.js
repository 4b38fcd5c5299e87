// Opens the engine beside a page, as the field book does, and edits a yard with it, then hands what was measured back, as JSON. Every time is the page's: what passes between the two
// threads, the reading of the answer and the drawing of it are in it.
import { engineBeside } from "./beside.js";

const EDITS = 120;
const job = await (await fetch("job.json")).json();
const begun = () => engineBeside((no) => { throw new Error(no.words); });
const asked = async (engine, verb, ...texts) => JSON.parse(await engine.ask(verb, ...texts));

// While the engine unpacks itself the page stays free: the longest that it was not is told too.
let longest = 0;
let last = performance.now();
const beat = setInterval(() => { const now = performance.now(); longest = Math.max(longest, now - last - 4); last = now; }, 4);
const from = performance.now();
let engine = begun();
await engine.ask("stock", "{}");
const open = performance.now() - from;
clearInterval(beat);
engine.end();
const next = performance.now();
engine = begun();
await engine.ask("stock", "{}");
const again = performance.now() - next;
const began = performance.now();
await asked(engine, "design", JSON.stringify(job));
const first = performance.now() - began;

const place = document.createElement("div");
document.body.append(place);
function draw(drawings) {
    const fresh = drawings.map((one) => one.svg ?? "").join("");
    if (fresh) place.innerHTML = fresh;
    place.getBoundingClientRect();
    return drawings.map((one) => one.key).join(" ");
}
const since = (start) => performance.now() - start;

// Any value typed: laid out and what is edited drawn; then designed; then its remedies priced.
const shots = job.ground.shots.filter((shot) => shot.elevation);
const run = job.runs[0].id;
const gate = job.gates[0].id;
const times = { laid: [], designed: [], priced: [], drawings: [], moves: [] };
let known = "";
for (let i = 0; i < EDITS; i++) {
    const isShot = i % 2 && shots.length;
    if (isShot) shots[i % shots.length].elevation = `${-10 - (i % 7)}-${1 + 2 * (i % 8)}/16"`;
    else job.gates[0].station = `${18 + (i % 3)}' ${i % 12}"`;
    const start = performance.now();
    const text = JSON.stringify(job);
    known = draw((await asked(engine, "laid", text, isShot ? run : gate, known)).drawings);
    times.laid.push(since(start));
    await asked(engine, "unpriced", text);
    times.designed.push(since(start));
    await asked(engine, "design", text);
    times.priced.push(since(start));
    const designed = performance.now();
    await asked(engine, "drawings", text, "", "");
    times.drawings.push(since(designed));
}
// A line post that follows the finger.
const post = (await asked(engine, "design", JSON.stringify(job))).posts.find((one) => one.role === "line");
for (let i = 0; i < EDITS; i++) {
    const start = performance.now();
    job.runs[0].set = [{ id: post.id, station: `${Math.round(post.stationIn) + (i % 12)}"` }];
    known = draw((await asked(engine, "laid", JSON.stringify(job), post.run, known)).drawings);
    times.moves.push(since(start));
}
await fetch("said", { method: "POST", body: JSON.stringify({ open, longest, again, first, ...times }) });
