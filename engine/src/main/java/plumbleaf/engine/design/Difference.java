package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import plumbleaf.engine.footing.FootingDesign;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.PriceLine;

/**
 * What one design of a job has over another: a change order, or an option beside the job itself. Every amount is after less before.
 *
 * @param price with tax
 * @param siteDays crew-days on site
 * @param lines of direct cost that are not the same, in the order of the later design, then those that are gone
 * @param parts posts and gates that came, went or changed
 */
public record Difference(Money price, double siteDays, List<LineChange> lines, List<PartChange> parts) {
    public Difference {
        lines = List.copyOf(lines);
        parts = List.copyOf(parts);
    }

    /** A line of direct cost in both designs; zero where it is not in one. */
    public record LineChange(String name, String unit, double before, double after, Money amount) {}

    /** What became of a part. */
    public enum Way {
        NEW("new"),
        GONE("gone"),
        CHANGED("changed");

        private final String key;

        Way(String key) {
            this.key = key;
        }

        /** As files hold it and people read it. */
        public String key() {
            return key;
        }
    }

    /** @param part id of a post or gate */
    public record PartChange(String part, Way way) {}

    public static Difference of(Design before, Design after) {
        return new Difference(
                after.quote().price().total().minus(before.quote().price().total()),
                after.quote().schedule().siteDays() - before.quote().schedule().siteDays(),
                lines(before, after),
                parts(before, after));
    }

    public boolean isNothing() {
        return price.isZero() && lines.isEmpty() && parts.isEmpty();
    }

    private static List<LineChange> lines(Design before, Design after) {
        Map<String, PriceLine> was = byKey(before);
        Map<String, PriceLine> is = byKey(after);
        Set<String> keys = new LinkedHashSet<>(is.keySet());
        keys.addAll(was.keySet());
        List<LineChange> changes = new ArrayList<>();
        for (String key : keys) {
            PriceLine old = was.get(key);
            PriceLine line = is.get(key);
            PriceLine named = line != null ? line : Objects.requireNonNull(old);
            Money amount = amount(line).minus(amount(old));
            double from = old == null ? 0 : old.quantity();
            double to = line == null ? 0 : line.quantity();
            if (!amount.isZero() || from != to)
                changes.add(new LineChange(named.name(), named.unit(), from, to, amount));
        }
        return changes;
    }

    private static Money amount(@Nullable PriceLine line) {
        return line == null ? Money.ZERO : line.amount();
    }

    /** The same thing of two suppliers is two lines. */
    private static Map<String, PriceLine> byKey(Design design) {
        Map<String, PriceLine> lines = new LinkedHashMap<>();
        for (PriceLine line : design.quote().price().lines()) {
            String key = line.category().key() + "/" + line.item() + "/" + line.name() + "/" + line.unit();
            PriceLine other = lines.get(key);
            lines.put(key, other == null ? line : joined(/* one= */ other, /* other= */ line));
        }
        return lines;
    }

    private static PriceLine joined(PriceLine one, PriceLine other) {
        return new PriceLine(
                one.category(),
                one.item(),
                one.name(),
                one.quantity() + other.quantity(),
                one.unit(),
                one.price(),
                one.amount().plus(other.amount()),
                one.taxed(),
                one.causes());
    }

    private static List<PartChange> parts(Design before, Design after) {
        Map<String, Object> was = builds(before);
        Map<String, Object> is = builds(after);
        List<PartChange> changes = new ArrayList<>();
        is.forEach((id, build) -> {
            if (!was.containsKey(id)) changes.add(new PartChange(id, Way.NEW));
            else if (!build.equals(was.get(id))) changes.add(new PartChange(id, Way.CHANGED));
        });
        for (String id : was.keySet()) {
            if (!is.containsKey(id)) changes.add(new PartChange(id, Way.GONE));
        }
        return changes;
    }

    /** What would be dug, cut or hung otherwise if it were not the same. */
    private static Map<String, Object> builds(Design design) {
        Map<String, Object> builds = new LinkedHashMap<>();
        for (PostDesign post : design.posts())
            builds.put(
                    post.post().id(),
                    List.of(post.post(), post.section(), post.footing().map(FootingDesign::hole)));
        for (GateDesign gate : design.gates())
            builds.put(
                    gate.id(),
                    List.of(gate.plan().leaves(), gate.parts(), gate.plan().sentence()));
        return builds;
    }
}
