/**
 * Patterns as the engine, the job file and the papers use them, in little: what stands for {@code java.util.regex} in the page, where the compiler's own would be a twentieth of
 * all that is fetched. Knows texts and nothing else; a pattern with anything in it that is not known here is refused when it is made, and the build refuses it before that.
 *
 * <p>Read {@link plumbleaf.browser.pattern.Pattern}, then {@link plumbleaf.browser.pattern.PatternReader} and {@link plumbleaf.browser.pattern.Matcher}.
 */
@NullMarked
package plumbleaf.browser.pattern;

import org.jspecify.annotations.NullMarked;
