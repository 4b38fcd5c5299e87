package plumbleaf.cli;

import java.io.Serial;
import java.util.List;
import plumbleaf.jobfile.input.InputError;

/** What was given cannot be used; the command ends with every error named and nothing written. */
final class BadInput extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1L;

    private final transient List<InputError> errors;

    BadInput(List<InputError> errors) {
        super(errors.isEmpty() ? "bad input" : errors.get(0).text());
        this.errors = List.copyOf(errors);
    }

    static BadInput of(String file, String problem, String cure) {
        return new BadInput(List.of(InputError.ofFile(file, problem, cure)));
    }

    List<InputError> errors() {
        return errors;
    }
}
