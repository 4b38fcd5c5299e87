/**
 * A job in, a design out: the only package that knows the order of work. Read {@link plumbleaf.engine.design.Designs}, then
 * {@link plumbleaf.engine.design.Design}.
 */
@NullMarked
package plumbleaf.engine.design;

import org.jspecify.annotations.NullMarked;
