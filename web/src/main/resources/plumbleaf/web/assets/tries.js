// What a value would come to, asked while something is being dragged: the answer is shown and nothing is kept. One question is on its way at
// a time, the latest value next; an answer that comes after the hand let go is thrown away.
export function triesWith(show) {
    let wanted = null;
    let asking = false;
    let turn = 0;

    async function ask() {
        if (asking || !wanted) return;
        asking = true;
        const { path, value, figure } = wanted;
        wanted = null;
        const mine = turn;
        const inside = document.getElementById("inside");
        const body = new URLSearchParams({ _csrf: document.querySelector("meta[name=csrf]").content, version: inside.dataset.version, path, value });
        try {
            const answer = await fetch(inside.dataset.at + "/try", { method: "POST", body, headers: { "X-Live": "1" }, redirect: "error" });
            const html = answer.ok ? await answer.text() : "";
            if (html && mine === turn) show(new DOMParser().parseFromString(html, "text/html"), figure);
        } catch {
            // No connection: the drawing alone follows the hand.
        }
        asking = false;
        ask();
    }

    return {
        of(path, value, figure) {
            wanted = { path, value, figure };
            ask();
        },
        end() {
            wanted = null;
            turn++;
        },
    };
}
