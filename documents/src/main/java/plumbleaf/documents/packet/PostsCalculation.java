package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.design.Checkpoint;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.WoodPost;
import plumbleaf.engine.strength.HeldPost;
import plumbleaf.engine.strength.WoodPostStrength;

/** The posts in the calculation book: all in one table, then the hardest worked one of each section with its numbers put in. */
final class PostsCalculation {
    private PostsCalculation() {}

    /** Every post in one table; then the hardest worked one of each section with its formula. */
    static void add(Paper.Builder paper, PacketSubject subject) {
        if (subject.checked().isEmpty()) return;
        paper.heading("Posts and footings");
        Table.Builder table = Table.with(
                Column.left("Post"),
                Column.words("Section"),
                Column.words("Governs"),
                Column.right("Moment, lb-ft"),
                Column.right("Push, lb"),
                Column.right("Used"),
                Column.right("Needs"),
                Column.right("Dug"),
                Column.left("By"));
        for (PostDesign post : subject.checked()) {
            BaseAction action = post.check().governing().action();
            table.rowAbout(
                    post.id(),
                    post.id(),
                    post.section().name(),
                    post.check().governing().name(),
                    DecimalText.whole(GateCalculation.together(action)),
                    DecimalText.whole(StrictMath.hypot(
                            action.along().pounds(), action.across().pounds())),
                    post.utilisation() > 0 ? DecimalText.fixed(post.utilisation(), 2) : "not said",
                    post.footing().map(is -> inch1(is.depthNeeded().inches())).orElse("\u2013"),
                    post.depth().isZero()
                            ? "\u2013"
                            : subject.inches(post.depth().inches()),
                    post.depthBy());
        }
        paper.add(table.table());
        paper.note(
                "Moments at grade, allowable-stress level. Used: the most of any check, wind counted whatever the basis. Needs: the deepest that binds on the job's basis; what code loads ask for beyond it stands below.");
        subject.checked().stream()
                .flatMap(post -> post.wind().stream())
                .findFirst()
                .ifPresent(work -> PostCalculation.velocity(
                        paper, work, subject.job().site().wind()));
        List<String> shown = new ArrayList<>();
        List<PostDesign> hardest = new ArrayList<>(subject.checked());
        hardest.sort(
                Comparator.comparingDouble((PostDesign post) -> -post.check().utilisation())
                        .thenComparing(PostDesign::id));
        for (PostDesign post : hardest) {
            if (shown.contains(post.section().id()) && post.held().facts().isEmpty()) continue;
            shown.add(post.section().id());
            post(paper, subject, post);
        }
    }

    private static String inch1(double value) {
        return DecimalText.fixed(value, 1) + " in.";
    }

    /** What something else than a hole must do to hold it, number by number. */
    private static void held(Paper.Builder paper, PostDesign post) {
        if (post.held().facts().isEmpty()) return;
        Table.Builder table = Table.with(Column.words("What holds " + post.id()), Column.right("Value"));
        for (HeldPost.Fact fact : post.held().facts())
            table.row(fact.words(), DecimalText.upTo(fact.value(), decimals(fact.unit())) + " " + fact.unit());
        paper.add(table.table());
    }

    private static int decimals(String unit) {
        return switch (unit) {
            case "in", "lb/in3" -> 2;
            case "rad" -> 5;
            default -> 0;
        };
    }

    private static void post(Paper.Builder paper, PacketSubject subject, PostDesign post) {
        boolean onWall = post.post()
                .support()
                .match(dug -> false, driven -> false, plate -> false, socket -> false, wall -> true, existing -> false);
        if (onWall) {
            paper.subheading(post.id() + ", on the wall");
            held(paper, post);
            return;
        }
        BaseAction action = post.check().governing().action();
        double moment = GateCalculation.together(action) * 12;
        paper.subheading("Post " + post.id() + ", " + post.section().name() + ": the hardest worked of its section");
        post.wind()
                .ifPresent(work -> PostCalculation.wind(
                        paper, post, work, subject.job().site().wind()));
        paper.add(post.section().match(steel -> bending(post, steel, moment), wood -> bending(post, wood, moment)));
        Table.Builder needs = Table.with(Column.words("The hole must be as deep as"), Column.right("Needs"));
        post.footing().ifPresent(footing -> {
            for (var need : footing.needs())
                if (need.depth().inches() > 0.05)
                    needs.row(
                            need.cause().key()
                                    + need.lateral()
                                            .map(work -> ", " + work.worst().name())
                                            .orElse("")
                                    + (need.binds() ? "" : ", not binding on this basis"),
                            inch1(need.depth().inches()));
        });
        if (!needs.isEmpty()) {
            needs.total(
                    "dug, " + post.depthBy() + " governs",
                    subject.inches(post.depth().inches()));
            paper.add(needs.table());
        }
        PostCalculation.depths(paper, post, subject.job().site().soil().ibcClass());
        held(paper, post);
        StringBuilder checks = new StringBuilder();
        for (Checkpoint check : post.checks())
            checks.append(checks.length() == 0 ? "" : "; ")
                    .append(check.check())
                    .append(' ')
                    .append(DecimalText.fixed(check.utilisation(), 2));
        if (checks.length() > 0) paper.say("All checks of " + post.id() + ": " + checks + ".");
        post.rated().ifPresent(gust -> paper.say("Post and footing reach " + gust.words() + "."));
    }

    private static Block bending(PostDesign post, Section section, double moment) {
        double fy = section.yieldStress().inKsi();
        double z = section.zxIn3();
        double allowed = fy * 1000 * z / 1.67;
        return new Block.Formula(
                "Bending at grade, " + post.check().governing().name(),
                "AISC 360-22 F8 or F7, ASD, omega 1.67",
                "Ma = Fy Z / 1.67",
                DecimalText.fixed(fy, 0) + " ksi \u00d7 " + DecimalText.fixed(z, 3) + " in\u00b3 / 1.67 = "
                        + DecimalText.whole(allowed) + " lb-in; demand " + DecimalText.whole(moment) + " lb-in",
                "M / Ma = " + DecimalText.fixed(moment / allowed, 2) + " by moment alone; "
                        + DecimalText.fixed(post.check().utilisation(), 2)
                        + " with axial, shear and torsion as the clause adds them");
    }

    private static Block bending(PostDesign post, WoodPost wood, double moment) {
        double s = Math.min(wood.sxIn3(), wood.syIn3());
        double duration = WoodPostStrength.duration(post.check().governing().combination());
        double psi = WoodPostStrength.of(wood).bending().psi() * duration;
        return new Block.Formula(
                "Bending at grade, " + post.check().governing().name(),
                "NDS 2018 4.3 and 6.3, wet service, size, incising or steaming, duration "
                        + DecimalText.upTo(duration, 2),
                "Ma = Fb' S",
                DecimalText.whole(psi) + " psi \u00d7 " + DecimalText.fixed(s, 2) + " in\u00b3 = "
                        + DecimalText.whole(psi * s) + " lb-in; demand " + DecimalText.whole(moment) + " lb-in",
                "Used " + DecimalText.fixed(post.check().utilisation(), 2)
                        + " with weight, both ways of bending and shear as the clauses add them");
    }
}
