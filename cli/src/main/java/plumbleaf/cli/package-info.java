/**
 * The command line: one class a verb. Results go to stdout, problems to stderr; 0 fine, 1 our fault, 2 wrong usage or bad input, 3 must-fix
 * findings. A verb reads, calls, answers; nothing is worked out here.
 *
 * <p>Read {@link plumbleaf.cli.Plumbleaf}, {@link plumbleaf.cli.Answer}, then a verb such as {@link plumbleaf.cli.CheckVerb}.
 */
@NullMarked
package plumbleaf.cli;

import org.jspecify.annotations.NullMarked;
