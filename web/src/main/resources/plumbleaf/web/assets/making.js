// What is made behind the page, papers or a search: asks how far it is, and shows it when it is there.
const every = 1500;

async function look() {
  const here = document.querySelector("[data-making]");
  if (here) await ask(here);
  setTimeout(look, every);
}

async function ask(here) {
  try {
    const answer = await fetch(location.href, { headers: { Accept: "text/html" } });
    if (!answer.ok) return;
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const now = page.querySelector("[data-making]");
    // Where it is over, the room is shown as after any other press: what is being typed stays.
    if (!now) document.dispatchEvent(new CustomEvent("made", { detail: page }));
    else if (here.isConnected && now.textContent !== here.textContent) here.replaceChildren(...now.childNodes);
  } catch {
    // No signal: ask again.
  }
}

setTimeout(look, every);
