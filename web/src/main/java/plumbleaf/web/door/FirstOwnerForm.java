package plumbleaf.web.door;

/** What was typed, each with what is wrong with it; the password itself is never sent back. */
public record FirstOwnerForm(
        String code,
        String codeProblem,
        String name,
        String nameProblem,
        String signIn,
        String signInProblem,
        String passwordProblem) {
    static final FirstOwnerForm EMPTY = new FirstOwnerForm("", "", "", "", "", "", "");

    boolean refused() {
        return !(codeProblem + nameProblem + signInProblem + passwordProblem).isEmpty();
    }
}
