package plumbleaf.jobfile.pricebook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.labour.LabourRate;
import plumbleaf.engine.pricing.Charge;
import plumbleaf.engine.pricing.Crew;
import plumbleaf.engine.pricing.HouseRules;
import plumbleaf.engine.pricing.KeptPrices;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.takeoff.Sold;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.table.CsvTable;

/** Price books, read from four tables: those that come with the program, and the user's own. */
public final class PriceBooks {
    /** Books that come with the program. */
    public static final List<String> STANDARD = List.of("example-2027");

    private PriceBooks() {}

    /** A table as text, and what it is called in errors. */
    public record Source(String file, String text) {}

    /**
     * A book, or what is wrong with its tables.
     *
     * @param book one, or none when there are errors
     */
    public record Answer(List<PriceBook> book, List<InputError> errors) {
        public Answer {
            book = List.copyOf(book);
            errors = List.copyOf(errors);
        }
    }

    public static Answer read(String id, Source materials, Source labour, Source charges, Source house) {
        CsvTable<Sold> sold = PriceBookTables.materials(materials.file(), materials.text());
        CsvTable<LabourRate> rates = PriceBookTables.labour(labour.file(), labour.text());
        CsvTable<Charge> fees = PriceBookTables.charges(charges.file(), charges.text());
        CsvTable<House> houses = PriceBookTables.house(house.file(), house.text());
        List<InputError> errors = new ArrayList<>(sold.errors());
        errors.addAll(rates.errors());
        errors.addAll(fees.errors());
        errors.addAll(houses.errors());
        if (houses.errors().isEmpty() && houses.rows().size() != 1)
            errors.add(InputError.ofFile(
                    house.file(),
                    "a house has one row of rules, this has " + houses.rows().size(),
                    "keep one"));
        if (!errors.isEmpty()) return new Answer(List.of(), errors);
        House rules = houses.rows().get(0);
        PriceBook book = new PriceBook(
                id,
                sold.rows(),
                rates.rows(),
                fees.rows(),
                new Crew(rules.people(), rules.hourly(), rules.hoursPerDay(), rules.cureDays()),
                new HouseRules(rules.minimum(), rules.roundTo(), rules.truck()));
        return new Answer(List.of(book), List.of());
    }

    /** The book that a job names among those that come with the program, with the prices the job keeps. */
    public static Optional<PriceBook> of(Job job) {
        return standard(job.money().priceBook()).map(book -> kept(job, book));
    }

    /** A book as a job sees it: with the prices the job was quoted at. */
    public static PriceBook kept(Job job, PriceBook book) {
        return KeptPrices.in(book, job.money().kept());
    }

    /** A book that comes with the program; an error in it is a fault of ours. */
    public static Optional<PriceBook> standard(String id) {
        if (!STANDARD.contains(id)) return Optional.empty();
        Answer answer = read(
                id,
                source(id, "materials.csv"),
                source(id, "labor.csv"),
                source(id, "charges.csv"),
                source(id, "house.csv"));
        for (InputError error : answer.errors()) throw new IllegalStateException(error.text());
        return answer.book().stream().findFirst();
    }

    /** The tables of a book that comes with the program, to start one's own from. */
    public static List<Source> tables(String id) {
        List<Source> tables = new ArrayList<>();
        for (String name : List.of("materials.csv", "labor.csv", "charges.csv", "house.csv"))
            tables.add(source(id, name));
        return tables;
    }

    private static Source source(String id, String name) {
        String path = "/plumbleaf/jobfile/pricebooks/" + id + "/" + name;
        try (InputStream in = PriceBooks.class.getResourceAsStream(path)) {
            if (in == null) throw new IllegalStateException("The price book has no " + name);
            return new Source(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("The price book's " + name + " cannot be read", e);
        }
    }
}
