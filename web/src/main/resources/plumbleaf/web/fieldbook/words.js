// Text put into a page, and a page's part made of text.

export const part = (html) => document.createRange().createContextualFragment(html);

export const escaped = (text) => String(text).replace(/[&<>"]/g, (one) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" })[one]);

/** 7-5/16" stays on one line. */
export const unbroken = (text) => String(text).replace(/(\d)-(?=\d)/g, "$1-\u2060");

export const changes = (count) => (count === 1 ? "1 change" : `${count} changes`);

/** gates[0].leaf.bottomGap, as one says it: bottom gap. */
export const said = (path) => (/([A-Za-z]+)$/.exec(path)?.[1] ?? path).replace(/([A-Z])/g, (letter) => " " + letter.toLowerCase());

export const stoppedAt = (fault) => `The engine stopped at this job (${fault}). What you changed is kept, and the office sees it once it has gone up.`;
