package plumbleaf.launcher;

import picocli.CommandLine;
import plumbleaf.cli.Plumbleaf;

/** The one door: {@code serve} and {@code demo} start the web; every other word is a verb of the command line. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        CommandLine line = Plumbleaf.commandLine();
        line.addSubcommand(new ServeVerb());
        line.addSubcommand(new DemoVerb());
        line.addSubcommand(new BackupVerb());
        line.addSubcommand(new RestoreVerb());
        line.addSubcommand(new ExportVerb());
        line.addSubcommand(new ImportVerb());
        line.addSubcommand(new ManVerb());
        System.exit(line.execute(args));
    }
}
