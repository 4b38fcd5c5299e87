// Line posts that follow the finger along their unrolled run, to the inch (or ten millimeters). While one moves, the engine lays the run out anew and draws it; when
// the finger rests, the whole job is worked out. Ends, corners and gate posts stand where the run, the corner or the gate says.
const FINGER_PX = 44;
const RESTS_MS = 250;
const SVG = "http://www.w3.org/2000/svg";
const ARROWS = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 };

/** What one takes hold of on the drawings of runs. */
export class Handles {
    #held = new Map();

    /** @param book the open job  @param figures its drawings  @param place where #dragged says what moves, for the eye, and #came-to what it came to, for the ear too */
    constructor(book, figures, place) {
        this.book = book;
        this.figures = figures;
        this.place = place;
        this.stepIn = book.metric() ? 10 / 25.4 : 1;
    }

    words(inches) { return this.book.metric() ? `${Math.round(inches * 25.4)} mm` : feet(Math.round(inches)); }
    snapped(inches) { return Math.max(this.stepIn, Math.round(inches / this.stepIn) * this.stepIn); }

    /** Puts a handle on every line post of the design, and keeps those that are there. */
    put() {
        const all = this.book.result.posts ?? [];
        const posts = all.filter((one) => one.role === "line");
        const gone = new Set(this.#held.keys());
        for (const post of posts) {
            const strip = this.strips(post.run).find((one) => one.shows(post.stationIn));
            if (!strip) continue;
            const handle = this.#held.get(post.id) ?? new Handle(this, post.id);
            this.#held.set(post.id, handle);
            const stations = all.filter((one) => one.run === post.run).map((one) => one.stationIn);
            handle.stand(post, strip, Math.min(...stations), Math.max(...stations));
            gone.delete(post.id);
        }
        for (const id of gone) {
            this.#held.get(id).rect.remove();
            this.#held.delete(id);
        }
    }

    strips(run) { return this.figures.all.filter((one) => one.of === run && one.svg.dataset.frame).map((figure) => new Strip(figure)); }

    /** While a post moves: for the eye alone, since a voice would not come to an end. */
    shows(text) { this.#write("#dragged", text); }
    /** What it came to, once. */
    says(text) {
        this.#write("#dragged", text);
        this.#write("#came-to", text);
    }
    #write(id, text) {
        const line = this.place.querySelector(id);
        if (line && line.textContent !== text) line.textContent = text;
    }
}

class Handle {
    #taken = false;

