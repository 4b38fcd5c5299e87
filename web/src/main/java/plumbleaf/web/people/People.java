package plumbleaf.web.people;

import java.time.Clock;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.userdetails.User;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import plumbleaf.web.store.Database;

/**
 * The people of a served workspace and their passwords, kept as bcrypt hashes. No password is built in, and nobody but its owner ever
 * knows one: whoever is added, or has forgotten theirs, gets a link with which they set it ({@link Invitations}).
 */
@Component
public class People implements UserDetailsService {
    static final String LEFT = "someone who left";

    private final Database database;
    private final JdbcClient sql;
    private final Clock clock;
    private final PasswordEncoder passwords;
    private final Audit audit;

    public People(Database database, Clock clock, PasswordEncoder passwords, Audit audit) {
        this.database = database;
        this.sql = database.sql();
        this.clock = clock;
        this.passwords = passwords;
        this.audit = audit;
    }

    /** Whether the first owner still has to be made. */
    public boolean nobodyYet() {
        return sql.sql("select count(*) from person where secret <> ''")
                        .query(Long.class)
                        .single()
                == 0;
    }

    /**
     * Makes the first owner.
     *
     * @return false where someone else was first
     */
    public boolean makeFirstOwner(String signIn, String name, String password) {
        try {
            return database.together(() -> {
                if (!nobodyYet()) return false;
                // Of two at once only one can write this line.
                sql.sql("insert into setting (name, value) values ('first-owner', ?)")
                        .param(plain(signIn))
                        .update();
                insert(signIn, name, Role.OWNER, hash(password));
                audit.note(name.strip(), "became the first owner", plain(signIn));
                return true;
            });
        } catch (DataAccessException someoneWasFirst) {
            if (nobodyYet()) throw someoneWasFirst;
            return false;
        }
    }

    public List<PersonLine> all() {
        return sql.sql(
                        "select id, sign_in, name, role, secret, closed_at from person order by closed_at is not null, name, id")
                .query((row, n) -> new PersonLine(
                        new Person(
                                row.getString("id"),
                                row.getString("sign_in"),
                                row.getString("name"),
                                Role.of(row.getString("role"))),
                        row.getObject("closed_at") != null,
                        !row.getString("secret").isEmpty()))
                .list();
    }

    public Optional<PersonLine> line(String id) {
        return all().stream().filter(line -> line.person().id().equals(id)).findFirst();
    }

    /** Whether a name to sign in with is somebody's. */
    public boolean isTaken(String signIn) {
        return sql.sql("select count(*) from person where sign_in = ?")
                        .param(plain(signIn))
                        .query(Long.class)
                        .single()
                > 0;
    }

    /** Adds someone, who cannot come in before they have set a password. */
    public String add(String signIn, String name, Role role, String by) {
        return database.together(() -> {
            String id = insert(signIn, name, role, "");
            audit.note(by, "added as " + role.key(), plain(signIn));
            return id;
        });
    }

    /**
     * Gives another role. Their open pages close, since what they may see has changed.
     *
     * @return false where it would leave no owner
     */
    public boolean setRole(String id, Role role, String by) {
        return database.together(() -> {
            PersonLine who = line(id).orElseThrow();
            if (role != Role.OWNER && isLastOwner(who)) return false;
            sql.sql("update person set role = ? where id = ?")
                    .params(role.key(), id)
                    .update();
            endSessions(who.person().signIn());
            audit.note(by, "made " + role.key(), who.person().signIn());
            return true;
        });
    }

    /**
     * Shuts someone out, or lets them in again.
     *
     * @return false where it would leave no owner
     */
    public boolean setClosed(String id, boolean closed, String by) {
        return database.together(() -> {
            PersonLine who = line(id).orElseThrow();
            if (closed && isLastOwner(who)) return false;
            if (closed)
                sql.sql("update person set closed_at = ? where id = ?")
                        .params(clock.millis(), id)
                        .update();
            else
                sql.sql("update person set closed_at = null where id = ?")
                        .param(id)
                        .update();
            endSessions(who.person().signIn());
            audit.note(by, closed ? "shut out" : "let in again", who.person().signIn());
            return true;
        });
    }

