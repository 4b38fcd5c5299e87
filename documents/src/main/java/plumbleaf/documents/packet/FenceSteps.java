package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plumbleaf.engine.catalogue.FenceStyle;
import plumbleaf.engine.line.Layout;
import plumbleaf.engine.line.RunLayout;

/** How the crew builds each kind of fence of a job, one step a kind; the last without its full stop. */
final class FenceSteps {
    /** A splice between posts would be a hinge in the rail. Common practice, no source. */
    private static final String RAILS = "Rails, each in one piece from post to post, never spliced between them, ";

    private FenceSteps() {}

    static List<String> of(Layout layout) {
        Set<String> kinds = new LinkedHashSet<>();
        for (RunLayout run : layout.runs()) run.style().map(FenceSteps::step).ifPresent(kinds::add);
        if (kinds.isEmpty()) kinds.add(RAILS + "then pickets from the gate outwards");
        List<String> steps = new ArrayList<>(kinds);
        for (int i = 0; i + 1 < steps.size(); i++) steps.set(i, steps.get(i) + ".");
        return steps;
    }

    private static String step(FenceStyle style) {
        String trim = style.trim().boards() == 0 ? "" : "; then trim, spliced on posts and mitered at corners";
        return style.infill()
                        .match(
                                up -> up.spacing().laps()
                                        ? RAILS
                                                + "then the boards behind from the gate outwards, then those in front over their laps"
                                        : RAILS + "then pickets from the gate outwards",
                                both -> RAILS + "then boards by turns on both faces, from the gate outwards",
                                lying ->
                                        "Boards from the bottom up, each checked level or to the string, spliced on posts",
                                panel ->
                                        "Panels from the high end, racked to the string; a cut panel goes where it is least seen",
                                fabric ->
                                        "Dress terminals, run the top rail and the bottom wire, then stretch the fabric from end to end and tie it from the top",
                                mesh -> "Cope and weld the rails, paint the welds with zinc, then clip the mesh")
                + trim;
    }
}
