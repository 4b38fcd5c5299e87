import { Handles } from "./dragging.js";
import { Figures } from "./figures.js";
import { STEPS } from "./openjob.js";
import { part } from "./words.js";

// All drawings of a job, with line posts to be dragged along their run.
export function drawings(place, book) {
    const how = book.isWorked ? `<p class="how">Drag a line post along its run: it has a dashed frame. By keys: Tab takes it, the arrows move it.</p>
<p id="dragged" class="dragged" aria-hidden="true"></p><p id="came-to" class="unseen" role="status"></p>` : "";
    place.replaceChildren(part(`${how}<div id="sheets"></div>`));
    const figures = new Figures(place.querySelector("#sheets"));
    const handles = book.isWorked ? new Handles(book, figures, place) : null;
    const draw = async () => {
        if (!figures.draw(await book.drawings([], figures.asks().known))) figures.draw(await book.drawings());
        // Another page may be shown already.
        if (!figures.place.isConnected) return;
        if (!figures.all.length) figures.says("Nothing can be drawn of this job yet.");
        handles?.put();
    };
    const drawn = () => draw().catch((fault) => figures.says(`Not drawn: ${fault.message}`));
    if (!book.isWorked || book.step !== STEPS.NONE) drawn();
    else figures.says("Being drawn.");
    return {
        asks: () => figures.asks(),
        step(laid) {
            if (laid?.drawings) figures.draw(laid.drawings);
            else if (!laid && book.step !== STEPS.PRICED) drawn();
        },
    };
}
