package plumbleaf.web.yard;

import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.stock.Yard;
import plumbleaf.jobfile.stock.YardFile;
import plumbleaf.web.store.Database;

/** The one yard of the house, as a row of revisions: every change is one more, made on the latest. */
@Component
public class HouseYard {
    private static final int REMEMBERED = 12;

    private final Database database;
    private final JdbcClient sql;
    private final Clock clock;

    HouseYard(Database database, Clock clock) {
        this.database = database;
        this.sql = database.sql();
        this.clock = clock;
    }

    /** What was done to the yard, and who did it. */
    public record Change(String why, String who) {}

    public Yard yard() {
        return text().map(text -> YardFile.read("yard.csv", text).yard()).orElse(Yard.empty());
    }

    /** The latest revision; 0 before there is one. */
    public long version() {
        return sql.sql("select coalesce(max(number), 0) from yard_revision")
                .query(Long.class)
                .single();
    }

    public String file() {
        return text().orElseGet(() -> YardFile.write(Yard.empty()));
    }

    /** Takes a counted yard in, or names every bad row and leaves all as it is. */
    public List<InputError> bring(String text, String who) {
        YardFile.Answer answer = YardFile.read("yard.csv", text);
        if (answer.errors().isEmpty()) change(yard -> answer.yard(), "counted", who);
        return answer.errors();
    }

    /** One thing more, typed like a row of the file, or what is wrong with it. */
    public List<InputError> add(Map<String, String> typed, String who) {
        YardFile.Answer answer = YardFile.add(yard(), typed);
        if (answer.errors().isEmpty()) change(yard -> answer.yard(), "counted in", who);
        return answer.errors();
    }

    /** One change on the latest revision, whole or not at all. */
    public void change(UnaryOperator<Yard> how, String why, String who) {
        database.together(() -> {
            Yard after = how.apply(yard());
            sql.sql("insert into yard_revision (number, content, why, who, changed_at) values (?, ?, ?, ?, ?)")
                    .params(version() + 1, YardFile.write(after), why, who, clock.millis())
                    .update();
            return "";
        });
    }

    /** The latest changes, newest first. */
    public List<Change> history() {
        return sql.sql("select why, who from yard_revision order by number desc limit " + REMEMBERED)
                .query((row, number) -> new Change(row.getString("why"), row.getString("who")))
                .list();
    }

    private Optional<String> text() {
        return sql.sql("select content from yard_revision where number = (select max(number) from yard_revision)")
                .query(String.class)
                .optional();
    }
}
