// On a phone the drawings lie beside each other and one is seen at a time: the strip is as high as the one in view, the buttons under it
// leaf through, and a thing tapped in the numbers offers the way to where it is drawn.
const strip = () => document.querySelector(".sheets");
const isStrip = (sheets) => sheets && getComputedStyle(sheets).display === "flex" && sheets.scrollWidth > sheets.clientWidth + 4;

function inView(sheets) {
    const middle = sheets.scrollLeft + sheets.clientWidth / 2;
    const figures = [...sheets.children];
    const away = (figure) => Math.abs(figure.offsetLeft - sheets.offsetLeft + figure.offsetWidth / 2 - middle);
    return figures.reduce((best, figure, i) => (away(figure) < away(figures[best]) ? i : best), 0);
}

export function keepSheets() {
    const sheets = strip();
    const leafing = document.querySelector(".leafing");
    if (!isStrip(sheets)) {
        sheets?.style.removeProperty("height");
        leafing?.removeAttribute("data-on");
        return;
    }
    const at = inView(sheets);
    sheets.style.setProperty("height", sheets.children[at].offsetHeight + "px");
    if (!leafing) return;
    leafing.dataset.on = "yes";
    leafing.querySelector("output").textContent = `${at + 1} of ${sheets.children.length}`;
    // Not disabled: a button that has the focus would lose it.
    leafing.querySelector("[data-leaf='-1']").setAttribute("aria-disabled", at === 0);
    leafing.querySelector("[data-leaf='1']").setAttribute("aria-disabled", at === sheets.children.length - 1);
}

/** Another drawing came into view, or its picture: what has the focus below the strip stays where it is on the screen. */
function keepSheetsAbove() {
    const sheets = strip();
    const held = document.activeElement;
    const below = sheets && held && sheets.compareDocumentPosition(held) & Node.DOCUMENT_POSITION_FOLLOWING;
    const before = below && held.getBoundingClientRect().top;
    keepSheets();
    const moved = below && held.getBoundingClientRect().top - before;
    if (moved) scrollBy({ top: moved, behavior: "instant" });
}

const smooth = () => (matchMedia("(prefers-reduced-motion: reduce)").matches ? "auto" : "smooth");

function show(figure) {
    const sheets = strip();
    sheets.scrollTo({ left: figure.offsetLeft - sheets.offsetLeft - (sheets.clientWidth - figure.offsetWidth) / 2, behavior: smooth() });
}

document.addEventListener("click", (event) => {
    const button = event.target.closest("[data-leaf]");
    const sheets = strip();
    if (!button || !sheets) return;
    const next = sheets.children[inView(sheets) + Number(button.dataset.leaf)];
    if (next) show(next);
});

let settling = 0;
document.addEventListener("scroll", (event) => {
    if (event.target !== strip()) return;
    clearTimeout(settling);
    settling = setTimeout(keepSheetsAbove, 120);
}, true);
addEventListener("resize", keepSheets);
document.addEventListener("load", (event) => { if (event.target.matches?.(".sheet img")) keepSheetsAbove(); }, true);

let seen = null;
export function seeInDrawing(of) {
    seen?.remove();
    seen = null;
    const sheets = strip();
    const id = of.split(" ")[0];
    if (!id || !isStrip(sheets) && getComputedStyle(document.getElementById("inside") ?? document.body).gridTemplateColumns.includes(" ")) return;
    const drawn = document.querySelector(`.sheet svg [data-of~="${CSS.escape(id)}"]`);
    if (!drawn) return;
    seen = document.createElement("button");
    seen.type = "button";
    seen.className = "seen";
    seen.textContent = `See ${id} in the drawing`;
    seen.addEventListener("click", () => {
        drawn.closest("figure").scrollIntoView({ block: "start", inline: "center", behavior: smooth() });
        seen?.remove();
        seen = null;
    });
    document.body.append(seen);
}

keepSheets();
