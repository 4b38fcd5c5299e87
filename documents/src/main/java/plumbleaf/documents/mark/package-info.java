/**
 * The contractor's own mark and the code that leads to a job: pictures made once, so that drawings know only their pixels and squares.
 *
 * <p>Knows drawings and nothing of fences. Read {@link plumbleaf.documents.mark.MarkFile}, then {@link plumbleaf.documents.mark.LinkCode}.
 */
@NullMarked
package plumbleaf.documents.mark;

import org.jspecify.annotations.NullMarked;
