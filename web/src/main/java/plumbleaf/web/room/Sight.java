package plumbleaf.web.room;

import plumbleaf.web.people.Role;

/** How much of a job somebody sees. */
public enum Sight {
    EVERYTHING,
    WITHOUT_MONEY;

    public static Sight of(Role role) {
        return role.seesMoney() ? EVERYTHING : WITHOUT_MONEY;
    }
}
