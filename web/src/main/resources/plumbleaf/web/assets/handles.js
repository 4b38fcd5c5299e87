// Things in a drawing that can be dragged, or taken with Tab and moved with the arrow keys. A drawing says where it is in real inches:
// data-frame holds its left, bottom, right and top. A handle says which way its length grows (data-dx, data-dy, a unit vector in real
// inches, y up; for what is no length, as long as it moves for one of its unit), and what it snaps to. A thing with two handles moves both ways, and both are kept as one change. A handle that turns
// (data-turn) holds degrees from the direction it names, about the drawing's origin or a place beside it (data-about, real inches).
const AT_ONCE = 350;
const FINGER_PX = 30;
const ARROWS = { ArrowRight: [1, 0], ArrowLeft: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
/** Steps at once with Shift held. */
const MANY = { us: 12, metric: 12, degrees: 3, percent: 10, place: 3 };
/** An arrow moves what grows its way, more or less. */
const ITS_WAY = 0.38;

/** Where things were moved to, by path, while the drawing does not show it: more keys may come, or what was let go waits to be sent and answered. The next move goes on from there. */
const moves = new Map();
const timers = new Map();
let waits = () => false;
let letGo = () => {};
/** What a finger or the mouse holds right now. */
let inHand = null;
/** Whether something is held: its drawing must stay as it is until it is let go. */
export const isInHand = () => Boolean(inHand?.isConnected);
const movedTo = (mark) => moves.get(mark.dataset.path) ?? numbers(mark).now;

const own = (svg, of) => [...svg.querySelectorAll(`[data-of="${CSS.escape(of)}"]`)];
/** How far it moves in the drawing for one of its unit. */
const reach = (mark) => Math.hypot(Number(mark.dataset.dx), Number(mark.dataset.dy));
const numbers = (mark) => ({ dx: Number(mark.dataset.dx), dy: Number(mark.dataset.dy), now: Number(mark.dataset.now), step: Number(mark.dataset.step), turn: Number(mark.dataset.turn) });

/** @param move called with the paths and texts of values that were let go  @param tries asked for the answer while it moves  @param isWaiting whether a change of a path is still to be answered  @param released called when a hand lets go, before what it moved is told */
export function takeHold(move, tries, isWaiting, released) {
    waits = isWaiting;
    letGo = released;
    const keyed = new Set([...timers.keys()].flatMap((paths) => paths.split(" ")));
    for (const path of [...moves.keys()]) if (!keyed.has(path) && !waits(path)) moves.delete(path);
    for (const svg of document.querySelectorAll(".sheet svg[data-frame]")) {
        const things = new Map();
        for (const mark of svg.closest(".sheet").querySelectorAll(".handle")) things.set(mark.dataset.of, [...(things.get(mark.dataset.of) ?? []), mark]);
        if (things.size) {
            // Its place bears its name, and the numbers beside it say what its letters say: what is left to hear are the things that move.
            svg.setAttribute("role", "presentation");
            svg.querySelector("title")?.remove();
            for (const text of svg.querySelectorAll("text")) text.setAttribute("aria-hidden", "true");
        }
        for (const [of, marks] of things) {
            for (const part of own(svg, of)) hold(part, svg, marks, move, tries);
            if (marks.some((mark) => moves.has(mark.dataset.path))) show(svg, marks, marks.map(movedTo));
        }
    }
}

function hold(part, svg, marks, move, tries) {
    if (part.dataset.held) return;
    const first = !own(svg, marks[0].dataset.of).some((other) => other.hasAttribute("tabindex"));
    const { dx, dy, turn } = numbers(marks[0]);
    part.dataset.held = "yes";
    part.classList.add("held", marks.length > 1 || turn ? "held-xy" : Math.abs(dx) > 0.9 * reach(marks[0]) ? "held-x" : Math.abs(dy) > 0.9 * reach(marks[0]) ? "held-y" : "held-xy");
    if (first) {
        part.setAttribute("tabindex", "0");
        part.setAttribute("role", "slider");
        part.setAttribute("aria-label", marks.map((mark) => mark.dataset.name).join("; "));
        // Without its ends a slider is taken to run from 0 to 100.
        part.setAttribute("aria-valuemin", String(Number(marks[0].dataset.least)));
        part.setAttribute("aria-valuemax", String(Number(marks[0].dataset.most)));
        tell(part, marks, marks.map((mark) => numbers(mark).now));
    }
    roomForAFinger(part, svg);
    // A browser may overlook touch-action within a drawing: a finger that moves the thing keeps the page from scrolling with it, which has to be listened for before
    // it comes down.
    part.addEventListener("touchmove", (event) => { if (part.classList.contains("moved") && event.cancelable) event.preventDefault(); }, { passive: false });
    part.addEventListener("pointerdown", (event) => drag(event, part, svg, marks, move, tries));
    part.addEventListener("keydown", (event) => key(event, svg, marks, move));
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
    const perInch = view.width / (right - left);
    const perInchY = view.height / (top - bottom);
    return { perInch, perInchY, unitsPerPixel: 1 / screen.a, origin: { x: view.x - left * perInch, y: view.y + top * perInchY } };
}

/** What an angle turns about. */
function pivot(svg, mark) {
    const { origin, perInch } = scales(svg);
    return { x: origin.x + Number(mark.dataset.about) * perInch, y: origin.y };
}

/** How far open something under the pointer is, in degrees. */
function angleAt(at, svg, mark) {
    const { dx, dy, turn } = numbers(mark);
    const origin = pivot(svg, mark);
    const point = new DOMPoint(at.clientX, at.clientY).matrixTransform(svg.getScreenCTM().inverse());
    const open = (turn * (Math.atan2(origin.y - point.y, point.x - origin.x) - Math.atan2(dy, dx)) * 180) / Math.PI;
    return (open + 540) % 360 - 180;
}

function drag(event, part, svg, marks, move, tries) {
    if (event.button !== 0) return;
    event.preventDefault();
    event.stopPropagation();
    part.focus({ preventScroll: true });
    part.setPointerCapture(event.pointerId);
    inHand = part;
    const figure = svg.closest("figure").dataset.key;
    const { perInch, perInchY, unitsPerPixel } = scales(svg);
    const nows = marks.map(movedTo);
    let values = nows;
    let decided = false;
    const valueAt = (at, mark, now) => {
        const { dx, dy, turn } = numbers(mark);
        if (turn) return now + ((angleAt(at, svg, mark) - angleAt(event, svg, mark) + 540) % 360) - 180;
        const right = ((at.clientX - event.clientX) * unitsPerPixel) / perInch;
        const up = ((event.clientY - at.clientY) * unitsPerPixel) / perInchY;
        return now + (right * dx + up * dy) / reach(mark) ** 2;
    };
    const moved = (at) => {
        const pixels = Math.hypot(at.clientX - event.clientX, at.clientY - event.clientY);
        if (!decided && pixels >= 1) {
            decided = true;
            part.classList.toggle("moved", goesItsWay(marks, at.clientX - event.clientX, event.clientY - at.clientY));
        }
        const next = marks.map((mark, i) => (pixels < 1 ? nows[i] : snapped(valueAt(at, mark, nows[i]), mark)));
        const changed = next.findIndex((value, i) => value !== values[i]);
        if (changed < 0) return;
        values = next;
        show(svg, marks, values);
        tries.of(marks[changed].dataset.path, words(values[changed], marks[changed]), figure);
    };
    const lose = () => {
        if (inHand !== part) return;
        inHand = null;
        letGo();
    };
    const end = (keep) => () => {
        for (const [name, listener] of listeners) part.removeEventListener(name, listener);
        part.classList.remove("moved");
        lose();
        const changed = marks.flatMap((mark, i) => (values[i] === nows[i] ? [] : [[mark.dataset.path, words(values[i], mark)]]));
        if (keep && changed.length) {
            for (const [i, mark] of marks.entries()) moves.set(mark.dataset.path, values[i]);
            move(changed);
        } else {
            if (changed.length) tries.of(marks[0].dataset.path, words(nows[0], marks[0]), figure);
            if (svg.isConnected) show(svg, marks, marks.map(movedTo));
        }
    };
    // A finger that turns out to scroll the page lets go of the thing.
    const listeners = [["pointermove", moved], ["pointerup", end(true)], ["pointercancel", end(false)], ["lostpointercapture", lose]];
    for (const [name, listener] of listeners) part.addEventListener(name, listener);
}

/** Whether a finger that began so means the thing and not the page: what moves both ways or turns goes wherever it is led. */
function goesItsWay(marks, right, up) {
    const { dx, dy, turn } = numbers(marks[0]);
    return marks.length > 1 || Boolean(turn) || Math.abs(right * dx + up * dy) >= Math.abs(right * dy - up * dx);
}

function key(event, svg, marks, move) {
    const arrow = ARROWS[event.key];
    if (!arrow) return;
    const alongs = marks.map((mark) => {
        const { dx, dy, turn } = numbers(mark);
        return turn ? arrow[0] + arrow[1] : (arrow[0] * dx + arrow[1] * dy) / reach(mark);
    });
    const most = alongs.reduce((best, along, i) => (Math.abs(along) > Math.abs(alongs[best]) ? i : best), 0);
    const mark = marks[most];
    if (Math.abs(alongs[most]) < ITS_WAY) return;
    event.preventDefault();
    event.stopPropagation();
    const { path, told } = mark.dataset;
    const paths = marks.map((one) => one.dataset.path);
    moves.set(path, snapped(movedTo(mark) + Math.sign(alongs[most]) * numbers(mark).step * (event.shiftKey ? MANY[told] : 1), mark));
    show(svg, marks, marks.map(movedTo));
    clearTimeout(timers.get(paths.join(" ")));
    timers.set(paths.join(" "), setTimeout(() => {
        timers.delete(paths.join(" "));
        // The handles as they are now: an answer may have drawn them anew since.
        const handles = [...document.querySelectorAll(".sheet .handle")];
        const here = paths.map((where) => handles.find((one) => one.dataset.path === where));
        const changed = here.filter((one) => one && (movedTo(one) !== numbers(one).now || waits(one.dataset.path)));
        if (changed.length) move(changed.map((one) => [one.dataset.path, words(movedTo(one), one)]));
    }, AT_ONCE));
}

function snapped(value, mark) {
    const { step } = numbers(mark);
    return Math.min(Number(mark.dataset.most), Math.max(Number(mark.dataset.least), Math.round(value / step) * step));
}

function tell(part, marks, values) {
    part.setAttribute("aria-valuenow", String(values[0]));
    part.setAttribute("aria-valuetext", values.map((value, i) => words(value, marks[i])).join("; "));
}

function show(svg, marks, values) {
    const { perInch, perInchY } = scales(svg);
    const places = marks.map((mark, i) => {
        const { dx, dy, now, turn } = numbers(mark);
        const by = values[i] - now;
        const about = pivot(svg, mark);
        return turn ? `rotate(${-turn * by} ${about.x} ${about.y})` : `translate(${by * dx * perInch} ${-by * dy * perInchY})`;
    });
    for (const part of own(svg, marks[0].dataset.of)) {
        part.setAttribute("transform", places.join(" "));
        if (part.getAttribute("role") === "slider") tell(part, marks, values);
    }
    const said = svg.closest("figure").querySelector(".moving");
    said.textContent = marks.flatMap((mark, i) => (values[i] === numbers(mark).now ? [] : [`${mark.dataset.name}: ${words(values[i], mark)}`])).join("; ");
}

const TELL = {
    us: (value) => feetAndInches(value),
    metric: (value) => `${Math.round(value * 25.4)} mm`,
    degrees: (value) => `${value} deg`,
    percent: (value) => `${value}%`,
    place: (value) => String(value),
};
const words = (value, mark) => TELL[mark.dataset.told](value);

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
