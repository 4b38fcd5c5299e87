package plumbleaf.web.proof;

import plumbleaf.web.Workspace;

/** One node of several on one PostgreSQL, as {@code serve --people} starts it. Says its port and the code for the first owner. */
final class ServedNode {
    private ServedNode() {}

    public static void main(String[] words) throws InterruptedException {
        System.setProperty("plumbleaf.bcrypt-rounds", "4");
        Workspace.Running running =
                Workspace.start(new Workspace.Settings(false, "127.0.0.1", 0, words[0], false, false, false, ""));
        Runtime.getRuntime().addShutdownHook(new Thread(running::stop));
        System.out.println("port " + running.port());
        System.out.println("code " + running.setupCode());
        Thread.currentThread().join();
    }
}
