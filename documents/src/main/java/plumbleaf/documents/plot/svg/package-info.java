/**
 * Drawings as SVG, for screens and files. Translates only: what is drawn is decided in {@code documents.drawing}.
 *
 * <p>User units are 1/96 in. of paper, so one style sheet serves every drawing on a page. Elements carry {@code data-of}. Runs in a
 * browser: basics of the JDK only.
 */
@NullMarked
package plumbleaf.documents.plot.svg;

import org.jspecify.annotations.NullMarked;
