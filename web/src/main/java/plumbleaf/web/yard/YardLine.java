package plumbleaf.web.yard;

import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.jobfile.stock.YardRow;

/**
 * A line of the yard's page.
 *
 * @param job that left it, or that has it; empty for what was counted in
 */
public record YardLine(String mark, int count, String item, String size, String job) {
    static YardLine of(YardRow row) {
        return new YardLine(
                row.mark(), row.count(), row.item(), size(row), row.job().title());
    }

    private static String size(YardRow row) {
        return switch (row.kind()) {
            case BAR -> LengthText.feetAndInches(row.length().inches());
            case OFFCUT -> LengthText.feetAndInches(row.length().inches()) + " offcut";
            case GOODS -> DecimalText.upTo(row.contents(), 2) + " " + row.of().key() + " each";
        };
    }
}
