package plumbleaf.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.design.TradeNames;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.MetricWords;
import plumbleaf.engine.quantity.Parsed;
import plumbleaf.engine.quantity.QuantityText;
import plumbleaf.engine.takeoff.LoadList;
import plumbleaf.engine.takeoff.Truck;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.stock.OrderTables;

/** What goes on the truck on which day, held against what the truck carries. */
@Command(
        name = "load",
        description = "Says what goes on the truck on which day, and whether the truck carries it.",
        mixinStandardHelpOptions = true)
final class LoadVerb implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The job file.")
    private Path file = Path.of("");

    @Option(
            names = "--payload",
            paramLabel = "WEIGHT",
            description = "What the truck takes. Default: as the house table says.")
    private String payload = "";

    @Option(names = "--bed", paramLabel = "LENGTH", description = "Bed or rack. Default: as the house table says.")
    private String bed = "";

    @Option(names = "--overhang", paramLabel = "LENGTH", description = "Beyond it. Default: as the house table says.")
    private String overhang = "";

    @Option(names = "--csv", paramLabel = "FILE", description = "Write it as a table, with columns to tick.")
    private String csv = "";

    @Option(names = "--over", description = "Write over a file that is there.")
    private boolean over;

    @Mixin
    private YardDoor yard = new YardDoor();

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        Designed designed = Designed.from(file, yard.yard());
        LoadList list = on(designed.design().quote().load());
        if (!csv.isEmpty()) Written.text(Path.of(csv), OrderTables.load(list), over);
        answer.document(Json.object()
                .put("title", designed.design().job().title())
                .put("loads", list.loads(), LoadVerb::json)
                .put("cautions", Json.list(list.findings(), finding -> Json.text(finding.message())))
                .build());
        DisplayUnits units = designed.design().job().display();
        MetricWords metric = TradeNames.metric(designed.design());
        for (LoadList.Load load : list.loads()) answer.say(lines(load, units));
        for (Finding finding : list.findings())
            answer.say(units.said(
                    "Caution: " + finding.message() + " (" + finding.basis().words() + ")", metric));
        designed.warn(answer);
        return designed.exitCode();
    }

    /** The same loads on the truck that the options describe; what they leave out is the house's. */
    private LoadList on(LoadList list) {
        if (payload.isEmpty() && bed.isEmpty() && overhang.isEmpty()) return list;
        Truck house = list.truck();
        return new LoadList(
                list.loads(),
                Truck.of(
                        payload.isEmpty() ? house.payload() : read("--payload", payload, QuantityText.force(payload)),
                        bed.isEmpty() ? house.bed() : read("--bed", bed, LengthText.length(bed)),
                        overhang.isEmpty()
                                ? house.overhang()
                                : read("--overhang", overhang, LengthText.length(overhang))));
    }

    private static <T> T read(String option, String text, Parsed<T> parsed) {
        return parsed.match(good -> good.is(), refused -> {
            throw BadInput.of(
                    "plumbleaf load", option + " " + text + " cannot be read: " + refused.problem(), refused.cure());
        });
    }

    private static Node json(LoadList.Load load) {
        return Json.object()
                .put("day", load.stage().key())
                .put("weightLb", load.weight().pounds())
                .put("longestIn", load.longest().inches())
                .put(
                        "lines",
                        load.lines(),
                        line -> Json.object()
                                .put("item", line.item())
                                .put("what", line.what())
                                .put("count", Json.count(line.count()))
                                .put("unit", line.unit())
                                .put("weightLb", line.weight().pounds())
                                .put("longestIn", line.longest().inches())
                                .build())
                .build();
    }

    private static List<String> lines(LoadList.Load load, DisplayUnits units) {
        List<String> out = new ArrayList<>();
        out.add(load.stage().key() + ": about "
                + units.weight(load.weight().pounds())
                + (load.longest().isZero() ? "" : ", longest " + units.length(load.longest()))
                + ", in the order it is used");
        Columns columns = new Columns("rlllr");
        for (LoadList.LoadLine line : load.lines())
            columns.row(
                    Long.toString(line.count()),
                    line.unit(),
                    line.what() + (LoadList.isHeavy(line) ? ", two people" : ""),
                    line.longest().isZero() ? "" : units.length(line.longest()),
                    units.weight(line.weight().pounds()));
        out.addAll(columns.lines(2));
        out.add("  not in the truck by habit: " + String.join("; ", load.stage().tools()));
        out.add("");
        return out;
    }
}
