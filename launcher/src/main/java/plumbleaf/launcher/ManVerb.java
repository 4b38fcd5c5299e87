package plumbleaf.launcher;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** For whoever packs the program. */
@Command(
        name = "generate-man-page",
        description = "Writes the manual page, for man.",
        hidden = true,
        mixinStandardHelpOptions = true)
final class ManVerb implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() {
        spec.commandLine().getOut().print(ManPage.of(spec.root().commandLine()));
        spec.commandLine().getOut().flush();
        return 0;
    }
}
