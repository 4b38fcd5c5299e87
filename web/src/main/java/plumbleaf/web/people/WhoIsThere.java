package plumbleaf.web.people;

import java.security.Principal;
import org.jspecify.annotations.Nullable;

/** The person behind a request. */
public final class WhoIsThere {
    private final Mode mode;
    private final People people;

    WhoIsThere(Mode mode, People people) {
        this.mode = mode;
        this.people = people;
    }

    public Mode mode() {
        return mode;
    }

    /** @param signedIn what the request carries; nothing in local mode */
    public Person person(@Nullable Principal signedIn) {
        if (mode == Mode.LOCAL) return Person.HERE;
        if (signedIn == null) throw new IllegalStateException("A request without sign-in came past the door");
        return people.find(signedIn.getName())
                .orElseThrow(() -> new IllegalStateException("Signed in, but not in the store: " + signedIn.getName()));
    }
}
