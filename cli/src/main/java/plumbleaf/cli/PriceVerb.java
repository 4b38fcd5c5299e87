package plumbleaf.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.design.Offered;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.KeptPrices;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.NodePath;
import plumbleaf.jobfile.offer.Together;
import plumbleaf.jobfile.result.ResultFile;

/** The price of a job, line by line. */
@Command(
        name = "price",
        description = "Says what a job costs, line by line, and how cost becomes price.",
        mixinStandardHelpOptions = true)
final class PriceVerb implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The job file.")
    private Path file = Path.of("");

    @Option(
            names = "--keep",
            paramLabel = "JOB",
            description = "Write the job with the prices it is quoted at, so that later prices do not move it.")
    private String keep = "";

    @Option(
            names = "--today",
            description = "Price it from the book as it stands today, whatever prices the job keeps.")
    private boolean today;

    @Option(
            names = "--with",
            split = ",",
            paramLabel = "OPTION",
            description = "What these options come to together, as one design: --with O1,O2.")
    private List<String> with = new ArrayList<>();

    @Option(
            names = "--ways",
            description = "Also price each run racked, stepped and level top, and with its posts nearer together.")
    private boolean ways;

    @Option(names = "--over", description = "Write over a file that is there.")
    private boolean over;

    @Mixin
    private HouseStyles styles = new HouseStyles();

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        Designed kept = Designed.from(file, styles);
        PriceBook now = Books.named(file, kept.design().job().money().priceBook());
        Designed designed = today ? kept.pricedFrom(now) : kept;
        Price price = designed.design().quote().price();
        List<Offered> offered = designed.offered();
        if (!keep.isEmpty()) writeKept(designed.book(), price);
        Together together = designed.together(with);
        Json.Members out = Json.object()
                .put("title", designed.design().job().title())
                .put("priceBook", designed.design().job().money().priceBook())
                .put("money", ResultFile.money(price))
                .put("options", offered, ResultFile::offered);
        if (!with.isEmpty()) out.put("together", ResultFile.together(together));
        answer.document(out.build());
        answer.say(PriceText.lines(price));
        answer.say(PriceText.options(offered));
        if (!with.isEmpty()) answer.say(PriceText.together(together));
        answer.say(moved(kept, now));
        if (!keep.isEmpty()) answer.say("Wrote " + keep + ", with its prices kept.");
        if (ways) {
            answer.say(PriceText.fits(designed.fits()));
            answer.say(PriceText.spacings(
                    designed.spacings(), designed.design().job().display()));
        }
        designed.warn(answer);
        return designed.exitCode();
    }

    private void writeKept(PriceBook book, Price price) {
        Node tree = JobDoor.tree(file, styles.catalogueOf(file));
        Node prices = Json.list(
                KeptPrices.of(book, price),
                each -> Json.object()
                        .put("of", each.of())
                        .put("price", each.value().toPlainString())
                        .build());
        Written.text(Path.of(keep), JsonWriter.write(NodePath.of("money.kept").set(tree, prices)), over);
    }

    /** Where the book has moved on since the job was quoted: from what to what, and what it would make of the total. */
    private List<String> moved(Designed kept, PriceBook now) {
        List<KeptPrices.Moved> moved =
                KeptPrices.moved(now, kept.design().job().money().kept());
        if (moved.isEmpty()) return List.of();
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("The book has moved since this job was quoted:");
        Columns columns = new Columns("lrr");
        for (KeptPrices.Moved price : moved)
            columns.row(price.of(), price.was().toPlainString(), price.now().toPlainString());
        lines.addAll(columns.lines(2));
        Money was = kept.design().quote().price().total();
        Money is = kept.pricedFrom(now).design().quote().price().total();
        lines.add("Quoted " + was.text() + "; today " + is.text() + " ("
                + is.minus(was).signedText() + "). --today --keep takes the new prices.");
        return lines;
    }
}
