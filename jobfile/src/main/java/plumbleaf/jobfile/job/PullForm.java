package plumbleaf.jobfile.job;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.support.PullTest;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.TextKind;

/** A pull by hand scale with its two readings, on a post that stood before or on the first new one. */
final class PullForm {
    private PullForm() {}

    static PullTest read(Fields test) {
        return new PullTest(
                test.needed("force", TextKind.FORCE, Force.ZERO),
                test.needed("at", Words.HEIGHT, Length.ZERO),
                test.needed("low", Words.DOWN, Length.ZERO),
                test.needed("movedLow", Words.DOWN, Length.ZERO),
                test.needed("high", Words.HEIGHT, Length.ZERO),
                test.needed("movedHigh", Words.DOWN, Length.ZERO),
                test.assumed("leftOver", Words.DOWN, Length.ZERO, "not read"));
    }

    static void write(PullTest test, Entries out) {
        out.put("force", TextKind.FORCE, test.force())
                .put("at", TextKind.LENGTH, test.at())
                .put("low", TextKind.LENGTH, test.low())
                .put("movedLow", TextKind.LENGTH, test.movedLow())
                .put("high", TextKind.LENGTH, test.high())
                .put("movedHigh", TextKind.LENGTH, test.movedHigh())
                .put("leftOver", TextKind.LENGTH, test.leftOver());
    }
}
