/**
 * The price books of the house: four tables each, in the store, brought in and taken out as CSV.
 *
 * <p>Read {@link plumbleaf.web.books.HouseBooks}, then {@code BooksDoor}.
 */
@NullMarked
package plumbleaf.web.books;

import org.jspecify.annotations.NullMarked;
