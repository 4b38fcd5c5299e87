/**
 * What can be bought, with sizes, capacities and adjustment, and no prices. Records only: the data files and their provenance are read outside the
 * engine. Read {@link plumbleaf.engine.catalogue.Catalogue}.
 */
@NullMarked
package plumbleaf.engine.catalogue;

import org.jspecify.annotations.NullMarked;
