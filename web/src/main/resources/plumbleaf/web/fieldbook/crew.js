import { STEPS } from "./openjob.js";
import { escaped, part, stoppedAt } from "./words.js";

// The crew's page of a job, as soon as loads and findings are worked out: no price is on it.
export function crew(place, book) {
    let shown = null;
    const draw = async () => {
        // What a remedy costs changes nothing of it.
        if (shown !== null && shown === book.text) return;
        shown = book.text;
        const sheet = (await Promise.resolve(book.crewSheet()).catch((fault) => `<p>${escaped(stoppedAt(fault.message))}</p>`)) || "<p>The job has errors: they are under Findings.</p>";
        if (shown === book.text) place.querySelector("#sheet")?.replaceChildren(part(sheet));
    };
    place.replaceChildren(part('<div id="sheet" class="follows"><p class="coming">Being worked out.</p></div>'));
    const isReady = () => !book.isWorked || book.step === STEPS.DESIGNED || book.step === STEPS.PRICED;
    if (isReady()) draw();
    return { step: () => { if (isReady()) draw(); } };
}
