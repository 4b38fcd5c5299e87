package plumbleaf.web.yard;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import plumbleaf.web.store.Database;

/** What came of what a job ordered, counted at the tailgate. */
@Component
public class Receipts {
    private final Database database;
    private final JdbcClient sql;
    private final Clock clock;

    Receipts(Database database, Clock clock) {
        this.database = database;
        this.sql = database.sql();
        this.clock = clock;
    }

    /** Units that came, by {@link #key}. */
    public Map<String, Long> of(String job) {
        Map<String, Long> came = new LinkedHashMap<>();
        sql.sql("select supplier, item, came from receipt where job = ? order by supplier, item")
                .param(job)
                .query((row, number) ->
                        Map.entry(key(row.getString("supplier"), row.getString("item")), row.getLong("came")))
                .list()
                .forEach(entry -> came.put(entry.getKey(), entry.getValue()));
        return came;
    }

    /** One count takes the place of the one before. */
    public void count(String job, String supplier, String item, long came, String who) {
        database.together(() -> {
            sql.sql("delete from receipt where job = ? and supplier = ? and item = ?")
                    .params(job, supplier, item)
                    .update();
            sql.sql("insert into receipt (job, supplier, item, came, who, changed_at) values (?, ?, ?, ?, ?, ?)")
                    .params(job, supplier, item, came, who, clock.millis())
                    .update();
            return "";
        });
    }

    /** As if nobody had counted it. */
    public void forget(String job, String supplier, String item) {
        sql.sql("delete from receipt where job = ? and supplier = ? and item = ?")
                .params(job, supplier, item)
                .update();
    }

    public static String key(String supplier, String item) {
        return supplier + "|" + item;
    }
}
