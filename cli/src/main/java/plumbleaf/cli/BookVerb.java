package plumbleaf.cli;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.jobfile.input.TextKind;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.jobfile.pricebook.PriceRise;

/** Price books of one's own: a folder of four tables. */
@Command(
        name = "book",
        description = "Starts, checks and raises a price book of your own: a folder of four CSV tables.",
        mixinStandardHelpOptions = true,
        subcommands = {BookVerb.Start.class, BookVerb.Check.class, BookVerb.Raise.class})
final class BookVerb {
    private BookVerb() {}

    /** A copy of the example to write one's own prices into. */
    @Command(
            name = "new",
            description = "Copies the example price book into a folder, to put your own prices in.",
            mixinStandardHelpOptions = true)
    static final class Start implements Callable<Integer> {
        @Parameters(paramLabel = "DIR", description = "The folder to make; its name is what a job calls the book.")
        private Path folder = Path.of("");

        @Mixin
        private Answer answer = new Answer();

        @Override
        public Integer call() {
            Written.folder(folder);
            for (PriceBooks.Source table : PriceBooks.tables(PriceBooks.STANDARD.get(0)))
                Written.text(folder.resolve(table.file()), table.text(), false);
            answer.document(Json.object().put("wrote", folder.toString()).build());
            answer.say("Wrote " + folder + ". Its prices are invented: put in your own, then: plumbleaf book check "
                    + folder);
            return ExitCode.FINE;
        }
    }

    /** Every bad row of a book, or what is in it. */
    @Command(
            name = "check",
            description = "Reads a price book and names every bad row.",
            mixinStandardHelpOptions = true)
    static final class Check implements Callable<Integer> {
        @Parameters(paramLabel = "DIR", description = "The folder of the book.")
        private Path folder = Path.of("");

        @Mixin
        private Answer answer = new Answer();

        @Override
        public Integer call() {
            PriceBook book = Books.read(folder);
            answer.document(Json.object()
                    .put("book", book.id())
                    .put("materials", book.materials().size())
                    .put("labor", book.labour().size())
                    .put("charges", book.charges().size())
                    .build());
            answer.say(book.id() + ": " + book.materials().size() + " materials, "
                    + book.labour().size() + " tasks, " + book.charges().size() + " charges, all good.");
            return ExitCode.FINE;
        }
    }

    /** Prices up or down by a share, with their history. */
    @Command(
            name = "raise",
            description = "Raises or lowers prices by a share, and writes down what they were.",
            mixinStandardHelpOptions = true,
            footer = {"", "The old prices go to history.csv beside the tables, with the day and why."})
    static final class Raise implements Callable<Integer> {
        @Parameters(paramLabel = "DIR", description = "The folder of the book.")
        private Path folder = Path.of("");

        @Option(names = "--by", required = true, paramLabel = "SHARE", description = "Such as 4%% or -2.5%%.")
        private String by = "";

        @Option(names = "--date", required = true, paramLabel = "DATE", description = "The day the new prices hold.")
        private String date = "";

        @Option(names = "--why", required = true, paramLabel = "TEXT", description = "Who said so, in which letter.")
        private String why = "";

        @Option(
                names = "--of",
                paramLabel = "WHAT",
                defaultValue = "materials",
                description = "materials, charges or wage (the hourly rate). Default: materials.")
        private String of = "materials";

        @Option(names = "--supplier", paramLabel = "NAME", description = "Only this supplier's.")
        private String supplier = "";

        @Option(names = "--item", paramLabel = "START", description = "Only items that start so.")
        private String item = "";

        @Mixin
        private Answer answer = new Answer();

        @Override
        public Integer call() {
            Books.read(folder);
            LocalDate day = TextKind.DATE.read().apply(date).match(read -> read.is(), refused -> {
                throw BadInput.of("plumbleaf book raise", "--date " + date + ": " + refused.problem(), refused.cure());
            });
            PriceRise.Of what = PriceRise.Of.of(of)
                    .orElseThrow(() -> BadInput.of(
                            "plumbleaf book raise",
                            "--of " + of + " cannot be raised",
                            "write materials, charges or wage"));
            PriceRise rise = new PriceRise(what, share(), day, why, supplier, item);
            PriceBooks.Source before = Books.source(folder, what.table());
            PriceRise.Raised raised = rise.on(before.text());
            if (raised.changed() == 0)
                throw BadInput.of(before.file(), "no row is of that supplier and item", "check the names in the table");
            Path history = folder.resolve("history.csv");
            String told = Files.exists(history)
                    ? new String(JobDoor.bytes(history), StandardCharsets.UTF_8)
                    : PriceRise.HISTORY_HEAD;
            Written.text(history, told + raised.history(), true);
            Written.text(folder.resolve(what.table()), raised.table(), true);
            answer.document(Json.object().put("changed", raised.changed()).build());
            answer.say(raised.changed() + " prices changed by " + by + "; what they were is in " + history + ".");
            return ExitCode.FINE;
        }

        private BigDecimal share() {
            String text = by.strip();
            if (!text.matches("[+-]?\\d{1,3}(\\.\\d{1,4})?%"))
                throw BadInput.of("plumbleaf book raise", "--by " + by + " is not a share", "write 4% or -2.5%");
            BigDecimal share = new BigDecimal(text.substring(0, text.length() - 1)).movePointLeft(2);
            if (share.compareTo(BigDecimal.ONE.negate()) <= 0)
                throw BadInput.of(
                        "plumbleaf book raise", "--by " + by + " leaves nothing of a price", "lower it by less");
            return share;
        }
    }
}
