package plumbleaf.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.takeoff.OtherWay;
import plumbleaf.engine.takeoff.StockTake;
import plumbleaf.engine.takeoff.Supplied;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.result.ResultFile;
import plumbleaf.jobfile.stock.CameTable;
import plumbleaf.jobfile.stock.OrderTables;
import plumbleaf.jobfile.stock.Taker;
import plumbleaf.jobfile.stock.Yard;

/** What is ordered from whom, and what comes out of the yard. */
@Command(
        name = "order",
        description = "Says what to order from whom, in units of sale, and what the yard has already.",
        mixinStandardHelpOptions = true)
final class OrderVerb implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The job file.")
    private Path file = Path.of("");

    @Option(names = "--csv", paramLabel = "FILE", description = "Write the order as a table, without prices.")
    private String csv = "";

    @Option(
            names = "--takeoff",
            paramLabel = "FILE",
            description = "Write every line with its waste, cost and reasons as a table, for the office.")
    private String takeoffFile = "";

    @Option(
            names = "--receiving",
            paramLabel = "FILE",
            description = "Write the table to count on at the tailgate, for plumbleaf yard --receive.")
    private String receiving = "";

    @Option(names = "--over", description = "Write over a file that is there.")
    private boolean over;

    @Mixin
    private YardDoor yard = new YardDoor();

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        YardDoor.Counted counted = yard.yard();
        Designed designed = Designed.from(file, counted);
        Takeoff takeoff = designed.design().quote().takeoff();
        if (!csv.isEmpty()) Written.text(Path.of(csv), OrderTables.order(takeoff), over);
        if (!takeoffFile.isEmpty()) Written.text(Path.of(takeoffFile), OrderTables.takeoff(takeoff), over);
        if (!receiving.isEmpty()) Written.text(Path.of(receiving), OrderTables.receiving(takeoff), over);
        answer.document(Json.object()
                .put("title", designed.design().job().title())
                .put("takeoff", Json.list(takeoff.lines(), ResultFile::takeoffLine))
                .build());
        DisplayUnits units = designed.design().job().display();
        boolean first = true;
        for (Supplied supplied : Supplied.of(takeoff)) {
            if (!first) answer.say("");
            first = false;
            answer.say(supplier(supplied, units));
        }
        Taker job = counted.taker(file, designed.design().job().title());
        answer.say(came(takeoff, job, counted.yard()));
        answer.say(otherWays(takeoff));
        answer.say(fromYard(takeoff, units));
        answer.say("Whole order about " + units.weight(takeoff.weight().pounds()) + ".");
        designed.warn(answer);
        return designed.exitCode();
    }

    private static List<String> supplier(Supplied supplied, DisplayUnits units) {
        List<String> out = new ArrayList<>();
        out.add(supplied.supplier());
        Columns columns = new Columns("rllllrl");
        for (TakeoffLine line : supplied.lines()) {
            columns.row(
                    Long.toString(line.units()),
                    line.sold().unit().key(),
                    line.sold().name(),
                    line.item(),
                    "for " + OrderTables.needs(line)
                            + (line.unusedShare() > 0.005 ? ", " + OrderTables.unused(line) + " not used" : ""),
                    units.weight(line.weight().pounds()),
                    need(line));
        }
        out.addAll(columns.lines(2));
        out.add("  about " + units.weight(supplied.weight().pounds()));
        return out;
    }

    /** What was received already, so that nobody orders it twice. */
    private static List<String> came(Takeoff takeoff, Taker job, Yard yard) {
        Columns columns = new Columns("rlll");
        boolean all = true;
        for (TakeoffLine line : CameTable.ordered(takeoff)) {
            String came = CameTable.came(line, job, yard);
            all &= CameTable.missing(line, job, yard) == 0;
            if (!came.isEmpty())
                columns.row(
                        Long.toString(line.units()),
                        line.sold().unit().key(),
                        line.sold().name(),
                        came);
        }
        if (columns.isEmpty()) return List.of();
        if (all) return List.of("", "All of this came already: do not order it again.");
        List<String> out = new ArrayList<>(List.of("", "Came already, do not order it again:"));
        out.addAll(columns.lines(2));
        return out;
    }

    /** The day it is needed by, or what for where nobody has set a day. */
    private static String need(TakeoffLine line) {
        if (line.need().work().isEmpty()) return "";
        String day = OrderTables.day(line);
        return day.isEmpty()
                ? line.need().work()
                : "by " + day + ", " + line.need().work();
    }

    /** Bags or ready-mix, box or pail: what the other way would cost, and from where it pays. */
    private static List<String> otherWays(Takeoff takeoff) {
        Columns columns = new Columns("ll");
        for (TakeoffLine line : takeoff.lines()) {
            for (OtherWay other : line.others()) {
                if (other.sold().unit() == line.sold().unit()) continue;
                String pays = other.cheaperFrom() > 0
                        ? "; pays from " + DecimalText.upTo(other.cheaperFrom(), 1) + " "
                                + other.sold().of().key()
                        : "";
                columns.row(
                        line.sold().name() + ", " + line.cost().text() + " for "
                                + DecimalText.upTo(line.net(), 1) + " "
                                + line.sold().of().key(),
                        "instead of " + other.units() + " "
                                + other.sold().unit().key() + " " + other.sold().name() + ", "
                                + other.cost().text() + pays);
            }
        }
        if (columns.isEmpty()) return List.of();
        List<String> out = new ArrayList<>(List.of("", "Cheaper this way:"));
        out.addAll(columns.lines(2));
        return out;
    }

    private static List<String> fromYard(Takeoff takeoff, DisplayUnits units) {
        if (takeoff.taken().isEmpty()) return List.of();
        List<String> out = new ArrayList<>(List.of("", "Out of the yard:"));
        Columns columns = new Columns("rll");
        for (StockTake take : takeoff.taken())
            columns.row(Integer.toString(take.count()), take.mark(), takeoff.nameOf(take, units));
        out.addAll(columns.lines(2));
        return out;
    }
}
