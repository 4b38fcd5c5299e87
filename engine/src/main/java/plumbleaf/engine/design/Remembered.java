package plumbleaf.engine.design;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Answers by their questions, kept from one design of a job to the next. A question holds all that its answer is worked out from, so an answer that is found is the
 * one that would be worked out again. What neither this design nor the one before it asked for is forgotten, so that it never holds more than two designs.
 */
final class Remembered<Q, A> {
    private Map<Asked<Q>, A> before = new LinkedHashMap<>();
    private Map<Asked<Q>, A> now = new LinkedHashMap<>();

    /** A question with its number: a question is a large part of a job, and its number is worked out once for all that is looked up with it. */
    private record Asked<Q>(Q question, int number) {
        static <Q> Asked<Q> of(Q question) {
            return new Asked<>(question, question.hashCode());
        }

        @Override
        public int hashCode() {
            return number;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Asked<?> asked && number == asked.number && question.equals(asked.question);
        }
    }

    /** Another design begins. */
    void turn() {
        before = now;
        now = new LinkedHashMap<>();
    }

    void forget() {
        before = new LinkedHashMap<>();
        now = new LinkedHashMap<>();
    }

    /** What is known already; asked for now, it is kept on. */
    Optional<A> known(Q question) {
        Asked<Q> asked = Asked.of(question);
        A answer = now.get(asked);
        if (answer == null) answer = before.get(asked);
        if (answer != null) now.put(asked, answer);
        return Optional.ofNullable(answer);
    }

    A answer(Q question, Supplier<A> work) {
        Asked<Q> asked = Asked.of(question);
        A answer = now.get(asked);
        if (answer != null) return answer;
        answer = before.get(asked);
        if (answer == null) answer = work.get();
        now.put(asked, answer);
        return answer;
    }
}
