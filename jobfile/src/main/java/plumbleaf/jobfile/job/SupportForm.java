package plumbleaf.jobfile.job;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.support.Anchors;
import plumbleaf.engine.support.BasePlate;
import plumbleaf.engine.support.Bell;
import plumbleaf.engine.support.PostFeel;
import plumbleaf.engine.support.PullTest;
import plumbleaf.engine.support.Slab;
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
            case "driven" -> new Support.Driven(fields.assumed("depth", Words.DEPTH, Length.feet(3), Words.CUSTOM));
            case "slab-plate" -> new Support.SlabPlate(slab(fields), plate(fields), anchors(fields));
            case "core-socket" -> socket(fields);
            case "wall-anchor" -> wall(fields);
            case "existing" -> existing(fields);
            case "new-footing" -> footing(fields);
            default -> new Support.NewFooting();
        };
    }

    private static Support footing(Fields fields) {
        Fields bell = fields.object("bell");
        return new Support.NewFooting(
                fields.has("bell")
                        ? new Bell(
                                bell.needed("diameter", Words.HOLE, Length.ZERO),
                                bell.needed("height", Words.HOLE, Length.ZERO))
                        : Bell.NONE,
                fields.flag("sleeve"),
                fields.flag("slabAtGrade"));
    }

    /** Through the concrete where nobody says how deep; nothing holds it below that. */
    private static Support socket(Fields fields) {
        Slab slab = slab(fields);
        Length usual = Support.CoreSocket.usualDepth(slab.thickness());
        return new Support.CoreSocket(fields.assumed("depth", Words.DEPTH, usual, Words.CUSTOM), slab);
    }

    private static Slab slab(Fields fields) {
        return new Slab(
                fields.assumed("slabThickness", Words.HOLE, Length.inches(4), "judgement; drill and measure"),
                fields.assumed("edgeDistance", Words.ASIDE, Length.inches(4), "judgement; measure it"),
                fields.given("slabLength", Words.LEG).orElse(Length.ZERO),
                fields.given("slabWidth", Words.LEG).orElse(Length.ZERO),
                fields.assumed("concrete", TextKind.STRESS, Slab.USUAL_STRENGTH, Words.JUDGED));
    }

    private static BasePlate plate(Fields fields) {
        BasePlate usual = BasePlate.USUAL;
        Length side = fields.assumed("plate", Words.SPACE, usual.side(), Words.CUSTOM);
        Length thick = fields.assumed("plateThickness", Words.SPACE, usual.thickness(), Words.CUSTOM);
        Length edge = fields.assumed("anchorInset", Words.SPACE, usual.anchorEdge(), Words.CUSTOM);
        if (2 * edge.inches() >= side.inches()) {
            fields.refuse("anchorInset", "leaves no plate between the anchors", "write less than half of the plate");
            return usual;
        }
        return new BasePlate(side, thick, edge);
    }

    /** What the maker's sheet says; left out it stays unknown, and nothing passes on it. */
    private static Anchors anchors(Fields fields) {
        Anchors usual = Anchors.USUAL;
        return new Anchors(
                fields.assumed("anchorDiameter", Words.SPACE, usual.diameter(), Words.CUSTOM),
                fields.assumed("anchorDepth", Words.SPACE, usual.embedment(), Words.CUSTOM),
                fields.given("anchorPull", TextKind.FORCE).orElse(Force.ZERO),
                fields.given("anchorPush", TextKind.FORCE).orElse(Force.ZERO));
    }

    private static Support wall(Fields fields) {
        return new Support.WallAnchor(
                fields.assumed("of", Words.WALL, WallKind.BLOCK, "judgement; look"),
                anchors(fields),
                fields.assumedCount("perHinge", 1, 12, 4, Words.CUSTOM),
                fields.given("edgeDistance", Words.ASIDE).orElse(Length.ZERO));
    }

    private static Support existing(Fields fields) {
        List<PullTest> tests = new ArrayList<>();
        for (Fields test : fields.objects("tests")) tests.add(PullForm.read(test));
        return new Support.Existing(
                fields.assumed("feel", Words.FEEL, PostFeel.UNKNOWN, "not tried"),
                fields.given("depth", Words.DEPTH).orElse(Length.ZERO),
                fields.given("plug", Words.HOLE).orElse(Length.ZERO),
                fields.given("girth", Words.HOLE).orElse(Length.ZERO),
                tests);
    }

    static void write(Support support, Entries post) {
        support.match(
                newFooting -> post.choice("support", "new-footing", rest -> {
                    if (!newFooting.bell().isNone())
                        rest.object(
                                "bell",
                                bell -> bell.put(
                                                "diameter",
                                                TextKind.LENGTH,
                                                newFooting.bell().diameter())
                                        .put(
                                                "height",
                                                TextKind.LENGTH,
                                                newFooting.bell().height()));
                    rest.flag("sleeve", newFooting.sleeve()).flag("slabAtGrade", newFooting.slabAtGrade());
                }),
                driven -> post.choice("support", "driven", rest -> rest.put("depth", TextKind.LENGTH, driven.depth())),
                plate -> post.choice("support", "slab-plate", rest -> {
                    slab(plate.slab(), rest);
                    rest.put("plate", TextKind.LENGTH, plate.plate().side())
                            .put(
                                    "plateThickness",
                                    TextKind.LENGTH,
                                    plate.plate().thickness())
                            .put("anchorInset", TextKind.LENGTH, plate.plate().anchorEdge());
                    anchors(plate.anchors(), rest);
                }),
                socket -> post.choice("support", "core-socket", rest -> {
                    rest.put("depth", TextKind.LENGTH, socket.depth());
                    slab(socket.slab(), rest);
                }),
                wall -> post.choice("support", "wall-anchor", rest -> {
                    rest.put("of", Words.WALL, wall.of());
                    anchors(wall.anchors(), rest);
                    rest.count("perHinge", wall.perHinge());
                    said("edgeDistance", wall.edge(), rest);
                }),
                existing -> post.choice("support", "existing", rest -> {
                    rest.put("feel", Words.FEEL, existing.feel());
                    said("depth", existing.embedment(), rest);
                    said("plug", existing.plug(), rest);
                    said("girth", existing.girth(), rest);
                    rest.objects("tests", existing.tests(), PullForm::write);
                }));
    }

    private static void slab(Slab slab, Entries rest) {
        rest.put("slabThickness", TextKind.LENGTH, slab.thickness()).put("edgeDistance", TextKind.LENGTH, slab.edge());
        said("slabLength", slab.length(), rest);
        said("slabWidth", slab.width(), rest);
        rest.put("concrete", TextKind.STRESS, slab.strength());
    }

    private static void anchors(Anchors anchors, Entries rest) {
        rest.put("anchorDiameter", TextKind.LENGTH, anchors.diameter())
                .put("anchorDepth", TextKind.LENGTH, anchors.embedment());
        if (!anchors.tension().isZero()) rest.put("anchorPull", TextKind.FORCE, anchors.tension());
        if (!anchors.shear().isZero()) rest.put("anchorPush", TextKind.FORCE, anchors.shear());
    }

    /** Nothing is written where nobody measured. */
    private static void said(String key, Length size, Entries rest) {
        if (!size.isZero()) rest.put(key, TextKind.LENGTH, size);
    }
}
