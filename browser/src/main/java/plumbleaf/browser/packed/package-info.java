/**
 * How the module is packed and unpacked, both ways by the same steps: packing, what comes next is known and told; unpacking, it is asked for. Compiled to a small module of its own it
 * unpacks the engine in the page. Knows WebAssembly's binary form and nothing else; uses arrays and numbers alone, since all it uses goes along to the page.
 *
 * <p>Read {@link plumbleaf.browser.packed.PackedModule}, then {@link plumbleaf.browser.packed.PackedCode} with what it tells apart and {@link plumbleaf.browser.packed.Odds}, then
 * {@link plumbleaf.browser.packed.Unpacked}.
 */
@NullMarked
package plumbleaf.browser.packed;

import org.jspecify.annotations.NullMarked;
