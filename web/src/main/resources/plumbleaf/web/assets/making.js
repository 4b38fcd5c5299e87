// Papers that are made behind the page: asks how far they are, and shows them when they are there.
const every = 1500;

async function look() {
  const here = document.querySelector("[data-making]");
  if (!here) return;
  try {
    const answer = await fetch(location.href, { headers: { Accept: "text/html" } });
    if (answer.ok) {
      const page = new DOMParser().parseFromString(await answer.text(), "text/html");
      const now = page.querySelector("[data-making]");
      if (!now) return location.reload();
      if (now.textContent !== here.textContent) here.replaceChildren(...now.childNodes);
    }
  } catch {
    // No signal: ask again.
  }
  setTimeout(look, every);
}

setTimeout(look, every);
