import { STEPS } from "./openjob.js";
import { escaped, part, unbroken } from "./words.js";

// All that must be fixed or looked at, with what would cure it; what a cure does to the price comes a moment after the rest.
const MARK = { "must-fix": "\u25a0 must fix", "cannot-say": "\u25cc cannot say", caution: "\u25b3 caution", pass: "\u2713 passes" };
/** As in the rooms: less than this is cents of rounding. */
const SAME = 1;

export function findings(place, book) {
    place.replaceChildren(part(`<h2 id="findings-of"></h2><ul class="findings follows" id="findings"></ul>
<p class="caution">Results are for review; local code governs. Have buried utilities located before you dig.</p>`));
    const list = place.querySelector("#findings");
    let shown = [];
    function draw() {
        const told = [...errors(book.result), ...book.findings().filter((one) => one.severity !== "pass")];
        const of = place.querySelector("#findings-of");
        of.textContent = heading(book.verdict(), told.length);
        of.classList.toggle("coming", !book.verdict() && !told.length);
        const now = told.map((one) => item(one, book.isWorked && book.step !== STEPS.PRICED));
        // Only what reads otherwise is put there anew: what one is just reading stays where it is.
        now.forEach((html, i) => {
            if (html === shown[i]) return;
            const fresh = part(html).firstChild;
            if (list.children[i]) list.children[i].replaceWith(fresh);
            else list.append(fresh);
        });
        while (list.children.length > now.length) list.lastChild.remove();
        shown = now;
    }
    draw();
    return { step: (laid) => { if (!laid) draw(); } };
}

/** What keeps the job, as it came from the desk with what waits here, from being read. */
const errors = ({ errors: wrong = [] }) => wrong.map(({ field, problem, cure }) => ({ severity: "must-fix", message: `${field}: ${problem}; ${cure}.` }));

function heading(verdict, count) {
    if (!verdict) return count ? "This job cannot be worked out as it stands" : "Being worked out.";
    if (!count) return "Everything passes.";
    return verdict === "passes" ? `Everything passes; ${count} to look at` : `${count} to look at`;
}

function item({ severity, message, basis = "", remedies = [] }, isPriceToCome) {
    const cures = remedies.map((remedy) => `<li>${escaped(unbroken(remedy.words))} ${price(remedy, isPriceToCome)}</li>`).join("");
    return `<li class="${severity}"><b>${MARK[severity]}</b> ${escaped(unbroken(message))} <small>${escaped(basis)}</small>${cures ? `<p class="about">What would cure it:</p><ul class="cures">${cures}</ul>` : ""}</li>`;
}

function price({ priceChange, edit }, isToCome) {
    if (priceChange === undefined) return isToCome && edit ? '<span class="change">price follows</span>' : "";
    const amount = Number(priceChange);
    const words = Math.abs(amount) < SAME ? "same price" : `$${Math.abs(amount).toLocaleString("en-US", { minimumFractionDigits: 2 })} ${amount < 0 ? "less" : "more"}`;
    return `<span class="change">${words}</span>`;
}
