import { queueOf } from "/assets/queue.js";
import { changed, valueAt } from "./edits.js";
import { numbered, writeDown } from "./waiting.js";
import { said } from "./words.js";

// One open job: its text with what waits, and what the engine makes of it. An edit is answered in three steps, so that nobody waits for the dearest: the job laid out and drawn;
// then loads, gates and findings; then what each remedy would do to the price. What a newer edit has overtaken is thrown away.

/** How far the answer to the newest edit has come. */
export const STEPS = { NONE: "none", LAID: "laid", DESIGNED: "designed", PRICED: "priced" };

export class OpenJob {
    #told;
    #round = 0;
    /** Whether the result is that of the newest edit. */
    #isCurrent = false;
    #isClosed = false;
    #after = null;
    #putting = Promise.resolve();

    /**
     * @param held as the device holds it  @param engine that works it out, by ask(verb, ...texts); none where this person takes along only what the office worked out
     * @param {{ step(book, laid?: object): void, kept(book): void, stopped(book, words: string): void, asks(): { parts: string[], known: string[], later: string[] } }} told what the page does with each step, with a
     *     change that is kept and where the engine stops; and which drawings it shows
     */
    constructor(held, engine, told) {
        this.held = held;
        this.id = held.id;
        this.queue = queueOf(held.id, held.person);
        this.engine = engine;
        this.#told = told;
        this.step = STEPS.NONE;
        /** What stopped the engine at the job as it stands; empty where nothing did. */
        this.fault = "";
        /** Whether what waits would outlive a dead battery, as far as this device writes anything down. */
        this.isWrittenDown = true;
        this.result = engine ? {} : JSON.parse(held.seen.design);
        this.read();
    }

    get isWorked() { return Boolean(this.engine); }

    /** Takes up the job's text with what waits. */
    read() {
        if (!this.engine) return;
        this.now = changed(this.held.document, this.queue.list());
        this.text = JSON.stringify(this.now);
    }

    /** The job as it stands, worked out from the first step; what was begun for an older text ends. */
    async work() {
        if (!this.engine || this.#isClosed) return;
        this.read();
        const round = this.#begun();
        try {
            if (this.step !== STEPS.NONE) this.#reached(STEPS.LAID, await this.laid(this.text), round);
            await this.#follow(round);
        } catch (fault) {
            this.#stopped(fault, round);
        }
    }

    #begun() {
        this.#isCurrent = false;
        return ++this.#round;
    }

    async #follow(round) {
        const text = this.text;
        for (const [verb, step] of [["unpriced", STEPS.DESIGNED], ["design", STEPS.PRICED]]) {
            if (round !== this.#round) return;
            this.#reached(step, JSON.parse(await this.engine.ask(verb, text)), round);
        }
    }

    /** What stands in the result is of an older edit, or there is none. */
    #stopped(fault, round) {
        if (round !== this.#round) return;
        this.fault = fault.message;
        if (this.step !== STEPS.NONE) this.step = STEPS.LAID;
        this.#told.stopped(this, fault.message);
    }

    #reached(step, answer, round) {
        if (round !== this.#round) return;
        this.step = step;
        this.fault = "";
        if (step !== STEPS.LAID) this.result = answer;
        this.#told.step(this, step === STEPS.LAID ? answer : undefined);
        if (step === STEPS.LAID) return;
        this.#isCurrent = true;
        const after = this.#after;
        this.#after = null;
        after?.();
    }

    /** A text laid out and drawn as the page shows it, or only some parts of it, and nothing kept of it. */
    async laid(text, some = []) {
        const { parts, known, later } = this.#told.asks();
        const asked = some.length ? some : parts;
        return JSON.parse(await this.engine.ask("laid", text, asked.join(" "), known.join(" "), later.join(" ")));
    }

    job() { return this.now; }
    metric() { return this.now.display === "metric"; }
    findings() { return this.result.findings ?? []; }
    verdict() { return this.result.verdict ?? ""; }

    /** @param parts whose drawings; all where there are none  @param known keys of those that the page shows */
    async drawings(parts = [], known = []) {
        return this.engine ? JSON.parse(await this.engine.ask("drawings", this.text, parts.join(" "), known.join(" "))) : this.held.seen.drawings;
    }

    crewSheet() { return this.engine ? this.engine.ask("crewSheet", this.text) : this.held.seen.crewSheet; }
    async ground() { return JSON.parse(await this.engine.ask("ground", this.text)); }

    /** What waits goes now where there is a signal: a photo is no change and tells nobody that it is there. */
    sendPhotos() { this.#told.kept(this); }

    /** What waits, as it is now, where it outlives a dead battery. */
    async writeDown() { this.isWrittenDown = await writeDown(this.id, this.held.person); }

    /** What the field held when it was first changed here: asked as the change joins the queue, since an older one of the same field may have gone up meanwhile. */
    #was(path) { return this.queue.list().find((edit) => edit.path === path)?.was ?? valueAt(JSON.parse(this.held.document), path); }

    /** The job's text with one change more; nothing is kept of it. */
    with(edit) { return JSON.stringify(changed(this.held.document, [...this.queue.list().filter((other) => other.path !== edit.path), edit])); }

    /** Calls back once the newest edit is worked out with its loads and findings; of several only the last. */
    afterwards(call) {
        if (this.#isCurrent) call();
        else this.#after = call;
    }

    /** Asks the engine for nothing more. */
    close() {
        ++this.#round;
        this.#isClosed = true;
    }

    /** What the whole job would come to with it. */
    async tried(edit) { return JSON.parse(await this.engine.ask("unpriced", this.with(edit))); }

    /**
     * Puts a change in the queue where the job still reads well with it, one after the other.
     * @param change it, or what makes it once those before it are there: the next number in a list is known only then
     * @returns {Promise<string>} what is wrong; empty where nothing is
     */
    put(change) {
        const put = this.#putting.then(() => this.#put(typeof change === "function" ? change() : change));
        this.#putting = put.catch(() => {});
        return put;
    }

    async #put(edit) {
        const round = this.#begun();
        let laid;
        try {
            laid = await this.laid(this.with(edit));
        } catch (fault) {
            this.work();
            return `The engine stopped at this change, which is not kept (${fault.message}).`;
        }
        const wrong = laid.errors?.[0];
        if (wrong) {
            this.work();
            return `${said(wrong.field)}: ${wrong.problem}; ${wrong.cure}.`;
        }
        const seen = new Map(edit.fields).has("list") ? {} : { was: this.#was(edit.path) };
        this.queue.put({ ...edit, ...seen, base: Number(this.held.version), made: numbered(this.id, this.held.person) });
        if (round === this.#round) {
            this.read();
            this.#reached(STEPS.LAID, laid, round);
            this.#follow(round).catch((fault) => this.#stopped(fault, round));
        // What came from the desk meanwhile was worked out without it.
        } else this.work();
        await this.writeDown();
        this.#told.kept(this);
        return "";
    }
}
