/**
 * Drawings and pages as PDF: real text in embedded fonts, exact scale, the same bytes each time. Translates only.
 *
 * <p>Read {@link plumbleaf.documents.plot.pdf.PdfPlot}.
 */
@NullMarked
package plumbleaf.documents.plot.pdf;

import org.jspecify.annotations.NullMarked;
