/**
 * The rooms of one job: each reads the job's text, asks the engine, and fills a page; each edit changes one value in the text, reads it
 * again and keeps it as a new revision.
 *
 * <p>Read {@link plumbleaf.web.room.RoomDoor}, {@link plumbleaf.web.room.Opened}, then a room.
 */
@NullMarked
package plumbleaf.web.room;

import org.jspecify.annotations.NullMarked;
