package plumbleaf.engine.job;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;

/** The sides of a run: one more laid over them, and all of them in a line of words as a remedy's edit holds them. */
public final class RunSides {
    private static final String BETWEEN = " | ";
    private static final Pattern SIDE = Pattern.compile(
            "(.+) to (.+?):(?: basis ([a-z]+))?(?: post ([A-Za-z0-9._-]+))?(?: hole ([^:]+?))?(?: depth ([^:]+?))?(?: bays ([^:]+))?");

    private RunSides() {}

    /**
     * The sides with a change between two stations: where a side lies there its part is changed, where none does a new one is made.
     *
     * @param now in order, none over another
     */
    public static List<RunSide> changed(List<RunSide> now, Length from, Length to, UnaryOperator<RunSide> change) {
        List<RunSide> sides = new ArrayList<>();
        Length bare = from;
        for (RunSide side : now) {
            if (side.to().compareTo(from) <= 0 || side.from().compareTo(to) >= 0) {
                sides.add(side);
                continue;
            }
            if (side.from().compareTo(from) < 0) sides.add(side.between(side.from(), from));
            if (side.from().compareTo(bare) > 0) sides.add(change.apply(RunSide.open(bare, side.from())));
            Length first = side.from().compareTo(from) > 0 ? side.from() : from;
            Length last = side.to().compareTo(to) < 0 ? side.to() : to;
            sides.add(change.apply(side.between(first, last)));
            if (side.to().compareTo(to) > 0) sides.add(side.between(to, side.to()));
            bare = last;
        }
        if (bare.compareTo(to) < 0) sides.add(change.apply(RunSide.open(bare, to)));
        sides.sort(Comparator.comparing(RunSide::from));
        return sides;
    }

    /** {@code 0" to 48': post F1083-REG-2.5 | 48' to 96': basis engineered depth 36"}. */
    public static String text(List<RunSide> sides) {
        List<String> said = new ArrayList<>();
        for (RunSide side : sides) {
            StringBuilder words = new StringBuilder(exact(side.from()) + " to " + exact(side.to()) + ":");
            side.basis().value().ifPresent(basis -> words.append(" basis ").append(basis.key()));
            side.post().value().ifPresent(post -> words.append(" post ").append(post));
            side.hole().value().ifPresent(hole -> words.append(" hole ").append(exact(hole)));
            side.depth().value().ifPresent(depth -> words.append(" depth ").append(exact(depth)));
            side.maxBay().value().ifPresent(bay -> words.append(" bays ").append(exact(bay)));
            said.add(words.toString());
        }
        return String.join(BETWEEN, said);
    }

    private static String exact(Length length) {
        return LengthText.exact(length.inches());
    }

    /** Such words read again; empty where they are not such. */
    public static Optional<List<RunSide>> of(String text) {
        List<RunSide> sides = new ArrayList<>();
        for (String words : List.of(text.split(Pattern.quote(BETWEEN), -1))) {
            Optional<RunSide> side = side(words);
            if (side.isEmpty()) return Optional.empty();
            sides.add(side.get());
        }
        return Optional.of(sides);
    }

    private static Optional<RunSide> side(String words) {
        Matcher said = SIDE.matcher(words);
        if (!said.matches()) return Optional.empty();
        Optional<Length> from = LengthText.length(said.group(1)).value();
        Optional<Length> to = LengthText.length(said.group(2)).value();
        Optional<Stated<DesignBasis>> basis = basis(said.group(3));
        Optional<Stated<Length>> hole = length(said.group(5));
        Optional<Stated<Length>> depth = length(said.group(6));
        Optional<Stated<Length>> bays = length(said.group(7));
        if (from.isEmpty() || to.isEmpty() || basis.isEmpty() || hole.isEmpty() || depth.isEmpty() || bays.isEmpty())
            return Optional.empty();
        return Optional.of(new RunSide(
                from.get(),
                to.get(),
                basis.get(),
                said.group(4) == null ? Stated.open() : Stated.of(said.group(4)),
                hole.get(),
                depth.get(),
                bays.get()));
    }

    /** Open where nothing is said; empty where it is no basis. */
    private static Optional<Stated<DesignBasis>> basis(@Nullable String key) {
        if (key == null) return Optional.of(Stated.open());
        for (DesignBasis basis : DesignBasis.values())
            if (basis.key().equals(key)) return Optional.of(Stated.of(basis));
        return Optional.empty();
    }

    private static Optional<Stated<Length>> length(@Nullable String text) {
        return text == null
                ? Optional.of(Stated.open())
                : LengthText.length(text).value().map(Stated::of);
    }
}
