/**
 * The yard: what lies there, who took it and why, and what came of what was ordered. Knows the store; what a row means is the job file's business. Read
 * {@link plumbleaf.web.yard.HouseYard}, then {@link plumbleaf.web.yard.Receipts}.
 */
@NullMarked
package plumbleaf.web.yard;

import org.jspecify.annotations.NullMarked;
