package plumbleaf.jobfile.cutlist;

import java.util.List;
import plumbleaf.engine.bars.SawRules;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.takeoff.Saws;
import plumbleaf.jobfile.input.InputError;

/**
 * How a saw eats a bar, as somebody writes it.
 *
 * @param kerf what a cut takes
 * @param trim what comes off a bar's mill end, with a cut of its own
 * @param keep rests from this length are kept
 */
public record SawEntry(String kerf, String trim, String keep) {
    private static final double NM_PER_INCH = 25_400_000.0;

    /** As steel is sawn for a job. */
    public static final SawEntry USUAL = of(Saws.USUAL.steel());

    private static SawEntry of(SawRules saw) {
        return new SawEntry(text(saw.kerfNm()), text(saw.endTrimNm()), text(saw.leastUsableOffcutNm()));
    }

    private static String text(long nanometres) {
        return LengthText.inchesOnly(nanometres / NM_PER_INCH);
    }

    /**
     * The rules; where one of the three does not read, an error is added and none of it may be used.
     *
     * @param asked where it was asked for, as errors name it
     * @param names what the three are called there
     */
    public SawRules rules(String asked, List<String> names, List<InputError> errors) {
        return new SawRules(
                nanometres(asked, names.get(0), kerf, errors),
                nanometres(asked, names.get(1), trim, errors),
                nanometres(asked, names.get(2), keep, errors));
    }

    private static long nanometres(String asked, String name, String text, List<InputError> errors) {
        return LengthText.length(text).match(read -> read.is().nanometres(), refused -> {
            errors.add(new InputError(asked, 0, 0, name, text, refused.problem(), refused.cure()));
            return 0L;
        });
    }
}
