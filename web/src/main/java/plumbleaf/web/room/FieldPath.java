package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a value stands in a job file: {@code gates[G1].leaf.hingeGap}. An item of a list is named by its id or its place.
 */
public record FieldPath(List<Step> steps) {
    private static final int LONGEST = 200;
    private static final int LONGEST_ITEM = 20;

    public FieldPath {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) throw new IllegalArgumentException("A path names at least one thing");
    }

    /** @param item whether {@code name} is an item of a list */
    record Step(String name, boolean item) {}

    /** Every field of every answer asks this several times, so it is read letter by letter, without a pattern. */
    static FieldPath of(String text) {
        if (text.length() > LONGEST) throw new IllegalArgumentException("Not a path in a job file");
        List<Step> steps = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            boolean item = text.charAt(at) == '[';
            int from = item || at > 0 ? at + 1 : at;
            int to = from;
            while (to < text.length() && isOfName(text.charAt(to), item)) to++;
            boolean reads = item
                    ? to > from && to - from <= LONGEST_ITEM && text.startsWith("]", to)
                    : to > from && isLetter(text.charAt(from)) && (at == 0 || text.charAt(at) == '.');
            if (!reads) throw new IllegalArgumentException("Not a path in a job file: " + text);
            steps.add(new Step(text.substring(from, to), item));
            at = item ? to + 1 : to;
        }
        return new FieldPath(steps);
    }

    private static boolean isOfName(char sign, boolean item) {
        return isLetter(sign) || (sign >= '0' && sign <= '9') || sign == '-' || (item && (sign == '.' || sign == '_'));
    }

    private static boolean isLetter(char sign) {
        return (sign >= 'a' && sign <= 'z') || (sign >= 'A' && sign <= 'Z');
    }

    Step last() {
        return steps.get(steps.size() - 1);
    }
}
