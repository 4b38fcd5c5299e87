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
    private Map<Q, A> before = new LinkedHashMap<>();
    private Map<Q, A> now = new LinkedHashMap<>();

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
        A answer = now.get(question);
        if (answer == null) answer = before.get(question);
        if (answer != null) now.put(question, answer);
        return Optional.ofNullable(answer);
    }

    A answer(Q question, Supplier<A> work) {
        A answer = now.get(question);
        if (answer == null) answer = before.get(question);
        if (answer == null) answer = work.get();
        now.put(question, answer);
        return answer;
    }
}
