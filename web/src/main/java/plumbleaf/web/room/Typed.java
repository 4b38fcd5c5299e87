package plumbleaf.web.room;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What someone typed that could not be kept: it is shown again in its field with the reason beside it.
 *
 * @param path    of the field, or of the list of a form; empty when nothing was typed
 * @param problem why it was refused, with the cure
 * @param form    what stood in the blanks of a form
 */
record Typed(String path, String value, String problem, Map<String, String> form) {
    static final Typed NOTHING = new Typed("", "", "");

    Typed {
        form = Collections.unmodifiableMap(new LinkedHashMap<>(form));
    }

    Typed(String path, String value, String problem) {
        this(path, value, problem, Map.of());
    }
}
