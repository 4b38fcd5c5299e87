package plumbleaf.web.store;

import java.util.regex.Pattern;

/**
 * Who makes a change, and the name under which their device sends it: a change that comes twice under one name is made once.
 *
 * @param sending empty where nothing would send it again by itself
 */
public record Maker(String name, String sending) {
    private static final Pattern SENDING = Pattern.compile("[a-z0-9-]{1,40}");

    public static Maker of(String name) {
        return new Maker(name, "");
    }

    /** What a device says it sends the change under, left out where it is no such name: up to 40 small letters, digits and hyphens. */
    public Maker sending(String said) {
        return SENDING.matcher(said).matches() ? new Maker(name, said) : this;
    }
}
