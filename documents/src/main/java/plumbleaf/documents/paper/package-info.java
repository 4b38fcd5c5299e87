/**
 * What a paper says, in blocks, without saying how it looks: headings, tables, cautions, formulas, pictures.
 *
 * <p>Knows drawings and nothing of fences. Read {@link plumbleaf.documents.paper.Paper}, then {@link
 * plumbleaf.documents.paper.Block}.
 */
@NullMarked
package plumbleaf.documents.paper;

import org.jspecify.annotations.NullMarked;
