package plumbleaf.cli;

/** What the command ends with. */
final class ExitCode {
    /** No must-fix finding; cautions and cannot-say may stand. */
    static final int FINE = 0;
    /** The program is at fault. */
    static final int OUR_FAULT = 1;
    /** Wrong usage or bad input; nothing was written. */
    static final int BAD_INPUT = 2;
    /** There are must-fix findings; what was asked for was written all the same. */
    static final int MUST_FIX = 3;

    private ExitCode() {}
}
