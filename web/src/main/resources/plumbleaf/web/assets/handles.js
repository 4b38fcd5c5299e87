// Things in a drawing that can be dragged, or taken with Tab and moved with the arrow keys. A drawing says where it is in real inches:
// data-frame holds its left, bottom, right and top.
const AT_ONCE = 350;

export function takeHold(move) {
    for (const mark of document.querySelectorAll(".sheet .handle")) {
        const svg = mark.closest(".sheet").querySelector("svg[data-frame]");
        if (!svg) continue;
        svg.setAttribute("role", "group");
        for (const part of svg.querySelectorAll(`[data-of="${CSS.escape(mark.dataset.of)}"]`)) hold(part, svg, mark, move);
    }
}

function hold(part, svg, mark, move) {
    if (part.dataset.held) return;
    part.dataset.held = "yes";
    part.classList.add("held", mark.dataset.axis === "x" ? "held-x" : "held-y");
    const first = !svg.querySelector(`[data-of="${CSS.escape(mark.dataset.of)}"][tabindex]`);
    if (first) {
        part.setAttribute("tabindex", "0");
        part.setAttribute("role", "slider");
        part.setAttribute("aria-label", mark.dataset.name);
        part.setAttribute("aria-valuenow", mark.dataset.inches);
        part.setAttribute("aria-valuetext", feetAndInches(Number(mark.dataset.inches)));
    }
    const group = () => [...svg.querySelectorAll(`[data-of="${CSS.escape(mark.dataset.of)}"]`)];
    part.addEventListener("pointerdown", (event) => drag(event, part, svg, mark, group(), move));
    part.addEventListener("keydown", (event) => key(event, svg, mark, group(), move));
}

function scales(svg) {
    const [left, bottom, right, top] = svg.dataset.frame.split(" ").map(Number);
    const view = svg.viewBox.baseVal;
    const screen = svg.getScreenCTM();
    return { perInch: view.width / (right - left), unitsPerPixel: 1 / screen.a, perInchY: view.height / (top - bottom) };
}

function drag(event, part, svg, mark, group, move) {
    if (event.button !== 0) return;
    event.preventDefault();
    part.focus({ preventScroll: true });
    part.setPointerCapture(event.pointerId);
    const { perInch, perInchY, unitsPerPixel } = scales(svg);
    const across = mark.dataset.axis === "x";
    let value = Number(mark.dataset.inches);
    const moved = (now) => {
        const pixels = across ? now.clientX - event.clientX : event.clientY - now.clientY;
        const inches = (pixels * unitsPerPixel) / (across ? perInch : perInchY);
        value = snapped(Number(mark.dataset.inches) + Number(mark.dataset.sign) * inches, mark);
        show(svg, mark, group, value);
    };
    const done = () => {
        part.removeEventListener("pointermove", moved);
        part.removeEventListener("pointerup", done);
        part.removeEventListener("pointercancel", done);
        if (value !== Number(mark.dataset.inches)) move(mark.dataset.path, feetAndInches(value));
        else show(svg, mark, group, value);
    };
    part.addEventListener("pointermove", moved);
    part.addEventListener("pointerup", done);
    part.addEventListener("pointercancel", done);
}

function key(event, svg, mark, group, move) {
    const across = mark.dataset.axis === "x";
    const up = across ? "ArrowRight" : "ArrowUp";
    const down = across ? "ArrowLeft" : "ArrowDown";
    if (event.key !== up && event.key !== down) return;
    event.preventDefault();
    const steps = (event.key === up ? 1 : -1) * Number(mark.dataset.sign) * (event.shiftKey ? 12 : 1);
    const from = Number(mark.dataset.pending ?? mark.dataset.inches);
    const value = snapped(from + steps * Number(mark.dataset.step), mark);
    mark.dataset.pending = String(value);
    show(svg, mark, group, value);
    clearTimeout(mark.timer);
    mark.timer = setTimeout(() => {
        delete mark.dataset.pending;
        if (value !== Number(mark.dataset.inches)) move(mark.dataset.path, feetAndInches(value));
    }, AT_ONCE);
}

function snapped(inches, mark) {
    const step = Number(mark.dataset.step);
    const size = Math.round(inches / step) * step;
    return mark.dataset.signed ? size : Math.max(0, size);
}

function show(svg, mark, group, value) {
    const { perInch, perInchY } = scales(svg);
    const across = mark.dataset.axis === "x";
    const inches = (value - Number(mark.dataset.inches)) * Number(mark.dataset.sign);
    const shift = across ? `translate(${inches * perInch} 0)` : `translate(0 ${-inches * perInchY})`;
    for (const part of group) part.setAttribute("transform", shift);
    const words = svg.closest("figure").querySelector(".moving");
    words.textContent = inches === 0 ? "" : `${mark.dataset.name}: ${feetAndInches(value)}`;
}

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
