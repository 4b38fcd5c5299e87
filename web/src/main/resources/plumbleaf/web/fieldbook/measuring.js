import { nextShot } from "./edits.js";
import { keepPhoto, photosOf } from "./held.js";
import { keypad } from "./keys.js";
import { STEPS } from "./openjob.js";
import { sketch } from "./sketch.js";
import { escaped, part, unbroken } from "./words.js";

// One number at a time: where the rod stands, then what it reads. Every shot is kept the moment it is complete.
const BACK = "benchmark";

/** @param book the open job */
export function measuring(place, book) {
    let station = null;
    let newest = "";
    /** Number of the newest level, which may be on its way into the job. */
    let given = 0;
    const job = () => book.job();
    const runs = job().runs ?? [];
    if (!runs.length) {
        place.replaceChildren(part("<p>This job has no run yet. Draw one in the room Line; that needs the signal.</p>"));
        return;
    }
    place.replaceChildren(part(`<div class="measuring"><div class="seen-ground">
<div class="picks"><label>Run <select id="run">${runs.map((run) => `<option>${escaped(run.id)}</option>`).join("")}</select></label>
<label>Height by <select id="by"></select></label></div>
<div id="sketch"></div><div class="closures"><p id="closure" class="closure follows"></p><p id="of-shot" class="closure follows"></p></div></div>
<div class="keyed"><p id="asked" class="asked"></p><output id="typed" class="typed"></output><p id="wrong" class="problem" role="alert"></p>
<div id="keypad"></div>
<div class="doings"><button type="button" id="again" class="pad-key">Start over</button><button type="button" id="back" class="pad-key">Back on the benchmark</button><button type="button" id="level" class="pad-key">Level stands anew</button></div>
<label class="photo">Photo for <b id="photo-of">the job</b><input type="file" id="photo" class="unseen" accept="image/*" capture="environment"></label><p id="photos"></p></div></div>`));
    const at = (id) => place.querySelector("#" + id);
    let step = "station";

    const setups = () => job().ground?.setups ?? [];
    function offerHeights() {
        const kept = at("by").value;
        at("by").replaceChildren(...[...setups().map((setup) => [setup.id, `rod, level ${setup.id}`]), ["", "up or down from the benchmark"]].map(([value, words]) => new Option(words, value)));
        const latest = setups().at(-1)?.id ?? "";
        at("by").value = [...at("by").options].some((one) => one.value === kept) && kept ? kept : latest;
        at("back").disabled = !at("by").value;
    }

    const questions = {
        station: () => [`Station on ${at("run").value}: how far along from its start`, false],
        height: () => at("by").value ? [`Rod at ${station}, level ${at("by").value}`, false] : [`Ground at ${station}: up or down (\u00b1) from the benchmark`, true],
        back: () => [`Rod back on the benchmark, level ${at("by").value}`, false],
        level: () => ["The level stands somewhere new. Rod on the benchmark", false],
    };
    const next = part('<button type="button" id="next" class="pad-key main">Next</button>').firstChild;
    let pad;
    function ask(which) {
        step = which;
        const [words, signed] = questions[step]();
        at("asked").textContent = words;
        at("wrong").textContent = "";
        next.textContent = step === "station" ? "Next" : "Keep";
        pad = keypad(at("keypad"), { signed, metric: book.metric(), changed: (text) => { at("typed").textContent = text || "\u2013"; } });
        pad.clear();
        place.querySelector(".keys").append(next);
    }

    function drawGround(ground) {
        if (!at("sketch")) return;
        sketch(at("sketch"), ground.find((one) => one.run === at("run").value), newest);
        write("photo-of", newest || "the job");
    }

    /** How far off the level came back, and what is to be said of the newest shot. @param findings of the ground, at least */
    function sayOf(findings) {
        if (!at("closure")) return;
        const closing = findings.filter((one) => one.id === "ground.closure" || one.id === "line.closure");
        write("closure", closing.length ? unbroken(closing.map((one) => one.message).join(" ")) : "Not closed yet: read the rod back on the benchmark before you leave.");
        at("closure").dataset.severity = closing[0]?.severity ?? "";
        write("of-shot", unbroken(findings.filter((one) => newest && one.part === newest).map((one) => one.message).join(" ")));
    }
    /** An answer may come when another page is shown already. */
    function write(id, words) {
        const place = at(id);
        if (place && place.textContent !== words) place.textContent = words;
    }

    async function draw() {
        at("closure")?.classList.toggle("coming", book.step === STEPS.NONE);
        if (book.step === STEPS.NONE) { write("closure", "Being worked out."); return; }
        try {
            drawGround(await book.ground());
            sayOf(book.findings());
        } catch (fault) {
            write("closure", `Not worked out: ${fault.message}`);
        }
    }

    /** @param make the item's own name and its fields, asked for once what was kept before it is there */
    async function keep(list, make) {
        const wrong = await book.put(() => {
            const [own, fields] = make();
            return { at: `/jobs/${book.id}/ground/write-down`, path: `${list}[${own}]`, fields: [["list", list], ["own", own], ...fields] };
        });
        write("wrong", wrong && `Not kept. ${wrong[0].toUpperCase()}${wrong.slice(1)}`);
        return !wrong;
    }

    // The next number is asked for at once: a thumb does not wait for the engine.
    async function shot(fields) {
        station = null;
        ask("station");
        const before = newest;
        const isKept = await keep("ground.shots", () => {
            newest = nextShot(job());
            return [newest, fields];
        });
        if (!isKept) newest = before;
        write("photo-of", newest || "the job");
    }

    const kept = {
        station(text) { station = text; ask("height"); },
        height(text) {
            const setup = at("by").value;
            shot([["run", at("run").value], ["station", station], ...(setup ? [["setup", setup], ["rod", text]] : [["elevation", text]])]);
        },
        back(text) {
            shot([["run", at("run").value], ["station", "0'"], ["setup", at("by").value], ["rod", text], ["note", BACK]]);
        },
        level(text) {
            given = Math.max(given, ...setups().map((setup) => Number(/^H(\d+)$/.exec(setup.id)?.[1] ?? 0))) + 1;
            const id = "H" + given;
            at("by").append(new Option(`rod, level ${id}`, id));
            at("by").value = id;
            at("back").disabled = false;
            ask("station");
            keep("ground.setups", () => [id, [["on", BACK], ["backsight", text]]]).then((isKept) => { if (!isKept && at("by")) offerHeights(); });
        },
    };

    next.addEventListener("click", () => {
        const text = pad.text();
        if (text) kept[step](text);
        else at("wrong").textContent = "Key a number in first.";
    });
    at("again").addEventListener("click", () => { station = null; ask("station"); });
    at("back").addEventListener("click", () => ask("back"));
    at("level").addEventListener("click", () => ask("level"));
    at("run").addEventListener("change", () => { newest = ""; draw(); ask("station"); });
    at("by").addEventListener("change", () => { at("back").disabled = !at("by").value; ask(step); });
    at("photo").addEventListener("change", async (event) => {
        for (const file of event.target.files)
            await keepPhoto({ job: book.id, part: newest || "job", name: `${newest || "job"}-${file.name}`, blob: file });
        event.target.value = "";
        await countPhotos();
        book.sendPhotos();
    });
    async function countPhotos() {
        const waiting = await photosOf(book.id);
        write("photos", waiting.length ? `${waiting.length} ${waiting.length === 1 ? "photo waits" : "photos wait"} on this device: ${waiting.map((one) => one.part).join(", ")}.` : "");
    }
    offerHeights();
    draw();
    ask("station");
    countPhotos();
    return {
        step(laid) {
            if (laid?.ground) { drawGround(laid.ground); sayOf(laid.ofGround); }
            else if (!laid && book.step === STEPS.DESIGNED) draw();
        },
        /** What has gone up, or came from elsewhere, is there now; what is being keyed in stays. */
        fresh() {
            offerHeights();
            countPhotos();
        },
    };
}
