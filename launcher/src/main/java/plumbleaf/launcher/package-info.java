/**
 * Holds main and starts either side: the command line, or the web for {@code serve} and {@code demo}. Knows both, decides nothing else.
 * Web classes are named only inside the verbs that need them, so no other verb pays for loading them.
 */
@NullMarked
package plumbleaf.launcher;

import org.jspecify.annotations.NullMarked;
