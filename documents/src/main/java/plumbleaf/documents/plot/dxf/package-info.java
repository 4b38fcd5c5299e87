/**
 * Drawings as DXF of release 12, in real inches with layers, plain ASCII. Translates only.
 *
 * <p>Read {@link plumbleaf.documents.plot.dxf.DxfPlot}. Source of the format: the published group code reference of release 12 (from
 * memory), read back by an independent reader in a test.
 */
@NullMarked
package plumbleaf.documents.plot.dxf;

import org.jspecify.annotations.NullMarked;
