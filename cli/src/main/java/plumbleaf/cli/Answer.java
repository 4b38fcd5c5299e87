package plumbleaf.cli;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;

/** Where a verb's answer goes: with {@code --json} one document on stdout and people's text on stderr, else people's text on stdout. */
final class Answer {
    @Option(names = "--json", description = "Answer with one JSON document; text for people goes to stderr.")
    private boolean json;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec = CommandSpec.create();

    boolean isJson() {
        return json;
    }

    /** The document, where one was asked for. */
    void document(Node node) {
        if (!json) return;
        PrintWriter out = spec.commandLine().getOut();
        out.print(JsonWriter.write(node));
        out.flush();
    }

    /** The whole document as text made elsewhere. */
    void document(String text) {
        if (!json) return;
        PrintWriter out = spec.commandLine().getOut();
        out.print(text);
        out.flush();
    }

    /** A line for people. */
    void say(String line) {
        PrintWriter writer =
                json ? spec.commandLine().getErr() : spec.commandLine().getOut();
        writer.print(line);
        writer.print('\n');
        writer.flush();
    }

    /** How far something long is; never among the answer. */
    void progress(String line) {
        PrintWriter writer = spec.commandLine().getErr();
        writer.print(line);
        writer.print('\n');
        writer.flush();
    }

    void say(List<String> lines) {
        for (String line : lines) say(line);
    }
}
