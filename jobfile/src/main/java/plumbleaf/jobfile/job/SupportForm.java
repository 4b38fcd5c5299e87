package plumbleaf.jobfile.job;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.support.PostFeel;
import plumbleaf.engine.support.PullTest;
import plumbleaf.engine.support.Support;
import plumbleaf.engine.support.WallKind;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.Fields.Choice;
import plumbleaf.jobfile.input.TextKind;

/** {@code support}: what holds a post. */
final class SupportForm {
    private static final List<String> KINDS =
            List.of("new-footing", "driven", "slab-plate", "core-socket", "wall-anchor", "existing");

    private SupportForm() {}

    /** Reads {@code support} of a post; a new footing where nobody says. */
    static Support read(Fields post) {
        Choice choice = post.assumedChoice("support", KINDS, "new-footing", Words.CUSTOM);
        Fields fields = choice.fields();
        return switch (choice.kind()) {
            case "driven" -> new Support.Driven(fields.needed("depth", Words.DEPTH, Length.feet(3)));
            case "slab-plate" ->
                new Support.SlabPlate(
                        fields.needed("slabThickness", Words.HOLE, Length.inches(4)),
                        fields.needed("edgeDistance", Words.ASIDE, Length.ZERO));
            case "core-socket" ->
                new Support.CoreSocket(
                        fields.needed("depth", Words.DEPTH, Length.feet(1)),
                        fields.needed("edgeDistance", Words.ASIDE, Length.ZERO));
            case "wall-anchor" -> new Support.WallAnchor(fields.needed("of", Words.WALL, WallKind.MASONRY));
            case "existing" -> existing(fields);
            default -> new Support.NewFooting();
        };
    }

    private static Support existing(Fields fields) {
        List<PullTest> tests = new ArrayList<>();
        for (Fields test : fields.objects("tests"))
            tests.add(new PullTest(
                    test.needed("force", TextKind.FORCE, Force.ZERO),
                    test.needed("at", Words.HEIGHT, Length.ZERO),
                    test.needed("low", Words.DOWN, Length.ZERO),
                    test.needed("movedLow", Words.DOWN, Length.ZERO),
                    test.needed("high", Words.HEIGHT, Length.ZERO),
                    test.needed("movedHigh", Words.DOWN, Length.ZERO),
                    test.assumed("leftOver", Words.DOWN, Length.ZERO, "not read")));
        return new Support.Existing(fields.assumed("feel", Words.FEEL, PostFeel.UNKNOWN, "not tried"), tests);
    }

    static void write(Support support, Entries post) {
        support.match(
                newFooting -> post.choice("support", "new-footing", rest -> {}),
                driven -> post.choice("support", "driven", rest -> rest.put("depth", TextKind.LENGTH, driven.depth())),
                plate -> post.choice(
                        "support",
                        "slab-plate",
                        rest -> rest.put("slabThickness", TextKind.LENGTH, plate.slabThickness())
                                .put("edgeDistance", TextKind.LENGTH, plate.edgeDistance())),
                socket -> post.choice(
                        "support",
                        "core-socket",
                        rest -> rest.put("depth", TextKind.LENGTH, socket.depth())
                                .put("edgeDistance", TextKind.LENGTH, socket.edgeDistance())),
                wall -> post.choice("support", "wall-anchor", rest -> rest.put("of", Words.WALL, wall.of())),
                existing -> post.choice(
                        "support",
                        "existing",
                        rest -> rest.put("feel", Words.FEEL, existing.feel())
                                .objects(
                                        "tests",
                                        existing.tests(),
                                        (test, entries) -> entries.put("force", TextKind.FORCE, test.force())
                                                .put("at", TextKind.LENGTH, test.at())
                                                .put("low", TextKind.LENGTH, test.low())
                                                .put("movedLow", TextKind.LENGTH, test.movedLow())
                                                .put("high", TextKind.LENGTH, test.high())
                                                .put("movedHigh", TextKind.LENGTH, test.movedHigh())
                                                .put("leftOver", TextKind.LENGTH, test.leftOver()))));
    }
}
