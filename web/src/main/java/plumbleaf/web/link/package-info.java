/**
 * What a customer sees of a job, by a link that carries its own secret: the chosen papers of one revision, and a place to accept them.
 *
 * <p>Read {@link plumbleaf.web.link.CustomerLinks}, then the two doors.
 */
@NullMarked
package plumbleaf.web.link;

import org.jspecify.annotations.NullMarked;
