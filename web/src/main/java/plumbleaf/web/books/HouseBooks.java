package plumbleaf.web.books;

import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.takeoff.Sold;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.jobfile.pricebook.PriceRise;
import plumbleaf.jobfile.stock.ItemNames;
import plumbleaf.web.store.Database;

/** Price books by name: those of the house, and the one that comes with the program. What is kept here has been read without an error. */
@Component
public class HouseBooks {
    static final String MATERIALS = "materials.csv";
    static final List<String> TABLES = List.of(MATERIALS, "labor.csv", "charges.csv", "house.csv");
    static final String HISTORY = "history.csv";

    private final Database database;
    private final JdbcClient sql;
    private final Clock clock;
    private final Map<String, PriceBook> read = new LinkedHashMap<>();

    HouseBooks(Database database, Clock clock) {
        this.database = database;
        this.sql = database.sql();
        this.clock = clock;
    }

    /** Names of all books, those of the house first. */
    public List<String> names() {
        List<String> names = new ArrayList<>(sql.sql("select distinct book from price_book_table order by book")
                .query(String.class)
                .list());
        for (String standard : PriceBooks.STANDARD) if (!names.contains(standard)) names.add(standard);
        return names;
    }

    /** A book by its name; nothing where there is none. */
    public Optional<PriceBook> book(String name) {
        String key = name + "@" + version(name);
        synchronized (read) {
            PriceBook known = read.get(key);
            if (known != null) return Optional.of(known);
        }
        Optional<PriceBook> book = isOfTheHouse(name)
                ? PriceBooks.read(name, source(name, 0), source(name, 1), source(name, 2), source(name, 3))
                        .book()
                        .stream()
                        .findFirst()
                : PriceBooks.standard(name);
        synchronized (read) {
            book.ifPresent(found -> read.put(key, found));
        }
        return book;
    }

    /** What things are called in the books of the house, and then in those that come with the program. */
    public ItemNames itemNames() {
        List<Sold> sold = new ArrayList<>();
        for (String name : names()) book(name).ifPresent(book -> sold.addAll(book.materials()));
        return new ItemNames(sold);
    }

    /** Changes whenever the book does, so that what was designed from an older one is not shown again. */
    public long version(String name) {
        return sql.sql("select coalesce(max(changed_at), 0) from price_book_table where book = ?")
                .param(name)
                .query(Long.class)
                .single();
    }

    public boolean isOfTheHouse(String name) {
        return version(name) > 0;
    }

    /** One table as it stands; a standard book's can be had too. */
    Optional<String> table(String book, String name) {
        Optional<String> own = sql.sql("select content from price_book_table where book = ? and name = ?")
                .params(book, name)
                .query(String.class)
                .optional();
        if (own.isPresent() || !PriceBooks.STANDARD.contains(book)) return own;
        return PriceBooks.tables(book).stream()
                .filter(source -> source.file().equals(name))
                .map(PriceBooks.Source::text)
                .findFirst();
    }

    /** All tables of a book by their names, history last where there is one; nothing where there is no such book. */
    public Map<String, String> tables(String book) {
        Map<String, String> tables = new LinkedHashMap<>();
        for (String name : TABLES) table(book, name).ifPresent(text -> tables.put(name, text));
        table(book, HISTORY).ifPresent(text -> tables.put(HISTORY, text));
        return tables;
    }

    /**
     * Takes tables in: all of them, or none with every error of them named. A table that is not brought stays as it is; a new book starts from the standard one.
     *
     * @param brought text by table name
     */
    List<InputError> bring(String book, Map<String, String> brought, String who) {
        List<PriceBooks.Source> sources = new ArrayList<>();
        for (String name : TABLES)
            sources.add(new PriceBooks.Source(
                    name, brought.getOrDefault(name, table(book, name).orElseGet(() -> standardTable(name)))));
        List<InputError> errors = PriceBooks.read(book, sources.get(0), sources.get(1), sources.get(2), sources.get(3))
                .errors();
        if (!errors.isEmpty()) return errors;
        database.together(() -> {
            for (PriceBooks.Source source : sources) put(book, source.file(), source.text(), who);
            return "";
        });
        return List.of();
    }

    /** Raises a book of the house and writes down what was; how many prices changed. */
    int raise(String book, PriceRise rise, String who) {
        return database.together(() -> {
            String name = rise.of().table();
            PriceRise.Raised raised = rise.on(table(book, name).orElse(""));
            if (raised.changed() == 0) return 0;
            put(book, name, raised.table(), who);
            put(book, HISTORY, table(book, HISTORY).orElse(PriceRise.HISTORY_HEAD) + raised.history(), who);
            return raised.changed();
        });
    }

    private void put(String book, String name, String content, String who) {
        sql.sql("delete from price_book_table where book = ? and name = ?")
                .params(book, name)
                .update();
        sql.sql("insert into price_book_table (book, name, content, who, changed_at) values (?, ?, ?, ?, ?)")
                .params(book, name, content, who, Math.max(clock.millis(), version(book) + 1))
                .update();
    }

    private PriceBooks.Source source(String book, int table) {
        String name = TABLES.get(table);
        return new PriceBooks.Source(name, table(book, name).orElse(""));
    }

    private static String standardTable(String name) {
        return PriceBooks.tables(PriceBooks.STANDARD.get(0)).stream()
                .filter(source -> source.file().equals(name))
                .map(PriceBooks.Source::text)
                .findFirst()
                .orElse("");
    }
}