    constructor(all, id) {
        this.all = all;
        this.rect = document.createElementNS(SVG, "rect");
        for (const [name, value] of [["class", "held-post"], ["data-of", id], ["tabindex", "0"], ["role", "slider"], ["aria-label", `Station of post ${id}`]]) this.rect.setAttribute(name, value);
        this.rect.addEventListener("keydown", (event) => this.#key(event));
        // A finger that goes along the run keeps the page from being scrolled with it: asked for before it comes down, and not by touch-action, which a browser
        // may overlook within a drawing.
        this.along = false;
        this.rect.addEventListener("touchmove", (event) => { if (this.along && event.cancelable) event.preventDefault(); }, { passive: false });
        this.rect.addEventListener("pointerdown", (event) => { if (event.button === 0 && !this.#taken) this.#take(event); });
    }

    /** Where the post stands now; one in the hand stays there. */
    stand(post, strip, firstIn, lastIn) {
        if (this.#taken) return;
        this.rect.setAttribute("aria-valuemin", String(Math.round(firstIn)));
        this.rect.setAttribute("aria-valuemax", String(Math.round(lastIn)));
        this.post = post;
        this.strip = strip;
        this.at = post.stationIn;
        this.#valued();
        if (this.rect.parentNode !== strip.svg) strip.figure.over(this.rect);
        strip.put(this.rect, post, post.stationIn);
    }

    #valued() {
        this.rect.setAttribute("aria-valuenow", String(Math.round(this.at)));
        this.rect.setAttribute("aria-valuetext", this.all.words(this.at));
    }

    #edit(inches) {
        const path = `runs[${this.post.run}].set[${this.post.id}].station`;
        return { at: `/jobs/${this.all.book.id}/line/edit`, path, fields: [["path", path], ["unit", "WORDS"], ["value", this.all.words(inches)]] };
    }

    #key(event) {
        const by = ARROWS[event.key];
        if (!by) return;
        event.preventDefault();
        const { stepIn } = this.all;
        this.at = this.all.snapped(this.at + by * stepIn * this.strip.rightward);
        this.#valued();
        this.#keep(this.at);
    }

    async #keep(inches) {
        const wrong = await this.all.book.put(this.#edit(inches));
        if (wrong) this.all.says(wrong);
        else this.all.book.afterwards(() => this.all.says(this.#answer(inches, this.all.book.result)));
    }

    #take(event) {
        const { rect, all, post } = this;
        rect.setPointerCapture(event.pointerId);
        rect.classList.add("taken");
        this.#taken = true;
        const from = post.stationIn;
        // Of the drawing as it was taken hold of: one that is cut at this very post is drawn at another scale as it moves.
        const inchesPerPixel = this.strip.inchesPerPixel();
        let rest = 0;
        let asking = false;
        const follow = async () => {
            asking = true;
            try {
                await drawnTo();
            } catch (fault) {
                all.shows(fault.message);
            } finally {
                asking = false;
            }
        };
        const drawnTo = async () => {
            for (let drawn = NaN; this.#taken && drawn !== this.at;) {
                drawn = this.at;
                const { findings = [], drawings, errors } = await all.book.laid(all.book.with(this.#edit(drawn)), [post.run]);
                if (!this.#taken) break;
                if (drawings) this.all.figures.drawPart(post.run, drawings);
                this.strip.put(rect, post, drawn);
                const wrong = errors?.[0]?.problem ?? findings[0];
                all.shows(`Post ${post.id} at ${all.words(drawn)}${wrong ? ": " + wrong : ""}`);
            }
        };
        let following = Promise.resolve();
        const rested = async () => {
            // What it comes to is said last: after the drawing of the place where it rests.
            await following;
            const at = this.at;
            try {
                const come = await all.book.tried(this.#edit(at));
                if (this.#taken && at === this.at) all.says(this.#answer(at, come));
            } catch (fault) {
                all.shows(fault.message);
            }
        };
        const moved = (now) => {
            const next = all.snapped(from + (now.clientX - event.clientX) * inchesPerPixel);
            if (Math.abs(now.clientX - event.clientX) < 1 || next === this.at) return;
            this.at = next;
            this.along = true;
            if (!asking) following = follow();
            clearTimeout(rest);
            rest = setTimeout(rested, RESTS_MS);
        };
        const end = (kept) => () => {
            for (const [name, listener] of listeners) rect.removeEventListener(name, listener);
            rect.classList.remove("taken");
            this.#taken = this.along = false;
            clearTimeout(rest);
            if (this.at === from) return;
            if (kept) {
                this.#valued();
                this.#keep(this.at);
            } else all.book.work();
        };
        // A finger that turns out to scroll the page lets go of the post.
        const listeners = [["pointermove", moved], ["pointerup", end(true)], ["pointercancel", end(false)]];
        for (const [name, listener] of listeners) rect.addEventListener(name, listener);
    }

    #answer(inches, result) {
        const must = (result.findings ?? []).filter((one) => one.severity === "must-fix");
        const wrong = result.errors?.[0]?.problem ?? must[0]?.message;
        return `Post ${this.post.id} at ${this.all.words(inches)}: ${wrong ?? "nothing to fix"}`;
    }
}

function feet(inches) {
    const over = inches % 12;
    return inches < 12 ? `${inches}"` : `${Math.floor(inches / 12)}'${over ? ` ${over}"` : ""}`;
}

/** A stretch of a run as it is drawn. */
class Strip {
    constructor(figure) {
        this.figure = figure;
        this.svg = figure.svg;
    }
    frame() { return this.svg.dataset.frame.split(" ").map(Number); }
    /** Stations grow to the left where the run's other side is outside. */
    get rightward() { const [left, , right] = this.frame(); return Math.sign(left + right) || 1; }
    unitsPerInch() { const [left, , right] = this.frame(); return this.svg.viewBox.baseVal.width / (right - left); }
    inchesPerPixel() { return this.rightward / (this.unitsPerInch() * this.svg.getScreenCTM().a); }
    shows(stationIn) { const [left, , right] = this.frame(); const x = this.rightward * stationIn; return x > left && x < right; }
    /** As wide as a finger, over the post from its top to the ground. */
    put(rect, post, stationIn) {
        const [left, , , top] = this.frame();
        const units = this.unitsPerInch();
        const finger = FINGER_PX / this.svg.getScreenCTM().a;
        const high = Math.max(finger, (post.topElevationIn - post.gradeElevationIn) * units);
        const places = { x: (this.rightward * stationIn - left) * units - finger / 2, y: (top - post.topElevationIn) * units, width: finger, height: high };
        for (const [name, value] of Object.entries(places)) rect.setAttribute(name, value.toFixed(2));
    }
}
