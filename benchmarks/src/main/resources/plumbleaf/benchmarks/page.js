// Opens the engine beside a page, as the field book does, and edits a yard with it on a page of a phone's size, with the book's own drawings and looks, then hands what was measured
// back, as JSON. Every time is the page's: what passes between the two threads, the reading of the answer and the drawing of it are in it.
import { engineBeside } from "./beside.js";
import { engineOf, unpacked } from "./engine.js";
import { Figures } from "./figures.js";

const EDITS = 100;
const job = await (await fetch("job.json")).json();
const kit = await (await fetch("kit.json")).text();
const begun = () => engineBeside((no) => { throw new Error(no.words); });
const asked = async (engine, verb, ...texts) => JSON.parse(await engine.ask(verb, ...texts));

// While the engine unpacks itself the page stays free: the longest that it was not is told too.
let longest = 0;
let last = performance.now();
const beat = setInterval(() => { const now = performance.now(); longest = Math.max(longest, now - last - 4); last = now; }, 4);
const from = performance.now();
let engine = begun();
await engine.ask("stock", kit);
const open = performance.now() - from;
clearInterval(beat);
engine.end();
const next = performance.now();
engine = begun();
await engine.ask("stock", kit);
const again = performance.now() - next;
const began = performance.now();
const yard = await asked(engine, "design", JSON.stringify(job));
const first = performance.now() - began;

const since = (start) => performance.now() - start;
const times = { shots: [], gates: [], moves: [], designed: [], priced: [], rest: [] };
const keys = (list) => list.join(" ");

/** The drawings of some parts in a place of the book's: `shown` beside the numbers, `sheets` on the page of all drawings. */
async function shown(id, parts) {
    const place = document.createElement("div");
    place.id = place.className = id;
    document.querySelector("main").replaceChildren(place);
    const figures = new Figures(place, parts);
    figures.draw(await asked(engine, "drawings", JSON.stringify(job), keys(parts), ""));
    place.getBoundingClientRect();
    return figures;
}

/** What an edit takes until what is on the screen shows it. */
async function laid(figures, parts, how) {
    const start = performance.now();
    const { known, later } = figures.asks();
    const { drawings } = await asked(engine, "laid", JSON.stringify(job), keys(parts), keys(known), keys(later));
    how(drawings);
    figures.place.getBoundingClientRect();
    return since(start);
}

// Any value typed: laid out and what is on the screen of it drawn; then designed, and the rest drawn; then its remedies priced.
async function edited(figures, measured) {
    const start = performance.now();
    measured.push(await laid(figures, figures.parts, (drawings) => figures.draw(drawings)));
    const text = JSON.stringify(job);
    await asked(engine, "unpriced", text);
    times.designed.push(since(start));
    const designed = performance.now();
    figures.draw(await asked(engine, "drawings", text, keys(figures.parts), keys(figures.asks().known)));
    figures.place.getBoundingClientRect();
    times.rest.push(since(designed));
    await asked(engine, "design", text);
    times.priced.push(since(start));
}

const shots = job.ground.shots.filter((shot) => shot.elevation);
const ofRun = await shown("shown", [job.runs[0].id]);
for (let i = 0; i < EDITS; i++) {
    shots[i % shots.length].elevation = `-${10 + (i % 7)}-${1 + 2 * (i % 8)}/16"`;
    await edited(ofRun, times.shots);
}
const ofGate = await shown("shown", [job.gates[0].id]);
for (let i = 0; i < EDITS; i++) {
    job.gates[0].station = `${18 + (i % 3)}' ${i % 12}"`;
    await edited(ofGate, times.gates);
}
// A line post that follows the finger, on the page of all drawings.
const all = await shown("sheets", []);
const post = yard.posts.find((one) => one.role === "line");
all.all.find((figure) => figure.of === post.run).element.scrollIntoView();
for (let i = 0; i < EDITS; i++) {
    job.runs[0].set = [{ id: post.id, station: `${Math.round(post.stationIn) + (i % 12)}"` }];
    times.moves.push(await laid(all, [post.run], (drawings) => all.drawPart(post.run, drawings)));
}
// What the first visit is made of: the same steps once more, one after the other, on the page's own thread.
const parts = {};
let lap = performance.now();
const step = (name) => { const now = performance.now(); parts[name] = now - lap; lap = now; };
const packed = new Uint8Array(await (await fetch("engine.packed")).arrayBuffer());
step("fetched");
const bytes = await unpacked(packed, (file, how) => fetch(file, how));
step("unpacked");
const made = await engineOf(bytes);
step("started");
made.stock(kit);
step("read");
await fetch("said", { method: "POST", body: JSON.stringify({ open, longest, again, first, ...parts, ...times }) });
