/**
 * The engine, the job file and the drawings behind one face that a page can call where there is no signal: job text in; design, findings and
 * papers out, all as text. Holds no calculation of its own, so that a page and the server never answer differently.
 *
 * <p>Read {@link plumbleaf.browser.PageEngine}, then {@code engine.js} beside it, then {@code plumbleaf.browser.pattern}, {@code plumbleaf.browser.build} and {@code plumbleaf.browser.packed}.
 */
@NullMarked
package plumbleaf.browser;

import org.jspecify.annotations.NullMarked;
