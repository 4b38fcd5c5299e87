package plumbleaf.engine.job;

import java.util.function.Function;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Which way a leg goes. */
public sealed interface Heading {
    <T> T match(
            Function<Bearing, T> bearing,
            Function<Turn, T> turn,
            Function<Diagonal, T> diagonal,
            Function<Offsets, T> offsets);

    /** Clockwise from north. */
    record Bearing(Angle fromNorth) implements Heading {
        @Override
        public <T> T match(
                Function<Bearing, T> bearing,
                Function<Turn, T> turn,
                Function<Diagonal, T> diagonal,
                Function<Offsets, T> offsets) {
            return bearing.apply(this);
        }
    }

    /** Away from the leg before it, positive to the left. */
    record Turn(Angle left) implements Heading {
        @Override
        public <T> T match(
                Function<Bearing, T> bearing,
                Function<Turn, T> turn,
                Function<Diagonal, T> diagonal,
                Function<Offsets, T> offsets) {
            return turn.apply(this);
        }
    }

    /** A corner taped as a triangle: level, from where the leg before it begins to where this one ends, and the side it turns to. */
    record Diagonal(Length tape, Side to) implements Heading {
        @Override
        public <T> T match(
                Function<Bearing, T> bearing,
                Function<Turn, T> turn,
                Function<Diagonal, T> diagonal,
                Function<Offsets, T> offsets) {
            return diagonal.apply(this);
        }

        /**
         * The turn at the corner between two legs {@code a} and {@code b} with {@code c} across: {@code t = pi - arccos((a^2 + b^2 - c^2) / 2ab)}, to the side the
         * corner turns. Tapes that reach no triangle give straight on or straight back.
         * Source: law of cosines. Check: TapedCornerCheck.
         */
        public Angle turn(Length before, Length leg) {
            double a = before.inches();
            double b = leg.inches();
            double c = tape.inches();
            double cosine = Math.max(-1, Math.min(1, (a * a + b * b - c * c) / (2 * a * b)));
            double turn = Math.PI - StrictMath.acos(cosine);
            return new Angle(to == Side.LEFT ? turn : -turn);
        }

        /** Whether three tapes make a triangle. */
        public boolean closes(Length before, Length leg) {
            double longest = before.inches() + leg.inches();
            double shortest = Math.abs(before.inches() - leg.inches());
            return tape.inches() <= longest && tape.inches() >= shortest;
        }
    }

    /** A corner taped by offsets: so far on along the leg before it, then so far square to it, positive to the left. */
    record Offsets(Offset along, Offset left) implements Heading {
        @Override
        public <T> T match(
                Function<Bearing, T> bearing,
                Function<Turn, T> turn,
                Function<Diagonal, T> diagonal,
                Function<Offsets, T> offsets) {
            return offsets.apply(this);
        }

        public Angle turn() {
            return new Angle(StrictMath.atan2(left.inches(), along.inches()));
        }

        /** From corner to corner. */
        public Length length() {
            return new Length(Math.sqrt(along.inches() * along.inches() + left.inches() * left.inches()));
        }
    }
}
