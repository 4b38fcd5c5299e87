package plumbleaf.web.page;

import java.util.Optional;
import plumbleaf.web.people.Role;

/**
 * What every page carries.
 *
 * @param look {@code light}, {@code dark} or empty for what the screen prefers
 * @param role  what the person is here for; nothing before they sign in
 * @param local whether one person works here without sign-in
 */
public record Frame(String title, String csrf, String person, Optional<Role> role, boolean local, String look) {
    public boolean edits() {
        return role.map(Role::edits).orElse(false);
    }

    public boolean seesMoney() {
        return role.map(Role::seesMoney).orElse(false);
    }

    public boolean owns() {
        return role.equals(Optional.of(Role.OWNER));
    }
}
