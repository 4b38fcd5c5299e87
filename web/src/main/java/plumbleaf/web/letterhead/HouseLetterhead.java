package plumbleaf.web.letterhead;

import java.time.Clock;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import plumbleaf.documents.PaperOptions;
import plumbleaf.documents.drawing.Emblem;
import plumbleaf.documents.mark.MarkFile;
import plumbleaf.web.store.Database;

/** The letterhead of the house, as a row of revisions: papers are made with the latest. */
@Component
public class HouseLetterhead {
    private final Database database;
    private final JdbcClient sql;
    private final Clock clock;

    HouseLetterhead(Database database, Clock clock) {
        this.database = database;
        this.sql = database.sql();
        this.clock = clock;
    }

    /** The latest revision; 0 before there is one. */
    public long version() {
        return sql.sql("select coalesce(max(number), 0) from letterhead")
                .query(Long.class)
                .single();
    }

    Optional<Heading> heading() {
        return sql.sql("select name, address, phone, license, more, web_address, paper, sheets from letterhead"
                        + " where number = (select max(number) from letterhead)")
                .query((row, number) -> new Heading(
                        row.getString("name"),
                        row.getString("address"),
                        row.getString("phone"),
                        row.getString("license"),
                        row.getString("more"),
                        row.getString("web_address"),
                        row.getString("paper"),
                        row.getString("sheets")))
                .optional();
    }

    /** The mark as a PNG; empty for none. */
    byte[] mark() {
        return sql.sql("select mark from letterhead where number = (select max(number) from letterhead)")
                .query(String.class)
                .optional()
                .map(text -> Base64.getDecoder().decode(text))
                .orElse(new byte[0]);
    }

    /** One revision more. */
    void put(Heading heading, byte[] mark, String who) {
        database.together(() -> {
            sql.sql(
                            "insert into letterhead (number, name, address, phone, license, more, web_address, paper, sheets, mark,"
                                    + " who, changed_at) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
                    .params(
                            version() + 1,
                            heading.name().strip(),
                            heading.address().strip(),
                            heading.phone().strip(),
                            heading.license().strip(),
                            heading.more().strip(),
                            heading.webAddress().strip(),
                            heading.paper(),
                            heading.sheets(),
                            Base64.getEncoder().encodeToString(mark),
                            who,
                            clock.millis())
                    .update();
            return "";
        });
    }

    /** How the papers of a job come out: the usual way until somebody says who issues them. */
    public PaperOptions options(String job) {
        return heading()
                .map(heading -> new PaperOptions(
                        heading.paperSize(),
                        heading.sheetSize(),
                        heading.lines(),
                        "A",
                        List.of(),
                        emblem().stream().toList(),
                        heading.linkTo(job)))
                .orElseGet(PaperOptions::usual);
    }

    private Optional<Emblem> emblem() {
        return MarkFile.kept(mark());
    }
}
