/**
 * Makes the module while the program is built: what goes in, whether anything changed since last time, and the compiler's run. Nothing of it
 * is in the module or is ever run by the program.
 *
 * <p>Read {@link plumbleaf.browser.build.ToWebAssembly}, then {@link plumbleaf.browser.build.LeanTarget} with what it leaves out, then
 * {@link plumbleaf.browser.build.Packing} and {@link plumbleaf.browser.build.Inputs}.
 */
@NullMarked
package plumbleaf.browser.build;

import org.jspecify.annotations.NullMarked;
