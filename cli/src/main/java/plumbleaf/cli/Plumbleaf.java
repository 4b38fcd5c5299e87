package plumbleaf.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * The command line. One class a verb; each is added below. Exit 0 fine, 1 our fault, 2 wrong usage or a bad file, 3 findings that must be
 * fixed.
 */
@Command(
        name = "plumbleaf",
        description = "Fences and gates on sloping ground: measured once, then designed, checked, priced and drawn.",
        version = "plumbleaf 0.1.0",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "VERB",
        subcommands = HelpCommand.class)
public final class Plumbleaf implements Runnable {
    static final int OUR_FAULT = 1;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private Plumbleaf() {}

    /** With every verb, ready to execute. */
    public static CommandLine commandLine() {
        CommandLine line = new CommandLine(new Plumbleaf());
        line.setExecutionExceptionHandler((fault, at, parsed) -> {
            at.getErr().println("plumbleaf: our fault, not yours: " + fault + ". Nothing was changed.");
            return OUR_FAULT;
        });
        return line;
    }

    /** Without a verb there is nothing to do. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Say what to do: plumbleaf VERB ...");
    }
}
