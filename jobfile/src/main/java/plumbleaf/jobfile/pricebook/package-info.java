/**
 * Price books as tables: materials, labor, charges, house. Every bad row is named with its line, column and cure. Read
 * {@link plumbleaf.jobfile.pricebook.PriceBooks}, then {@link plumbleaf.jobfile.pricebook.PriceBookTables}.
 */
@NullMarked
package plumbleaf.jobfile.pricebook;

import org.jspecify.annotations.NullMarked;
