package plumbleaf.documents.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.documents.view.PostDetail;
import plumbleaf.engine.footing.BagSize;
import plumbleaf.engine.footing.ConcreteOrder;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Volume;
import plumbleaf.engine.schedule.PourDay;
import plumbleaf.engine.schedule.PourDays;
import plumbleaf.engine.takeoff.TakeoffLine;

/** Concrete by kind of hole and by day: net, with waste, in bags or by the truck; water, weather and the days before anything hangs. */
public final class ConcreteSheet {
    private static final BagSize BAG = BagSize.EIGHTY_POUND;

    /** A bag in a mixer or a barrow, with water: two people mix and place about so many an hour. Common practice, no source. */
    private static final double BAGS_AN_HOUR = 12;

    /** A truck's least load in most yards, cubic yards. Common practice, no source. */
    private static final double LEAST_TRUCK = 1;

    private ConcreteSheet() {}

    /** Only a job with a hole to fill has one. */
    public static boolean isFor(PacketSubject subject) {
        return subject.posts().stream().anyMatch(PostDetail::isDug);
    }

    public static Paper of(PacketSubject subject) {
        Paper.Builder paper = Paper.titled("Concrete order", subject.running()).flag(subject.flag());
        List<PostDetail> dug =
                subject.posts().stream().filter(PostDetail::isDug).toList();
        double waste = waste(subject);
        order(paper, subject, dug, waste);
        kinds(paper, subject, dug);
        days(paper, subject, dug, waste);
        paper.heading("On the day")
                .add(new Block.TickList(
                        List.of(
                                "Depth taped and written before the pour; loose soil out, gravel under the foot",
                                "Water by the bag, " + DecimalText.upTo(BAG.waterQuarts(), 1)
                                        + " quarts each: stiff enough to heap on the shovel; a slump of 3 to 5 in. from the truck (common practice, no source)",
                                "Hot, above 90\u00b0F: damp the hole, shade the bags, pour early (from memory, ACI 305)",
                                "Cold, below 40\u00b0F: no pour on frozen ground, cover two nights (from memory, ACI 306)",
                                "Crown the top so that water runs off; where soil heaves, stop it below grade, no wide lip",
                                "Brace; nothing hangs on a gate post for 3 days above 50\u00b0F, 7 below (common practice, no source)"),
                        false));
        paper.add(
                new Block.Caution(
                        "Wet concrete burns skin and eyes",
                        List.of(
                                "Gloves, boots, glasses; wash at once. Bags weigh "
                                        + DecimalText.whole(BAG.weight().pounds())
                                        + " lb: lift with two, or from the tailgate. Dust of dry mix is breathed out of the wind, with a mask.")));
        paper.add(new Block.Blank(List.of("Delivered, bags or yards", "Used", "Left over", "By, date"), 0.35));
        return paper.paper();
    }

    /** The share that the take-off counts for waste and over-break; a tenth where there is no take-off. */
    private static double waste(PacketSubject subject) {
        for (var takeoff : subject.takeoff())
            for (TakeoffLine line : takeoff.lines())
                if (line.item().equals("concrete") && line.net() > 0) return line.withWaste() / line.net() - 1;
        return 0.10;
    }

    private static void order(Paper.Builder paper, PacketSubject subject, List<PostDetail> dug, double waste) {
        ConcreteOrder order = ConcreteOrder.of(net(dug), waste, BAG);
        Table.Builder table =
                Table.with(Column.words("Order one of the two"), Column.right("How much"), Column.words("With it"));
        table.row(
                order.bags() + " bags of " + subject.units().weight(BAG.weight().pounds()),
                subject.units().weight(order.mixWeight().pounds()),
                DecimalText.fixed(order.waterGallons(), 0) + " gallons of water, about "
                        + DecimalText.fixed(Math.max(0.5, order.bags() / BAGS_AN_HOUR), 1) + " hours to mix for two");
        table.row(
                "Ready mix by the truck",
                DecimalText.fixed(order.readyMix(), 2) + " yd\u00b3",
                order.readyMix() < LEAST_TRUCK
                        ? "under a truck's least load: bags"
                        : "3000 psi, small stone; way in, chute and washout agreed");
        paper.add(table.table());
        paper.say("Net of the posts " + DecimalText.fixed(net(dug).cubicFeet(), 1) + " ft\u00b3, with "
                + DecimalText.fixed(waste * 100, 0) + " % for waste and holes that break wide "
                + DecimalText.fixed(order.placed().cubicFeet(), 1)
                + " ft\u00b3. Bags are rounded up once, here: a bag gives "
                + DecimalText.fixed(BAG.yield().cubicFeet(), 2) + " ft\u00b3.");
        StringBuilder said = new StringBuilder();
        for (var takeoff : subject.takeoff())
            for (TakeoffLine line : takeoff.lines()) {
                if (line.item().equals("concrete"))
                    said.append("The material order has ").append(ordered(line)).append(". ");
                if (line.item().equals("gravel"))
                    said.append("Gravel under the footings: ")
                            .append(ordered(line))
                            .append('.');
            }
        if (said.length() > 0) paper.add(Block.Paragraph.bold(said.toString().strip()));
    }

