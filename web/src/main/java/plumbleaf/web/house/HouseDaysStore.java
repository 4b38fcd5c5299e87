package plumbleaf.web.house;

import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import plumbleaf.engine.schedule.HouseDays;
import plumbleaf.jobfile.calendar.HouseDaysFile;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.web.store.Database;

/** Crews, machines and days off of the house, as a row of revisions: every change is one more, made on the latest. */
@Component
class HouseDaysStore {
    private static final String FILE = "days.csv";

    private final Database database;
    private final JdbcClient sql;
    private final Clock clock;

    HouseDaysStore(Database database, Clock clock) {
        this.database = database;
        this.sql = database.sql();
        this.clock = clock;
    }

    /** As it stands; the usual house of one crew before anybody said otherwise. */
    HouseDays house() {
        return text().flatMap(
                        text -> HouseDaysFile.read(FILE, text).house().stream().findFirst())
                .orElseGet(() -> HouseDays.usual(1));
    }

    String file() {
        return HouseDaysFile.write(house());
    }

    /** Takes a file in, or names every bad row and leaves all as it is. */
    List<InputError> bring(String text, String who) {
        HouseDaysFile.Answer answer = HouseDaysFile.read(FILE, text);
        if (answer.errors().isEmpty()) change(house -> answer.house().get(0), "file brought in", who);
        return answer.errors();
    }

    /** One change on the latest revision, whole or not at all. */
    void change(UnaryOperator<HouseDays> how, String why, String who) {
        database.together(() -> {
            HouseDays after = how.apply(house());
            sql.sql("insert into house_days_revision (number, content, why, who, changed_at) values (?, ?, ?, ?, ?)")
                    .params(version() + 1, HouseDaysFile.write(after), why, who, clock.millis())
                    .update();
            return "";
        });
    }

    private long version() {
        return sql.sql("select coalesce(max(number), 0) from house_days_revision")
                .query(Long.class)
                .single();
    }

    private Optional<String> text() {
        return sql.sql(
                        "select content from house_days_revision where number = (select max(number) from house_days_revision)")
                .query(String.class)
                .optional();
    }
}
