package plumbleaf.jobfile.job;

import java.util.List;
import plumbleaf.engine.job.TopEdge;
import plumbleaf.engine.quantity.Length;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.Fields.Choice;
import plumbleaf.jobfile.input.TextKind;

/** {@code gates[].leaf.top}: straight, arched or scalloped. Left out, it is straight. */
final class TopForm {
    private static final List<String> KINDS = List.of("straight", "arched", "scalloped");

    private TopForm() {}

    static TopEdge read(Fields leaf) {
        return leaf.choice("top", KINDS).map(TopForm::top).orElse(new TopEdge.Straight());
    }

    private static TopEdge top(Choice choice) {
        return switch (choice.kind()) {
            case "arched" ->
                new TopEdge.Arched(choice.fields().assumed("rise", Words.SPACE, Length.inches(6), Words.CUSTOM));
            case "scalloped" ->
                new TopEdge.Scalloped(choice.fields().assumed("dip", Words.SPACE, Length.inches(4), Words.CUSTOM));
            default -> new TopEdge.Straight();
        };
    }

    static void write(TopEdge top, Entries out) {
        Entries written = top.match(
                straight -> out,
                arched -> out.choice("top", "arched", rest -> rest.put("rise", TextKind.LENGTH, arched.rise())),
                scalloped -> out.choice("top", "scalloped", rest -> rest.put("dip", TextKind.LENGTH, scalloped.dip())));
        if (written != out) throw new IllegalStateException("A top was not written");
    }
}
