package plumbleaf.web.yard;

import plumbleaf.jobfile.stock.ItemNames;
import plumbleaf.jobfile.stock.YardRow;
import plumbleaf.web.store.JobId;

/**
 * A line of the yard's page.
 *
 * @param item what it is, in words
 * @param job that left it, that it is kept for, or that has it; empty for what was counted in
 * @param jobMark what the yard knows that job by
 * @param number of that job in the house; empty where it is not known here
 * @param neededBy day the job needs it by; may be empty
 */
public record YardLine(
        String mark,
        int count,
        String item,
        String code,
        String size,
        String job,
        String jobMark,
        String number,
        String neededBy) {
    static YardLine of(YardRow row, ItemNames names) {
        String number = row.job().mark();
        return new YardLine(
                row.mark(),
                row.count(),
                names.of(row),
                row.item(),
                ItemNames.size(row),
                row.job().title(),
                number,
                JobId.isOne(number) ? number : "",
                row.neededBy());
    }
}
