/**
 * Points, lines, planes and triangles, in plan (x east, y north) and in space (z up). Knows distances and directions and nothing that is built; questions
 * of side are answered exactly, on whole nanometres. Read {@link plumbleaf.engine.geometry.PlanPoint}, {@link
 * plumbleaf.engine.geometry.PlanLine}, then {@link plumbleaf.engine.geometry.Triangulation}.
 */
@NullMarked
package plumbleaf.engine.geometry;

import org.jspecify.annotations.NullMarked;
