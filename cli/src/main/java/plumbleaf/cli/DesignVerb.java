package plumbleaf.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.design.PairDesign;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafHang;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.jobfile.result.ResultFile;

/** Designs a job and says what there is to say about it. */
@Command(
        name = "design",
        description = "Designs a job: posts, bays, gates, findings with their remedies.",
        mixinStandardHelpOptions = true,
        footer = {"", "Exit 3 when there is a must-fix finding. Local code governs."})
final class DesignVerb implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The job file.")
    private Path file = Path.of("");

    @Mixin
    private HouseStyles styles = new HouseStyles();

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        Designed designed = Designed.from(file, styles);
        Design design = designed.design();
        if (answer.isJson()) answer.document(ResultFile.write(design));
        answer.say(design.job().title() + ": " + design.verdict().key() + ", " + FindingText.count(design.findings()));
        answer.say("");
        answer.say(posts(design));
        for (GateDesign gate : design.gates()) {
            answer.say("");
            answer.say(gate(gate, design.job().display()));
        }
        answer.say("");
        answer.say(FindingText.lines(design.findings()));
        answer.say("Results are for review; local code governs.");
        return designed.exitCode();
    }

    private static List<String> posts(Design design) {
        DisplayUnits units = design.job().display();
        Columns columns = new Columns("lllrrr");
        columns.row("post", "run", "role", "station", "grade", "top");
        for (Post post : design.layout().posts())
            columns.row(
                    post.id(),
                    post.run(),
                    post.role().key(),
                    units.length(post.station()),
                    units.length(post.grade()),
                    units.length(post.top()));
        return columns.lines(0);
    }

    private static List<String> gate(GateDesign gate, DisplayUnits units) {
        Columns columns = new Columns("ll");
        columns.row(gate.id(), gate.plan().sentence());
        columns.row("opening", units.length(gate.plan().opening().clear()));
        for (Leaf leaf : gate.plan().leaves())
            columns.row(
                    "leaf " + leaf.id(),
                    units.length(leaf.width()) + " wide, "
                            + units.weight(leaf.weight().wet().pounds()) + " wet");
        boolean single = gate.plan().hangs().size() == 1;
        for (LeafHang hang : gate.plan().hangs())
            columns.row("clearance" + (single ? "" : " " + hang.id()), clearance(hang.swing(), units));
        for (HungLeaf hung : gate.hung())
            columns.row(
                    "drop" + (single ? "" : " " + hung.id()),
                    units.length(hung.sag().total()) + "; "
                            + units.length(hung.sag().hangAllowance()) + " when the blocks are pulled");
        gate.pair().ifPresent(pair -> meeting(pair, columns, units));
        return columns.lines(0);
    }

    private static String clearance(Swing swing, DisplayUnits units) {
        return units.length(swing.least().clear()) + " at least, opens to "
                + DecimalText.fixed(swing.maxAngle().inDegrees(), 1) + " deg, limited by "
                + swing.limitedBy().key();
    }

    private static void meeting(PairDesign pair, Columns columns, DisplayUnits units) {
        columns.row("opens first", "the " + pair.active().key() + " leaf");
        columns.row(
                "drop rod",
                pair.rods() + " x " + pair.rod().rod().name() + ", "
                        + units.force(pair.rod().push().pounds()) + " "
                        + units.length(pair.rod().exposed()) + " above its sleeve, "
                        + DecimalText.fixed(pair.rod().utilisation(), 2) + " of what it may");
        for (int at = 0; at < pair.rated().size(); at++)
            columns.row(
                    "gust " + (at == 0 ? "left" : "right"), pair.rated().get(at).words());
        columns.row(
                "tops",
                units.length(pair.topInService()) + " out of line in the service gust, "
                        + units.length(pair.topInWind()) + " in the design wind");
    }
}
