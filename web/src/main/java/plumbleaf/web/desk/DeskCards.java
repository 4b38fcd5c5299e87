package plumbleaf.web.desk;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobId;

/** The cards of the desk in the store: put there by the {@link DeskClerk}, asked for by the {@link Desk}. */
@Component
class DeskCards {
    /**
     * Every job on the desk with its card. A customer's link and acceptance say more than the job does, as long as the job itself has not
     * gone further.
     */
    private static final String LAID_OUT = "select j.id, j.title, j.version, j.changed_at, c.*,"
            + " case when j.stage in ('settle', 'offer') and exists (select 1 from customer_link l join acceptance a"
            + " on a.link = l.id where l.job = j.id) then 'sold'"
            + " when j.stage in ('settle', 'offer') and exists (select 1 from customer_link l where l.job = j.id"
            + " and l.revoked_at is null and l.expires_at > ?) then 'offered' else j.stage end as stands"
            + " from job j join desk_card c on c.job = j.id where j.trashed_at is null";

    private final Database database;
    private final JdbcClient sql;
    private final Clock clock;

    DeskCards(Database database, Clock clock) {
        this.database = database;
        this.sql = database.sql();
        this.clock = clock;
    }

    /** What a card was worked out from. */
    record MadeOf(long version, String book, long bookVersion, long yardVersion) {}

    /** A job with its card. */
    record Laid(JobId id, String title, Instant changedAt, Standing stands, DeskCard card, MadeOf madeOf) {}

    /** How many jobs stand somewhere, and what they come to. */
    record Pile(Standing standing, long jobs, long cents) {}

    /**
     * @param search words that all have to be found
     * @param at     empty for every standing
     */
    List<Laid> find(String search, Optional<Standing> at, int from, int most) {
        List<Object> values = new ArrayList<>(List.of(clock.millis()));
        StringBuilder where = new StringBuilder();
        searched(search, where, values);
        at.ifPresent(standing -> {
            where.append(" and d.stands = ?");
            values.add(standing.key());
        });
        values.add(most);
        values.add(from);
        return sql.sql("select * from (" + LAID_OUT + ") d where 1 = 1" + where
                        + " order by d.changed_at desc, d.id limit ? offset ?")
                .params(values)
                .query((row, n) -> laid(row))
                .list();
    }

    List<Pile> piles(String search) {
        List<Object> values = new ArrayList<>(List.of(clock.millis()));
        StringBuilder where = new StringBuilder();
        searched(search, where, values);
        return sql.sql("select d.stands, count(*) as jobs, coalesce(sum(d.cents), 0) as cents from (" + LAID_OUT
                        + ") d where 1 = 1" + where + " group by d.stands")
                .params(values)
                .query((row, n) -> new Pile(
                        Standing.of(row.getString("stands")).orElse(Standing.SETTLE),
                        row.getLong("jobs"),
                        row.getLong("cents")))
                .list();
    }

    private static void searched(String search, StringBuilder where, List<Object> values) {
        for (String word : search.toLowerCase(Locale.ROOT).split("\\s+", -1)) {
            if (word.isEmpty()) continue;
            where.append(" and d.words like ? escape '!'");
            values.add("%" + word.replace("!", "!!").replace("%", "!%").replace("_", "!_") + "%");
        }
    }

    /** Jobs whose card is missing or of another version, latest change first. */
    List<JobId> behind(int most) {
        return sql.sql("select j.id from job j left join desk_card c on c.job = j.id where j.trashed_at is null"
                        + " and (c.version is null or c.version <> j.version) order by j.changed_at desc, j.id limit ?")
                .param(most)
                .query((row, n) -> new JobId(row.getString("id")))
                .list();
    }

    long behind() {
        return sql.sql("select count(*) from job j left join desk_card c on c.job = j.id where j.trashed_at is null"
                        + " and (c.version is null or c.version <> j.version)")
                .query(Long.class)
                .single();
    }

    void put(JobId job, MadeOf madeOf, DeskCard card) {
        database.doTogether(() -> {
            int there = sql.sql("update job set stage = ? where id = ?")
                    .params(card.standing().key(), job.text())
                    .update();
            if (there == 0) return;
            sql.sql("delete from desk_card where job = ?").param(job.text()).update();
            sql.sql("insert into desk_card (job, version, book, book_version, yard_version, customer, place, cents,"
                            + " severity, verdict, next, price_holds, dig_from, dig_through, words)"
                            + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
                    .params(job.text(), madeOf.version(), madeOf.book(), madeOf.bookVersion(), madeOf.yardVersion())
                    .params(card.customer(), card.place())
                    .param(card.cents().isPresent() ? card.cents().getAsLong() : null)
                    .params(card.severity(), card.verdict(), card.next())
                    .params(card.priceHolds(), card.digFrom(), card.digThrough(), card.words())
                    .update();
        });
    }

    private static Laid laid(ResultSet row) throws SQLException {
        Standing stands = Standing.of(row.getString("stands")).orElse(Standing.SETTLE);
        long cents = row.getLong("cents");
        OptionalLong price = row.wasNull() ? OptionalLong.empty() : OptionalLong.of(cents);
        return new Laid(
                new JobId(row.getString("id")),
                row.getString("title"),
                Instant.ofEpochMilli(row.getLong("changed_at")),
                stands,
                new DeskCard(
                        stands,
                        row.getString("customer"),
                        row.getString("place"),
                        price,
                        row.getString("severity"),
                        row.getString("verdict"),
                        row.getString("next"),
                        row.getString("price_holds"),
                        row.getString("dig_from"),
                        row.getString("dig_through"),
                        row.getString("words")),
                new MadeOf(
                        row.getLong("version"),
                        row.getString("book"),
                        row.getLong("book_version"),
                        row.getLong("yard_version")));
    }
}
