package plumbleaf.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.pricing.Price;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.result.ResultFile;

/** The price of a job, line by line. */
@Command(
        name = "price",
        description = "Says what a job costs, line by line, and how cost becomes price.",
        mixinStandardHelpOptions = true)
final class PriceVerb implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The job file.")
    private Path file = Path.of("");

    @Mixin
    private Answer answer = new Answer();

    @Override
    public Integer call() {
        Designed designed = Designed.from(file);
        Price price = designed.design().quote().price();
        answer.document(Json.object()
                .put("title", designed.design().job().title())
                .put("priceBook", designed.design().job().money().priceBook())
                .put("money", ResultFile.money(price))
                .build());
        answer.say(PriceText.lines(price));
        designed.warn(answer);
        return designed.exitCode();
    }
}
