package plumbleaf.web.proof;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import org.junit.jupiter.api.Tag;
import plumbleaf.web.TrialPostgres;

@Tag("slow")
class KilledWhileSavingPostgresTest extends KilledWhileSavingRules {
    /** Those who are served in this database, but for who asks. PostgreSQL 14 documentation, 28.2.3. */
    private static final String OTHERS = "select count(*) from pg_stat_activity where datname = current_database()"
            + " and backend_type = 'client backend' and pid <> pg_backend_pid()";

    @Override
    String emptyStore() {
        return TrialPostgres.emptyStore();
    }

    @Override
    void letFinish(String place) throws Exception {
        try (Connection server = DriverManager.getConnection(place);
                Statement statement = server.createStatement()) {
            while (others(statement) > 0) Thread.sleep(10);
        }
    }

    private static int others(Statement statement) throws Exception {
        try (ResultSet count = statement.executeQuery(OTHERS)) {
            count.next();
            return count.getInt(1);
        }
    }
}
