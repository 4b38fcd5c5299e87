package plumbleaf.documents.packet;

import java.util.List;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.design.Checkpoint;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Working;
import plumbleaf.engine.strength.HeldPost;
import plumbleaf.engine.strength.PostStrength;

/** The posts in the calculation book: those that are alike in one row and worked out once, at the hardest worked of them. */
final class PostsCalculation {
    private PostsCalculation() {}

    /** Every kind of post in one table; then the hardest worked one of each with its numbers put in, and what the others use. */
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
        List<AlikePosts> groups = AlikePosts.of(subject.checked());
        for (AlikePosts group : groups) {
            PostDesign post = group.hardest();
            BaseAction action = post.check().governing().action();
            table.rowAbout(
                    post.id(),
                    group.words(),
                    post.section().name(),
                    post.check().governing().name(),
                    DecimalText.whole(GateCalculation.together(action)),
                    DecimalText.whole(StrictMath.hypot(
                            action.along().pounds(), action.across().pounds())),
                    AlikePosts.used(post),
                    post.footing().map(is -> inch1(is.depthNeeded().inches())).orElse("\u2013"),
                    post.depth().isZero()
                            ? "\u2013"
                            : subject.inches(post.depth().inches()),
                    post.depthBy());
        }
        paper.add(table.table());
        paper.note(
                "Posts of one section in holes of one size stand in one row, with the numbers of the hardest worked. Moments at grade, allowable-stress level. Used: the most of any check, wind counted whatever the basis. Needs: the deepest that binds on the job's basis; what code loads ask for beyond it stands below.");
        subject.checked().stream()
                .flatMap(post -> post.wind().stream())
                .findFirst()
                .ifPresent(work -> PostCalculation.velocity(
                        paper, work, subject.job().site().wind()));
        for (AlikePosts group : groups) {
            post(paper, subject, group);
            if (group.posts().size() > 1) {
                paper.say("The others of its kind, each with the most it uses of any check:");
                paper.add(group.others());
            }
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
        for (Working each : post.held().workings())
            paper.add(new Block.Worked(each.what(), each.clause(), each.where(), each.lines()));
    }

    private static int decimals(String unit) {
        return switch (unit) {
            case "in", "lb/in3" -> 2;
            case "rad" -> 5;
            default -> 0;
        };
    }

    private static void post(Paper.Builder paper, PacketSubject subject, AlikePosts group) {
        PostDesign post = group.hardest();
        boolean onWall = post.post()
                .support()
                .match(dug -> false, driven -> false, plate -> false, socket -> false, wall -> true, existing -> false);
        if (onWall) {
            paper.subheading(post.id() + ", on the wall");
            held(paper, post);
            return;
        }
        paper.subheading("Post " + group.words() + ", " + post.section().name()
                + (group.posts().size() > 1 ? ": " + post.id() + " works hardest" : ""));
        post.wind()
                .ifPresent(work -> PostCalculation.wind(
                        paper, post, work, subject.job().site().wind()));
        paper.add(new Block.Worked(
                "Strength at grade, " + post.check().governing().name(),
                PostStrength.of(post.section()).clause().words(),
                post.section()
                        .match(
                                steel ->
                                        "Mx tips it along the run, My across; L its height above grade; Mc, Vc and Tc as under Sections",
                                wood -> "M tips it along the run and across; L its height above grade"),
                post.atGrade()));
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
}
