package plumbleaf.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/**
 * The command run in this process.
 *
 * @param code what it ended with
 * @param out what it wrote to stdout
 * @param err what it wrote to stderr
 */
record Terminal(int code, String out, String err) {
    static Terminal run(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandLine line = Plumbleaf.commandLine();
        line.setOut(new PrintWriter(out));
        line.setErr(new PrintWriter(err));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF));
        line.setUsageHelpAutoWidth(false);
        int code = line.execute(arguments);
        return new Terminal(code, out.toString(), err.toString());
    }

    List<String> errorLines() {
        return err.lines().toList();
    }
}