    /** As it is bought: {@code 40 bags of concrete mix}, or so many yards from the truck. */
    static String ordered(TakeoffLine line) {
        String unit = line.sold().unit().key();
        boolean plain = line.units() == 1 || unit.equals("each") || unit.equals("lb");
        String many = plain ? unit : unit + (unit.endsWith("x") ? "es" : "s");
        return line.units() + " " + many + " (" + line.sold().name() + ")";
    }

    private static Volume net(List<PostDetail> posts) {
        return Volume.cubicFeet(
                posts.stream().mapToDouble(post -> post.concrete().cubicFeet()).sum());
    }

    private static void kinds(Paper.Builder paper, PacketSubject subject, List<PostDetail> dug) {
        Map<String, List<PostDetail>> kinds = new LinkedHashMap<>();
        for (PostDetail post : dug)
            kinds.computeIfAbsent(
                            subject.inches(post.hole().inches()) + " x "
                                    + subject.inches(post.depth().inches()) + " round " + post.section() + "|"
                                    + DecimalText.fixed(post.concrete().cubicFeet(), 2),
                            key -> new ArrayList<>())
                    .add(post);
        Table.Builder table = Table.with(
                Column.words("Holes"),
                Column.right("Count"),
                Column.right("Each, ft\u00b3"),
                Column.right("Bags each"),
                Column.right("Together, ft\u00b3"));
        for (Map.Entry<String, List<PostDetail>> kind : kinds.entrySet()) {
            Volume each = kind.getValue().get(0).concrete();
            table.row(
                    kind.getKey().substring(0, kind.getKey().indexOf('|')),
                    Integer.toString(kind.getValue().size()),
                    DecimalText.fixed(each.cubicFeet(), 2),
                    quarters(each.cubicFeet() / BAG.yield().cubicFeet()),
                    DecimalText.fixed(net(kind.getValue()).cubicFeet(), 1));
        }
        table.total(
                "all, net of the posts",
                Integer.toString(dug.size()),
                "",
                "",
                DecimalText.fixed(net(dug).cubicFeet(), 1));
        paper.heading("By kind of hole").add(table.table());
    }

    /**
     * Where the bags go, day by day: gate posts first, for they cure before anything hangs on them. Shares of the whole, so they may be a bag or two more
     * together.
     */
    private static void days(Paper.Builder paper, PacketSubject subject, List<PostDetail> dug, double waste) {
        List<PourDay> days = PourDays.of(
                subject.schedule(),
                dug.stream()
                        .map(post -> new PourDays.Hole(
                                post.post().id(), !post.post().gate().isEmpty(), post.concrete()))
                        .toList());
        Table.Builder table = Table.with(
                Column.tick("Poured"),
                Column.left("Run"),
                Column.words("Posts"),
                Column.right("Holes"),
                Column.right("Net, ft\u00b3"),
                Column.right("Bags to bring"));
        for (PourDay day : days) {
            List<PostDetail> all = day.posts().stream().map(subject::post).toList();
            ConcreteOrder order = ConcreteOrder.of(net(all), waste, BAG);
            table.group("Day " + day.number()
                    + day.date().value().map(date -> ", " + date).orElse("") + ": "
                    + order.bags() + (order.bags() == 1 ? " bag or " : " bags or ")
                    + DecimalText.fixed(order.readyMix(), 2) + " yd\u00b3, "
                    + DecimalText.fixed(order.waterGallons(), 0)
                    + " gallons of water");
            for (RunLayout run : subject.layout().runs())
                for (boolean gate : new boolean[] {true, false}) row(table, run, gate, all, waste);
        }
        paper.heading("What is poured on which day").add(table.table());
        curing(subject).ifPresent(paper::say);
    }

    private static void row(Table.Builder table, RunLayout run, boolean gate, List<PostDetail> day, double waste) {
        List<PostDetail> here = day.stream()
                .filter(post -> post.post().run().equals(run.run())
                        && post.post().gate().isEmpty() != gate)
                .toList();
        if (here.isEmpty()) return;
        table.rowAbout(
                run.run(),
                "\u2610",
                run.run(),
                (gate ? "gate posts: " : "line: ") + PostWords.of(run, here),
                Integer.toString(here.size()),
                DecimalText.fixed(net(here).cubicFeet(), 1),
                Integer.toString(ConcreteOrder.of(net(here), waste, BAG).bags()));
    }

    /** Until when nothing hangs on a post. */
    private static Optional<String> curing(PacketSubject subject) {
        return subject.schedule().tasks().stream()
                .filter(task -> task.key().equals("cure"))
                .findFirst()
                .map(task -> "A hole is filled on the day it is dug. Concrete cures " + DecimalText.whole(task.days())
                        + " days"
                        + task.last().value().map(day -> ", through " + day).orElse("")
                        + "; nothing hangs on a post before.");
    }

    /** Up to the next quarter of a bag: {@code 2-3/4}. */
    static String quarters(double bags) {
        long quarters = (long) Math.ceil(bags * 4 - 1e-9);
        String part = List.of("", "1/4", "1/2", "3/4").get((int) (quarters % 4));
        long whole = quarters / 4;
        return part.isEmpty() ? Long.toString(whole) : whole == 0 ? part : whole + "-" + part;
    }
}
