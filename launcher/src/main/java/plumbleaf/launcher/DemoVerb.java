package plumbleaf.launcher;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import plumbleaf.web.Workspace;

/** The demo job in the workspace, on a store of its own that is thrown away at the end. */
@Command(
        name = "demo",
        description =
                "Opens the demo job in the workspace, for this machine only. What you change is gone when it ends.",
        mixinStandardHelpOptions = true)
final class DemoVerb implements Callable<Integer> {
    @Option(
            names = "--port",
            description = "Port to listen on; a free one is taken where it is in use. Default: ${DEFAULT-VALUE}.")
    private int port = Port.USUAL;

    @Option(names = "--no-open", description = "Do not open a browser.")
    private boolean noOpen;

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("plumbleaf-demo");
        String store = folder.resolve("demo.db").toString();
        int free = Port.freeFrom(port);
        Workspace.Running running = Workspace.start(Workspace.Settings.alone(free, store, true));
        ThrownAway.atTheEnd(running, folder);
        String address = "http://127.0.0.1:" + running.port() + "/jobs/" + running.demoJob() + "/gates";
        spec.commandLine().getOut().println("The demo job: " + address);
        spec.commandLine().getOut().println("For this machine only. Ctrl-C ends it.");
        spec.commandLine().getOut().flush();
        if (!noOpen) Browser.open(address);
        Thread.currentThread().join();
        return 0;
    }
}
