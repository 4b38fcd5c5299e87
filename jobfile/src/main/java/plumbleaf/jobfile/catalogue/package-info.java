/**
 * The catalogue's data files, with their provenance, read into the engine's records. Read {@link plumbleaf.jobfile.catalogue.PartTables}.
 */
@NullMarked
package plumbleaf.jobfile.catalogue;

import org.jspecify.annotations.NullMarked;
