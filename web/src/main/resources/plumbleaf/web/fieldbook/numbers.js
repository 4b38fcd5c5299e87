import { valueAt } from "./edits.js";
import { Figures } from "./figures.js";
import { STEPS } from "./openjob.js";
import { escaped, part } from "./words.js";

// The values one changes most in the yard, each kept as soon as it is typed, beside the drawing of what is being changed.
const OF_RUN = [["infill", "Height"], ["bottomGap", "Bottom gap"], ["maxBay", "Longest bay"]];
const OF_GATE = [["station", "Station"], ["opening", "Opening"], ["leaf.bottomGap", "Bottom gap"]];
const SIDES = [["hinge", "Hinge, from outside", ["left", "right"]], ["swing", "Swing", ["in", "out"]]];
/** How often is asked whether it has arrived. */
const ON_ITS_WAY_MS = 100;
const READINGS = ["rod", "elevation", "falls", "rises"];

/** @returns {{ title: string, of: string, fields: { path: string, words: string, room: string, choices?: string[] }[] }[]} what can be changed, thing by thing */
function things(job) {
    const things = [];
    for (const gate of job.gates ?? []) {
        const swings = gate.kind === undefined || gate.kind === "swing" || gate.kind === "pair";
        const sides = SIDES.filter(([key]) => (key === "hinge" ? gate.kind !== "pair" && swings : swings));
        things.push({
            title: `Gate ${gate.id}`, of: gate.id,
            fields: [
                ...OF_GATE.map(([key, words]) => ({ path: `gates[${gate.id}].${key}`, words, room: "gates" })),
                ...sides.map(([key, words, choices]) => ({ path: `gates[${gate.id}].${key}`, words, room: "gates", choices })),
            ],
        });
    }
    for (const run of job.runs ?? []) things.push({ title: `Run ${run.id}`, of: run.id, fields: OF_RUN.map(([key, words]) => ({ path: `runs[${run.id}].${key}`, words, room: "line" })) });
    const shots = [];
    for (const shot of job.ground?.shots ?? []) {
        const key = READINGS.find((one) => shot[one] !== undefined);
        if (key) shots.push({ path: `ground.shots[${shot.id}].${key}`, words: `${key[0].toUpperCase() + key.slice(1)} of ${shot.id}`, room: "ground", of: shot.run });
    }
    if (shots.length) things.push({ title: "Shots", of: job.runs?.[0]?.id ?? "site", fields: shots });
    return things;
}

export function numbers(place, book) {
    const all = things(book.job());
    if (!all.length) {
        place.replaceChildren(part("<p>This job has no run, gate or shot yet. Draw a run in the room Line; that needs the signal.</p>"));
        return {};
    }
    place.replaceChildren(part(`<div class="with-drawing"><div id="shown" class="shown"></div><div>${all.map(section).join("")}</div></div>`));
    const figures = new Figures(place.querySelector("#shown"), [all[0].of]);
    const draw = async () => {
        try {
            if (!figures.draw(await book.drawings(figures.parts, figures.asks().known))) figures.draw(await book.drawings(figures.parts));
        } catch (fault) {
            figures.says(`Not drawn: ${fault.message}`);
        }
    };
    if (book.step !== STEPS.NONE) draw();
    else figures.says("Being drawn.");
    function section({ title, of, fields }) {
        return `<h3>${escaped(title)}</h3><div class="fields">${fields.map((one) => field({ of, ...one })).join("")}</div>`;
    }
    function field({ path, words, room, of, choices }) {
        const value = valueAt(book.job(), path);
        const input = choices
            ? `<select data-path="${escaped(path)}" data-room="${room}" data-shows="${escaped(of ?? "")}">${[...new Set(["", ...choices, value])].map((one) => `<option value="${escaped(one)}"${one === value ? " selected" : ""}>${escaped(one) || "not said"}</option>`).join("")}</select>`
            : `<input data-path="${escaped(path)}" data-room="${room}" data-shows="${escaped(of ?? "")}" value="${escaped(value)}" autocomplete="off" autocapitalize="off" spellcheck="false">`;
        return `<label>${escaped(words)} ${input}<span class="problem" role="alert"></span></label>`;
    }
    for (const input of place.querySelectorAll("[data-path]")) {
        input.addEventListener("focus", () => {
            const of = input.dataset.shows;
            if (!of || figures.parts[0] === of) return;
            figures.parts = [of];
            place.querySelector("#shown").scrollLeft = 0;
            draw();
        });
        input.addEventListener("change", async () => {
            const typed = input.value;
            const wrong = await changed(book, input.dataset, typed.trim());
            // Something else was typed meanwhile: that has its own answer.
            if (input.value !== typed) return;
            input.parentNode.querySelector(".problem").textContent = wrong;
            input.setAttribute("aria-invalid", wrong ? "true" : "false");
        });
    }
    return {
        asks: () => figures.asks(),
        /** What came from elsewhere; what is being typed stays. */
        fresh() {
            for (const input of place.querySelectorAll("[data-path]")) if (input !== document.activeElement && input.getAttribute("aria-invalid") !== "true") input.value = valueAt(book.job(), input.dataset.path);
        },
        step(laid) {
            if (laid?.drawings) figures.draw(laid.drawings);
            else if (!laid && book.step !== STEPS.PRICED) draw();
        },
    };
}

async function changed(book, { path, room }, value) {
    const found = () => book.queue.list().find((edit) => path.startsWith(edit.path + ".") && new Map(edit.fields).has("list"));
    // One that is on its way is changed once it is there: changed here, it would arrive twice.
    while (book.queue.isGoing(found()?.id)) await new Promise((done) => setTimeout(done, ON_ITS_WAY_MS));
    const own = found();
    if (own) return retaken(book, own, path.slice(own.path.length + 1), value);
    return book.put({ at: `/jobs/${book.id}/${room}/edit`, path, fields: [["path", path], ["unit", "WORDS"], ["value", value]] });
}

/** A number of a shot that has not gone up yet: the shot itself is changed where it waits; one that was refused goes up again. */
const retaken = (book, own, key, value) => book.put({ ...own, id: undefined, asked: undefined, refused: undefined, fields: own.fields.map(([name, was]) => (name === key ? [name, value] : [name, was])) });
