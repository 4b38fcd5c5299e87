/**
 * What a page is made of: rooms, panels, fields, rows, tables, pictures and notes, as plain values, and the templates that print them.
 * Does not know jobs or the engine's design; a room fills these in.
 *
 * <p>Read {@link plumbleaf.web.page.Room}, {@link plumbleaf.web.page.RoomView}, {@link plumbleaf.web.page.Field}, {@link
 * plumbleaf.web.page.Pages}.
 */
@NullMarked
package plumbleaf.web.page;

import org.jspecify.annotations.NullMarked;
