/**
 * Who is there and what they may do. Two ways to run: local, one person on this machine, without sign-in and only from this machine; and
 * served, with sign-in. Does not know jobs.
 *
 * <p>Read {@link plumbleaf.web.people.Role}, {@link plumbleaf.web.people.RoleRules}, {@link plumbleaf.web.people.People}, {@link plumbleaf.web.people.SecurityRules}.
 */
@NullMarked
package plumbleaf.web.people;

import org.jspecify.annotations.NullMarked;
