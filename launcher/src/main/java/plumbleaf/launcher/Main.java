package plumbleaf.launcher;

import java.util.List;
import picocli.CommandLine;
import plumbleaf.cli.Plumbleaf;

/** The one door: {@code serve} and {@code demo} start the web; every other word is a verb of the command line. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        CommandLine line = Plumbleaf.ofVerb(List.of(args)).orElseGet(Main::everyVerb);
        System.exit(line.execute(args));
    }

    private static CommandLine everyVerb() {
        CommandLine line = Plumbleaf.commandLine();
        line.addSubcommand(new ServeVerb());
        line.addSubcommand(new DemoVerb());
        line.addSubcommand(new BackupVerb());
        line.addSubcommand(new RestoreVerb());
        line.addSubcommand(new ExportVerb());
        line.addSubcommand(new ImportVerb());
        line.addSubcommand(new ManVerb());
        return line;
    }
}
