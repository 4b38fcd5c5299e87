/**
 * Comma-separated tables with a heading: catalogues, price books. Every bad cell is an error with its line and column heading; nothing is
 * dropped in silence. Knows nothing of what a table is about. Read {@link plumbleaf.jobfile.table.CsvTable}.
 */
@NullMarked
package plumbleaf.jobfile.table;

import org.jspecify.annotations.NullMarked;
