/**
 * What was designed, as drawings. Knows the engine's results and how this trade draws them; knows no file format and no paper.
 *
 * <p>Elevations are seen from outside, whichever side the walk leaves it on. Each drawing is made for a scale, since lettering and
 * dimensions must find room at it. Read {@link plumbleaf.documents.view.Outside}, {@link plumbleaf.documents.view.GateElevation}.
 * Runs in a browser: basics of the JDK only.
 */
@NullMarked
package plumbleaf.documents.view;

import org.jspecify.annotations.NullMarked;
