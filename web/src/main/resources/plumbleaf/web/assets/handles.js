// Things in a drawing that can be dragged, or taken with Tab and moved with the arrow keys. A drawing says where it is in real inches:
// data-frame holds its left, bottom, right and top. A handle says which way its length grows (data-dx, data-dy, a unit vector in real
// inches, y up), and what it snaps to.
const AT_ONCE = 350;
const FINGER_PX = 30;
const ARROWS = { ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
/** An arrow moves what grows its way, more or less. */
const ITS_WAY = 0.38;

const own = (svg, mark) => [...svg.querySelectorAll(`[data-of="${CSS.escape(mark.dataset.of)}"]`)];
const numbers = (mark) => ({ dx: Number(mark.dataset.dx), dy: Number(mark.dataset.dy), now: Number(mark.dataset.inches), step: Number(mark.dataset.step) });

/** @param move called with path and text when a value is let go  @param tries asked for the answer while it moves */
export function takeHold(move, tries) {
    for (const mark of document.querySelectorAll(".sheet .handle")) {
        const svg = mark.closest(".sheet").querySelector("svg[data-frame]");
        if (!svg) continue;
        svg.setAttribute("role", "group");
        for (const part of own(svg, mark)) hold(part, svg, mark, move, tries);
    }
}

function hold(part, svg, mark, move, tries) {
    if (part.dataset.held) return;
    const first = !own(svg, mark).some((other) => other.hasAttribute("tabindex"));
    const { dx, dy, now } = numbers(mark);
    part.dataset.held = "yes";
    part.classList.add("held", Math.abs(dx) > 0.9 ? "held-x" : Math.abs(dy) > 0.9 ? "held-y" : "held-xy");
    if (first) {
        part.setAttribute("tabindex", "0");
        part.setAttribute("role", "slider");
        part.setAttribute("aria-label", mark.dataset.name);
        part.setAttribute("aria-valuenow", String(now));
        part.setAttribute("aria-valuetext", words(now, mark));
    }
    roomForAFinger(part, svg);
    part.addEventListener("pointerdown", (event) => drag(event, part, svg, mark, move, tries));
    part.addEventListener("keydown", (event) => key(event, svg, mark, move, tries));
}

/** What is thinner than a finger is taken hold of beside it too. */
function roomForAFinger(part, svg) {
    const box = part.getBBox?.();
    const screen = svg.getScreenCTM();
    if (!box || !screen || (!box.width && !box.height)) return;
    const least = FINGER_PX / screen.a;
    if (box.width * box.height === 0 || Math.min(box.width, box.height) >= least) return;
    const wide = Math.max(box.width, least);
    const high = Math.max(box.height, least);
    const rect = document.createElementNS("http://www.w3.org/2000/svg", "rect");
    const places = { x: box.x - (wide - box.width) / 2, y: box.y - (high - box.height) / 2, width: wide, height: high };
    for (const [name, value] of Object.entries(places)) rect.setAttribute(name, String(value));
    rect.classList.add("finger");
    part.prepend(rect);
}

function scales(svg) {
    const [left, bottom, right, top] = svg.dataset.frame.split(" ").map(Number);
    const view = svg.viewBox.baseVal;
    const screen = svg.getScreenCTM();
    return { perInch: view.width / (right - left), unitsPerPixel: 1 / screen.a, perInchY: view.height / (top - bottom) };
}

function drag(event, part, svg, mark, move, tries) {
    if (event.button !== 0) return;
    event.preventDefault();
    event.stopPropagation();
    part.focus({ preventScroll: true });
    part.setPointerCapture(event.pointerId);
    const { perInch, perInchY, unitsPerPixel } = scales(svg);
    const { dx, dy, now } = numbers(mark);
    const group = own(svg, mark);
    let value = now;
    const moved = (at) => {
        const right = ((at.clientX - event.clientX) * unitsPerPixel) / perInch;
        const up = ((event.clientY - at.clientY) * unitsPerPixel) / perInchY;
        const next = snapped(now + right * dx + up * dy, mark);
        if (next === value) return;
        value = next;
        show(svg, mark, group, value);
        tries.of(mark.dataset.path, words(value, mark), figureOf(svg));
    };
    const end = (keep) => () => {
        for (const [name, listener] of listeners) part.removeEventListener(name, listener);
        if (keep && value !== now) move(mark.dataset.path, words(value, mark));
        else {
            if (value !== now) tries.of(mark.dataset.path, words(now, mark), figureOf(svg));
            show(svg, mark, group, now);
        }
    };
    // A finger that turns out to scroll the page lets go of the thing.
    const listeners = [["pointermove", moved], ["pointerup", end(true)], ["pointercancel", end(false)]];
    for (const [name, listener] of listeners) part.addEventListener(name, listener);
}

const figureOf = (svg) => svg.closest("figure").dataset.key;

function key(event, svg, mark, move, tries) {
    const arrow = ARROWS[event.key];
    const { dx, dy, now, step } = numbers(mark);
    const along = arrow ? arrow[0] * dx + arrow[1] * dy : 0;
    if (Math.abs(along) < ITS_WAY) return;
    event.preventDefault();
    event.stopPropagation();
    const from = Number(mark.dataset.pending ?? now);
    const value = snapped(from + Math.sign(along) * step * (event.shiftKey ? 12 : 1), mark);
    mark.dataset.pending = String(value);
    show(svg, mark, own(svg, mark), value);
    clearTimeout(mark.timer);
    mark.timer = setTimeout(() => {
        delete mark.dataset.pending;
        if (value !== now) move(mark.dataset.path, words(value, mark));
    }, AT_ONCE);
}

function snapped(inches, mark) {
    const { step } = numbers(mark);
    const size = Math.round(inches / step) * step;
    return Math.max(Number(mark.dataset.least), size);
}

function show(svg, mark, group, value) {
    const { perInch, perInchY } = scales(svg);
    const { dx, dy, now } = numbers(mark);
    const inches = value - now;
    for (const part of group) part.setAttribute("transform", `translate(${inches * dx * perInch} ${-inches * dy * perInchY})`);
    const said = svg.closest("figure").querySelector(".moving");
    said.textContent = inches === 0 ? "" : `${mark.dataset.name}: ${words(value, mark)}`;
}

const words = (inches, mark) => (mark.dataset.units === "metric" ? `${Math.round(inches * 25.4)} mm` : feetAndInches(inches));

// 26' 4-1/2", as the trade writes it; exact to the sixty-fourth.
export function feetAndInches(value) {
    const sign = value < 0 ? "-" : "";
    const parts = Math.round(Math.abs(value) * 64);
    const feet = Math.floor(parts / 768);
    let over = parts % 64;
    const whole = Math.floor((parts % 768) / 64);
    let below = 64;
    while (over && over % 2 === 0) { over /= 2; below /= 2; }
    const fraction = over ? `${over}/${below}` : "";
    const inches = whole && fraction ? `${whole}-${fraction}` : fraction || String(whole);
    if (feet && !whole && !fraction) return `${sign}${feet}'`;
    return sign + (feet ? `${feet}' ` : "") + inches + '"';
}