    /**
     * Takes somebody who is shut out from everything the house keeps: other words stand where their name stood, their name to sign in, password,
     * keys and links are gone. Work they did stays. Where somebody else has the same name, the name stays as that one's. What was typed into
     * jobs is the job's own and stays.
     *
     * @return false where they may still come in
     */
    public boolean takeOut(String id, String by) {
        return database.together(() -> {
            PersonLine line = line(id).orElseThrow();
            if (!line.closed()) return false;
            Person who = line.person();
            long alike = all().stream()
                    .filter(other -> other.person().name().equals(who.name()))
                    .count();
            if (alike == 1) forget("who", who.name());
            forget("who", who.signIn());
            forget("about", who.signIn());
            sql.sql("update setting set value = ? where name = 'first-owner' and value = ?")
                    .params(LEFT, who.signIn())
                    .update();
            for (String table : List.of("invitation", "api_token"))
                sql.sql("delete from " + table + " where person = ?").param(id).update();
            sql.sql("delete from refused_sign_in where sign_in = ?")
                    .param(who.signIn())
                    .update();
            endSessions(who.signIn());
            sql.sql("delete from person where id = ?").param(id).update();
            audit.note(by, "took out the data of", LEFT);
            return true;
        });
    }

    private void forget(String column, String name) {
        database.tables().columns().forEach((table, columns) -> {
            if (columns.contains(column))
                sql.sql("update " + table + " set " + column + " = ? where " + column + " = ?")
                        .params(LEFT, name)
                        .update();
        });
    }

    /** Sets a password. Whoever was signed in under this name is signed out. */
    void setPassword(Person who, String password) {
        database.doTogether(() -> {
            sql.sql("update person set secret = ? where id = ?")
                    .params(hash(password), who.id())
                    .update();
            endSessions(who.signIn());
            audit.note(who.name(), "set a password", who.signIn());
        });
    }

    /** Changes one's own password. False where the present one is not right. */
    public boolean changePassword(Person who, String present, String next) {
        UserDetails details = loadUserByUsername(who.signIn());
        if (!passwords.matches(present, details.getPassword())) return false;
        setPassword(who, next);
        return true;
    }

    /** Someone who may come in. */
    Optional<Person> find(String signIn) {
        return sql.sql("select id, sign_in, name, role from person where sign_in = ? and closed_at is null")
                .param(plain(signIn))
                .query((row, n) -> new Person(
                        row.getString("id"),
                        row.getString("sign_in"),
                        row.getString("name"),
                        Role.of(row.getString("role"))))
                .optional();
    }

    @Override
    public UserDetails loadUserByUsername(String signIn) {
        return sql.sql(
                        "select sign_in, role, secret from person where sign_in = ? and secret <> '' and closed_at is null")
                .param(plain(signIn))
                .query((row, n) -> User.withUsername(row.getString("sign_in"))
                        .password(row.getString("secret"))
                        .roles(Role.of(row.getString("role")).name())
                        .build())
                .optional()
                .orElseThrow(() -> new UsernameNotFoundException("Nobody signs in so"));
    }

    private boolean isLastOwner(PersonLine who) {
        boolean owner = who.person().role() == Role.OWNER && !who.closed();
        long others = all().stream()
                .filter(line -> line.person().role() == Role.OWNER && !line.closed() && line.password())
                .filter(line -> !line.person().id().equals(who.person().id()))
                .count();
        return owner && others == 0;
    }

    private String insert(String signIn, String name, Role role, String secret) {
        String id = Secret.id();
        sql.sql("insert into person (id, sign_in, name, role, secret, made_at) values (?, ?, ?, ?, ?, ?)")
                .params(id, plain(signIn), name.strip(), role.key(), secret, clock.millis())
                .update();
        return id;
    }

    private void endSessions(String signIn) {
        sql.sql("delete from spring_session where principal_name = ?")
                .param(signIn)
                .update();
    }

    private String hash(String password) {
        return Objects.requireNonNull(passwords.encode(password));
    }

    static String plain(String signIn) {
        return signIn.strip().toLowerCase(Locale.ROOT);
    }
}
