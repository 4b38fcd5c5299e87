// Line posts that follow the finger along their unrolled run, to the inch (or ten millimeters). While one moves, the engine lays the run out anew and draws it, which
// it does within a frame; when the finger rests, the whole job is worked out. Ends, corners and gate posts stand where the run, the corner or the gate says.
const FINGER_PX = 44;
const RESTS_MS = 250;
const SVG = "http://www.w3.org/2000/svg";
const ARROWS = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 };

/** @param book what the page offers: result, moved(run, post, station, keys), tried(edit), put(edit), work(), was(path), metric(), id  @param show draws the page anew */
export function dragging(place, book, show) {
    const told = place.querySelector("#dragged");
    const stepIn = book.metric() ? 10 / 25.4 : 1;
    const words = (inches) => (book.metric() ? `${Math.round(inches * 25.4)} mm` : feet(Math.round(inches)));
    const snapped = (inches) => Math.max(stepIn, Math.round(inches / stepIn) * stepIn);
    const strips = new Map();
    for (const svg of place.querySelectorAll("svg[data-frame]")) {
        const run = /^Profile of run ([^,]+)/.exec(svg.querySelector("title")?.textContent ?? "")?.[1];
        if (run) strips.set(run, [...(strips.get(run) ?? []), new Strip(svg)]);
    }
    for (const post of book.result.posts?.filter((one) => one.role === "line") ?? []) {
        const all = strips.get(post.run) ?? [];
        const strip = all.find((one) => one.shows(post.stationIn));
        if (strip) hold(post, strip, all);
    }

    function say(text) {
        told.hidden = !text;
        told.textContent = text;
    }

    function hold(post, strip, all) {
        const path = `runs[${post.run}].set[${post.id}].station`;
        const edit = (inches) => ({ at: `/jobs/${book.id}/line/edit`, path, fields: [["path", path], ["unit", "WORDS"], ["value", words(inches)]], was: book.was(path) });
        const handle = strip.handle(post);
        handle.setAttribute("aria-label", `Station of post ${post.id}`);
        handle.setAttribute("aria-valuenow", String(Math.round(post.stationIn)));
        handle.setAttribute("aria-valuetext", words(post.stationIn));

        function keep(inches) {
            const wrong = book.put(edit(inches));
            const up = scrollY;
            show().then(() => {
                scrollTo(0, up);
                const said = document.getElementById("dragged");
                said.hidden = false;
                said.textContent = wrong || answer(post, words(inches), book.result);
                document.querySelector(`.held-post[data-of="${CSS.escape(post.id)}"]`)?.focus({ preventScroll: true });
            });
        }

        handle.addEventListener("keydown", (event) => {
            const by = ARROWS[event.key];
            if (!by) return;
            event.preventDefault();
            keep(snapped(post.stationIn + by * stepIn * strip.rightward));
        });
        // A finger that goes along the run keeps the page from being scrolled with it: asked for before it comes down, and not by touch-action, which a browser
        // may overlook within a drawing.
        let along = false;
        handle.addEventListener("touchmove", (event) => { if (along && event.cancelable) event.preventDefault(); }, { passive: false });
        handle.addEventListener("pointerdown", (event) => {
            if (event.button !== 0) return;
            handle.setPointerCapture(event.pointerId);
            handle.classList.add("taken");
            // Asked once before it is waited for: the first answer takes the longest.
            book.moved(post.run, post.id, words(post.stationIn), []);
            let at = post.stationIn;
            let frame = 0;
            let rest = 0;
            const drawn = () => {
                const start = performance.now();
                frame = 0;
                const { findings, strips: now } = book.moved(post.run, post.id, words(at), all.map((each) => each.key));
                all.forEach((each, i) => each.draw(now[i]));
                strip.put(handle, post, at);
                say(`Post ${post.id} at ${words(at)}${findings.length ? ": " + findings[0] : ""}`);
                told.dataset.frames = [told.dataset.frames, (performance.now() - start).toFixed(1)].filter(Boolean).join(" ");
            };
            const rested = () => say(answer(post, words(at), book.tried(edit(at))));
            const moved = (now) => {
                const next = snapped(post.stationIn + (now.clientX - event.clientX) * strip.inchesPerPixel());
                if (Math.abs(now.clientX - event.clientX) < 1 || next === at) return;
                at = next;
                along = true;
                frame ||= requestAnimationFrame(drawn);
                clearTimeout(rest);
                rest = setTimeout(rested, RESTS_MS);
            };
            const end = (kept) => () => {
                for (const [name, listener] of listeners) handle.removeEventListener(name, listener);
                handle.classList.remove("taken");
                along = false;
                cancelAnimationFrame(frame);
                clearTimeout(rest);
                if (at === post.stationIn) return;
                if (kept) keep(at);
                else {
                    book.work();
                    show();
                }
            };
            // A finger that turns out to scroll the page lets go of the post.
            const listeners = [["pointermove", moved], ["pointerup", end(true)], ["pointercancel", end(false)]];
            for (const [name, listener] of listeners) handle.addEventListener(name, listener);
        });
    }
}

