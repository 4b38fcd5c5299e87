package plumbleaf.engine.finding;

/**
 * What a limit or a method rests on.
 *
 * @param kind how well it is founded
 * @param text the clause for a published source ({@code IBC 2021 1807.3.2.1}); a few words for the others
 */
public record Basis(Kind kind, String text) {
    /** From a clause one can open to a plain judgement. */
    public enum Kind {
        CLAUSE,
        COMMON_PRACTICE,
        FROM_MEMORY,
        JUDGEMENT,
        JOB
    }

    public static Basis clause(String text) {
        return new Basis(Kind.CLAUSE, text);
    }

    public static Basis commonPractice(String what) {
        return new Basis(Kind.COMMON_PRACTICE, what);
    }

    public static Basis fromMemory(String clause) {
        return new Basis(Kind.FROM_MEMORY, clause);
    }

    public static Basis judgement(String what) {
        return new Basis(Kind.JUDGEMENT, what);
    }

    /** A limit that the job itself states. */
    public static Basis job(String what) {
        return new Basis(Kind.JOB, what);
    }

    /** As it is printed beside a number. */
    public String words() {
        return switch (kind) {
            case CLAUSE -> text;
            case COMMON_PRACTICE -> joined("common practice, no source");
            case FROM_MEMORY -> text + ", from memory";
            case JUDGEMENT -> joined("judgement");
            case JOB -> joined("set by the job");
        };
    }

    private String joined(String label) {
        return text.isEmpty() ? label : text + ", " + label;
    }
}
