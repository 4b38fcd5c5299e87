package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.documents.view.PostDetail;
import plumbleaf.engine.design.PairDesign;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.gate.AsSetFit;
import plumbleaf.engine.gate.LeafWeight;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.job.Arrival;
import plumbleaf.engine.job.NoDig;
import plumbleaf.engine.job.Run;
import plumbleaf.engine.job.Site;
import plumbleaf.engine.job.Use;
import plumbleaf.engine.labour.Labour;
import plumbleaf.engine.labour.Phase;
import plumbleaf.engine.quantity.DecimalText;

/** One page for the crew: where, what first, what to check with which number, what can hurt, what must be shut tonight. No prices. */
public final class CrewSheet {
    /** Above this two people do not lift a leaf: 75 lb each. Common practice, no source. */
    private static final double TWO_LIFT_LB = 150;

    private CrewSheet() {}

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper = Paper.titled("Crew sheet", subject.running()).flag(subject.flag());
        paper.say(subject.job().site().customer() + ", " + subject.job().site().address() + ".");
        arrival(subject.job().site()).ifPresent(paper::say);
        paper.add(new Block.Caution("For this job", cautions(subject)));
        paper.heading("In this order").add(new Block.TickList(steps(subject), true));
        Table.Builder checks = Table.with(
                Column.tick("Done"), Column.words("Check"), Column.right("Should be"), Column.right("Stop, call at"));
        for (GatePaper gate : subject.gates()) gate(checks, subject, gate);
        for (SlidePaper gate : subject.slides()) slide(checks, subject, gate);
        if (!checks.isEmpty()) paper.heading("Numbers to hold").add(checks.table());
        List<String> notes = new ArrayList<>();
        if (!subject.job().notes().isEmpty())
            notes.add(String.join(" ", subject.job().notes()));
        notes.add("Photos before you fill: every hole with a tape in it, every odd thing found.");
        notes.add("Who decides changes: the office. Nothing extra without a signed change.");
        if (subject.job().site().uses().contains(Use.POOL))
            notes.add("The pool barrier is never left open overnight: temporary fence before you go.");
        else notes.add("Nothing open overnight: fence off holes and the opening before you go.");
        paper.heading("Before you leave").add(new Block.TickList(notes, false));
        return paper.paper();
    }

    /** Whom to call, where to park, whom to shut in: what was said on site. */
    private static Optional<String> arrival(Site site) {
        List<String> said = new ArrayList<>();
        Arrival arrival = site.access().arrival();
        if (!site.phone().isEmpty()) said.add("Phone " + site.phone() + ".");
        if (!arrival.parking().isEmpty()) said.add("Parking: " + arrival.parking() + ".");
        if (!arrival.dogs().isEmpty()) said.add("Dogs: " + arrival.dogs() + ".");
        if (!arrival.services().isEmpty()) said.add("Power and water: " + arrival.services() + ".");
        return said.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", said));
    }

    private static List<String> cautions(PacketSubject subject) {
        List<String> cautions = new ArrayList<>(subject.tickets());
        for (var line : subject.job().existing().lines())
            cautions.add(capital(line.kind()) + " at "
                    + subject.length(line.station().inches()) + " on run " + line.run() + ": by hand within "
                    + subject.length(line.byHand().inches()) + ".");
        for (Run run : subject.job().runs())
            for (NoDig keepOff : run.noDig())
                cautions.add("No hole from " + subject.length(keepOff.from().inches()) + " to "
                        + subject.length(keepOff.to().inches()) + " on run " + run.id() + ": "
                        + keepOff.words(subject.job().existing()) + ".");
        for (GatePaper gate : subject.gates()) cautions.add(weight(gate));
        for (SlidePaper gate : subject.slides())
            cautions.add(
                    "Leaf " + gate.leaf().id() + " weighs "
                            + DecimalText.whole(gate.leaf().weight().wet().pounds())
                            + " lb and falls over off its rollers: a machine lifts it, props on both sides until rollers and stops are bolted.");
        cautions.add("Zinc fume from welding or grinding makes you ill: strip the zinc first, fresh air."
                + (ConcreteSheet.isFor(subject) ? " Wet concrete burns." : ""));
        return cautions;
    }

    /** Leaves of a pair are handled alike: as the heavier one asks. */
    private static String weight(GatePaper gate) {
        List<String> each = new ArrayList<>();
        double most = 0;
        for (GatePaper leaf : gate.leaves()) {
            double pounds = leaf.leaf().weight().wet().pounds();
            most = Math.max(most, pounds);
            each.add(leaf.mark() + (gate.isPair() ? " " : " weighs ") + DecimalText.whole(pounds) + " lb");
        }
        return (gate.isPair() ? "Leaves " : "Leaf ") + String.join(", ", each) + ": "
                + (most > TWO_LIFT_LB
                        ? "use a hoist or a lift, nobody under it; blocks in until hinges are tight."
                        : most > LeafWeight.ONE_PERSON.pounds()
                                ? "two lift, one guides; blocks stay in until the hinges are tight."
                                : "block it before the pins go in; fingers out of the hinge gap.");
    }

    private static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    private static List<String> steps(PacketSubject subject) {
        List<String> steps = new ArrayList<>();
        boolean dug = subject.posts().stream().anyMatch(PostDetail::isDug);
        if (subject.checked().stream().anyMatch(post -> !isOld(post)))
            steps.add("Stake from station 0, string the tops" + hours(subject, Phase.SET)
                    + ". Look along it before you " + (dug ? "dig." : "set a post."));
        if (dug)
            steps.add(
                    "Dig to the depth on the post schedule. First post, once it has set: pull 50 to 100 lb by hand scale, read the lean.");
        if (subject.posts().stream()
                .anyMatch(post -> post.isDug() && !post.post().gate().isEmpty()))
            steps.add(
                    "Set gate posts face to face, plumb both ways, braced; 3 days above 50\u00b0F (common practice, no source).");
        for (PostDesign post : subject.checked()) held(post).ifPresent(steps::add);
        for (GatePaper gate : subject.gates())
            steps.add("Gate " + gate.id() + ": phone in the opening, top, middle, bottom. "
                    + gate.subject().plan().sentence() + ".");
        if (subject.layout().runs().stream().anyMatch(run -> !run.bays().isEmpty()))
            steps.add(String.join(" ", FenceSteps.of(subject.layout())) + hours(subject, Phase.BUILD) + ".");
        List<GatePaper> gates = subject.gates();
        for (int at = 0; at < gates.size(); at++)
            hang(steps, subject, gates.get(at), at == 0 ? hangHours(subject) : "");
        for (GatePaper gate : subject.gates()) gate.pair().ifPresent(pair -> meeting(steps, subject, gate, pair));
        for (SlidePaper gate : subject.slides()) steps.addAll(SlideSteps.setting(subject, gate));
        return steps;
    }

    private static void slide(Table.Builder checks, PacketSubject subject, SlidePaper gate) {
        String id = "Gate " + gate.id() + ": ";
        String tick = "\u2610";
        checks.rowAbout(
                gate.id(),
                tick,
                id + "clear opening, three times",
                subject.length(gate.subject().plan().shape().opening().inches()),
                subject.within(4) + " off");
        checks.rowAbout(
                gate.id(),
                tick,
                id + "between the roller posts, center to center",
                subject.length(gate.subject().plan().shape().spacing().inches()),
                subject.within(4) + " off");
        checks.rowAbout(
                gate.id(),
                tick,
                id + "least over the ground, along its whole way",
                subject.room(gate.subject().plan().travel().least().inches()),
                subject.room(gate.subject().plan().travel().running().inches()));
        gate.carried()
                .ifPresent(carried -> checks.rowAbout(
                        gate.id(),
                        tick,
                        id + "hand scale on the nose, moving, level",
                        DecimalText.whole(carried.rolling().pounds()) + " lb",
                        DecimalText.whole(2 * carried.rolling().pounds()) + " lb"));
    }

    private static List<GatePaper> leaves(PacketSubject subject) {
        return subject.gates().stream().flatMap(gate -> gate.leaves().stream()).toList();
    }

    /** The sleeve is marked from the hung leaf, never from the plan: the rod must drop in by itself. */
    private static void meeting(List<String> steps, PacketSubject subject, GatePaper gate, PairDesign pair) {
        steps.add("Pair " + gate.id() + ": close both leaves, square their tops, drop the "
                + pair.rod().rod().name() + " and mark its sleeve from it. Dig "
                + subject.inches(pair.sleeve().diameter().inches()) + " by "
                + subject.inches(pair.sleeve().depth().inches()) + " over gravel, set the sleeve "
                + (pair.asked().sleeveAbove().isZero()
                        ? "flush"
                        : subject.inches(pair.asked().sleeveAbove().inches()) + " above the ground")
                + ", rod in it, and let it cure before the wind gets the gate."
                + (pair.asked().hasStop()
                        ? " Center stop " + subject.inches(pair.asked().stop().inches()) + " high."
                        : "")
                + " The " + pair.active().key() + " leaf opens first and closes last.");
    }

    private static boolean isOld(PostDesign post) {
        return post.post()
                .support()
                .match(footing -> false, driven -> false, plate -> false, core -> false, wall -> false, old -> true);
    }

    /** How a post is set that nobody digs for. */
    private static Optional<String> held(PostDesign post) {
        String id = post.id();
        return post.post()
                .support()
                .match(
                        footing -> footing.sleeve() || !footing.bell().isNone()
                                ? Optional.of("Post " + id + ":"
                                        + (footing.bell().isNone() ? "" : " bell the foot of its hole out below frost;")
                                        + (footing.sleeve() ? " smooth sleeve down to the frost line;" : "")
                                        + " no wide top.")
                                : Optional.empty(),
                        driven ->
                                Optional.of("Post " + id + ": drive it, plumb both ways; stop and call if it refuses."),
                        plate -> Optional.of(
                                "Post " + id
                                        + ": drill, blow the holes clean, set the anchors to their maker's torque; shim and grout the plate full."),
                        socket -> Optional.of(
                                "Post " + id
                                        + ": core, roughen and clean the socket, set and brace the post, grout full; no load before its maker's days."),
                        wall -> post.held().facts().stream()
                                        .noneMatch(fact -> fact.key().equals("hingePullByHandLb"))
                                ? Optional.empty()
                                : Optional.of(
                                        "Hinges at " + id
                                                + ": anchors into solid wall or blocking only, to their maker's torque; call if one spins."),
                        existing -> Optional.of(
                                "Post " + id
                                        + ": pull it again before hanging (50 to 100 lb by hand scale); more than a tenth left over, stop and call."));
    }

    /** Both leaves of a pair in one step, each with its own numbers where they differ. */
    private static void hang(List<String> steps, PacketSubject subject, GatePaper gate, String hours) {
        List<String> pins = new ArrayList<>();
        List<String> blocks = new ArrayList<>();
        for (GatePaper leaf : gate.leaves()) {
            pins.add(leaf.leaf().pins().stream()
                    .map(pin -> subject.length(pin.z().inches()))
                    .reduce((one, other) -> one + " and " + other)
                    .orElse(""));
            for (GatePaper.Hangs hangs : leaf.hangs())
                blocks.add(subject.length(hangs.sag().hangAllowance().inches())
                        + (gate.isPair() ? " (" + leaf.mark() + ")" : ""));
        }
        String block = blocks.isEmpty() ? "" : " Block the latch corner " + String.join(", ", blocks) + " high.";
        boolean alike = pins.stream().distinct().count() == 1;
        String at = alike
                ? "pins at " + pins.get(0)
                : "pins of " + gate.leaves().get(0).mark() + " at " + pins.get(0) + ", of "
                        + gate.leaves().get(1).mark() + " at " + pins.get(1);
        String what = String.join(
                ", then ", gate.leaves().stream().map(GatePaper::mark).toList());
        steps.add("Hang " + what + hours + ": " + at + " above grade at the hinge." + block
                + " Pull the blocks, read the drop, set the latch last.");
    }

    /** The hours count every leaf of the job, so they are said once. */
    private static String hangHours(PacketSubject subject) {
        int leaves = leaves(subject).size();
        String hours = hours(subject, Phase.HANG);
        if (leaves < 2) return hours;
        return hours.replace(
                "man-hours)", leaves == 2 ? "man-hours for both)" : "man-hours for all " + leaves + " leaves)");
    }

    private static String hours(PacketSubject subject, Phase phase) {
        for (Labour labour : subject.labour()) {
            double hours = labour.hours(phase);
            if (hours > 0.05) return " (" + DecimalText.fixed(hours, 1) + " man-hours)";
        }
        return "";
    }

    private static void gate(Table.Builder checks, PacketSubject subject, GatePaper gate) {
        String id = "Gate " + gate.id() + ": ";
        checks.rowAbout(
                gate.id(),
                "\u2610",
                id + "clear opening, three times",
                subject.length(gate.subject().plan().opening().clear().inches()),
                subject.within(4) + " off");
        checks.rowAbout(
                gate.id(),
                "\u2610",
                id + (gate.isPair() ? "gap at the hinges / between the leaves" : "gap at the hinges / at the latch"),
                subject.inches(gate.asked().leaf().hingeGap().inches()) + " / "
                        + subject.inches(gate.asked().leaf().latchGap().inches()),
                subject.within(2) + " off");
        checks.rowAbout(
                gate.id(),
                "\u2610",
                id + "under the leaf at the hinge, closed",
                subject.inches(gate.asked().leaf().bottomGap().inches()),
                subject.within(8) + " off");
        drops(checks, subject, gate, id);
        rooms(checks, subject, gate, id);
        for (AsSetFit fit : gate.subject().plan().fits()) packers(checks, subject, gate, fit, id);
        if (gate.isPair())
            checks.rowAbout(
                    gate.id(),
                    "\u2610",
                    id + "tops of both leaves where they meet",
                    "level",
                    subject.within(4) + " off");
        gate.pair()
                .ifPresent(pair -> checks.rowAbout(
                        gate.id(),
                        "\u2610",
                        id + "rod free between its guide and the sleeve",
                        subject.inches(pair.rod().exposed().inches()),
                        subject.inches(pair.rod().exposed().inches() + 0.5) + " or more"));
        checks.rowAbout(
                gate.leaf().id(),
                "\u2610",
                id + "latch meets over its whole reach, slack taken up",
                "no lift by hand",
                "any");
    }

    /** What goes under each hinge so that the pins stand plumb on a post that does not. */
    private static void packers(Table.Builder checks, PacketSubject subject, GatePaper gate, AsSetFit fit, String id) {
        for (AsSetFit.Packer packer : fit.packers()) {
            double over = packer.inside().inches();
            String side = Math.abs(over) < 1.0 / 32
                    ? ""
                    : ", set over " + subject.inches(Math.abs(over)) + (over > 0 ? " inside" : " outside");
            checks.rowAbout(
                    gate.id(),
                    "\u2610",
                    id + "packer under hinge " + packer.hinge(),
                    subject.inches(packer.along().inches()) + side,
                    "pins not plumb");
        }
    }

    /** Both leaves of a pair on one line. */
    private static void drops(Table.Builder checks, PacketSubject subject, GatePaper gate, String id) {
        List<String> of = new ArrayList<>();
        List<String> should = new ArrayList<>();
        List<String> stop = new ArrayList<>();
        for (GatePaper leaf : gate.leaves())
            for (GatePaper.Hangs hangs : leaf.hangs()) {
                double drop = hangs.sag().hangAllowance().inches();
                of.add(leaf.mark());
                should.add(subject.inches(drop));
                stop.add(subject.inches(Math.max(2 * drop, 0.125)));
            }
        if (of.isEmpty()) return;
        checks.rowAbout(
                gate.id(),
                "\u2610",
                id + "drop at the latch when the blocks go" + (gate.isPair() ? ", " + String.join(" / ", of) : ""),
                String.join(" / ", should),
                String.join(" / ", stop));
    }

    private static void rooms(Table.Builder checks, PacketSubject subject, GatePaper gate, String id) {
        List<String> where = new ArrayList<>();
        List<String> should = new ArrayList<>();
        for (GatePaper leaf : gate.leaves()) {
            Swing swing = leaf.subject().swing();
            double degrees = swing.running().atAngle().inDegrees();
            where.add((gate.isPair() ? leaf.mark() + " " : "")
                    + (degrees < 0.5 ? "closed" : DecimalText.fixed(degrees, 0) + "\u00b0 open"));
            should.add(subject.room(swing.running().clear().inches()));
        }
        checks.rowAbout(
                gate.id(),
                "\u2610",
                id + "least room, less drop and later ground, " + String.join(" / ", where),
                String.join(" / ", should),
                "it touches");
    }
}
