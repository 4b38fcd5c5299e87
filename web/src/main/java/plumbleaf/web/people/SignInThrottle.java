package plumbleaf.web.people;

import java.time.Clock;
import java.time.Duration;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import plumbleaf.web.store.Database;

/**
 * Slows down guessing. Refusals are counted in the store, so going to another node does not help: a few for one name from one address,
 * more for one address, and many for one name from anywhere, so that a stranger far away cannot easily lock somebody out.
 */
@Component
public class SignInThrottle {
    static final Duration REMEMBERED = Duration.ofMinutes(15);
    static final int FOR_ONE_NAME_FROM_ONE_ADDRESS = 5;
    static final int FROM_ONE_ADDRESS = 30;
    static final int FOR_ONE_NAME = 100;

    private final JdbcClient sql;
    private final Clock clock;
    private final Audit audit;

    public SignInThrottle(Database database, Clock clock, Audit audit) {
        this.sql = database.sql();
        this.clock = clock;
        this.audit = audit;
    }

    /** Whether to turn someone away without even looking at the password. */
    public boolean isTooOften(String signIn, String address) {
        long since = clock.millis() - REMEMBERED.toMillis();
        String name = shortened(People.plain(signIn));
        return count("sign_in = ? and address = ? and made_at > ?", name, address, since)
                        >= FOR_ONE_NAME_FROM_ONE_ADDRESS
                || count("address = ? and made_at > ?", address, since) >= FROM_ONE_ADDRESS
                || count("sign_in = ? and made_at > ?", name, since) >= FOR_ONE_NAME;
    }

    void refused(String signIn, String address) {
        long now = clock.millis();
        sql.sql("delete from refused_sign_in where made_at < ?")
                .param(now - REMEMBERED.toMillis())
                .update();
        sql.sql("insert into refused_sign_in (id, sign_in, address, made_at) values (?, ?, ?, ?)")
                .params(Secret.id(), shortened(People.plain(signIn)), address, now)
                .update();
        audit.note(shortened(People.plain(signIn)), "was refused at the door", address);
    }

    void letIn(String signIn, String address) {
        sql.sql("delete from refused_sign_in where sign_in = ? and address = ?")
                .params(shortened(People.plain(signIn)), address)
                .update();
        audit.note(People.plain(signIn), "signed in", address);
    }

    private long count(String where, Object... values) {
        return sql.sql("select count(*) from refused_sign_in where " + where)
                .params(values)
                .query(Long.class)
                .single();
    }

    /** A name of a thousand letters is nobody's; do not store it. */
    private static String shortened(String text) {
        return text.length() > 64 ? text.substring(0, 64) : text;
    }
}