function answer(post, station, result) {
    const must = (result.findings ?? []).filter((one) => one.severity === "must-fix");
    const wrong = result.errors?.[0]?.problem ?? must[0]?.message;
    return `Post ${post.id} at ${station}: ${wrong ?? "nothing to fix"}`;
}

function feet(inches) {
    const over = inches % 12;
    return inches < 12 ? `${inches}"` : `${Math.floor(inches / 12)}'${over ? ` ${over}"` : ""}`;
}

/** A stretch of a run as it is drawn, with what one takes hold of above the drawing, so that it stays in the hand while that is drawn anew. */
class Strip {
    constructor(svg) {
        this.svg = svg;
        this.key = "-";
        this.drawn = document.createElementNS(SVG, "g");
        this.drawn.append(...svg.childNodes);
        svg.append(this.drawn);
        svg.setAttribute("role", "group");
    }
    frame() { return this.svg.dataset.frame.split(" ").map(Number); }
    /** Stations grow to the left where the run's other side is outside. */
    get rightward() { const [left, , right] = this.frame(); return Math.sign(left + right) || 1; }
    unitsPerInch() { const [left, , right] = this.frame(); return this.svg.viewBox.baseVal.width / (right - left); }
    inchesPerPixel() { return this.rightward / (this.unitsPerInch() * this.svg.getScreenCTM().a); }
    shows(stationIn) { const [left, , right] = this.frame(); const x = this.rightward * stationIn; return x > left && x < right; }
    handle(post) {
        const rect = document.createElementNS(SVG, "rect");
        for (const [name, value] of [["class", "held-post"], ["data-of", post.id], ["tabindex", "0"], ["role", "slider"]]) rect.setAttribute(name, value);
        this.put(rect, post, post.stationIn);
        this.svg.append(rect);
        return rect;
    }
    /** As wide as a finger, over the post from its top to the ground. */
    put(rect, post, stationIn) {
        const [left, , , top] = this.frame();
        const units = this.unitsPerInch();
        const finger = FINGER_PX / this.svg.getScreenCTM().a;
        const high = Math.max(finger, (post.topElevationIn - post.gradeElevationIn) * units);
        const places = { x: (this.rightward * stationIn - left) * units - finger / 2, y: (top - post.topElevationIn) * units, width: finger, height: high };
        for (const [name, value] of Object.entries(places)) rect.setAttribute(name, value.toFixed(2));
    }
    /** Draws what is new in it; what it shows already comes without a drawing. */
    draw({ key, svg }) {
        if (!svg) return;
        this.key = key;
        const fresh = document.createRange().createContextualFragment(svg).firstElementChild;
        this.svg.setAttribute("viewBox", fresh.getAttribute("viewBox"));
        this.svg.dataset.frame = fresh.dataset.frame;
        this.drawn.replaceChildren(...fresh.childNodes);
    }
}
