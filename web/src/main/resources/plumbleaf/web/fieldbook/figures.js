import { escaped, part } from "./words.js";

// The drawings on a page. Each stays in its place while what it shows is drawn anew, so that nothing jumps and a hand keeps what it holds.
const SVG = "http://www.w3.org/2000/svg";

/** One drawing; what is put on it with `over` stays while it is drawn anew. */
class Figure {
    constructor() {
        this.element = part(`<figure class="sheet"><figcaption></figcaption></figure>`).firstChild;
        this.svg = null;
        this.key = "";
    }
    draw({ of, key, name, svg }) {
        this.of = of;
        this.key = key ?? "";
        const fresh = part(svg.replace(/^<\?xml[^>]*>\s*/, "")).querySelector("svg");
        this.element.querySelector("figcaption").textContent = name;
        const drawn = document.createElementNS(SVG, "g");
        drawn.append(...fresh.childNodes);
        if (!this.svg) {
            this.svg = fresh;
            this.svg.append(drawn);
            this.element.append(this.svg);
            this.#sized();
            return;
        }
        for (const { name: attribute, value } of fresh.attributes) if (attribute !== "role") this.svg.setAttribute(attribute, value);
        this.svg.firstChild.replaceWith(drawn);
        this.#sized();
    }
    /** So wide that its letters are as high on the screen as they are on paper; what is wider than the screen is moved along. */
    #sized() {
        const { width, height } = this.svg.viewBox.baseVal;
        this.svg.style.setProperty("--wide", width.toFixed(0));
        this.element.classList.toggle("long", width > 1.3 * height);
    }
    /** Whether some of it is on the screen. */
    isSeen() {
        const { left, right, top, bottom } = this.element.getBoundingClientRect();
        return right > 0 && bottom > 0 && left < innerWidth && top < innerHeight;
    }
    over(mark) {
        this.svg.setAttribute("role", "group");
        this.svg.append(mark);
    }
}

/** @param place that holds them  @param {string[]} parts whose drawings; all where there are none */
export class Figures {
    constructor(place, parts = []) {
        this.place = place;
        this.parts = parts;
        this.all = [];
        place.classList.add("sheets");
    }
    /** What the engine is asked for: whose drawings, which of them it need not draw where they stay as they are, and which can wait since nobody sees them now. */
    asks() {
        const kept = this.all.filter((one) => one.key);
        return { parts: this.parts, known: kept.map((one) => one.key), later: kept.filter((one) => !one.isSeen()).map((one) => one.key) };
    }

    /** @param drawings in order; one without an SVG is shown already  @returns {boolean} whether it still is: else nothing was drawn, and all is to be asked for again */
    draw(drawings) {
        const before = [...this.all];
        if (drawings.some((one) => one.svg === undefined && !before.some((figure) => figure.key === one.key))) return false;
        for (const words of this.place.querySelectorAll(":scope > :not(figure)")) words.remove();
        const taken = (one) => {
            const at = before.findIndex((figure) => (one.svg === undefined ? figure.key === one.key : figure.of === one.of));
            return at < 0 ? new Figure() : before.splice(at, 1)[0];
        };
        // What is shown already is found first, so that none of it is taken for another of the same part.
        const known = new Map(drawings.filter((one) => one.svg === undefined).map((one) => [one, taken(one)]));
        this.all = drawings.map((one) => {
            const figure = known.get(one) ?? taken(one);
            if (one.svg !== undefined && (figure.key !== one.key || !one.key)) figure.draw(one);
            return figure;
        });
        for (const gone of before) gone.element.remove();
        this.all.forEach((figure, i) => { if (this.place.children[i] !== figure.element) this.place.insertBefore(figure.element, this.place.children[i] ?? null); });
        return true;
    }
    /** The drawings of one part, in their places. */
    drawPart(part, drawings) {
        const own = [...drawings];
        const all = this.all.map((figure) => (figure.of === part && own.length ? own.shift() : { of: figure.of, key: figure.key }));
        return this.draw(all);
    }
    says(words) { if (!this.all.length) this.place.replaceChildren(part(`<p class="coming">${escaped(words)}</p>`)); }
}
