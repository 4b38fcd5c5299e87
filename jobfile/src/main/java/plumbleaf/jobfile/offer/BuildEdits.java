package plumbleaf.jobfile.offer;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.design.Hanging;
import plumbleaf.engine.design.PickedGate;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.jobfile.edit.JobEdit;

/** A build that a search found, as changes to the job: what a press writes into it, and {@code choose --out}. */
public final class BuildEdits {
    private BuildEdits() {}

    /**
     * @param gate as the job has it
     * @param build what is to be pinned; how it hangs only where the search looked for that
     */
    public static List<JobEdit> of(Gate gate, PickedGate build) {
        List<JobEdit> edits = new ArrayList<>();
        build.hanging().ifPresent(hanging -> edits.addAll(hung(gate, hanging)));
        String at = "builds." + gate.id() + ".";
        edits.add(new JobEdit(at + "frame", build.frame().id()));
        edits.add(new JobEdit(at + "braces", braces(build.bracing())));
        edits.add(new JobEdit(at + "joint", build.joint().key()));
        edits.add(new JobEdit(at + "hingePost", build.hingePost().id()));
        edits.add(new JobEdit(at + "latchPost", build.latchPost().id()));
        edits.add(new JobEdit(
                at + "hole", LengthText.exact(build.hole().diameter().inches())));
        edits.add(
                new JobEdit(at + "depth", LengthText.exact(build.hole().depth().inches())));
        return edits;
    }

    private static List<JobEdit> hung(Gate gate, Hanging hanging) {
        List<JobEdit> edits = new ArrayList<>();
        String at = "gates[" + gate.id() + "].";
        boolean slides = gate.kind().match(swing -> false, pair -> false, slide -> true, flagged -> false);
        if (!hanging.hinge().isEmpty())
            edits.add(new JobEdit(at + (slides ? "slide.rollers" : "hinges.model"), hanging.hinge()));
        hanging.tail().ifPresent(tail -> edits.add(new JobEdit(at + "slide.tail", LengthText.exact(tail.inches()))));
        hanging.side().ifPresent(side -> edits.add(new JobEdit(at + "hinge", side.key())));
        return edits;
    }

    /** The search looks at tubes and at rods that run as they should; what a rod's file does not say is read as the search took it. */
    private static String braces(Bracing bracing) {
        return bracing.match(tubes -> Integer.toString(tubes.count()), cross -> "x", rod -> "rod");
    }
}
