package plumbleaf.web.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.bcrypt.BCryptPasswordEncoder;
import plumbleaf.web.files.JobFiles;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.Step;

/** Who comes in, with what, and until when. The same on every kind of store. */
abstract class PeopleRules {
    private static final String PASSWORD = "four plain garden words";
    private static final String OTHER = "rain on the gate post";

    private final BCryptPasswordEncoder encoder = new BCryptPasswordEncoder(4);
    private Instant now = Instant.parse("2027-04-19T10:00:00Z");
    private Database database;
    private Audit audit;
    private People people;
    private Invitations invitations;
    private ApiTokens keys;
    private SignInThrottle throttle;

    abstract String emptyStore();

    /** A clock that the test moves. */
    private final Clock clock = new Clock() {
        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    };

    @BeforeEach
    void open() {
        database = Database.open(emptyStore());
        audit = new Audit(database, clock);
        people = new People(database, clock, encoder, audit);
        invitations = new Invitations(database, clock, people, audit);
        keys = new ApiTokens(database, clock, people, audit);
        throttle = new SignInThrottle(database, clock, audit);
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void ofManyWhoWantToBeTheFirstOwnerOneIs() throws Exception {
        ExecutorService all = Executors.newFixedThreadPool(4);
        try {
            List<Callable<Boolean>> tries = new ArrayList<>();
            for (int i = 0; i < 4; i++) {
                String signIn = "owner" + i;
                tries.add(() -> people.makeFirstOwner(signIn, "One", PASSWORD));
            }
            int made = 0;
            for (Future<Boolean> one : all.invokeAll(tries)) if (one.get()) made++;
            assertThat(made).isEqualTo(1);
        } finally {
            all.shutdownNow();
        }
        assertThat(people.all()).hasSize(1);
        assertThat(people.nobodyYet()).isFalse();
    }

    @Test
    void whoIsAddedSetsTheirPasswordWithALinkThatWorksOnceForAWeek() {
        Person cora = added("cora", Role.CREW);
        assertThatThrownBy(() -> people.loadUserByUsername("cora")).isInstanceOf(UsernameNotFoundException.class);
        Secret old = invitations.invite(cora, "Wen");
        Secret link = invitations.invite(cora, "Wen");
        assertThat(invitations.invited(old)).isEmpty();
        assertThat(invitations.invited(link)).contains(cora);
        now = now.plus(Duration.ofDays(6));
        assertThat(invitations.setPassword(link, OTHER)).isTrue();
        assertThat(invitations.setPassword(link, PASSWORD)).isFalse();
        assertThat(encoder.matches(OTHER, people.loadUserByUsername(" CORA ").getPassword()))
                .isTrue();
        Secret late = invitations.invite(cora, "Wen");
        now = now.plus(Duration.ofDays(8));
        assertThat(invitations.invited(late)).isEmpty();
        assertThat(invitations.setPassword(late, PASSWORD)).isFalse();
        assertThat(stored()).doesNotContain(link.text()).doesNotContain(OTHER);
    }

    @Test
    void whoIsShutOutHasNoWayIn() {
        people.makeFirstOwner("wen", "Wen", PASSWORD);
        Person cora = added("cora", Role.CREW);
        invitations.setPassword(invitations.invite(cora, "Wen"), OTHER);
        Secret key = keys.make(cora, "truck");
        Secret link = invitations.invite(cora, "Wen");
        signIn("cora");
        assertThat(people.setClosed(cora.id(), true, "Wen")).isTrue();
        assertThat(sessions()).isZero();
        assertThat(people.find("cora")).isEmpty();
        assertThat(keys.person(key)).isEmpty();
        assertThat(invitations.invited(link)).isEmpty();
        assertThatThrownBy(() -> people.loadUserByUsername("cora")).isInstanceOf(UsernameNotFoundException.class);
        assertThat(people.setClosed(cora.id(), false, "Wen")).isTrue();
        assertThat(keys.person(key)).contains(cora);
    }

    @Test
    void anotherRoleOrPasswordEndsEverySignIn() {
        people.makeFirstOwner("wen", "Wen", PASSWORD);
        Person cora = added("cora", Role.ESTIMATOR);
        signIn("cora");
        people.setRole(cora.id(), Role.CREW, "Wen");
        assertThat(sessions()).isZero();
        signIn("wen");
        Person wen = people.find("wen").orElseThrow();
        assertThat(people.changePassword(wen, "not this one", OTHER)).isFalse();
        assertThat(sessions()).isEqualTo(1);
        assertThat(people.changePassword(wen, PASSWORD, OTHER)).isTrue();
        assertThat(sessions()).isZero();
    }

    @Test
    void thereStaysAnOwnerWhoCanSignIn() {
        people.makeFirstOwner("wen", "Wen", PASSWORD);
        String wen = people.find("wen").orElseThrow().id();
        assertThat(people.setRole(wen, Role.OFFICE, "Wen")).isFalse();
        Person odo = added("odo", Role.OWNER);
        assertThat(people.setClosed(wen, true, "Wen")).isFalse();
        invitations.setPassword(invitations.invite(odo, "Wen"), OTHER);
        assertThat(people.setClosed(wen, true, "Odo")).isTrue();
        assertThat(people.setClosed(odo.id(), true, "Odo")).isFalse();
    }

    @Test
    void guessingIsSlowedForTheGuesserNotForTheOwner() {
        for (int i = 0; i < SignInThrottle.FOR_ONE_NAME_FROM_ONE_ADDRESS; i++) {
            assertThat(throttle.isTooOften("wen", "192.0.2.7")).isFalse();
            throttle.refused("WEN ", "192.0.2.7");
        }
        assertThat(throttle.isTooOften("wen", "192.0.2.7")).isTrue();
        assertThat(throttle.isTooOften("wen", "192.0.2.8")).isFalse();
        assertThat(throttle.isTooOften("odo", "192.0.2.7")).isFalse();
        for (int i = 0; i < SignInThrottle.FROM_ONE_ADDRESS; i++) throttle.refused("name" + i, "192.0.2.7");
        assertThat(throttle.isTooOften("odo", "192.0.2.7")).isTrue();
        now = now.plus(SignInThrottle.REMEMBERED).plusSeconds(1);
        assertThat(throttle.isTooOften("wen", "192.0.2.7")).isFalse();
    }

    @Test
    void aPasswordIsLongAndNotAmongTheFirstTried() {
        assertThat(Passwords.complaint(PASSWORD, "wen")).isEmpty();
        for (String poor : List.of(
                "short",
                "aaaaaaaaaaaaaaaa",
                "123456789012",
                "my password 1",
                "qwertyuiopasdf",
                "odalys-odalys",
                "x".repeat(73)))
            assertThat(Passwords.complaint(poor, "odalys")).as(poor).isPresent();
    }

    @Test
    void theLogSaysWhoDidWhatAndHoldsNoSecret() {
        people.makeFirstOwner("wen", "Wen", PASSWORD);
        Person cora = added("cora", Role.CREW);
        Secret link = invitations.invite(cora, "Wen");
        Secret key = keys.make(cora, "truck");
        throttle.refused("cora", "192.0.2.7");
        List<Audit.Line> lines = audit.latest(50);
        assertThat(lines)
                .extracting(Audit.Line::what)
                .contains("became the first owner", "added as crew", "was refused at the door");
        assertThat(lines.toString())
                .doesNotContain(link.text())
                .doesNotContain(key.text())
                .doesNotContain(PASSWORD);
    }

    @Test
    void whoHasLeftCanBeTakenOutOfEverything() {
        people.makeFirstOwner("wen", "Wen", PASSWORD);
        String id = people.add("cora.finn", "Cora Finn", Role.ESTIMATOR, "Wen");
        Person cora = people.line(id).map(PersonLine::person).orElseThrow();
        invitations.setPassword(invitations.invite(cora, "Wen"), OTHER);
        keys.make(cora, "truck");
        invitations.invite(cora, "Wen");
        throttle.refused("cora.finn", "192.0.2.7");
        signIn("cora.finn");
        JobStore store = new JobStore(database, clock);
        JobId job = store.create("Yard", "1", "Cora Finn").id();
        store.edit(job, 1, "Yard", "2", "two", "Wen");
        new JobFiles(database, clock).add(job, "job", "a.txt", new byte[] {'a'}, "Cora Finn");
        assertThat(people.takeOut(id, "Wen")).isFalse();
        people.setClosed(id, true, "Wen");
        assertThat(everything()).contains("Cora Finn", "cora.finn");
        assertThat(people.takeOut(id, "Wen")).isTrue();
        assertThat(everything()).doesNotContain("Cora Finn", "cora.finn", id);
        assertThat(store.history(job)).extracting(Step::who).containsExactly("Wen", People.LEFT);
        assertThat(audit.latest(50)).extracting(Audit.Line::what).contains("took out the data of");
        assertThat(people.isTaken("cora.finn")).isFalse();
    }

    @Test
    void aNameThatSomebodyElseHasTooStaysTheirs() {
        people.makeFirstOwner("wen", "Wen", PASSWORD);
        String left = people.add("odo1", "Odo", Role.CREW, "Wen");
        people.add("odo2", "Odo", Role.CREW, "Wen");
        JobStore store = new JobStore(database, clock);
        JobId job = store.create("Yard", "1", "Odo").id();
        people.setClosed(left, true, "Wen");
        assertThat(people.takeOut(left, "Wen")).isTrue();
        assertThat(store.history(job)).extracting(Step::who).containsExactly("Odo");
        assertThat(everything()).doesNotContain("odo1").contains("odo2");
    }

    /** Every row of every table, as text. */
    private String everything() {
        List<String> tables = new ArrayList<>(database.tables().names());
        tables.addAll(List.of("spring_session", "refused_sign_in"));
        StringBuilder all = new StringBuilder();
        for (String table : tables)
            all.append(database.sql().sql("select * from " + table).query().listOfRows());
        return all.toString();
    }

    private Person added(String signIn, Role role) {
        String id = people.add(signIn, signIn, role, "Wen");
        return people.line(id).map(PersonLine::person).orElseThrow();
    }

    private void signIn(String name) {
        database.sql()
                .sql("insert into spring_session values (?, ?, 1, 1, 1, 9999999999999, ?)")
                .params(name, name, name)
                .update();
    }

    private long sessions() {
        return database.sql()
                .sql("select count(*) from spring_session")
                .query(Long.class)
                .single();
    }

    private String stored() {
        Optional<List<String>> all = Optional.of(database.sql()
                .sql("select token from invitation union all select secret from person")
                .query(String.class)
                .list());
        return all.get().toString();
    }
}
