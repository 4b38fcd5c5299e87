/**
 * Jobs kept as documents with revisions. Knows text, numbers of revisions and who made them; does not know what a document says.
 *
 * <p>Read {@link plumbleaf.web.store.JobStore}, then {@link plumbleaf.web.store.Saving}, then {@link plumbleaf.web.store.StorePlace}.
 */
@NullMarked
package plumbleaf.web.store;

import org.jspecify.annotations.NullMarked;
