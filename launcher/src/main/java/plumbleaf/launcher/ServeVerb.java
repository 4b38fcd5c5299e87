package plumbleaf.launcher;

import java.io.PrintWriter;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import plumbleaf.web.Workspace;
import plumbleaf.web.store.CannotOpen;

/** The workspace for real work: alone on this machine, or with people who sign in. */
@Command(
        name = "serve",
        description =
                "Starts the workspace. Alone it needs no sign-in and answers this machine only; with --people others sign in.",
        mixinStandardHelpOptions = true)
final class ServeVerb implements Callable<Integer> {
    private static final int BAD_INPUT = 2;

    @Option(names = "--port", description = "Port to listen on. Default: ${DEFAULT-VALUE}.")
    private int port = Port.USUAL;

    @Option(names = "--people", description = "Let several people sign in, from other machines too.")
    private boolean people;

    @Option(names = "--address", description = "With --people, the address to listen on. Default: ${DEFAULT-VALUE}.")
    private String address = "0.0.0.0";

    @Option(
            names = "--balanced",
            description =
                    "With --people, take the word of a balancer on a private address for who asks and whether by TLS.")
    private boolean balanced;

    @Option(names = "--json-log", description = "With --people, log every request, one JSON object a line.")
    private boolean jsonLog;

    @Option(names = "--styles", description = "File of your own fence styles, beside those of the program.")
    private String styles = "";

    @Mixin
    private StoreOption store = new StoreOption();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Override
    public Integer call() throws InterruptedException {
        String listening = people ? address : "127.0.0.1";
        if (!Port.isFree(listening, port))
            return refuse("cannot listen on port " + port + " of " + listening + "; name another with --port");
        Workspace.Running running;
        try {
            running = Workspace.start(new Workspace.Settings(
                    !people, address, port, store.place(), false, people && balanced, people && jsonLog, styles));
        } catch (CannotOpen closed) {
            return refuse("the store cannot be opened: " + closed.getMessage() + "; check what --store says");
        }
        Runtime.getRuntime().addShutdownHook(new Thread(running::stop));
        PrintWriter out = spec.commandLine().getOut();
        out.println("Plumbleaf: http://" + listening + ":" + running.port() + "/");
        if (!people) out.println("For one person on this machine; no other machine is let in.");
        if (!running.setupCode().isEmpty()) out.println("Code for the first owner: " + running.setupCode());
        out.println("Jobs are kept in " + store.shown() + ". Ctrl-C ends it.");
        out.flush();
        Thread.currentThread().join();
        return 0;
    }

    private int refuse(String why) {
        spec.commandLine().getErr().print("plumbleaf serve: " + why + "\n");
        spec.commandLine().getErr().flush();
        return BAD_INPUT;
    }
}
