// Feet, inches and sixteenths under one thumb, in the walk about a site and where a new gate is measured: the phone's own keyboard has no fraction and hides the question.
const ROWS = ["7 8 9 '", "4 5 6 \"", "1 2 3 -", "0 / space back next", "1/16 1/8 3/16 1/4 3/8", "1/2 5/8 3/4 7/8 ok"];
const NAMES = { "'": "feet", '"': "inches", "-": "minus: down", "/": "over", space: "space", back: "take the last one back", next: "Next field", ok: "Done" };
const SHOWN = { space: "\u2423", back: "\u232b", next: "Next", ok: "Done" };
const walks = () => document.querySelector(".walk, .measured");
const LENGTH = "input[data-length]:not([data-length=MILLIMETRES], :disabled)";
const byThumb = () => matchMedia("(pointer: coarse), (max-width: 820px)").matches;
let pad = null;
let field = null;
let held = false;

function made() {
    const box = document.createElement("div");
    box.className = "keypad";
    box.setAttribute("role", "group");
    box.setAttribute("aria-label", "Feet, inches and fractions");
    for (const [key, among] of ROWS.flatMap((row) => row.split(" ").map((one, i, all) => [one, all.length]))) {
        const button = document.createElement("button");
        button.type = "button";
        button.dataset.pad = key;
        button.textContent = SHOWN[key] ?? key;
        if (NAMES[key]) button.setAttribute("aria-label", NAMES[key]);
        if (among === 5) button.classList.add("fifth");
        box.append(button);
    }
    box.addEventListener("pointerdown", (event) => event.preventDefault());
    box.addEventListener("click", (event) => press(event.target.closest("[data-pad]")?.dataset.pad));
    return box;
}

/** A fraction takes the place of the one there is, and hangs on the inches before it as the trade writes it: 4' 2-1/2. */
export function typed(text, key) {
    if (key === "back") return text.replace(/(\d+\/\d+|.)$/s, "").replace(/-$/, "");
    if (key === "space") return text.endsWith(" ") ? text : text + " ";
    if (key === "-") return text.startsWith("-") ? text.slice(1) : "-" + text;
    if (key === "/" || !key.includes("/")) return text + key;
    const bare = text.replace(/[- ]?\d+\/\d+"?$/, "").replace(/"$/, "");
    return /\d$/.test(bare) ? `${bare}-${key}` : bare + (bare.endsWith("'") ? " " : "") + key;
}

/** The next length that is asked for on this screen. */
function following(input) {
    const seen = [...document.querySelectorAll(LENGTH)].filter((one) => one.offsetParent);
    return seen[seen.indexOf(input) + 1];
}

function closed() {
    if (field) return;
    pad?.remove();
    document.body.classList.remove("has-keypad");
}

/** The page grows shorter without the pad: not before the press that ended the typing has come to what it was for. */
function close() {
    const after = () => setTimeout(closed);
    if (!held) after();
    else for (const end of ["pointerup", "pointercancel"]) document.addEventListener(end, after, { once: true });
}

function press(key) {
    if (!key || !field) return;
    if (key === "next") {
        following(field)?.focus();
        return;
    }
    if (key === "ok") {
        field.blur();
        return;
    }
    field.value = field.dataset.fresh === "yes" && key !== "back" ? typed("", key) : typed(field.value, key);
    field.dataset.fresh = "";
}

document.addEventListener("focusin", (event) => {
    const input = event.target;
    if (!walks() || !input.matches?.(LENGTH) || !byThumb()) return;
    field = input;
    // What stands there is typed over at the first key, as on any meter; the key that takes back works on what stands there.
    field.dataset.fresh = "yes";
    field.setAttribute("inputmode", "none");
    pad ??= made();
    pad.querySelector("[data-pad=next]").disabled = !following(input);
    document.body.append(pad);
    document.body.classList.add("has-keypad");
    input.scrollIntoView({ block: "center" });
});

document.addEventListener("focusout", (event) => {
    if (event.target !== field) return;
    const left = field;
    field = null;
    if (!event.relatedTarget?.matches?.(LENGTH)) close();
    if (left.value !== left.defaultValue) left.dispatchEvent(new Event("change", { bubbles: true }));
});

document.addEventListener("pointerdown", () => (held = true), true);
for (const end of ["pointerup", "pointercancel"]) document.addEventListener(end, () => (held = false), true);
