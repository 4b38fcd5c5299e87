package plumbleaf.web.room;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import plumbleaf.web.page.Moment;
import plumbleaf.web.store.Database;

/** How the house makes its gates and fences, each under a name, to be built again in any job. */
@Component
class OwnBuilds {
    private final Database database;
    private final Clock clock;

    OwnBuilds(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** The names of one kind, {@code gate} or {@code run}, in their order. */
    List<String> names(String kind) {
        return database.sql()
                .sql("select name from house_build where kind = ? order by name")
                .param(kind)
                .query(String.class)
                .list();
    }

    Optional<String> content(String kind, String name) {
        return database.sql()
                .sql("select content from house_build where kind = ? and name = ?")
                .params(kind, name)
                .query(String.class)
                .optional();
    }

    /** What a change of name came to. */
    enum Renamed {
        DONE,
        TAKEN,
        GONE
    }

    /** Everything of one kind, by name. */
    List<BuildLine> lines(String kind, BuildWords words) {
        return database.sql()
                .sql("select name, content, who, changed_at from house_build where kind = ? order by name")
                .param(kind)
                .query((row, number) -> new BuildLine(
                        kind + number,
                        kind,
                        row.getString("name"),
                        words.of(row.getString("content")),
                        row.getString("who"),
                        Moment.of(Instant.ofEpochMilli(row.getLong("changed_at")))))
                .list();
    }

    Renamed rename(String kind, String name, String to) {
        return database.together(() -> {
            if (content(kind, to).isPresent()) return Renamed.TAKEN;
            int rows = database.sql()
                    .sql("update house_build set name = ? where kind = ? and name = ?")
                    .params(to, kind, name)
                    .update();
            return rows == 1 ? Renamed.DONE : Renamed.GONE;
        });
    }

    /** Keeps a build; one of the same name is replaced. */
    void keep(String kind, String name, String content, String who) {
        database.together(() -> {
            forget(kind, name);
            database.sql()
                    .sql("insert into house_build (kind, name, content, who, changed_at) values (?, ?, ?, ?, ?)")
                    .params(kind, name, content, who, clock.millis())
                    .update();
            return "";
        });
    }

    void forget(String kind, String name) {
        database.sql()
                .sql("delete from house_build where kind = ? and name = ?")
                .params(kind, name)
                .update();
    }
}
