// A sheet can be looked at closer: by its buttons, by + - 0 while it has the focus, or by the wheel with Ctrl at the place pointed at. What is
// closer than the whole is moved by dragging the paper or by scrolling. How close a sheet was stays through every answer.
const STEP = 1.4;
const CLOSEST = 8;
const LEAST_LETTER_PX = matchMedia("screen and (max-width: 820px)").matches ? 9.8 : 9;
const closeness = new Map();

const keyOf = (sheet) => location.pathname + " " + (sheet.closest("figure")?.dataset.key ?? "");
const closenessOf = (sheet) => closeness.get(keyOf(sheet)) ?? 1;

function lay(sheet, times) {
    const drawn = sheet.querySelector("svg, img");
    const figure = sheet.closest("figure");
    if (!drawn || !figure) return;
    const whole = times <= 1.001;
    sheet.classList.toggle("closer", !whole);
    if (whole) {
        closeness.delete(keyOf(sheet));
        for (const name of ["width", "max-width", "max-height"]) drawn.style.removeProperty(name);
        sheet.style.removeProperty("height");
    } else {
        if (!sheet.style.height) sheet.style.setProperty("height", sheet.clientHeight + 2 + "px");
        closeness.set(keyOf(sheet), times);
        drawn.style.setProperty("max-width", "none");
        drawn.style.setProperty("max-height", "none");
        drawn.style.setProperty("width", times * 100 + "%");
    }
    const buttons = figure.querySelectorAll("[data-zoom]");
    const at = document.activeElement;
    for (const button of buttons) button.disabled = button.dataset.zoom === "in" ? times >= CLOSEST : whole;
    // A button that can be pressed no further gives the focus to its sheet, which takes the same by + - 0.
    if (at?.matches("[data-zoom]:disabled") && figure.contains(at)) sheet.focus({ preventScroll: true });
}

/** Keeps what is under a point of the sheet where it is. */
function zoom(sheet, by, x = sheet.clientWidth / 2, y = sheet.clientHeight / 2) {
    const before = closenessOf(sheet);
    const after = by === 0 ? 1 : Math.min(CLOSEST, Math.max(1, before * by));
    const ratio = after / before;
    const left = (sheet.scrollLeft + x) * ratio - x;
    const top = (sheet.scrollTop + y) * ratio - y;
    lay(sheet, after);
    sheet.scrollLeft = left;
    sheet.scrollTop = top;
}

/** No letter of a drawing that is seen whole is smaller than can be read: then the drawing is larger than its place, and is pushed aside to see the rest. */
function keepLetters(sheet) {
    const svg = sheet.querySelector("svg");
    if (!svg || sheet.classList.contains("closer")) return;
    svg.style.removeProperty("min-width");
    sheet.classList.remove("lettered");
    const sizes = [...svg.querySelectorAll("text")].map((text) => parseFloat(text.getAttribute("font-size"))).filter((size) => size > 0);
    const screen = svg.getScreenCTM();
    if (!sizes.length || !screen) return;
    const least = Math.min(...sizes);
    if (least * screen.a >= LEAST_LETTER_PX - 0.01) return;
    sheet.classList.add("lettered");
    svg.style.setProperty("min-width", Math.ceil((svg.viewBox.baseVal.width * LEAST_LETTER_PX) / least) + "px");
}

export function keepZoom() {
    for (const sheet of document.querySelectorAll(".sheet")) {
        keepLetters(sheet);
        const times = closenessOf(sheet);
        if (times > 1) {
            const at = [sheet.scrollLeft, sheet.scrollTop];
            lay(sheet, times);
            [sheet.scrollLeft, sheet.scrollTop] = at;
        }
    }
}

const STEPS = { in: STEP, out: 1 / STEP, fit: 0 };
document.addEventListener("click", (event) => {
    const button = event.target.closest("[data-zoom]");
    const sheet = button?.closest("figure")?.querySelector(".sheet");
    if (sheet) zoom(sheet, STEPS[button.dataset.zoom]);
});
document.addEventListener("keydown", (event) => {
    if (!event.target.matches?.(".sheet") || event.ctrlKey || event.metaKey || event.altKey) return;
    const by = { "+": STEP, "=": STEP, "-": 1 / STEP, "0": 0 }[event.key];
    if (by === undefined) return;
    event.preventDefault();
    zoom(event.target, by);
});
document.addEventListener("wheel", (event) => {
    const sheet = event.target.closest?.(".sheet");
    if (!sheet || !event.ctrlKey) return;
    event.preventDefault();
    const box = sheet.getBoundingClientRect();
    zoom(sheet, Math.exp(-event.deltaY / 300), event.clientX - box.left, event.clientY - box.top);
}, { passive: false });
document.addEventListener("pointerdown", (event) => {
    const sheet = event.target.closest?.(".sheet.closer");
    if (!sheet || event.button !== 0 || event.pointerType === "touch" || event.target.closest(".held")) return;
    const from = [sheet.scrollLeft + event.clientX, sheet.scrollTop + event.clientY];
    const move = (now) => { sheet.scrollLeft = from[0] - now.clientX; sheet.scrollTop = from[1] - now.clientY; };
    const done = () => { removeEventListener("pointermove", move); removeEventListener("pointerup", done); removeEventListener("pointercancel", done); };
    addEventListener("pointermove", move);
    addEventListener("pointerup", done);
    addEventListener("pointercancel", done);
});
addEventListener("resize", keepZoom);
