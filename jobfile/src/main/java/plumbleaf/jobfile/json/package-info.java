/**
 * JSON as a tree that remembers where each value stood, its reading and its writing. The one place that knows the parser's library;
 * it has not heard of jobs.
 *
 * <p>Read {@link plumbleaf.jobfile.json.Node}, then {@link plumbleaf.jobfile.json.JsonReader} and
 * {@link plumbleaf.jobfile.json.JsonWriter}.
 */
@NullMarked
package plumbleaf.jobfile.json;

import org.jspecify.annotations.NullMarked;
