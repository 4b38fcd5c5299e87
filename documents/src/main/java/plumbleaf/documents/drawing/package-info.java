/**
 * Drawings: one list of marks in real inches, and the sheets they are shown on.
 *
 * <p>Knows lines, hatches, lettering, dimensions and paper; knows nothing of fences, nor of any file format. x runs to the right
 * and y up. Marks are placed in real inches (of the thing drawn); sizes of lettering, arrows and line widths are inches on paper,
 * so every drawing carries its {@link plumbleaf.documents.drawing.Scale}. Bare doubles here are inches of one or the other, as
 * each name says, or radians counted anticlockwise from the right.
 *
 * <p>Read {@link plumbleaf.documents.drawing.Drawing}, {@link plumbleaf.documents.drawing.Mark}, {@link
 * plumbleaf.documents.drawing.Primitive}, then {@link plumbleaf.documents.drawing.Sheet}. Runs in a browser: basics of the JDK only.
 */
@NullMarked
package plumbleaf.documents.drawing;

import org.jspecify.annotations.NullMarked;
