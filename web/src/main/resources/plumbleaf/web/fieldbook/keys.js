// Large keys for one length at a time: digits, feet, inches and the fractions of a tape. Made for a thumb in a glove.
const FRACTIONS = ["1/16", "1/8", "3/16", "1/4", "5/16", "3/8", "7/16", "1/2", "9/16", "5/8", "11/16", "3/4", "13/16", "7/8", "15/16"];

/**
 * @param {HTMLElement} place
 * @param {{ signed: boolean, metric: boolean, changed: (text: string) => void }} how
 */
export function keypad(place, { signed, metric, changed }) {
    const said = { sign: "", feet: "", inches: "", fraction: "", part: metric ? "inches" : "feet" };
    const text = () => written(said, metric);
    const told = () => {
        for (const button of place.querySelectorAll(".fractions button")) button.setAttribute("aria-pressed", String(button.dataset.key === said.fraction));
        changed(text());
    };
    const key = (word, press, label) => {
        const button = document.createElement("button");
        button.type = "button";
        button.className = "pad-key";
        button.textContent = word;
        button.dataset.key = word;
        if (label) button.setAttribute("aria-label", label);
        button.addEventListener("click", () => { press(); told(); });
        return button;
    };
    const digit = (one) => key(one, () => {
        const most = said.part === "feet" || metric ? 5 : 3;
        if (said[said.part].length < most) said[said.part] = String(Number(said[said.part] + one));
    });
    const grid = document.createElement("div");
    grid.className = "keys";
    const sign = key("\u00b1", () => { said.sign = said.sign ? "" : "-"; }, "up or down");
    sign.disabled = !signed;
    const feet = key("ft", () => { said.part = "inches"; }, "feet, inches come next");
    feet.disabled = metric;
    const beside = [key("\u232b", () => back(said, metric), "take back"), feet, sign];
    for (const [row, last] of [["7", "8", "9"], ["4", "5", "6"], ["1", "2", "3"]].map((row, i) => [row, beside[i]])) grid.append(...row.map(digit), last);
    grid.append(digit("0"));
    place.replaceChildren(grid);
    if (!metric) {
        const row = document.createElement("div");
        row.className = "fractions";
        for (const one of FRACTIONS) row.append(key(one, () => { said.fraction = said.fraction === one ? "" : one; }));
        place.append(row);
    }
    return {
        text,
        clear() {
            Object.assign(said, { sign: "", feet: "", inches: "", fraction: "", part: metric ? "inches" : "feet" });
            told();
        },
    };
}

function back(said, metric) {
    if (said.fraction) said.fraction = "";
    else if (said[said.part]) said[said.part] = said[said.part].slice(0, -1);
    else if (!metric && said.part === "inches") said.part = "feet";
    else said.sign = "";
}

/** 26' 4-1/2", as the trade writes it and the job file reads it. Digits alone are inches until "ft" is pressed. */
function written({ sign, feet, inches, fraction, part }, metric) {
    if (metric) return inches ? `${sign}${inches} mm` : "";
    const isFeet = part === "inches";
    const whole = isFeet ? inches : feet;
    const over = whole && fraction ? `${whole}-${fraction}` : fraction || whole;
    if (isFeet && feet) return sign + `${feet}'` + (over ? ` ${over}"` : "");
    return over ? `${sign}${over}"` : "";
}
