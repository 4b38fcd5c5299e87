/**
 * The yard and the order as tables: what lies in the yard and who took it, what is ordered, what goes on the truck, what arrived. A cell that a spreadsheet would
 * take for a formula is disarmed. Read {@link plumbleaf.jobfile.stock.YardFile}, then {@link plumbleaf.jobfile.stock.OrderTables}.
 */
@NullMarked
package plumbleaf.jobfile.stock;

import org.jspecify.annotations.NullMarked;
