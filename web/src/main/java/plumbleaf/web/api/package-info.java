/**
 * The workspace for programs: jobs, designs, papers, shots and price books as JSON under {@code /api/v1}, described by the OpenAPI
 * document that it serves. A program comes with the key of a person and may what they may; who sees no money gets none here either.
 *
 * <p>Read {@link plumbleaf.web.api.JobsApi}, then {@link plumbleaf.web.api.ReadingApi}.
 */
@NullMarked
package plumbleaf.web.api;

import org.jspecify.annotations.NullMarked;
