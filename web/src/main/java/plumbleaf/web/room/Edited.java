package plumbleaf.web.room;

import java.util.function.Function;

/** What came of a change before it is kept. */
sealed interface Edited {
    <T> T match(Function<Fine, T> fine, Function<Refused, T> refused);

    /**
     * The changed job reads well.
     *
     * @param what the change in a few words, for the history
     */
    record Fine(String title, String text, String what) implements Edited {
        @Override
        public <T> T match(Function<Fine, T> fine, Function<Refused, T> refused) {
            return fine.apply(this);
        }
    }

    /**
     * @param path    the field, as it is numbered in the file
     * @param problem why not, with the cure
     */
    record Refused(String path, String problem) implements Edited {
        @Override
        public <T> T match(Function<Fine, T> fine, Function<Refused, T> refused) {
            return refused.apply(this);
        }
    }
}
